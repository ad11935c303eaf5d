/** Trim as result data: plain numbers, so that checkers outside this code can read them. */

import { sayDegrees, sayEnd, type TrimShown } from '../../src/drawing/trim-drawings.ts';
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
 * Lengths in ticks, money in cents, 0 without prices. `corners` are the interior angles at the left and right end of a wall for
 * somebody facing it; `left` and `right` of a piece are meant the same way.
 */
export interface TrimResult extends Result {
  readonly kind: 'trim';
  readonly ticksPerInch: number;
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
    readonly profile?: string;
  }[];
  readonly sticks: readonly Stick[];
  readonly glueUp: readonly string[];
  readonly cents: number;
  readonly bound: number;
  readonly proven: boolean;
}

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

/** Volumes in liters; paint doesn't include primer. */
export interface FinishResult extends Result {
  readonly kind: 'finish';
  readonly nails: number;
  readonly caulkTubes: number;
  readonly paintLitres: number;
  readonly fillerLitres: number;
}

/** Lengths in ticks, money in cents, 0 without prices. */
export interface ResetResult extends Result {
  readonly kind: 'reset';
  readonly ticksPerInch: number;
  readonly boards: readonly { readonly label: string; readonly wall: string; readonly length: number }[];
  /** Boards expected to break. */
  readonly broken: number;
  readonly brokenRange: readonly [least: number, most: number];
  readonly cents: { readonly reset: number; readonly replace: number; readonly shoe: number };
}

// What they already have isn't on the list.

interface SticksOf {
  readonly item: string;
  readonly label: string;
  readonly stage: Stage;
}

/** One need per stock length, the longest first. */
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

export function toBuy(needs: readonly Need[]): { readonly needs?: readonly Need[] } {
  return needs.length > 0 ? { needs } : {};
}

/** In the order of the walls, with the stick each piece comes from. */
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

/** With the saw's setting for the angle at either corner. */
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
