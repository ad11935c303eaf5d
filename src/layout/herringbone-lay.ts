/** Laying a herringbone floor: boards placed, cut at the walls, and offcuts reused where they fit. */

import { at, doubleArea, type Outline, type Point } from '../units/geometry.ts';
import { groundArea, groundOf } from './covered-area.ts';
import { type NestPiece, nestPlanks } from './cutting.ts';
import type { Frame, Plank, Region } from './floor.ts';
import { frameOf } from './frame.ts';
import {
  anchorsFor,
  type BoardCut,
  type BoardWay,
  boxAgainst,
  boxAt,
  cutOf,
  type HerringBoard,
  type HerringPlan,
  type HerringRules,
  type NoBorder,
  onBoard,
  spotsOver,
} from './herringbone.ts';

// The border: boards along the walls, mitered at the corners, courses offset by half a board.

interface BorderBoard extends BoardWay {
  readonly course: number;
  readonly cut: BoardCut;
}

/** The border and the outline left for the field, or undefined if a wall is too short for it. */
function borderOf(
  outline: Outline,
  courses: number,
  board: { readonly length: number; readonly width: number },
  minEnd: number,
): { readonly boards: readonly BorderBoard[]; readonly inner: Outline } | undefined {
  const boards: BorderBoard[] = [];
  let outer = outline;
  for (let course = 1; course <= courses; course++) {
    const inner = drawnIn(outer, board.width);
    if (!inner) return undefined;
    for (const i of outer.keys()) boards.push(...strip(outer, inner, i, course, board, minEnd));
    outer = inner;
  }
  return { boards, inner: outer };
}

/** Moves every wall in by `by`, corners where the moved walls meet; undefined if a wall disappears. */
function drawnIn(outline: Outline, by: number): Outline | undefined {
  const inner = outline.map((corner, i): Point => {
    const [a, b] = [wayOf(outline, i - 1), wayOf(outline, i)];
    const area = a[0] * b[1] - a[1] * b[0];
    const sum = [a[0] + b[0], a[1] + b[1]] as const;
    // The corner of two collinear walls moves perpendicular to them.
    if (Math.abs(area) < 1e-9) return [Math.round(corner[0] - a[1] * by) + 0, Math.round(corner[1] + a[0] * by) + 0];
    const along = 1 + a[0] * b[0] + a[1] * b[1];
    return [Math.round(corner[0] - (sum[1] / along) * by) + 0, Math.round(corner[1] + (sum[0] / along) * by) + 0];
  });
  const kept = inner.every((from, i) => {
    const [to, way] = [at(inner, i + 1), wayOf(outline, i)];
    return (to[0] - from[0]) * way[0] + (to[1] - from[1]) * way[1] > by / 2;
  });
  return kept && doubleArea(inner) > 0n ? inner : undefined;
}

function wayOf(outline: Outline, index: number): readonly [number, number] {
  const [a, b] = [at(outline, index), at(outline, index + 1)];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(b[0] - a[0]) / long, (b[1] - a[1]) / long];
}

function strip(
  outer: Outline,
  inner: Outline,
  index: number,
  course: number,
  { length, width }: { readonly length: number; readonly width: number },
  minEnd: number,
): readonly BorderBoard[] {
  const corner = at(outer, index);
  const [ux, uy] = wayOf(outer, index);
  const degrees = (Math.atan2(uy, ux) * 180) / Math.PI;
  const along = (Math.round(degrees * 1e6) / 1e6 + 360) % 360;
  const place = ([x, y]: Point): number => Math.round((x - corner[0]) * ux + (y - corner[1]) * uy) + 0;
  const ring: Outline = [
    [0, 0],
    [place(at(outer, index + 1)), 0],
    [place(at(inner, index + 1)), width],
    [place(at(inner, index)), width],
  ];
  const places = ring.map(([x]) => x);
  const [from, to] = [Math.min(...places), Math.max(...places)];
  const way: BoardWay = { corner, along };
  const boards: BorderBoard[] = [];
  let high = from + firstOf(to - from, course, length, minEnd);
  for (let low = from; low < to; high += length) {
    const end = Math.min(high, to);
    const cut = cutOf([ring], way, { low, high: end, length, width });
    if (cut) boards.push({ ...way, course, cut });
    low = end;
  }
  return boards;
}

/**
 * Distance from the start of a course to its first joint: a full board, or half a board in every other course; balanced
 * when the last piece would be too short.
 */
function firstOf(run: number, course: number, length: number, minEnd: number): number {
  const first = course % 2 === 1 ? length : Math.floor(length / 2);
  if (run <= length) return run;
  const rest = (run - first) % length;
  if (rest === 0 || rest >= minEnd) return first;
  return Math.floor((first + rest) / 2) >= minEnd ? Math.floor((first + rest) / 2) : first;
}

export interface ZigzagArea {
  readonly region: Region;
  readonly angle: number;
}

type Placed = Omit<HerringBoard, 'plank'>;

/**
 * Plans a herringbone floor. Boards lie at 45° to either side of the zigzags. Of a few symmetric anchors,
 * the one with the fewest boards wins. Cut pieces share a board only if both fit with a kerf between them: A with A and
 * B with B, each keeping its original end; boards without locks may go either way around. The only bound is by area. If
 * a border doesn't fit, returns the reason.
 */
export function layHerringbone(
  areas: readonly ZigzagArea[],
  plank: Plank,
  rules: HerringRules,
): HerringPlan | NoBorder {
  const made: { region: Region; frame: Frame; boards: readonly Placed[] }[] = [];
  let area = 0n;
  for (const { region, angle } of areas) {
    const frame = frameOf(region, (angle + 315) % 360);
    const ground = groundOf(region, frame, rules.gap);
    area += groundArea(ground);
    const bordered = withBorder(region.name, ground, plank, rules);
    if ('why' in bordered) return bordered;
    const fields = anchorsFor(bordered.field, plank.length, plank.width).map((anchor) =>
      fieldOf(bordered.field, anchor, plank, rules),
    );
    const counts = fields.map((field) => countOf(field, plank, rules));
    const best = fields[counts.indexOf(Math.min(...counts))] ?? [];
    made.push({ region, frame, boards: [...bordered.boards, ...best] });
  }
  const all = made.flatMap(({ boards }) => boards);
  const sources = sourcesOf(all, plank, rules);
  const numbers = new Map<number, number>();
  let index = 0;
  const regions = made.map(({ region, frame, boards }) => ({
    ...region,
    frame,
    boards: boards.map((board): HerringBoard => {
      const source = sources[index++] ?? 0;
      const number = numbers.get(source) ?? numbers.size + 1;
      numbers.set(source, number);
      return { ...board, plank: number };
    }),
  }));
  const uses = new Map<number, number>();
  for (const source of sources) uses.set(source, (uses.get(source) ?? 0) + 1);
  const square = BigInt(plank.length) * BigInt(plank.width);
  const least = Number((area + square - 1n) / square);
  const handOf = (hand: 'A' | 'B'): number =>
    new Set(regions.flatMap(({ boards }) => boards.filter((board) => board.hand === hand).map((board) => board.plank)))
      .size;
  return {
    plank,
    rules,
    regions,
    planks: numbers.size,
    reused: [...uses.values()].filter((count) => count > 1).length,
    whole: all.filter(({ part, shape }) => part === 'whole' && !shape).length,
    pieces: all.filter(({ part, shape }) => part !== 'whole' || shape).length,
    ...(rules.handed && { hands: { A: handOf('A'), B: handOf('B') } }),
    bound: { area: least, row: least, best: least, proven: numbers.size === least },
    aligned: plank.length % plank.width === 0,
  };
}

function withBorder(
  name: string,
  ground: readonly Outline[],
  plank: Plank,
  rules: HerringRules,
): { boards: readonly Placed[]; field: readonly Outline[] } | NoBorder {
  if (rules.border === 0) return { boards: [], field: ground };
  const outers = ground.filter((path) => doubleArea(path) > 0n);
  const holes = ground.filter((path) => doubleArea(path) < 0n);
  const boards: Placed[] = [];
  const field: Outline[] = [];
  for (const outer of outers) {
    const border = borderOf(outer, rules.border, plank, rules.minEnd);
    if (!border) return { region: name, why: 'too wide' };
    for (const { corner, along, course, cut } of border.boards)
      boards.push({ at: corner, along, course, ...cut, part: partOf(cut, rules) });
    field.push(border.inner);
  }
  const clear = holes.every((hole) => {
    const us = hole.map(([u]) => u);
    const vs = hole.map(([, v]) => v);
    const box = [[Math.min(...us), Math.min(...vs)] as Point, [Math.max(...us), Math.max(...vs)] as Point] as const;
    return boxAgainst(field, box) === 'in';
  });
  return clear ? { boards, field: [...field, ...holes] } : { region: name, why: 'meets a hole' };
}

function fieldOf(
  ground: readonly Outline[],
  anchor: Point,
  { length, width }: Plank,
  rules: HerringRules,
): readonly Placed[] {
  return spotsOver(ground, anchor, length, width).flatMap((spot): Placed[] => {
    const { along } = spot;
    const where = boxAgainst(ground, boxAt(spot, length, width));
    if (where === 'out') return [];
    // A board along v is turned a quarter turn about its lower right corner, so that its width lies to the left of its
    // direction.
    const corner: Point = along === 0 ? spot.corner : [spot.corner[0] + width, spot.corner[1]];
    const hand = rules.handed && ({ hand: along === 0 ? 'A' : 'B' } as const);
    const cut: BoardCut | undefined =
      where === 'in'
        ? { from: 0, length, part: 'whole' }
        : cutOf(
            ground.map((path) => path.map((point) => onBoard(point, { corner, along }))),
            { corner, along },
            { low: 0, high: length, length, width },
          );
    return cut ? [{ at: corner, along, ...cut, part: partOf(cut, rules), ...hand }] : [];
  });
}

/** Boards without locks have no distinct ends. */
function partOf({ part }: BoardCut, rules: HerringRules): Placed['part'] {
  return rules.handed || part === 'whole' ? part : 'any';
}

/** For each placed board, the number of the board it is cut from. */
function sourcesOf(boards: readonly Placed[], plank: Plank, rules: HerringRules): readonly number[] {
  const sources: number[] = boards.map(() => -1);
  let last = 0;
  const loose = boards.map((board, index) => ({ board, index }));
  for (const { board, index } of loose) if (board.part === 'whole') sources[index] = last++;
  for (const hand of ['A', 'B', undefined] as const) {
    const pieces = loose
      .filter(({ board }) => board.part !== 'whole' && board.hand === hand)
      .map(({ board, index }) => nestOf(board, index));
    const lock = rules.handed ? 'click' : 'none';
    for (const shared of nestPlanks(pieces, { length: plank.length, width: plank.width, kerf: rules.kerf, lock })) {
      for (const piece of shared) sources[piece.index] = last;
      last++;
    }
  }
  return sources;
}

function countOf(boards: readonly Placed[], plank: Plank, rules: HerringRules): number {
  return new Set(sourcesOf(boards, plank, rules)).size;
}

function nestOf({ length, part, left, right }: Placed, index: number): NestPiece {
  return {
    index,
    length,
    part: part === 'whole' ? 'any' : part,
    near: [left?.near ?? 0, length - (right?.near ?? 0)],
    far: [left?.far ?? 0, length - (right?.far ?? 0)],
  };
}
