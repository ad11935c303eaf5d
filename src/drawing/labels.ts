/** Labels beside the rows (number, end cuts, reused planks) and along the walls. */

import { type Saying, sayCut, sayLength } from '../input/format.ts';
import { sayPieceShort } from '../input/format-piece.ts';
import type { LaidRegion, Piece, Plan } from '../layout/floor.ts';
import { runsIn } from '../layout/runs.ts';
import type { Place, Text } from '../reply/drawing.ts';
import { DRAWING } from '../text/drawing-text.ts';
import { at, type Outline, wallLength } from '../units/geometry.ts';
import { ticks } from '../units/length.ts';
import type { CutSource } from './floor-shapes.ts';
import { clippedLines } from './shapes.ts';
import { type Box, meet, SMALL, textBox, textWidth, write } from './text.ts';

/** One line beside a row; `leads` when a line is drawn from it to the end of the row. */
export interface RowLabel {
  /** Middle of the row, in ticks from the starting side. */
  readonly v: number;
  readonly row: number;
  readonly name: string;
  readonly cut: string;
  readonly offcut: string;
  readonly rip: string;
  readonly leads: boolean;
}

interface RowLabels {
  readonly starts: readonly RowLabel[];
  readonly ends: readonly RowLabel[];
}

export interface Labelled {
  readonly plan: Plan;
  readonly sources: ReadonlyMap<Piece, CutSource>;
  readonly saying: Saying;
}

/** Labels of rows `first` to `last` (indices, inclusive). */
export function rowLabels(region: LaidRegion, first: number, last: number, given: Labelled): RowLabels {
  const starts: RowLabel[] = [];
  const ends: RowLabel[] = [];
  region.rows.slice(first, last + 1).forEach((row, i) => {
    const index = first + i;
    const rip = row.height < given.plan.plank.width ? DRAWING.rip(sayCut(ticks(row.height), given.saying)) : '';
    const blank = { v: row.v + row.height / 2, row: index, name: '', cut: '', offcut: '', leads: false };
    // The strip gets its own line on its outer side, away from the full rows.
    if (rip !== '' && index === 0) starts.push({ ...blank, rip });
    const runs = runsIn(row);
    runs.forEach((pieces, k) => {
      const [start, end] = [pieces[0], pieces.at(-1)];
      if (!start || !end) return;
      const name = runName(index, k, runs.length);
      starts.push({ ...blank, name, ...saidCut(start, given), rip: '', leads: k === 0 });
      if (end === start) return;
      const own = runs.length > 1 ? name : '';
      ends.push({ ...blank, name: own, ...saidCut(end, given), rip: '', leads: k === runs.length - 1 });
    });
    if (rip !== '' && index > 0) starts.push({ ...blank, rip });
  });
  return { starts, ends };
}

/** 5, or 5a and 5b if a wall splits row 5, as in the laying guide. */
function runName(row: number, run: number, runs: number): string {
  return `${row + 1}${runs > 1 ? String.fromCodePoint(97 + (run % 26)) : ''}`;
}

/** The length of a cut piece; an uncut plank is whole. */
export function sayPiece(piece: Piece, saying: Saying): string {
  if (piece.part === 'whole') return piece.shape ? DRAWING.wholeCut : DRAWING.whole;
  return sayPieceShort(piece, saying);
}

function saidCut(piece: Piece, { sources, saying }: Labelled): Pick<RowLabel, 'cut' | 'offcut'> {
  const number = sources.get(piece)?.number;
  return { cut: sayPiece(piece, saying), offcut: number === undefined ? '' : DRAWING.offcut(number) };
}

/** A wall as drawn: its visible stretch on the figure, and the direction out of the room. */
export interface DrawnWall {
  readonly number: number;
  /** Set when one figure shows walls of several rooms. */
  readonly room?: string;
  readonly length: string;
  readonly starting: boolean;
  readonly from: Place;
  readonly to: Place;
  readonly out: Place;
  readonly slanted?: boolean;
}

/** Walls of the outline inside the bounds; `seen` maps ticks to the figure. */
export function drawnWalls(
  outline: Outline,
  starting: number | undefined,
  saying: Saying,
  seen: (point: Place) => Place,
  bounds: Box,
): readonly DrawnWall[] {
  return outline.flatMap((corner, i) => {
    const next = at(outline, i + 1);
    const [ax, ay] = seen(corner);
    const [bx, by] = seen(next);
    const clamp = (x: number, y: number): Place => [
      Math.min(Math.max(x, bounds.left), bounds.right),
      Math.min(Math.max(y, bounds.top), bounds.bottom),
    ];
    const [from, to] = [clamp(ax, ay), clamp(bx, by)];
    const slanted = Math.abs(ax - bx) > 0.05 && Math.abs(ay - by) > 0.05;
    const level = Math.abs(ay - by) <= 0.05;
    if (slanted)
      return slantedWall(i + 1, [ax, ay], [bx, by], i === starting, sayLength(wallLength(outline, i), saying), bounds);
    const inside = level
      ? ay >= bounds.top - 1 && ay <= bounds.bottom + 1
      : ax >= bounds.left - 1 && ax <= bounds.right + 1;
    const stretch = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
    if (!inside || stretch === 0) return [];
    // The room is to the left of a counterclockwise outline, so out is to the right (y is down here).
    const out: Place = level ? [0, Math.sign(bx - ax)] : [Math.sign(ay - by), 0];
    const length = sayLength(wallLength(outline, i), saying);
    return [{ number: i + 1, length, starting: i === starting, from, to, out }];
  });
}

/** Nothing is written along a slanted wall; its number goes beside its visible middle. */
function slantedWall(
  number: number,
  from: Place,
  to: Place,
  starting: boolean,
  length: string,
  bounds: Box,
): readonly DrawnWall[] {
  const [line] = clippedLines([[from, to]], bounds);
  if (!line) return [];
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const out: Place = [(from[1] - to[1]) / long, (to[0] - from[0]) / long];
  return [{ number, length, starting, from: line[0], to: line[1], out, slanted: true }];
}

/** Places texts so that none overlaps another or the room; what doesn't fit is listed in words. */
export function wallTexts(
  walls: readonly DrawnWall[],
  rings: readonly (readonly Place[])[],
  taken: readonly Box[],
  thickness: number,
  upright: boolean,
): { texts: readonly Text[]; listed: readonly string[] } {
  const boxes = [...taken];
  const texts: Text[] = [];
  const unwritten: DrawnWall[] = [];
  const isFree = (text: Text): boolean => {
    const box = textBox(text);
    return !boxes.some((other) => meet(box, other, 0.5)) && !meetsRoom(box, rings);
  };
  const take = (text: Text): void => {
    texts.push(text);
    boxes.push(textBox(text));
  };
  // Long walls first; the short ones find a spot around them.
  for (const wall of [...walls].sort((a, b) => stretchOf(b) - stretchOf(a))) {
    const full = DRAWING.wall(wall.number, wall.length, wall.room);
    const wordings = wall.starting ? [DRAWING.startWall(wall.number, wall.length, wall.room), full] : [full];
    const best = wordings.flatMap((wording) => within(wall, wording, thickness, upright)).find(isFree);
    if (best) {
      take(best);
      continue;
    }
    unwritten.push(wall);
    const mark = [...within(wall, String(wall.number), thickness, upright), ...beyond(wall, thickness)].find(isFree);
    if (mark) take(mark);
  }
  const listed = walls.filter((wall) => unwritten.includes(wall));
  return { texts, listed: listed.map(({ number, length, room }) => DRAWING.wall(number, length, room)) };
}

function stretchOf({ from, to }: DrawnWall): number {
  return Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
}

/** The wording inside the wall's thickness: in the middle, or to either side of it. */
function within(wall: DrawnWall, wording: string, thickness: number, upright: boolean): readonly Text[] {
  const room = stretchOf(wall) - textWidth(wording, SMALL, wall.starting) - 3;
  if (room < 0 || wall.slanted) return [];
  return [0, -0.5, 0.5].map((share) => {
    const middle = 0.5 + (share * room) / Math.max(stretchOf(wall), 1);
    const x = wall.from[0] + (wall.to[0] - wall.from[0]) * middle + (wall.out[0] * thickness) / 2;
    const y = wall.from[1] + (wall.to[1] - wall.from[1]) * middle + (wall.out[1] * thickness) / 2;
    return centred(wall, wording, x, y, wall.out[0] === 0 ? 0 : upright ? 90 : -90);
  });
}

/** Just the number, outside the wall. */
function beyond(wall: DrawnWall, thickness: number): readonly Text[] {
  const [x, y] = [(wall.from[0] + wall.to[0]) / 2, (wall.from[1] + wall.to[1]) / 2];
  return [0.5, 1, 1.5, 2, 2.5].map((far) => {
    const away = thickness * far;
    return centred(
      { ...wall, starting: false },
      String(wall.number),
      x + wall.out[0] * away,
      y + wall.out[1] * away,
      0,
    );
  });
}

function centred(wall: DrawnWall, wording: string, x: number, y: number, turn: Text['turn']): Text {
  const rise = SMALL * 0.365;
  const [dx, dy] = turn === 0 ? [0, rise] : [turn === -90 ? rise : -rise, 0];
  const style = { bold: wall.starting, anchor: 'middle', turn } as const;
  return write(wall.starting ? 'dimension-start' : 'dimension', wording, x + dx, y + dy, style);
}

/** True when the box reaches into the room (rings even–odd) or, conservatively, comes near a slanted side. */
function meetsRoom(box: Box, rings: readonly (readonly Place[])[]): boolean {
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  let inside = false;
  for (const ring of rings) {
    for (const [i, [ax, ay]] of ring.entries()) {
      const [bx, by] = ring[(i + 1) % ring.length] ?? [ax, ay];
      const side = { left: Math.min(ax, bx), right: Math.max(ax, bx), top: Math.min(ay, by), bottom: Math.max(ay, by) };
      const slanted = side.right - side.left > 0.05 && side.bottom - side.top > 0.05;
      if (slanted) {
        if (
          clippedLines(
            [
              [
                [ax, ay],
                [bx, by],
              ],
            ],
            box,
          ).length > 0
        )
          return true;
      } else if (
        side.left < box.right &&
        box.left < side.right + 0.01 &&
        side.top < box.bottom &&
        box.top < side.bottom + 0.01
      )
        return true;
      if (ay > y !== by > y && ax + ((bx - ax) * (y - ay)) / (by - ay) > x) inside = !inside;
    }
  }
  return inside;
}
