/** Who may ask how much: one place for all platforms, asks weighed by what they cost. */

import { type Asker, accountKey } from '../accounts/asker.ts';
import { fullName } from '../input/command-shape.ts';
import { tooManyRequests } from '../text/chat-text.ts';
import { RoundRobin } from '../workers/queue.ts';
import type { Command, Problems } from './command.ts';
import type { Ports, Request } from './ports.ts';

/** What an ask counts for: roughly, how many of a plain sum's it takes (measured by their examples, with what is worked out in threads). */
const WEIGHTS: Readonly<Record<string, number>> = {
  'floor planks': 2,
  'floor layout': 2,
  'floor resume': 2,
  'floor compare': 3,
  'trim list': 2,
  'trim reset': 2,
  'project shopping': 2,
  'project sheets': 2,
};

/** What an ask weighs; one that was not read weighs 1. */
export function weightOf(command: Command | undefined): number {
  return (command && WEIGHTS[fullName(command)]) ?? 1;
}

/** Undefined where the ask is allowed; else when to ask again, with the ask as it was typed. A terminal is its owner's own. */
export async function allowedToAsk(
  { asker, server, text }: Request,
  person: string | undefined,
  command: Command | undefined,
  { allowed }: Ports,
): Promise<Problems | undefined> {
  if (!allowed || asker.platform === 'terminal') return undefined;
  const place = server ?? asker.workspace;
  const who = {
    person: person ?? accountKey(asker),
    ...(place === undefined ? {} : { server: `${asker.platform}:${place}` }),
  };
  const { again, everybody } = await allowed(who, weightOf(command));
  return again > 0 ? { problems: [tooManyRequests(again, everybody, text)], again: true } : undefined;
}

// Ids seen by this process, as many as could come again.

/** Deliveries come again within the hour, nearly all within minutes: a few hundred bytes each, and never more than so many. */
const REMEMBERED = 20_000;

/** Tells whether an id is new, and remembers it. */
export function freshIds(): (id: string) => boolean {
  const ids = new Set<string>();
  return (id) => {
    if (ids.has(id)) return false;
    ids.add(id);
    const [oldest] = ids;
    if (ids.size > REMEMBERED && oldest !== undefined) ids.delete(oldest);
    return true;
  };
}

// Sums worked on a few at a time, fair a person: between them there is time to tell a platform that what came
// meanwhile was heard.

/** A sum holds the whole process while it lasts; a second one may begin while the first waits for the store. */
const AT_ONCE = 2;

/** Turns of the event loop between sums while others wait: Node takes one new connection in a turn, and a turn with nothing in it takes microseconds. */
const TURNS = 50;

/** An answer that takes longer than this, in milliseconds, is waiting for a worker or the store and holds up nobody. */
const HELD = 100;

/** Works out each answer of each stream in its turn: the next one as soon as an earlier one is there, or only waits. What is `urgent` waits for no turn. */
export function inTurn<I extends { readonly asker: Asker }, T>(
  answer: (request: I) => AsyncIterable<T>,
  wait: (milliseconds: number) => Promise<void>,
  urgent: (request: I) => boolean = () => false,
): (request: I) => AsyncIterable<T> {
  const waiting = new RoundRobin<() => void>();
  let underWay = 0;
  const turn = (who: string): Promise<void> | undefined => {
    if (underWay >= AT_ONCE) return new Promise((resolve) => waiting.add(who, resolve));
    underWay += 1;
    return undefined;
  };
  const pass = (): void => {
    const next = waiting.next();
    if (next) afterTurns(TURNS, next);
    else underWay -= 1;
  };
  return async function* (request) {
    if (urgent(request)) {
      yield* answer(request);
      return;
    }
    const who = accountKey(request.asker);
    const answers = answer(request)[Symbol.asyncIterator]();
    try {
      for (;;) {
        await turn(who);
        const coming = answers.next();
        void Promise.race([coming, wait(HELD)]).then(pass, pass);
        const one = await coming;
        if (one.done === true) return;
        yield one.value;
      }
    } finally {
      // Whoever takes no more ends what is behind it.
      await answers.return?.();
    }
  };
}

function afterTurns(turns: number, then: () => void): void {
  setImmediate(turns > 1 ? () => afterTurns(turns - 1, then) : then);
}
