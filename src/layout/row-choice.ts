/** Where the row lines of a floor may lie: one choice for every way of cutting it that no other makes needless. */

import type { Plank, Rules } from './floor.ts';
import { lineClasses } from './row-line.ts';
import { type Sliced, slicedAt } from './sliced.ts';
import { leastWall } from './wall-level.ts';

/** Choices over all regions are tried up to this many. */
const MOST_CHOICES = 8;

/** All regions sliced, one choice after another. `all` says whether every way worth a thought is among them. */
export interface RowChoices {
  readonly choices: readonly (readonly Sliced[])[];
  readonly all: boolean;
}

/** The choices, the standing one first. */
export function rowChoices(
  sliced: readonly Sliced[],
  plank: Plank,
  rules: Pick<Rules, 'minEnd' | 'minRip'>,
): RowChoices {
  const ways = sliced.map((region) => waysOf(region, plank, rules));
  const count = ways.reduce((product, list) => product * list.length, 1);
  if (count > MOST_CHOICES) return { choices: [sliced], all: false };
  return {
    choices: ways.reduce<readonly (readonly Sliced[])[]>(
      (found, list) => found.flatMap((before) => list.map((way) => [...before, way])),
      [[]],
    ),
    all: true,
  };
}

/** Ways to slice a region, those left out whose runs are another's and more: that other never needs more planks. */
function waysOf(region: Sliced, plank: Plank, rules: Pick<Rules, 'minEnd' | 'minRip'>): readonly Sliced[] {
  const kept: Sliced[] = [region];
  for (const { line } of lineClasses(region.levels, plank.width, rules.minRip, leastWall(plank, rules))) {
    const way = slicedAt(region, line, plank);
    if (!kept.some((other) => isWithin(other, way))) {
      for (let i = kept.length - 1; i > 0; i--) if (isWithin(way, kept[i] ?? way)) kept.splice(i, 1);
      kept.push(way);
    }
  }
  return kept;
}

/** True when every run of `one` is matched by an own run of `other` of the same length. */
function isWithin(one: Sliced, other: Sliced): boolean {
  const left = new Map<number, number>();
  for (const { length } of other.runs) left.set(length, (left.get(length) ?? 0) + 1);
  return one.runs.every(({ length }) => {
    const count = left.get(length) ?? 0;
    left.set(length, count - 1);
    return count > 0;
  });
}
