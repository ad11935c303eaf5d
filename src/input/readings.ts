/** Straightedge readings: gaps over a length, high or low, one after the other. */

import { gapInFeet, gapTooWide, notReadings, readingLow } from '../text/prep-problems-text.ts';
import type { Length } from '../units/length.ts';
import { readGrid, type ToldGrid } from './grid.ts';
import { unitIn, unitsOf } from './length.ts';
import type { LengthUnit } from './length-units.ts';
import { type Found, screened, together } from './place-found.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-plain.ts';
import { readSide, SIDE } from './rooms/room-side.ts';

/** A gap under a straightedge of a length, at a dip or beside a hump. */
export interface ToldGap {
  readonly gap: Length;
  readonly over: Length;
  readonly spot: 'low' | 'high';
}

/** Gaps one by one, or a grid of depths. */
export type ToldReadings =
  | { readonly kind: 'gaps'; readonly gaps: readonly ToldGap[]; readonly units: Units; readonly found: Found }
  | { readonly kind: 'grid'; readonly grid: ToldGrid; readonly units: Units; readonly found: Found };

const LONGEST_TEXT = 3000;
const MOST_GAPS = 200;
const OVER = '(?: ?(?:gap|deep|low|high|dip|hump)?,? ?(?:over|in|per|under|across|on|within|by) (?:a |an |any )?)';
const GAP = new RegExp(`(?<gap>${SIDE})${OVER}(?<over>${SIDE})`);
const HIGH = /(?<![a-z])(?:high|humps?|ridges?|crowns?|crowned|bumps?|proud|peaks?|up)(?![a-z])/;
const LOW = /(?<![a-z])(?:low|dips?|hollows?|valleys?|deep|down|gap|spots?|at|a|the|an)(?![a-z])/g;

/** `3/16 in over 10 ft; high 1/4 in over 6 ft`, or `grid 2 ft: 0 1/8 1/4; 0 1/4 3/8`. Never throws. */
export function readReadings(text: string, reading: Reading): Read<ToldReadings> {
  const typed = withoutHidden(text.trim(), ' ');
  const got = { option: reading.option, got: typed };
  if (typed.length > LONGEST_TEXT) return unread(notReadings(got));
  const plain = plainSigns(typed).replace(/[^\S\n]+/g, ' ');
  if (/^grid(?![a-z])/.test(plain)) {
    const grid = readGrid(plain, reading);
    return grid.ok ? read({ kind: 'grid', ...grid.value }) : grid;
  }
  const parts = plain
    .split(/[;|\n]| and (?=[\d.])|, ?(?=(?:[a-z ]+)?\d[^,;]*? (?:over|in|per|under|across) )/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length > MOST_GAPS) return unread(notReadings(got));
  const gaps: ToldGap[] = [];
  const found: Found[] = [];
  for (const part of parts) {
    const one = gapIn(part, reading, got);
    if (!one.ok) return one;
    found.push(one.value.found);
    if (one.value.gap) gaps.push(one.value.gap);
  }
  const all = together(...found);
  if (gaps.length === 0 && all.hazards.length === 0) return unread(notReadings(got));
  const named = unitIn(typed);
  const units = named === undefined ? reading.habits.units : unitsOf(named);
  return read({ kind: 'gaps', gaps, units, found: all });
}

interface Part {
  readonly gap?: ToldGap;
  readonly found: Found;
}

function gapIn(part: string, reading: Reading, got: { option: string; got: string }): Read<Part> {
  const match = GAP.exec(part);
  const rest = match ? `${part.slice(0, match.index)} ${part.slice(match.index + match[0].length)}` : part;
  const words = `${rest} ${match?.[0].replace(/[^a-z ]/g, ' ') ?? ''}`;
  const spot = HIGH.test(words) ? 'high' : 'low';
  const plainRest = rest.replace(HIGH, ' ').replace(LOW, ' ');
  // A mend must not leave out the words that were not plain.
  const kept = match && `${spot === 'high' ? 'high ' : ''}${match[0]}, unsure`;
  const screen = screened(plainRest, reading, kept ?? undefined);
  if (!screen.ok) return match ? screen : unread(notReadings(got));
  if (screen.value.hazards.length > 0) return read({ found: screen.value });
  const { gap, over } = match?.groups ?? {};
  if (gap === undefined || over === undefined) return unread(notReadings(got));
  const metric = unitsOf(unitIn(over) ?? (reading.habits.units === 'metric' ? 'm' : 'ft')) === 'metric';
  const [small, large]: readonly [LengthUnit, LengthUnit] = metric ? ['mm', 'm'] : ['in', 'ft'];
  const [depth, span] = [readSide(gap, small, reading), readSide(over, large, reading)];
  if (!depth.ok || !span.ok) return unread(notReadings(got));
  if (depth.length >= span.length) return unread(gapTooWide(got));
  if (unitIn(gap) === undefined) reading.note(gapInFeet(gap, small === 'in' ? 'inches' : 'mm'));
  if (spot === 'low' && !/(?:low|dip|hollow|valley|deep)/.test(words))
    reading.note(readingLow(match?.[0].trim() ?? ''));
  return read({ gap: { gap: depth.length, over: span.length, spot }, found: screen.value });
}
