/** How something is lifted, in people's words: cartons by two hands, standing, or a way for which the lifting equation does not hold. */

import { notALiftWay } from '../text/prep-problems-text.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { readWeight } from './weight.ts';

/** Why the equation does not hold, as a name for the words of the refusal. */
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

export type WrongWay = (typeof WRONG_WAYS)[number];

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

/** `cartons, two hands, standing` and its like give undefined; a way the equation does not hold for gives its name. Words that are not known are asked back. */
export function readLiftWay(text: string, reading: Reading): Read<WrongWay | undefined> {
  const plain = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  if (/\b(?:two|2|three|3) (?:people|persons|men|of us)\b/.test(plain)) return read<WrongWay>('two people');
  const wrong = WAYS.find(([, words]) => words.test(plain));
  if (wrong) return read(wrong[0]);
  // A hand that is not one of two may be the only one.
  const lone = /(?<!(?:two|both|2) )\bhand\b/.test(plain);
  if (plain !== '' && !lone && plain.split(' ').every((word) => ALLOWED.has(word))) return read(undefined);
  return unread(notALiftWay({ option: reading.option, got: text }));
}

/** A load: its kilograms and units, and a way of lifting it that is told with it and for which the equation does not hold. */
export interface Load {
  readonly kilograms: number;
  /** In which it was typed, the asker's habit where no unit was. */
  readonly units: Units;
  readonly wrong: WrongWay | undefined;
}

/** `45 lb`, `20 kg carton`, `a 45 lb roll`: a weight from `least` to `most` kilograms, and what it is read as readLiftWay reads it. */
export function readLoad(text: string, reading: Reading, least: number, most: number): Read<Load> {
  const weight = /\d[\d.,]*\s*(?:[a-z]{1,9}\b\.?|#)?/i.exec(text)?.[0] ?? text;
  const unit = /[a-z#]/i.test(weight) && !/(?:lbs?|pounds?|#|kgs?|kilos?|kilogram\w{0,9})\.?\s*$/i.test(weight);
  const figure = unit ? (/^[\d.,]+/.exec(weight)?.[0] ?? weight) : weight;
  const kilograms = readWeight(figure.trim(), reading, least, most);
  if (!kilograms.ok) return kilograms;
  const units = /kg|kilo/i.test(figure) ? 'metric' : /lb|pound|#/i.test(figure) ? 'imperial' : reading.habits.units;
  const rest = text.replace(figure, ' ').trim();
  if (rest === '') return read({ kilograms: kilograms.value, units, wrong: undefined });
  const way = readLiftWay(rest, reading);
  if (!way.ok) return way;
  return read({ kilograms: kilograms.value, units, wrong: way.value });
}
