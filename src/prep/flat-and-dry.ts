/** A subfloor ready to be covered: flat by straightedge or grid, with compound for its dips, and dry by its readings. */

import {
  type Area,
  type Length,
  roundUp,
  roundUpRatio,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MM,
} from '../units/length.ts';

/** The gap allowed under a straightedge of this length; ticks. */
export interface FlatLimit {
  readonly gap: Length;
  readonly over: Length;
}

/** Depths below a straight line in ticks, row by row; negative is above the line. */
interface DepthGrid {
  readonly dx: Length;
  readonly dy: Length;
  readonly rows: readonly (readonly number[])[];
}

/**
 * The limit for a reading over `over` ticks: that of the longest straightedge no longer than it, or else the shortest.
 */
export function limitFor(over: number, limits: readonly [FlatLimit, ...FlatLimit[]]): FlatLimit {
  const longestFirst = [...limits].sort((a, b) => b.over - a.over);
  return longestFirst.find((limit) => limit.over <= over) ?? longestFirst.at(-1) ?? limits[0];
}

/**
 * Ticks allowed under a straightedge `over` ticks long: the rule's gap, scaled down below its shortest straightedge so
 * that a short one can't hide what a long one shows.
 */
export function allowedGap(over: number, limits: readonly [FlatLimit, ...FlatLimit[]]): number {
  const limit = limitFor(over, limits);
  return over >= limit.over ? limit.gap : (limit.gap * over) / limit.over;
}

export function isFlat(gap: number, over: number, limits: readonly [FlatLimit, ...FlatLimit[]]): boolean {
  const limit = limitFor(over, limits);
  return over >= limit.over ? gap <= limit.gap : gap * limit.over <= limit.gap * over;
}

/** Whether a grid under one straightedge is flat: highest to lowest is at most the rule's widest gap. */
export function isGridFlat({ rows }: DepthGrid, limits: readonly [FlatLimit, ...FlatLimit[]]): boolean {
  const depths = rows.flat();
  return Math.max(...depths) - Math.min(...depths) <= Math.max(...limits.map(({ gap }) => gap));
}

/**
 * Whether a straightedge laid along any row or column, between any two points up to the rule's longest span, leaves no
 * gap beyond the rule: the floor may slope but not bend. Depths are below a level line.
 */
export function isGridStraight(grid: DepthGrid, limits: readonly [FlatLimit, ...FlatLimit[]]): boolean {
  const columns = (grid.rows[0] ?? []).map((_, i) => grid.rows.map((row) => row[i] ?? 0));
  const longest = Math.max(...limits.map(({ over }) => over));
  const straight = (depths: readonly number[], step: Length): boolean =>
    depths.every((_, from) => {
      for (let to = from + 2; to < depths.length && (to - from) * step <= longest; to++) {
        const over = (to - from) * step;
        if (gapUnder(depths.slice(from, to + 1)) > allowedGap(over, limits)) return false;
      }
      return true;
    });
  return grid.rows.every((row) => straight(row, grid.dx)) && columns.every((column) => straight(column, grid.dy));
}

/** The widest gap (ticks) under a straightedge resting on the high points of evenly spaced points. */
export function gapUnder(depths: readonly number[]): number {
  const depth = (at: number): number => depths[at] ?? 0;
  const line = (a: number, b: number, at: number): number => depth(a) + ((depth(b) - depth(a)) * (at - a)) / (b - a);
  // The points that a straightedge touches: each corner of the surface's upper hull (Andrew's monotone chain, 1979).
  const touched: number[] = [];
  for (let i = 0; i < depths.length; i++) {
    while (touched.length > 1) {
      const [before = 0, last = 0] = touched.slice(-2);
      if (depth(last) < line(before, i, last)) break;
      touched.pop();
    }
    touched.push(i);
  }
  return touched.slice(1).reduce((widest, b, i) => {
    const a = touched[i] ?? 0;
    const between = Array.from({ length: b - a - 1 }, (_, k) => depth(a + 1 + k) - line(a, b, a + 1 + k));
    return Math.max(widest, ...between);
  }, 0);
}

// Dips: how much of the deepest gap their shape fills, and whether the weight is first a question for the structure.

/** Round and hollow, long and hollow, or equally deep everywhere. */
export type DipShape = 'dish' | 'trough' | 'even';

/** In order of how much they fill, least first. */
export const DIP_SHAPES: readonly [DipShape, DipShape, DipShape] = ['dish', 'trough', 'even'];

/** The deepest gap allowed under a straightedge, in proportion over a longer one; ticks. */
export interface DeepestDip {
  readonly gap: Length;
  readonly over: Length;
}

/** Whether a gap (ticks) under a straightedge `over` ticks long exceeds the limit; compared in integers. */
export function isDeeper(gap: number, over: number, limit: DeepestDip): boolean {
  return gap * limit.over > limit.gap * Math.max(over, limit.over);
}

/** Whether a straightedge along any row or column of a grid, between any two points, shows a gap beyond the limit. */
export function isGridDeeper({ dx, dy, rows }: DepthGrid, limit: DeepestDip): boolean {
  const columns = (rows[0] ?? []).map((_, i) => rows.map((row) => row[i] ?? 0));
  const deeper = (depths: readonly number[], step: Length): boolean =>
    depths.some((_, from) =>
      depths.some(
        (_, to) => to > from + 1 && isDeeper(gapUnder(depths.slice(from, to + 1)), (to - from) * step, limit),
      ),
    );
  return rows.some((row) => deeper(row, dx)) || columns.some((column) => deeper(column, dy));
}

/** Pounds per square foot of a filling: its mean depth in ticks × pounds per square foot and inch of depth. */
export function poundsPerSquareFoot(meanDepth: number, perInch: number): number {
  return (meanDepth / TICKS_PER_INCH) * perInch;
}

/** A dip on a wood floor is light enough to fill, a stop, or open until its shape is known. */
export type DipVerdict = 'fill' | 'measure' | 'stop';

/**
 * `weights` (pounds per square foot) are those of every shape still possible, lightest first. None over the limit:
 * fill. Only the heaviest of several over it: measure the shape first. Otherwise stop.
 */
export function dipVerdict(weights: readonly number[], limit: number): DipVerdict {
  const over = weights.filter((weight) => weight > limit).length;
  if (over === 0) return 'fill';
  return over === 1 && weights.length > 1 ? 'measure' : 'stop';
}

// Volume of fill, by mean depth, ramp or grid of depths, and the bags for it.

/** A liter is a cube of 100 mm. */
const CUBIC_TICKS_PER_LITRE = BigInt(TICKS_PER_MM * 100) ** 3n;

/** Liters one bag fills, and its weight in kilograms. */
export interface Bag {
  readonly litres: number;
  readonly kilograms: number;
}

/** Liters over an area (square ticks) at the mean of the depths (ticks): area × mean. Zero without depths. */
export function meanFill(area: Area, depths: readonly Length[]): number {
  if (depths.length === 0) return 0;
  const sum = depths.reduce((total, depth) => total + BigInt(depth), 0n);
  return litresOf(area * sum, BigInt(depths.length));
}

/** Square ticks of the grid cells that get any fill: those with a corner below the line. */
export function filledArea({ dx, dy, rows }: DepthGrid): Area {
  let cells = 0n;
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let i = 0; i + 1 < (rows[row]?.length ?? 0); i++) {
      const corners = [rows[row]?.[i], rows[row]?.[i + 1], rows[row + 1]?.[i], rows[row + 1]?.[i + 1]];
      if (corners.some((depth) => depth !== undefined && depth > 0)) cells += 1n;
    }
  }
  return cells * BigInt(dx) * BigInt(dy);
}

/** Mean depth in ticks that this many liters make over an area. */
export function meanDepth(litres: number, area: Area): number {
  return area === 0n ? 0 : (litres * Number(CUBIC_TICKS_PER_LITRE)) / Number(area);
}

/** Liters of a ramp feathered from `height` ticks to nothing over an area (square ticks): ½ · area · height. */
export function rampFill(area: Area, height: Length): number {
  return litresOf(area * BigInt(height), 2n);
}

/**
 * Liters up to the line over a grid: each cell is dx · dy · the mean of its four corners, the exact volume under a
 * bilinear surface (the trapezoid rule both ways). What lies above the line is ground down first and fills nothing.
 */
export function gridFill({ dx, dy, rows }: DepthGrid): number {
  let corners = 0n;
  const depth = (row: number, column: number): bigint => BigInt(Math.max(0, rows[row]?.[column] ?? 0));
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let i = 0; i + 1 < (rows[row]?.length ?? 0); i++) {
      corners += depth(row, i) + depth(row, i + 1) + depth(row + 1, i) + depth(row + 1, i + 1);
    }
  }
  return litresOf(corners * BigInt(dx) * BigInt(dy), 4n);
}

/** Whole bags, and the kilograms of powder they take: liters ÷ liters per bag × kilograms per bag. */
export function bagsFor(litres: number, bag: Bag): { bags: number; kilograms: number } {
  return { bags: roundUp(litres / bag.litres), kilograms: (litres / bag.litres) * bag.kilograms };
}

/** Pours for the deepest spot: ⌈deepest ÷ most per pour⌉, both in ticks. */
export function poursFor(deepest: number, most: Length): number {
  return roundUpRatio(BigInt(deepest), BigInt(most));
}

function litresOf(cubic: bigint, divisor: bigint): number {
  return Number(cubic) / Number(divisor * CUBIC_TICKS_PER_LITRE);
}

export type Verdict = 'accept' | 'wait' | 'stop';

export type MoistureFlaw = 'far-over' | 'over-after-leak' | 'over' | 'apart' | 'too-few';

/**
 * Readings, limit and `stop` are in the method's own unit, `flooring` in percentage points of moisture, `leak` in hours
 * since the leak.
 */
interface MoistureCheck {
  readonly readings: readonly number[];
  readonly limit: number;
  readonly stop: number;
  readonly required: number;
  readonly flooring?: { readonly moisture: number; readonly most: number };
  readonly leak?: { readonly hours: number; readonly dryWithin: number };
}

/**
 * The verdict and all its reasons. Stop: at or past `stop`, or still over the limit after a leak's drying time. Wait:
 * over the limit, too far from the flooring, or too few readings. Otherwise accept; a reading at its limit passes.
 */
export function moistureVerdict(check: MoistureCheck): { verdict: Verdict; flaws: readonly MoistureFlaw[] } {
  const { readings, limit, stop, required, flooring, leak } = check;
  const over = readings.some((reading) => reading > limit);
  const flaws: MoistureFlaw[] = [];
  if (over && readings.some((reading) => reading >= stop)) flaws.push('far-over');
  if (over && leak && leak.hours > leak.dryWithin) flaws.push('over-after-leak');
  if (over) flaws.push('over');
  if (flooring && readings.some((reading) => isApart(reading, flooring))) flaws.push('apart');
  if (readings.length < required) flaws.push('too-few');
  const stopped = flaws.includes('far-over') || flaws.includes('over-after-leak');
  return { verdict: stopped ? 'stop' : flaws.length > 0 ? 'wait' : 'accept', flaws };
}

/** Compares in hundredths, the precision of input, so that 8.1 and 12.1 are exactly 4 apart. */
function isApart(reading: number, { moisture, most }: { moisture: number; most: number }): boolean {
  return Math.abs(Math.round(reading * 100) - Math.round(moisture * 100)) > Math.round(most * 100);
}

/** ⌈area × count ÷ squareFeet⌉, at least 1; `area` in square ticks. */
export function readingsByArea(area: Area, count: number, squareFeet: number): number {
  return Math.max(1, roundUpRatio(area * BigInt(count), BigInt(squareFeet) * SQUARE_TICKS_PER_SQUARE_FOOT));
}

/** `first` for the first `squareFeet`, plus `more` for each further `squareFeet` or part of it. */
export function testsByArea(area: Area, first: number, more: number, squareFeet: number): number {
  const lots = Math.max(1, roundUpRatio(area, BigInt(squareFeet) * SQUARE_TICKS_PER_SQUARE_FOOT));
  return first + (lots - 1) * more;
}
