/** Weights of loads and floors, how things are lifted, and the noises of a day. */

import { KILOGRAMS_PER_POUND } from '../prep/old-floor.ts';
import type { LiftDuration, Noise } from '../prep/safe-work.ts';
import {
  dayTooLong,
  notADay,
  notALaidWeight,
  notALiftWay,
  notAPace,
  notAStretch,
  notATwist,
  notAWeight,
  weightReadIn,
} from '../text/prep-problems-text.ts';
import { sayWeight } from './format.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';

const FIGURE = '(\\d{1,6}(?:[.,]\\d{1,3})?)';
const WEIGHT = new RegExp(`^${FIGURE} ?([a-z#]*\\.?)$`);
const LAID = new RegExp(`^${FIGURE} ?([a-z]+)\\.? ?(?:/|per|an?) ?(.+)$`);
const POUNDS = /^(?:lbs?|pounds?|#)\.?$/;
const KILOGRAMS = /^(?:kgs?|kilos?|kilograms?|kilogrammes?)\.?$/;
const SQUARE_METRES: readonly (readonly [RegExp, number])[] = [
  [/^(?:sq\.? ?yds?|sq\.? ?yards?|square yards?|yd2|yd²)\.?$/, 0.83612736],
  [/^(?:sq\.? ?ft|sq\.? ?feet|square (?:foot|feet)|sf|ft2|ft²)\.?$/, 0.09290304],
  [/^(?:sq\.? ?m|square met(?:re|er)s?|m2|m²)\.?$/, 1],
];

export function weightFigure(typed: string): number {
  return Number(typed.replace(',', '.'));
}

/** Kilograms from `least` to `most`; a bare number is pounds or kilograms by the user's units, with a note. */
export function readWeight(text: string, reading: Reading, least: number, most: number): Read<number> {
  const match = WEIGHT.exec(plain(text));
  const unit = match?.[2] ?? '';
  const { units } = reading.preferences;
  const bare = units === 'metric' ? 'kg' : 'lb';
  const inPounds = POUNDS.test(unit) || (unit === '' && bare === 'lb');
  const known = unit === '' || inPounds || KILOGRAMS.test(unit);
  const value = match?.[1] && known ? weightFigure(match[1]) * (inPounds ? KILOGRAMS_PER_POUND : 1) : Number.NaN;
  if (!(value >= least - 1e-9 && value <= most + 1e-9)) {
    const say = (kilograms: number) => sayWeight(kilograms, reading.preferences);
    return unread(notAWeight({ option: reading.option, got: text }, say(least), say(most)));
  }
  if (unit === '' && match?.[1]) reading.note(weightReadIn(match[1], bare === 'kg' ? 'kilograms' : 'pounds'));
  return read(value);
}

/** Kilograms per square meter, 0.1 to 200; undefined for `usual`. */
export function readLaidWeight(text: string, reading: Reading): Read<number | undefined> {
  const typed = plain(text);
  if (/^(?:usual|standard|typical|unknown)$/.test(typed)) return read(undefined);
  const match = LAID.exec(typed);
  const [unit, per] = [match?.[2] ?? '', match?.[3] ?? ''];
  const area = SQUARE_METRES.find(([word]) => word.test(per))?.[1];
  const kilograms = POUNDS.test(unit)
    ? KILOGRAMS_PER_POUND
    : KILOGRAMS.test(unit)
      ? 1
      : unit === 'g'
        ? 0.001
        : Number.NaN;
  const value = match?.[1] && area !== undefined ? (weightFigure(match[1]) * kilograms) / area : Number.NaN;
  if (!(value >= 0.1 && value <= 200)) return unread(notALaidWeight({ option: reading.option, got: text }));
  return read(value);
}

function plain(text: string): string {
  return text.normalize('NFC').trim().toLowerCase().replace(/\s+/g, ' ');
}

// How often and how long something is lifted, and how far the body twists.

const PACE_FIGURE = '(\\d{1,3}(?:[.,]\\d{1,2})?)';
const EACH = new RegExp(
  `^${PACE_FIGURE}(?: ?(?:lifts?|times|x|cartons?))? ?(?:(?:a|per|each|every|/) ?min(?:utes?)?)?$`,
);
const EVERY = new RegExp(`^every ${PACE_FIGURE}? ?(min(?:utes?)?|s|sec(?:onds?)?)$`);
const HOURS = new RegExp(
  `^(?:(?:${PACE_FIGURE}|(\\d{1,2} )?(1/2|1/4|3/4)) ?(?:h|hrs?|hours?))? ?(?:and )?(?:(\\d{1,3}) ?(?:m|mins?|minutes?))?$`,
);

/** Lifts per minute: `1 a minute`, `3/min`, `every 5 minutes`, `every 20 seconds`, or a bare number. */
export function readLiftPace(text: string, reading: Reading): Read<number> {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/^once /, '');
  const each = EACH.exec(plain);
  const every = EVERY.exec(plain);
  const seconds = weightFigure(every?.[1] ?? '1') * (every?.[2]?.startsWith('s') ? 1 : 60);
  const pace = each?.[1] ? weightFigure(each[1]) : every ? 60 / seconds : Number.NaN;
  if (!(pace > 0 && pace <= 30)) return unread(notAPace({ option: reading.option, got: text }));
  return read(pace);
}

/** Hours of continuous lifting, as the table's class: up to 1, up to 2, up to 8. */
export function readStretch(text: string, reading: Reading): Read<LiftDuration> {
  const hours = readHours(text);
  if (hours === undefined || hours <= 0 || hours > 8) return unread(notAStretch({ option: reading.option, got: text }));
  return read(hours <= 1 ? 1 : hours <= 2 ? 2 : 8);
}

/** Hours in `2 h`, `45 min`, `1 h 30 min`, `1.5 hours`, `1 1/2 h`; undefined for anything else. */
export function readHours(text: string): number | undefined {
  const plain = text.trim().toLowerCase().replace(/½/g, ' 1/2').replace(/\s+/g, ' ').trim();
  const match = HOURS.exec(plain);
  if (!match || plain === '') return undefined;
  const [, figure, whole, fraction, minutes] = match;
  const [top, bottom] = (fraction ?? '0/1').split('/').map(Number);
  const hours = figure === undefined ? Number(whole ?? 0) + (top ?? 0) / (bottom ?? 1) : weightFigure(figure);
  return hours + Number(minutes ?? 0) / 60;
}

/** Degrees of twist from straight ahead, 0 to 180. */
export function readTwist(text: string, reading: Reading): Read<number> {
  const match = /^(\d{1,3})(?: ?(?:°|deg(?:rees)?))?$/.exec(
    text
      .trim()
      .toLowerCase()
      .replace(/^none$/, '0'),
  );
  const twist = match ? Number(match[1]) : Number.NaN;
  if (!(twist <= 180)) return unread(notATwist({ option: reading.option, got: text }));
  return read(twist);
}

// How something is lifted: cartons with two hands, standing, or a way the lifting equation doesn't cover.

/** Why the equation doesn't apply; keys for the texts of the refusal. */
const WRONG_WAYS = [
  'one hand',
  'kneeling',
  'sitting',
  'cramped',
  'carrying',
  'pushing',
  'rolls',
  'unstable',
  'two people',
  'footing',
  'climate',
  'sudden',
] as const;

type WrongWay = (typeof WRONG_WAYS)[number];

const WAYS: readonly (readonly [WrongWay, RegExp])[] = [
  ['one hand', /\b(?:one|1|single|left|right)[ -]?(?:hand|arm)(?:ed)?\b|\bby the handle\b/],
  ['kneeling', /\bkne(?:el\w*|es?|lt)\b|\bcrawl\w*|\bsquat\w*|\bcrouch\w*/],
  ['sitting', /\bsit\w*|\bseat\w*|\bsat\b|\bwheel ?chair\b|\bchair\b/],
  [
    'cramped',
    /\bcramped\b|\btight\b|\bcrawl ?space\b|\bclosets?\b|\blow ceiling\b|\brestricted\b|\battic\b|\bnarrow\b/,
  ],
  ['carrying', /\bcarr(?:y|ies|ied|ying)\b|\bstairs?\b|\bstairway\b|\bladders?\b|\bsteps\b|\bupstairs\b|\bwalk\w*/],
  ['pushing', /\bpush\w*|\bpull\w*|\bdrag\w*|\bslid\w*|\bbarrow\b|\bwheel ?barrow\b|\bshovel\w*|\bdoll(?:y|ies)\b/],
  ['rolls', /\brolls?\b|\brolled\b|\bcarpets?\b/],
  [
    'unstable',
    /\bunstable\b|\bunsteady\b|\bbuckets?\b|\bpails?\b|\bliquids?\b|\bwater\b|\bloose\b|\bsacks?\b|\bbags?\b|\bshift\w*|\bslosh\w*|\bhalf[ -]?(?:full|empty)\b|\bpeople\b|\bperson\b|\bdogs?\b|\bpets?\b/,
  ],
  ['two people', /\b(?:two|2|three|3) (?:people|persons|men|of us)\b|\bteam\b|\btogether\b|\bhelper\b|\bpartner\b/],
  ['footing', /\bslip\w*|\bwet\b|\bic[ey]\b|\bmud\w*|\boily\b|\bsocks\b/],
  ['climate', /\bhot\b|\bheat\w*|\bcold\b|\bfreez\w*|\bwinter\b|\bsummer\b|\bhumid\b/],
  ['sudden', /\bfast\b|\bquick\w*|\bthrow\w*|\btoss\w*|\bjerk\w*|\bcatch\w*/],
];

const ALLOWED = new Set(
  'a an the of one by at with in on my some from to and carton cartons box boxes pack packs package packages plank planks flooring tile tiles both two 2 hand hands handed standing stand upright floor stack table truck level dry steady full closed'.split(
    ' ',
  ),
);

/**
 * `cartons, two hands, standing` and the like give undefined; a way the equation doesn't cover gives its key. Unknown
 * words are questioned.
 */
export function readLiftWay(text: string, reading: Reading): Read<WrongWay | undefined> {
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  if (/\b(?:two|2|three|3) (?:people|persons|men|of us)\b/.test(plain)) return read<WrongWay>('two people');
  const wrong = WAYS.find(([, words]) => words.test(plain));
  if (wrong) return read(wrong[0]);
  // A hand that isn't one of two may be the only one.
  const lone = /(?<!(?:two|both|2) )\bhand\b/.test(plain);
  if (plain !== '' && !lone && plain.split(' ').every((word) => ALLOWED.has(word))) return read(undefined);
  return unread(notALiftWay({ option: reading.option, got: text }));
}

/** A load: kilograms, units, and a way of lifting mentioned with it that the equation doesn't cover. */
interface Load {
  readonly kilograms: number;
  /** As typed, or else the user's own units. */
  readonly units: Units;
  readonly wrong: WrongWay | undefined;
}

/**
 * `45 lb`, `20 kg carton`, `a 45 lb roll`: a weight from `least` to `most` kilograms, with the other words parsed like
 * readLiftWay.
 */
export function readLoad(text: string, reading: Reading, least: number, most: number): Read<Load> {
  const weight = /\d[\d.,]*\s*(?:[a-z]{1,9}\b\.?|#)?/i.exec(text)?.[0] ?? text;
  const unit = /[a-z#]/i.test(weight) && !/(?:lbs?|pounds?|#|kgs?|kilos?|kilogram\w{0,9})\.?\s*$/i.test(weight);
  const figure = unit ? (/^[\d.,]+/.exec(weight)?.[0] ?? weight) : weight;
  const kilograms = readWeight(figure.trim(), reading, least, most);
  if (!kilograms.ok) return kilograms;
  const units = /kg|kilo/i.test(figure)
    ? 'metric'
    : /lb|pound|#/i.test(figure)
      ? 'imperial'
      : reading.preferences.units;
  const rest = text.replace(figure, ' ').trim();
  if (rest === '') return read({ kilograms: kilograms.value, units, wrong: undefined });
  const way = readLiftWay(rest, reading);
  if (!way.ok) return way;
  return read({ kilograms: kilograms.value, units, wrong: way.value });
}

/** A noise and its source. */
export interface NamedNoise extends Noise {
  readonly name: string;
}

const LONGEST = 500;
const MOST = 20;
const LOUDEST = 160;
const PART = /^(?<name>[^\d½]*)(?<hours>[\d½].*) (?:at|@) (?<level>\d{1,3}(?:[.,]\d)?) ?(?:db ?\(?a?\)?|decibels?)?$/i;

/** `none`, or noises separated by commas or semicolons: `saw 2 h at 100, vacuum 45 min at 85`. At most 24 h in all. */
export function readDay(text: string, reading: Reading): Read<readonly NamedNoise[]> {
  const plain = text.trim().replace(/\s+/g, ' ');
  const bad = () => unread(notADay({ option: reading.option, got: text }));
  if (/^(?:none|no)$/i.test(plain)) return read([]);
  if (plain.length > LONGEST) return bad();
  const parts = plain.split(/ ?; ?| ?,(?!\d) ?| and (?=\D)/);
  const noises = parts.flatMap((part): NamedNoise[] => {
    const groups = PART.exec(part)?.groups;
    const hours = readHours(groups?.hours ?? '');
    const level = weightFigure(groups?.level ?? '');
    const sound = hours !== undefined && hours > 0 && level > 0 && level <= LOUDEST;
    return sound && hours !== undefined
      ? [{ name: groups?.name?.replace(/(?<![ :,])[ :,]+$/, '') || 'noise', hours, level }]
      : [];
  });
  if (noises.length < parts.length || parts.length > MOST) return bad();
  const total = noises.reduce((sum, { hours }) => sum + hours, 0);
  return total > 24 ? unread(dayTooLong({ option: reading.option, got: text })) : read(noises);
}
