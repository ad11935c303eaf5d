/** One room's figure: floor, walls with their lengths, and the labels beside its rows. */

import { type Saying, sayLength } from '../input/format.ts';
import type { Piece, Plan, Region } from '../layout/floor.ts';
import { startWall } from '../layout/home-regions.ts';
import type { Place, Shape, Text } from '../reply/drawing.ts';
import { DRAWING } from '../text/drawing-text.ts';
import { boxOf, type Outline } from '../units/geometry.ts';
import { ticks } from '../units/length.ts';
import { type Column, columnTexts, type Fit, LINE, levelIn, levelsOf, STRIP, WALL } from './fit.ts';
import { type CutSource, plankShapes, ringsOf, type Seen, wallShapes } from './floor-shapes.ts';
import { type DrawnWall, drawnWalls, type RowLabel, wallTexts } from './labels.ts';
import { clippedLines, clippedRings, place, type RoomView, type Window } from './shapes.ts';
import { type Box, baseline, meet, SMALL, textBox, textWidth, write } from './text.ts';

/** Grid of positions tried for a name across and down the visible part of a room, starting in the middle. */
const STEPS = 8;
const PAD = 1.5;

interface Marks {
  readonly shapes: readonly Shape[];
  readonly listed: readonly string[];
}

/** Marks of a view within the visible floor; names stay clear of `kept`. */
export function roomMarks(
  view: Pick<RoomView, 'seen' | 'upright'> & { readonly region: Region },
  seen: Seen,
  floor: Box,
  kept: readonly Box[] = [],
): Marks {
  const { region } = view;
  const ringOf = (outline: Outline): readonly Place[] =>
    clippedRings(ringsOf([view.seen(outline)], seen), floor)[0] ?? [];
  const things = (region.standing ?? [])
    .map(({ name, outline }) => ({ name, ring: ringOf(outline) }))
    .filter(({ ring }) => ring.length > 2);
  const solid = things.map(({ ring }) => boxAround(ring));
  const named = region.rooms && region.rooms.length > 1 ? region.rooms : [];
  const shapes: Shape[] = things.map(({ ring }) => ({ kind: 'polygon', role: 'standing', rings: [ring] }));
  const doors = region.openings.flatMap(({ from, to }) => {
    const [a, b] = view.seen([from, to]).map((point) => seen.at(point));
    return a && b ? [[a, b] as const] : [];
  });
  if (doors.length > 0) shapes.push({ kind: 'lines', role: 'transition', lines: clippedLines(doors, floor) });
  const listed: string[] = [];
  const taken: Box[] = [...kept];
  const take = (text: Text): void => {
    const box = padded(textBox(text));
    taken.push(box);
    const { left, right, top, bottom } = box;
    shapes.push(
      { kind: 'rect', role: 'label-ground', x: left, y: top, width: right - left, height: bottom - top },
      text,
    );
  };
  for (const { name, ring } of things) {
    const text = nameIn(name, ring, view.upright, taken);
    if (text) take(text);
    else listed.push(name);
  }
  for (const { name, outline } of named) {
    const ring = ringOf(outline);
    if (ring.length < 3) continue;
    const text = nameIn(name, ring, view.upright, [...taken, ...solid]);
    if (text) take(text);
    else listed.push(name);
  }
  return { shapes, listed };
}

/** Places a name completely inside a ring and clear of `taken`, as close to the middle as possible. */
function nameIn(name: string, ring: readonly Place[], upright: boolean, taken: readonly Box[]): Text | undefined {
  const { left, right, top, bottom } = boxAround(ring);
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const places = Array.from({ length: (STEPS + 1) ** 2 }, (_, i): Place => {
    const [across, down] = [i % (STEPS + 1), Math.floor(i / (STEPS + 1))];
    return [left + ((right - left) * across) / STEPS, top + ((bottom - top) * down) / STEPS];
  }).sort((a, b) => Math.hypot(a[0] - x, a[1] - y) - Math.hypot(b[0] - x, b[1] - y));
  const turns = upright ? ([90, 0] as const) : ([0, -90] as const);
  for (const turn of turns) {
    for (const [px, py] of places) {
      const rise = SMALL * 0.365;
      const [dx, dy] = turn === 0 ? [0, rise] : [turn === -90 ? rise : -rise, 0];
      const text = write('room-label', name, px + dx, py + dy, { bold: true, anchor: 'middle', turn });
      const box = padded(textBox(text));
      const corners: readonly Place[] = [
        [box.left, box.top],
        [box.right, box.top],
        [box.right, box.bottom],
        [box.left, box.bottom],
      ];
      if (corners.every((corner) => holds(ring, corner)) && !taken.some((other) => meet(box, other, 0.5))) return text;
    }
  }
  return undefined;
}

function padded({ left, right, top, bottom }: Box): Box {
  return { left: left - PAD, right: right + PAD, top: top - PAD / 2, bottom: bottom + PAD / 2 };
}

function boxAround(ring: readonly Place[]): Box {
  const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function holds(ring: readonly Place[], [x, y]: Place): boolean {
  let inside = false;
  for (const [i, [ax, ay]] of ring.entries()) {
    const [bx, by] = ring[(i + 1) % ring.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  }
  return inside;
}

const ARROW = 26;

/** A figure of `width` by `height` on the sheet; `listed` are walls whose lengths didn't fit on it. */
export interface Figure {
  /** From (0, 0), with rows horizontal; turn it a quarter turn left if `upright`. */
  readonly shapes: readonly Shape[];
  readonly upright: boolean;
  readonly width: number;
  readonly height: number;
  readonly listed: readonly string[];
  /** Rooms and fixtures whose names didn't fit. */
  readonly unnamed?: readonly string[];
}

/** Bounds of the visible floor on the figure before it is turned. */
interface Ground {
  readonly seen: Seen;
  readonly floor: Box;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly levelOf: (label: RowLabel) => number;
}

export function drawFigure(fit: Fit, plan: Plan, sources: ReadonlyMap<Piece, CutSource>, saying: Saying): Figure {
  const { view, window } = fit;
  const ground = groundOf(fit);
  const { seen, floor, width, height } = ground;
  const labels = [...labelled(fit, fit.left, ground, 'left'), ...labelled(fit, fit.right, ground, 'right')];
  const strip = directionStrip(fit, ground);
  const walls = wallsOf(view, saying, seen, floor);
  const marks = roomMarks(view, seen, floor);
  const { band, gap } = wallShapes(view, plan, seen, WALL, withWalls(floor, window));
  const isText = (shape: Shape): shape is Text => shape.kind === 'text';
  const rings = ringsOf([view.outline, ...view.holes], seen);
  const taken = [...labels, ...strip].filter(isText).map(textBox);
  const { texts, listed } = wallTexts(walls, rings, taken, WALL, view.upright);
  const shapes: readonly Shape[] = [
    ...labels.filter((shape) => !isText(shape)),
    band,
    ...walls.filter((wall) => wall.starting).map(({ from, to, out }) => bandOf(from, to, out)),
    ...gap,
    ...plankShapes(view, plan, window, sources, seen, floor),
    ...marks.shapes,
    ...pageEdges(floor, window.cutLow, window.cutHigh),
    ...labels.filter(isText),
    ...strip,
    ...texts,
  ];
  const size = view.upright ? { width: height, height: width } : { width, height };
  return { shapes, upright: view.upright, ...size, listed, unnamed: marks.listed };
}

/** Walls by the numbers the user gave them, room by room. */
function wallsOf(view: RoomView, saying: Saying, seen: Seen, floor: Box): readonly DrawnWall[] {
  const { region } = view;
  const start = startWall(region, region.frame.angle);
  const rooms = region.rooms ?? [{ name: region.name, outline: region.outline }];
  return rooms.flatMap(({ name, outline }) => {
    const starting = start && start.room === name ? start.number - 1 : undefined;
    const walls = drawnWalls(view.seen(outline), starting, saying, seen.at, floor);
    return rooms.length > 1 ? walls.map((wall) => ({ ...wall, room: name })) : walls;
  });
}

function groundOf({ view, window, scale, left, right, leftZone, rightZone }: Fit): Ground {
  const wide = (window.maxX - window.minX) * scale;
  const deep = (window.maxY - window.minY) * scale;
  // The words of the strip may be wider than a narrow room with its labels.
  const [before, after] = [left.width + leftZone + WALL, WALL + rightZone + right.width];
  const strip = (stripWidth() - wide) / 2;
  const x = Math.max(before, strip);
  const rawLevel = ({ v }: RowLabel): number => levelIn(view, window, scale, v);
  const levels = [left, right].flatMap((column) => levelsOf(column, rawLevel));
  const top = Math.min(-WALL, ...levels.map((level) => level - LINE / 2)) - (view.reversed ? STRIP : 0);
  const bottom = Math.max(deep + WALL, ...levels.map((level) => level + LINE / 2)) + (view.reversed ? 0 : STRIP);
  const seen: Seen = {
    scale,
    at: ([px, py]) => [x + (px - window.minX) * scale, (window.maxY - py) * scale - top],
  };
  return {
    seen,
    floor: { left: x, right: x + wide, top: -top, bottom: deep - top },
    width: x + wide + Math.max(after, strip),
    left: x - before,
    right: x + wide + after,
    height: bottom - top,
    levelOf: (label) => rawLevel(label) - top,
  };
}

function labelled(fit: Fit, column: Column, ground: Ground, side: 'left' | 'right'): readonly Shape[] {
  if (column.labels.length === 0) return [];
  const levels = levelsOf(column, ground.levelOf);
  const x = side === 'left' ? ground.left : ground.right - column.width;
  const [edge, near] =
    side === 'left'
      ? [ground.left + column.width + 2, ground.floor.left - WALL]
      : [ground.right - column.width - 2, ground.floor.right + WALL];
  const { rows } = fit.view.region;
  const leaders = column.labels.flatMap((label, i): Shape[] => {
    const pieces = rows[label.row]?.pieces ?? [];
    const [first, last] = [pieces[0], pieces.at(-1)];
    if (!label.leads || !first || !last) return [];
    const atStart = (side === 'left') !== fit.view.reversed;
    const y = ground.levelOf(label);
    const [end] = ground.seen.at(place(fit.view, atStart ? first.u : last.u + last.length, 0));
    return [
      {
        kind: 'line',
        role: 'leader',
        points: [
          [end, y],
          [near, y],
          [edge, levels[i] ?? y],
        ],
      },
    ];
  });
  return [...leaders, ...columnTexts(column, levels, x, side === 'left' ? 'right' : 'left')];
}

function stripWidth(): number {
  return textWidth(DRAWING.direction, SMALL, false) + 5 + ARROW;
}

function directionStrip({ view }: Fit, { floor, height }: Ground): readonly Shape[] {
  const y = view.reversed ? STRIP / 2 - 2 : height - STRIP / 2 + 2;
  const from = (floor.left + floor.right - stripWidth()) / 2;
  const wide = stripWidth() - ARROW;
  const [textAt, tail] = view.reversed ? [from + ARROW + 5, from + ARROW] : [from, from + wide];
  return [
    write('direction-label', DRAWING.direction, textAt, baseline(y)),
    { kind: 'arrow', role: 'direction', from: [tail, y], to: [view.reversed ? tail - ARROW : tail + ARROW, y] },
  ];
}

function bandOf([ax, ay]: Place, [bx, by]: Place, [ox, oy]: Place): Shape {
  const [x, y] = [Math.min(ax, bx, ax + ox * WALL, bx + ox * WALL), Math.min(ay, by, ay + oy * WALL, by + oy * WALL)];
  const width = ox === 0 ? Math.abs(bx - ax) : WALL;
  return { kind: 'rect', role: 'wall-start', x, y, width, height: ox === 0 ? WALL : Math.abs(by - ay) };
}

/** The floor with its walls, cut off where the floor continues. */
function withWalls({ left, right, top, bottom }: Box, { cutLow, cutHigh }: Window): Box {
  return {
    left: left - WALL,
    right: right + WALL,
    top: top - (cutHigh ? 0 : WALL),
    bottom: bottom + (cutLow ? 0 : WALL),
  };
}

function pageEdges({ left, right, top, bottom }: Box, cutLow: boolean, cutHigh: boolean): readonly Shape[] {
  const edge = (y: number): Shape => ({
    kind: 'line',
    role: 'page-edge',
    points: [
      [left - WALL, y],
      [right + WALL, y],
    ],
  });
  return [...(cutHigh ? [edge(top)] : []), ...(cutLow ? [edge(bottom)] : [])];
}

/** A region's bounding sides in words, as the user gave them. */
export function saySize(region: Region, saying: Saying): string {
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  return DRAWING.size(sayLength(ticks(maxX - minX), saying), sayLength(ticks(maxY - minY), saying));
}
