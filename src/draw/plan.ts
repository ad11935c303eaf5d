/** The pictures of a laid floor: rooms side by side where there are several, then each room with its cuts. */

import type { LaidRegion, Plan } from '../core/floor/floor.ts';
import type { Saying } from '../measure/say-length.ts';
import type { Drawing } from '../reply/drawing.ts';
import { cutSources, planksBegun } from './cut-source.ts';
import { homeSheet } from './home-sheet.ts';
import { roomSheets } from './room-sheet.ts';

/** An answer carries no more pictures than this: what is left out is said on the sheet before. */
export const MOST_SHEETS = 24;

/** Pictures of one region of a plan: its pieces keep the numbers they have in the whole plan. */
export function drawRoom(plan: Plan, region: LaidRegion, saying: Saying): readonly Drawing[] {
  const planks = planksBegun(plan)[plan.regions.indexOf(region)] ?? 0;
  return roomSheets(region, planks, { plan, sources: cutSources(plan), saying }, MOST_SHEETS);
}

/** Pictures of a plan in the order they are looked at. Lengths are said as the asker says them. */
export function drawPlan(plan: Plan, saying: Saying): readonly Drawing[] {
  const told = { plan, sources: cutSources(plan), saying };
  const planks = planksBegun(plan);
  const several = plan.regions.length > 1;
  const sheets: Drawing[] = [];
  const undrawn: string[] = [];
  plan.regions.forEach((region, i) => {
    const left = MOST_SHEETS - sheets.length - (several ? 1 : 0);
    const drawn = roomSheets(region, planks[i] ?? 0, told, left);
    if (drawn.length === 0) undrawn.push(region.name);
    sheets.push(...drawn);
  });
  return several ? [homeSheet(plan, planks, undrawn, saying), ...sheets] : sheets;
}
