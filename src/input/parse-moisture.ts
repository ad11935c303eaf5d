/** Moisture input: readings, a maker's limit, and the water and age of a leak. */

import { screenHere, tells } from '../hazards/screen.ts';
import { notABase, notALimit, notAMoistureShare, notAnAge, notMoisture, notWater } from '../text/prep-problems-text.ts';
import { type Found, screened } from './parse-found.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-text.ts';

// What moisture was measured on: wood, or concrete and what is laid on it.

/**
 * `concrete` is concrete or a cement screed, `gypsum` a calcium sulfate screed, `screed` either kind, `tile` tile on
 * any of them.
 */
export type Mineral = 'concrete' | 'gypsum' | 'screed' | 'tile';
export type Base = 'wood' | Mineral;

const word = (source: string): RegExp => new RegExp(`(?<![\\p{L}])(?:${source})(?![\\p{L}])`, 'u');

/** Most specific first: an anhydrite screed isn't cement. */
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

/** The mineral base named in a text; undefined if none is named, or if it is negated. */
export function mineralIn(text: string): Mineral | undefined {
  const plain = plainSigns(withoutHidden(text.normalize('NFKC'), ' '))
    .replace(/\s+/g, ' ')
    .replace(NOT, ' ');
  return MINERALS.find(([, words]) => words.test(plain))?.[0];
}

/** A text without the words for a mineral base; call it after screening for hazards. */
function withoutMineral(plain: string): string {
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

/** Values in the method's own unit; `unit` if one was typed. */
export interface ParsedMoisture {
  readonly values: readonly number[];
  readonly unit?: 'lb' | 'rh' | 'cm';
  readonly found: Found;
}

const LONGEST_TEXT = 2000;
const MOST = 500;

/** `10 11 9.5 12 %`, `2.5, 3 lb`, `72 74 % RH`, `1.8 2.1 CM`, optionally with what it was measured on. Never throws. */
export function readMoisture(text: string, reading: Reading): Read<ParsedMoisture> {
  const typed = withoutHidden(text.trim(), ' ');
  const bad = unread(notMoisture({ option: reading.option, got: typed }));
  if (typed.length > LONGEST_TEXT) return bad;
  const plain = plainSigns(typed);
  const unit = /(?<![a-z])(?:lbs?|pounds?)(?![a-z])/.test(plain)
    ? 'lb'
    : /(?<![a-z])rh|humidity/.test(plain)
      ? 'rh'
      : /(?<![a-z])(?:cm|carbide)(?![a-z])/.test(plain)
        ? 'cm'
        : undefined;
  const words = plain.replace(
    /(?<![a-z])(?:lbs?|pounds?|rh|mc|cm(?:-%)?|carbide|percent|humidity|moisture|relative|content|and|test(?:s|ed)?|readings?|meter|screw-?in|pin(?:less)?)(?![a-z])|[%;|]/g,
    ' ',
  );
  const values = figuresIn(words, reading.preferences.decimal);
  const rest = words.replace(/\d+(?:[.,]\d+)?/g, ' ').replace(/,/g, ' ');
  const whole = screened(rest, reading);
  const hazardous = whole.ok && whole.value.hazards.length > 0;
  // The base has its own option; a hazard beside it is checked first.
  const found = hazardous ? whole : screened(withoutMineral(rest), reading);
  if (!found.ok) {
    const mended = values.length > 0 ? `${values.slice(0, MOST).join(' ')} unsure` : undefined;
    return unread(notMoisture({ option: reading.option, got: typed }, mended));
  }
  if (found.value.hazards.length > 0) return read({ values, found: found.value });
  if (values.length === 0 || values.length > MOST || /[-+/*]/.test(rest)) return bad;
  return read({ values, found: found.value, ...(unit && { unit }) });
}

/** Values in order. A comma is a decimal mark if the user writes it so, and only between single digits. */
function figuresIn(words: string, decimal: '.' | ','): readonly number[] {
  return words.split(/\s+/).flatMap((token) => {
    const comma = decimal === ',' && /^\d+,\d,?$/.test(token);
    const parts = comma ? [token.replace(',', '.')] : token.split(',');
    return parts.flatMap((part) => (/^\d+(?:\.\d+)?\.?$/.test(part) ? [Number.parseFloat(part)] : []));
  });
}

/** `usual`, or the maker's own value with or without its unit. Never throws. */
export function readLimit(text: string, reading: Reading): Read<number | 'usual'> {
  const plain = plainSigns(text.trim()).slice(0, 60);
  if (/^(?:usual|standard|none)$/.test(plain)) return read('usual');
  const figure = /^(\d{1,3}(?:[.,]\d{1,2})?) ?(?:%|lbs?|pounds?|percent)?(?: ?(?:rh|mc))?$/.exec(plain)?.[1];
  const value = Number((figure ?? '').replace(',', '.'));
  if (figure === undefined || !(value > 0 && value <= 100))
    return unread(notALimit({ option: reading.option, got: text }));
  return read(value);
}

export function readFlooring(text: string, reading: Reading): Read<number | 'none'> {
  const plain = plainSigns(text.trim()).slice(0, 60);
  if (/^(?:none|no|vinyl)$/.test(plain)) return read('none');
  const figure = /^(\d{1,2}(?:[.,]\d{1,2})?) ?(?:%|percent)?(?: ?mc)?$/.exec(plain)?.[1];
  const value = Number((figure ?? '').replace(',', '.'));
  if (figure === undefined || !(value >= 1 && value <= 40))
    return unread(notAMoistureShare({ option: reading.option, got: text }));
  return read(value);
}

export type Water = 'none' | 'clean' | 'grey' | 'sewage' | 'unsure';

const GREY =
  /(?<![a-z])(?:gr[ea]y(?: ?water)?|wash(?:ing|er)?(?: machine)?|dish ?washer|laundry|soapy?|aquarium|categor(?:y|ies) (?:2|two)|cat ?2|bath(?:tub)?|shower|sink|tub)(?![a-z])/;
const CLEAN =
  /(?<![a-z])(?:clean|fresh|clear|supply|tap|rain(?:water)?|ice ?maker|fridge|faucet|roof|window|radiator|categor(?:y|ies) (?:1|one)|cat ?1)(?![a-z])/;
const FOUL =
  /(?<![a-z])(?:toilet|drains?|sewer|sewage|black|brown|dirty|river|creek|sea|flood(?:ed|ing)?|septic|urine|filthy|foul|contaminated|waste|categor(?:y|ies) (?:3|three)|cat ?3)(?![a-z])/;

/** The kind of water: the most contaminated one mentioned; text that mentions none is questioned. Never throws. */
export function readWater(text: string, reading: Reading): Read<Water> {
  const typed = withoutHidden(text.trim(), ' ').slice(0, 200);
  const plain = plainSigns(typed.normalize('NFKC')).replace(/\s+/g, ' ');
  if (/^(?:none|no|no leak|no water|dry)$/.test(plain)) return read('none');
  if (FOUL.test(plain) || screenHere(plain).sightings.some(({ hazard }) => hazard === 'sewage')) return read('sewage');
  const screen = screened(
    plain
      .replace(GREY, ' ')
      .replace(CLEAN, ' ')
      .replace(/(?<![a-z])(?:water|leak|line|pipe|burst|overflow)(?![a-z])/g, ' '),
    reading,
    'unsure',
  );
  if (screen.ok && screen.value.hazards.includes('sewage')) return read('sewage');
  if (tells(plain, 'UNSURE')) return read('unsure');
  if (GREY.test(plain)) return screen.ok ? read('grey') : unread(notWater({ option: reading.option, got: typed }));
  if (CLEAN.test(plain) && screen.ok) return read('clean');
  return unread(notWater({ option: reading.option, got: typed }));
}

/** Hours since the leak: `30 hours`, `3 days ago`; `none` without a leak. Never throws. */
export function readAge(text: string, reading: Reading): Read<number | 'none'> {
  const plain = plainSigns(text.trim()).slice(0, 60);
  if (/^(?:none|no)$/.test(plain)) return read('none');
  const match = /^(?:about |since )?(\d{1,4}(?:[.,]\d{1,2})?) ?(h|hrs?|hours?|d|days?|weeks?|w|months?)(?: ago)?$/.exec(
    plain,
  );
  const value = Number((match?.[1] ?? '').replace(',', '.'));
  const unit = match?.[2]?.[0];
  if (!match || unit === undefined) return unread(notAnAge({ option: reading.option, got: text }));
  return read(value * (unit === 'h' ? 1 : unit === 'd' ? 24 : unit === 'w' ? 168 : 730));
}
