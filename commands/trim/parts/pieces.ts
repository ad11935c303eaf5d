/** From walls to pieces of trim and the sticks to cut them from; Problems where saw or sticks do not reach. */

import type { Context, Problems } from '../../../src/chat/command.ts';
import { sayDegrees } from '../../../src/drawing/elevation.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { ToldStock } from '../../../src/input/parse-stock.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { noStudInReach, pastReach, tooManyPieces } from '../../../src/text/trim-problems-text.ts';
import { type PieceTrouble, stickPiece, type TrimPiece, trimPieces } from '../../../src/trim/pieces.ts';
import type { StickTask, Stock } from '../../../src/trim/sticks.ts';
import { wallName } from '../../../src/trim/walls.ts';
import { type Length, millimetres, TICKS_PER_FOOT, TICKS_PER_INCH, ticks } from '../../../src/units/length.ts';
import type { ListAsk, SticksAsk } from './ask.ts';
import { type AskedWalls, sayingOf } from './walls.ts';

/** More pieces than a home has: a slip of a unit has them. */
const MOST_PIECES = 400;

/** Pieces with what they are cut from. */
export interface AskedPieces {
  readonly pieces: readonly TrimPiece[];
  readonly task: StickTask;
}

/** Stock as it is bought; without prices the least length is, so that a length in its unit stands for its price. */
export function stockOf({ stock }: Pick<SticksAsk, 'stock'>): readonly Stock[] {
  const priced = stock.currency !== undefined;
  const unit = lengthUnit(stock);
  return stock.items.map(({ length, have, price }) => ({
    length,
    cents: have !== undefined ? 0 : priced ? (price?.cents ?? 0) : Math.round(length / unit),
    ...(have !== undefined && { have }),
  }));
}

/** The ticks that stand for a cent where no prices are told: the longest length that all sticks on sale are whole times of, at least 1/16 in. */
export function lengthUnit({ items }: ToldStock): number {
  const lengths = items.flatMap(({ length, have }) => (have === undefined ? [length] : []));
  return Math.max(TICKS_PER_INCH / 16, lengths.reduce<number>(greatestCommonDivisor, 0));
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** The longest piece that a bought stick gives: all of it but the end trim. */
export function longestPiece({ stock, 'end-trim': endTrim }: SticksAsk): Length {
  const bought = stock.items.filter(({ have }) => have === undefined);
  return ticks(Math.max(...bought.map(({ length }) => length)) - endTrim);
}

export function askedPieces(ask: ListAsk, { stretches }: AskedWalls, context: Context): AskedPieces | Problems {
  const saying = sayingOf(ask, context);
  const joint = ask['inside-joint'] === 'cope' ? 'cope' : context.told.get('inside-joint') ? 'miter' : 'as measured';
  const { pieces, troubles } = trimPieces(stretches, {
    thickness: ask.thickness,
    longest: longestPiece(ask),
    glueUp: ask['glue-up'],
    reach: ask['saw-reach'],
    inside: joint,
    studs: { first: ask['first-stud'], spacing: ask['stud-spacing'] },
  });
  const [first, ...more] = problemsOf(troubles, ask, context, saying);
  if (first) return { problems: [first, ...more] };
  if (pieces.length > MOST_PIECES) return { problems: [tooManyPieces(pieces.length, MOST_PIECES, `12' x 14'`)] };
  const task = {
    pieces: pieces.map((piece) => stickPiece(piece, ask.kerf)),
    stock: stockOf(ask),
    endTrim: ask['end-trim'],
  };
  return { pieces, task };
}

function problemsOf(
  troubles: readonly PieceTrouble[],
  ask: ListAsk,
  context: Context,
  saying: Saying,
): readonly Problem[] {
  const steepest = Math.max(0, ...troubles.map((trouble) => ('setting' in trouble ? trouble.setting : 0)));
  const longest = Math.max(0, ...troubles.map((trouble) => ('length' in trouble ? trouble.length : 0)));
  const problems = troubles.map((trouble): Problem => {
    const { wall } = trouble;
    if (trouble.why === 'no stud') {
      const told = context.told.get('stock');
      const longer = sayLength(longerStick(longest, saying), saying);
      return noStudInReach(
        wallName(wall),
        sayLength(ticks(trouble.length), saying),
        told ? `${told}; ${longer}` : longer,
      );
    }
    const { interior } = wall[trouble.side];
    return pastReach(
      `at the ${trouble.side} of ${wallName(wall)}`,
      sayDegrees(interior, saying),
      sayDegrees(trouble.setting, saying),
      sayDegrees(ask['saw-reach'], saying),
      String(steepest),
    );
  });
  return problems;
}

/** A whole foot or half a metre that holds the length and what its ends add. */
export function longerStick(length: number, { units }: Saying): Length {
  const step = units === 'metric' ? millimetres(500) : TICKS_PER_FOOT;
  return ticks((Math.floor(length / step) + 2) * step);
}
