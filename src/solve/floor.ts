/** Floors laid off the event loop when they are large: an ask must not hold up everybody else's. */

import type { Plan, Plank, Rules } from '../core/floor/floor.ts';
import { isSlanted } from '../core/floor/ground.ts';
import { layFloor } from '../core/floor/lay.ts';
import type { Area } from '../core/floor/sliced.ts';
import { lastAnswerFrom } from './pool.ts';

/** A floor of more planks than this takes over 20 ms. */
const LARGE = 1500;
/** Slanted walls or rows take the clipper and try more: so many planks take about as long. */
const LARGE_SLANTED = 60;

/** The plan of a floor of about so many planks. Throws an Error when the worker that lays a large one dies or overruns. */
export async function layAway(areas: readonly Area[], plank: Plank, rules: Rules, about: number): Promise<Plan> {
  const slanted = areas.some(({ region, angle }) => isSlanted(region, angle));
  if (about <= (slanted ? LARGE_SLANTED : LARGE)) return layFloor(areas, plank, rules);
  return lastAnswerFrom<Plan>({ kind: 'floor', areas, plank, rules });
}
