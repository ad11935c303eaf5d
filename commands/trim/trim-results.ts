/** Trim as result data: plain numbers that outside checkers read. */

import { sayDegrees, sayEnd, type TrimShown } from '../../src/drawing/elevation.ts';
import { type Saying, sayCut, sayLength } from '../../src/input/format.ts';
import type { ParsedStock } from '../../src/input/parse-stock.ts';
import type { Units } from '../../src/input/reading.ts';
import type { Need, Stage } from '../../src/reply/need.ts';
import type { Block, Result } from '../../src/reply/reply.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { TRIM } from '../../src/text/trim-text.ts';
import type { Stick, StickPlan } from '../../src/trim/sticks.ts';
import { type Cut, sawSetting, type TrimWall, wallName } from '../../src/trim/walls.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../src/units/length.ts';

/**
 * Result data of kind `trim`; lengths in ticks, money in cents, 0 where no price was told. `corners` are the interior
 * angles at the left and the right end of a wall as one faces it, `left` and `right` of a piece the same way.
 */
export interface TrimResult extends Result {
  readonly kind: 'trim';
  readonly ticksPerInch: number;
  /** How its lengths are said. */
  readonly units: Units;
  readonly kerf: number;
  readonly endTrim: number;
  readonly thickness: number;
  readonly stock: readonly { readonly length: number; readonly cents: number; readonly have?: number }[];
  readonly walls: readonly {
    readonly name: string;
    readonly length: number;
    readonly corners: readonly [number, number];
  }[];
  readonly pieces: readonly {
    readonly id: string;
    readonly wall: string;
    readonly length: number;
    readonly left: Cut;
    readonly right: Cut;
    /** In words, for pieces of several profiles. */
    readonly profile?: string;
  }[];
  readonly sticks: readonly Stick[];
  readonly glueUp: readonly string[];
  readonly cents: number;
  readonly bound: number;
  readonly proven: boolean;
}

/** What a result is made of besides its plan. */
interface TrimParts extends Pick<TrimResult, 'walls' | 'pieces' | 'glueUp'> {
  readonly stock: ParsedStock;
  readonly kerf: Length;
  readonly endTrim: Length;
  readonly thickness: number;
  readonly units: Units;
}

export function trimResult(parts: TrimParts, { sticks, cents, bound, proven }: StickPlan): TrimResult {
  const priced = parts.stock.currency !== undefined;
  return {
    kind: 'trim',
    ticksPerInch: TICKS_PER_INCH,
    units: parts.units,
    kerf: parts.kerf,
    endTrim: parts.endTrim,
    thickness: parts.thickness,
    stock: parts.stock.items.map(({ length, have, price }) => ({
      length,
      cents: price?.cents ?? 0,
      ...(have !== undefined && { have }),
    })),
    walls: parts.walls,
    pieces: parts.pieces.map(({ id, wall, length, left, right, profile }) => ({
      id,
      wall,
      length,
      left,
      right,
      ...(profile !== undefined && { profile }),
    })),
    sticks,
    glueUp: parts.glueUp,
    cents: priced ? cents : 0,
    bound: priced ? bound : 0,
    proven,
  };
}

/** Result data of kind `finish`; volumes in litres, paint without primer. */
export interface FinishResult extends Result {
  readonly kind: 'finish';
  readonly nails: number;
  readonly caulkTubes: number;
  readonly paintLitres: number;
  readonly fillerLitres: number;
}

/** Result data of kind `reset`; lengths in ticks, money in cents, 0 where no price was told. */
export interface ResetResult extends Result {
  readonly kind: 'reset';
  readonly ticksPerInch: number;
  readonly boards: readonly { readonly label: string; readonly wall: string; readonly length: number }[];
  /** Boards that are expected to break, and the range. */
  readonly broken: number;
  readonly brokenRange: readonly [least: number, most: number];
  readonly cents: { readonly reset: number; readonly replace: number; readonly shoe: number };
}

// Sticks of a plan as something to buy; what is at hand is not.

/** What the sticks are of. */
interface SticksOf {
  readonly item: string;
  readonly label: string;
  readonly stage: Stage;
}

/** One need a stock length, the longest first. */
export function stickNeeds(
  { sticks }: StickPlan,
  { items }: ParsedStock,
  of: SticksOf,
  saying: Saying,
): readonly Need[] {
  return items
    .map((stock, at) => ({ ...stock, count: sticks.filter((stick) => stick.stock === at).length }))
    .filter(({ have, count }) => have === undefined && count > 0)
    .sort((a, b) => b.length - a.length)
    .map(({ length, count, price }) => {
      const said = sayLength(ticks(length), saying);
      return {
        item: `${of.item} ${length}`,
        label: `${of.label}, ${said}`,
        stage: of.stage,
        quantity: { unit: 'count', amount: count },
        package: { size: 1, ...NEEDS.stick(said) },
        ...(price && { price: { cents: price.cents, currency: price.currency } }),
      };
    });
}

/** The needs of a reply, where there are any. */
export function toBuy(needs: readonly Need[]): { readonly needs?: readonly Need[] } {
  return needs.length > 0 ? { needs } : {};
}

// The tables of a trim answer: each piece with its cuts, each wall with its corners.

/** Pieces in the order of the walls, with the stick that each comes from. */
export function pieceTable({ walls, pieces }: TrimShown, { sticks }: StickPlan, saying: Saying): Block {
  const stickOf = new Map(sticks.flatMap((stick, i) => stick.pieces.map((id) => [id, String(i + 1)] as const)));
  const rows = walls.flatMap((wall) =>
    pieces
      .filter((piece) => piece.wall === wallName(wall))
      .map(({ id, length, left, right }) => [
        id,
        sayCut(ticks(length), saying),
        sayEnd(wall, 'left', left, saying),
        sayEnd(wall, 'right', right, saying),
        stickOf.get(id) ?? '',
      ]),
  );
  return { kind: 'table', section: 'list', title: TRIM.pieceTitle, columns: TRIM.pieceColumns, rows };
}

/** Walls with the angle at either corner and the saw's setting for it. */
export function cornerTable(walls: readonly TrimWall[], saying: Saying): Block {
  const say = (interior: number): string =>
    interior === 180
      ? TRIM.straight
      : TRIM.corner(sayDegrees(interior, saying), sayDegrees(sawSetting(interior), saying));
  return {
    kind: 'table',
    section: 'details',
    title: TRIM.cornerTitle,
    columns: TRIM.cornerColumns,
    rows: walls.map((wall) => [
      wallName(wall),
      sayLength(wall.length, saying),
      say(wall.left.interior),
      say(wall.right.interior),
    ]),
  };
}
