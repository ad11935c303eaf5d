/** Floors laid off the event loop when they are large: an ask must not hold up everybody else's. */

import { type Area, isSlanted } from '../layout/covered-area.ts';
import { isFewer, type Plan, type Plank, type Rules } from '../layout/floor.ts';
import { layFloor } from '../layout/lay-floor.ts';
import { answersFrom, lastAnswerFrom } from './pool.ts';

/** A floor of more planks than this takes over 20 ms, joined rooms and corners counted. */
const LARGE = 700;
/** Scattered joints are searched from the start: so many planks already take about as long. */
const LARGE_SCATTERED = 60;
/** Slanted walls or rows take the clipper and try more: so many planks take about as long. */
const LARGE_SLANTED = 60;

/** The plan of a floor of about so many planks. Throws an Error when the worker that lays a large one dies or overruns. */
export async function layAway(areas: readonly Area[], plank: Plank, rules: Rules, about: number): Promise<Plan> {
  const slanted = areas.some(({ region, angle }) => isSlanted(region, angle));
  const large = slanted ? LARGE_SLANTED : rules.pattern.name === 'scattered' ? LARGE_SCATTERED : LARGE;
  if (about <= large) return layFloor(areas, plank, rules);
  return lastAnswerFrom<Plan>({ kind: 'floor', areas, plank, rules });
}

/**
 * Plans better than the first, or with a higher bound, as a worker finds them; none for floors that are not searched: other
 * patterns, boards without locks, walls or rows at a slant. Ends when the worker dies or overruns: what came, stands.
 */
export async function* betterFloors(areas: readonly Area[], first: Plan): AsyncGenerator<Plan> {
  const { plank, rules } = first;
  if (!isSearched(areas, first)) return;
  let best = first;
  for await (const plan of answersFrom<Plan>({ kind: 'floor-search', areas, plank, rules })) {
    if (isFewer(best, plan)) continue;
    if (!isFewer(plan, best) && plan.bound.best <= best.bound.best) continue;
    best = plan;
    yield plan;
  }
}

/** True for floors that may get a better plan, or a proof, than their first. */
export function isSearched(areas: readonly Area[], { plank, rules, bound, broken }: Plan): boolean {
  return (
    rules.pattern.name === 'scattered' &&
    plank.lock === 'click' &&
    !(bound.proven && broken.length === 0) &&
    !areas.some(({ region, angle }) => isSlanted(region, angle))
  );
}
