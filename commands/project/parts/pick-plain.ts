/** A pick made to read the same whoever reads it: what a habit of units decided is written out. */

import type { Command } from '../../../src/chat/command.ts';
import type { Habits, Units } from '../../../src/input/reading.ts';

const PAIR =
  /((?<!\d)\d(?:[\d.,/ ]*\d)?)\s*(x|×|by)\s*(\d+(?:[.,]\d+)?)(?![\d/]|[.,]\d|\s*(?:x|×|by|in|ft|mm|cm|m\b|["'″′]))/i;

/** The text as it is kept: itself, or with the unit that it was read in where that leaves less to be said of how it was read. */
export function plainly(text: string, command: Command, option: string, habits: Habits): string {
  const meant = readBy(text, command, option, habits);
  if (meant === undefined) return text;
  const units: readonly Units[] = ['imperial', 'metric'];
  const everywhere = (candidate: string): boolean =>
    units.every((one) => readBy(candidate, command, option, { ...habits, units: one })?.value === meant.value);
  if (meant.notes === 0 && everywhere(text)) return text;
  const unit = habits.units === 'metric' ? 'mm' : 'in';
  const plainer = [text.replace(PAIR, `$1 $2 $3 ${unit}`), `${text} ${unit}`].find(
    (candidate) => everywhere(candidate) && (readBy(candidate, command, option, habits)?.notes ?? 0) < meant.notes,
  );
  return plainer ?? text;
}

/** What an option reads in a text, and how much it says of how it read it; undefined where it does not. */
function readBy(text: string, { options }: Command, option: string, habits: Habits) {
  let notes = 0;
  const reading = { option, habits, note: () => void notes++ };
  const read = options.shape[option]?.safeParse({ text, reading });
  if (!read?.success) return undefined;
  const value = JSON.stringify(read.data, (_key, one) => (typeof one === 'bigint' ? String(one) : one));
  return { value, notes };
}
