/** A command's answers as far as they could be worked out: what came, stands, and says why no more came. */

import { notSearchedFurther, notWorkedOut, readingStopped } from '../text/chat-text.ts';
import { Unworked } from '../workers/queue.ts';
import type { Outcome } from './command.ts';

type Run = Outcome | Promise<Outcome> | AsyncIterable<Outcome>;

/** Each outcome of a run; where it ends with Unworked, the last one with a word on it, or a Problem that has the line again. Throws what else the run throws. */
export async function* asFarAsWorked(run: () => Run, line: string): AsyncGenerator<Outcome> {
  let last: Outcome | undefined;
  try {
    const outcome = await run();
    if (!(Symbol.asyncIterator in outcome)) {
      yield outcome;
      return;
    }
    for await (const one of outcome) {
      last = one;
      yield one;
    }
  } catch (cause) {
    if (!(cause instanceof Unworked)) throw cause;
    if (last && 'headline' in last) yield { ...last, assumed: [...last.assumed, notSearchedFurther(cause.why)] };
    else if (cause.why === 'unread') yield { problems: [readingStopped(line)] };
    else yield { problems: [notWorkedOut(cause.why, line)], again: true };
  }
}
