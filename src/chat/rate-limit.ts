/** Rate limits for all platforms, with requests weighed by cost. */

import { type Asker, accountKey } from '../accounts/records.ts';
import { fullName } from '../input/command-shape.ts';
import { tooManyRequests } from '../text/chat-text.ts';
import { RoundRobin } from '../workers/queue.ts';
import type { Command, Problems } from './command.ts';
import type { Ports, Request } from './ports.ts';

/** Cost relative to a simple calculation, measured on each command's examples, worker threads included. */
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

/** 1 for a request that could not be read. */
export function weightOf(command: Command | undefined): number {
  return (command && WEIGHTS[fullName(command)]) ?? 1;
}

/** Undefined if allowed; otherwise when to try again, with the request as typed. The terminal has no limit. */
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

/**
 * Platforms may deliver an event again within the hour, nearly always within minutes. An id takes a few hundred bytes.
 */
const REMEMBERED = 20_000;

/** Returns a function that says whether an id is new, and remembers it. */
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

// A few calculations at a time, fairly by person, so that there is time to acknowledge what comes in meanwhile.

/** A calculation blocks the process; a second one may start while the first waits for the store. */
const AT_ONCE = 2;

/**
 * Event loop turns between calculations while others wait: Node accepts one new connection per turn, and an empty turn
 * takes microseconds.
 */
const TURNS = 50;

/** Milliseconds after which an answer must be waiting for a worker or the store, and blocks nobody. */
const HELD = 100;

/**
 * Takes turns between streams: the next answer is computed when an earlier one is done or only waits. `urgent` ones
 * skip the queue.
 */
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
      // Stops the stream when its consumer does.
      await answers.return?.();
    }
  };
}

function afterTurns(turns: number, then: () => void): void {
  setImmediate(turns > 1 ? () => afterTurns(turns - 1, then) : then);
}
