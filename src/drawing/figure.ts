/** One room's figure: floor, walls with their lengths, and the labels beside its rows, on a ground of its own. */

import type { Saying } from '../input/format.ts';
import type { Piece, Plan } from '../layout/floor.ts';
import { startWall } from '../layout/home-regions.ts';
import type { Place, Shape, Text } from '../reply/drawing.ts';
import { DRAWING } from '../text/drawing-text.ts';
import type { CutSource } from './cut-source.ts';
import { type Fit, levelIn, STRIP, WALL } from './fit.ts';
import { plankShapes, ringsOf, type Seen, wallShapes } from './floor-shapes.ts';
import { textWidth } from './font.ts';
import { type Column, columnTexts, LINE, levelsOf } from './label-column.ts';
import { roomMarks } from './room-mark.ts';
import type { RowLabel } from './row-label.ts';
import { type Box, baseline, SMALL, textBox, write } from './text.ts';
import { place, type View } from './view.ts';
import { type DrawnWall, drawnWalls, wallTexts } from './wall-label.ts';
import type { Window } from './window.ts';

const ARROW = 26;

/** A figure `width` by `height` on the sheet; `listed` are walls whose lengths found no room on it. */
export interface Figure {
  /** From (0, 0): rows lying, to be turned a quarter to the left where `upright`. */
  readonly shapes: readonly Shape[];
  readonly upright: boolean;
  readonly width: number;
  readonly height: number;
  readonly listed: readonly string[];
  /** Rooms and things whose names found no room. */
  readonly unnamed?: readonly string[];
}

/** Bounds of the visible floor on the lying figure. */
interface Ground {
  readonly seen: Seen;
  readonly floor: Box;
  readonly width: number;
  readonly height: number;
  /** Outer edges of the label columns. */
  readonly left: number;
  readonly right: number;
  readonly levelOf: (label: RowLabel) => number;
}

/** Composes a measured figure. */
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

/** Walls by the numbers they were told with, room by room. */
function wallsOf(view: View, saying: Saying, seen: Seen, floor: Box): readonly DrawnWall[] {
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

/** A column's texts, and the lines from them to the rows' ends. */
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

/** Width of the words and the arrow that tell the laying direction. */
function stripWidth(): number {
  return textWidth(DRAWING.direction, SMALL, false) + 5 + ARROW;
}

/** Beside the starting wall: the direction in words, and an arrow. */
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

/** The floor with its walls, cut off where the floor goes on. */
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
