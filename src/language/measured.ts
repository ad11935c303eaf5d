/** The measures in a message: rooms, planks, boxes, areas, prices, percentages, readings, each in the syntax of its option. */

import { type CartonFound, findCarton, plankOfLabel } from '../input/parse-carton.ts';
import { findLayout, type LayoutFound } from '../input/parse-layout.ts';
import { readPlank } from '../input/parse-plank.ts';
import type { Preferences, Reading } from '../input/reading.ts';
import { readRooms } from '../input/rooms/parse-room.ts';
import { pairPattern, SIDE, TIMES } from '../input/rooms/room-text.ts';
import { CLAIMED, type SentenceSheet, sentenceSheet } from '../input/trade-words.ts';
import { builtInNote, cartonAreaNote, padNote, priceNote } from '../text/reader-text.ts';
import {
  findPairs,
  findRoomCounts,
  findRoomNames,
  findShapedRooms,
  listRooms,
  type Pair,
  type PairRole,
  type RoomList,
  roleBeside,
  rolesOf,
} from './find-rooms.ts';
import { type NormalText, normalize } from './normalize.ts';

export interface Measured {
  /** The message with plain characters and corrected words. */
  readonly plain: string;
  /** Accepted by the room reader. */
  readonly room?: string;
  /** With what is in a carton; accepted by the plank reader. */
  readonly plank?: string;
  /** A plank's size without a carton. */
  readonly size?: string;
  readonly areas: readonly string[];
  /** What a box covers, as an area or as a plank with its count. */
  readonly carton?: string;
  /** Planks in a box, where no size of theirs is said: “10 per carton”. */
  readonly count?: string;
  /** A bare number a box, which counts planks where their size was said before. */
  readonly countable?: string;
  /** By area or by box. */
  readonly price?: string;
  readonly share?: string;
  readonly boxes?: string;
  readonly layout: ReadonlyMap<string, string>;
  readonly assumed: readonly string[];
  /** Set if two sizes could each be the room. */
  readonly doubtful?: string;
  readonly measures: MeasuresInText;
}

const BOXES =
  /(?<![\d.,/x$])(\d{1,4}) (?:more |full |whole |unopened )?(?:box(?:es)?|cartons?|packs?|cases?)(?![a-z])(?! ?room)/;
const SHARE =
  /(?<![\d.,])(\d{1,2}(?:[.,]\d{1,2})?) ?(?:%|percent|per cent)(?! ?(?:sales )?tax| ?(?:off|discount|cheaper|restock(?:ing)?|rebate|coupon|back)(?![a-z]))/;
/** A price without a currency: “at 2.89”, “2.89 a sq ft”, “3.19/sf”. */
const BARE_SQUARE_PRICE =
  /(?<![\d.,$€£])(\d{1,2}[.,]\d{2}) ?(?:\/|per|an?|each) ?(sq(?:uare)?\.? ?(?:ft|feet|foot|m|meters?)|sqft|sf|sqm|m2|m²|foot|ft)(?![a-z])/;
/** Trim is sold by its length. */
const OF_TRIM =
  /(?<![a-z])(?:trim|base ?boards?|mou?ldings?|quarter[- ]?round|shoe|stair|nosing|linear|lineal)(?![a-z])/;
const BARE_PRICE =
  /(?<![a-z])(?:at|for|@|costs?|priced at|is|are) (\d{1,2}[.,]\d{2})(?![\d%]| ?(?:x|by|ft|feet|in|inch|sq|m|mm|cm)(?![a-z]))/;
const BARE_AREA =
  /(?<![a-z])(?:area|total|house|floor|room|basement)(?: is| of|:)? (?:about |around |roughly )?(\d{2,5})(?![\d.,]*(?: ?(?:x|by|ft|feet|'|in|sq|m|mm|cm|box|%)))/;
const BARE_CARTON =
  /(?<![a-z])(?:box|carton|pack|case)(?:es|s)? (?:(?:(?:is|are|has|have|of) )?(?=\d{1,2}[.,]\d)|(?:is|says?|are|say) (?=(?:1[5-9]|[234]\d)(?![\d.,]*\d| ?(?:"|'|in|ft|feet|inch|planks?|boards?|pieces?|lbs?|dollars|bucks|years?|long|wide)(?![a-z])))|(?:covers?|does|do) )(\d{1,2}(?:[.,]\d{1,2})?)(?![\d.,]*\d| ?(?:x|by|mm|lb|kg|%))/;

const BOX_HOLDS = /^(?:an? |the |each |every )?(?:box|carton|pack|case)(?:es)? [a-z ]{0,20}(\d{1,2}[.,]\d{1,2})$/;
/** “44.99 each” is a box's price where boxes are what is counted. */
const EACH_PRICE = /(?<![\d.,$€£])(\d{1,3}[.,]\d{2}) ?(?:each|apiece|ea)(?![a-z])(?! (?:plank|board|piece))/;

const ALONE_PRICE = /[$€£] ?\d{1,2}(?:[.,]\d{1,2})?(?![\d.,]*\d)/;
/** Dollars: a larger price without a unit isn't per square foot. */
const MOST_A_SQUARE = 25;

const METRIC = /(?<![a-z\d.,])\d[\d.,]{0,8} ?(?:m|cm|mm|m2|m²|sqm|qm|met(?:er|re)s?)(?![a-z])|square met/;
const PIECES = /(?<![\d.,])\d{1,3} ?-?(?:planks?|boards?|pieces?|pcs|tiles?|ct|count)(?![a-z])/;
/** Only planks come by the number. */
const COMES_BY = /(?<![a-z])(?:comes?|sold|packed|go|fit)(?: in| by)? (?:\d{1,2}) |\d to an? (?:box|carton|pack|case)/;
/** Fewer square feet than this are in no box, so a whole number up to it counts planks. */
const MOST_PLANKS = 14;
const IMPERIAL = /\d ?(?:'|ft|feet|sq ft|sf|sqft|in|inch)(?![a-z])/;
/** A plain number for a box next to words about money. */
const BOX_PRICE =
  /(?:want|costs?|price[ds]?|bucks|dollars|paid?|charge|at|for|is|are|'re|was|were)(?: is| are| of| me)? \$?(\d{1,3}[.,]\d{2}) ?(?:\/|a|an|per|each|the)? ?(?:box|carton|pack|case)(?![a-z])|\$(\d{1,3}(?:[.,]\d{2})?) ?(?:\/|a|an|per) ?(?:box|carton|pack|case)(?![a-z])/;
/** No box of planks covers more. */
const MOST_SQUARE_FEET = 45;
const LONE_DECIMAL =
  /(?<![\d.,$€£@/])(\d{1,2}[.,]\d{1,2})(?![\d.,]*\d| ?(?:x|by|ft|feet|in|inch|mm|cm|m|lb|kg|%|"|')(?![a-z]))/;

const BESIDE = /(?<![a-z])(?:box(?:es)?|cartons?|packs?)(?![a-z]).{0,60} at (1[5-9]|[234]\d)(?:\.\d{1,2})?[?.!]*$/;
/** People say feet for square feet; no room is this long. */
const FEET_OF_FLOOR =
  /^(?=.*(?<![a-z])(?:floor|flooring|planks?|underlay(?:ment)?|pad(?:ding)?|boxes|cartons|laminate|vinyl|lvp)(?![a-z]))(?!.*(?<![a-z])(?:trim|base ?boards?|mou?lding|quarter|shoe|run|long|wide|gap|strip|hall)(?![a-z])).*(?:for|cover|do|lay|of) (?:about |around )?([1-9]\d{2,3}) ?(?:feet|foot|ft|')(?![a-z]|.*\d ?(?:x|by))/;
const ROLL =
  /(?<![\d.$x])(?<by>\d{2,3})[ -]?(?:sq(?:uare)? ?)?(?:foot|feet|ft|sf) rolls?(?![a-z])|(?<![a-z])rolls? ?(?:(?:of (?:pad(?:ding)?|underlay(?:ment)?)|is|are|covers?|cover|come in|comes in|do|does|has|have|of|about|at|holds?) ){1,3}(?<of>\d{2,3})(?![\d.]| ?(?:x|by|"|in|%|\$))|(?<![\d.$x])(?<per>\d{2,3}) ?(?:sq(?:uare)? ?(?:ft|feet|foot)|sqft|sf|ft|feet|m2|m²)? (?:per|a|in a|to a|an?) roll(?![a-z])/;
const FEWEST_A_ROLL = 8;

/** Carpet and other floors are sold by it. */
const SQUARE_YARDS =
  /(?<![\d.,$€£])(?:\d{1,2},\d{3}|\d{1,4})(?:\.\d{1,2})? ?(?:sq(?:uare)?\.? ?(?:yds?|yards?)|sqyds?|yd2|yd²)(?![a-z])/;
/** “24 sq ft each”, beside a word for a box. */
const EACH_COVERS =
  /(?<![\d.,$€£])(\d{1,2}(?:[.,]\d{1,3})?) ?(?:sq(?:uare)?\.? ?(?:ft|feet|foot|m|met(?:er|re)s?)|sqft|sf|sqm|m2|m²) (?:each|apiece|ea)(?![a-z])/;
const CENTS = /(?<![\d.,])(\d{2}) ?(?:cents?|c|¢)(?= ?(?:a |per |\/ ?)?(?:sq|sf|foot|ft))/gi;
/** “2.79 sqft” beside a floor of some hundred: no floor is that small, and no price is meant to be said. */
const PRICE_BY_SQUARE = /(?<![\d.,$€£])(\d[.,]\d{2}) ?(sq(?:uare)? ?(?:ft|feet|foot)|sqft|sf)(?![a-z])/gi;
const BIG_AREA = /(?<![\d.,$€£])\d{2,5} ?(?:sq(?:uare)? ?(?:ft|feet|foot)|sqft|sf)(?![a-z])/i;
const FOR_BOX = /(?<![a-z])(?:box|carton|pack|case)/i;

/** Prices people write as plain numbers, with their signs. */
function withSigns(text: string): string {
  const cents = text.replace(CENTS, (_, amount: string) => `$0.${amount}/`);
  return BIG_AREA.test(cents) && !FOR_BOX.test(cents)
    ? cents.replace(PRICE_BY_SQUARE, (_, amount: string, unit: string) => `$${amount}/${unit}`)
    : cents;
}

/** A percentage that a meter shows. */
const METERED = /(?<![a-z])(?:moisture|meter|reads?|readings?|measured|humidity|rh|now dry|is dry|dry now)(?![a-z])/;

/** Never throws. */
export function measured(text: string, preferences: Preferences): Measured {
  const notes: string[] = [];
  const signed = withSigns(text.replace(/(?<=\d) ?\* ?(?=\d)/g, ' x '));
  const clean = normalize(signed, 'about', (got, right) => `${got} → ${right}`);
  const silent: Reading = { option: 'room', preferences, note: () => undefined };
  const measures = findMeasures(clean, silent);
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
  const alone = priced === undefined ? priceIn(parts, plain, metric) : `${markIn(plain, metric)}${priced} a carton`;
  const price = alone === undefined ? undefined : withPad(alone, plain, notes);
  const marked = parts.some((part) => /[$€£]|usd|eur|gbp/.test(part));
  if (!marked && price !== undefined) notes.push(priceNote(price));
  const told = marked || price === undefined ? parts : [...parts, price];
  const read = size === undefined ? undefined : [size, ...told].join(', ');
  const stated = read !== undefined && readPlank(read, silent).ok ? read : undefined;
  // Sizes that are all rooms leave none for a plank.
  const label = rooms.given === '' || pairs(plain) > pairs(rooms.given) ? labelled(text, told) : undefined;
  const plank = stated ?? label;
  const lone = rooms.given === '' && size === undefined ? doubtful.find(isRoom)?.typed : undefined;
  const named = rooms.given === '' ? (lone ?? '') : rooms.given;
  const room = named !== '' && readRooms(named, silent).ok ? named : undefined;
  const bareBox = BARE_CARTON.exec(plain)?.[1];
  const eachCovers = EACH_COVERS.exec(plain)?.[0];
  let box: string | undefined;
  if (size !== undefined && covers !== undefined && counted) box = `${size}, ${covers}`;
  else if (covers !== undefined) {
    box = covers.replace(/ ?(?:per carton|a box|per box|a carton)$/, '');
    // “A box has 18.9”: no count has decimals.
    const decimal = BOX_HOLDS.exec(box)?.[1];
    if (decimal !== undefined) box = decimal;
    // “24 a box” without a plank's size is what a box covers; “10 planks a box” says nothing of that.
    if (counted && (PIECES.test(plain) || COMES_BY.test(plain) || Number.parseInt(box, 10) <= MOST_PLANKS))
      box = undefined;
    else if (/^\d+(?:[.,]\d+)?$/.test(box)) {
      box = `${box} ${square}`;
      notes.push(cartonAreaNote(box));
    }
  } else if (bareBox !== undefined) box = `${bareBox} ${square}`;
  else if (eachCovers !== undefined && /(?<![a-z])(?:box(?:es)?|cartons?|packs?|cases?)(?![a-z])/.test(plain))
    box = eachCovers.replace(/ (?:each|apiece|ea)$/, '');
  else {
    // A lone decimal next to a floor is what is printed on a box.
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
  const count = counted && size === undefined && box === undefined ? covers : undefined;
  // Underlayment comes by the roll.
  const roll = ROLL.exec(plain)?.groups;
  const rolled = roll?.of ?? roll?.per ?? roll?.by;
  if (rolled !== undefined && Number(rolled) >= FEWEST_A_ROLL) box = `${rolled} ${square} a roll`;
  // “Boxes for 10x12 at 20”: nothing else of a floor is about twenty.
  const beside = box === undefined && named !== '' && price === undefined ? BESIDE.exec(plain)?.[1] : undefined;
  if (beside !== undefined) {
    box = `${beside} ${square}`;
    notes.push(cartonAreaNote(box));
  }
  const yards = SQUARE_YARDS.exec(plain)?.[0];
  const bareArea =
    carton.areas.length > 0 || named !== ''
      ? undefined
      : (BARE_AREA.exec(plain)?.[1] ?? FEET_OF_FLOOR.exec(plain)?.[1]);
  return {
    plain,
    ...(room === undefined ? {} : { room }),
    ...(plank !== undefined && readPlank(plank, silent).ok ? { plank } : {}),
    ...(size === undefined ? {} : { size }),
    areas:
      bareArea === undefined
        ? [
            ...(yards === undefined ? [] : [yards]),
            ...carton.areas
              .map(({ got }) => got)
              .filter((got) => (rolled === undefined || !got.startsWith(rolled)) && got !== box),
          ]
        : [`${bareArea} ${square}`],
    ...(box === undefined ? {} : { carton: box }),
    ...optional('count', count),
    ...optional('countable', counted && size === undefined ? covers : undefined),
    ...(price === undefined ? {} : { price }),
    ...optional('share', METERED.test(plain) ? undefined : SHARE.exec(plain)?.[1]),
    ...optional('boxes', BOXES.exec(plain)?.[1]),
    layout: new Map(layout.options),
    assumed: [...notes, ...rooms.builtIns.map(builtInNote)],
    ...optional('doubtful', doubtful[0]?.typed),
    measures,
  };
}

function pairs(text: string): number {
  return [...text.matchAll(pairPattern())].length;
}

/** The plank of a pasted label, with the price if there is one. */
function labelled(text: string, told: readonly string[]): string | undefined {
  const label = plankOfLabel(text)?.text;
  const price = told.find((part) => /[$€£]|usd|eur|gbp/.test(part));
  return label === undefined || price === undefined ? label : `${label}, ${price}`;
}

/** Two sides too large for a plank. */
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

function markIn(plain: string, metric: boolean): string {
  if (/(?<![a-z])(?:quid|gbp|sterling)(?![a-z])/.test(plain)) return '£';
  return metric ? '€' : '$';
}

const PAD = '(?:underlay(?:ment)?|pad(?:ding)?|foam)';
const SQUARE_UNIT = '(?:sq(?:uare)? ?(?:ft|feet|foot)|sqft|sf|foot|ft)';
const PAD_PRICE = new RegExp(
  `(?<![a-z])${PAD}(?:,? (?:is|at|for|costs?|runs?|adds?|another|about)){0,3} ?\\$?(?<behind>\\d\\.\\d{2}) ?(?:\\/|a|per)? ?${SQUARE_UNIT}|` +
    `\\$ ?(?<ahead>\\d\\.\\d{2}) ?(?:\\/|a|per)? ?${SQUARE_UNIT} (?:for )?(?:the |an? )?${PAD}`,
);
const SQUARE_PRICE = /^([$€£]) ?(\d{1,2}(?:[.,]\d{1,2})?) ?(?:\/|per) ?(?:sq ft|sqft|sf)$/;

/** The plank's price with the pad's beside it: both cover the floor. */
function withPad(price: string, plain: string, notes: string[]): string {
  const { behind, ahead } = PAD_PRICE.exec(plain)?.groups ?? {};
  const pad = behind ?? ahead;
  const [, mark, amount] = SQUARE_PRICE.exec(price) ?? [];
  if (pad === undefined || amount === undefined || Number(amount) === Number(pad)) return price;
  notes.push(padNote(`${mark}${amount}`, `${mark}${pad}`));
  return `${mark}${(Number(amount) + Number(pad)).toFixed(2)}/sq ft`;
}

function priceIn(parts: readonly string[], plain: string, metric: boolean): string | undefined {
  const marked = parts.find((part) => /[$€£]|usd|eur|gbp/.test(part));
  // An amount by itself is a price per square foot if it is small enough.
  const alone = marked === undefined ? ALONE_PRICE.exec(plain) : undefined;
  if (marked !== undefined && /per|\/|an? /.test(marked))
    return marked.replace(/ per sq ft| per square foot/, '/sq ft');
  const small = /\d+(?:[.,]\d+)?/.exec(alone?.[0] ?? marked ?? '')?.[0];
  if (small !== undefined && Number(small.replace(',', '.')) < MOST_A_SQUARE) {
    return `${(alone?.[0] ?? marked ?? '').trim()}/${metric ? 'm²' : 'sq ft'}`;
  }
  const square = OF_TRIM.test(plain) ? null : BARE_SQUARE_PRICE.exec(plain);
  const mark = markIn(plain, metric);
  const each = EACH_PRICE.exec(plain)?.[1];
  if (each !== undefined && /(?<![a-z])(?:box|carton|pack|case)/.test(plain)) return `${mark}${each} a carton`;
  if (square) return `${mark}${square[1]}/${/m/.test((square[2] ?? '').replace('sq', '')) ? 'm²' : 'sq ft'}`;
  const bare = BARE_PRICE.exec(plain.replace(BARE_CARTON, ' '))?.[1];
  return bare === undefined ? undefined : `${mark}${bare}/${metric ? 'm²' : 'sq ft'}`;
}

/** What a box covers, said beside a room without the word: “boxes for 12x10 at 20 sq ft”. */
export function boxBeside({ room, areas, plain }: Measured): string | undefined {
  const [only] = areas;
  if (room === undefined || only === undefined || areas.length > 1 || !/(?<![a-z])(?:box|pack|carton)/.test(plain))
    return undefined;
  const figure = Number.parseFloat(only.replace(',', '.'));
  const at = plain.indexOf(only);
  return at > 0 && /(?:at|of|with|,|@) ?$/.test(plain.slice(0, at)) && figure < MOST_SQUARE_FEET ? only : undefined;
}

export interface MeasuresInText {
  readonly layout: LayoutFound;
  readonly carton: CartonFound;
  readonly leftover: LeftoverWords;
  readonly rooms: RoomList;
  readonly roomPairs: readonly Pair[];
  readonly planks: readonly (Pair & { readonly bySize: boolean })[];
  /** Pairs of which it is not plain what they are the size of. */
  readonly doubtful: readonly Pair[];
  /** Pairs that are the size of some thing. */
  readonly things: readonly Pair[];
  /** Whether a word for a room stands by the sides of one. */
  readonly named: boolean;
  /** Whether a room is named at all. */
  readonly mentioned: boolean;
  /** Two rooms' sides with “or” between them. */
  readonly either: boolean;
  /** What nobody claimed, every place where it was. */
  readonly rest: string;
}

const WALK = new RegExp(
  `(?<![a-z\\d])walk(?: (?:a?round|the|walls?|room)){0,4} ?[:=]?(?:(?:turn |then |and |,| )*(?:${SIDE}(?!${TIMES}\\d)|right|left|[rl])(?![a-z])){3,}`,
);

/** The measures of a sentence. Never throws. */
export function findMeasures({ text, plain }: NormalText, silent: Reading): MeasuresInText {
  const sheet = sentenceSheet(plain);
  const shaped = findShapedRooms(sheet, text, silent);
  const layout = findLayout(sheet);
  const leftover = findUnused(sheet);
  const walks = sheet
    .claimAll(WALK)
    .map(({ index, to }): Pair => ({ from: index, to, typed: text.slice(index, to).trim(), kind: 'room' }));
  const pairs = [...shaped, ...walks, ...findPairs(sheet, text, silent)].sort((one, other) => one.from - other.from);
  const carton = findCarton(sheet);
  const counts = findRoomCounts(sheet);
  const said = rolesBeside(pairs, sheet, plain);
  const open = pairs.filter((_, i) => said[i] === undefined || said[i] === 'doubt');
  const sized = open.filter(({ kind }) => kind !== 'plank');
  const nameable = sized.length > 0 || carton.carton || said.includes('plank') ? sized : open;
  const { mentions, given } = findRoomNames(nameable, sheet, text);
  const named = pairs.map((pair) => given[nameable.indexOf(pair)] !== undefined);
  const roles = rolesOf(pairs, said, named, carton.carton);
  const of = (role: PairRole) => pairs.filter((_, i) => roles[i] === role);
  const roomPairs = of('room');
  const rest = sheet.rest();
  const names = roomPairs.map((pair) => given[nameable.indexOf(pair)]);
  return {
    layout,
    carton,
    leftover,
    rooms: listRooms(roomPairs, names, counts, mentions, rest),
    roomPairs,
    planks: of('plank').map((pair) => ({ ...pair, bySize: said[pairs.indexOf(pair)] !== 'plank' })),
    doubtful: of('doubt'),
    things: of('thing'),
    named: names.some((name) => name !== undefined),
    mentioned: mentions.length > 0,
    either: roomPairs.some(
      (pair, i) => i > 0 && /(?<![a-z])(?:or|oder)(?![a-z])/.test(rest.slice(roomPairs[i - 1]?.to, pair.from)),
    ),
    rest,
  };
}

/** What the words beside each pair say that it is, none reaching across another measure. */
function rolesBeside(pairs: readonly Pair[], sheet: SentenceSheet, plain: string): (PairRole | undefined)[] {
  const rest = sheet.rest();
  return pairs.map((pair, i) => {
    const before =
      rest
        .slice(pairs[i - 1]?.to ?? 0, pair.from)
        .split(CLAIMED)
        .at(-1) ?? '';
    const after = rest.slice(pair.to, pairs[i + 1]?.from ?? plain.length).split(/[\u2588,;.\n?!]/)[0] ?? '';
    return roleBeside(pair, { before, after });
  });
}

export interface LeftoverWords {
  /** Figures that tell nothing of a floor by what stands beside them: years, times, heights, doors. */
  readonly unused: readonly string[];
  readonly doors: readonly string[];
}

const NUMBER = '\\d+(?:[.,]\\d+)*';
const UNUSED = [
  `(?<![\\w.,/])(?:(?:built|house|home|from|since|in|circa|year) (?:in |from |of )?)(?:18|19|20)\\d\\d(?![\\w.,/]*\\d)s?`,
  '(?<![\\w.,/])(?:18|19|20)\\d\\ds(?![a-z])',
  `(?<![\\w.,/])\\d+(?:st|nd|rd|th)(?![a-z])(?: floor)?`,
  `(?<![\\w.,/])${NUMBER}[ -]?(?:am|pm|o'clock|hours?|hrs?|days?|weeks?|wks?|months?|years?|yrs?|minutes?|mins?|degrees|people|guys|kids|dogs|cats|videos?|times|stories|miles|lbs?|pounds|kg|[a-z]+ old)(?![a-z])(?: old)?`,
  `(?<![\\w.,/])${NUMBER} ?-? ?mils?(?![a-z])(?: wear ?-?layer)?`,
].map((source) => new RegExp(source));
const HEIGHTS = [
  `(?: ?(?:x|by) ?)(?:${SIDE}) ?-?(?:high|tall|height|ceilings?|walls)(?![a-z])(?: ceilings?)?`,
  `(?<![\\w.,/])(?:${SIDE})[ -]?(?:high |tall )?(?:ceilings?|high|tall)(?![a-z])(?: ceilings?)?`,
  `(?:ceilings?|height)(?: (?:height|is|are|at|of|:|=))* ?(?:${SIDE})`,
].map((source) => new RegExp(source));
const DOORS = [
  new RegExp(
    `(?<![\\w.,/])(?:(?<n>[2-9]|1|an?) )?(?:doors?|doorways?)(?: ?(?:is|are|of|at|:|=|each))* (?<size>${SIDE})(?!${TIMES}\\d)(?: wide| each)*`,
  ),
  /(?<![\w.,/])(?<n>[2-9]|1|an?) (?:doors?|doorways?)(?![a-z])/,
  new RegExp(
    `(?<![\\w.,/])(?:(?<n>[2-9]|1|an?) )?(?<size>${SIDE})[ -]?(?:wide )?(?:doors?|doorways?|door openings?)(?![a-z])`,
  ),
];

/** Claims what has figures and tells nothing of a floor. */
export function findUnused(sheet: SentenceSheet): LeftoverWords {
  const doors = DOORS.flatMap((pattern) => sheet.claimAll(pattern)).map(({ groups, 0: got }) => {
    const n = Number(groups?.n) || 1;
    return groups?.size === undefined ? got.trim() : `${n} x ${groups.size.trim()}`;
  });
  const unused = [...HEIGHTS, ...UNUSED]
    .flatMap((pattern) => sheet.claimAll(pattern))
    .map(({ 0: got }) => got.replace(/^ ?(?:x|by) /, '').trim());
  return { unused, doors };
}

const BENIGN =
  /(?<![a-z])(?:not sure (?:how|what|if i have enough|which)[a-z ]*|(?:do|does|did|can|could|has|have|is|was|would)(?:n't|nt| not) (?:know|figure|tell|find|understand|get|matter|want to mess|remember)[a-z ]*|no idea|why not|whether or not|if not|isn't it|can't wait|without (?:any )?(?:trim|baseboards?|underlay(?:ment)?|waste)|not bad|or so|or (?:something|whatever)|more or less|box(?:es)? or|how many or|if i'm not mistaken)(?![a-z])/g;
/** Words that leave something out, halve it or offer two choices. */
const TURNS =
  /(?<![a-z])(?:not|[a-z]+n't|except(?: for)?|excluding|excl|apart from|other than|instead(?: of)?|only half|half (?:of |the |my )+[a-z ]*|without|minus|less|part of the|nicht|ohne|außer|plus half|twice|double|another|same size|again)(?![a-z])(?: [a-z]+){0,3}/;

/** A corner left out by its sides is no doubt. */
const CORNER = /(?<![a-z])(?:minus|less|without) ?(?:an? |the )?(?=\u2588)/g;

function blank(found: string): string {
  return ' '.repeat(found.length);
}

/** The first words left that turn a meaning round, undefined when there are none. */
export function turnIn(rest: string): string | undefined {
  return TURNS.exec(rest.replace(BENIGN, blank).replace(CORNER, blank))?.[0].trim();
}

/** The first figure that nobody claimed, with the words round it. */
export function figureIn(
  rest: string,
): { readonly at: number; readonly got: string; readonly side: boolean } | undefined {
  const found =
    /(?<![\p{L}$€£])[\p{L}$€£]*[\d½¼¾⅛⅜⅝⅞⅓⅔][^\s\u2588;,]*(?: ?(?:ft|feet|foot|in|inch|inches|m|cm|mm|yards?)(?![a-z]))?/u.exec(
      rest,
    );
  if (!found) return undefined;
  const got = found[0].replace(/(?<![?.!:)])[?.!:)]+$/, '');
  return { at: found.index, got, side: new RegExp(`^(?:${SIDE})$`).test(got) };
}
