/** From an intent and what was measured to the options of a command, or the one question that is open. */

import { readTape } from '../input/parse-tape.ts';
import type { Preferences } from '../input/reading.ts';
import { ASK_FOR, READER } from '../text/reader-text.ts';
import type { Measured } from './measured.ts';
import { tapeSaid } from './old/tape-said.ts';

/** A request as far as the message makes one. */
export interface SentenceFrame {
  readonly command: string;
  readonly optionTexts: ReadonlyMap<string, string>;
  /** What has to be known first: the option, and the question for it. */
  readonly missing?: { readonly option: string; readonly question: string };
  readonly assumed?: readonly string[];
}

/** The frame of a command for a message; undefined where a sentence says nothing to that command. */
export function sentenceFrame(command: string, given: Measured, preferences: Preferences): SentenceFrame | undefined {
  const builder = BUILDERS[command];
  if (builder) return builder(given, preferences);
  return SAFE_ALONE.has(command) ? { command, optionTexts: new Map() } : undefined;
}

/** Shown without any option, and changing nothing. */
const SAFE_ALONE: ReadonlySet<string> = new Set([
  'help',
  'sources',
  'safety',
  'project show',
  'project shopping',
  'project progress',
  'project list',
  'project measure',
  'project spend',
  'project share',
  'project handoff',
  'project mydata',
]);

type Builder = (given: Measured, preferences: Preferences) => SentenceFrame | undefined;

function texts(entries: readonly (readonly [string, string | undefined])[]): ReadonlyMap<string, string> {
  return new Map(entries.flatMap(([name, value]) => (value === undefined ? [] : [[name, value] as const])));
}

function lacking(command: string, optionTexts: ReadonlyMap<string, string>, option: string): SentenceFrame {
  return { command, optionTexts, missing: { option, question: ASK_FOR[option] ?? ASK_FOR.room ?? '' } };
}

/** What floor is meant: rooms, or an area. */
function floorOf({ room, areas }: Measured): string | undefined {
  return room ?? areas[0];
}

function planks(given: Measured): SentenceFrame {
  const { room, plank, size, layout } = given;
  const optionTexts = texts([['room', room], ['plank', plank], ...layout]);
  if (room !== undefined && plank !== undefined)
    return { command: 'floor planks', optionTexts, assumed: given.assumed };
  if (size !== undefined && room !== undefined)
    return lacking('floor planks', texts([['room', room], ['plank', size], ...layout]), 'box');
  if (floorOf(given) !== undefined) return estimate(given);
  if (plank !== undefined) return lacking('floor planks', optionTexts, 'room');
  return lacking('floor planks', optionTexts, 'room');
}

function estimate(given: Measured): SentenceFrame {
  const { share, price, carton, assumed, room, plank } = given;
  if (room !== undefined && plank !== undefined && share === undefined) return planks(given);
  const optionTexts = texts([
    ['area', floorOf(given)],
    ['box', carton],
    ['price', price],
    ['extra', share === undefined ? undefined : `${share} %`],
  ]);
  if (floorOf(given) === undefined) return lacking('floor estimate', optionTexts, 'area');
  return { command: 'floor estimate', optionTexts, assumed };
}

const ORDER =
  /(?:says?|told me|recommend(?:s|ed)?|order(?:ed)?|suggest(?:s|ed)?|quoted?)(?: \w+){0,4}? (\d{2,5})(?![\d.,]* ?(?:x|by|%|ft|in\b))/;

/** An area that was bought or is to be ordered, and no floor. */
const BOUGHT =
  /(?:bought|buy(?:ing)?|ordered|order|get|got|says?|have) (?:about |only |around )?(\d[\d.,]{0,8} ?(?:sq(?:uare)?\.? ?(?:ft|feet|m)|sqft|sf|m2|m²))(?! (?:to cover|of floor|house|room|home))/;

function enough(given: Measured): SentenceFrame {
  const { room, areas, boxes, carton, assumed, plain } = given;
  const bought = BOUGHT.exec(plain)?.[1];
  const others = areas.filter((area) => area !== bought);
  const said = ORDER.exec(plain)?.[1];
  const floor = room ?? others[0];
  const area = bought ?? (room === undefined ? others[1] : others[0]);
  const have = boxes === undefined ? (area ?? (said === undefined ? undefined : `${said} sq ft`)) : `${boxes} boxes`;
  const optionTexts = texts([
    ['area', floor],
    ['have', have],
    ['box', carton],
  ]);
  // A floor and what a box covers, and nothing that was bought: the boxes are asked for.
  if (have === undefined && floor !== undefined && carton !== undefined) return estimate(given);
  if (floor === undefined && bought !== undefined && carton !== undefined && boxes === undefined) {
    return estimate({ ...given, areas: [bought] });
  }
  if (floor === undefined) return lacking('floor enough', optionTexts, 'area');
  if (have === undefined) return lacking('floor enough', optionTexts, 'have');
  if (boxes !== undefined && carton === undefined) return lacking('floor enough', optionTexts, 'box');
  return { command: 'floor enough', optionTexts, assumed };
}

const NEEDS_PLANK = ['floor layout', 'floor guides', 'floor resume', 'floor compare'] as const;

const ANY_COUNT = 10;

function laid(command: (typeof NEEDS_PLANK)[number]): Builder {
  return ({ room, plank: whole, size, layout, plain }) => {
    // Rows don't depend on what a box holds.
    const free = whole === undefined && size !== undefined && command === 'floor layout';
    const plank = free ? `${size}, ${ANY_COUNT} per carton` : whole;
    const plankOption = command === 'floor compare' ? 'planks' : 'plank';
    const soFar = command === 'floor resume' ? plain : undefined;
    const optionTexts = texts([['room', room], [plankOption, plank], ['so-far', soFar], ...layout]);
    if (room === undefined) return lacking(command, optionTexts, 'room');
    if (plank === undefined || command === 'floor compare') return lacking(command, optionTexts, plankOption);
    return { command, optionTexts, ...(free ? { assumed: [READER.anyCount(ANY_COUNT)] } : {}) };
  };
}

function roomed(
  command: string,
  more: (given: Measured) => readonly (readonly [string, string | undefined])[] = () => [],
): Builder {
  return (given) => {
    const optionTexts = texts([['room', given.room], ...more(given)]);
    return given.room === undefined ? lacking(command, optionTexts, 'room') : { command, optionTexts };
  };
}

const YEAR = /(?<![\d$€£.,])(?:1[89]\d\d|20[0-3]\d)(?![\d.,]*\d| ?(?:sq|ft|lb|x|%))/;
const OLD_FLOOR =
  /(?<![a-z])(?:carpet|lino(?:leum)?|laminate|(?:ceramic |asphalt )?tiles?|vinyl (?:plank|tiles?)|(?:sheet )?vinyl)(?![a-z])/;

const built = ({ plain }: Measured): readonly (readonly [string, string | undefined])[] => [
  ['built', YEAR.exec(plain)?.[0]],
  ['floor', OLD_FLOOR.exec(plain)?.[0]],
];

/** Sticks of trim that were named: eight feet and sixteen, and no side of a room. */
const STICKS = /(?<![\d.,])(\d{1,2})[ -]?(?:ft|foot|feet|'|footers?)(?![a-z])/g;

const stock = ({ measures: { rest } }: Measured): readonly (readonly [string, string | undefined])[] => {
  if (!/sticks?|lengths?|pieces?|footers?|boards?/.test(rest)) return [];
  const feet = [...rest.matchAll(STICKS)].flatMap(([, figure]) => figure ?? []);
  const usual = [...new Set(feet)].filter((figure) => Number(figure) >= 6 && Number(figure) <= 20);
  return [['stock', usual.length > 0 ? usual.map((figure) => `${figure} ft`).join('; ') : undefined]];
};

const doors = ({ measures }: Measured): readonly (readonly [string, string | undefined])[] => [
  ['doors', measures.leftover.doors.join(', ') || undefined],
];

const DOORWAY =
  /(\d{2,3}) ?(?:"|in(?:ch(?:es)?)?)?(?: wide)?(?: \w+){0,3}? to (?:a |the )?(tile|carpet|wood|hardwood|concrete|vinyl|laminate)/;
const STEPS = /(?<![\d.,])(\d{1,2}) (?:steps?|stairs|treads?|risers?)(?![a-z])/;
const WIDE = /(\d{2,3}) ?(?:"|in(?:ch(?:es)?)?)(?: wide)?/;

const edges: Builder = ({ plain }) => {
  const [, width, beyond] = DOORWAY.exec(plain) ?? [];
  const steps = STEPS.exec(plain)?.[1];
  const across = WIDE.exec(plain)?.[1];
  const optionTexts = texts([
    ['doorways', width === undefined ? undefined : `${width} in to ${beyond === 'hardwood' ? 'wood' : beyond}`],
    ['stairs', steps === undefined || across === undefined ? undefined : `${steps} x ${across} in`],
  ]);
  return optionTexts.size === 0
    ? lacking('trim edges', optionTexts, 'doorways')
    : { command: 'trim edges', optionTexts };
};

const OVER =
  /(?<![\d.,/-])(\d{1,3}(?:[ -]\d{1,2}\/\d{1,2}|\/\d{1,2}|[.,]\d{1,3})? ?(?:"|in(?:ch(?:es)?)?|mm|cm)) ?(?:deep |low |high |dip |gap |out )?(?:over|in|across|per|within) (?:a |an |about )?(\d{1,3}(?:[.,]\d{1,3})? ?(?:'|ft|feet|foot|m|meters?|metres?))(?![a-z])/;

const level: Builder = ({ plain, room }) => {
  const [, gap, over] = OVER.exec(plain) ?? [];
  const floor = /concrete|slab/.test(plain)
    ? 'concrete'
    : /plywood|osb|wood|subfloor|joist/.test(plain)
      ? 'wood'
      : undefined;
  const optionTexts = texts([
    ['readings', gap === undefined ? undefined : `${gap} over ${over}`],
    ['area', room],
    ['floor', floor],
  ]);
  return gap === undefined ? lacking('prep level', optionTexts, 'readings') : { command: 'prep level', optionTexts };
};

const SPACED = /(?<![\d.,])(12|16|19\.2|24) ?(?:"|in(?:ch(?:es)?)?)?(?: o\.?c\.?| on center| apart| centers| spacing)/;

const squeaks: Builder = ({ plain, room }) => {
  const spacing = SPACED.exec(plain)?.[1];
  const optionTexts = texts([
    ['area', room],
    ['spacing', spacing === undefined ? undefined : `${spacing} in`],
  ]);
  return room === undefined
    ? lacking('prep squeaks', optionTexts, 'squeaks')
    : { command: 'prep squeaks', optionTexts };
};

const MOISTURE = [
  ['wood', /(?<![\d.,])(\d{1,2}(?:[.,]\d)?) ?(?:%|percent)(?! ?(?:rh|humidity|relative))/g],
  ['rh', /(?:rh|humidity)(?: of| is| at| reads)? (\d{2,3})(?![\d.,]*\d)/g],
  ['rh', /(?<![\d.,])(\d{2,3}) ?(?:%|percent)? ?(?:rh|relative humidity|humidity)/g],
  ['chloride', /(?<![\d.,])(\d{1,2}(?:[.,]\d)?) ?(?:lbs?|pounds?)(?![a-z])/g],
] as const;

const moisture: Builder = ({ plain }) => {
  const concrete = /concrete|slab|basement/.test(plain);
  for (const [method, pattern] of MOISTURE) {
    if (method === 'wood' && (concrete || /(?:rh|humidity)/.test(plain))) continue;
    const readings = [...plain.matchAll(pattern)].flatMap(([, figure]) => figure ?? []);
    if (readings.length === 0) continue;
    const optionTexts = texts([
      ['readings', readings.join(' ')],
      ['method', method],
      ['floor', method === 'wood' ? 'wood' : 'concrete'],
    ]);
    return { command: 'prep moisture', optionTexts };
  }
  return lacking('prep moisture', new Map(), 'moisture');
};

const WEIGHT = /(?<![\d.,])(\d{1,2},\d{3}|\d{1,5}(?:[.,]\d)?) ?(lbs?|pounds?|kg|kilos?)(?![a-z])/;
/** More than this is a delivery, and no box. */
const HEAVIEST_BOX = 150;

const lift: Builder = ({ plain }) => {
  const [, figure, unit] = WEIGHT.exec(plain) ?? [];
  if (figure === undefined) return lacking('prep lift', new Map(), 'weight');
  const weight = `${figure.replace(/,(?=\d{3})/, '')} ${/^k/.test(unit ?? '') ? 'kg' : 'lb'}`;
  const command = Number.parseFloat(weight) > HEAVIEST_BOX ? 'prep carry' : 'prep lift';
  return { command, optionTexts: new Map([['weight', weight]]) };
};

const CONVERTED =
  /(?<![\d.,])(\d{1,5}(?:[.,]\d{1,3})? ?(?:(?:mm|cm|m|in|ft|inch|inches|feet)(?![a-z])|"|')) ?(?:=|to|into|in|as|is)? ?(?:\?|what|how many|how much)? ?(?:in )?(mm|cm|m|inch(?:es)?|in|feet|ft)(?![a-z])/;
const SUM_ALONE = /(?<![\d.,/])\d[\d ./'"]{0,12} ?(?:[x*+-] ?\d[\d ./'"]{0,12}){1,6}/;

const tape: Builder = ({ plain, room }, preferences) => {
  const said = tapeSaid(plain, preferences);
  if (said && !said.problem) return { command: 'tape', optionTexts: new Map([['sum', said.sum]]) };
  const turned = CONVERTED.exec(plain);
  const sum = turned ? `${turned[1]} in ${turned[2]}` : SUM_ALONE.exec(plain)?.[0];
  const silent = { option: 'sum', preferences, note: () => undefined };
  if (sum !== undefined && readTape(sum, silent, preferences.units === 'metric' ? 'mm' : 'in').ok) {
    return { command: 'tape', optionTexts: new Map([['sum', sum.trim()]]) };
  }
  return room === undefined
    ? lacking('tape', new Map(), 'sum')
    : { command: 'floor area', optionTexts: new Map([['room', room]]) };
};

const BUILDERS: Readonly<Record<string, Builder>> = {
  'floor planks': planks,
  'floor estimate': estimate,
  'floor enough': enough,
  'floor area': (given) => {
    if (given.room !== undefined) return { command: 'floor area', optionTexts: new Map([['room', given.room]]) };
    return given.areas.length > 0 ? estimate(given) : lacking('floor area', new Map(), 'room');
  },
  ...Object.fromEntries(NEEDS_PLANK.map((command) => [command, laid(command)])),
  'trim list': roomed('trim list', (given) => [...doors(given), ...stock(given)]),
  'trim reset': roomed('trim reset', doors),
  'trim finish': roomed('trim finish', doors),
  'trim edges': edges,
  'prep tearout': roomed('prep tearout', built),
  'prep plan': roomed('prep plan', built),
  'prep squeaks': squeaks,
  'prep level': level,
  'prep moisture': moisture,
  'prep lift': lift,
  'prep carry': lift,
  'prep patch': () => lacking('prep patch', new Map(), 'damage'),
  tape,
};
