/** A part of a floor by its two sides, by one length or by its area alone. */

import { lengthFalse, notAPart, partReadIn } from '../text/prep-problems-text.ts';
import {
  type Area,
  areaOf,
  type Length,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
} from '../units/length.ts';
import { unitIn, unitsOf } from './length.ts';
import { numeralAt, valued } from './length-number.ts';
import { type LengthUnit, UNITS } from './length-units.ts';
import { type Found, NOTHING_FOUND, screened } from './place-found.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-plain.ts';
import { pairPattern, readSide, SIDE } from './rooms/room-side.ts';

/** A part of a floor. `sides` where two were told, the longer first; `line` where one was. */
export interface ToldPart {
  readonly area: Area;
  readonly sides?: readonly [longer: Length, shorter: Length];
  readonly line?: Length;
  /** In which it was typed. */
  readonly units?: Units;
  readonly found: Found;
}

export const NO_PART: ToldPart = { area: 0n, found: NOTHING_FOUND };

const SQUARE =
  /(?<figure>(?<!\d|\d[.,])\d+(?:[.,]\d+)*) ?(?:(?<feet>sq(?:uare|\.)? ?(?:ft|feet|foot|')\.?|(?:ft|feet) ?(?:²|\^?2)|sf(?![a-z]))|(?<metres>sq(?:uare|\.)? ?m(?:et(?:re|er)s?)?(?![a-z])|m ?(?:²|\^?2)|qm))/;
const AREA_PAIR = new RegExp(pairPattern().source);
const LINE = new RegExp(`(?<![\\d./])(?<line>${SIDE})`);
const LONGEST_AREA = 200;
/** 5,000 m². */
const MOST: Area = 5000n * SQUARE_TICKS_PER_SQUARE_METRE;

/**
 * `4 x 6 ft`, `8 ft`, `20 m²`, or `none`. Sides without a unit are in `bare`, and noted. Two sides that name only one unit
 * share it. Words besides are screened for what is unsafe. Never throws.
 */
export function readPart(text: string, reading: Reading, takes: { readonly line: boolean }): Read<ToldPart> {
  const typed = withoutHidden(text.trim(), ' ');
  const got = { option: reading.option, got: typed.slice(0, LONGEST_AREA) };
  const metric = reading.habits.units === 'metric';
  if (/^(?:none|no)$/i.test(typed)) return read(NO_PART);
  if (typed.length > LONGEST_AREA) return unread(notAPart(got, takes.line));
  const plain = plainSigns(typed).replace(/\s+/g, ' ');
  const match = SQUARE.exec(plain) ?? AREA_PAIR.exec(plain) ?? lineIn(plain, takes.line);
  const rest = match ? `${plain.slice(0, match.index)} ${plain.slice(match.index + match[0].length)}` : plain;
  const found = screened(rest, reading, match ? `${match[0]}, unsure` : undefined);
  if (!found.ok) return match || /unsure/.test(rest) ? found : unread(notAPart(got, takes.line));
  if (found.value.hazards.length > 0) return read({ ...NO_PART, found: found.value });
  if (!match) return unread(notAPart(got, takes.line));
  const { figure, a, b, line } = match.groups ?? {};
  if (figure !== undefined) {
    const area = squareOf(figure, match.groups?.metres !== undefined, reading);
    if (area === undefined || area <= 0n || area > MOST) return unread(notAPart(got, takes.line));
    return read({ area, units: match.groups?.metres === undefined ? 'imperial' : 'metric', found: found.value });
  }
  const sides = [a ?? line, b].filter((side) => side !== undefined);
  const stated = sides.map(unitIn);
  const bare: LengthUnit = metric ? 'm' : 'ft';
  const lengths: Length[] = [];
  for (const [i, side] of sides.entries()) {
    const length = readSide(side, stated[1 - i] ?? bare, reading);
    if (!length.ok) return unread(lengthFalse(got, length.expected));
    lengths.push(length.length);
  }
  if (stated.every((unit) => unit === undefined)) reading.note(partReadIn(match[0].trim(), UNITS[bare].word));
  const units = unitsOf(stated.find((unit) => unit !== undefined) ?? bare);
  const [one, other] = lengths;
  if (one === undefined) return unread(notAPart(got, takes.line));
  if (other === undefined) return read({ area: 0n, line: one, units, found: found.value });
  const sorted = one >= other ? ([one, other] as const) : ([other, one] as const);
  return read({ area: areaOf(one, other), sides: sorted, units, found: found.value });
}

function lineIn(plain: string, line: boolean): RegExpExecArray | undefined {
  return (line ? LINE.exec(plain) : null) ?? undefined;
}

function squareOf(figure: string, metres: boolean, reading: Reading): Area | undefined {
  const numeral = numeralAt(figure, 0, false);
  const value = numeral && valued(numeral, undefined, reading.habits.decimal);
  if (!value || !('top' in value)) return undefined;
  return (value.top * (metres ? SQUARE_TICKS_PER_SQUARE_METRE : SQUARE_TICKS_PER_SQUARE_FOOT)) / value.bottom;
}
