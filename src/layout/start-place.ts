/** What a start piece does to the rules: faults beside the runs it touches, and the places where a rule is just kept. */

import { endOf, isJointed, type Run, tooNear, withinPlank } from './run.ts';

/** Places are tried half an inch apart: finer than anyone lays, and the same whether the ask was in inches or millimetres. */
export const GRID = 4064;

/** Rules a start piece must keep, in ticks. */
export interface StartRules {
  readonly stagger: number;
  readonly minEnd: number;
}

/** A touching run that already has its start piece. */
export interface Laid {
  readonly run: Run;
  readonly start: number;
}

/** How many rules a start piece breaks: too short at either end, and each joint too near one of a touching run. */
export function faultsAt(run: Run, start: number, beside: readonly Laid[], plank: number, rules: StartRules): number {
  if (!isJointed(run, plank)) return 0;
  let faults = start < rules.minEnd ? 1 : 0;
  if (endOf(run.length, start, plank) < rules.minEnd) faults++;
  for (const other of beside) faults += tooNear(run, start, other.run, other.start, plank, rules.stagger).length;
  return faults;
}

/** Start pieces worth trying in a run longer than a plank: a grid, and every place where a rule is just kept. */
export function placesFor(run: Run, beside: readonly Laid[], plank: number, rules: StartRules): readonly number[] {
  const places = new Set<number>([
    plank,
    rules.minEnd,
    withinPlank(run.length - rules.minEnd, plank),
    withinPlank(run.length, plank),
  ]);
  for (let start = GRID; start < plank; start += GRID) places.add(start);
  for (const { run: other, start } of beside) {
    if (!isJointed(other, plank)) continue;
    const joint = other.from + start - run.from;
    places.add(withinPlank(joint + rules.stagger, plank)).add(withinPlank(joint - rules.stagger, plank));
  }
  return [...places].filter((start) => start > 0 && start <= plank && start < run.length);
}
