/** A plank product, read from what people type: its size, what a carton holds and costs, its thickness, pad and lock. */

import {
  cartonMissing,
  notOfAPlank,
  plankCountExample,
  plankSizeExample,
  plankTooLong,
} from '../text/plank-problems-text.ts';
import { hiddenSignTyped } from '../text/room-problems-text.ts';
import { areaOf } from '../units/length.ts';
import { cartonOf, claimCarton } from './plank-carton.ts';
import { type Unclaimed, unclaimed } from './plank-claim.ts';
import { claimLoneThickness, claimMake, claimThickness } from './plank-make.ts';
import { cartonPrice, claimPrice } from './plank-price.ts';
import { claimSize } from './plank-size.ts';
import { type Habits, type Read, type Reading, read, unread } from './reading.ts';
import { type Flaw, problemsOf } from './rooms/room-flaw.ts';
import { hiddenSign, LETTER, plainSigns, withoutHidden } from './rooms/room-plain.ts';
import type { ToldPlank } from './told.ts';

const LONGEST_TEXT = 500;

/** Words round the figures that change nothing. */
const FILLER =
  /^(?:planks?|boards?|pieces?|pcs|tiles?|vinyl|luxury|rigid|core|lvp|lvt|spc|wpc|laminate|floor|flooring|of|with|each|the|an?|and|per|in|is|are|at|for|to|it|that|covers?|covering|coverage|has|holds|contains|size|sizes|nominal|cartons?|box(?:es)?|packs?|cases?|bx|ctn|pkg|long|wide|end|ends|joints?|price|costs?|thick|approx(?:imately)?|about|total|x)$/;

type Parsed =
  | { readonly ok: true; readonly value: ToldPlank; readonly notes: readonly string[] }
  | { readonly ok: false; readonly flaws: readonly [Flaw, ...Flaw[]] };

/** Whether a text asks for a plank of ours, for somebody who has none yet. */
export function isExamplePlank(text: string): boolean {
  return /^(?:an? |the )?example(?: plank)?$/i.test(text.trim());
}

/** The plank of ours, as it could be typed. It is in no order and no list: whoever gets it is told. */
export function examplePlank({ units }: Habits): string {
  return `${plankSizeExample(units === 'metric')}, ${plankCountExample()}`;
}

/**
 * A plank with its carton, in any order: `6 x 48 in, 20 sq ft/carton, $2.89/sq ft`. The smaller side is the width. Of the
 * count and the area of a carton one may be missing and is worked out; a printed area within 2 % of size × count stands.
 * A price per sq ft, m² or plank becomes the carton's, in whole cents, rounded half up once. What cannot be placed is told
 * back, never passed over; a Problem's fix is itself read. Never throws.
 */
export function readPlank(text: string, reading: Reading): Read<ToldPlank> {
  const parsed = parse(isExamplePlank(text) ? examplePlank(reading.habits) : text, reading);
  if (parsed.ok) {
    for (const note of parsed.notes) reading.note(note);
    return read(parsed.value);
  }
  return unread(...problemsOf(parsed.flaws, text, reading.option, (mended) => parse(mended, reading).ok));
}

function parse(text: string, { option, habits }: Reading): Parsed {
  const notes: string[] = [];
  const reading: Reading = { option, habits, note: (assumed) => notes.push(assumed) };
  const whole = (expected: string, ...mends: string[]): Parsed => ({
    ok: false,
    flaws: [{ from: 0, to: text.length, expected, mends: () => mends }],
  });
  if (text.length > LONGEST_TEXT) return whole(plankTooLong(LONGEST_TEXT));
  if (hiddenSign(text) !== undefined) return whole(hiddenSignTyped(), withoutHidden(text, ''));
  const rest = unclaimed(plainSigns(text));
  const price = claimPrice(text, rest, reading);
  const named = claimThickness(rest, reading);
  const size = claimSize(text, rest, reading);
  const make = claimMake(rest);
  const units = 'mends' in size ? habits.units : size.units;
  const { told, flaws } = claimCarton(text, rest, units, reading);
  const lone = named === undefined ? claimLoneThickness(text, rest, reading) : undefined;
  const plankArea = 'mends' in size ? undefined : areaOf(size.width, size.length);
  const uncounted = !told.count && !told.area && flaws.length === 0;
  const count = uncounted ? rest.claim(/(?<![^\u2588 ,;]) {0,9}(?<figure>\d{1,3}) {0,9}(?![^\u2588 ,;])/) : undefined;
  const carton =
    plankArea !== undefined && (told.count || told.area) ? cartonOf(told, plankArea, units, reading) : undefined;
  if (uncounted) flaws.push(count ? loneCount(count) : cartonUntold(text));
  if (carton && 'mends' in carton) flaws.push(carton);
  flaws.push(...price.flaws, ...leftFlaws(rest));
  for (const thick of [named, lone]) if (typeof thick === 'object') flaws.push(thick);
  if ('mends' in size) flaws.push(size);
  const settled = carton && 'count' in carton ? carton : undefined;
  const cost = price.told && settled ? cartonPrice(price.told, settled, reading) : undefined;
  if (cost && 'mends' in cost) flaws.push(cost);
  const [first, ...others] = flaws;
  if (first || 'mends' in size || !settled) return { ok: false, flaws: first ? [first, ...others] : [unplaced(text)] };
  const thickness = [named, size.thickness, lone].find((thick) => typeof thick === 'number');
  const value: ToldPlank = {
    plank: { width: size.width, length: size.length, perCarton: settled.count, lock: make.lock },
    cartonArea: settled.area,
    units,
    ...(cost && 'cents' in cost && { cartonPrice: cost }),
    ...(make.handed && make.lock === 'click' && { handed: true }),
    ...(make.attachedPad !== undefined && { attachedPad: make.attachedPad }),
    ...(thickness !== undefined && { thickness }),
  };
  return { ok: true, notes, value };
}

/** A flaw for every run of words that says nothing of a plank. */
function leftFlaws(rest: Unclaimed): Flaw[] {
  return rest.left().flatMap(({ from, to, words }) => {
    const known = words.split(new RegExp(`[^${LETTER}\\d.$€£-]+`)).every((word) => {
      const bare = word.replace(/^[.-]+|(?<![.-])[.-]+$/g, '');
      return bare === '' || FILLER.test(bare);
    });
    if (known && /^[\s.()/:=@~x-]*$/.test(words.replace(new RegExp(`[${LETTER}]`, 'g'), ''))) return [];
    return [{ from, to, expected: notOfAPlank(), mends: () => [''] }];
  });
}

/** A lone number where no carton is told was probably the count. */
function loneCount(found: RegExpExecArray): Flaw {
  const place = { from: found.index, to: found.index + found[0].length };
  return {
    ...place,
    expected: cartonMissing(),
    mends: () => [` ${found.groups?.figure} per carton `],
  };
}

function cartonUntold(text: string): Flaw {
  const end = text.length;
  const shown = { from: 0, to: end };
  return { from: end, to: end, shown, expected: cartonMissing(), mends: () => [] };
}

function unplaced(text: string): Flaw {
  return { from: 0, to: text.length, expected: notOfAPlank(), mends: () => [] };
}
