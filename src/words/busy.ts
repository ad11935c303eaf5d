/** The texts about asks that wait, are too many, or take too much: nothing of them is lost. */

import type { Problem } from '../reply/problem.ts';
import { quoted } from './asks.ts';

type Why = 'crowded' | 'own' | 'large';

const NOT_WORKED: Readonly<Record<Why, string>> = {
  crowded: 'Many are asking just now: ask again in a minute. The ask stands as you told it.',
  own: 'Several asks of yours are still being worked on: ask this one again when they are answered.',
  large: 'It takes more time or memory than one ask may: ask about fewer rooms at a time.',
};

/** A first answer that was not worked out; the ask is the fix, to be asked again as it is. */
export function notWorkedOut(why: Why, ask: string): Problem {
  return { option: 'ask', got: quoted(ask), expected: NOT_WORKED[why], fix: ask };
}

const NOT_SEARCHED: Readonly<Record<Why, string>> = {
  crowded:
    'Not searched further, for many are asking just now: it can be laid or cut this way, and asking again later may find a better one.',
  own: 'Not searched further, for several asks of yours are still being worked on: it can be laid or cut this way, and asking again later may find a better one.',
  large: 'Not worked out further, for it takes more time or memory than one ask may: what is told here holds.',
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
