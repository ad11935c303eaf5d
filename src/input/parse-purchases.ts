/** Reads purchases: bought 10 cartons at $32.50 lot B7, returned 2 tubes, opened 3 cartons. */

import { distance } from 'fastest-levenshtein';
import { readInTime } from '../workers/time-limits.ts';
import { FIGURE, figureOf, MARK, readPrice } from './parse-price.ts';
import type { Price, Reading } from './reading.ts';
import { LETTER, plainSigns, withoutHidden } from './rooms/room-text.ts';
import { withFigures } from './trade-words.ts';

/** `untick` takes back the last tick, `unbuy` everything bought of a thing. */
type PurchaseAction = 'buy' | 'return' | 'open' | 'unbuy' | 'untick';

/** How much: all that is left, a number of something, or no amount. `unit` where a measure was named. */
interface PurchaseAmount {
  readonly all: boolean;
  readonly figure?: number;
  readonly unit?: 'area' | 'length' | 'volume';
  /** One unit in square ticks, ticks or liters. */
  readonly each?: number;
}

export interface ParsedPurchase {
  readonly action: PurchaseAction;
  readonly amount: PurchaseAmount;
  /** What was bought, word by word, in lower case. */
  readonly words: readonly string[];
  readonly price?: Price;
  readonly priceOf?: 'each' | 'total';
  readonly lot?: string;
  readonly payer?: 'self' | 'insurer' | 'landlord';
  /** As typed. */
  readonly text: string;
}

const LONGEST_TEXT = 600;
const ACTIONS: readonly (readonly [RegExp, PurchaseAction])[] = [
  [/^(?:un-?tick(?:ed)?)(?![a-z])/, 'untick'],
  [/^(?:un-?buy|un-?bought|not bought|didn'?t buy|did not buy|remove)(?![a-z])/, 'unbuy'],
  [/^(?:returned|return|returning|took back|take back|gave back|brought back|sent back)(?![a-z])/, 'return'],
  [/^(?:opened|open)(?![a-z])/, 'open'],
  [
    /^(?:i |we |i'?ve |we'?ve |have |just |also |already )*(?:bought|buy|got|picked up|purchased|ordered|have|tick|ticked|paid for)(?![a-z])/,
    'buy',
  ],
];

const TICKS_PER_INCH = 8128;
const TICKS_PER_METRE = 320_000;
const MEASURES: readonly (readonly [RegExp, NonNullable<PurchaseAmount['unit']>, number])[] = [
  [/^(?:sq(?:uare|\.)? ?(?:ft|feet|foot)\.?|sqft|ft ?(?:²|2)|sf)(?![a-z])/, 'area', (12 * TICKS_PER_INCH) ** 2],
  [/^(?:sq(?:uare|\.)? ?m(?:et(?:re|er)s?)?\.?|m ?(?:²|2))(?![a-z])/, 'area', TICKS_PER_METRE ** 2],
  [/^(?:gallons?|gal\.?)(?![a-z])/, 'volume', 3.785411784],
  [/^(?:quarts?|qts?\.?)(?![a-z])/, 'volume', 3.785411784 / 4],
  [/^(?:fl\.? ?oz\.?|fluid ounces?)(?![a-z])/, 'volume', 3.785411784 / 128],
  [/^(?:lit(?:re|er)s?|l)(?![a-z])/, 'volume', 1],
  [/^(?:millilit(?:re|er)s?|ml)(?![a-z])/, 'volume', 0.001],
];

const PRICE = new RegExp(
  `(?:(?<of>at|@|for|each|paying|paid|cost(?:ing|s)?|total(?: of)?|=) ?)?(?<money>${MARK} ?${FIGURE}|${FIGURE} ?${MARK})(?: ?(?<each>each|apiece|a piece|a pc|(?:a|per|/) ?(?:carton|box|case|tube|bag|stick|pack|sheet|piece|quart|unit|each))| ?(?<total>in all|in total|total|all in|altogether|together))?`,
);
const AMOUNT = new RegExp(`^(${FIGURE}|\\d+ ?\\d*/\\d+)(?: ?(?:x|×|\\*)(?= ))?(?!x\\d)`);
const BARE_PRICE = new RegExp(
  `(?<of>at|@) ?(?<money>${FIGURE})(?: ?(?<each>each|apiece))?(?![\\d'"/])(?! ?(?:in|ft|mm|cm|m)(?![a-z]))`,
);
const LOT =
  /(?:(?<![a-z])(?:dye )?lot(?: ?(?:no\.?|number|nr\.?|#|code))?|(?<![a-z])batch(?: ?(?:no\.?|number|#))?)(?:\s*[:=#])?\s*(?<lot>[a-z0-9][a-z0-9._/-]{0,39})/i;
const PAYERS: readonly (readonly [RegExp, NonNullable<ParsedPurchase['payer']>])[] = [
  [
    /(?:paid by|for|from|on) (?:the |my |our )?insur(?:er|ance)|(?<![a-z])insur(?:er|ance)(?: pays| paid)?(?![a-z])/,
    'insurer',
  ],
  [/(?:paid by|for|from|on) (?:the |my |our )?landlord|(?<![a-z])landlord(?: pays| paid)?(?![a-z])/, 'landlord'],
  [/(?:paid by) (?:me|myself|us)|(?<![a-z])(?:self|myself)(?: pays| paid)?(?![a-z])/, 'self'],
];
const STOP = new Set(
  'of the a an and my our more some for at with to in it them those these all each this that pcs'.split(' '),
);

/** The purchases in a text, in order; undefined if there are none. Never throws. */
export function readPurchases(text: string, reading: Reading): readonly ParsedPurchase[] | undefined {
  return readInTime(() => purchasesIn(text, reading));
}

function purchasesIn(text: string, reading: Reading): readonly ParsedPurchase[] | undefined {
  const typed = withoutHidden(text, ' ').trim();
  if (typed === '' || typed.length > LONGEST_TEXT) return undefined;
  const plain = plainSigns(typed).replace(/[ \t]+/g, ' ');
  // A bare number of something was bought.
  const first =
    actionOf(plain) ?? (/^(?:\d|an? |all )/.test(plain) ? ({ action: 'buy', length: 0 } as const) : undefined);
  if (!first) return undefined;
  let action = first.action;
  const parts = typed
    .slice(first.length)
    .split(
      /(?<!\s)\s*[;\n]\s*|,\s+(?=(?:\d|all\b|an?\b|the\b|one\b|two\b|three\b|four\b|five\b|six\b|ten\b|bought\b|opened\b|returned\b))|(?<!\s)\s+(?:and|&)\s+(?=(?:\d|all\b|an?\b|bought\b|opened\b|returned\b))/i,
    );
  return parts
    .filter((part) => part.trim() !== '')
    .map((part) => {
      const own = actionOf(plainSigns(part.trim()));
      if (own) action = own.action;
      return purchaseOf(own ? part.trim().slice(own.length) : part, action, reading);
    });
}

/** The action at the start of a text, and how many characters name it. */
function actionOf(plain: string): { readonly action: PurchaseAction; readonly length: number } | undefined {
  for (const [pattern, action] of ACTIONS) {
    const match = pattern.exec(plain);
    if (match) return { action, length: match[0].length };
  }
  return undefined;
}

function purchaseOf(typed: string, action: PurchaseAction, reading: Reading): ParsedPurchase {
  const lot = LOT.exec(typed);
  let plain = plainSigns(lot ? typed.replace(lot[0], ' ') : typed)
    .replace(/\s+/g, ' ')
    .trim();
  const priced = PRICE.exec(plain) ?? BARE_PRICE.exec(plain);
  const price = priced && readPrice(priced.groups?.money ?? '', reading);
  if (priced && price?.ok) plain = cut(plain, priced);
  const payer = PAYERS.find(([pattern]) => pattern.test(plain));
  if (payer) plain = plain.replace(payer[0], ' ');
  const { amount, rest } = amountOf(withFigures(plain.trim()), reading);
  const words = rest.split(/[^\p{L}\p{N}/"'.]+/u).map((word) => word.replace(/^[.'"]+|(?<![.'])[.']+$/g, ''));
  return {
    action,
    amount,
    words: words.filter((word) => word !== '' && !STOP.has(word)),
    ...(priced && price?.ok && { price: price.value, ...priceOf(priced.groups ?? {}) }),
    ...(lot?.groups?.lot !== undefined && { lot: lot.groups.lot }),
    ...(payer && { payer: payer[1] }),
    text: typed.trim(),
  };
}

function priceOf(groups: Readonly<Record<string, string | undefined>>): { readonly priceOf?: 'each' | 'total' } {
  const { of, each, total } = groups;
  if (each !== undefined || of === 'at' || of === '@' || of === 'each') return { priceOf: 'each' };
  if (total !== undefined || of === 'for' || of?.startsWith('total') || of === 'paying' || of === 'paid') {
    return { priceOf: 'total' };
  }
  return {};
}

function amountOf(plain: string, { preferences }: Reading): { amount: PurchaseAmount; rest: string } {
  const all = /^(?:all|everything|the rest|the lot|both)(?: (?:of )?(?:the|it|them))?(?![a-z])/.exec(plain);
  if (all) return { amount: { all: true }, rest: plain.slice(all[0].length) };
  const one = /^(?:an?|one|another) /.exec(plain);
  const figure = AMOUNT.exec(plain);
  if (!figure && !one) return { amount: { all: false }, rest: plain };
  const value = figure ? numberOf(figure[1] ?? '', preferences) : 1;
  if (value === undefined || !(value > 0)) return { amount: { all: false }, rest: plain };
  const rest = plain.slice((figure ?? one)?.[0].length ?? 0).trimStart();
  for (const [pattern, unit, each] of MEASURES) {
    const match = pattern.exec(rest);
    if (match) return { amount: { all: false, figure: value, unit, each }, rest: rest.slice(match[0].length) };
  }
  return { amount: { all: false, figure: value }, rest };
}

function numberOf(typed: string, preferences: Reading['preferences']): number | undefined {
  const ratio = figureOf(typed, preferences);
  return ratio && Number(ratio.top) / Number(ratio.bottom);
}

function cut(plain: string, match: RegExpExecArray): string {
  return `${plain.slice(0, match.index)} ${plain.slice(match.index + match[0].length)}`.replace(/\s+/g, ' ');
}

interface Named {
  readonly item: string;
  readonly label: string;
  readonly package?: { readonly label: string; readonly labels: string } | undefined;
}

/** Other names, by key prefix. */
const ALSO: readonly (readonly [start: string, names: string])[] = [
  ['plank', 'plank board flooring floor carton box case vinyl laminate lvp click'],
  ['underlay', 'underlay underlayment pad padding foam roll'],
  ['contractor bag', 'contractor bag trash rubbish garbage sack'],
  ['knife blade', 'knife blade'],
  ['mask', 'mask n95 respirator dust'],
  ['container', 'container skip dumpster'],
  ['subfloor screw', 'subfloor screw deck floor pack'],
  ['block screw', 'block screw'],
  ['panel', 'panel plywood ply osb sheet subfloor'],
  ['block 2x4', '2x4 lumber stud timber block'],
  ['subfloor adhesive', 'subfloor adhesive glue tube construction'],
  ['levelling compound', 'levelling leveling leveller leveler compound self bag'],
  ['levelling primer', 'levelling leveling primer leveller leveler'],
  ['baseboard', 'baseboard base board skirting trim stick length moulding molding'],
  ['transition strip', 'transition strip threshold moulding molding'],
  ['t-moulding', 't-moulding t-molding tmoulding moulding molding stick'],
  ['reducer', 'reducer transition strip stick'],
  ['end cap', 'end cap transition strip stick'],
  ['nosing', 'stair nosing nose stick'],
  ['finish nail', 'finish nail brad'],
  ['caulk', 'caulk caulking sealant tube'],
  ['wood filler', 'wood filler putty tub'],
  ['trim primer', 'trim primer quart can undercoat'],
  ['trim paint', 'trim paint quart can'],
];

/** A unit next to a number adds nothing. */
const UNITS = new Set('ft foot feet in inch inches mm cm m long'.split(' '));

/**
 * The items matching all words, or if there are none, those matching most words, at least half. A typo in a longer word
 * is forgiven. No words match everything.
 */
export function thingsNamed<T extends Named>(words: readonly string[], things: readonly T[]): readonly T[] {
  const wanted = words.map(tokenOf).filter((word) => word !== '' && !UNITS.has(word));
  if (wanted.length === 0) return things;
  const scored = things.map((thing) => {
    const [own, also] = namesOf(thing);
    const hit = (word: string, names: readonly string[]): boolean => names.some((name) => isName(word, name));
    const hits = wanted.filter((word) => hit(word, own) || hit(word, also));
    return { thing, hits: hits.length, own: wanted.filter((word) => hit(word, own)).length };
  });
  const most = Math.max(...scored.map(({ hits }) => hits), 0);
  if (most === 0 || most * 2 < wanted.length) return [];
  const best = scored.filter(({ hits }) => hits === most);
  // Words of the label itself take precedence: "paint" means the paint, not every painting supply.
  const closest = Math.max(...best.map(({ own }) => own));
  const named = best.filter(({ own }) => own === closest).map(({ thing }) => thing);
  // A complete label means that item, even if a longer label contains its words.
  const whole = named.filter((thing) => wordsOf(thing.label).every((word) => wanted.some((one) => isName(one, word))));
  return whole.length > 0 ? whole : named;
}

/** The words of its label and key; and the words of its packaging and other names. */
function namesOf({ item, label, package: sold }: Named): readonly [own: readonly string[], also: readonly string[]] {
  const [, names = ''] = ALSO.find(([start]) => item.startsWith(start)) ?? [];
  return [wordsOf(label), [...wordsOf(sold?.label ?? ''), ...wordsOf(sold?.labels ?? ''), ...names.split(' ')]];
}

function wordsOf(text: string): readonly string[] {
  return text
    .split(/[\s,()×]+/)
    .map(tokenOf)
    .filter((word) => word !== '' && !UNITS.has(word));
}

const OTHER_SIGNS = new RegExp(`[^${LETTER}\\d/.-]`, 'g');

/** A word in lowercase, without punctuation or plural s. */
function tokenOf(word: string): string {
  const plain = plainSigns(word)
    .replace(OTHER_SIGNS, '')
    .replace(/^[.-]+|(?<![.-])[.-]+$/g, '');
  return plain.length > 3 && !/\d$/.test(plain) ? plain.replace(/(?:(?<=x|sh|ch)es|(?<!s)s)$/, '') : plain;
}

function isName(word: string, name: string): boolean {
  if (word === name) return true;
  if (name.length < 5 || word.length < 4) return false;
  const letters = (text: string): string => [...text].sort().join('');
  return letters(word) === letters(name) || distance(word, name) <= (name.length >= 8 ? 2 : 1);
}
