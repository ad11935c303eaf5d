/** The texts about asks that wait, are too many, or take too much: nothing of them is lost. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';

type Why = 'crowded' | 'own' | 'large' | 'unread';

const READING_STOPPED =
  'Reading this took too long, so I stopped: nothing is changed, and nothing of it is lost. Send it in shorter pieces, one room or one question at a time.';

const NOT_WORKED: Readonly<Record<Why, string>> = {
  crowded: 'Many are asking just now: ask again in a minute. The ask stands as you told it.',
  own: 'Several asks of yours are still being worked on: ask this one again when they are answered.',
  large: 'It takes more time or memory than one ask may: ask about fewer rooms at a time.',
  unread: READING_STOPPED,
};

/** A text that took longer to read than a text may. */
export function readingStopped(text: string): Problem {
  return { option: 'ask', got: quoted(text), expected: READING_STOPPED };
}

/** A first answer that was not worked out; the ask is the fix, to be asked again as it is. */
export function notWorkedOut(why: Why, ask: string): Problem {
  return { option: 'ask', got: quoted(ask), expected: NOT_WORKED[why], fix: ask };
}

const NOT_SEARCHED: Readonly<Record<Why, string>> = {
  crowded:
    'Not searched further, for many are asking just now: it can be laid or cut this way, and asking again later may find a better one.',
  own: 'Not searched further, for several asks of yours are still being worked on: it can be laid or cut this way, and asking again later may find a better one.',
  large: 'Not worked out further, for it takes more time or memory than one ask may: what is told here holds.',
  unread: 'Not worked out further, for reading some of it took too long: what is told here holds.',
};

/** Said with a first answer that stands. */
export function notSearchedFurther(why: Why): string {
  return NOT_SEARCHED[why];
}

/** Asked more in a minute than one person, or everybody on a server together, may. */
export function askedTooMuch(milliseconds: number, everybody: boolean, ask: string): Problem {
  const seconds = Math.max(1, Math.ceil(milliseconds / 1000));
  const again = `ask again in ${seconds} ${seconds === 1 ? 'second' : 'seconds'}`;
  const expected = everybody
    ? `Everybody here together has asked a lot within a minute: ${again}. Nothing of your ask is lost.`
    : `You have asked a lot within a minute: ${again}. Nothing of your ask is lost.`;
  return { option: 'ask', got: quoted(ask), expected, fix: ask };
}
