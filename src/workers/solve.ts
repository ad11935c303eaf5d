/** Floors laid off the event loop when they are large: an ask must not hold up everybody else's. */

import { type CoveredArea, isSlanted } from '../layout/covered-area.ts';
import { isFewer, type Plan, type Plank, type Rules } from '../layout/floor.ts';
import type { HerringPlan, HerringRules, NoBorder } from '../layout/herringbone.ts';
import { layHerringbone, type ZigzagArea } from '../layout/herringbone-lay.ts';
import { layFloor } from '../layout/lay-floor.ts';
import { type Progress, planRest, type RestStock } from '../layout/resume-floor.ts';
import { firstSticks, type StickPlan, type StickTask } from '../trim/sticks.ts';
import { answersFrom, lastAnswerFrom } from './pool.ts';

/** A floor of more planks than this takes over 20 ms, joined rooms and corners counted. */
const LARGE = 700;
/** Scattered joints are searched from the start: so many planks already take about as long. */
const LARGE_SCATTERED = 60;
/** Slanted walls or rows take the clipper and try more: so many planks take about as long. */
const LARGE_SLANTED = 60;

/** The plan of a floor of about so many planks. Throws an Error when the worker that lays a large one dies or overruns. */
export async function layAway(areas: readonly CoveredArea[], plank: Plank, rules: Rules, about: number): Promise<Plan> {
  const slanted = areas.some(({ region, angle }) => isSlanted(region, angle));
  const large = slanted ? LARGE_SLANTED : rules.pattern.name === 'scattered' ? LARGE_SCATTERED : LARGE;
  if (about <= large) return layFloor(areas, plank, rules);
  return lastAnswerFrom<Plan>({ kind: 'floor', areas, plank, rules });
}

/**
 * Plans better than the first, or with a higher bound, as a worker finds them; none for floors that are not searched: other
 * patterns, boards without locks, walls or rows at a slant. Ends when the worker dies or overruns: what came, stands.
 */
export async function* betterFloors(areas: readonly CoveredArea[], first: Plan): AsyncGenerator<Plan> {
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
export function isSearched(areas: readonly CoveredArea[], { plank, rules, bound, broken }: Plan): boolean {
  return (
    rules.pattern.name === 'scattered' &&
    plank.lock === 'click' &&
    !(bound.proven && broken.length === 0) &&
    !areas.some(({ region, angle }) => isSlanted(region, angle))
  );
}

// Herringbone floors laid off the event loop when they have more than a few boards.

/** More boards than this take over 20 ms: every board at a wall is clipped. */
const LARGE_HERRINGBONE = 40;

/** The plan of a floor of about so many boards, or why its border does not fit. Throws an Error when the worker dies or overruns. */
export async function layHerringboneAway(
  areas: readonly ZigzagArea[],
  plank: Plank,
  rules: HerringRules,
  about: number,
): Promise<HerringPlan | NoBorder> {
  if (about <= LARGE_HERRINGBONE) return layHerringbone(areas, plank, rules);
  return lastAnswerFrom<HerringPlan | NoBorder>({ kind: 'herringbone', areas, plank, rules });
}

// The rest of a floor begun, planned off the event loop when it is long.

/** More rows than this, laid ones among them, may take over 20 ms. */
const LONG = 25;

/** As `planRest`. Throws an Error when the worker that plans a long one dies or overruns. */
export async function restAway(
  plan: Plan,
  progress: readonly Progress[],
  stock: RestStock,
): Promise<ReturnType<typeof planRest>> {
  const rows = plan.regions.reduce((sum, region) => sum + region.rows.length, 0);
  if (rows <= LONG) return planRest(plan, progress, stock);
  return lastAnswerFrom({ kind: 'rest', plan, progress, stock });
}

// Sticks cut for least money, off the event loop: a first answer at once, then better ones, proven where it
// can be.

/** Plans in rising quality, each replacing the one before. Throws a RangeError when a piece fits no stock. */
export async function* cutSticks(task: StickTask): AsyncGenerator<StickPlan> {
  let best = firstSticks(task);
  yield best;
  if (best.proven) return;
  for await (const plan of answersFrom<StickPlan>({ kind: 'sticks', task })) {
    if (plan.cents > best.cents || (plan.cents === best.cents && plan.bound <= best.bound)) continue;
    best = plan;
    yield best;
    if (best.proven) return;
  }
}
