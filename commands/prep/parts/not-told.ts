/** How an ask was read, with what was taken for the options that decide most when they are not told. */

import type { Context } from '../../../src/chat/command.ts';
import { COUNTRY_TAKEN } from '../../../src/text/prep-problems-text.ts';
import { NOT_TOLD } from '../../../src/text/tearout-text.ts';
import { countryOf, type HouseAsk } from './house.ts';

/** The context's own lines, one for each of floor, built and doors that was not told, and whose years were taken. */
export function assumedWith(ask: HouseAsk, context: Context): readonly string[] {
  const { assumed, told } = context;
  const taken = (['floor', 'built', 'doors'] as const).filter((option) => !told.get(option));
  const country =
    ask.country === undefined ? [COUNTRY_TAKEN[countryOf(ask, context) === 'us' ? 'us' : 'elsewhere']] : [];
  return [...assumed, ...taken.map((option) => NOT_TOLD[option]), ...country];
}
