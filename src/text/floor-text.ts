/** Text of plank answers and of answers by area. Figures arrive already formatted. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { quoted } from './chat-text.ts';

/** The counts in a headline. */
interface Bought {
  readonly cartons: number;
  readonly perCarton: number;
  readonly planks: number;
  readonly mistakes: number;
  readonly spares: number;
  readonly left: number;
}

export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

export function planksHeadline(bought: Bought, cost: string | undefined): string {
  const { cartons, perCarton, planks, mistakes, spares, left } = bought;
  const parts = [`${planks} to lay`];
  if (mistakes > 0) parts.push(`${mistakes} for mistakes`);
  if (spares > 0) parts.push(`${spares} spare`);
  if (left > 0) parts.push(`${left} left over`);
  const price = cost === undefined ? '' : ` ${cost}.`;
  return `Buy ${counted(cartons, 'carton')} (${counted(cartons * perCarton, 'plank')}): ${parts.join(', ')}.${price}`;
}

/** The same where the cost is what was asked. */
export function costHeadline({ cartons, perCarton }: Bought, cost: string): string {
  return `${cost} for ${counted(cartons, 'carton')} (${counted(cartons * perCarton, 'plank')}).`;
}

export const BUY = {
  title: 'What to buy',
  wideGap: (gap: string, run: string) => `Assuming a gap of ${gap}, for a run of ${run} or more`,
  cartons: 'Cartons',
  planks: 'Planks to lay',
  mistakes: 'For mistakes',
  spares: 'Spares',
  left: 'Left over in the last carton',
  cost: 'Cost',
  area: 'Area, wall to wall',
  waste: 'Waste',
  byArea: 'By area + 10% (rule of thumb)',
  proof: 'Fewer planks?',
  used: (planks: number, reused: number) =>
    `${planks}${reused > 0 ? `; ${counted(reused, 'plank')} cut into two or more pieces` : ''}`,
  /**
   * `still`: the search goes on; `spare`: planks between the count and its lower bound; `jogs`: planks are cut around
   * walls.
   */
  proved: (planks: number, spare: number, still: boolean, jogs: boolean) => {
    if (spare === 0)
      return `No, proven: no scattered layout of these rows needs fewer than ${planks}${jogs ? ', a plank cut around a jog counts as whole' : ''}.`;
    const gap = `none of these rows needs fewer than ${planks - spare}`;
    return still
      ? `First answer, a better one may follow: ${gap}.`
      : `At most ${counted(spare, 'plank')} fewer: ${gap}.`;
  },
  taxed: (total: string, tax: string) => `${total} with ${tax} tax`,
  of: (cartons: number, perCarton: number, price: string | undefined) =>
    `${counted(cartons, 'carton')} of ${perCarton}${price === undefined ? '' : ` at ${price}`}`,
  /** `bound` is undefined if the count is the proven minimum. */
  counted: (planks: number, reused: number, bound: number | undefined) => {
    const least =
      bound === undefined
        ? 'the least possible in this direction'
        : `no layout in this direction needs fewer than ${bound}`;
    return `${planks} (${least})${reused > 0 ? `; ${counted(reused, 'plank')} cut into two or more pieces` : ''}`;
  },
} as const;

export const LAY = {
  title: 'How it is laid',
  rows: 'Rows',
  pattern: 'Pattern',
  strips: 'First and last row',
  rules: 'Rules to keep',
  others: 'Other patterns',
  wallOf: (wall: number, room: string) => `${wall} of ${room}`,
  region: (
    rows: number,
    wall: { readonly number: string; readonly length: string } | undefined,
    first: string | undefined,
    last: string | undefined,
  ) => {
    const strips = rows === 1 ? strip('only', first) : `${strip('first', first)}, ${strip('last', last)}`;
    if (!wall) return `${counted(rows, 'row')}, starting in a corner; ${strips}`;
    return `${counted(rows, 'row')} along wall ${wall.number} (${wall.length}), starting there; ${strips}`;
  },
  stair: (step: string, rows: number) => `stair-step, ${step} a row, ${rows} rows, then start over`,
  kept: (rules: readonly (readonly [string, string])[]) => rules.map((rule) => rule.join(' ')).join(', '),
  /** Another pattern: the planks it needs, the cartons it saves (below zero: takes), the rules it breaks. */
  other: (name: string, planks: number, cartons: number, saved: number, broken: number, betterKept: boolean) => {
    const notes = [
      ...(saved > 0 ? [`saves ${counted(saved, 'carton')}`] : []),
      ...(broken > 0 ? [`breaks a rule in ${counted(broken, 'place')}`] : []),
      ...(betterKept ? ['keeps every rule'] : []),
    ];
    return `${name} ${counted(planks, 'plank')}, ${counted(cartons, 'carton')}${notes.length > 0 ? ` (${notes.join('; ')})` : ''}`;
  },
} as const;

export const GUIDE = {
  title: (room: string) => `Laying guide: ${room}`,
  columns: ['Row', 'Start', 'Whole', 'End', 'Cut from'],
  round: (thing: string) => `round ${thing}`,
  ripped: (height: string) => `rip ${height}`,
  /** Where a wall leaves less than a plank's width, measured from the row's left end. */
  notch: (from: string, to: string, height: string) => `${from} to ${to} only ${height} wide`,
  wallToWall: (length: string) => `${length} wall to wall`,
  whole: 'whole',
  start: 'start',
  end: 'end',
  only: 'piece',
  /** `rest` is the part to keep, marked with the plank's number. */
  fresh: (piece: string, plank: number, rest: string | undefined) =>
    rest === undefined ? `${piece} new` : `${piece} new, keep ${rest} (no. ${plank})`,
  rest: (piece: string, plank: number) => `${piece} no. ${plank}`,
} as const;

const WALL =
  'Wall 1 is at the bottom of the plan, which has your first side across; walls are numbered counterclockwise. Stand with your back to the starting wall and lay each row from left to right.';

const KEEP =
  '“Whole” counts every whole plank of the row, a first or last one too. “new” is cut from a new plank. “keep” is the rest of it: write its number on it, such as no. 12; where “no. 12” stands later, cut that piece from this rest.';

const SHAPES = `“rip” is the width to keep; the ripped edge faces the wall. “${byUnits('24" to 60" only 3" wide', '600 mm to 1500 mm only 80 mm wide')}” is where a wall steps into the row, from its left end: cut the planks there to that width. Rows 5a, 5b are parts of row 5 with a wall between.`;

const MEASURE =
  'Measure each end piece in place before you cut it; these lengths assume your walls are exactly as you measured.';

export const STEPS = {
  title: 'How to lay it',
  click: [
    WALL,
    'A start piece is the right part of a plank, an end piece the left part: put cut ends against the wall so the locks can click together.',
    KEEP,
    SHAPES,
    MEASURE,
  ],
  none: [WALL, 'These boards have no locks: any cut piece may face any way.', KEEP, SHAPES, MEASURE],
} as const;

function strip(which: string, height: string | undefined): string {
  return height === undefined ? `${which} row whole` : `${which} row ripped to ${height}`;
}

export const RULES_TITLE = 'Floor rules for this job';
export const BROKEN_TITLE = 'Rules that cannot be kept here';
export const NOT_SCATTERED_TITLE = 'Joints that do not look scattered';
export const OFF_PATTERN_TITLE = 'Rows off the pattern';

/** A rule that could not be kept. */
export function sayBroken(rule: string, room: string, row: number, place: string, requested: string): string {
  switch (rule) {
    case 'stagger':
      return `${room}, row ${row}: a joint ${place} from the left is nearer than ${requested} to one in the row before.`;
    case 'minEnd':
      return `${room}, row ${row}: the piece at ${place} from the left is shorter than ${requested}.`;
    case 'minRip':
      return `${room}, row ${row}: the strip along the wall at ${place} from the starting wall is narrower than ${requested}.`;
    default:
      return offPattern(room, [row]);
  }
}

/** Only a note: the rows left the pattern so that every rule is kept. */
export function offPattern(room: string, rows: readonly number[]): string {
  const which = rows.length === 1 ? `row ${rows[0]} is` : `rows ${rows.join(', ')} are`;
  return `${room}: ${which} shifted to avoid short pieces and joints that are too close.`;
}

/** Joints of a random floor that line up or form stairs in spite of the search. */
export function notScattered(room: string, rows: readonly number[]): string {
  const which = rows.length === 1 ? `row ${rows[0]}` : `rows ${rows.join(', ')}`;
  return `${room}: joints in ${which} line up with those two rows before, or step like a stair: no layout without that was found that keeps the other rules.`;
}

export const ACTIONS = {
  pattern: (name: string) => `Lay it ${name}`,
  patterns: 'Other pattern',
  direction: 'Turn the rows',
} as const;

export function oneRoomHeadline(room: string, rows: string, planks: string, cuts: number): string {
  return `${room}: ${rows}, from ${planks}, ${counted(cuts, 'piece')} to cut.`;
}

export function largestTaken(room: string, others: readonly string[]): string {
  return `${room} is the largest room, so it is shown; for another add “only: ${others.join('” or “only: ')}”`;
}

const TEXTS: Readonly<Record<string, string>> = {
  'one-lot': 'Buy every carton from one lot: read the lot number on each before you pay.',
  'mix-cartons': 'Take boards from several cartons at a time, so that shades mix.',
  'measure-ten':
    'Printed sizes are nominal: lock ten boards together, measure them, and work it out again if they differ.',
  'end-in-place': 'Measure each end piece in place before you cut it: walls wander.',
  'gap-under-trim':
    'Keep the gap at every wall, pipe and frame; the trim must cover it, and never be fixed to the floor.',
  'small-gap': `Your gap is less than ${byUnits('1/4 in (6 mm)', '6 mm')}: a floating floor that touches a wall can buckle. Lay it so only if its maker says so.`,
  'nothing-through':
    'Nothing goes through a floating floor: no screws, cabinets, islands or door stops fixed through the planks.',
  'tracks-to-subfloor': 'Transition tracks are fixed to the subfloor, not to the planks.',
  'one-pad': 'The pad is attached: lay no second pad under it.',
  'pad-choice': 'If the plank has a pad attached, lay no second one; if not, lay the one its maker names.',
  'long-run': `The floor goes on for ${byUnits('50 ft (15 m)', '15 m')} or more: ask the maker for the longest run before a break, and for the wider gap (often ${byUnits('1/2 in, 13 mm', '12 mm')}).`,
  dishwasher: 'Kitchen: check that the dishwasher can still come out once the floor is higher.',
  stairs: `Stairs: risers must stay alike (within ${byUnits('3/8 in, 10 mm', '10 mm')}) once the coverings change; check the top and bottom ones.`,
  'keep-some': 'Keep a few planks of the lot for repairs.',
};

/** Throws if a rule has no text. */
export function sayFloorRule(rule: string): string {
  const text = TEXTS[rule];
  if (text === undefined) throw new Error(`no words for the floor rule ${rule}`);
  return text;
}

// Which way rows should run, and why.

interface Takes {
  readonly planks: number;
  readonly cartons: number;
}

type Reason =
  | { readonly kind: 'strip' | 'rules' | 'wall' }
  | { readonly kind: 'planks' | 'rows'; readonly fewer: number };

export const WAY = {
  label: 'Way the rows run',
  reason: (reason: Reason): string => {
    switch (reason.kind) {
      case 'strip':
        return 'avoids a strip that is too narrow';
      case 'rules':
        return 'breaks fewer rules';
      case 'planks':
        return `${counted(reason.fewer, 'plank')} fewer`;
      case 'wall':
        return 'along the longer side';
      case 'rows':
        return `${counted(reason.fewer, 'row')} fewer to cut`;
    }
  },
  stay: (given: boolean, other: Takes, why: readonly string[]): string => {
    const kept = given ? 'as you asked' : 'as laid here';
    const good = why.length > 0 ? `, the better way (${why.join(', ')})` : '; the other way is as good';
    return `${kept}${good}. Running the other way: ${takes(other)}.`;
  },
  turn: (given: boolean, other: Takes, why: readonly string[]): string => {
    const [start, how] = given ? ['as you asked', ''] : ['along the longer side', ' (direction: short)'];
    return `${start}. The other way${how} is better: ${why.join(', ')}; ${takes(other)}.`;
  },
} as const;

function takes({ planks, cartons }: Takes): string {
  return `${counted(planks, 'plank')}, ${counted(cartons, 'carton')} (estimate)`;
}

export const SURE = {
  title: 'How sure',
  holds: 'Holds',
  all: 'If every wall is off',
  again: 'Worth measuring again',
  still: (cartons: number, doubt: string) => `still ${counted(cartons, 'carton')} if your walls are up to ${doubt} off`,
  stillLine: (still: string) => `${still.charAt(0).toUpperCase()}${still.slice(1)}.`,
  off: (cartons: number, by: string, longer: boolean) =>
    `${counted(cartons, 'carton')} if every wall is ${by} ${longer ? 'longer' : 'shorter'}.`,
  untried: 'not worked out: the doorways and what stands in the room fit no other walls',
  cartons: (cartons: number, by: string) => `${counted(cartons, 'carton')} if ${by}`,
  by: (length: string, longer: boolean) => `${length} ${longer ? 'longer' : 'shorter'}`,
  wall: (wall: number, room: string, length: string) => `wall ${wall} of ${room} (${length})`,
} as const;

const TWO = '6 x 48 in, 10 per carton, $45 a carton; 7 x 48 in, 8 per carton, $52 a carton';

export function choicesMissing(option: string, got: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'Name two to five planks with ; between them.',
    fix: got.trim() === '' ? TWO : `${got.trim()}; 7 x 48 in, 8 per carton`,
  };
}

export function tooManyChoices(option: string, got: string, most: number, fix: string): Problem {
  return { option, got: quoted(got), expected: `At most ${most} planks are compared at a time.`, fix };
}

/** `fewer`: the first planks of the list, as many as can be compared; empty if two are already too many. */
export function tooManyTogether(planks: number, most: number, fewer: readonly string[]): Problem {
  const got = `${planks} planks over all choices`;
  const few = fewer.length > 0;
  return {
    option: few ? 'planks' : 'room',
    got,
    expected: `All choices together are at most ${most} planks: compare ${few ? 'fewer of them, or in fewer rooms' : 'them in fewer rooms'}.`,
    fix: few ? fewer.join('; ') : '40 x 50 ft',
  };
}

export function padPrice(option: string, got: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'A pad’s price is for an area, such as $0.45/sq ft.',
    fix: '$0.45/sq ft',
  };
}

export const COMPARE = {
  headline: (winner: string, measure: string, value: string) => `${winner} ${measure}: ${value}.`,
  cheapest: 'costs least',
  leanest: 'wastes least',
  even: (names: readonly string[]) => `${names.join(' and ')} come out even.`,
  lay: (name: string) => `Lay ${name}`,
  ask: (room: string, plank: string, others: readonly (readonly [option: string, text: string])[]) =>
    [`planks room: ${room}`, `plank: ${plank}`, ...others.map((pair) => pair.join(': '))].join(', '),
  title: 'Side by side',
  winners: 'First by each measure',
  measure: 'Measure',
  pad: (cost: string) => `pad ${cost} on top`,
  padAttached: 'attached',
  padSeparate: 'needs one',
  padUnknown: 'not given',
  notGiven: '–',
  measures: {
    planks: 'Planks to lay',
    cartons: 'Cartons',
    waste: 'Waste',
    cost: 'Cost, pad included',
    rows: 'Rows',
    cuts: 'Cuts to make',
    light: 'Light reflectance',
    tier: 'Price tier',
    pad: 'Pad',
    broken: 'Rules broken',
  },
  best: {
    planks: 'Fewest planks to lay',
    waste: 'Least waste',
    cost: 'Least cost, pad included',
    rows: 'Fewest rows',
    cuts: 'Fewest cuts',
    light: 'Reflects most light',
  },
} as const;

// Cut pieces with slanted ends or odd shapes.

export const SHAPE = {
  nothing: '0',
  /** Along the edge toward the previous row, and toward the next. */
  sides: (near: string, far: string) => `${near} / ${far}`,
  /** `edge`: the edge of the board that the long side is on. */
  slanted: (long: string, short: string, angles: string, edge: string) =>
    `${long} long side (${edge}), ${short} short side, ${angles}`,
  /** Edges of a board in a row, and of one that lies at any angle. */
  inRow: { near: 'row before', far: 'next row' },
  alone: { near: 'edge toward you', far: 'edge away' },
  leaning: (length: string, angles: string) => `${length} both sides, ends leaning ${angles}`,
  corners: (length: string, corners: readonly string[]) =>
    `${length}, cut to a shape with corners at ${corners.join(', ')}`,
  degrees: (degrees: number) => `${degrees}°`,
  /** `end` and `edge` name the corner. */
  cornerOff: (length: string, end: string, edge: string, along: string, across: string) =>
    `${length}, the corner at its ${end}, ${edge}, cut off: ${along} along, ${across} across`,
  ripped: (length: string, width: string, edge: string) => `${length}, ripped to ${width} (kept: ${edge})`,
  ends: { left: 'left end', right: 'right end' },
  nicked: (length: string) => `${length}, less than ${byUnits('1/16"', '2 mm')} off a corner`,
  corner: (along: string, across: string) => `${along} × ${across}`,
} as const;

/** Explains slanted pieces; added to the steps if there are any. */
export const SLANTED_STEP = `“${byUnits('12" long side (next row), 5" short side', '300 mm long side (next row), 120 mm short side')}, 45°” is a slanted end: mark both lengths along the two edges of the board from its uncut end, and cut from mark to mark; the angle is from a square cut. “corners at ${byUnits('3" × 2"', '80 mm × 50 mm')}” are places along the board from its left end × across it from the edge toward the row before. A plank’s number stands on what is kept of it, slanted end and all.`;

const NAMES: Readonly<Record<string, string>> = { half: 'half-offset', thirds: 'third-offset' };

export const FLOOR_BRIEF = {
  room: (sides: string, planks: string, pattern: string) => `${sides} room, ${planks}, ${pattern}.`,
  rooms: (count: number, area: string, planks: string, pattern: string) =>
    `${count === 1 ? `${area} room` : `${count} rooms, ${area}`}, ${planks}, ${pattern}.`,
  /** A pattern's everyday name. */
  named: (pattern: string) => NAMES[pattern] ?? pattern,
  planks: (width: string, length: string) => `${width} x ${length} planks`,
  boards: (width: string, length: string) => `${width} x ${length} boards`,
  /** `undefined` is a whole plank. */
  strips: (first: string | undefined, last: string | undefined) => {
    if (first === undefined)
      return last === undefined ? 'The last row is a full plank wide.' : `The last row is ${last} wide.`;
    if (last === undefined) return `The first row is ripped to ${first}; the last is a full plank wide.`;
    return first === last
      ? `The first and last rows are ripped to ${first}.`
      : `The first row is ripped to ${first}, the last to ${last}.`;
  },
  evened: (both: string, sliver: string) =>
    `The first and last rows are ripped to ${both}, or the last would be only ${sliver} wide.`,
  evenedApart: (first: string, last: string, sliver: string) =>
    `The first row is ripped to ${first}, the last to ${last}, or it would be only ${sliver} wide.`,
  oneRow: (width: string) => `One row, ripped to ${width}.`,
  narrowest: (width: string, room: string) => `Narrowest row along a wall: ${width} wide, in ${room}.`,
  start: (wall: string, length: string) => `Start at wall ${wall} (${length}); the rows run along it.`,
  broken: (places: number) => `${counted(places, 'place')} can’t keep the rules for joints and ends: see “details”.`,
  pattern: (cartons: number, name: string) =>
    name === 'scattered'
      ? `${counted(cartons, 'carton')} would do with scattered joints.`
      : `${counted(cartons, 'carton')} would do with the ${NAMES[name] ?? name} pattern.`,
  turned: (cartons: number) => `${counted(cartons, 'carton')} would do if the rows ran the other way.`,
  cuts: (whole: number, cut: number) => `${counted(whole, 'whole board')} and ${counted(cut, 'cut piece')}.`,
  herringbone: (border: number) => `herringbone${border > 0 ? ` with a border of ${counted(border, 'board')}` : ''}`,
  hands: (a: number, b: number) => `A boards: ${a}, B boards: ${b}.`,
  choice: (name: string, cartons: number, planks: number, waste: string, cost: string | undefined) =>
    `${name}: ${counted(cartons, 'carton')}, ${counted(planks, 'plank')}, ${waste} waste${cost === undefined ? '' : `, ${cost}`}.`,
  rest: (laid: string, planks: number, offcuts: number) =>
    `Laid: ${laid}. The rest takes ${counted(planks, 'plank')}${offcuts === 0 ? '' : ` and ${counted(offcuts, 'offcut')}`}.`,
  lastRow: (room: string, row: number, pieces: string) => `${room} row ${row} as it lies: ${pieces}.`,
  spoiled: (broken: number) => `${counted(broken, 'plank')} broken so far.`,
} as const;

function boxes(count: number): string {
  return count === 1 ? '1 box' : `${count} boxes`;
}

export const ESTIMATE = {
  boxes: (count: number, area: string, share: string, money: string | undefined, roll: 'roll' | undefined) =>
    `About ${roll ? (count === 1 ? '1 roll' : `${count} rolls`) : boxes(count)} for ${area} with ${share} extra${money === undefined ? '.' : `: ${money}.`}`,
  area: (amount: string, metric: boolean, area: string, share: string, money: string | undefined) =>
    `Buy about ${amount} ${metric ? 'm²' : 'sq ft'} for ${area} with ${share} extra${money === undefined ? '.' : `: ${money}.`}`,
  cost: (money: string, cartons: number | undefined, roll: boolean, area: string, share: string) =>
    `${money} for ${cartons === undefined ? '' : `about ${roll ? counted(cartons, 'roll') : boxes(cartons)}, `}${area} with ${share} extra.`,
  range: (least: number, most: number) => `${least} with 5% extra, ${most} with 15%.`,
  tax: (net: string, tax: string) => `${net} before ${tax} sales tax.`,
  exact: (room: boolean, carton: boolean) =>
    room
      ? carton
        ? 'For an exact count, give the plank’s width and length.'
        : 'Say what a box covers and I’ll count boxes; add the plank’s size for an exact count.'
      : carton
        ? 'For an exact count, give each room’s length and width and the plank’s size.'
        : 'Say what a box covers and I’ll count boxes.',
  assumedExtra: (share: string) => `Assuming ${share} extra for cuts and mistakes.`,
  whyTitle: 'Why this number',
  floor: 'Floor',
  withExtra: (share: string) => `With ${share} extra`,
  box: 'One box covers',
} as const;

export const ENOUGH = {
  yes: (have: string, area: string, over: string) => `Yes: ${have} for ${area} is ${over} extra.`,
  tight: (have: string, area: string, over: string) => `Barely: ${have} for ${area} is only ${over} extra.`,
  no: (have: string, area: string, short: string) => `No: ${have} for ${area} is ${short} short.`,
  none: (have: string, area: string) => `No: ${have} for ${area} leaves nothing for cuts.`,
  much: (have: string, area: string, over: string) =>
    `Yes, and more than you need: ${have} for ${area} is ${over} extra.`,
  usual: 'Plan on 5% extra in a plain room, 15% with many corners or on the diagonal.',
  left: (area: string) => `About ${area} left before cuts. Return unopened boxes, keep one for repairs.`,
  over: (area: string) => `${area} more than the floor itself: cuts and mistakes come out of that.`,
  more: (count: number) => `Get ${boxes(count)} more, of the same lot.`,
  moreArea: (area: string) => `Get about ${area} more, of the same lot.`,
  exact: 'For an exact answer, give each room’s length and width and the plank’s size.',
} as const;

export const AREA_TEXT = {
  headline: (total: string, rooms: readonly string[]) =>
    rooms.length > 1 ? `${total} in all (${rooms.join(' + ')}).` : `${total}, wall to wall.`,
  next: 'Boxes take 5 to 15% more for cuts: say what a box covers and I’ll count them.',
} as const;
