/** The rules of an ask, from what was told. */

import { STAIR_STEP } from '../../../src/figures/floor-figures.ts';
import type { ToldRows } from '../../../src/input/parse-layout.ts';
import type { Units } from '../../../src/input/reading.ts';
import type { ToldPlank, ToldRooms } from '../../../src/input/readings-made.ts';
import type { Direction } from '../../../src/layout/direction.ts';
import type { Doorway } from '../../../src/layout/doorways.ts';
import type { Pattern, Plank, Rules } from '../../../src/layout/floor.ts';
import type { ToldStanding } from '../../../src/layout/obstacles.ts';
import { stairStep } from '../../../src/layout/runs.ts';
import type { Length } from '../../../src/units/length.ts';

/** What `floor planks` reads. */
export interface PlanksAsk {
  readonly room: ToldRooms;
  readonly plank: ToldPlank;
  readonly pattern: ToldRows;
  readonly direction: Direction;
  readonly doorways: readonly Doorway[];
  /** What stands in the rooms and planks go round. */
  readonly holes: readonly ToldStanding[];
  readonly stagger: Length;
  readonly 'shortest-end': Length;
  readonly 'narrowest-strip': Length;
  readonly gap: Length;
  readonly kerf: Length;
  readonly mistakes: number;
  readonly spares: number;
  readonly tax: number;
  /** How far off a wall may be. */
  readonly doubt: Length;
}

/** What an ask tells whatever the pattern. */
export type AreasAsk = Omit<PlanksAsk, 'pattern'>;

/** The rules to lay by. */
export function rulesOf(ask: PlanksAsk): Rules {
  return {
    gap: ask.gap,
    kerf: ask.kerf,
    stagger: ask.stagger,
    minEnd: ask['shortest-end'],
    minRip: ask['narrowest-strip'],
    pattern: patternOf(ask.pattern, ask.plank.plank, ask.stagger, ask.room.units),
  };
}

/** A pattern with its defaults: a step never below the stagger, and rows whose restart keeps it. */
export function patternOf(told: ToldRows, plank: Plank, stagger: Length, units: Units): Pattern {
  if (told.name !== 'stair-step') return { name: told.name };
  const step = told.step ?? Math.max(STAIR_STEP.value[units], stagger);
  const stair = stairStep(plank, step, stagger);
  return told.rows === undefined ? stair : { ...stair, rows: told.rows };
}
