/** Choosing start pieces for every region of a floor so that offcuts get used from room to room, and what a scattered floor must not show. */

import { inches } from '../units/length.ts';
import { countPairs, type RipPair } from './cutting.ts';
import type { Plank, Rules } from './floor.ts';
import {
  type Cuts,
  cutsOf,
  endOf,
  isJointed,
  type JointLine,
  jointLine,
  jointsOf,
  lineStagger,
  type Run,
  tooNear,
  withinPlank,
} from './runs.ts';

/** Positions are tried half an inch apart: finer than anyone lays, and the same for inch and millimeter input. */
export const GRID = 4064;

interface StartRules {
  readonly stagger: number;
  readonly minEnd: number;
}

interface Laid {
  readonly run: Run;
  readonly start: number;
}

/** Number of rules a start piece breaks: too short at either end, and each joint too close to one of a touching run. */
export function faultsAt(run: Run, start: number, beside: readonly Laid[], plank: number, rules: StartRules): number {
  if (!isJointed(run, plank)) return 0;
  let faults = start < rules.minEnd ? 1 : 0;
  if (endOf(run.length, start, plank) < rules.minEnd) faults++;
  for (const other of beside) faults += tooNear(run, start, other.run, other.start, plank, rules.stagger).length;
  return faults;
}

/** Start pieces worth trying in a run longer than a plank: a grid, plus every position where a rule is just kept. */
export function placesFor(run: Run, beside: readonly Laid[], plank: number, rules: StartRules): readonly number[] {
  const places = new Set<number>([
    plank,
    rules.minEnd,
    withinPlank(run.length - rules.minEnd, plank),
    withinPlank(run.length, plank),
  ]);
  for (let start = GRID; start < plank; start += GRID) places.add(start);
  for (const { run: other, start } of beside) {
    if (!isJointed(other, plank)) continue;
    const joint = other.from + start - run.from;
    places.add(withinPlank(joint + rules.stagger, plank)).add(withinPlank(joint - rules.stagger, plank));
  }
  return [...places].filter((start) => start > 0 && start <= plank && start < run.length);
}

// Moving runs that break a rule off the pattern by as little as fixes it.

const PASSES = 8;

/**
 * Start pieces with as few broken rules as moving one run at a time can reach; runs that break none keep their
 * position. Pass 0 for a stagger that the pattern itself can't keep: that gets reported, not fixed.
 */
export function repairStarts(
  runs: readonly Run[],
  placed: readonly number[],
  plank: number,
  rules: StartRules,
): readonly number[] {
  const starts = [...placed];
  const neighbours = neighboursOf(runs);
  for (let pass = 0; pass < PASSES; pass++) {
    let moved = false;
    runs.forEach((run, i) => {
      const beside = laid(runs, starts, neighbours[i] ?? []);
      let least = faultsAt(run, starts[i] ?? 0, beside, plank, rules);
      if (least === 0) return;
      const place = placed[i] ?? 0;
      const away = (start: number): number => apart(start, place, plank);
      for (const option of [...placesFor(run, beside, plank, rules)].sort((a, b) => away(a) - away(b))) {
        const faults = faultsAt(run, option, beside, plank, rules);
        if (faults >= least) continue;
        least = faults;
        starts[i] = option;
        moved = true;
        if (faults === 0) return;
      }
    });
    if (!moved) break;
  }
  return starts;
}

function neighboursOf(runs: readonly Run[]): readonly (readonly number[])[] {
  const neighbours: number[][] = runs.map((run) => [...run.touching]);
  runs.forEach((run, i) => {
    for (const other of run.touching) neighbours[other]?.push(i);
  });
  return neighbours;
}

export function laid(runs: readonly Run[], starts: readonly number[], indices: readonly number[]): readonly Laid[] {
  return indices.flatMap((i) => {
    const run = runs[i];
    const start = starts[i];
    return run && start !== undefined ? [{ run, start }] : [];
  });
}

/** Distance between two phases that repeat every plank. */
function apart(a: number, b: number, plank: number): number {
  const rest = (((a - b) % plank) + plank) % plank;
  return Math.min(rest, plank - rest);
}

// Offcut-first: each row starts with the best offcut that keeps the rules, or else with a new plank.

type OffcutRules = Pick<Rules, 'stagger' | 'minEnd' | 'kerf'>;

/**
 * Start pieces by run, laid in order. `kept` is the offcuts (right parts of planks) on hand, ascending; changed as they
 * are used.
 */
function offcutStarts(runs: readonly Run[], plank: Plank, rules: OffcutRules, kept: number[]): readonly number[] {
  const starts: number[] = [];
  for (const run of runs) {
    if (!isJointed(run, plank.length)) {
      starts.push(run.length);
      continue;
    }
    const start = choose(run, runs, starts, plank, rules, kept);
    starts.push(start);
    const used = start < plank.length ? firstNotBelow(kept, start) : kept.length;
    if (used < kept.length) kept.splice(used, 1);
    const left = plank.length - endOf(run.length, start, plank.length) - rules.kerf;
    if (left > 0 && left >= rules.minEnd) kept.splice(firstNotBelow(kept, left), 0, left);
  }
  return starts;
}

/** Fewest broken rules, then an offcut before a new plank, then the least trimmed off, then the longest. */
function choose(
  run: Run,
  runs: readonly Run[],
  starts: readonly number[],
  plank: Plank,
  rules: OffcutRules,
  kept: readonly number[],
): number {
  const beside = laid(runs, starts, run.touching);
  let best = plank.length as number;
  let bestScore: readonly number[] | undefined;
  const offer = (start: number): void => {
    const offcut = start < plank.length ? kept[firstNotBelow(kept, start)] : undefined;
    const score = [
      faultsAt(run, start, beside, plank.length, rules),
      offcut === undefined ? 1 : 0,
      (offcut ?? plank.length) - start,
      -start,
    ];
    if (bestScore && !isLess(score, bestScore)) return;
    best = start;
    bestScore = score;
  };
  for (const start of placesFor(run, beside, plank.length, rules)) offer(start);
  for (const start of new Set(kept)) if (start < run.length) offer(start);
  return best;
}

/** Index of the first length not below `start` in a sorted list. */
function firstNotBelow(lengths: readonly number[], start: number): number {
  let low = 0;
  let high = lengths.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lengths[middle] ?? 0) < start) low = middle + 1;
    else high = middle;
  }
  return low;
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

// Patterns: the joint line positioned for the fewest rows off it and the fewest planks.

/** Start pieces by run for one position of the line, and their score. */
interface Placing {
  readonly starts: readonly number[];
  readonly short: number;
  readonly planks: number;
}

/** The start piece that a joint line at `base` gives each run; a run no longer than a plank is one piece. */
function startsOn(runs: readonly Run[], line: JointLine, base: number, direction: 1 | -1, plank: number): number[] {
  return runs.map((run) =>
    isJointed(run, plank)
      ? withinPlank(base + direction * (run.row % line.rows) * line.step - run.from, plank)
      : run.length,
  );
}

/**
 * Positions of the line worth keeping, best first: fewest pieces too short, then fewest planks, then the longest first
 * piece.
 */
function placeLine(
  runs: readonly Run[],
  line: JointLine,
  plank: Plank,
  rules: Pick<Rules, 'minEnd' | 'kerf'>,
  keep: number,
): readonly Placing[] {
  const origin = runs.find((run) => isJointed(run, plank.length))?.from ?? 0;
  const placings: Placing[] = [];
  for (const direction of [-1, 1] as const) {
    for (let back = 0; back < plank.length; back += GRID) {
      const starts = startsOn(runs, line, origin + plank.length - back, direction, plank.length);
      placings.push(judge(runs, starts, plank, rules));
    }
  }
  return placings.sort((a, b) => a.short - b.short || a.planks - b.planks).slice(0, keep);
}

function judge(
  runs: readonly Run[],
  starts: readonly number[],
  plank: Plank,
  rules: Pick<Rules, 'minEnd' | 'kerf'>,
): Placing {
  const ends = { stagger: 0, minEnd: rules.minEnd };
  const short = runs.filter((run, i) => faultsAt(run, starts[i] ?? 0, [], plank.length, ends) > 0).length;
  const cuts = cutsOf(runs, starts, plank.length);
  const pairs = countPairs(cuts.starts, cuts.ends, plank.length, rules.kerf);
  return { starts, short, planks: cuts.whole + cuts.starts.length + cuts.ends.length - pairs };
}

/** Positions of the joint line that are repaired and compared, per region. */
const KEPT = 6;

/** Start pieces by run, and the ones the pattern asks for (undefined if it asks for none). */
export interface Starts {
  readonly starts: readonly number[];
  readonly patterned: readonly number[] | undefined;
}

export function chooseStarts(regions: readonly (readonly Run[])[], plank: Plank, rules: Rules): readonly Starts[] {
  const line = jointLine(rules.pattern, plank);
  if (!line) {
    const kept: number[] = [];
    return regions.map((runs) => ({ starts: offcutStarts(runs, plank, rules, kept), patterned: undefined }));
  }
  const mend = { stagger: lineStagger(line, plank.length) < rules.stagger ? 0 : rules.stagger, minEnd: rules.minEnd };
  let cuts: Cuts = { starts: [], ends: [], whole: 0 };
  return regions.map((runs) => {
    let best: (Starts & { all: Cuts; score: readonly [faults: number, moved: number, planks: number] }) | undefined;
    for (const { starts: patterned } of placeLine(runs, line, plank, rules, KEPT)) {
      const starts = repairStarts(runs, patterned, plank.length, mend);
      const more = cutsOf(runs, starts, plank.length);
      const all = {
        starts: [...cuts.starts, ...more.starts],
        ends: [...cuts.ends, ...more.ends],
        whole: cuts.whole + more.whole,
      };
      const score = [
        faultsOf(runs, starts, plank.length, mend),
        starts.filter((start, i) => start !== patterned[i]).length,
        all.whole + all.starts.length + all.ends.length - countPairs(all.starts, all.ends, plank.length, rules.kerf),
      ] as const;
      if (!best || isLess(score, best.score)) best = { starts, patterned, all, score };
    }
    if (!best) return { starts: [], patterned: [] };
    cuts = best.all;
    return { starts: best.starts, patterned: best.patterned };
  });
}

function faultsOf(
  runs: readonly Run[],
  starts: readonly number[],
  plank: number,
  rules: { stagger: number; minEnd: number },
): number {
  return runs.reduce(
    (sum, run, i) => sum + faultsAt(run, starts[i] ?? 0, laid(runs, starts, run.touching), plank, rules),
    0,
  );
}

// What a scattered layout must not show: joints two rows apart that line up, and rows that step like stairs.

/** A joint that breaks a rule, in the upper of its three rows; `at` is its position along u. */
interface ScatterBreach {
  readonly row: number;
  readonly at: number;
  readonly kind: 'in line' | 'stair';
}

export type Triple = readonly [lower: number, middle: number, upper: number];

/** Joints closer than this look lined up: 1 in, or for short planks 1/24 of their length (our own choice). */
export function inLine(plank: number): number {
  return Math.min(inches(1), Math.floor(plank / 24));
}

/** Every three runs of which the middle one touches both others. */
function triplesOf(runs: readonly Run[]): readonly Triple[] {
  return runs.flatMap(({ touching }, upper) =>
    touching.flatMap((middle) => (runs[middle]?.touching ?? []).map((lower): Triple => [lower, middle, upper])),
  );
}

/**
 * Positions along u of joints in the upper of three runs that line up with one in the lower run across the middle one,
 * or that complete a stair: two steps, each at most half a plank, differing by less than `inLine`.
 */
export function breachesOf(
  runs: readonly Run[],
  starts: readonly number[],
  [lower, middle, upper]: Triple,
  plank: number,
): readonly ScatterBreach[] {
  const [below, between, above] = [runs[lower], runs[middle], runs[upper]];
  if (!below || !between || !above || !isJointed(below, plank) || !isJointed(above, plank)) return [];
  const apart = inLine(plank);
  const under = jointsOf(below, starts[lower] ?? 0, plank);
  const amid = jointsOf(between, starts[middle] ?? 0, plank);
  const covers = (u: number): boolean => u > between.from && u < between.from + between.length;
  return jointsOf(above, starts[upper] ?? 0, plank).flatMap((at): ScatterBreach[] => {
    const lined = covers(at) && under.some((u) => Math.abs(at - u) < apart && covers(u));
    if (lined) return [{ row: above.row, at, kind: 'in line' }];
    const stepped = amid.some(
      (v) =>
        2 * Math.abs(at - v) <= plank &&
        under.some((u) => 2 * Math.abs(v - u) <= plank && Math.abs(at - v - (v - u)) < apart),
    );
    return stepped ? [{ row: above.row, at, kind: 'stair' }] : [];
  });
}

export function scatterBreaches(
  runs: readonly Run[],
  starts: readonly number[],
  plank: number,
): readonly ScatterBreach[] {
  const found = new Map<string, ScatterBreach>();
  for (const triple of triplesOf(runs)) {
    for (const breach of breachesOf(runs, starts, triple, plank)) found.set(`${breach.row} ${breach.at}`, breach);
  }
  return [...found.values()];
}

/**
 * Crowded joints: a joint in the top row of five with one in the middle row and one in the bottom row all within less
 * than `stagger`. A measure of looks rather than a rule: the search keeps it low, but no layout is rejected for it.
 */
export function crowdedJoints(
  runs: readonly Run[],
  starts: readonly number[],
  plank: number,
  stagger: number,
): readonly number[] {
  const alternate = new Map<number, Set<number>>();
  for (const [lower, , upper] of triplesOf(runs)) alternate.set(upper, (alternate.get(upper) ?? new Set()).add(lower));
  const jointsAt = (i: number): readonly number[] => {
    const run = runs[i];
    return run ? jointsOf(run, starts[i] ?? 0, plank) : [];
  };
  return [...alternate].flatMap(([upper, middles]) =>
    jointsAt(upper).filter((u) =>
      [...middles].some((middle) =>
        jointsAt(middle).some((v) =>
          [...(alternate.get(middle) ?? [])].some((lower) =>
            jointsAt(lower).some((w) => Math.max(u, v, w) - Math.min(u, v, w) < stagger),
          ),
        ),
      ),
    ),
  );
}

/** All lengths in ticks. Runs refer to touching runs by index in this list, whatever their region. */
export interface ScatterFloor {
  readonly runs: readonly Run[];
  readonly plank: number;
  readonly kerf: number;
  readonly stagger: number;
  readonly minEnd: number;
  readonly inLine: number;
  /** Indices of runs longer than a plank, and of the others. */
  readonly jointed: readonly number[];
  readonly short: readonly number[];
  /** By run: the runs it touches, before and after it; and the triples it belongs to. */
  readonly beside: readonly (readonly number[])[];
  readonly threes: readonly (readonly Triple[])[];
  /** By run: start pieces on a grid that leave both ends long enough, or the whole grid if none does. */
  readonly places: readonly (readonly number[])[];
  /** By run: its partner of two ripped runs that may share planks. */
  readonly near: readonly (number | undefined)[];
  readonly far: readonly (number | undefined)[];
  readonly alike: readonly (readonly number[])[];
}

export function scatterFloor(
  regions: readonly (readonly Run[])[],
  plank: Pick<Plank, 'length'>,
  rules: Pick<Rules, 'kerf' | 'stagger' | 'minEnd'>,
  rips: readonly RipPair[] = [],
): ScatterFloor {
  const runs: Run[] = [];
  for (const region of regions) {
    const first = runs.length;
    for (const run of region) runs.push({ ...run, touching: run.touching.map((i) => i + first) });
  }
  const beside: number[][] = runs.map(({ touching }) => [...touching]);
  const threes: Triple[][] = runs.map(() => []);
  runs.forEach(({ touching }, i) => {
    for (const other of touching) beside[other]?.push(i);
  });
  for (const triple of triplesOf(runs)) for (const i of triple) threes[i]?.push(triple);
  const indices = runs.map((_, i) => i);
  const isLong = (i: number): boolean => isJointed(runs[i] ?? { length: 0 }, plank.length);
  const known = new Map<number, readonly number[]>();
  const places = runs.map(({ length }) => {
    const found = known.get(length) ?? placesIn(length, plank.length, rules.minEnd);
    known.set(length, found);
    return found;
  });
  const byLength = new Map<number, number[]>();
  runs.forEach(({ length }, i) => {
    const group = byLength.get(length);
    if (group) group.push(i);
    else byLength.set(length, [i]);
  });
  return {
    runs,
    plank: plank.length,
    kerf: rules.kerf,
    stagger: rules.stagger,
    minEnd: rules.minEnd,
    inLine: inLine(plank.length),
    jointed: indices.filter(isLong),
    short: indices.filter((i) => !isLong(i)),
    beside,
    threes,
    places,
    near: runs.map((_, i) => rips.find(({ far }) => far === i)?.near),
    far: runs.map((_, i) => rips.find(({ near }) => near === i)?.far),
    alike: runs.map(({ length }) => byLength.get(length) ?? []),
  };
}

export function endsKept(length: number, start: number, plank: number, minEnd: number): boolean {
  return start > 0 && start >= minEnd && start <= plank && start < length && endOf(length, start, plank) >= minEnd;
}

function placesIn(length: number, plank: number, minEnd: number): readonly number[] {
  const all = [minEnd, endOf(length, minEnd, plank), plank, endOf(length, plank, plank)];
  for (let start = GRID; start < plank; start += GRID) all.push(start);
  const possible = [...new Set(all)].filter((start) => start > 0 && start < length);
  const kept = possible.filter((start) => endsKept(length, start, plank, minEnd));
  return kept.length > 0 ? kept : possible;
}
