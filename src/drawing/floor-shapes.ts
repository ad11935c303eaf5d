/** The floor as shapes to scale: walls, gap, rows, joints and cut pieces. */

import { coverable, inset } from '../layout/covered-area.ts';
import type { LaidRegion, Piece, Plan, Row } from '../layout/floor.ts';
import { runsIn } from '../layout/runs.ts';
import { type Slab, type Span, subtract, union } from '../layout/slab.ts';
import type { Place, Shape, ShapeRole } from '../reply/drawing.ts';
import type { Outline, Point } from '../units/geometry.ts';
import { clippedLines, clippedRings, type OnFloor, place, type RoomView, type RowRange, sidesOf } from './shapes.ts';
import type { Box } from './text.ts';

// Which plank each piece is cut from, in laying order; the numbers match the laying guide.

/**
 * `whole`: uncut. `new`: from a new plank whose rest isn't used. `kept`: from a new plank whose rest is laid later.
 * `reused`: from the rest of an earlier plank. Only the last two have a number.
 */
export interface CutSource {
  readonly kind: 'whole' | 'new' | 'kept' | 'reused';
  readonly number?: number;
}

export function cutSources(plan: Plan): ReadonlyMap<Piece, CutSource> {
  const pieces = plan.regions.flatMap(({ rows }) => rows.flatMap((row) => row.pieces));
  const uses = new Map<number, number>();
  for (const { plank } of pieces) uses.set(plank, (uses.get(plank) ?? 0) + 1);
  const begun = new Set<number>();
  return new Map(
    pieces.map((piece): readonly [Piece, CutSource] => {
      const { plank, part } = piece;
      const first = !begun.has(plank);
      begun.add(plank);
      if (part === 'whole') return [piece, { kind: 'whole' }];
      if ((uses.get(plank) ?? 0) < 2) return [piece, { kind: 'new' }];
      return [piece, { kind: first ? 'kept' : 'reused', number: plank }];
    }),
  );
}

/** How many planks are started in each region; they add up to the planks of the plan. */
export function planksBegun(plan: Plan): readonly number[] {
  const begun = new Set<number>();
  return plan.regions.map(({ rows }) => {
    const before = begun.size;
    for (const row of rows) for (const { plank } of row.pieces) begun.add(plank);
    return begun.size - before;
  });
}

/** True when some piece isn't a full rectangle; the region is then drawn piece by piece. */
function isShaped(region: LaidRegion): boolean {
  return region.rows.some((row) => row.pieces.some(({ shape }) => shape !== undefined));
}

function ringsOfPiece({ u, length, shape }: Piece, { v, height }: Row): readonly Outline[] {
  if (shape) return shape;
  return [
    [
      [u, v],
      [u + length, v],
      [u + length, v + height],
      [u, v + height],
    ],
  ];
}

/** Where a piece meets the previous one in its row, and the previous row: stretches of its sides. */
function seamsOf(piece: Piece, row: Row, joined: boolean, first: boolean): readonly (readonly [Point, Point])[] {
  return ringsOfPiece(piece, row).flatMap((ring) =>
    ring.flatMap((from, i): (readonly [Point, Point])[] => {
      const to = ring[(i + 1) % ring.length] ?? from;
      const end = joined && from[0] === piece.u && to[0] === piece.u;
      const edge = !first && from[1] === row.v && to[1] === row.v;
      return end || edge ? [[from, to]] : [];
    }),
  );
}

export function onFloor(region: LaidRegion, roleOf: (piece: Piece) => ShapeRole): OnFloor {
  const all = region.rows.flatMap((row, r) =>
    row.pieces.map((piece, i) => {
      const before = row.pieces[i - 1];
      return { piece, row, joined: before !== undefined && before.u + before.length === piece.u, first: r === 0 };
    }),
  );
  return {
    pieces: all.map(({ piece, row }) => ({ role: roleOf(piece), rings: ringsOfPiece(piece, row) })),
    lines: all.flatMap(({ piece, row, joined, first }) => seamsOf(piece, row, joined, first)),
  };
}

/** The gap is drawn at least this wide on the sheet. */
export const LEAST_GAP = 1.6;

/** Maps the view to the figure. */
export interface Seen {
  readonly scale: number;
  readonly at: (point: Place) => Place;
}

/** True when the gap is drawn wider than it is. */
export function gapWidened(plan: Plan, scale: number): boolean {
  return plan.rules.gap > 0 && plan.rules.gap * scale < LEAST_GAP;
}

/** Walls of a given thickness (sheet units) around the room, and the gap inside them, clipped to `box`. */
export function wallShapes(
  view: RoomView,
  plan: Plan,
  seen: Seen,
  thickness: number,
  box: Box,
): { band: Shape; gap: readonly Shape[] } {
  const grown = (by: number): readonly (readonly Place[])[] =>
    ringsOf(inset(view.outline, view.holes, -Math.max(1, Math.round(by / seen.scale))), seen);
  const faces = grown(gapWidened(plan, seen.scale) ? LEAST_GAP - plan.rules.gap * seen.scale : 0);
  return {
    band: { kind: 'polygon', role: 'wall', rings: clippedRings(grown(thickness), box) },
    gap: [
      { kind: 'polygon', role: 'gap', rings: clippedRings(faces, box) },
      { kind: 'lines', role: 'wall-face', lines: clippedLines(sidesOf(faces), box) },
    ],
  };
}

/** A range of rows (and whatever of their neighbors `box` shows), clipped to the area planks cover. */
export function plankShapes(
  view: RoomView,
  plan: Plan,
  { first, last }: RowRange,
  sources: ReadonlyMap<Piece, CutSource>,
  seen: Seen,
  box: Box,
): readonly Shape[] {
  const covered = ringsOf(inset(view.outline, view.holes, plan.rules.gap), seen);
  const edge: Shape = { kind: 'lines', role: 'floor-edge', lines: clippedLines(sidesOf(covered), box) };
  if (isShaped(view.region)) return [...shapedPieces(view, { first, last }, sources, seen, box), edge];
  const slabs = coverable(view.region, view.region.frame, plan.rules.gap);
  const rects: Shape[] = [];
  const lines: [Place, Place][] = [];
  const line = (u0: number, v0: number, u1: number, v1: number): void => {
    lines.push([seen.at(place(view, u0, v0)), seen.at(place(view, u1, v1))]);
  };
  for (const row of view.region.rows.slice(Math.max(0, first - 1), last + 2)) {
    const within = slabsIn(slabs, row);
    const rect = (role: ShapeRole, from: number, to: number): void => {
      for (const { bottom, top, spans } of within) {
        for (const span of overlap(spans, from, to)) {
          const corners = [seen.at(place(view, span.from, bottom)), seen.at(place(view, span.to, top))] as const;
          rects.push(...rectBetween(role, corners[0], corners[1], box));
        }
      }
    };
    for (const pieces of runsIn(row)) {
      for (const [i, piece] of pieces.entries()) {
        rect(roleOf(piece, sources), piece.u, piece.u + piece.length);
        if (i === 0) continue;
        for (const { bottom, top, spans } of within) {
          if (spans.some(({ from, to }) => from < piece.u && to > piece.u)) line(piece.u, bottom, piece.u, top);
        }
      }
    }
    for (const { from, to } of openAt(slabs, row.v)) line(from, row.v, to, row.v);
  }
  return [...rects, { kind: 'lines', role: 'joint', lines: clippedLines(lines, box) }, edge];
}

/** Pieces with the shapes that slanted walls leave them, and the lines between them. */
function shapedPieces(
  view: RoomView,
  { first, last }: RowRange,
  sources: ReadonlyMap<Piece, CutSource>,
  seen: Seen,
  box: Box,
): readonly Shape[] {
  const pieces: Shape[] = [];
  const lines: [Place, Place][] = [];
  const at = ([u, v]: Place): Place => seen.at(place(view, u, v));
  view.region.rows.forEach((row, r) => {
    if (r < first - 1 || r > last + 1) return;
    row.pieces.forEach((piece, i) => {
      const rings = clippedRings(
        ringsOfPiece(piece, row).map((ring) => ring.map(at)),
        box,
      );
      if (rings.length > 0) pieces.push({ kind: 'polygon', role: roleOf(piece, sources), rings });
      const before = row.pieces[i - 1];
      const joined = before !== undefined && before.u + before.length === piece.u;
      for (const [from, to] of seamsOf(piece, row, joined, r === 0)) lines.push([at(from), at(to)]);
    });
  });
  return [...pieces, { kind: 'lines', role: 'joint', lines: clippedLines(lines, box) }];
}

export function rowLines(view: RoomView, plan: Plan, seen: Seen, box: Box): readonly Shape[] {
  if (isShaped(view.region)) {
    const at = ([u, v]: Place): Place => seen.at(place(view, u, v));
    const seams = view.region.rows.flatMap((row, r) =>
      row.pieces.flatMap((piece) => seamsOf(piece, row, false, r === 0)),
    );
    return [
      {
        kind: 'lines',
        role: 'joint',
        lines: clippedLines(
          seams.map(([from, to]) => [at(from), at(to)]),
          box,
        ),
      },
    ];
  }
  const slabs = coverable(view.region, view.region.frame, plan.rules.gap);
  const lines = view.region.rows.flatMap(({ v }) =>
    openAt(slabs, v).map(({ from, to }) => [seen.at(place(view, from, v)), seen.at(place(view, to, v))] as const),
  );
  return [{ kind: 'lines', role: 'joint', lines: clippedLines(lines, box) }];
}

export function roleOf(piece: Piece, sources: ReadonlyMap<Piece, CutSource>): ShapeRole {
  const source = sources.get(piece)?.kind ?? 'whole';
  if (source === 'kept') return 'offcut-kept';
  if (source === 'reused') return 'offcut-reused';
  return source === 'whole' || piece.part === 'whole' ? 'plank-whole' : piece.part;
}

export function ringsOf(outlines: readonly Outline[], seen: Seen): readonly (readonly Place[])[] {
  return outlines.map((outline) => outline.map(seen.at));
}

function slabsIn(slabs: readonly Slab[], row: Row): readonly Slab[] {
  const end = row.v + row.height;
  return slabs
    .filter(({ bottom, top }) => bottom < end && top > row.v)
    .map(({ bottom, top, spans }) => ({ bottom: Math.max(bottom, row.v), top: Math.min(top, end), spans }));
}

function overlap(spans: readonly Span[], from: number, to: number): readonly Span[] {
  return spans
    .map((span) => ({ from: Math.max(span.from, from), to: Math.min(span.to, to) }))
    .filter((span) => span.to > span.from);
}

/** Where the floor continues across the level v: covered just below and just above it. */
function openAt(slabs: readonly Slab[], v: number): readonly Span[] {
  const below = union(slabs.filter(({ bottom, top }) => bottom < v && top >= v).flatMap(({ spans }) => spans));
  const above = union(slabs.filter(({ bottom, top }) => bottom <= v && top > v).flatMap(({ spans }) => spans));
  return subtract(below, subtract(below, above));
}

function rectBetween(role: ShapeRole, [ax, ay]: Place, [bx, by]: Place, box: Box): readonly Shape[] {
  const [x, right] = [Math.max(Math.min(ax, bx), box.left), Math.min(Math.max(ax, bx), box.right)];
  const [y, bottom] = [Math.max(Math.min(ay, by), box.top), Math.min(Math.max(ay, by), box.bottom)];
  return right > x && bottom > y ? [{ kind: 'rect', role, x, y, width: right - x, height: bottom - y }] : [];
}
