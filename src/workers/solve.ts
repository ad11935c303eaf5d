/** Runs large floors, herringbone, remainders and sticks off the event loop, so that one request doesn't hold up the others. */

import { type CoveredArea, isSlanted } from '../layout/covered-area.ts';
import { isFewer, type Plan, type Plank, type Rules } from '../layout/floor.ts';
import type { HerringPlan, HerringRules, NoBorder } from '../layout/herringbone.ts';
import { layHerringbone, type ZigzagArea } from '../layout/herringbone-lay.ts';
import { layFloor } from '../layout/lay-floor.ts';
import { type Progress, planRest, type RestStock } from '../layout/resume-floor.ts';
import { firstSticks, type StickPlan, type StickTask } from '../trim/sticks.ts';
import { answersFrom, lastAnswerFrom } from './pool.ts';

/** A floor with more planks than this takes over 20 ms, joined rooms and corners included. */
const LARGE = 700;
/** Scattered joints are searched from the start, so this many planks already take about as long. */
const LARGE_SCATTERED = 60;
/** Slanted walls or rows need the clipper and more tries, so this many planks take about as long. */
const LARGE_SLANTED = 60;

/** Planks of the floors that are remembered, in all. */
const REMEMBERED = 30_000;

/** Plans of floors laid before, the latest last: a project asks for the same floor in most of its answers. */
const plans = new Map<string, Plan>();
let remembered = 0;

/**
 * The plan of a floor with an estimated number of planks. Throws an Error when the worker laying a large one dies or
 * overruns.
 */
export async function layAway(areas: readonly CoveredArea[], plank: Plank, rules: Rules, about: number): Promise<Plan> {
  const key = JSON.stringify([areas, plank, rules]);
  const known = plans.get(key);
  const plan = known ?? (await laidNow(areas, plank, rules, about));
  // Two requests may have laid the same floor at once.
  if (plans.delete(key)) remembered -= plan.planks;
  plans.set(key, plan);
  remembered += plan.planks;
  for (const [oldest, { planks }] of plans) {
    if (remembered <= REMEMBERED) break;
    plans.delete(oldest);
    remembered -= planks;
  }
  return plan;
}

async function laidNow(areas: readonly CoveredArea[], plank: Plank, rules: Rules, about: number): Promise<Plan> {
  const slanted = areas.some(({ region, angle }) => isSlanted(region, angle));
  const large = slanted ? LARGE_SLANTED : rules.pattern.name === 'scattered' ? LARGE_SCATTERED : LARGE;
  if (about <= large) return layFloor(areas, plank, rules);
  return lastAnswerFrom<Plan>({ kind: 'floor', areas, plank, rules });
}

/**
 * Plans better than the first, or with a higher bound, as a worker finds them. None for floors that aren't searched:
 * other patterns, boards without locks, slanted walls or rows. Ends when the worker dies or overruns; what arrived
 * stands.
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

/** True for floors that may get a better plan, or a proof, after the first. */
export function isSearched(areas: readonly CoveredArea[], { plank, rules, bound, broken }: Plan): boolean {
  return (
    rules.pattern.name === 'scattered' &&
    plank.lock === 'click' &&
    !(bound.proven && broken.length === 0) &&
    !areas.some(({ region, angle }) => isSlanted(region, angle))
  );
}

/** More boards than this take over 20 ms, because every board at a wall is clipped. */
const LARGE_HERRINGBONE = 40;

/**
 * The plan for an estimated number of boards, or why its border doesn't fit. Throws an Error when the worker dies or
 * overruns.
 */
export async function layHerringboneAway(
  areas: readonly ZigzagArea[],
  plank: Plank,
  rules: HerringRules,
  about: number,
): Promise<HerringPlan | NoBorder> {
  if (about <= LARGE_HERRINGBONE) return layHerringbone(areas, plank, rules);
  return lastAnswerFrom<HerringPlan | NoBorder>({ kind: 'herringbone', areas, plank, rules });
}

/** More rows than this, laid ones included, may take over 20 ms. */
const LONG = 25;

/** Like `planRest`. Throws an Error when the worker planning a long one dies or overruns. */
export async function restAway(
  plan: Plan,
  progress: readonly Progress[],
  stock: RestStock,
): Promise<ReturnType<typeof planRest>> {
  const rows = plan.regions.reduce((sum, region) => sum + region.rows.length, 0);
  if (rows <= LONG) return planRest(plan, progress, stock);
  return lastAnswerFrom({ kind: 'rest', plan, progress, stock });
}

/** Plans of rising quality, each replacing the one before. Throws a RangeError when a piece fits no stock. */
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
