/** A floor as the search for scattered joints sees it: runs of all regions in one list, and which of them meet. */

import type { Plank, Rules } from './floor.ts';
import type { RipPair } from './rip-share.ts';
import { endOf, isJointed, type Run } from './run.ts';
import { inLine, type Triple, triplesOf } from './scatter-rule.ts';
import { GRID } from './start-place.ts';

/** All lengths in ticks. Runs touch runs by their index in this list, whatever their region. */
export interface ScatterFloor {
  readonly runs: readonly Run[];
  readonly plank: number;
  readonly kerf: number;
  readonly stagger: number;
  readonly minEnd: number;
  readonly inLine: number;
  /** Runs longer than a plank, and runs no longer than one, by index. */
  readonly jointed: readonly number[];
  readonly short: readonly number[];
  /** By run: what it touches, before and after it; and the threes on one another it belongs to. */
  readonly beside: readonly (readonly number[])[];
  readonly threes: readonly (readonly Triple[])[];
  /** By run: start pieces on a grid that leave both ends long enough; every place on the grid where none does. */
  readonly places: readonly (readonly number[])[];
  /** By run: the other of two ripped runs that may share planks, near for far and far for near. */
  readonly near: readonly (number | undefined)[];
  readonly far: readonly (number | undefined)[];
  /** By run: the runs of its length, itself too. */
  readonly alike: readonly (readonly number[])[];
}

/** The regions' runs as one floor. */
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

/** True when neither end piece of a run is too short. */
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
