/** Updating a room's text after one of its walls is measured again, as long as its walls still meet. */

import { at, isRectilinear, type Outline, type Point, wallLength } from '../../units/geometry.ts';
import { type Length, TICKS_PER_INCH, TICKS_PER_MM, ticks } from '../../units/length.ts';
import { readInTime } from '../../workers/time-limits.ts';
import { plainText, type Quantity, quantityAt, readLength, unitIn, unitsOf } from '../parse-length.ts';
import { type LengthUnit, UNITS } from '../parse-number.ts';
import type { Preferences, Read, Reading, Units } from '../reading.ts';
import { readRooms } from './parse-room.ts';
import { roomGiven } from './rooms-apart.ts';
import { settledWalk } from './walk-steps.ts';

// Whether the walls of a rectilinear room still meet when some have new lengths, and by how much they miss.

/** How much two people's tape measurements around a room may differ: common practice. */
const TAPE = TICKS_PER_INCH / 4;

/** How far the walls miss, and which to measure again (numbers from 1); the outline if they meet. */
interface Closing {
  readonly miss: Length;
  readonly again: readonly number[];
  readonly outline?: Outline;
}

/**
 * Applies new wall lengths to a rectilinear outline. An error within tape tolerance is taken out of the longest wall
 * that wasn't remeasured.
 */
function closedBy(
  outline: Outline,
  given: readonly { readonly wall: number; readonly length: Length }[],
  sure: readonly number[] = [],
): Closing {
  const anew = new Map(given.map(({ wall, length }) => [wall - 1, length]));
  const ways = outline.map((_, i) => wayOf(outline, i));
  const lengths = outline.map((_, i) => anew.get(i) ?? wallLength(outline, i));
  const misses = [0, 1].map((axis) =>
    lengths.reduce<number>((sum, length, i) => sum + (ways[i]?.[axis] ?? 0) * length, 0),
  );
  const worst = Math.abs(misses[0] ?? 0) >= Math.abs(misses[1] ?? 0) ? 0 : 1;
  const along = outline.map((_, i) => i).filter((i) => ways[i]?.[worst] !== 0);
  const notGiven = along.filter((i) => !anew.has(i));
  const unsure = notGiven.filter((i) => !sure.includes(i + 1));
  const again = (unsure.length > 0 ? unsure : notGiven.length > 0 ? notGiven : along).map((i) => i + 1);
  const miss = ticks(Math.abs(misses[worst] ?? 0));
  if (miss > TAPE) return { miss, again };
  for (const axis of [0, 1] as const) {
    const [longest] = outline
      .map((_, i) => i)
      .filter((i) => ways[i]?.[axis] !== 0)
      .sort(
        (one, other) => Number(anew.has(one)) - Number(anew.has(other)) || (lengths[other] ?? 0) - (lengths[one] ?? 0),
      );
    if (longest === undefined) continue;
    lengths[longest] = ticks((lengths[longest] ?? 0) - (ways[longest]?.[axis] ?? 0) * (misses[axis] ?? 0));
  }
  return lengths.every((length) => length >= TICKS_PER_INCH)
    ? { miss, again, outline: settledWalk(path(lengths, ways)) }
    : { miss, again };
}

/** The direction of a rectilinear wall: one step along x or y. */
function wayOf(outline: Outline, index: number): Point {
  const [[ax, ay], [bx, by]] = [at(outline, index), at(outline, index + 1)];
  return [Math.sign(bx - ax), Math.sign(by - ay)];
}

function path(lengths: readonly Length[], ways: readonly Point[]): readonly Point[] {
  let [x, y] = [0, 0];
  return lengths.map((length, i): Point => {
    const corner: Point = [x, y];
    const [dx, dy] = ways[i] ?? [0, 0];
    [x, y] = [x + dx * length, y + dy * length];
    return corner;
  });
}

/** 1/64 in, in ticks. */
export const FINEST = TICKS_PER_INCH / 64;

/** A length in a plain text, in ticks, and its position. */
interface Figure {
  readonly from: number;
  readonly to: number;
  readonly ticks: number;
}

/** Every length in a text, without angles. */
function figuresIn(text: string, preferences: Preferences): readonly Figure[] {
  const plain = plainText(text);
  const bare = unitIn(text) ?? (preferences.units === 'metric' ? 'm' : 'ft');
  const reading = { option: 'room', preferences, note: () => undefined };
  const figures: Figure[] = [];
  for (let at = 0; at < plain.length; at++) {
    if (!/[\d.]/.test(plain[at] ?? '')) continue;
    // Here a minus leaves out a corner, so it doesn't join two parts of one length.
    const part = plain.slice(0, at) + (/^.*?(?= [-+] )/.exec(plain.slice(at))?.[0] ?? plain.slice(at));
    const quantity = quantityAt(part, at, { reading, bare, sum: false });
    if (!quantity || 'expected' in quantity) continue;
    if (!/^ ?(?:°|deg)/.test(plain.slice(quantity.end)))
      figures.push({ from: at, to: quantity.end, ticks: ticksOf(quantity, bare) });
    at = quantity.end - 1;
  }
  return figures;
}

function ticksOf({ power, top, bottom }: Quantity, bare: LengthUnit): number {
  return Number(power === 0 ? top * UNITS[bare].ticks : top) / Number(bottom);
}

/** A length to 1/64 in or to 1 mm, whichever is exact, or else in its own system. */
function fine(length: Length, units: Units): string {
  const metric = length % TICKS_PER_MM === 0 && (units === 'metric' || length % FINEST !== 0);
  if (metric || (units === 'metric' && length % FINEST !== 0)) return `${Math.round(length / TICKS_PER_MM)} mm`;
  const all = Math.round(length / FINEST);
  const [feet, inches] = [Math.floor(all / (64 * 12)), Math.floor(all / 64) % 12];
  let [top, bottom] = [all % 64, 64];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const part = top === 0 ? '' : `${top}/${bottom}`;
  const inch = inches === 0 && part !== '' ? part : [inches, part].filter((one) => one !== '').join(' ');
  if (feet === 0) return `${inch}"`;
  return inch === '0' ? `${feet}'` : `${feet}' ${inch}"`;
}

interface ParsedRoom {
  readonly name: string;
  readonly text: string;
}

/** A wall by its number, counted from 1 counterclockwise from the lower left corner, and its measured length. */
export interface ParsedWall {
  readonly wall: number;
  readonly length: Length;
}

/** `open`: the walls wouldn't meet; `unsure`: several lengths in the room's text could account for it. */
type Remeasured =
  | { readonly ok: true; readonly text: string }
  | ({ readonly ok: false; readonly why: 'open' } & Closing)
  | { readonly ok: false; readonly why: 'unsure'; readonly again: readonly number[] };

/** The outline that walls are numbered on; undefined for text that isn't a room. */
export function outlineOf(room: ParsedRoom, preferences: Preferences): Outline | undefined {
  return readInTime(() => outlineIn(room, preferences));
}

function outlineIn(room: ParsedRoom, preferences: Preferences): Outline | undefined {
  return outlinesOf(room, preferences)?.[0];
}

export function wallsOf(outline: Outline): readonly Length[] {
  return outline.map((_, i) => wallLength(outline, i));
}

/**
 * The length of a wall that is about `near` long; a number without a unit is taken in the unit that comes closest, with
 * a note.
 */
export function readWallLength(text: string, near: Length, given: Units, reading: Reading): Read<Length> {
  return readInTime(() => wallLengthIn(text, near, given, reading));
}

function wallLengthIn(text: string, near: Length, given: Units, reading: Reading): Read<Length> {
  const bare = nearestUnit(text, near, given, reading.preferences);
  return readLength(text, reading, bare);
}

/**
 * The room with a remeasured wall: the one number in its text that gives the wall this length is changed, such as a
 * side of a rectangle. If no single number does, `earlier` measurements of the same room are used along with it. Never
 * throws.
 */
export function remeasured(
  room: ParsedRoom,
  given: ParsedWall,
  earlier: readonly ParsedWall[],
  units: Units,
  preferences: Preferences,
): Remeasured {
  return readInTime(() => remeasuredIn(room, given, earlier, units, preferences));
}

function remeasuredIn(
  room: ParsedRoom,
  given: ParsedWall,
  earlier: readonly ParsedWall[],
  units: Units,
  preferences: Preferences,
): Remeasured {
  const outlines = outlinesOf(room, preferences);
  const outline = outlines?.[0];
  if (!outline || !outlines) return { ok: false, why: 'unsure', again: [] };
  const walls = wallsOf(outline);
  const found = oneFigure(room, given, given.length - (walls[given.wall - 1] ?? 0), outlines, units, preferences);
  const [only, ...more] = likeliest(found, earlier);
  if (only && more.length === 0) return { ok: true, text: only.text };
  if (more.length > 0 || !isRectilinear(outline)) return { ok: false, why: 'unsure', again: differing(found, walls) };
  // In any room with four corners the wall across is equally long.
  const across = outline.length === 4 ? [[{ wall: ((given.wall + 1) % 4) + 1, length: given.length }]] : [];
  for (const others of [...across, [], ...earlier.map((one) => [one]), earlier]) {
    const closed = closedBy(outline, [...others.filter(({ wall }) => wall !== given.wall), given]);
    const text = closed.outline && walked(closed.outline, units);
    if (text !== undefined && reads({ ...room, text }, closed.outline, preferences)) return { ok: true, text };
  }
  const sure = earlier.map(({ wall }) => wall);
  return { ok: false, why: 'open', ...closedBy(outline, [given], sure) };
}

interface Way {
  readonly text: string;
  readonly walls: readonly Length[];
}

/** Of several changes that would fit the wall, those that most of the earlier measurements support. */
function likeliest(ways: readonly Way[], earlier: readonly ParsedWall[]): readonly Way[] {
  const fitting = ({ walls }: Way): number =>
    earlier.filter(({ wall, length }) => near(walls[wall - 1] ?? 0, length)).length;
  const most = Math.max(0, ...ways.map(fitting));
  return ways.filter((one) => fitting(one) === most);
}

/** Walls, by number, whose lengths would tell the options apart. */
function differing(ways: readonly Way[], now: readonly Length[]): readonly number[] {
  const changed = now.map((length, i) => ways.filter(({ walls }) => !near(walls[i] ?? 0, length)).length);
  return changed.flatMap((count, i) => (count > 0 && count < ways.length ? [i + 1] : []));
}

/** Texts with one number changed by the difference in which the wall fits. */
function oneFigure(
  room: ParsedRoom,
  { wall, length }: ParsedWall,
  by: number,
  outlines: readonly Outline[],
  units: Units,
  preferences: Preferences,
): readonly Way[] {
  const found = new Map<string, Way>();
  for (const { from, to, ticks: size } of figuresIn(room.text, preferences)) {
    for (const way of [1, -1]) {
      const changed = size + way * by;
      if (changed <= 0) continue;
      const plain = plainText(room.text);
      const text = `${plain.slice(0, from).trimEnd()} ${fine(ticks(changed), units)} ${plain.slice(to).trimStart()}`
        .replace(/ x(?=\d)/g, ' x ')
        .trim();
      const after = outlinesOf({ ...room, text }, preferences);
      const [first] = after ?? [];
      const same = first && first.length === outlines[0]?.length && after?.length === outlines.length;
      if (same && near(wallsOf(first)[wall - 1] ?? 0, length))
        found.set(JSON.stringify(after), { text, walls: wallsOf(first) });
    }
  }
  return [...found.values()];
}

/** A walk around a rectilinear outline from its first corner. */
function walked(outline: Outline, units: Units): string {
  const walls = wallsOf(outline).map((length) => fine(length, units));
  const turns = outline.map((_, i) => (i === 0 ? 'right' : isLeft(outline, i) ? 'left' : 'right'));
  return `walk ${walls.map((wall, i) => `${turns[i]} ${wall}`).join(' ')}`;
}

function isLeft(outline: Outline, corner: number): boolean {
  const [a, b, c] = [corner - 1, corner, corner + 1].map((i) => outline[i % outline.length] ?? [0, 0]);
  const [[ax, ay], [bx, by], [cx, cy]] = [a ?? [0, 0], b ?? [0, 0], c ?? [0, 0]];
  return Math.sign(bx - ax) * Math.sign(cy - by) - Math.sign(by - ay) * Math.sign(cx - bx) > 0;
}

function reads(room: ParsedRoom, wanted: Outline | undefined, preferences: Preferences): boolean {
  const [found, ...more] = outlinesOf(room, preferences) ?? [];
  return (
    found !== undefined &&
    more.length === 0 &&
    found.length === wanted?.length &&
    found.every(([x, y], i) => near(x, wanted[i]?.[0] ?? 0) && near(y, wanted[i]?.[1] ?? 0))
  );
}

function near(one: number, other: number): boolean {
  return Math.abs(one - other) <= FINEST;
}

function outlinesOf(room: ParsedRoom, preferences: Preferences): readonly Outline[] | undefined {
  const read = readRooms(roomGiven(room), { option: 'room', preferences, note: () => undefined });
  return read.ok ? read.value.rooms.map(({ outline }) => outline) : undefined;
}

/** The unit in which a bare number comes closest to a length; any unit for text that has one. */
function nearestUnit(text: string, length: Length, given: Units, preferences: Preferences): LengthUnit {
  const [first, ...others]: LengthUnit[] = given === 'metric' ? ['m', 'mm', 'cm'] : ['ft', 'in'];
  const reading = { option: 'length', preferences, note: () => undefined };
  const off = (unit: LengthUnit): number => {
    const read = readLength(text, reading, unit);
    return read.ok ? Math.abs(Math.log(read.value / length)) : Number.POSITIVE_INFINITY;
  };
  return others.reduce((best, unit) => (off(unit) < off(best) ? unit : best), first ?? 'ft');
}

/** The system of measurement of a text, or the user's own if it names none. */
export function unitsGiven(text: string, preferences: Preferences): Units {
  const unit = unitIn(text);
  return unit ? unitsOf(unit) : preferences.units;
}
