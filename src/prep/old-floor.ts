/** The old floor: debris, hours, staples, strips and tack strip of a tearout, lead paint and asbestos, and whose rules apply. */

import { type Span, slabsOf, sliceRows } from '../layout/slab.ts';
import { boxOf, isRectilinear, type Outline, wallLength } from '../units/geometry.ts';
import {
  type Area,
  areaOf,
  type Length,
  roundUp,
  roundUpRatio,
  SQUARE_TICKS_PER_SQUARE_METRE,
  ticks,
} from '../units/length.ts';

export type Covering = 'carpet' | 'sheet vinyl' | 'plank vinyl' | 'laminate' | 'tile';

/** Coverings cut into strips and rolled; the others come up in pieces. */
export function isRolled(covering: Covering): boolean {
  return covering === 'carpet' || covering === 'sheet vinyl';
}

/** What carries the debris: liters per load, and kilograms if there is a limit. */
export interface Carrier {
  readonly litres: number;
  readonly kilograms?: number;
}

/** Loads: the larger of ⌈volume ÷ bed⌉ and ⌈weight ÷ payload⌉, or zero for no debris. */
export function tripsOf(kilograms: number, litres: number, carrier: Carrier): number {
  const byVolume = roundUp(litres / carrier.litres);
  return carrier.kilograms === undefined ? byVolume : Math.max(byVolume, roundUp(kilograms / carrier.kilograms));
}

/**
 * The smallest of `sizes` (liters, ascending) that holds the volume; if none does, the largest, and several are needed.
 */
export function smallestContainer(litres: number, sizes: readonly [number, ...number[]]): number {
  return sizes.find((size) => litres <= size) ?? sizes[sizes.length - 1] ?? sizes[0];
}

/** Loads for one person: ⌈weight ÷ limit⌉, both in kilograms. */
export function handLoads(kilograms: number, limit: number): number {
  return roundUp(kilograms / limit);
}

/** An amount, and how much of it one person does in an hour, slow and fast, in the same unit. */
interface Work {
  readonly amount: number;
  readonly slow: number;
  readonly fast: number;
}

/** Σ amount ÷ pace, fast and slow: [least, most] hours for one person. */
export function hoursOf(works: readonly Work[]): readonly [number, number] {
  return works.reduce<readonly [number, number]>(
    ([least, most], { amount, slow, fast }) => [least + amount / fast, most + amount / slow],
    [0, 0],
  );
}

/** Rounds outward to half hours, never to zero: [1.26, 3.75] becomes [1, 4]. */
export function toHalfHours([least, most]: readonly [number, number]): readonly [number, number] {
  return [Math.max(0.5, Math.floor(least * 2) / 2), Math.max(0.5, Math.ceil(most * 2) / 2)];
}

/** 1 lb = 0.45359237 kg exactly (NIST SP 811 app. B.8, from memory). */
export const KILOGRAMS_PER_POUND = 0.45359237;
/** 1 yd³ = 0.9144³ m³ exactly, from the yard of 0.9144 m. */
export const LITRES_PER_CUBIC_YARD = 764.554857984;

/** Kilograms of a floor covering: area in square ticks × kilograms per square meter. */
export function kilogramsOf(area: Area, perSquareMetre: number): number {
  return (Number(area) / Number(SQUARE_TICKS_PER_SQUARE_METRE)) * perSquareMetre;
}

/**
 * Liters of loosely thrown debris: kilograms ÷ bulk density in kilograms per liter (US EPA, 2016: volume = weight ÷
 * factor).
 */
export function looseLitres(kilograms: number, perLitre: number): number {
  return kilograms / perLitre;
}

export interface Stapling {
  readonly rows: number;
  readonly spacing: Length;
}

/** ⌈area × rows ÷ (breadth × spacing)⌉: area in square ticks, pad width and spacing in ticks. */
export function staplesIn(area: Area, breadth: Length, { rows, spacing }: Stapling): number {
  return roundUpRatio(area * BigInt(rows), areaOf(breadth, spacing));
}

/** One strip in place: its lower left corner and its sides along x and y, in ticks. */
export interface PlacedStrip {
  readonly x: number;
  readonly y: number;
  readonly alongX: Length;
  readonly alongY: Length;
}

export interface Strips {
  readonly width: Length;
  readonly length: Length;
  readonly count: number;
  readonly kilograms: number;
}

/**
 * Limits for cutting: the widest strip, the heaviest roll in kilograms, and the covering's kilograms per square meter.
 */
interface StripRule {
  readonly width: Length;
  readonly limit: number;
  readonly perSquareMetre: number;
}

/**
 * Strips along the room's longer side, all of one width within the limit, each run cut into equal lengths so that no
 * roll exceeds the weight limit. Together they cover the room. Where a wall steps into a strip it is weighed as a full
 * rectangle, so a roll is never heavier than stated. Walls not along x or y: covers the box around the room. Throws a
 * RangeError if not even one tick of a strip is within the limit.
 */
export function placeStrips(outline: Outline, holes: readonly Outline[], rule: StripRule): readonly PlacedStrip[] {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  const turned = maxY - minY > maxX - minX;
  const across = turned ? maxX - minX : maxY - minY;
  const bands = roundUpRatio(BigInt(across), BigInt(rule.width));
  const width = ticks(roundUpRatio(BigInt(across), BigInt(bands)));
  const longest = Math.floor(rule.limit / kilogramsOf(areaOf(width, ticks(1)), rule.perSquareMetre));
  if (!(longest >= 1)) throw new RangeError(`no strip weighs less than ${rule.limit} kg`);
  return rowsOf(turned, outline, holes, width).flatMap(({ v, runs }) =>
    runs.flatMap((run) => cutRun(run, longest).map((piece) => placed(turned, piece, v, width))),
  );
}

export function gatherStrips(
  strips: readonly PlacedStrip[],
  perSquareMetre: number,
  turned: boolean,
): readonly Strips[] {
  const counts = new Map<string, Strips>();
  for (const { alongX, alongY } of strips) {
    const [length, width] = turned ? [alongY, alongX] : [alongX, alongY];
    const before = counts.get(`${width} ${length}`);
    const kilograms = kilogramsOf(areaOf(width, length), perSquareMetre);
    counts.set(`${width} ${length}`, { width, length, kilograms, count: (before?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.length - a.length || b.width - a.width);
}

export function runsAlongY(outline: Outline): boolean {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  return maxY - minY > maxX - minX;
}

function rowsOf(turned: boolean, outline: Outline, holes: readonly Outline[], width: Length) {
  const loops = [outline, ...holes].map((loop) => (turned ? loop.map(([x, y]) => [y, x] as const) : loop));
  const [first] = loops;
  if (!first) return [];
  const box = boxOf(first);
  if (loops.every(isRectilinear)) return sliceRows(slabsOf(loops), box.minY, width);
  const runs: readonly Span[] = [{ from: box.minX, to: box.maxX }];
  const count = roundUpRatio(BigInt(box.maxY - box.minY), BigInt(width));
  return Array.from({ length: count }, (_, i) => ({ v: box.minY + i * width, height: width, runs }));
}

function cutRun({ from, to }: Span, longest: number): readonly Span[] {
  const pieces = roundUpRatio(BigInt(to - from), BigInt(longest));
  const length = roundUpRatio(BigInt(to - from), BigInt(pieces));
  return Array.from({ length: pieces }, (_, i) => ({ from: from + i * length, to: from + (i + 1) * length }));
}

function placed(turned: boolean, { from, to }: Span, v: number, width: Length): PlacedStrip {
  const length = ticks(to - from);
  return turned ? { x: v, y: from, alongX: width, alongY: length } : { x: from, y: v, alongX: length, alongY: width };
}

/** Ticks around a room: every wall of the outline and its holes. */
export function perimeterOf(outline: Outline, holes: readonly Outline[]): Length {
  const walls = [outline, ...holes].flatMap((loop) => loop.map((_, i) => wallLength(loop, i)));
  return ticks(walls.reduce<number>((sum, wall) => sum + wall, 0));
}

/** Perimeter − doorways, in ticks; undefined when the doorways are wider than the walls. */
export function tackStripLength(perimeter: Length, doorways: readonly Length[]): Length | undefined {
  const left = doorways.reduce<number>((rest, doorway) => rest - doorway, perimeter);
  return left < 0 ? undefined : ticks(left);
}

export function tackStripPieces(length: Length, piece: Length): number {
  return roundUpRatio(BigInt(length), BigInt(piece));
}

/** How far from the wall tack strip may reach: the gully beside it plus its own width (CRI 104/105 §11.1). */
export function tackStripReach(gully: Length, width: Length): Length {
  return ticks(gully + width);
}

export type Country = 'us' | 'canada' | 'uk' | 'australia' | 'elsewhere';

/** The country given, or else a guess from the units: nobody in the US measures floors in meters. */
export function countryFor(given: Country | undefined, metric: boolean): Country {
  return given ?? (metric ? 'elsewhere' : 'us');
}

// Lead paint: area disturbed by removing trim, against the limit for minor work.

export interface TrimPart {
  readonly length: Length;
  readonly height: Length;
  readonly count: number;
}

/**
 * Square ticks disturbed: every removed part counts whole, length × height (US EPA RRP FAQ: a 1 in strip off a 36 in
 * door is 36 in²).
 */
export function disturbedArea(parts: readonly TrimPart[]): Area {
  return parts.reduce((sum, { length, height, count }) => sum + areaOf(length, height) * BigInt(count), 0n);
}

/** Minor work is up to and including the limit (US EPA RRP: six square feet or less per room). */
export function isMinor(area: Area, limit: Area): boolean {
  return area <= limit;
}

// Asbestos: by the year of the house, what is known of the layers, and a test.

/**
 * What the words about a layer suggest: nothing suspicious, a resilient floor or glue, a sign of asbestos, or unknown.
 */
export type Suspicion = 'none' | 'resilient' | 'sign' | 'unknown';

export type Tested = 'no' | 'clear' | 'asbestos';

/** `year` is the earliest the house may date from, undefined if unknown. */
interface Suspect {
  readonly year: number | undefined;
  readonly tested: Tested;
  /** What was said about the floor itself and the layers under it. */
  readonly layers: readonly Suspicion[];
  /** What was said elsewhere, such as in a room's name. */
  readonly aside: readonly Suspicion[];
  /** Up to this year an untested resilient floor is refused. */
  readonly margin: number;
}

/** go: carry on. proof: only with proof. Anything else is why work must stop. */
type Verdict = 'go' | 'proof' | 'found' | Exclude<Suspicion, 'none'>;

/** True for a house built up to the margin year, and for an unknown year. */
export function mayHoldAsbestos(year: number | undefined, margin: number): boolean {
  return year === undefined || year <= margin;
}

/**
 * A test decides. Without one, a sign of asbestos stops work whatever the year. A resilient floor, its backing or glue,
 * or anything unrecognized is presumed to contain it (RFCI: unless positively certain): refused up to the margin year
 * or when the year is unknown, and later only with proof.
 */
export function judge({ year, tested, layers, aside, margin }: Suspect): Verdict {
  if (tested === 'asbestos') return 'found';
  if (tested === 'clear') return 'go';
  const all = [...layers, ...aside];
  if (all.includes('sign')) return 'sign';
  if (!mayHoldAsbestos(year, margin)) return layers.some((layer) => layer !== 'none') ? 'proof' : 'go';
  if (all.includes('resilient')) return 'resilient';
  return all.includes('unknown') ? 'unknown' : 'go';
}
