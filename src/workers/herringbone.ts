/** Herringbone floors laid off the event loop when they have more than a few boards. */

import type { Plank } from '../layout/floor.ts';
import type { HerringPlan, HerringRules, NoBorder } from '../layout/herringbone.ts';
import { layHerringbone, type ZigzagArea } from '../layout/herringbone-lay.ts';
import { lastAnswerFrom } from './pool.ts';

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
