/** What an entry works out from the figures in a message: a lead of its own, and the values behind it. */

import { sayLength } from '../input/format.ts';
import { WORKED } from '../text/worked-text.ts';
import { inches, type Length, TICKS_PER_INCH, ticks } from '../units/length.ts';

export interface Worked {
  readonly lead: string;
  readonly values: Readonly<Record<string, number>>;
}

type Worker = (text: string, metric: boolean) => Worked | undefined;

/** The sum of an entry for a message; undefined where the message gives it nothing to work with. */
export function workedFrom(id: string, text: string, metric: boolean): Worked | undefined {
  return WORKERS[id]?.(text.toLowerCase(), metric);
}

function say(length: Length, metric: boolean): string {
  return sayLength(length, { units: metric ? 'metric' : 'imperial', decimal: '.' });
}

const LENGTH =
  /(?<![\d./,$-])(\d{1,3}(?:[ -]\d{1,2}\/\d{1,2}|\/\d{1,2}|\.\d{1,4})?) ?(mm|cm|"|in(?:ch(?:es)?)?|'|ft|feet|foot|m(?![a-z]))?(?![\d%/])/g;

const FEET_AND_INCHES =
  /(?<!\d)(\d{1,2}) ?(?:'|ft|feet) ?(\d{1,2}(?:[ -]\d{1,2}\/\d{1,2})?) ?(?:"|in(?:ch(?:es)?)?(?![a-z]))/g;

/** Inches in one of a unit, by its first letters. */
const UNITS: readonly (readonly [RegExp, number])[] = [
  [/^mm$/, 1 / 25.4],
  [/^cm$/, 1 / 2.54],
  [/^m$/, 1 / 0.0254],
  [/^(?:'|f)/, 12],
];

/** Lengths in ticks, each with its unit as written; bare ones are inches, or millimeters for somebody metric. */
function lengthsIn(text: string, metric: boolean): readonly { readonly length: Length; readonly unit: string }[] {
  const whole = text.replace(
    FEET_AND_INCHES,
    (_, foot: string, inch: string) => `${Number(foot) * 12 + (numberIn(inch) ?? 0)}"`,
  );
  return [...whole.matchAll(LENGTH)].flatMap(({ 1: figure = '', 2: unit = '' }) => {
    const value = numberIn(figure);
    if (value === undefined) return [];
    const factor = UNITS.find(([name]) => name.test(unit))?.[1] ?? (unit === '' && metric ? 1 / 25.4 : 1);
    return [{ length: ticks(Math.round(value * factor * TICKS_PER_INCH)), unit }];
  });
}

function numberIn(figure: string): number | undefined {
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(figure);
  if (!mixed) return Number(figure);
  const [, whole = '0', top = '0', bottom = '1'] = mixed;
  return Number(bottom) === 0 ? undefined : Number(whole) + Number(top) / Number(bottom);
}

function plus(one: Length, other: Length): Length {
  return ticks(one + other);
}

const UNDERCUT = inches(1 / 16);
const DOOR_CLEAR = inches(1 / 4);
const LEAST_STRIP = inches(2);
const LEAST_STAGGER = inches(6);
const THIRD = 3;

/** Plank and pad, each under an inch, give the height of jamb and door. */
const jambs: Worker = (text, metric) => {
  const thin = lengthsIn(text, metric).filter(({ length }) => length > 0 && length < inches(1));
  const [plank, pad] = thin;
  if (!plank) return undefined;
  const height = pad ? plus(plank.length, pad.length) : plank.length;
  return {
    lead: WORKED.jambs(say(height, metric), say(plus(height, UNDERCUT), metric), say(plus(height, DOOR_CLEAR), metric)),
    values: { height, jamb: height + UNDERCUT, door: height + DOOR_CLEAR },
  };
};

const DEGREES = /(?<![\d.,])(\d{2,3}(?:\.\d{1,2})?) ?(?:°|deg(?:rees?)?)/;

const angle: Worker = (text) => {
  const corner = Number(DEGREES.exec(text)?.[1]);
  if (!(corner >= 30 && corner <= 180)) return undefined;
  const setting = (180 - corner) / 2;
  return { lead: WORKED.angle(corner, setting), values: { corner, setting } };
};

const WIDTH = /(\d{1,2}(?:[ -]\d\/\d{1,2}|\/\d{1,2}|\.\d{1,3})?) ?(?:"|in(?:ch(?:es)?)?)?[ -]?(?:wide|planks?|boards?)/;

/** A third of a plank's length, or the usual least. */
const stagger: Worker = (text, metric) => {
  const long = lengthsIn(text, metric).filter(({ length }) => length >= inches(24) && length <= inches(96));
  const [plank] = long;
  if (!plank) return undefined;
  const third = ticks(Math.round(plank.length / THIRD));
  return {
    lead: WORKED.stagger(say(LEAST_STAGGER, metric), say(third, metric)),
    values: { least: LEAST_STAGGER, third },
  };
};

/** The last row of a room across its rows. */
const lastRow: Worker = (text, metric) => {
  const all = lengthsIn(text, metric);
  const width = WIDTH.exec(text)?.[1];
  const plank = width === undefined ? all.find(({ length }) => length >= inches(3) && length <= inches(12)) : undefined;
  const wide = width === undefined ? plank?.length : inches(numberIn(width) ?? 0);
  const room = all.map(({ length }) => length).find((length) => length > inches(30));
  if (wide === undefined || room === undefined || wide < inches(2)) return undefined;
  const rest = room % wide;
  const last = ticks(rest === 0 ? wide : rest);
  if (last >= LEAST_STRIP) {
    return { lead: WORKED.lastRow(say(last, metric), Math.ceil(room / wide)), values: { last, first: wide } };
  }
  const both = ticks(Math.round((last + wide) / 2));
  return { lead: WORKED.bothRows(say(last, metric), say(both, metric)), values: { last: both, first: both } };
};

/** Two ends of a room that differ. */
const taper: Worker = (text, metric) => {
  const long = lengthsIn(text, metric).filter(({ length }) => length > inches(30));
  const [one, other] = long;
  if (!one || !other || one.length === other.length) return undefined;
  const off = ticks(Math.abs(one.length - other.length));
  if (off > inches(12)) return undefined;
  return { lead: WORKED.taper(say(off, metric), say(ticks(Math.round(off / 2)), metric)), values: { taper: off } };
};

const STEPS = /(?<![\d.,])(\d{1,2}) (?:steps?|stairs|treads?|risers?)(?![a-z])/;

const nosings: Worker = (text, metric) => {
  const count = Number(STEPS.exec(text)?.[1]);
  if (!(count >= 1 && count <= 60)) return undefined;
  const [wide, stick] = lengthsIn(text, metric)
    .filter(({ length, unit }) => unit !== '' && length >= inches(24) && length <= inches(120))
    .map(({ length }) => length)
    .sort((a, b) => a - b);
  const each = wide !== undefined && stick !== undefined ? Math.floor(stick / wide) : 0;
  const sticks = each > 0 ? Math.ceil(count / each) : undefined;
  return {
    lead: WORKED.nosings(count, sticks),
    values: { nosings: count, ...(sticks === undefined ? {} : { sticks }) },
  };
};

const YEARS = /(?<![\d.,])(\d{1,2}) (?:years?|yrs?)/;
const CARPET_YEARS = { least: 5, most: 10 } as const;

const landlord: Worker = (text) => {
  const years = Number(YEARS.exec(text)?.[1]);
  if (!(years >= 1)) return undefined;
  return { lead: WORKED.landlord(years, CARPET_YEARS.least, CARPET_YEARS.most), values: { years } };
};

const GAP = { least: inches(1 / 4), usual: inches(3 / 8) } as const;

const gap: Worker = (text, metric) => {
  const thin = lengthsIn(text, metric).filter(({ length }) => length > 0 && length <= inches(1));
  const [left] = thin;
  if (!left || !/enough|ok|fine|only|too (?:small|little|much)|leave|left/.test(text)) return undefined;
  return {
    lead:
      left.length >= GAP.least
        ? WORKED.gapEnough(say(left.length, metric))
        : WORKED.gapSmall(say(left.length, metric), say(GAP.least, metric)),
    values: { gap: left.length },
  };
};

const WORKERS: Readonly<Record<string, Worker>> = {
  jambs,
  'door-clearance': jambs,
  'trim-angle': angle,
  'outside-corner': angle,
  stagger,
  'last-row': lastRow,
  'first-row': lastRow,
  'out-of-square': taper,
  'stair-nosing-count': nosings,
  landlord,
  gap,
  'gap-cover': gap,
};
