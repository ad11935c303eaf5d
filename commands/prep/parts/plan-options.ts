/** The options of `prep plan`. */

import type { z } from 'zod';
import { LONGEST_ACCLIMATION } from '../../../src/figures/floor-figures.ts';
import { LEVELLER_DRIES } from '../../../src/figures/subfloor-figures.ts';
import { choice, count, room } from '../../../src/input/options.ts';
import { houseOptions } from './house.ts';
import { doorsOption } from './tearout-options.ts';

export const planOptions = {
  room: room({ summary: 'Rooms by their sides, or a walk round the walls; several with ;' }),
  ...houseOptions,
  doors: doorsOption,
  level: choice(['check', 'yes', 'no'], { summary: 'Will leveller be poured?', standard: 'check' }),
  'leveller-dry': count({
    summary: 'Hours the leveller dries, by its bag',
    standard: '24',
    record: LEVELLER_DRIES,
    least: 1,
    most: 336,
  }),
  heated: choice(['no', 'yes'], { summary: 'Is the floor heated, by tubes or cables in it?', standard: 'no' }),
  acclimate: count({
    summary: 'Hours the plank’s maker wants cartons in the room',
    standard: '0',
    record: LONGEST_ACCLIMATION,
    least: 0,
    most: 336,
  }),
};

export type PlanAsk = { readonly [O in keyof typeof planOptions]: z.output<(typeof planOptions)[O]> };
