/** What a scattered layout must not show: joints two rows apart that line up, and rows that step like stairs. */

import { inches } from '../units/length.ts';
import type { RipPair } from './cutting.ts';
import type { Plank, Rules } from './floor.ts';
import { endOf, isJointed, jointsOf, type Run } from './runs.ts';
import { GRID } from './starts.ts';

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
