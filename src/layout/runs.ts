/** Runs: the stretches of a row from wall to wall, each cut into a start piece, whole planks and an end piece. */

import { ticks } from '../units/length.ts';
import type { Pattern, Piece, Plank, Row } from './floor.ts';
import type { SlicedRow } from './slab.ts';

/** `touching` are indices (in the region's runs) of the runs of the previous row that it touches. */
export interface Run {
  readonly row: number;
  readonly from: number;
  readonly length: number;
  readonly touching: readonly number[];
}

export function runsOf(rows: readonly SlicedRow[]): readonly Run[] {
  const runs: Run[] = [];
  let previous: number[] = [];
  rows.forEach((row, index) => {
    const current: number[] = [];
    const before = rows[index - 1];
    if (before && before.v + before.height !== row.v) previous = [];
    for (const span of row.runs) {
      const touching = previous.filter((i) => {
        const other = runs[i];
        return other !== undefined && other.from < span.to && span.from < other.from + other.length;
      });
      current.push(runs.length);
      runs.push({ row: index, from: span.from, length: span.to - span.from, touching });
    }
    previous = current;
  });
  return runs;
}

/** `value` modulo the plank, in (0, plank]. */
export function withinPlank(value: number, plank: number): number {
  const rest = ((value % plank) + plank) % plank;
  return rest === 0 ? plank : rest;
}

/** The end piece, in (0, plank], of a run longer than a plank whose start piece is `start`. */
export function endOf(length: number, start: number, plank: number): number {
  return withinPlank(length - start, plank);
}

export function isJointed(run: Pick<Run, 'length'>, plank: number): boolean {
  return run.length > plank;
}

export function jointsOf(run: Run, start: number, plank: number): readonly number[] {
  const joints: number[] = [];
  if (!isJointed(run, plank)) return joints;
  for (let u = run.from + start; u < run.from + run.length; u += plank) joints.push(u);
  return joints;
}

export function pieceLengths(run: Run, start: number, plank: number): readonly number[] {
  if (!isJointed(run, plank)) return [run.length];
  const lengths = [start];
  let rest = run.length - start;
  for (; rest > plank; rest -= plank) lengths.push(plank);
  lengths.push(rest);
  return lengths;
}

/**
 * Positions along u where joints of `run` are closer than `stagger` to a joint of `other` (a touching run). Both sets
 * repeat every plank, so distant phases are ruled out without looking at each joint.
 */
export function tooNear(
  run: Run,
  start: number,
  other: Run,
  otherStart: number,
  plank: number,
  stagger: number,
): readonly number[] {
  if (stagger <= 0 || !isJointed(run, plank) || !isJointed(other, plank)) return [];
  const shift = (((run.from + start - other.from - otherStart) % plank) + plank) % plank;
  if (Math.min(shift, plank - shift) >= stagger) return [];
  const others = jointsOf(other, otherStart, plank);
  return jointsOf(run, start, plank).filter((u) => others.some((v) => Math.abs(u - v) < stagger));
}

/** What jointed runs are cut into: start and end pieces by length, and the number of whole planks. */
export interface Cuts {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly whole: number;
}

export function cutsOf(runs: readonly Run[], starts: readonly number[], plank: number): Cuts {
  const cuts = { starts: [] as number[], ends: [] as number[], whole: 0 };
  runs.forEach((run, i) => {
    if (!isJointed(run, plank)) return;
    const start = starts[i] ?? 0;
    const end = endOf(run.length, start, plank);
    cuts.whole += (run.length - start - end) / plank;
    if (start === plank) cuts.whole++;
    else cuts.starts.push(start);
    if (end === plank) cuts.whole++;
    else cuts.ends.push(end);
  });
  return cuts;
}

/** Splits a row's pieces into runs: a run ends where the next piece doesn't follow directly. */
export function runsIn(row: Row): readonly (readonly Piece[])[] {
  const runs: Piece[][] = [];
  let end: number | undefined;
  for (const piece of row.pieces) {
    if (piece.u === end) runs.at(-1)?.push(piece);
    else runs.push([piece]);
    end = piece.u + piece.length;
  }
  return runs;
}

/** Joints of row r lie at base + direction × (r mod rows) × step, one plank apart. */
export interface JointLine {
  readonly step: number;
  readonly rows: number;
}

/** The line of a pattern; undefined for patterns without one (offcut-first, scattered). */
export function jointLine(pattern: Pattern, plank: Pick<Plank, 'length'>): JointLine | undefined {
  switch (pattern.name) {
    case 'stair-step':
      return { step: pattern.step, rows: pattern.rows };
    case 'half':
      return { step: Math.floor(plank.length / 2), rows: 2 };
    case 'thirds':
      return { step: Math.floor(plank.length / 3), rows: 3 };
    case 'offcut-first':
    case 'scattered':
      return undefined;
  }
}

/** The smallest distance between joints of touching rows on a line, including the row where it starts over. */
export function lineStagger({ step, rows }: JointLine, plank: number): number {
  const apart = (shift: number): number => {
    const rest = ((shift % plank) + plank) % plank;
    return Math.min(rest, plank - rest);
  };
  if (rows === 1) return 0;
  return Math.min(apart(step), apart((rows - 1) * step));
}

/** Row counts for the stair before it starts over, tried in this order until the restart keeps the stagger. */
const ROWS = [5, 4, 6, 3, 7, 8, 2];

/**
 * A stair of `step` with 2 to 8 rows, chosen so that its restart keeps `stagger`; five rows (common practice) if none
 * does. With a 24 in plank and a 6 in step, row 6 would line up with row 5, so four rows are used.
 */
export function stairStep(
  plank: Pick<Plank, 'length'>,
  step: number,
  stagger: number,
): Extract<Pattern, { name: 'stair-step' }> {
  const rows = ROWS.find((count) => lineStagger({ step, rows: count }, plank.length) >= stagger) ?? 5;
  return { name: 'stair-step', step: ticks(step), rows };
}
