/** The options that all floor commands share. */

import {
  KERF,
  LAYING_DIRECTION,
  MISTAKES_PERCENT,
  NARROWEST_STRIP,
  PERIMETER_GAP,
  SHORTEST_END,
  SPARES,
  STAGGER,
  STAIR_STEP,
  WALL_DOUBT,
} from '../../src/figures/floor-figures.ts';
import { type Saying, sayCut } from '../../src/input/format.ts';
import { count, direction, length, pattern, percent, plank, room, text } from '../../src/input/options.ts';
import type { ParsedRows } from '../../src/input/parse-layout.ts';
import type { ParsedPlank, ParsedRooms, Units } from '../../src/input/reading.ts';
import { readHomeDoorways } from '../../src/input/rooms/parse-doorways.ts';
import { readStanding } from '../../src/input/rooms/parse-obstacles.ts';
import type { Direction } from '../../src/layout/direction.ts';
import type { Doorway } from '../../src/layout/doorways.ts';
import type { Pattern, Plan, Plank, Rules } from '../../src/layout/floor.ts';
import type { ParsedStanding } from '../../src/layout/home-regions.ts';
import { stairStep } from '../../src/layout/runs.ts';
import type { Block } from '../../src/reply/reply.ts';
import {
  BROKEN_TITLE,
  NOT_SCATTERED_TITLE,
  notScattered,
  OFF_PATTERN_TITLE,
  offPattern,
  sayBroken,
} from '../../src/text/floor-text.ts';
import { inches, type Length, millimetres, ticks } from '../../src/units/length.ts';

const nothing = ticks(0);

export const roomOption = room({
  summary: 'Rooms by their sides, bays and clipped corners, or a walk around the walls, with ; between rooms',
});

/** Everything but the rooms and the plank. */
export const layingOptions = {
  pattern: pattern({
    summary: 'stair-step (step x rows), half, thirds, offcut-first, scattered, or herringbone (border 1)',
    standard: 'stair-step',
    record: STAIR_STEP,
  }),
  direction: direction({
    summary: 'Which way rows run: long, short, diagonal, at 30°, along a wall; or a way for each room',
    standard: 'long',
    record: LAYING_DIRECTION,
  }),
  doorways: text(
    {
      summary: 'Doorways between the rooms: where, how wide, and whether the floor runs on or stops',
      example: 'hall to bedroom 32 in, 18 in from the left corner of wall 2',
      colons: 'any',
      standard: 'none',
    },
    readHomeDoorways,
  ),
  holes: text(
    {
      summary: 'What the planks go around: islands, hearths, posts, vents, and where they are',
      example: "island 3 x 6 ft at 4' from left, 5' from bottom",
      colons: 'any',
      standard: 'none',
    },
    readStanding,
  ),
  stagger: length({
    summary: 'Shortest distance between the joints of neighboring rows',
    standard: '6 in',
    record: STAGGER,
    metric: '150 mm',
    example: '8 in',
    least: nothing,
    most: millimetres(2000),
  }),
  'shortest-end': length({
    summary: 'Shortest piece at the start or end of a row',
    standard: '8 in',
    record: SHORTEST_END,
    metric: '200 mm',
    example: '10 in',
    least: nothing,
    most: millimetres(2000),
  }),
  'narrowest-strip': length({
    summary: 'Narrowest strip along a wall that runs with the rows; planks are notched around posts and jambs',
    standard: '2 in',
    record: NARROWEST_STRIP,
    metric: '50 mm',
    example: '3 in',
    least: nothing,
    most: millimetres(500),
  }),
  gap: length({
    summary: 'Gap at every wall',
    standard: '1/4 in',
    record: PERIMETER_GAP,
    metric: '6 mm',
    example: '3/8 in',
    least: nothing,
    most: inches(4),
  }),
  kerf: length({
    summary: 'Width lost to each cut: 0 for score and snap, 1/8 in for a saw',
    standard: '0',
    record: KERF,
    example: '1/8 in',
    least: nothing,
    most: inches(0.5),
  }),
  mistakes: percent({ summary: 'Extra planks for mistakes', standard: '3%', record: MISTAKES_PERCENT }),
  spares: count({ summary: 'Extra planks to keep for repairs', standard: '0', record: SPARES, least: 0, most: 1000 }),
  doubt: length({
    summary: 'How far off a wall measurement could be, to see how sure the count is',
    standard: '1/2 in',
    record: WALL_DOUBT,
    metric: '12 mm',
    example: '1 in',
    least: inches(0.125),
    most: inches(12),
  }),
  tax: percent({ summary: 'Sales tax on the cartons', standard: '0%', example: '8.25%' }),
};

export const floorOptions = {
  room: roomOption,
  plank: plank({ summary: 'Plank size, how many planks or how much area a carton holds, price if you like' }),
  ...layingOptions,
};

export interface PlanksAsk {
  readonly room: ParsedRooms;
  readonly plank: ParsedPlank;
  readonly pattern: ParsedRows;
  readonly direction: Direction;
  readonly doorways: readonly Doorway[];
  /** Things in the room that planks go around. */
  readonly holes: readonly ParsedStanding[];
  readonly stagger: Length;
  readonly 'shortest-end': Length;
  readonly 'narrowest-strip': Length;
  readonly gap: Length;
  readonly kerf: Length;
  readonly mistakes: number;
  readonly spares: number;
  readonly tax: number;
  /** How far off the measured length of a wall may be. */
  readonly doubt: Length;
}

/** What a request has whatever its pattern. */
export type AreasAsk = Omit<PlanksAsk, 'pattern'>;

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

/** Fills in defaults: the step of a stair-step is at least the stagger, and rows restart without breaking it. */
export function patternOf(given: ParsedRows, plank: Plank, stagger: Length, units: Units): Pattern {
  if (given.name !== 'stair-step') return { name: given.name };
  const step = given.step ?? Math.max(STAIR_STEP.value[units], stagger);
  const stair = stairStep(plank, step, stagger);
  return given.rows === undefined ? stair : { ...stair, rows: given.rows };
}

// A plan that breaks a rule always says so.

/** One step for each place a rule is broken, one per room for rows off the pattern. Empty if all rules are kept. */
export function brokenBlocks(plan: Plan, saying: Saying): readonly Block[] {
  const requested = { stagger: plan.rules.stagger, minEnd: plan.rules.minEnd, minRip: plan.rules.minRip };
  const hard: string[] = [];
  const off = new Map<string, Set<number>>();
  for (const { rule, region, row, at } of plan.broken) {
    if (rule === 'pattern') off.set(region, (off.get(region) ?? new Set()).add(row + 1));
    else hard.push(sayBroken(rule, region, row + 1, sayCut(ticks(at), saying), sayCut(requested[rule], saying)));
  }
  const scattered = plan.rules.pattern.name === 'scattered';
  const moved = [...off].map(([room, rows]) => (scattered ? notScattered : offPattern)(room, [...rows]));
  return [
    ...(hard.length > 0
      ? [{ kind: 'steps' as const, section: 'details' as const, title: BROKEN_TITLE, steps: [...new Set(hard)] }]
      : []),
    ...(moved.length > 0
      ? [
          {
            kind: 'steps' as const,
            section: 'details' as const,
            title: scattered ? NOT_SCATTERED_TITLE : OFF_PATTERN_TITLE,
            steps: moved,
          },
        ]
      : []),
  ];
}
