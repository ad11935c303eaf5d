/** Laying a floor: regions sliced into rows, start pieces chosen, pieces cut from the fewest planks, planks numbered. */

import { boundOf } from './bound.ts';
import { brokenRules } from './broken.ts';
import type { Bound, Plan, Plank, Rules } from './floor.ts';
import { isSlanted } from './ground.ts';
import { cutAndNumber } from './plank-number.ts';
import { scatterFirst } from './scatter.ts';
import { laySlanted } from './slant-lay.ts';
import { type Area, type Sliced, sliceArea } from './sliced.ts';
import { chooseStarts, type Starts } from './starts.ts';

/**
 * The plan of a floor: every region laid, planks counted by exact matching and numbered from 1 in laying order.
 * Where a wall or the rows are at a slant, every region is laid as `laySlanted` does; a region in which the gap leaves nothing gets no rows.
 */
export function layFloor(areas: readonly Area[], plank: Plank, rules: Rules): Plan {
  if (areas.some(({ region, angle }) => isSlanted(region, angle))) return laySlanted(areas, plank, rules);
  const sliced = areas.map((area) => sliceArea(area, plank, rules));
  const bound = boundOf(
    sliced.map(({ slabs }) => slabs),
    plank,
    rules,
  );
  if (rules.pattern.name === 'scattered') {
    const found = scatterFirst(sliced, plank, rules, bound);
    return planOf(found.sliced, found.starts, plank, rules, bound);
  }
  const starts = chooseStarts(
    sliced.map(({ runs }) => runs),
    plank,
    rules,
  );
  return planOf(sliced, starts, plank, rules, bound);
}

/** The plan of sliced regions whose start pieces are chosen. */
export function planOf(
  sliced: readonly Sliced[],
  starts: readonly Starts[],
  plank: Plank,
  rules: Rules,
  bound: Omit<Bound, 'proven'>,
): Plan {
  const layouts = sliced.map((part, i) => ({
    ...part,
    name: part.region.name,
    starts: starts[i]?.starts ?? [],
    patterned: starts[i]?.patterned,
  }));
  const { regions, planks, reused } = cutAndNumber(layouts, plank, rules);
  return {
    plank,
    rules,
    regions,
    planks,
    reused,
    bound: { ...bound, proven: planks === bound.best },
    broken: layouts.flatMap((layout) => brokenRules(layout, plank, rules)),
  };
}
