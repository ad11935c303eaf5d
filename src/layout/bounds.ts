/** Lower bounds on the planks a floor needs with its rows in one direction, and a check of the rules on a finished layout. */

import type { Bound, BrokenRule, Plank, Rules } from './floor.ts';
import { endOf, isJointed, jointLine, jointsOf, type Run, tooNear, withinPlank } from './runs.ts';
import {
  distinctLines,
  leastWall,
  longWalls,
  type Slab,
  type SlicedRow,
  type Strip,
  slabArea,
  sliceRows,
  stripBeside,
  stripsOf,
  type WallLevel,
  wallLevels,
} from './slab.ts';
import { scatterBreaches } from './starts.ts';

/** One way to slice a region: Σ(run + kerf·⌈run/plank⌉) over its runs, and its ripped strips. */
interface Slicing {
  readonly length: number;
  readonly strips: readonly Strip[];
}

/**
 * Lower bounds in planks, for any row lines and joints.
 * area: ⌈area / (length × width)⌉.
 * row: ⌈Σ(run + kerf·⌈run/length⌉) / (length + kerf)⌉ over all runs, minimized over row lines, since every piece of a
 * plank except one costs a kerf. Strips that could share a plank's width are weighted by a dual-feasible function
 * (Fekete and Schepers, 2001, from memory), so no layout that keeps the minimum strip needs fewer.
 */
export function boundOf(
  regions: readonly (readonly Slab[])[],
  plank: Plank,
  rules: Pick<Rules, 'kerf' | 'minEnd' | 'minRip'>,
): Omit<Bound, 'proven'> {
  const square = BigInt(plank.length) * BigInt(plank.width);
  const total = regions.reduce((sum, slabs) => sum + slabArea(slabs), 0n);
  const area = Number((total + square - 1n) / square);
  const slicings = regions.map((slabs) => slicingsOf(slabs, plank, rules.kerf));
  const ways = [halves(plank, rules), threshold(plank, rules)];
  const lengths = ways.map((weight) => slicings.reduce((sum, ways) => sum + least(ways, plank, rules, weight), 0));
  const [only] = slicings;
  if (only && slicings.length === 1) lengths.push(leastAlone(only, plank, rules));
  const row = Math.max(...lengths.map((length) => Math.ceil(length / (plank.length + rules.kerf))), 0);
  return { area, row, best: Math.max(area, row) };
}

function slicingsOf(slabs: readonly Slab[], plank: Plank, kerf: number): readonly Slicing[] {
  return distinctLines(wallLevels(slabs), plank.width).map((line) => {
    const rows = sliceRows(slabs, line, plank.width);
    let length = 0;
    for (const row of rows) {
      for (const run of row.runs) {
        const size = run.to - run.from;
        length += size + kerf * Math.ceil(size / plank.length);
      }
    }
    return { length, strips: stripsOf(slabs, rows, plank.width) };
  });
}

type Weight = (strip: Strip) => number;

function least(slicings: readonly Slicing[], plank: Plank, rules: Pick<Rules, 'kerf'>, weight: Weight): number {
  return Math.min(
    ...slicings.map(({ length, strips }) =>
      strips.reduce((sum, strip) => sum - (1 - weight(strip)) * costOf(strip, plank, rules.kerf), length),
    ),
  );
}

/** The most a strip can have cost: it may start and end inside a piece. */
function costOf(strip: Strip, plank: Plank, kerf: number): number {
  return strip.length + kerf * (Math.ceil(strip.length / plank.length) + 1);
}

/**
 * Weighs each of two strips in a plank's width as half; zero where a third might fit, and for what a short wall may
 * leave narrower than any strip.
 */
function halves(plank: Plank, rules: Pick<Rules, 'kerf' | 'minEnd' | 'minRip'>): Weight {
  const { kerf, minRip } = rules;
  const short = leastWall(plank, rules);
  return ({ height, length, keeps }) => {
    if (height < minRip && length < short) return 0;
    if (height + kerf + minRip > plank.width) return 1;
    const anyEdge = plank.lock === 'none' || keeps === 'none';
    return anyEdge && height + 2 * minRip + 2 * kerf <= plank.width ? 0 : 0.5;
  };
}

/** Weighs strips wider than half a plank as one, because only one of them fits; zero for the rest. */
function threshold(plank: Plank, { kerf }: Pick<Rules, 'kerf'>): Weight {
  return ({ height }) => (2 * height + kerf > plank.width ? 1 : 0);
}

/** One region on its own: only its own near and far strips can share a plank, if both and a kerf fit the width. */
function leastAlone(slicings: readonly Slicing[], plank: Plank, rules: Pick<Rules, 'kerf'>): number {
  return Math.min(
    ...slicings.map(({ length, strips }) => {
      const cost = (kept: readonly Strip[]): number =>
        kept.reduce((sum, strip) => sum + costOf(strip, plank, rules.kerf), 0);
      const free = strips.filter((strip) => plank.lock === 'none' || strip.keeps === 'none');
      const near = strips.filter((strip) => !free.includes(strip) && strip.keeps === 'near');
      const far = strips.filter((strip) => !free.includes(strip) && strip.keeps === 'far');
      const fits = (strip: Strip, others: readonly Strip[]): boolean =>
        others.some((other) => strip.height + other.height + rules.kerf <= plank.width);
      const pairs = Math.min(
        cost(near.filter((s) => fits(s, [...far, ...free]))),
        cost(far.filter((s) => fits(s, [...near, ...free]))),
      );
      const alone = free.filter((strip) =>
        fits(
          strip,
          strips.filter((other) => other !== strip),
        ),
      );
      return length - pairs - cost(alone);
    }),
  );
}

// Checking the rules: read off the finished layout, independent of how it was made.

export interface Layout {
  readonly name: string;
  readonly levels: readonly WallLevel[];
  readonly line: number;
  readonly rows: readonly SlicedRow[];
  readonly runs: readonly Run[];
  readonly starts: readonly number[];
  readonly patterned: readonly number[] | undefined;
}

export function brokenRules(layout: Layout, plank: Plank, rules: Rules): readonly BrokenRule[] {
  const broken: BrokenRule[] = [];
  const tell = (rule: BrokenRule['rule'], row: number, at: number): void => {
    broken.push({ rule, region: layout.name, row, at });
  };
  for (const level of longWalls(layout.levels, leastWall(plank, rules))) {
    if (stripBeside(level, layout.line, plank.width) < rules.minRip)
      tell('minRip', rowBeside(layout.rows, level), level.v);
  }
  layout.runs.forEach((run, i) => {
    if (!isJointed(run, plank.length)) return;
    const start = layout.starts[i] ?? 0;
    const end = endOf(run.length, start, plank.length);
    if (start < rules.minEnd) tell('minEnd', run.row, run.from);
    if (end < rules.minEnd) tell('minEnd', run.row, run.from + run.length - end);
    for (const j of run.touching) {
      const other = layout.runs[j];
      if (!other) continue;
      for (const at of tooNear(run, start, other, layout.starts[j] ?? 0, plank.length, rules.stagger))
        tell('stagger', run.row, at);
    }
    const place = layout.patterned?.[i];
    if (
      place !== undefined &&
      jointLine(rules.pattern, plank) &&
      withinPlank(place - start, plank.length) !== plank.length
    ) {
      tell('pattern', run.row, jointsOf(run, start, plank.length)[0] ?? run.from);
    }
  });
  if (rules.pattern.name === 'scattered') {
    for (const { row, at } of scatterBreaches(layout.runs, layout.starts, plank.length)) tell('pattern', row, at);
  }
  return broken.sort((a, b) => a.row - b.row || a.at - b.at);
}

function rowBeside(rows: readonly SlicedRow[], level: WallLevel): number {
  const index = rows.findIndex((row) =>
    level.side === 'floor'
      ? level.v >= row.v && level.v < row.v + row.height
      : level.v > row.v && level.v <= row.v + row.height,
  );
  return Math.max(0, index);
}
