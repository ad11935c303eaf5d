/** Text of shopping lists and spending, and the names of what to buy and its packages. */

import type { Stage } from '../reply/need.ts';
import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';

/** What could not be computed yet, and what to type for it. */
export interface NotGiven {
  readonly what: string;
  readonly tell: string;
}

/** With examples in the user's units. */
export function notGivenIn(units: 'imperial' | 'metric') {
  const metric = units === 'metric';
  return {
    rooms: { what: 'Rooms', tell: metric ? 'project room bedroom 3.4 x 3.8 m' : `project room bedroom 11' x 12'6"` },
    plank: {
      what: 'Planks and underlay: which plank?',
      tell: `project pick plank: ${metric ? '180 x 1220 mm, 8 per carton' : '6 x 48 in, 10 per carton'}`,
    },
    floor: (rooms: readonly string[]): NotGiven => ({
      what: `Tear-out: what is on the floor of ${rooms.join(', ')} now?`,
      tell: `project room ${rooms[0] ?? ''}, floor: carpet`,
    }),
    subfloor: {
      what: 'Subfloor: you’ll find squeaks, soft spots and low places once the old floor is out',
      tell: metric
        ? 'level readings: 5 mm over 3 m, area: 1.2 x 1.8 m'
        : 'level readings: 3/16 in over 10 ft, area: 4 x 6 ft',
    },
    doorways: {
      what: 'Transitions: at which doorways does the floor end?',
      tell: `project pick edges doorways: ${metric ? 'bath 800 mm to tile 10 mm' : 'bath 30 in to tile 1/2 in'}`,
    },
    trim: {
      what: 'Baseboards: which lengths does your store sell?',
      tell: `project pick list stock: ${metric ? '2.4 m; 3.6 m' : '8 ft $7.98; 12 ft $12.48'}`,
    },
  };
}

export const STAGE_NAMES: Readonly<Record<Stage, string>> = {
  clear: 'Clear the room',
  'tear-out': 'Tear-out',
  subfloor: 'Squeaks and patches',
  flat: 'Flat',
  dry: 'Dry',
  acclimate: 'Cartons in the room',
  lay: 'Lay the floor',
  transitions: 'Transitions',
  baseboards: 'Baseboards',
  caulk: 'Caulk and fill',
  paint: 'Paint',
};

export const AISLES = [
  'Flooring',
  'Lumber',
  'Trim and doors',
  'Hardware',
  'Building materials',
  'Paint',
  'Cleaning and safety',
] as const;
type Aisle = (typeof AISLES)[number];

const AISLE_OF: readonly (readonly [start: string, aisle: Aisle])[] = [
  ['plank', 'Flooring'],
  ['underlay', 'Flooring'],
  ['t-moulding', 'Flooring'],
  ['reducer', 'Flooring'],
  ['end cap', 'Flooring'],
  ['nosing', 'Flooring'],
  ['transition strip', 'Flooring'],
  ['panel', 'Lumber'],
  ['block 2x4', 'Lumber'],
  ['baseboard', 'Trim and doors'],
  ['levelling', 'Building materials'],
  ['subfloor adhesive', 'Building materials'],
  ['caulk', 'Paint'],
  ['wood filler', 'Paint'],
  ['trim p', 'Paint'],
  ['contractor bag', 'Cleaning and safety'],
  ['mask', 'Cleaning and safety'],
  ['container', 'Cleaning and safety'],
];

/** Fasteners and tools for cutting are hardware. */
export function aisleOf(item: string): Aisle {
  return AISLE_OF.find(([start]) => item.startsWith(start))?.[1] ?? 'Hardware';
}

export const SHOPPING = {
  headline: (left: number, cost: string | undefined, unpriced: number) => {
    if (left === 0) return 'Nothing left to buy.';
    const price =
      cost === undefined ? '' : `: ${cost}${unpriced > 0 ? ` for those with a price, ${unpriced} without` : ''}`;
    return `${counted(left, 'thing')} left to buy${price}.`;
  },
  nothing: 'Nothing can be worked out for this project yet.',
  bought: (what: string, label: string) => `Bought: ${label}, ${what}.`,
  returned: (what: string, label: string) => `Returned: ${label}, ${what}.`,
  opened: (what: string, label: string) => `Opened: ${label}, ${what}.`,
  unbought: (label: string) => `Not bought after all: ${label}.`,
  unticked: (label: string) => `No longer ticked off: ${label}.`,
  said: (text: string) => `shopping: ${text}`,
  some: (what: string, label: string, cost: string | undefined) =>
    `${label}: ${what}${cost === undefined ? '' : `, ${cost}`}`,
  more: (what: string, label: string, lots: readonly string[], cost: string | undefined) =>
    `${label}: ${what} more${lots.length > 0 ? `, of lot ${lots.join(' or ')} as the others` : ''}${cost === undefined ? '' : `, ${cost}`}`,
  note: (line: string, notes: readonly string[]) => (notes.length === 0 ? line : `${line} (${notes.join('; ')})`),
  boughtTitle: 'Bought',
  boughtColumns: ['What', 'How much', 'Paid', 'Lot'],
  backTitle: 'Can go back',
  back: (what: string, label: string) => `${label}: ${what}, unopened with its receipt; keep a few planks for repairs`,
  backPlain: (what: string, label: string) => `${label}: ${what}, unopened with its receipt`,
  overOpened: (what: string, label: string) => `${label}: ${what} more than is needed, but opened`,
  notGivenTitle: 'Not worked out yet',
  notGiven: ({ what, tell }: NotGiven) => `${what}${/[.?]$/.test(what) ? ' Type' : ': type'} “${tell}”`,
  unread: (ask: string, expected: string) => `${quoted(ask)}: ${expected}`,
  refused: (ask: string, why: string, call: string) => `${quoted(ask)}: ${why} Call: ${call.replace(/\.$/, '')}.`,
  refusedTitle: 'Leave this to a professional',
  costTitle: 'Cost',
  costLeft: 'Left to buy',
  costPaid: 'Bought so far',
  costSum: 'Together',
  unpriced: 'Without a price yet',
  buyAll: (label: string) => `Bought: ${label}`,
  among: 'Tick off',
  byAisle: 'By aisle',
  byStage: 'By stage',
  each: (price: string, label: string) =>
    `${price} read as the price of one (${label}); type “for ${price}” if it was for all`,
  total: (price: string, label: string) =>
    `${price} read as the price of all of it (${label}); type “at ${price} each” if it was for one`,
} as const;

/** Two lots of the same plank on one floor. */
export function mixedLots(label: string, lots: readonly string[]): string {
  return `Mixed lots: ${label} is bought of lots ${lots.join(' and ')}. Shades differ from lot to lot: change to one lot if the shop can, or open all cartons first, mix boards from both, and keep one lot to a room.`;
}

const which = (things: readonly string[]): string =>
  things
    .slice(0, 6)
    .map((label) => `“${label}”`)
    .join(', ');

/** Marks a fix as a whole line rather than one purchase. */
export const WHOLE_LIST = 'list';

export const SHOPPING_PROBLEMS = {
  /** `answered`: there is an answer to save, with its rooms and plank. */
  nothingListed: (got: string, answered: boolean): Problem => ({
    option: 'ask',
    got: quoted(got),
    expected: answered
      ? 'There is nothing on this project’s list yet. Save your last answer with its rooms and plank (“project keep”), then say what you bought.'
      : 'There is nothing on this project’s list yet: “project shopping” says what it still needs.',
    fix: answered ? 'project keep' : 'project shopping',
  }),
  unread: (got: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected:
      'Say what you bought and how many, with its price and lot if you like; or “returned”, “opened”, “not bought”.',
    fix: 'bought 10 cartons at $32.50 lot B7',
  }),
  which: (got: string, things: readonly string[], fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `Do you mean ${which(things)}? Name one.`,
    fix,
  }),
  notListed: (got: string, things: readonly string[], fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `That isn’t on the list. It has ${which(things)}. Anything else you spend goes to “project spend”.`,
    fix,
  }),
  measure: (got: string, label: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `How much of “${label}” is that? Say how much in the unit on the list, or “all of it”.`,
    fix,
  }),
  bought: (got: string, label: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `All of “${label}” is already ticked off. Bought more? Say how many.`,
    fix,
  }),
  noneBought: (got: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: 'Nothing is marked as bought yet.',
    fix: WHOLE_LIST,
  }),
  tooMuch: (got: string, most: number, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `That’s more than ${most} at once: is it a typo?`,
    fix,
  }),
  whole: (got: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: 'Packages are whole: say how many.',
    fix,
  }),
  noTick: (got: string, label: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `“${label}” was bought with its price, lot or payer, and that would be lost. “${fix}” removes every purchase of it.`,
    fix: WHOLE_LIST,
  }),
  notBought: (got: string, label: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `You haven’t bought any “${label}” yet.`,
    fix: WHOLE_LIST,
  }),
} as const;

// What a project costs: estimate, actual, budget, and who pays.

export const SPEND = {
  headline: (spent: string, expected: string | undefined, budget: string | undefined, shares: string | undefined) =>
    `Spent ${spent}${expected === undefined ? '' : `, ${expected} expected in all`}${budget === undefined ? '' : `, of a budget of ${budget}`}${shares === undefined ? '' : `: ${shares}`}.`,
  added: (amount: string, what: string, payer: string) =>
    `Spent: ${amount}${what === '' ? '' : `, ${what}`} (${payer}).`,
  refunded: (amount: string, what: string, payer: string) =>
    `Refund: ${amount}${what === '' ? '' : `, ${what}`} (${payer}).`,
  removed: (what: string) => `Removed: ${what}.`,
  budgetSet: (amount: string) => `Budget: ${amount}.`,
  budgetGone: 'The budget is removed.',
  said: (text: string) => `spend: ${text}`,
  notGiven: 'no reason given',
  payers: { self: 'you', insurer: 'insurer', landlord: 'landlord' },
  stageTitle: 'By stage',
  stageColumns: ['Stage', 'Estimate', 'Spent', 'Left to buy'],
  tools: 'Tools',
  other: 'Other',
  cover: (who: string, what: string) => `Agreed: the ${who} pays ${what}.`,
  coverGone: (who: string) => `The ${who} pays nothing more than they already paid.`,
  sharesTitle: 'Who pays, in all',
  payerTitle: 'Paid so far, by whom',
  budgetTitle: 'Budget',
  budget: 'Budget',
  spent: 'Spent',
  left: 'Left to buy',
  expected: 'Expected in all',
  room: 'Within the budget by',
  over: 'Over the budget by',
  near: (share: string) => `Near the budget: what is spent and left to buy comes to ${share}% of it.`,
  past: (amount: string) => `Past the budget: what is spent and left to buy comes to ${amount} more.`,
  unpriced: (count: number) =>
    `${counted(count, 'thing')} on the shopping list ${count === 1 ? 'has' : 'have'} no price yet and ${count === 1 ? 'is' : 'are'} not included.`,
  listTitle: 'Entries',
  listColumns: ['No.', 'Day', 'What', 'Stage', 'Amount', 'Paid by'],
  purchasesTitle: 'From the shopping list',
  purchasesColumns: ['Day', 'What', 'Amount', 'Paid by'],
  others: (amounts: readonly string[]) => `in other currencies, not included: ${amounts.join(', ')}`,
  remove: (no: number) => `Remove entry ${no}`,
  stageTaken: (stage: string) => `counted under ${stage}`,
} as const;

export const SPEND_PROBLEMS = {
  unread: (got: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected:
      'Say what you paid and for what, a refund, or a budget; or what somebody else pays: “insurer pays $1,500”, “insurer pays 25%”, “insurer pays the tear-out”.',
    fix: 'spent $84.20 on adhesive, insurer',
  }),
} as const;

interface Sold {
  readonly label: string;
  readonly labels: string;
}

const each = (label: string, labels = `${label}s`): Sold => ({ label, labels });

export const NEEDS = {
  planks: (width: string, length: string) => `Planks ${width} × ${length}`,
  carton: (count: number) => each(`carton of ${count}`, `cartons of ${count}`),
  underlay: 'Underlay (pad)',
  underlayNote: 'only if your plank has no pad attached; see what a roll covers',
  underlayPlain: 'see what a roll covers',
  strips: 'Transition strips',
  stripsNote: (widths: readonly string[]) => `doorways ${widths.join(', ')}`,
  bags: (size: string) => `Contractor bags, ${size}`,
  bag: each('bag'),
  blades: 'Knife blades',
  blade: each('blade'),
  masks: 'N95 masks',
  mask: each('mask'),
  container: (yards: number) => `Container, ${yards} cu yd`,
  hire: each('container'),
  screws: (length: string) => `Subfloor screws, ${length} or longer`,
  pack: (count: number) => each(`pack of ${count}`, `packs of ${count}`),
  panels: (thickness: string, size: string) => `Subfloor panel ${thickness}, ${size}`,
  sheet: each('sheet'),
  blocks: '2×4 for blocks',
  blocksNote: (lengths: readonly string[]) => `cut in lengths of ${lengths.join(' and ')}`,
  blockScrews: 'Screws for the blocks, through the joist or toed in',
  adhesive: 'Subfloor adhesive',
  tub: (size: string) => each(`tub of ${size}`, `tubs of ${size}`),
  tube: (size: string) => each(`tube of ${size}`, `tubes of ${size}`),
  leveller: 'Leveling compound',
  sack: (size: string, fills: string) =>
    each(`bag of ${size} (fills ${fills} L)`, `bags of ${size} (each fills ${fills} L)`),
  primer: 'Primer for the leveling compound',
  stick: (length: string) => each(`stick of ${length}`, `sticks of ${length}`),
  baseboard: 'Baseboard',
  replacement: 'Baseboard for boards that break',
  profile: (name: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
  nails: (size: string) => `Finish nails, ${size}`,
  nailsNote: '15 or 16 gauge for base, 18 for shoe; for a nailer in strips, by the box',
  caulk: 'Caulk',
  filler: 'Wood filler',
  trimPrimer: 'Primer for trim',
  paint: 'Trim paint',
  quart: each('quart'),
} as const;
