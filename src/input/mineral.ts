/** What moisture was measured on, in people's words: wood, or concrete and what is laid on it. */

import { notABase } from '../text/prep-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-plain.ts';

/** `concrete` is concrete or a cement screed, `gypsum` a calcium sulfate screed, `screed` one of either kind, `tile` tile on any of them. */
export type Mineral = 'concrete' | 'gypsum' | 'screed' | 'tile';
export type Base = 'wood' | Mineral;

const word = (source: string): RegExp => new RegExp(`(?<![\\p{L}])(?:${source})(?![\\p{L}])`, 'u');

/** The surest first: an anhydrite screed is no cement. */
const MINERALS: readonly (readonly [Mineral, RegExp])[] = [
  [
    'gypsum',
    word(
      'anhydrit\\p{L}*|calcium[ -]?sul(?:ph|f)ate?\\p{L}*|gyp(?:sum)?[ -]?(?:crete|screed|concrete|underlayment)|flie(?:ss|ß)estrich',
    ),
  ],
  [
    'concrete',
    word('concrete|concreet|cement(?:itious)?|slabs?|beton\\p{L}*|béton|zement\\p{L}*|terrazzo|hormigón|hormigon'),
  ],
  ['screed', word('screeds?|screeded|\\p{L}*estrich\\p{L}*|chape')],
  ['tile', word('til(?:es?|ed|ing)|fliesen?|porcelain|ceramics?|carrelage|azulejos?|baldosas?')],
];

const NOT = /(?<!\p{L})(?:no|not|isn't|never|without)(?: (?:on|in|a|an|the|any))* \p{L}+/gu;

/** The mineral base that words name; undefined where they name none, or only say that it is none. */
export function mineralIn(text: string): Mineral | undefined {
  const plain = plainSigns(withoutHidden(text.normalize('NFKC'), ' '))
    .replace(/\s+/g, ' ')
    .replace(NOT, ' ');
  return MINERALS.find(([, words]) => words.test(plain))?.[0];
}

/** A text without the words that name a mineral base; hazards in it are looked for before. */
export function withoutMineral(plain: string): string {
  return MINERALS.reduce((rest, [, words]) => rest.replace(new RegExp(words.source, 'gu'), ' '), plain);
}

const WOOD = word(
  '(?:hard|soft|ply)?-?wood(?:en)?|oak|pine|ply(?:wood)?|osb|boards?|particle ?board|chip ?board|timber|joists?|panels?|sub-?floor|lumber',
);

/** `wood`, `concrete slab`, `anhydrite screed`, `tile`, or `untold`. Never throws. */
export function readBase(text: string, reading: Reading): Read<Base | 'untold'> {
  const plain = plainSigns(text.trim()).slice(0, 80);
  if (/^(?:untold|unknown|not told)$/.test(plain)) return read('untold');
  const mineral = mineralIn(plain);
  if (mineral) return read(mineral);
  return WOOD.test(plain) ? read('wood') : unread(notABase({ option: reading.option, got: text }));
}
