/** How to lay a floor, as people type it: the pattern, and which way the rows run. */

import { closest, distance } from 'fastest-levenshtein';
import type { Direction, Heading } from '../layout/direction.ts';
import { notADirection, notAPattern, patternTaken } from '../text/length-problems-text.ts';
import type { Length } from '../units/length.ts';
import { readLength } from './parse-length.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

// Herringbone, with or without a border: `herringbone`, `herringbone with a border of 2`.

/** `border`: courses of boards along the walls. */
export interface ParsedHerringbone {
  readonly name: 'herringbone';
  readonly border: number;
}

export const HERRINGBONE = 'herringbone';

const NUMBERS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4 };
const FORM =
  /^herring[- ]?bones?(?: pattern)?(?:[ ,:+]+(?:with |and |plus )?(?<no>no |without (?:a )?)?(?:an? )?(?:(?<before>one|two|three|four|[0-4])[ -]*)?(?:(?:boards?|courses?|rows?|planks?)[ -])?(?:wide )?border(?:,? (?:of |x )?(?<after>one|two|three|four|[0-4])(?: (?:boards?|courses?|rows?|planks?))?(?: wide)?)?)?$/;

/** Takes plain, lowercase text; undefined if it isn't a herringbone. */
export function readHerringbone(plain: string): ParsedHerringbone | undefined {
  const found = FORM.exec(plain);
  if (!found) return undefined;
  const { no, before, after } = found.groups ?? {};
  const given = after ?? before;
  if (no !== undefined || !plain.includes('border')) return { name: HERRINGBONE, border: 0 };
  return { name: HERRINGBONE, border: given === undefined ? 1 : (NUMBERS[given] ?? Number(given)) };
}

/** A pattern of rows; step and rows of a stair-step are optional. */
export type ParsedRows =
  | { readonly name: 'stair-step'; readonly step?: Length; readonly rows?: number }
  | { readonly name: 'half' | 'thirds' | 'offcut-first' | 'scattered' };

type ParsedPattern = ParsedRows | ParsedHerringbone;

export const PATTERN_NAMES = ['stair-step', 'half', 'thirds', 'offcut-first', 'scattered'] as const;

const SAME: ReadonlyMap<string, (typeof PATTERN_NAMES)[number]> = new Map([
  ['stairstep', 'stair-step'],
  ['stair', 'stair-step'],
  ['stairs', 'stair-step'],
  ['half-plank', 'half'],
  ['halves', 'half'],
  ['third', 'thirds'],
  ['offcut', 'offcut-first'],
  ['offcuts', 'offcut-first'],
  ['scatter', 'scattered'],
  ['random', 'scattered'],
]);

/** A long word may have two letters wrong. */
const LONG_WORD = 7;
const SLIPS = 2;

/** `stair-step`, `stair-step 8 in x 4`, `stair-step 200 mm, 4 rows`, `half`, `thirds`, `offcut-first`, `scattered`. */
export function readPattern(text: string, reading: Reading): Read<ParsedPattern> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const herringbone = readHerringbone(plain);
  if (herringbone) return read(herringbone);
  const match = /^([\p{L}]+(?:[- ](?:step|plank|first))?)(?:[ ,:]{1,9}(.+))?$/u.exec(plain);
  const word = (match?.[1] ?? '').replace(' ', '-');
  const name = PATTERN_NAMES.find((known) => known === word) ?? SAME.get(word);
  const rest = match?.[2];
  const got = { option: reading.option, got: text };
  if (!name) {
    const near = nearPattern(word.slice(0, 40));
    if (rest !== undefined || word.length < LONG_WORD || distance(word, near) > SLIPS)
      return unread(notAPattern(got, near));
    reading.note(patternTaken(text.trim(), near));
    return readPattern(near, reading);
  }
  if (name !== 'stair-step') return rest === undefined ? read({ name }) : unread(notAPattern(got, name));
  if (rest === undefined) return read({ name });
  const steps = /^(.*?)(?:(?<!\s)\s*(?:[x×,]|by)\s*([2-9]|1[0-9]|20)(?:\s*rows?)?)?$/.exec(rest);
  const step = readLength(steps?.[1] ?? '', reading, reading.preferences.units === 'metric' ? 'mm' : 'in');
  if (!step.ok) return unread(notAPattern(got, 'stair-step 6 in x 5'));
  return read({ name, step: step.value, ...(steps?.[2] ? { rows: Number(steps[2]) } : {}) });
}

/** The pattern closest to a misspelled word, or the default if none is close. */
function nearPattern(word: string): string {
  const near = closest(word, [...PATTERN_NAMES, HERRINGBONE]);
  return distance(word, near) <= near.length / 2 ? near : 'stair-step';
}

/** Enough for fifty rooms, each with its own direction. */
const LONGEST_DIRECTION = 1500;

/**
 * `long`, `short`, `diagonal`, `30°`, `wall 2`, `along wall 2 of living`, `living wall 2`; or per room: `hall long;
 * bedroom short; others wall 1`.
 */
export function readDirection(text: string, reading: Reading): Read<Direction> {
  const plain = text.trim().replace(/[^\S\n]+/g, ' ');
  if (plain.length > LONGEST_DIRECTION) return unread(notADirection({ option: reading.option, got: text }));
  const whole = headingOf(plain);
  if (whole) return read(whole);
  const parts = plain
    .split(/[;,\n]| and /i)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const rooms: { room: string; heading: Heading }[] = [];
  let others: Heading = { kind: 'side', side: 'long' };
  for (const part of parts) {
    const direct = headingOf(part);
    const named =
      /^(?:the )?(\p{L}.*?)(?<![ :=-])[ :=-]+((?:(?:along|runs?|the|way) )*(?:long|short|diagonal|\d{1,3} ?(?:°|deg)|wall \d).*)$/iu.exec(
        part,
      );
    if (direct) {
      if (direct.kind === 'wall' && direct.region !== undefined) rooms.push({ room: direct.region, heading: direct });
      else others = direct;
      continue;
    }
    const heading = headingOf(named?.[2] ?? '');
    const room = named?.[1] ?? '';
    if (!heading) return unread(notADirection({ option: reading.option, got: text }));
    if (OTHERS.test(room)) others = heading;
    else rooms.push({ room, heading });
  }
  if (rooms.length === 0) return unread(notADirection({ option: reading.option, got: text }));
  return read({ kind: 'each', rooms, others });
}

const OTHERS = /^(?:(?:all )?(?:the )?(?:others?|rest)|else|everything else)$/i;

function headingOf(text: string): Heading | undefined {
  const plain = text
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/^(?:runs? )?(?:along )?(?:the )?/i, '');
  const side = /^(long|short)(?:er|est)?(?:[ -](?:side|wall|way|ways))?$/i.exec(plain)?.[1]?.toLowerCase();
  if (side === 'long' || side === 'short') return { kind: 'side', side };
  if (/^(?:(?:on|at) (?:the |a )?)?diagon[a-z]*$/i.test(plain)) return { kind: 'turned', degrees: 45 };
  const degrees = /^(?:(?:at|turned|diagonal(?:ly)?),? ?(?:at |by )?)?(\d{1,3}) ?(?:°|º|˚|\*|deg(?:rees?)?)$/i.exec(
    plain,
  )?.[1];
  if (degrees && Number(degrees) < 180) return turnedBy(Number(degrees));
  // A bare two-digit number is an angle; a wall has to be called one.
  if (/^(?:[1-9]\d|1[0-7]\d)$/.test(plain)) return turnedBy(Number(plain));
  const wall = /^wall (\d{1,3})(?: (?:of|in) (?:the )?([^;,:]+))?$/i.exec(plain);
  if (wall) return { kind: 'wall', wall: Number(wall[1]), ...(wall[2] ? { region: wall[2] } : {}) };
  const named = /^([^;:]+?)(?<![ ,])[ ,]+wall (\d{1,3})$/i.exec(plain);
  const region = named?.[1]?.replace(/ (?:runs? )?along(?: the)?$/i, '');
  if (named && region && !/(?:^| )(?:long|short)(?:,| |$)/i.test(region))
    return { kind: 'wall', wall: Number(named[2]), region };
  return undefined;
}

/** Rows turned from the long side: 0° is long, a quarter turn is short. */
function turnedBy(degrees: number): Heading {
  if (degrees % 90 === 0) return { kind: 'side', side: degrees === 0 ? 'long' : 'short' };
  return { kind: 'turned', degrees };
}
