/** From an intent and its measures to a command's options, or the one question that is open. */

import { unitIn } from '../input/parse-length.ts';
import { readPlank } from '../input/parse-plank.ts';
import { PRICE_SQUARE_FOOT, SQUARE_METRE } from '../input/parse-plank-price.ts';
import { FIGURE, FIGURE_START, markOf } from '../input/parse-price.ts';
import { stockInSentence } from '../input/parse-stock.ts';
import { readTape, sumInSentence } from '../input/parse-tape.ts';
import type { Preferences, Read, Reading } from '../input/reading.ts';
import { readRooms } from '../input/rooms/parse-room.ts';
import { FIGURE_WORDS, laterTopic, TASK_WORDS } from '../input/trade-words.ts';
import {
  areaNote,
  builtInNote,
  laterNote,
  layoutUnknown,
  plankByNoWord,
  plankNotGiven,
  plankRole,
  plankTwice,
  plankUnit,
  repeatedNote,
  roomCounts,
  roomEither,
  roomNotGiven,
  roomRole,
  roomTurned,
  roomUnsized,
  unplacedFigure,
  unusedNote,
  wasteNote,
} from '../text/language-text.ts';
import { priceMark } from '../text/plank-problems-text.ts';
import { ASK_FOR, READER } from '../text/reader-text.ts';
import { areaAlone, oneSide } from '../text/room-problems-text.ts';
import { TICKS_PER_INCH } from '../units/length.ts';
import { meterReadings, SAYS_ROWS, trimRun } from './counted.ts';
import { boxBeside, figureIn, type Measured, type MeasuresInText, turnIn } from './measured.ts';

/** A request as far as the message goes. */
export interface SentenceFrame {
  readonly command: string;
  readonly optionTexts: ReadonlyMap<string, string>;
  /** The option to ask for first, and the question. */
  readonly missing?: { readonly option: string; readonly question: string };
  readonly assumed?: readonly string[];
}

/** The frame of a command for a message; undefined if the message has nothing for that command. */
export function sentenceFrame(command: string, given: Measured, preferences: Preferences): SentenceFrame | undefined {
  const builder = BUILDERS[command];
  if (builder) return builder(given, preferences);
  return SAFE_ALONE.has(command) ? { command, optionTexts: new Map() } : undefined;
}

/** Needs no options and changes nothing. */
const SAFE_ALONE: ReadonlySet<string> = new Set([
  'help',
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

/** Rooms, or else an area. */
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
  const { share, price, assumed, room, plank } = given;
  const carton = given.carton ?? boxBeside(given);
  if (room !== undefined && plank !== undefined && share === undefined) return planks(given);
  const diagonal = given.layout.get('direction') === 'diagonal' ? READER.diagonalExtra : undefined;
  const optionTexts = texts([
    ['area', floorOf(given)],
    ['box', carton],
    ['price', price],
    ['extra', share === undefined ? diagonal : `${share} %`],
  ]);
  if (floorOf(given) === undefined) return lacking('floor estimate', optionTexts, 'area');
  return { command: 'floor estimate', optionTexts, assumed };
}

const ORDER =
  /(?:says?|told me|recommend(?:s|ed)?|order(?:ed)?|suggest(?:s|ed)?|quoted?)(?: \w+){0,4}? (\d{2,5})(?![\d.,]* ?(?:x|by|%|ft|in\b))/;

/** Something bought or about to be ordered. */
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
  // With a floor and a box's coverage but nothing bought, they want to know the number of boxes.
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
    // Rows don't depend on what is in a box.
    const free = whole === undefined && size !== undefined && command === 'floor layout';
    const plank = free ? `${size}, ${ANY_COUNT} per carton` : whole;
    const plankOption = command === 'floor compare' ? 'planks' : 'plank';
    const soFar = command === 'floor resume' && SAYS_ROWS.test(plain) ? plain : undefined;
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
    if (given.room === undefined) return lacking(command, optionTexts, 'room');
    const usual = optionTexts.get('doors')?.includes(READER.usualDoor) && !given.plain.includes('32');
    return { command, optionTexts, ...(usual ? { assumed: [READER.doorsTaken] } : {}) };
  };
}

const YEAR = /(?<![\d$€£.,])(?:1[89]\d\d|20[0-3]\d)(?![\d.,]*\d| ?(?:sq|ft|lb|x|%))/;
const OLD_FLOOR =
  /(?<![a-z])(?:carpet|lino(?:leum)?|laminate|(?:ceramic |asphalt )?tiles?|vinyl (?:plank|tiles?)|(?:sheet )?vinyl)(?![a-z])/;

const built = ({ plain }: Measured): readonly (readonly [string, string | undefined])[] => [
  ['built', YEAR.exec(plain)?.[0]],
  ['floor', OLD_FLOOR.exec(plain)?.[0]],
];

const stock = ({ plain }: Measured): readonly (readonly [string, string | undefined])[] => [
  ['stock', stockInSentence(plain)],
];

/** Every wall of a room, or else the length in all. */
const trimList: Builder = (given) => {
  const run = given.room === undefined ? trimRun(given.plain) : undefined;
  if (run !== undefined) {
    const sticks = stock(given).filter(([, sizes]) => sizes !== run);
    return { command: 'trim run', optionTexts: texts([['run', run], ...sticks]) };
  }
  const optionTexts = texts([['room', given.room], ...doors(given), ...stock(given)]);
  return given.room === undefined ? lacking('trim list', optionTexts, 'room') : { command: 'trim list', optionTexts };
};

const doors = ({ plain, measures }: Measured): readonly (readonly [string, string | undefined])[] => [
  ['doors', doorsIn(measures.leftover.doors, plain)],
];

/** Behind the count of the doors: “2 doors, 30 inch”. */
const DOOR_WIDTH =
  /doors?(?:ways?)?,? (?:(?:is|are|of|at|each|all) ){0,2}(\d{2,3}(?:[.,]\d{1,2})?) ?("|in(?:ch(?:es)?)?|mm|cm)?(?![a-z\d])/;
const DOORS_ALONE = /^\d{1,2} doors?$/;

/** The doors of a sentence; of some that are only counted, the width is what it says behind them, or the usual one. */
export function doorsIn(doors: readonly string[], plain: string): string | undefined {
  const [, width, unit = 'in'] = DOOR_WIDTH.exec(plain) ?? [];
  const sized = doors.map((door) =>
    DOORS_ALONE.test(door) ? `${door} ${width === undefined ? READER.usualDoor : `${width} ${unit}`}` : door,
  );
  return sized.join(', ') || undefined;
}

const DOORWAY =
  /(\d{2,3}) ?(?:"|in(?:ch(?:es)?)?)?(?: wide)?(?: \w+){0,3}? to (?:a |the )?(tile|carpet|wood|hardwood|concrete|vinyl|laminate)/;
const STEPS = /(?<![\d.,])(\d{1,2}) (?:steps?|stairs|treads?|risers?)(?![a-z])/;
const WIDE = /(?<![\d./])(\d{2,3})(?: ?(?:"|in(?:ch(?:es)?)?)(?: wide)?| wide)(?![a-z])/;

/** The floor first, or in another sentence: “a doorway to tile, 36 wide”. */
const DOORWAY_WIDE =
  /(?:door ?ways?|doors?|openings?)(?:[a-z ',.]{0,40}?)(?:is|are|of|,|about|it'?s)? (?<width>\d{2,3})(?: ?(?:"|in(?:ch(?:es)?)?))?(?: wide)?(?![\d.,/]*\d| ?(?:x|by|ft|feet|%|sq))/;
const BEYOND = /(?<![a-z])(tile|carpet|hardwood|wood|concrete|vinyl|laminate)(?![a-z])/;

const edges: Builder = ({ plain }) => {
  const wide = DOORWAY_WIDE.exec(plain)?.groups?.width;
  const [, width = wide, beyond = wide === undefined ? undefined : BEYOND.exec(plain)?.[1]] = DOORWAY.exec(plain) ?? [];
  const steps = STEPS.exec(plain)?.[1];
  const across = WIDE.exec(plain)?.[1];
  const optionTexts = texts([
    [
      'doorways',
      width === undefined || beyond === undefined
        ? undefined
        : `${width} in to ${beyond === 'hardwood' ? 'wood' : beyond}`,
    ],
    ['stairs', steps === undefined || across === undefined ? undefined : `${steps} x ${across} in`],
  ]);
  return optionTexts.size === 0
    ? lacking('trim edges', optionTexts, 'doorways')
    : { command: 'trim edges', optionTexts };
};

/** A gap over a length; a bare fraction is in inches. */
const OVER =
  /(?<![\d.,/-])((?:\d{1,3}[ -])?\d{1,2}\/\d{1,2}(?: ?(?:"|in(?:ch(?:es)?)?|mm|cm)(?![a-z]))?|\d{1,3}(?:[.,]\d{1,3})? ?(?:"|in(?:ch(?:es)?)?|mm|cm)) ?(?:deep |low |high |tall |thick |proud |dip |hump |gap |out |off )?(?:over|in|across|per|within) (?:a |an |about )?(\d{1,3}(?:[.,]\d{1,3})? ?(?:'|ft|feet|foot|m|meters?|metres?))(?![a-z])/;

const DEPTH = String.raw`(?<![\d.,/-])(\d{1,3}(?:[ -]\d{1,2}\/\d{1,2}|\/\d{1,2}|[.,]\d{1,3})? ?(?:"|in(?:ch(?:es)?)?|mm|cm))(?![a-z])`;
/** The depth of a dip: said behind the figure, or before it. */
const DEEP = new RegExp(
  `${DEPTH} ?(?:deep|low|dips?|down|(?:at|in) (?:the |its )?(?:deepest|lowest|worst|middle|center))(?![a-z])`,
);
const DEEPEST = new RegExp(
  `(?:deepest|depth|deep|lowest|low|worst|dips?|sags?)(?: (?:point|spot|part|place|is|it|of|at|by|about|maybe|around|down|to|there)){0,4},? ${DEPTH}`,
);
const SIDES =
  /(?<![\d.,/])(\d{1,2}(?:\.\d{1,2})?) ?(?:'|ft|feet|m)? ?(?:x|by) ?(\d{1,2}(?:\.\d{1,2})?)(?: ?('|ft|feet|m)(?![a-z])|(?![\d.,]*\d|\/| ?(?:"|in|mm|cm)))/;
const ACROSS = /(\d{1,2}(?:\.\d{1,2})?) ?('|ft|feet|foot|m) ?(?:across|wide|long|around|circle)/;

const HUMP =
  /(?<![a-z])(?:humps?|humped|ridges?|crown(?:s|ed)?|bumps?|high (?:spot|place|point|part)s?|bulges?|peaks?)(?![a-z])/;

/** The size of a dip beside its depth, as a reading over its longer side. */
function dipIn(plain: string): { readonly gap: string; readonly over: string; readonly area: string } | undefined {
  const gap = (DEEP.exec(plain) ?? DEEPEST.exec(plain))?.[1];
  const [, one, other, unit] = SIDES.exec(plain) ?? [];
  const [, across, acrossUnit = ''] = ACROSS.exec(plain) ?? [];
  const sides = one !== undefined && other !== undefined ? [one, other] : across === undefined ? [] : [across, across];
  const [first, second] = sides;
  if (gap === undefined || first === undefined || second === undefined) return undefined;
  const name = (unit ?? acrossUnit) === 'm' ? 'm' : 'ft';
  return {
    gap,
    over: `${Math.max(Number(first), Number(second))} ${name}`,
    area: `${first} x ${second} ${name}`,
  };
}

const level: Builder = ({ plain, room }) => {
  const [, straight, length] = OVER.exec(plain) ?? [];
  const dip = straight === undefined ? dipIn(plain) : undefined;
  const [bare, over] = [straight ?? dip?.gap, length ?? dip?.over];
  const gap = bare !== undefined && /\d$/.test(bare) ? `${bare} in` : bare;
  const floor = /concrete|slab/.test(plain)
    ? 'concrete'
    : /plywood|osb|wood|subfloor|joist/.test(plain)
      ? 'wood'
      : undefined;
  const optionTexts = texts([
    ['readings', gap === undefined ? undefined : `${HUMP.test(plain) ? 'high ' : ''}${gap} over ${over}`],
    ['area', dip?.area ?? room],
    ['floor', floor],
  ]);
  return gap === undefined ? lacking('prep level', optionTexts, 'readings') : { command: 'prep level', optionTexts };
};

const SPACED =
  /(?<![\d.,])(12|16|19\.2|24) ?(?:"|in(?:ch(?:es)?)?)?(?: o\.?c\.?| on center| apart| centers| spacing)|^(?:no,? |it'?s |they'?re |actually )*(12|16|19\.2|24)(?: in(?:ch(?:es)?)?)?$/;

const squeaks: Builder = ({ plain, room }) => {
  const [, named, alone] = SPACED.exec(plain) ?? [];
  const spacing = named ?? alone;
  const optionTexts = texts([
    ['area', room?.replace(/^[a-z' ]+:? ?(?=\d[^;]*$)/i, '')],
    ['spacing', spacing === undefined ? undefined : `${spacing} in`],
  ]);
  return room === undefined
    ? lacking('prep squeaks', optionTexts, 'squeaks')
    : { command: 'prep squeaks', optionTexts };
};

const SPOT_UNIT = `(?: ?("|'|in(?:ch(?:es)?)?|ft|feet|foot|mm|cm|m)(?![a-z]))`;
const SPOT_SIDE = String.raw`(\d{1,4}(?:[.,]\d{1,2}|[ -]\d\/\d{1,2})?)`;
/** Two sides of a bad spot; what lumber and sheets are called by is no spot. */
const SPOT = new RegExp(
  String.raw`(?<![\d.,/x])${SPOT_SIDE}${SPOT_UNIT}? ?(?:x|by) ?${SPOT_SIDE}${SPOT_UNIT}?(?![\d.,/]*\d)(?! ?(?:joists?|blocks?|blocking|sheets?|panels?|ply|lumber|boards?|studs?|rooms?))`,
  'g',
);
const SQUARE_SPOT = new RegExp(
  String.raw`(?<![\d.,/x])${SPOT_SIDE}${SPOT_UNIT} ?(?:square(?! (?:f|m))|each way|in each direction|(?:a|per) side|across|wide and long)`,
);
const OFF_WALL = `${SPOT_SIDE}${SPOT_UNIT} ?(?:in |up |out |over |away )?(?:from|off) (?:the |my )?`;
const OFF_LEFT = new RegExp(`${OFF_WALL}left`);
const OFF_BOTTOM = new RegExp(`${OFF_WALL}(?:bottom|near|front)`);
const FIRST_JOIST = /first joist(?:'s center)?(?: (?:is|at|sits|starts|center)){0,2} (\d{1,2}(?:[.,]\d{1,2})?)/;
const PLY =
  /(?<![\d./])(\d\/\d{1,2}|\d{2}\/32|\d{1,2} ?mm)(?: ?in(?:ch)?| ?")?(?: thick)? (?:thick|ply(?:wood)?|osb|panels?|subfloor)/;
/** A side without a unit: nobody cuts out a spot of 3 inches, nor one of 18 feet. */
const SMALL_SIDE = 6;
const LUMBER = /^2$/;

/** `24 in x 30 in`; undefined if no size of a spot is said. */
function spotIn(plain: string): string | undefined {
  for (const [, a = '', unitA, b = '', unitB] of plain.matchAll(SPOT)) {
    const unit = unitA ?? unitB;
    if (unit === undefined && LUMBER.test(a) && Number(b) >= 3 && Number(b) % 2 === 0) continue;
    const usual = Math.max(Number.parseFloat(a), Number.parseFloat(b)) <= SMALL_SIDE ? 'ft' : 'in';
    return `${a} ${unitA ?? unit ?? usual} x ${b} ${unitB ?? unit ?? usual}`;
  }
  const [, side, unit] = SQUARE_SPOT.exec(plain) ?? [];
  return side === undefined ? undefined : `${side} ${unit} x ${side} ${unit}`;
}

const patch: Builder = ({ plain }) => {
  const spot = spotIn(plain);
  if (spot === undefined) return lacking('prep patch', new Map(), 'damage');
  const [, left, leftUnit] = OFF_LEFT.exec(plain) ?? [];
  const [, bottom, bottomUnit] = OFF_BOTTOM.exec(plain) ?? [];
  const placed = left !== undefined && bottom !== undefined;
  const [, named] = SPACED.exec(plain) ?? [];
  const thick = PLY.exec(plain)?.[1];
  const first = FIRST_JOIST.exec(plain)?.[1];
  const optionTexts = texts([
    ['damage', placed ? `${spot} at ${left} ${leftUnit} from left, ${bottom} ${bottomUnit} from bottom` : spot],
    ['spacing', named === undefined ? undefined : `${named} in`],
    ['thickness', thick === undefined || /mm/.test(thick) ? thick : `${thick} in`],
    ['first-joist', first === undefined ? undefined : `${first} in`],
  ]);
  return { command: 'prep patch', optionTexts };
};

const moisture: Builder = ({ plain }) => {
  const found = meterReadings(plain);
  if (!found) return lacking('prep moisture', new Map(), 'moisture');
  const { readings, method } = found;
  const floor = method === 'wood' ? 'wood' : 'concrete';
  const optionTexts = texts([
    ['readings', readings],
    ['method', method],
    ['floor', floor],
  ]);
  return { command: 'prep moisture', optionTexts };
};

const WEIGHT = /(?<![\d.,])(\d{1,2},\d{3}|\d{1,5}(?:[.,]\d)?) ?(lbs?|pounds?|kg|kilos?)(?![a-z])/;
/** In either unit: anything heavier is a delivery, not a box. */
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

const tape: Builder = (given, preferences) => {
  const { plain, room } = given;
  const said = sumInSentence(plain, preferences);
  if (said && !said.problem) return { command: 'tape', optionTexts: new Map([['sum', said.sum]]) };
  const turned = CONVERTED.exec(plain);
  const sum = turned ? `${turned[1]} in ${turned[2]}` : SUM_ALONE.exec(plain)?.[0];
  const silent = { option: 'sum', preferences, note: () => undefined };
  if (sum !== undefined && readTape(sum, silent, preferences.units === 'metric' ? 'mm' : 'in').ok) {
    return { command: 'tape', optionTexts: new Map([['sum', sum.trim()]]) };
  }
  if (room !== undefined && given.carton !== undefined) return estimate(given);
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
  'trim list': trimList,
  'trim run': (given) => ({
    command: 'trim run',
    optionTexts: texts([['run', trimRun(given.plain)], ...stock(given)]),
  }),
  'trim reset': roomed('trim reset', doors),
  'trim finish': (given, preferences) => {
    const run = given.room === undefined ? trimRun(given.plain) : undefined;
    return run === undefined
      ? roomed('trim finish', doors)(given, preferences)
      : {
          command: 'trim run',
          optionTexts: new Map([
            ['run', run],
            ['list', 'supplies'],
          ]),
        };
  },
  'trim edges': edges,
  'prep tearout': roomed('prep tearout', built),
  'prep plan': roomed('prep plan', built),
  'prep squeaks': squeaks,
  'prep level': level,
  'prep moisture': moisture,
  'prep lift': lift,
  'prep carry': lift,
  'prep patch': patch,
  safety: ({ plain }) => ({
    command: 'safety',
    optionTexts: texts([['task', TASK_WORDS.find(([, words]) => words.test(plain))?.[0]]]),
  }),
  sources: ({ plain }) => ({ command: 'sources', optionTexts: texts([['about', FIGURE_WORDS.exec(plain)?.[0]]]) }),
  tape,
};

/** What can be asked about; those from trim on are known by their words and not all of them are worked out yet. */
export type Topic =
  | 'planks'
  | 'tape'
  | 'safety'
  | 'sources'
  | 'help'
  | 'trim'
  | 'tear-out'
  | 'squeaks'
  | 'level'
  | 'moisture'
  | 'patch'
  | 'finish';

/** Texts by option. */
export type ReadLine = ReadonlyMap<string, string>;

/** A sentence read: `told` is in the grammar's words, by option, and holds only what its readers read. */
export type SentenceReading =
  | { readonly kind: 'ask'; readonly topic: Topic; readonly optionTexts: ReadLine; readonly assumed: readonly string[] }
  | {
      readonly kind: 'ask-back';
      readonly topic: Topic;
      readonly optionTexts: ReadLine;
      readonly assumed: readonly string[];
      /** The option that is missing or in doubt; 'ask' for something that no option could be found for. */
      readonly missing: string;
      readonly got: string;
      readonly why: string;
      /** What was told of any option, read or not: for a form. */
      readonly said?: ReadLine | undefined;
      /** What was told of the options in doubt as it may be meant, where the request is whole with it: nothing that was not typed. */
      readonly mends?: ReadLine | undefined;
      /** The options that are missing, where nothing told is in doubt. */
      readonly notGiven?: readonly string[] | undefined;
    }
  | { readonly kind: 'nothing' };

/** A fact that is missing or in doubt; `mend` is what was told of it as it may be meant. */
interface Missing {
  readonly option: string;
  readonly got: string;
  readonly why: string;
  readonly mend?: string | undefined;
}

/** The ask for planks that a sentence makes, or its missing fact. */
export function planksReading(
  plain: string,
  measures: MeasuresInText,
  preferences: Preferences,
  notes: readonly string[],
): SentenceReading {
  const optionTexts = new Map<string, string>();
  const silent = (option: string): Reading => ({ option, preferences, note: () => undefined });
  const assumed = [...notes, ...notesOf(plain, measures)];
  const { rooms, layout } = measures;
  const read = rooms.given === '' ? undefined : readRooms(rooms.given, silent('room'));
  const roomMissing = missingRoom(measures, read);
  const plankText = plankOf(measures, assumed);
  const plankMissing = missingPlank(measures, plankText, silent('plank'));
  if (!roomMissing) optionTexts.set('room', rooms.given);
  if (!plankMissing) optionTexts.set('plank', plankText);
  const doubts = layout.doubts.map(({ option }) => option);
  for (const [option, value] of layout.options) if (!doubts.includes(option)) optionTexts.set(option, value);
  const loose = unmarkedPrice(measures, plankText, preferences) ?? unplaced(measures);
  const missing = roomMissing ?? plankMissing ?? missingLayout(measures) ?? loose;
  if (!missing) return { kind: 'ask', topic: 'planks', optionTexts, assumed };
  const lacking = [roomMissing, plankMissing, missingLayout(measures), loose].filter((one) => one !== undefined);
  const mends = new Map(lacking.flatMap(({ option, mend }) => (mend === undefined ? [] : [[option, mend] as const])));
  return {
    kind: 'ask-back',
    topic: 'planks',
    optionTexts,
    assumed,
    missing: missing.option,
    got: missing.got,
    why: missing.why,
    said: new Map([
      ...(rooms.given === '' ? [] : [['room', rooms.given] as const]),
      ...(plankText === '' ? [] : [['plank', plankText] as const]),
      ...optionTexts,
    ]),
    mends: mends.size === lacking.length ? mends : undefined,
    notGiven: lacking.every((one) => one.got === '') ? lacking.map(({ option }) => option) : undefined,
  };
}

function missingRoom(measures: MeasuresInText, read: Read<unknown> | undefined): Missing | undefined {
  const { rooms, doubtful, carton, rest } = measures;
  const missing = (why: string, got = '', mend?: string): Missing => ({ option: 'room', got, why, mend });
  if (rooms.given === '') {
    const [doubt] = doubtful;
    if (doubt) return missing(roomRole(doubt.typed), doubt.typed);
    const [area] = carton.areas;
    if (area) return missing(areaAlone(), area.got);
    const side = figureIn(rest);
    return side?.side ? missing(oneSide(), side.got) : missing(roomNotGiven());
  }
  if (read && !read.ok) return missing(read.problems[0].expected, rooms.given, read.problems[0].fix);
  if (measures.either) return missing(roomEither(), rooms.given);
  if (rooms.doubt) {
    const { why, got } = rooms.doubt;
    return missing(why === 'rooms counted' ? roomCounts(got) : roomUnsized(got), got);
  }
  const turn = turnIn(rest);
  return turn === undefined ? undefined : missing(roomTurned(turn), turn, rooms.given);
}

/** What is told of the plank, in the words of its reader. An area behind the size is what a carton covers, and that is noted. */
function plankOf({ planks, carton, roomPairs }: MeasuresInText, assumed: string[]): string {
  const [plank] = planks;
  const behind =
    plank && !carton.carton
      ? carton.areas.find(({ at }) => at > plank.to && !roomPairs.some(({ from }) => from > plank.to && from < at))
      : undefined;
  if (behind) assumed.push(areaNote(behind.got));
  return [plank?.typed, ...(behind ? [`${behind.got} per carton`] : []), ...carton.parts]
    .filter((part) => part !== undefined)
    .join(', ');
}

function missingPlank(measures: MeasuresInText, text: string, reading: Reading): Missing | undefined {
  const { planks, doubtful, roomPairs } = measures;
  const missing = (why: string, got: string, mend?: string): Missing => ({ option: 'plank', got, why, mend });
  const [plank, other] = planks;
  if (!plank && doubtful.length > 0 && roomPairs.length > 0)
    return missing(plankRole(doubtful[0]?.typed ?? ''), doubtful[0]?.typed ?? '');
  if (plank && other && plank.typed.replace(/\s/g, '') !== other.typed.replace(/\s/g, '')) {
    return missing(plankTwice(plank.typed, other.typed), `${plank.typed} … ${other.typed}`);
  }
  if (text === '') return missing(plankNotGiven(), '');
  const read = readPlank(text, reading);
  if (read.ok)
    return plank && unitless(plank.typed, read.value.plank)
      ? missing(plankUnit(plank.typed), plank.typed, text.replace(plank.typed, `${plank.typed} cm`))
      : undefined;
  const [problem] = read.problems;
  return plank ? missing(problem.expected, text, problem.fix) : missing(plankNotGiven(), text);
}

function missingLayout({ layout }: MeasuresInText): Missing | undefined {
  const [doubt] = layout.doubts;
  if (!doubt) return undefined;
  return { option: doubt.option, got: doubt.got, why: layoutUnknown(doubt.option, doubt.got) };
}

/** A figure for an area that nobody claimed is probably a price without its mark. */
const UNMARKED = new RegExp(
  `${FIGURE_START}${FIGURE} ?(?:per|/|an?(?![a-z])) ?(?:${PRICE_SQUARE_FOOT}|${SQUARE_METRE})`,
);

function unmarkedPrice(
  { rest, carton }: MeasuresInText,
  plankText: string,
  { currency }: Preferences,
): Missing | undefined {
  const got = carton.price ? undefined : UNMARKED.exec(rest)?.[0];
  if (got === undefined) return undefined;
  return { option: 'plank', got, why: priceMark(), mend: `${plankText}, ${markOf(currency)}${got}` };
}

/** A figure or a pair that nobody claimed: it may change the answer, so it is asked about. */
function unplaced({ rest, doubtful }: MeasuresInText): Missing | undefined {
  const [pair] = doubtful;
  const figure = pair ? pair.typed : figureIn(rest)?.got;
  return figure === undefined ? undefined : { option: 'ask', got: figure, why: unplacedFigure(figure) };
}

function notesOf(plain: string, measures: MeasuresInText): string[] {
  const { layout, leftover, carton, rooms, things, planks } = measures;
  const areas =
    measures.roomPairs.length > 0 && (carton.carton || planks.length === 0) ? carton.areas.map(({ got }) => got) : [];
  const unused = [
    ...leftover.unused,
    ...leftover.doors,
    ...carton.unused,
    ...things.map(({ typed }) => typed),
    ...areas,
    ...rooms.passed,
  ];
  const later = laterTopic(plain);
  return [
    ...planks.filter(({ bySize }) => bySize).map(({ typed }) => plankByNoWord(typed)),
    ...rooms.repeated.map(repeatedNote),
    ...rooms.builtIns.map(builtInNote),
    ...layout.waste.map(wasteNote),
    ...(unused.length > 0 ? [unusedNote(unused)] : []),
    ...(later && later !== 'tear-out' ? [laterNote(later)] : []),
  ];
}

/** Whether a size without a unit, read as inches, is larger than any plank: over 13 in or 8 ft, by custom of the trade. */
function unitless(typed: string, { width, length }: { width: number; length: number }): boolean {
  return unitIn(typed) === undefined && (width > 13 * TICKS_PER_INCH || length > 96 * TICKS_PER_INCH);
}
