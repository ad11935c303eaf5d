/** What `prep patch` reads, as the patch is worked out: across and along the joists. */

import type { Context } from '../../../src/chat/command.ts';
import {
  BLOCK_FACE,
  FASTENER_SPACING,
  LARGEST_PATCH,
  LEAST_PANEL_WIDTH,
  PANEL_GAP,
  PANEL_KERF,
  PATCH_BAYS,
  PATCH_RIM,
  SHEET_BAYS,
} from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { Found } from '../../../src/input/parse-found.ts';
import type { ToldDamage } from '../../../src/input/parse-place.ts';
import type { ToldRooms } from '../../../src/input/readings-made.ts';
import { baysPerSheet, type PatchRules, type Rect, type SheetSize } from '../../../src/prep/subfloor-patch.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { damageBeyond, damageTooLarge, sheetTooSmall } from '../../../src/text/prep-problems-text.ts';
import { boxOf } from '../../../src/units/geometry.ts';
import { areaOf, type Length, SQUARE_TICKS_PER_SQUARE_FOOT, ticks } from '../../../src/units/length.ts';

export interface PatchAsk {
  readonly damage: ToldDamage;
  readonly 'first-joist': Length;
  readonly spacing: Length;
  readonly joists: 'up' | 'across';
  readonly thickness: Length;
  readonly room: ToldRooms | 'none';
  readonly margin: Length;
  readonly 'joist-width': Length;
  readonly 'joist-depth': Length;
  readonly notch: Length;
  readonly 'notch-length': Length;
  readonly 'notch-place': 'untold' | 'end' | 'outer' | 'middle';
  readonly hole: Length;
  readonly 'hole-edge': Length;
  readonly 'hole-apart': Length;
  readonly 'joist-kind': 'solid' | 'i-joist' | 'truss' | 'glued';
  readonly sheet: SheetSize;
  readonly bead: Length;
  /** US fluid ounces. */
  readonly tube: number;
  readonly found: Found;
}

/** The damage across (u) and along (v) the joists. */
export function uvOf({ damage, joists }: PatchAsk): Rect {
  const [x0, y0, x1, y1] = [damage.left, damage.bottom, damage.left + damage.across, damage.bottom + damage.up];
  return joists === 'up' ? { u0: x0, v0: y0, u1: x1, v1: y1 } : { u0: y0, v0: x0, u1: y1, v1: x1 };
}

/** A rectangle's sides as the room has them: across, then up. */
export function roomSides({ u0, v0, u1, v1 }: Rect, run: 'up' | 'across'): readonly [number, number] {
  return run === 'up' ? [u1 - u0, v1 - v0] : [v1 - v0, u1 - u0];
}

/** The rules of the trade for this ask, with the walls where the room was told. */
export function patchRules(ask: PatchAsk): PatchRules {
  const walls = wallsOf(ask);
  return {
    margin: ask.margin,
    bays: PATCH_BAYS.value,
    // The panel itself is as wide, its gaps beside it.
    least: ticks(LEAST_PANEL_WIDTH.value + 2 * PANEL_GAP.value),
    gap: PANEL_GAP.value,
    kerf: PANEL_KERF.value,
    sheet: ask.sheet,
    fasteners: FASTENER_SPACING.value,
    rim: PATCH_RIM.value,
    block: BLOCK_FACE.value,
    ...(walls && (ask.joists === 'up' ? { across: walls[0], along: walls[1] } : { across: walls[1], along: walls[0] })),
  };
}

/** A damage too large for a patch, or beyond the room. */
export function patchProblem(ask: PatchAsk, context: Context, saying: Saying): Problem | undefined {
  const { damage } = ask;
  const got = context.told.get('damage') ?? '';
  if (Math.max(damage.across, damage.up) > LARGEST_PATCH.value)
    return damageTooLarge(got, sayLength(LARGEST_PATCH.value, saying));
  const few = baysPerSheet(ask.spacing, ask.sheet, PANEL_GAP.value) < SHEET_BAYS.value;
  if (few || ask.sheet.width < LEAST_PANEL_WIDTH.value) return sheetTooSmall(context.told.get('sheet') ?? '');
  const walls = wallsOf(ask);
  if (!walls) return undefined;
  const [wide, deep] = walls;
  if (damage.left + damage.across <= wide && damage.bottom + damage.up <= deep) return undefined;
  return damageBeyond(got, `${sayLength(wide, saying)} x ${sayLength(deep, saying)}`);
}

/** The damage in square feet. */
export function squareFeet({ damage }: PatchAsk): number {
  return Number(areaOf(damage.across, damage.up)) / Number(SQUARE_TICKS_PER_SQUARE_FOOT);
}

function wallsOf({ room }: PatchAsk): readonly [Length, Length] | undefined {
  const first = room === 'none' ? undefined : room.rooms[0];
  if (!first) return undefined;
  const { minX, minY, maxX, maxY } = boxOf(first.outline);
  return [ticks(maxX - minX), ticks(maxY - minY)];
}
