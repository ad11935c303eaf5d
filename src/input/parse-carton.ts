/** Reads a pasted carton label: the width, length and count of the planks, confirmed by the printed area. */

import { PRICE_SQUARE_FOOT, SQUARE_METRE } from './parse-plank-price.ts';
import { FIGURE, FIGURE_START, MARK } from './parse-price.ts';
import { SIDE } from './rooms/room-text.ts';
import { type SentenceSheet, word } from './trade-words.ts';

interface LabelPlank {
  /** In the plank reader's syntax. */
  readonly text: string;
}

interface Figure {
  readonly value: number;
  readonly unit: Unit | undefined;
  /** Set for areas. */
  readonly square: 'ft' | 'm' | undefined;
  readonly counted: boolean;
}

type Unit = 'in' | 'mm' | 'ft' | 'cm';

const MOST_FIGURES = 30;
const MOST_TEXT = 900;
/** Tolerance between the printed area and width × length × count: labels round. */
const CLOSE = 0.012;

const PRINTED =
  /(?<![\d.,/])(?:(\d{1,2})[ -](\d{1,2})\/(\d{1,2})|(\d{1,2})\/(\d{1,2})|(\d{1,4}(?:[.,]\d{1,4})?))(?![\d/])/g;
const UNIT_AFTER =
  /^ ?[-(]? ?(sq(?:uare)?\.? ?(?:ft|feet)|sqft|sf|ft ?[2²]|m ?[2²]|sq\.? ?m|sqm|qm|pies ?2|"|''|in(?:ch(?:es)?)?(?![a-z])|mm|cm|'|ft(?![a-z])|feet|p(?:ie)?ce?s?\b|pcs|planks?|boards?|ea\b|stk|stück|planches|piezas|lamas|tablas|units?|count|ct\b)/;
const LABEL_BEFORE =
  /(?<![a-z])(sq ?ft|sqft|sf|area|covers?|cubre|couvre|coverage|pcs|pieces|piezas|contains?|contient|contents|qty|count|ct|planks)[ _/.:|=-]{0,10}(?:box|ctn|carton|pieces|planks|contains|covers)?[ _/.:|=-]{0,10}$/;

/** Undefined if no width, length and count match an area. Linear in the text. */
export function plankOfLabel(typed: string): LabelPlank | undefined {
  const figures = figuresIn(typed);
  let best: { readonly off: number; readonly text: string } | undefined;
  const areas = figures.flatMap((figure) => areasOf(figure).map((area) => ({ ...area, figure })));
  const bare = figures.flatMap((figure) => bareAreas(figure).map((area) => ({ ...area, figure })));
  for (const area of areas.length > 0 ? areas : bare) {
    for (const [i, width] of figures.entries()) {
      for (const [j, length] of figures.entries()) {
        if (i === j || area.figure === width || area.figure === length) continue;
        for (const [w, l, unit] of pairsOf(width, length)) {
          const count = area.inches / (w * l);
          const whole = Math.round(count);
          if (whole < 2 || whole > 40) continue;
          const off = Math.abs(count - whole) / whole;
          const printed = figures.some(
            (one) =>
              one.value === whole &&
              (one.counted || one.unit === undefined) &&
              one !== width &&
              one !== length &&
              one !== area.figure,
          );
          if (off > CLOSE || !printed) continue;
          // A number with a unit of its own is trusted over one without.
          const doubt = off + (width.unit === undefined ? 0.004 : 0) + (length.unit === undefined ? 0.004 : 0);
          if (best && best.off <= doubt) continue;
          const size =
            unit === 'mm' ? `${round(w * 25.4, 1)} x ${round(l * 25.4, 1)} mm` : `${round(w, 3)} x ${round(l, 3)} in`;
          best = { off: doubt, text: `${size}, ${whole} per carton, ${area.text} per carton` };
        }
      }
    }
  }
  return best && { text: best.text };
}

function round(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}

function figuresIn(typed: string): readonly Figure[] {
  const text = typed
    .slice(0, MOST_TEXT)
    .toLowerCase()
    .replace(/[”“″]/g, '"')
    .replace(/[’‘′]/g, "'")
    .replace(/' '|''/g, '"')
    .replace(/m m\b/g, 'mm')
    .replace(/sq ?\. ?ft/g, 'sq ft')
    .replace(/\s{1,40}/g, ' ');
  const found: Figure[] = [];
  for (const match of text.matchAll(PRINTED)) {
    if (found.length >= MOST_FIGURES) break;
    const [whole, a, b, c, d, e, f] = match;
    const after = UNIT_AFTER.exec(text.slice(match.index + whole.length, match.index + whole.length + 16))?.[1] ?? '';
    const before = LABEL_BEFORE.exec(text.slice(Math.max(0, match.index - 30), match.index))?.[1] ?? '';
    const square = squareOf(after) ?? (after === '' ? squareOf(before) : undefined);
    const value = f === undefined ? Number(a ?? 0) + Number(b ?? d) / Number(c ?? e) : numeral(f, square !== undefined);
    if (!Number.isFinite(value) || value <= 0) continue;
    found.push({
      value,
      square,
      unit: square ? undefined : unitOf(after),
      counted:
        /^(?:p(?:ie)?c|pcs|plank|board|ea|st|planche|pieza|lama|tabla|unit|c(?:oun)?t)/.test(after) ||
        /pcs|pieces|piezas|contain|content|qty|count|ct|planks/.test(before),
    });
  }
  return sharedUnits(found);
}

/** “1,219 mm” is over a thousand; “2,196 m²” is a little over two. */
function numeral(typed: string, area: boolean): number {
  return Number(/^\d{1,2},\d{3}$/.test(typed) && !area ? typed.replace(',', '') : typed.replace(',', '.'));
}

function squareOf(word: string): Figure['square'] {
  if (/^(?:sq(?:uare)?\.? ?(?:ft|feet)|sqft|sf|ft ?[2²]|pies|area|cover|cubre|couvre)/.test(word)) return 'ft';
  return /^(?:m ?[2²]|sq\.? ?m|sqm|qm)/.test(word) ? 'm' : undefined;
}

function unitOf(word: string): Unit | undefined {
  if (/^(?:"|''|in)/.test(word)) return 'in';
  if (/^(?:'|ft|feet)/.test(word)) return 'ft';
  return word === 'mm' || word === 'cm' ? word : undefined;
}

/** “7 x 48 in”: one unit, after the last number. */
function sharedUnits(figures: readonly Figure[]): readonly Figure[] {
  const only = new Set(figures.flatMap(({ unit }) => (unit === 'in' || unit === 'mm' ? [unit] : [])));
  return figures.map((one) => {
    if (one.unit !== undefined || one.square || one.counted) return one;
    const unit = only.size === 1 && only.has('mm') && one.value > 60 ? 'mm' : undefined;
    return unit ? { ...one, unit } : one;
  });
}

/** What a number is in inches, for every unit it may have. */
function inchesOf({ value, unit, square, counted }: Figure): readonly (readonly [inches: number, unit: Unit])[] {
  if (square || counted) return [];
  if (unit === 'in') return [[value, 'in']];
  if (unit === 'ft') return [[value * 12, 'in']];
  if (unit === 'cm') return [[value / 2.54, 'mm']];
  if (unit === 'mm') return [[value / 25.4, 'mm']];
  return value > 60 ? [[value / 25.4, 'mm'], ...(value <= 96 ? [[value, 'in'] as const] : [])] : [[value, 'in']];
}

/** Widths and lengths that make a plank, in one unit. */
function pairsOf(width: Figure, length: Figure): readonly (readonly [width: number, length: number, unit: Unit])[] {
  return inchesOf(width).flatMap(([w, unit]) =>
    inchesOf(length).flatMap(([l, other]) =>
      unit === other && w >= 2.5 && w <= 14 && l >= 11.5 && l <= 96 && l > w * 1.5 ? [[w, l, unit] as const] : [],
    ),
  );
}

/** Numbers that may be a carton's coverage, in square inches. */
function areasOf({ value, square }: Figure): readonly { readonly inches: number; readonly text: string }[] {
  if (square === 'm') return [{ inches: value / 0.0254 ** 2, text: `${value} m²` }];
  if (square === 'ft') {
    const areas = [{ inches: value * 144, text: `${value} sq ft` }];
    // “Covers” alone doesn't say which unit.
    return value < 6 ? [...areas, { inches: value / 0.0254 ** 2, text: `${value} m²` }] : areas;
  }
  return [];
}

/** In a table without units, a plain number of this size may be the area. */
function bareAreas({ value, unit, counted }: Figure): readonly { readonly inches: number; readonly text: string }[] {
  return unit === undefined && !counted && value >= 8 && value <= 50
    ? [{ inches: value * 144, text: `${value} sq ft` }]
    : [];
}

export interface CartonFound {
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
  `(?:(?:each|every|per|an?|the) ?)?${CARTON} ?(?:(?:of|has|have|holds?|contains?|covers?|says?|states?|lists?|reads?|shows?|gives?|is|are|do|does|will|cover|about|at|with|up to|:|=) ?){0,3}(?<value>${FIGURE} ?-?${SQUARE})(?: ?each${END})?`,
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
export function findCarton(sheet: SentenceSheet): CartonFound {
  const parts: string[] = [];
  const unused: string[] = [];
  for (const found of sheet.claimAll(BUDGET)) unused.push(found[0]);
  const prices = PRICES.flatMap((pattern) => sheet.claimAll(pattern)).map((found) => priced(found.groups ?? {}));
  for (const found of sheet.claimAll(BARE_PRICE)) prices.push(found[0]);
  const areas = AREAS.flatMap((pattern) => sheet.claimAll(pattern)).map(({ groups }) => `${groups?.value} per carton`);
  const counts = COUNTS.flatMap((pattern) => sheet.claimAll(pattern)).map(cartonCount);
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
function cartonCount({ groups, 0: typed }: RegExpExecArray): string {
  const value = groups?.value ?? '';
  return /^\d+$/.test(value)
    ? `${value} per carton`
    : typed
        .replace(/ ?-?(?:come|go|fit)s? /, ' ')
        .replace(/ (?:to|in) an? /, ' a ')
        .replace(/ ?\/ ?(?:ctn|bx|pkg|box|carton|pack|case)$/, ' a carton');
}

function priced(groups: Readonly<Record<string, string | undefined>>): string {
  const amount = `${groups.before ?? ''}${groups.figure ?? groups.trailing ?? ''}${groups.after ? ` ${groups.after}` : ''}`;
  const square = groups.square ?? groups.bare;
  if (square !== undefined) return `${amount} per ${square}`;
  return groups.plank !== undefined ? `${amount} per plank` : `${amount} per carton`;
}
