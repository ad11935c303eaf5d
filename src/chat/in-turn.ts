/** Sums worked on a few at a time, fair a person: between them there is time to tell a platform that what came meanwhile was heard. */

import { type Asker, accountKey } from '../accounts/asker.ts';
import { RoundRobin } from '../workers/queue.ts';

/** A sum holds the whole process while it lasts; a second one may begin while the first waits for the store. */
const AT_ONCE = 2;

/** Turns of the event loop between sums while others wait: Node takes one new connection in a turn, and a turn with nothing in it takes microseconds. */
const TURNS = 50;

/** An answer that takes longer than this, in milliseconds, is waiting for a worker or the store and holds up nobody. */
const HELD = 100;

/** Works out each answer of each stream in its turn: the next one as soon as an earlier one is there, or only waits. What is `urgent` waits for no turn. */
export function inTurn<I extends { readonly asker: Asker }, T>(
  answer: (invocation: I) => AsyncIterable<T>,
  wait: (milliseconds: number) => Promise<void>,
  urgent: (invocation: I) => boolean = () => false,
): (invocation: I) => AsyncIterable<T> {
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
  return async function* (invocation) {
    if (urgent(invocation)) {
      yield* answer(invocation);
      return;
    }
    const who = accountKey(invocation.asker);
    const answers = answer(invocation)[Symbol.asyncIterator]();
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
