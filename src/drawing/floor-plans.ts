/** The pictures of a laid floor: an overview if there are several rooms, then each room with its cuts. */

import type { Saying } from '../input/format.ts';
import type { LaidRegion, Plan } from '../layout/floor.ts';
import type { Drawing } from '../reply/drawing.ts';
import { cutSources, planksBegun } from './floor-shapes.ts';
import { homeSheet } from './home-sheet.ts';
import type { Labelled } from './labels.ts';
import { roomSheets } from './room-sheets.ts';

/** An answer has no more pictures than this; the sheet before says what is left out. */
export const MOST_SHEETS = 24;

/** What all pictures of a plan need, computed once. */
export interface PlanAsGiven extends Labelled {
  readonly planks: readonly number[];
}

export function planAsGiven(plan: Plan, saying: Saying): PlanAsGiven {
  return { plan, saying, sources: cutSources(plan), planks: planksBegun(plan) };
}

/** Pictures of one region, drawn in steps; its pieces keep the numbers they have in the whole plan. */
export function drawRoom(given: PlanAsGiven, region: LaidRegion): Generator<undefined, readonly Drawing[]> {
  return roomSheets(region, given.planks[given.plan.regions.indexOf(region)] ?? 0, given, MOST_SHEETS);
}

/** Pictures of a plan in viewing order, drawn in steps. */
export function* drawPlan(given: PlanAsGiven): Generator<undefined, readonly Drawing[]> {
  const { plan, planks, saying } = given;
  const several = plan.regions.length > 1;
  const sheets: Drawing[] = [];
  const undrawn: string[] = [];
  for (const [i, region] of plan.regions.entries()) {
    const left = MOST_SHEETS - sheets.length - (several ? 1 : 0);
    const drawn = yield* roomSheets(region, planks[i] ?? 0, given, left);
    if (drawn.length === 0) undrawn.push(region.name);
    sheets.push(...drawn);
    yield;
  }
  return several ? [yield* homeSheet(plan, planks, undrawn, saying), ...sheets] : sheets;
}
