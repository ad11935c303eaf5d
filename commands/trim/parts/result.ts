/** Trim as result data: plain numbers that outside checkers read. */

import type { ToldStock } from '../../../src/input/parse-stock.ts';
import type { Units } from '../../../src/input/reading.ts';
import type { Result } from '../../../src/reply/reply.ts';
import type { Stick, StickPlan } from '../../../src/trim/sticks.ts';
import type { Cut } from '../../../src/trim/walls.ts';
import { type Length, TICKS_PER_INCH } from '../../../src/units/length.ts';

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
export interface TrimParts extends Pick<TrimResult, 'walls' | 'pieces' | 'glueUp'> {
  readonly stock: ToldStock;
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
