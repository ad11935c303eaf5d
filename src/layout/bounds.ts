/** Lower bounds on the planks of a floor whose rows run one way, whatever the row lines and the joints. */

import type { Bound, BrokenRule, Plank, Rules } from './floor.ts';
import { distinctLines } from './row-lines.ts';
import { endOf, isJointed, jointLine, jointsOf, type Run, tooNear, withinPlank } from './runs.ts';
import { scatterBreaches } from './scatter-rules.ts';
import {
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

/** One way to slice a region: Σ(run + kerf·⌈run/plank⌉) over its runs, and the ripped stretches among them. */
interface Slicing {
  readonly length: number;
  readonly strips: readonly Strip[];
}

/**
 * area: ⌈area / (length × width)⌉. row: ⌈Σ(run + kerf·⌈run/length⌉) / (length + kerf)⌉ over all runs, since every piece of a
 * plank but one costs a kerf, at the least over all row lines. Strips that may share a plank's width count for what a
 * dual-feasible function gives them (Fekete and Schepers, 2001, from memory), so no layout that keeps the narrowest strip
 * needs fewer. Units: planks.
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

/** The most that a strip can have cost: it may begin and end inside a piece. */
function costOf(strip: Strip, plank: Plank, kerf: number): number {
  return strip.length + kerf * (Math.ceil(strip.length / plank.length) + 1);
}

/** Half for each of two strips in a plank's width; nothing where a third may fit, nor for what a short wall may leave narrower than any strip. */
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

/** One for what is over half a plank's width, for only one such strip fits; nothing for the rest. */
function threshold(plank: Plank, { kerf }: Pick<Rules, 'kerf'>): Weight {
  return ({ height }) => (2 * height + kerf > plank.width ? 1 : 0);
}

/** One region by itself: only its own near and far strips can share, where both and a kerf fit the width. */
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

// Rules a layout does not keep, each with its place: read off the finished layout, whatever made it.

/** One region's layout as far as the rules go. */
export interface Layout {
  readonly name: string;
  readonly levels: readonly WallLevel[];
  readonly line: number;
  readonly rows: readonly SlicedRow[];
  readonly runs: readonly Run[];
  readonly starts: readonly number[];
  /** The start pieces its pattern asks for, where it asks for any. */
  readonly patterned: readonly number[] | undefined;
}

/** Every broken rule of a region, row by row. */
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

/** Index of the row that lies against a wall level. */
function rowBeside(rows: readonly SlicedRow[], level: WallLevel): number {
  const index = rows.findIndex((row) =>
    level.side === 'floor'
      ? level.v >= row.v && level.v < row.v + row.height
      : level.v > row.v && level.v <= row.v + row.height,
  );
  return Math.max(0, index);
}
