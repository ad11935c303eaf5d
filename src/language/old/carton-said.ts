/** What a sentence tells of the carton and its price, put into the words that the plank's reader knows. */

import { PRICE_SQUARE_FOOT, SQUARE_METRE } from '../../input/parse-plank-price.ts';
import { FIGURE, FIGURE_START, MARK } from '../../input/parse-price.ts';
import { SIDE } from '../../input/rooms/room-text.ts';
import { word } from '../../input/trade-words.ts';
import type { SentenceSheet } from './sheet.ts';

export interface CartonSaid {
  /** Counts and areas of a carton, prices, and what else the plank's reader knows, each as it is told to it. */
  readonly parts: readonly string[];
  readonly carton: boolean;
  readonly price: boolean;
  /** An area of which nothing says that a carton covers it. */
  readonly areas: readonly { readonly got: string; readonly at: number }[];
  /** Money that buys nothing here. */
  readonly unused: readonly string[];
}

const END = '(?![a-z])';
const CARTON = `(?:cartons?|box(?:es)?|packs?|packets?|packages?|cases?|bx|ctn|pkg)${END}(?! ?room)`;
const PLANK = `(?:planks?|boards?|pieces?|pcs|tiles?|stk)${END}`;
const SQUARE = `(?:${PRICE_SQUARE_FOOT}|${SQUARE_METRE})`;
const PER = `(?:(?:per|an?|each|every|in an?|to an?|in each|in every|in the|to the|in)${END}|/)`;

const AREAS = [
  `${FIGURE_START}(?<value>${FIGURE} ?-?${SQUARE}) ?-?(?:${PER} ?)?${CARTON}`,
  `(?:(?:each|every|per|an?|the) ?)?${CARTON} ?(?:(?:of|has|have|holds?|contains?|covers?|says?|is|are|do|does|will|cover|about|at|with|up to|:|=) ?){0,3}(?<value>${FIGURE} ?-?${SQUARE})(?: ?each${END})?`,
].map((source) => new RegExp(source));
/** 10 or 12 per box, 8-10 per box: neither is told. */
const ALONE = '(?<!\\d ?(?:or|to|-|/) ?)';
const COUNTS = [
  `${FIGURE_START}${ALONE}(?<value>${FIGURE}) ?-?(?:(?:${PLANK}|ct${END}|count${END}) ?)?(?:(?:come|go|fit)s? )?${PER} ?${CARTON}`,
  `(?:(?:each|every|per|an?|the|come in|comes in) ?)?${CARTON} ?(?:(?:of|has|have|holds?|contains?|with|come with|comes with|is|are|:|=) ?){1,2}(?<value>${FIGURE})(?![\\d.,]*\\d)(?! ?(?:%|${MARK}|x ?\\d|sq|ft|feet|m²|m2|cm|mm|lbs?|kg))(?: ?${PLANK})?`,
  `${FIGURE_START}(?<value>\\d{1,3})[ -]?(?:ct|count)${END}(?: ?${CARTON})?`,
  `${FIGURE_START}(?<value>\\d{1,3})[ -]?(?:plank|board|piece)[ -](?:boxes|cartons|packs)${END}`,
  `(?:comes?|sold) (?:with|in) (?<value>\\d{1,3}) ?${PLANK}`,
].map((source) => new RegExp(source));

const AMOUNT = `(?:(?<before>${MARK}) ?(?<figure>${FIGURE})|(?<trailing>${FIGURE}) ?(?<after>${MARK}))`;
const WHAT = `(?:(?<square>${SQUARE})|(?<carton>${CARTON})|(?<plank>${PLANK}))`;
const OF = `(?: ?-?(?:(?:per|an?|each|every|for (?:an?|each|the)|the)${END}|/) ?${WHAT})`;
/** A lookahead may not name its groups again. */
const NAMES = /\?<[a-z]+>/g;
const LINKS = '(?:is|are|costs?|priced at|run|runs|go for|goes for|at|for|:|=)';
const PRICES = [
  `(?<=${CARTON} of \\d{1,3}(?: ?${PLANK})?)(?<carton>) ?${LINKS} ?${AMOUNT}(?!${OF.replace(NAMES, '?:')})`,
  `${FIGURE_START}${AMOUNT}(?:${OF}| ?(?<bare>${SQUARE}))`,
  `(?:${CARTON} ?(?:is|are|costs?|priced at|runs?|goe?s? for|:|=) ?|(?:boxes|cartons|packs|cases) (?:at|for) )(?<carton>)${AMOUNT}(?: ?(?:each|apiece)${END})?(?!${OF.replace(NAMES, '?:')})`,
  `(?:${PLANK} ?${LINKS} ?)(?<plank>)${AMOUNT}(?: ?(?:each|apiece)${END})(?!${OF.replace(NAMES, '?:')})`,
  `(?<!\\d ?(?:(?:in|to) )?)(?:per|an?|each) (?<carton>${CARTON}) ?${LINKS} ?${AMOUNT}`,
].map((source) => new RegExp(source));
const BUDGET = new RegExp(
  `(?:budget|spend|spent|under|max(?:imum)?|afford|paid)(?: (?:of|is|about|up to|only))* ?${AMOUNT}|${AMOUNT}(?: (?:budget|to spend|max))`.replace(
    /\?<(before|figure|trailing|after)>/g,
    '?:',
  ),
);
const BARE_PRICE = new RegExp(`${FIGURE_START}${AMOUNT}`);
const LONE_AREA = new RegExp(`${FIGURE_START}(?<value>${FIGURE} ?-?${SQUARE})`);

const THICK = [
  new RegExp(`(?<![\\w.,/])(?<value>${SIDE})[ -]?thick(?:ness)?${END}`),
  new RegExp(`thick(?:ness)? ?(?:is|of|:|=)? ?(?<value>${SIDE})`),
  new RegExp(
    `(?<![\\w.,/x])(?<![x] )(?<value>\\d{1,2}(?:[.,]\\d)? ?mm)(?= (?:laminate|lvp|lvt|vinyl|spc|planks?|boards?|thick|click)${END})(?! ?(?:x|by) ?\\d)`,
  ),
];
const MAKE = [
  [
    word('(?:with )?(?:an? )?attached (?:pad(?:ding)?|underlay(?:ment)?)|(?:pad|underlay(?:ment)?) (?:is )?attached'),
    'attached pad',
  ],
  [word('glue[- ]?down|glued down'), 'glue down'],
] as const;

/** Claims what is told of the carton, the price, the thickness, the pad and the lock. */
export function claimCartonSaid(sheet: SentenceSheet): CartonSaid {
  const parts: string[] = [];
  const unused: string[] = [];
  for (const found of sheet.claimAll(BUDGET)) unused.push(found[0]);
  const prices = PRICES.flatMap((pattern) => sheet.claimAll(pattern)).map((found) => priced(found.groups ?? {}));
  for (const found of sheet.claimAll(BARE_PRICE)) prices.push(found[0]);
  const areas = AREAS.flatMap((pattern) => sheet.claimAll(pattern)).map(({ groups }) => `${groups?.value} per carton`);
  const counts = COUNTS.flatMap((pattern) => sheet.claimAll(pattern)).map(countSaid);
  const lone = sheet.claimAll(LONE_AREA).map((found) => ({ got: found[0], at: found.index }));
  for (const pattern of THICK) for (const { groups } of sheet.claimAll(pattern)) parts.push(`${groups?.value} thick`);
  for (const [pattern, said] of MAKE) if (sheet.claimAll(pattern).length > 0) parts.push(said);
  return {
    parts: [...new Set([...areas, ...counts, ...prices, ...parts])],
    carton: areas.length + counts.length > 0,
    price: prices.length > 0,
    areas: lone,
    unused,
  };
}

/** A figure that is not whole stays as typed, so that the plank's reader notes what it took it for. */
function countSaid({ groups, 0: typed }: RegExpExecArray): string {
  const value = groups?.value ?? '';
  return /^\d+$/.test(value)
    ? `${value} per carton`
    : typed.replace(/ ?-?(?:come|go|fit)s? /, ' ').replace(/ (?:to|in) an? /, ' a ');
}

function priced(groups: Readonly<Record<string, string | undefined>>): string {
  const amount = `${groups.before ?? ''}${groups.figure ?? groups.trailing ?? ''}${groups.after ? ` ${groups.after}` : ''}`;
  const square = groups.square ?? groups.bare;
  if (square !== undefined) return `${amount} per ${square}`;
  return groups.plank !== undefined ? `${amount} per plank` : `${amount} per carton`;
}
