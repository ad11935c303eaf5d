/** A sentence made plain before it is looked at: one sign for each mark, no pictures, figures for number words, words spelt right. */

import { plainSigns, SIDE } from '../../input/rooms/room-text.ts';
import { withFigures } from '../../input/trade-words.ts';
import { spelt } from './spelling.ts';

/** The sentence, and how words in it were taken. */
export interface Clean {
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
  [/(\d) (?:and a half|1\/2|½)/gi, '$1 1/2'],
  [/(\d) ?bucks(?![a-z])/gi, '$1 dollars'],
  [/(\d) ?quid(?![a-z])/gi, '$1 gbp'],
];

/** The words of one language put for those of another, where the readers know only one. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  ['pro|je', 'per'],
  ['im(?= (?:karton|paket|packung)(?!\\p{L}))', 'in a'],
  ['pakete?n?|packung(?:en)?', 'packs'],
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
const LABELLED = new RegExp(
  `(?<![a-z])(?:width|wide)(?: ?(?:is|of|:|=))? ?(${SIDE}),? ?(?:and )?(?:the )?(?:length|long)(?: ?(?:is|of|:|=))? ?(${SIDE})`,
  'gi',
);
const ABOUT =
  /(?<![a-z])(?:about|approx(?:imately|\.)?|roughly|around|circa|ca\.|ungefähr|etwa) (?=\d)|(?<=\d)ish(?![a-z])/gi;

/** The sentence made plain. Never throws. */
export function cleaned(typed: string, aboutNote: string, speltNote: (got: string, right: string) => string): Clean {
  const notes: string[] = [];
  let text = typed
    .replace(/[\uff01-\uff5e]/g, (wide) => wide.normalize('NFKC'))
    .replace(/[\t\u00a0\u2000-\u200a\u202f\u3000]/g, ' ');
  text = text.replace(PICTURES, ' ');
  for (const [signs, instead] of SIGNS) text = text.replace(signs, instead);
  text = text.replace(HIDDEN, (sign) => (sign === '\n' ? sign : ''));
  for (const [words, instead] of WORDS) text = text.replace(words, instead);
  text = withFigures(text);
  text = spelt(text, (got, right) => notes.push(speltNote(got, right)));
  if (ABOUT.test(text)) notes.push(aboutNote);
  text = text
    .replace(ABOUT, '')
    .replace(ACROSS, '$1 x $2')
    .replace(NOUN_BETWEEN, '$1 x $3 $2')
    .replace(LABELLED, '$1 x $2')
    .replace(/ +/g, ' ')
    .replace(/ ?\n ?/g, '\n')
    .trim();
  return { text, plain: plainSigns(text), notes };
}
