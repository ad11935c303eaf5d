/** From an intent and its measures to a command's options, or the one question that is open. */

import { readLength } from '../input/parse-length.ts';
import { stockInSentence } from '../input/parse-stock.ts';
import { readTape, sumInSentence } from '../input/parse-tape.ts';
import type { Preferences } from '../input/reading.ts';
import { FIGURE_WORDS, TASK_WORDS } from '../input/trade-words.ts';
import { ASK_FOR, READER } from '../text/reader-text.ts';
import { TICKS_PER_INCH, TICKS_PER_METRE } from '../units/length.ts';
import { meterReadings, SAYS_ROWS, taxIn, trimRun } from './counted.ts';
import { boxBeside, type Measured } from './measured.ts';

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
    ['sales-tax', price === undefined ? undefined : taxIn(given.plain)],
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

/** A room of that area, square, for work that goes by rooms: weights and hours hardly change with the shape. */
function squareRoom(area: string | undefined): { readonly room: string; readonly side: string } | undefined {
  const [, figure, metres] = /^(\d[\d.,]*) ?(?:(m2|m²|sq(?:uare)?\.? ?m|qm|sqm)|)/.exec(area ?? '') ?? [];
  const size = Number((figure ?? '').replaceAll(',', ''));
  if (!(size > 0)) return undefined;
  const side = `${Math.round(Math.sqrt(size) * 100) / 100} ${metres === undefined ? 'ft' : 'm'}`;
  return { room: `${side} x ${side}`, side };
}

/** A room, or an area that stands for one. */
const roomedOrSquare =
  (command: string, more: Parameters<typeof roomed>[1]): Builder =>
  (given, preferences) => {
    const square = given.room === undefined ? squareRoom(given.areas[0]) : undefined;
    const frame = roomed(command, more)(square ? { ...given, room: square.room } : given, preferences);
    return square && frame ? { ...frame, assumed: [READER.squareRoom(square.side)] } : frame;
  };

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

const ONE_WALL = String.raw`\d{1,3}(?:[.,]\d{1,2})?(?: ?(?:'|ft|feet|foot|m|cm)(?![a-z]))?(?: ?\d{1,2}(?:[ -]\d{1,2}\/\d{1,2})?(?: ?(?:"|in(?:ch(?:es)?)?)(?![a-z]))?)?`;
/** Walls one after the other: “walls 11'2, 9'6 and 6'10”. */
const WALLS = new RegExp(
  `(?<![a-z])(?:walls?|runs|lengths|pieces|sides)(?: (?:are|of|is|measure|that are|need|all))?:? (?<list>${ONE_WALL}(?:(?:, ?and |, ?| and | plus | ?\\+ ?|; ?)${ONE_WALL}(?! ?x)){1,11})`,
);

/** The walls of a sentence as one length in all, and the sentence without them. */
function wallsIn(plain: string, preferences: Preferences): { readonly run: string; readonly rest: string } | undefined {
  const list = WALLS.exec(plain)?.groups?.list;
  if (list === undefined) return undefined;
  const silent = { option: 'run', preferences, note: () => undefined };
  const parts = list.split(/, ?and |, ?| and | plus | ?\+ ?|; ?/);
  const walls = parts.map((wall) => readLength(wall, silent, preferences.units === 'metric' ? 'm' : 'ft'));
  const total = walls.reduce((sum, wall) => (wall.ok ? sum + wall.value : Number.NaN), 0);
  if (!(total > 0)) return undefined;
  const metric = /\d ?(?:m|cm)(?![a-z])/.test(list);
  const run = metric
    ? `${(total / TICKS_PER_METRE).toFixed(3)} m`
    : `${Number((total / TICKS_PER_INCH).toFixed(4))} in`;
  return { run, rest: plain.replace(list, ' ') };
}

/** Every wall of a room, or else the length in all. */
const trimList: Builder = (given, preferences) => {
  const walls = given.room === undefined ? wallsIn(given.plain, preferences) : undefined;
  if (walls)
    return {
      command: 'trim run',
      optionTexts: texts([
        ['run', walls.run],
        ['stock', stockInSentence(walls.rest)],
      ]),
    };
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

const FILLS = /(?<![a-z])(?:level(?:er|ers|ing|ling)|filler|compound|screed|self-level(?:er|ing))(?![a-z])/;
const ONE_DEPTH = new RegExp(DEPTH);

/** A depth beside sides, where filler is asked for and nothing says what it is. */
function fillDepth(plain: string): RegExpExecArray | null {
  return FILLS.test(plain) ? ONE_DEPTH.exec(plain) : null;
}

/** The size of a dip beside its depth, as a reading over its longer side. */
function dipIn(plain: string): { readonly gap: string; readonly over: string; readonly area: string } | undefined {
  const gap = (DEEP.exec(plain) ?? DEEPEST.exec(plain) ?? fillDepth(plain))?.[1];
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

const THIN = String.raw`(?<![\d.,/x-])(\d{1,2}(?:[ -]\d{1,2}\/\d{1,2}|\/\d{1,2}|[.,]\d{1,2})? ?(?:"|in(?:ch(?:es)?)?|mm|cm)(?![a-z])|\d\/\d{1,2}(?![\d/'"]))`;
/** One depth for a whole floor, said before the figure or behind it. */
const EVEN_DEPTH = new RegExp(
  `(?:(?:at|averag(?:e|es|ing)|avg|about|of|by|is) (?:of |about |an? )?${THIN}|${THIN} ?(?:thick|deep|average|avg|all over|everywhere|throughout|pour|layer))`,
);
const BAG = /(?<![\d.,])(\d{2}) ?(kgs?|kilos?|lbs?|pounds?)(?: ?-?(?:bags?|sacks?))/;

/** A pour of one depth over a floor of a size that was said. */
function pourIn({ plain, room, areas }: Measured): ReadonlyMap<string, string> | undefined {
  const area = areas[0] ?? room;
  const [, before, behind] = EVEN_DEPTH.exec(plain) ?? [];
  const depth = before ?? behind;
  if (area === undefined || depth === undefined) return undefined;
  const [, weight, unit] = BAG.exec(plain) ?? [];
  return texts([
    ['readings', `${/\d$/.test(depth) ? `${depth} in` : depth} all over`],
    ['area', area],
    ['bag', weight === undefined ? undefined : `${weight} ${unit?.startsWith('k') ? 'kg' : 'lb'}`],
  ]);
}

const level: Builder = (given) => {
  const { plain, room } = given;
  const [, straight, length] = OVER.exec(plain) ?? [];
  const dip = straight === undefined ? dipIn(plain) : undefined;
  const pour = straight === undefined && dip === undefined && !HUMP.test(plain) ? pourIn(given) : undefined;
  const [bare, over] = [straight ?? dip?.gap, length ?? dip?.over];
  const gap = bare !== undefined && /\d$/.test(bare) ? `${bare} in` : bare;
  const floor = /concrete|slab/.test(plain)
    ? 'concrete'
    : /plywood|osb|wood|subfloor|joist/.test(plain)
      ? 'wood'
      : undefined;
  if (pour) return { command: 'prep level', optionTexts: new Map([...pour, ...texts([['floor', floor]])]) };
  const optionTexts = texts([
    ['readings', gap === undefined ? undefined : `${HUMP.test(plain) ? 'high ' : ''}${gap} over ${over}`],
    ['area', dip?.area ?? room],
    ['floor', floor],
  ]);
  return gap === undefined ? lacking('prep level', optionTexts, 'readings') : { command: 'prep level', optionTexts };
};

const SPACED =
  /(?<![\d.,])(12|16|19\.2|24) ?(?:"|in(?:ch(?:es)?)?)?(?: o\.?c\.?| on center| apart| centers| spacing)|^(?:no,? |it'?s |they'?re |actually )*(12|16|19\.2|24)(?: in(?:ch(?:es)?)?)?$/;

/** How far apart the screws go: every 8 in. */
const SCREWED =
  /(?<![a-z])(?:screws?|screwed|fasteners?|one)(?: them| it)? (?:every|at every|about every|at) (\d{1,3}(?:\.\d)?) ?("|in(?:ch(?:es)?)?|mm|cm)?(?![\d./x]| ?(?:by|x|ft|feet)(?![a-z]))/;

const squeaks: Builder = ({ plain, room }) => {
  const [, apart, unit] = SCREWED.exec(plain) ?? [];
  const [, named, alone] = SPACED.exec(plain) ?? [];
  const spacing = named ?? alone;
  const optionTexts = texts([
    ['area', room?.replace(/^[a-z' ]+:? ?(?=\d[^;]*$)/i, '')],
    ['spacing', spacing === undefined ? undefined : `${spacing} in`],
    ['apart', apart === undefined ? undefined : `${apart} ${unit ?? 'in'}`],
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
  const { readings, method, flooring, boards } = found;
  const floor = method === 'wood' ? 'wood' : 'concrete';
  const optionTexts = texts([
    ['readings', readings],
    ['method', method],
    ['floor', floor],
    ['flooring', flooring],
    ['boards', boards],
  ]);
  return { command: 'prep moisture', optionTexts };
};

const WEIGHT = /(?<![\d.,])(\d{1,2},\d{3}|\d{1,5}(?:[.,]\d)?) ?(lbs?|pounds?|kg|kilos?)(?![a-z])/;
/** In either unit: anything heavier is a delivery, not a box. */
const HEAVIEST_BOX = 150;

/** Things of one weight each: “14 boxes at 38 lb”. */
const COUNTED_WEIGHT =
  /(?<![\d.,])(?<count>\d{1,3}) (?:boxes|cartons|packs|cases|bags|bundles|rolls)(?:,? (?:at|of|with|that|are|is|weigh|weighing|each|which|it|they|all|about)){0,4},? (?<one>\d{1,3}(?:\.\d)?) ?(?<unit>lbs?|pounds?|kg|kilos?)(?![a-z])/;

const lift: Builder = ({ plain }) => {
  const { count, one, unit: of = '' } = COUNTED_WEIGHT.exec(plain)?.groups ?? {};
  if (count !== undefined && one !== undefined && Number(count) > 1) {
    const name = of.startsWith('k') ? 'kg' : 'lb';
    const all = `${Number((Number(count) * Number(one)).toFixed(1))} ${name}`;
    return {
      command: 'prep carry',
      optionTexts: texts([
        ['weight', all],
        ['load', `${one} ${name}`],
      ]),
    };
  }
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
  'prep tearout': roomedOrSquare('prep tearout', built),
  'prep plan': roomedOrSquare('prep plan', built),
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
