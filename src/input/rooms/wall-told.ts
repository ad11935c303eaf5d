/** A wall of a room measured again: what becomes of the room's text, as far as its walls still meet. */

import { isRectilinear, type Outline, wallLength } from '../../units/geometry.ts';
import { type Length, ticks } from '../../units/length.ts';
import { readInTime } from '../../workers/time-limits.ts';
import { readLength, unitIn, unitsOf } from '../length.ts';
import { plainText } from '../length-text.ts';
import type { LengthUnit } from '../length-units.ts';
import type { Habits, Read, Reading, Units } from '../reading.ts';
import { readRooms } from './room.ts';
import { roomTold } from './room-apart.ts';
import { type Closing, closedBy } from './wall-closing.ts';
import { FINEST, figuresIn, fine } from './wall-figures.ts';

/** A room as it is kept: its name, and its shape as told. */
export interface ToldRoom {
  readonly name: string;
  readonly text: string;
}

/** A wall by its number, counted from 1 against the clock from the lower left corner, and how long it was found. */
export interface ToldWall {
  readonly wall: number;
  readonly length: Length;
}

/** `open`: the walls would not meet; `unsure`: several things told of the room could make the wall so long. */
export type Remeasured =
  | { readonly ok: true; readonly text: string }
  | ({ readonly ok: false; readonly why: 'open' } & Closing)
  | { readonly ok: false; readonly why: 'unsure'; readonly again: readonly number[] };

/** The outline that walls are numbered on; undefined for a text that is no room. */
export function outlineOf(room: ToldRoom, habits: Habits): Outline | undefined {
  return readInTime(() => outlineIn(room, habits));
}

function outlineIn(room: ToldRoom, habits: Habits): Outline | undefined {
  return outlinesOf(room, habits)?.[0];
}

/** How long each wall is as told, in their order. */
export function wallsOf(outline: Outline): readonly Length[] {
  return outline.map((_, i) => wallLength(outline, i));
}

/** A length of a wall that is about `near` long; a number without a unit is taken in the one that comes nearest to it, and noted. */
export function readWallLength(text: string, near: Length, told: Units, reading: Reading): Read<Length> {
  return readInTime(() => wallLengthIn(text, near, told, reading));
}

function wallLengthIn(text: string, near: Length, told: Units, reading: Reading): Read<Length> {
  const bare = nearestUnit(text, near, told, reading.habits);
  return readLength(text, reading, bare);
}

/**
 * The room with a wall told anew: the one figure of its text that makes the wall so long is changed, such as the side of a
 * rectangle. Where no one figure does, `earlier` walls told of the same room are taken with it. Never throws.
 */
export function remeasured(
  room: ToldRoom,
  told: ToldWall,
  earlier: readonly ToldWall[],
  units: Units,
  habits: Habits,
): Remeasured {
  return readInTime(() => remeasuredIn(room, told, earlier, units, habits));
}

function remeasuredIn(
  room: ToldRoom,
  told: ToldWall,
  earlier: readonly ToldWall[],
  units: Units,
  habits: Habits,
): Remeasured {
  const outlines = outlinesOf(room, habits);
  const outline = outlines?.[0];
  if (!outline || !outlines) return { ok: false, why: 'unsure', again: [] };
  const walls = wallsOf(outline);
  const found = oneFigure(room, told, told.length - (walls[told.wall - 1] ?? 0), outlines, units, habits);
  const [only, ...more] = likeliest(found, earlier);
  if (only && more.length === 0) return { ok: true, text: only.text };
  if (more.length > 0 || !isRectilinear(outline)) return { ok: false, why: 'unsure', again: differing(found, walls) };
  // The wall across from it is as long in any room of four corners.
  const across = outline.length === 4 ? [[{ wall: ((told.wall + 1) % 4) + 1, length: told.length }]] : [];
  for (const others of [...across, [], ...earlier.map((one) => [one]), earlier]) {
    const closed = closedBy(outline, [...others.filter(({ wall }) => wall !== told.wall), told]);
    const text = closed.outline && walked(closed.outline, units);
    if (text !== undefined && reads({ ...room, text }, closed.outline, habits)) return { ok: true, text };
  }
  const sure = earlier.map(({ wall }) => wall);
  return { ok: false, why: 'open', ...closedBy(outline, [told], sure) };
}

interface Way {
  readonly text: string;
  readonly walls: readonly Length[];
}

/** Of several ways to make a wall so long, those that most of the walls told earlier speak for. */
function likeliest(ways: readonly Way[], earlier: readonly ToldWall[]): readonly Way[] {
  const fitting = ({ walls }: Way): number =>
    earlier.filter(({ wall, length }) => near(walls[wall - 1] ?? 0, length)).length;
  const most = Math.max(0, ...ways.map(fitting));
  return ways.filter((one) => fitting(one) === most);
}

/** The walls that tell the ways apart, by their numbers. */
function differing(ways: readonly Way[], now: readonly Length[]): readonly number[] {
  const changed = now.map((length, i) => ways.filter(({ walls }) => !near(walls[i] ?? 0, length)).length);
  return changed.flatMap((count, i) => (count > 0 && count < ways.length ? [i + 1] : []));
}

/** Texts with one figure longer or shorter by so much in which the wall is as told. */
function oneFigure(
  room: ToldRoom,
  { wall, length }: ToldWall,
  by: number,
  outlines: readonly Outline[],
  units: Units,
  habits: Habits,
): readonly Way[] {
  const found = new Map<string, Way>();
  for (const { from, to, ticks: size } of figuresIn(room.text, habits)) {
    for (const way of [1, -1]) {
      const changed = size + way * by;
      if (changed <= 0) continue;
      const plain = plainText(room.text);
      const text = `${plain.slice(0, from).trimEnd()} ${fine(ticks(changed), units)} ${plain.slice(to).trimStart()}`
        .replace(/ x(?=\d)/g, ' x ')
        .trim();
      const after = outlinesOf({ ...room, text }, habits);
      const [first] = after ?? [];
      const same = first && first.length === outlines[0]?.length && after?.length === outlines.length;
      if (same && near(wallsOf(first)[wall - 1] ?? 0, length))
        found.set(JSON.stringify(after), { text, walls: wallsOf(first) });
    }
  }
  return [...found.values()];
}

/** A walk round an outline of right angles from its first corner. */
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

function reads(room: ToldRoom, wanted: Outline | undefined, habits: Habits): boolean {
  const [found, ...more] = outlinesOf(room, habits) ?? [];
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

function outlinesOf(room: ToldRoom, habits: Habits): readonly Outline[] | undefined {
  const read = readRooms(roomTold(room), { option: 'room', habits, note: () => undefined });
  return read.ok ? read.value.rooms.map(({ outline }) => outline) : undefined;
}

/** The unit of a bare number in which it is nearest to a length; for a text with a unit, any. */
function nearestUnit(text: string, length: Length, told: Units, habits: Habits): LengthUnit {
  const [first, ...others]: LengthUnit[] = told === 'metric' ? ['m', 'mm', 'cm'] : ['ft', 'in'];
  const reading = { option: 'length', habits, note: () => undefined };
  const off = (unit: LengthUnit): number => {
    const read = readLength(text, reading, unit);
    return read.ok ? Math.abs(Math.log(read.value / length)) : Number.POSITIVE_INFINITY;
  };
  return others.reduce((best, unit) => (off(unit) < off(best) ? unit : best), first ?? 'ft');
}

/** The system of measures in which a text is told; that of the habits where it names none. */
export function unitsTold(text: string, habits: Habits): Units {
  const unit = unitIn(text);
  return unit ? unitsOf(unit) : habits.units;
}
