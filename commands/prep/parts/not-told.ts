/** How an ask was read, with what was taken for the options that decide most when they are not told. */

import type { Context } from '../../../src/bot/command.ts';
import { NOT_TOLD } from '../../../src/words/tearout.ts';

/** The context's own lines, and one for each of floor, built and doors that was not told. */
export function assumedWith({ assumed, told }: Context): readonly string[] {
  const taken = (['floor', 'built', 'doors'] as const).filter((option) => !told.get(option));
  return [...assumed, ...taken.map((option) => NOT_TOLD[option])];
}
