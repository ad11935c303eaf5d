/** A sentence made plain before it is looked at: one sign for each mark, no pictures, figures for number words, words spelt right. */

import { distance } from 'fastest-levenshtein';
import { plainSigns, SIDE } from '../input/rooms/room-text.ts';
import { withFigures } from '../input/trade-words.ts';

/** The sentence, and how words in it were taken. */
export interface NormalText {
  /** With the capitals of names. */
  readonly text: string;
  /** In lower case; every place is the same as in `text`. */
  readonly plain: string;
  readonly notes: readonly string[];
}

const PICTURES =
  /(?:(?![\d#*])(?:\p{Extended_Pictographic}|\p{Emoji_Modifier}|[\u{1f1e6}-\u{1f1ff}])|\u200d|\ufe0e|\ufe0f|\u20e3)+/gu;
const HIDDEN = /[\p{Cc}\p{Cs}\p{Cf}\u2588]/gu;

const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/\r\n?|[\u0085\u2028\u2029]/g, '\n'],
  [/<[@#!:a][^>\n]{0,80}>|(?<![\w:]):[a-z_+-]{2,30}:(?![\w:])/gi, ' '],
  [/[‘’‛´`′ʹʼ]/g, "'"],
  [/[“”„‟″ʺ]|''/g, '"'],
  [/[‐‑‒–—−]/g, '-'],
  [/[×✕✖⨯]/g, 'x'],
  [/\*{2,}|_{2,}/g, ' '],
  [/@/g, ' at '],
  [/~ ?(?=\d)/g, 'about '],
  [/(?<![!?])[!?]*\?[!?]*/g, '?'],
  [/!+|\.{2,}|…/g, '. '],
  [/,{2,}/g, ','],
  [/(?<!\d),(?=\d)/g, ', '],
  [/(?<![\w/])w\/o(?!\w)/gi, 'without'],
  [/(?<![\w/])w\/(?= ?\w)/gi, 'with '],
  [/(?<![\w.,/])4(?= (?:a|an|my|the|our) (?!box|carton|pack|case))/gi, 'for'],
  [/(?<=(?:boxes|planks|packs|cartons|many|need) )4 (?=\d)/gi, 'for '],
  [/(\d) ?x ?(\d+)s(?![a-z])/gi, '$1x$2 planks'],
  // 6x48,10 per carton: no length is counted by the carton, so that comma is no decimal.
  [/(x ?\d+),(?=\d+ ?-?(?:per|a|an|in a|to a|planks|boards|pieces|pcs|ct|count|each|\/)(?![a-z]))/gi, '$1, '],
  // “A 3x6 in a 14x18 kitchen” is no inches.
  [/(\d ?(?:x|by) ?\d[\d./]*) in (?=(?:an?|my|the|our|this)(?! ?(?:box|carton|pack|case))(?![a-z]))/gi, '$1 inside '],
  [/(?<![a-z\d])(?:an?|one|1) (inch|foot) and (?:a |one )?(?:half|1\/2)(?![a-z])/gi, '1 1/2 $1'],
  [/(?<![a-z\d])(?:an?|one|1) (inch|foot) and (?:a |one )?(?:quarter|1\/4)(?![a-z])/gi, '1 1/4 $1'],
  [/(?<![a-z\d])(?:three|3)[ -]quarters?(?: of an?)?[ -]inch(?:es)?(?![a-z])/gi, '3/4 inch'],
  [/(?<!\d[ -]?)(?:one )?half[ -]inch(?:es)?(?![a-z])/gi, '1/2 inch'],
  [/(?<!\d[ -]?)(?:one )?quarter[ -]inch(?:es)?(?![a-z])/gi, '1/4 inch'],
  [/(\d) (?:and a half|1\/2|½)/gi, '$1 1/2'],
  [/(\d) ?bucks(?![a-z])/gi, '$1 dollars'],
  [/(\d) ?quid(?![a-z])/gi, '$1 gbp'],
  [/(?<![\d.,$])(\d[\d.,]{0,8}) ?dollars?(?![a-z])/gi, '$$$1'],
  [/(?<![\d.,$])(\d{2}) ?(?:cents|¢)(?![a-z])/gi, '$$0.$1'],
];

/** The words of one language put for those of another, where the readers know only one. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  ['pro|je', 'per'],
  ['im(?= (?:karton|paket|packung)(?!\\p{L}))', 'in a'],
  ['pakete?n?|packung(?:en)?', 'packs'],
  ['bxs?', 'box'],
  ['kartons', 'cartons'],
  ['karton', 'carton'],
  ['dielen|bretter|paneele|brett|paneel', 'planks'],
  ['laminat', 'laminate'],
  ['stück|stk', 'pieces'],
  ['wie ?viele?', 'how many'],
  ['was ist', 'what is'],
  ['verschnitt', 'waste'],
  ['für', 'for'],
  ['und', 'and'],
  ['mit', 'with'],
  ['zoll', 'inch'],
  ['quadratmeter', 'm²'],
  ['breit', 'wide'],
  ['lang', 'long'],
  ['bitte', 'please'],
  ['brauche(?: ich)?', 'need'],
  ['lr(?= ?\\d|,|$)', 'living room'],
  ['mbr', 'master bedroom'],
  ['bdrm|br(?= ?\\d)|bed(?= ?\\d{1,2}(?: is)? \\d)', 'bedroom'],
  ['packet(?= )', 'pack'],
  ["in(?= \\d{1,2} ?(?:ft|foot|feet|')? ?(?:sticks?|lengths?|footers?)(?!\\p{L}))", 'with'],
  [
    'bundles?(?= (?:(?:is|are|of|has|have|holds?|covers?) ){1,2}(?:about )?\\d{1,2}(?:\\.\\d{1,2})? ?(?:sq|sf|m2|m²))',
    'boxes',
  ],
].map(([source = '', instead = '']) => [new RegExp(`(?<![\\p{L}\\d])(?:${source})(?![\\p{L}])`, 'giu'), instead]);

const HOW = '(?:wide|width|long|length|deep|depth)';
/** Both sides told with their ways: 12 feet wide and 14 feet long. */
const ACROSS = new RegExp(
  `(?<![\\w.,/])(${SIDE})[ -]?${HOW}(?![a-z])(?:,? ?(?:and|by|x|&|,)? ?)(${SIDE})[ -]?${HOW}(?![a-z])`,
  'gi',
);
/** With the noun in between: 6 inches wide planks 4 feet long. */
const NOUN_BETWEEN = new RegExp(
  `(?<![\\w.,/])(${SIDE})[ -]?(?:wide|width) (planks?|boards?),? (${SIDE})[ -]?(?:long|length)(?![a-z])`,
  'gi',
);
/** As people talk: the 7 inch ones, 48 long. */
const ONES = new RegExp(
  `(?<![\\w.,/])(${SIDE})[ -]?(?:wide )?(?:ones|planks?|boards?|kind)?,? ?(?:(?:and|by|that are|that's|they're|they are|about) ){0,2}(\\d{2,3}(?: ?(?:"|in(?:ch(?:es)?)?))?)[ -]?(?:long|in length)(?![a-z])`,
  'gi',
);
/** Money once its words are figures. */
const DOLLARS_SAID = /(?<![\d.,$])(\d[\d.,]{0,8}) ?(?:dollars?|bucks)(?![a-z])/gi;
const CENTS_SAID = /(?<![\d.,$])(\d{2}) ?(?:cents|¢)(?![a-z])/gi;
/** A room that is wider at one end: the wider one has to be covered. */
const ASKEW =
  /(?<![\d.,])(\d{1,3}(?:\.\d{1,2})?)(?: ?(?:'|ft|feet|foot))?(?: wide)? (?:on|at) (?:one|the one|1) (?:side|end|wall),? (?:and |but |& ){0,2}(\d{1,3}(?:\.\d{1,2})?)(?: ?(?:'|ft|feet|foot))?(?: wide)? (?:on|at) the (?:other|opposite)(?: side| end| one| wall)?,? (?:and |by |it'?s |x ){0,3}(\d{1,3}(?:\.\d{1,2})?)(?: ?(?:'|ft|feet|foot))?(?: (?:long|deep|the other way|in length))?(?![\d.])/gi;

function widerSide(_: string, one: string, other: string, long: string): string {
  return `${Number(one) > Number(other) ? one : other} x ${long}`;
}

const HALF_SAID = /(\d) and a half(?![a-z])/gi;
/** “22 point oh 9”, once its words are figures. */
const POINT_SAID = /(\d) point ((?:(?:oh|o|zero|\d{1,2})(?![a-z\d]) ?){1,3})/gi;

function spokenDecimal(_: string, whole: string, digits: string): string {
  const said = digits.replace(/oh|o|zero/gi, '0').replace(/ /g, '');
  return `${whole}.${said}${digits.endsWith(' ') ? ' ' : ''}`;
}

/** “Eleven by thirteen six”: feet, and inches behind the last. */
const INCHES_SAID = /(?<![\d.,/'"x] ?)(\d{1,2}) (?:by|x) (\d{1,2}) ([1-9]|1[01])(?= ?(?:[.,;?!](?!\d)|$))/gi;
/** Sides with no unit beside square meters or words of countries with meters. */
const BARE_SIDES =
  /(?<![\d.,/$€£'"x-] ?)(\d{1,2}(?:[.,]\d{1,2})?) ?(?:x|by) ?(\d{1,2}(?:[.,]\d{1,2})?)(?![\d.,/]*\d| ?(?:x|by|m|cm|mm|ft|feet|foot|in|inch|sq|"|'|%)(?![a-z]{3}))/gi;
const SAYS_METERS =
  /\d ?(?:m2|m²|sqm|sq\.? ?m|m)(?![a-z])|square met(?:er|re)|\bmetres?\b|skirting|beading|architrave/i;
const SAYS_FEET = /\d ?(?:'|"|ft|feet|foot|sq ?ft|sf|in|inch|inches)(?![a-z])/i;
/** No room of a home is longer, in meters. */
const LONGEST_ROOM = 15;

function inMeters(pair: string, one: string, other: string): string {
  const sides = [one, other].map((side) => Number(side.replace(',', '.')));
  return sides.every((side) => side > 0 && side <= LONGEST_ROOM) ? `${one} x ${other} m` : pair;
}

const LABELLED = new RegExp(
  `(?<![a-z])(?:width|wide)(?: ?(?:is|of|:|=))? ?(${SIDE}),? ?(?:and )?(?:the )?(?:length|long)(?: ?(?:is|of|:|=))? ?(${SIDE})`,
  'gi',
);
const ABOUT =
  /(?<![a-z])(?:about|approx(?:imately|\.)?|roughly|around|circa|ca\.|ungefähr|etwa) (?=\d)|(?<=\d)ish(?![a-z])/gi;

/** The sentence made plain. Never throws. */
export function normalize(
  typed: string,
  aboutNote: string,
  speltNote: (got: string, right: string) => string,
): NormalText {
  const notes: string[] = [];
  let text = typed
    .replace(/[\uff01-\uff5e]/g, (wide) => wide.normalize('NFKC'))
    .replace(/[\t\u00a0\u2000-\u200a\u202f\u3000]/g, ' ');
  text = text.replace(PICTURES, ' ');
  for (const [signs, instead] of SIGNS) text = text.replace(signs, instead);
  text = text.replace(HIDDEN, (sign) => (sign === '\n' ? sign : ''));
  for (const [words, instead] of WORDS) text = text.replace(words, instead);
  text = withFigures(text).replace(HALF_SAID, '$1 1/2').replace(POINT_SAID, spokenDecimal);
  text = text.replace(DOLLARS_SAID, '$$$1').replace(CENTS_SAID, '$$0.$1').replace(ASKEW, widerSide);
  text = corrected(text, (got, right) => notes.push(speltNote(got, right)));
  if (ABOUT.test(text)) notes.push(aboutNote);
  text = text
    .replace(ABOUT, '')
    .replace(ACROSS, '$1 x $2')
    .replace(NOUN_BETWEEN, '$1 x $3 $2')
    .replace(ONES, '$1 x $2 planks')
    .replace(LABELLED, '$1 x $2')
    .replace(INCHES_SAID, `$1' x $2'$3"`)
    .replace(/ +/g, ' ')
    .replace(/ ?\n ?/g, '\n')
    .trim();
  if (SAYS_METERS.test(text) && !SAYS_FEET.test(text)) text = text.replace(BARE_SIDES, inMeters);
  return { text, plain: plainSigns(text), notes };
}

/** What near misses are taken for. */
const RIGHT = [
  ...['boxes', 'carton', 'cartons', 'packs', 'packet', 'packets', 'plank', 'planks', 'board', 'boards', 'laminate'],
  ...[
    'vinyl',
    'flooring',
    'floor',
    'bedroom',
    'bedrooms',
    'kitchen',
    'living',
    'hallway',
    'closet',
    'closets',
    'dining',
  ],
  ...['bathroom', 'office', 'lounge', 'baseboard', 'baseboards', 'skirting', 'pattern', 'stagger', 'thirds', 'inches'],
  ...['asbestos', 'safety', 'subfloor', 'carpet', 'waste', 'mistakes', 'square', 'metres', 'meters', 'width', 'length'],
  ...['squeaky', 'moisture', 'quarter', 'thick', 'minus', 'convert', 'divided'],
] as const;

/** Words of their own that lie near one of those. */
const OTHERS = new Set(
  (
    'plants plant blank blanks plane planes plans place places prank pranks thanks thank flank flanks clank crank drank frank spank ' +
    'broad beard beards bored hoard aboard boarded boarder words cords backs packed pack jacks racks lacks sacks tacks cracks tracks ' +
    'foxes boxed boxer boxing taxes faxes waist haste paste taste wasted baste cartoon cartoons carbon flour flood floors flooding fluor ' +
    'closed closer closes closet thick think thing chick trick thirst third birds minds minus minor mines inch pinches finches ' +
    'giving loving diving driving dinning mining lining living pattern patterns patter battery batten bedroom matters metres ' +
    'quarters quartz weight lengths widths with witch wealth squares squared squarely squeak squeaks doors poor moor flow carpets ' +
    'carpeted office offices officer lunge lounges kitchens kitten hallways converts converted packing packets pocket pockets ' +
    'racket jacket ticket rocket socket bucket stagger staggered staggers swagger safely boarding bonding floored floppy ' +
    'meters meter metre meeting letters betters inches vinyls divide divided mistake mistaken haste washes washed'
  ).split(' '),
);
const KNOWN: ReadonlySet<string> = new Set(RIGHT);

/** The text with near misses spelt right, each told to `note`. */
export function corrected(text: string, note: (got: string, right: string) => void): string {
  return text.replace(/(?<![\p{L}\d:/<@'])\p{L}{5,14}(?![\p{L}\d'])/gu, (typed) => {
    const low = typed.toLowerCase();
    if (KNOWN.has(low) || OTHERS.has(low)) return typed;
    const right = RIGHT.find((known) => near(low, known));
    if (right === undefined) return typed;
    note(typed, right);
    return right;
  });
}

/** One letter too many, too few or wrong, or two letters changed round; long words may have two wrong. */
function near(typed: string, known: string): boolean {
  if (typed[0] !== known[0] || Math.abs(typed.length - known.length) > 2) return false;
  const apart = distance(typed, known);
  if (apart <= 1) return true;
  if (apart !== 2) return false;
  return known.length >= 8 || swapped(typed, known);
}

function swapped(typed: string, known: string): boolean {
  if (typed.length !== known.length) return false;
  const wrong = [...known].flatMap((letter, i) => (letter === typed[i] ? [] : [i]));
  const [one, other] = wrong;
  if (one === undefined || other === undefined || wrong.length !== 2) return false;
  return known[one] === typed[other] && known[other] === typed[one] && other === one + 1;
}
