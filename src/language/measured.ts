/** What a message gives figures for: rooms, planks, boxes, areas, prices, shares, readings, each in the words of the options. */

import { readPlank } from '../input/parse-plank.ts';
import type { Preferences, Reading } from '../input/reading.ts';
import { readRooms } from '../input/rooms/parse-room.ts';
import { cartonAreaNote, priceNote } from '../text/language-text.ts';
import { plankOfLabel } from './label.ts';
import { cleaned } from './old/clean.ts';
import { type MeasuresInText, measuresOf } from './old/measures.ts';

export interface Measured {
  /** The message in plain signs and with its words mended. */
  readonly plain: string;
  /** Rooms that their reader reads. */
  readonly room?: string;
  /** A plank with its carton that its reader reads. */
  readonly plank?: string;
  /** The size of a plank without what a carton holds. */
  readonly size?: string;
  readonly areas: readonly string[];
  /** What a box covers, as an area or a plank with its count. */
  readonly carton?: string;
  /** A price by area or by box. */
  readonly price?: string;
  readonly share?: string;
  readonly boxes?: string;
  readonly layout: ReadonlyMap<string, string>;
  readonly assumed: readonly string[];
  /** Whether two sizes stand in it that could each be the room. */
  readonly doubtful?: string;
  readonly measures: MeasuresInText;
}

const BOXES =
  /(?<![\d.,/x$])(\d{1,4}) (?:more |full |whole |unopened )?(?:box(?:es)?|cartons?|packs?|cases?)(?![a-z])(?! ?room)/;
const SHARE = /(?<![\d.,])(\d{1,2}(?:[.,]\d{1,2})?) ?(?:%|percent|per cent)/;
/** A bare price, as people write it: “at 2.89”, “2.89 a sq ft”, “3.19/sf”. */
const BARE_SQUARE_PRICE =
  /(?<![\d.,$€£])(\d{1,2}[.,]\d{2}) ?(?:\/|per|an?|each) ?(sq(?:uare)?\.? ?(?:ft|feet|foot|m|meters?)|sqft|sf|sqm|m2|m²)(?![a-z])/;
const BARE_PRICE =
  /(?<![a-z])(?:at|for|@|costs?|priced at|is|are) (\d{1,2}[.,]\d{2})(?![\d%]| ?(?:x|by|ft|feet|in|inch|sq|m|mm|cm)(?![a-z]))/;
const BARE_AREA =
  /(?<![a-z])(?:area|total|house|floor|room|basement)(?: is| of|:)? (?:about |around |roughly )?(\d{2,5})(?![\d.,]*(?: ?(?:x|by|ft|feet|'|in|sq|m|mm|cm|box|%)))/;
const BARE_CARTON =
  /(?<![a-z])(?:box|carton|pack|case)(?:es|s)? (?:(?:is|are|has|have|of) (?=\d{1,2}[.,])|(?:covers?|does|do) )(\d{1,2}(?:[.,]\d{1,2})?)(?![\d.,]*\d| ?(?:x|by|mm|lb|kg|%))/;

const ALONE_PRICE = /[$€£] ?\d{1,2}(?:[.,]\d{1,2})?(?![\d.,]*\d)/;
/** Above it, a price without a unit is not one for an area. */
const MOST_A_SQUARE = 25;

const METRIC = /(?<![a-z\d.,])\d[\d.,]{0,8} ?(?:m|cm|mm|m2|m²|sqm|qm|met(?:er|re)s?)(?![a-z])|square met/;
const IMPERIAL = /\d ?(?:'|ft|feet|sq ft|sf|sqft|in|inch)(?![a-z])/;
/** Words of money beside a bare figure for a box. */
const BOX_PRICE =
  /(?:want|costs?|price[ds]?|bucks|dollars|paid?|charge|at|for)(?: is| are| of| me)? \$?(\d{1,3}[.,]\d{2}) ?(?:\/|a|an|per|each|the)? ?(?:box|carton|pack|case)(?![a-z])|\$(\d{1,3}(?:[.,]\d{2})?) ?(?:\/|a|an|per) ?(?:box|carton|pack|case)(?![a-z])/;
/** No box of planks covers more. */
const MOST_SQUARE_FEET = 45;
const LONE_DECIMAL =
  /(?<![\d.,$€£@/])(\d{1,2}[.,]\d{1,2})(?![\d.,]*\d| ?(?:x|by|ft|feet|in|inch|mm|cm|m|lb|kg|%|"|')(?![a-z]))/;

/** The measures of a message. Never throws. */
export function measured(text: string, preferences: Preferences): Measured {
  const notes: string[] = [];
  const clean = cleaned(text.replace(/(?<=\d) ?\* ?(?=\d)/g, ' x '), 'about', (got, right) => `${got} → ${right}`);
  const silent: Reading = { option: 'room', preferences, note: () => undefined };
  const measures = measuresOf(clean, silent);
  const { plain } = clean;
  const { rooms, planks, carton, layout, doubtful } = measures;
  const metric = METRIC.test(plain) || (preferences.units === 'metric' && !IMPERIAL.test(plain));
  const square = metric ? 'm²' : 'sq ft';
  const size = planks[0]?.typed;
  const parts = carton.parts;
  const boxPrice = BOX_PRICE.exec(plain);
  const covers = boxPrice
    ? undefined
    : parts.find((part) => /per carton|a box|per box|carton$|box$/.test(part) && !/[$€£]|usd|eur|gbp/.test(part));
  const counted = covers !== undefined && /^\d{1,2} per carton$/.test(covers);
  const priced = boxPrice?.[1] ?? boxPrice?.[2];
  const price = priced === undefined ? priceIn(parts, plain, metric) : `${metric ? '€' : '$'}${priced} a carton`;
  const marked = parts.some((part) => /[$€£]|usd|eur|gbp/.test(part));
  if (!marked && price !== undefined) notes.push(priceNote(price));
  const told = marked || price === undefined ? parts : [...parts, price];
  const read = size === undefined ? undefined : [size, ...told].join(', ');
  const stated = read !== undefined && readPlank(read, silent).ok ? read : undefined;
  const plank = stated ?? labelled(text, told);
  const lone = rooms.given === '' && size === undefined ? doubtful.find(isRoom)?.typed : undefined;
  const named = rooms.given === '' ? (lone ?? '') : rooms.given;
  const room = named !== '' && readRooms(named, silent).ok ? named : undefined;
  const bareBox = BARE_CARTON.exec(plain)?.[1];
  let box: string | undefined;
  if (size !== undefined && covers !== undefined && counted) box = `${size}, ${covers}`;
  else if (covers !== undefined) {
    box = covers.replace(/ ?(?:per carton|a box|per box|a carton)$/, '');
    // Twenty-four a box without a plank's size is what a box covers.
    if (/^\d+(?:[.,]\d+)?$/.test(box)) {
      box = `${box} ${square}`;
      notes.push(cartonAreaNote(box));
    }
  } else if (bareBox !== undefined) box = `${bareBox} ${square}`;
  else {
    // A lone decimal beside a floor is what is printed on a box.
    const printed = named !== '' || carton.areas.length > 0 ? LONE_DECIMAL.exec(measures.rest)?.[1] : undefined;
    if (
      printed !== undefined &&
      Number(printed.replace(',', '.')) <= (metric ? 5 : MOST_SQUARE_FEET) &&
      price === undefined
    ) {
      box = `${printed} ${square}`;
      notes.push(cartonAreaNote(box));
    }
  }
  const bareArea = carton.areas.length === 0 ? BARE_AREA.exec(plain)?.[1] : undefined;
  return {
    plain,
    ...(room === undefined ? {} : { room }),
    ...(plank !== undefined && readPlank(plank, silent).ok ? { plank } : {}),
    ...(size === undefined ? {} : { size }),
    areas: bareArea === undefined ? carton.areas.map(({ got }) => got) : [`${bareArea} ${square}`],
    ...(box === undefined ? {} : { carton: box }),
    ...(price === undefined ? {} : { price }),
    ...optional('share', SHARE.exec(plain)?.[1]),
    ...optional('boxes', BOXES.exec(plain)?.[1]),
    layout: new Map(layout.options),
    assumed: notes,
    ...optional('doubtful', doubtful[0]?.typed),
    measures,
  };
}

/** The plank of a pasted label, with the price that was said. */
function labelled(text: string, told: readonly string[]): string | undefined {
  const label = plankOfLabel(text)?.text;
  const price = told.find((part) => /[$€£]|usd|eur|gbp/.test(part));
  return label === undefined || price === undefined ? label : `${label}, ${price}`;
}

/** Two sides that could be a room's and no plank's. */
function isRoom({ typed }: { readonly typed: string }): boolean {
  const [one = 0, other = 0] = [...typed.matchAll(/\d{1,3}(?:[.,]\d{1,2})?/g)].map(([side]) =>
    Number(side.replace(',', '.')),
  );
  const [least, most] = [Math.min(one, other), Math.max(one, other)];
  return least >= 5 && most <= 60 && !(least < 10 && most >= 24);
}

function optional<Name extends string>(name: Name, value: string | undefined): { readonly [name in Name]?: string } {
  return (value === undefined ? {} : { [name]: value }) as { readonly [name in Name]?: string };
}

function priceIn(parts: readonly string[], plain: string, metric: boolean): string | undefined {
  const marked = parts.find((part) => /[$€£]|usd|eur|gbp/.test(part));
  // Money that buys nothing by itself is a price for a square foot, if it is small enough for one.
  const alone = marked === undefined ? ALONE_PRICE.exec(plain) : undefined;
  if (marked !== undefined && /per|\/|an? /.test(marked))
    return marked.replace(/ per sq ft| per square foot/, '/sq ft');
  const small = /\d+(?:[.,]\d+)?/.exec(alone?.[0] ?? marked ?? '')?.[0];
  if (small !== undefined && Number(small.replace(',', '.')) < MOST_A_SQUARE) {
    return `${(alone?.[0] ?? marked ?? '').trim()}/${metric ? 'm²' : 'sq ft'}`;
  }
  const square = BARE_SQUARE_PRICE.exec(plain);
  const mark = metric ? '€' : '$';
  if (square) return `${mark}${square[1]}/${/m/.test((square[2] ?? '').replace('sq', '')) ? 'm²' : 'sq ft'}`;
  const bare = BARE_PRICE.exec(plain)?.[1];
  return bare === undefined ? undefined : `${mark}${bare}/${metric ? 'm²' : 'sq ft'}`;
}
