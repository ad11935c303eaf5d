/** The words of a plank answer: headline, labels, steps. Figures come in already said. */

/** Counts that a headline tells. */
export interface Bought {
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

export const BUY = {
  title: 'What to buy',
  cartons: 'Cartons',
  planks: 'Planks to lay',
  mistakes: 'For mistakes',
  spares: 'Spares',
  left: 'Left over in the last carton',
  cost: 'Cost',
  area: 'Area, wall to wall',
  waste: 'Waste, computed',
  byArea: 'By area + 10 % (rule of thumb)',
  taxed: (total: string, tax: string) => `${total} with ${tax} tax`,
  of: (cartons: number, perCarton: number) => `${counted(cartons, 'carton')} of ${perCarton}`,
  /** `bound` is undefined when the count is proven least. */
  counted: (planks: number, reused: number, bound: number | undefined) =>
    `${planks} (${bound === undefined ? 'no layout with rows this way needs fewer' : `no layout with rows this way needs fewer than ${bound}`}); ${counted(reused, 'plank')} cut to serve twice or more`,
} as const;

export const LAY = {
  title: 'How it is laid',
  rows: 'Rows',
  direction: 'Direction',
  pattern: 'Pattern',
  strips: 'First and last row',
  rules: 'Rules kept',
  others: 'Other patterns',
  region: (rows: number, wall: number, first: string | undefined, last: string | undefined) =>
    `${counted(rows, 'row')}, starting at wall ${wall}; ${strip('first', first)}, ${strip('last', last)}`,
  stair: (step: string, rows: number) => `stair-step, ${step} a row, ${rows} rows, then start over`,
  kept: (rules: readonly (readonly [string, string])[]) => rules.map((rule) => rule.join(' ')).join(', '),
  /** Another pattern: what it needs, cartons it saves (below zero: takes), rules it breaks. */
  other: (name: string, planks: number, cartons: number, saved: number, broken: number) => {
    const notes = [
      ...(saved > 0 ? [`saves ${counted(saved, 'carton')}`] : []),
      ...(broken > 0 ? [`breaks a rule in ${counted(broken, 'place')}`] : []),
    ];
    return `${name} ${counted(planks, 'plank')}, ${counted(cartons, 'carton')}${notes.length > 0 ? ` (${notes.join('; ')})` : ''}`;
  },
} as const;

export const GUIDE = {
  title: (room: string) => `Laying guide: ${room}`,
  columns: ['Row', 'Start', 'Whole', 'End', 'Cut from'],
  ripped: (height: string) => `rip ${height}`,
  notch: (height: string) => `notch at ${height}`,
  wallToWall: (length: string) => `${length} wall to wall`,
  whole: 'whole',
  start: 'start',
  end: 'end',
  only: 'piece',
  /** A piece cut from a new plank; `rest` is what to keep of it, under the plank's number. */
  fresh: (piece: string, plank: number, rest: string | undefined) =>
    rest === undefined ? `${piece} new` : `${piece} new, keep ${rest} (no. ${plank})`,
  rest: (piece: string, plank: number) => `${piece} no. ${plank}`,
} as const;

const KEEP =
  'Write its number on each rest you keep, such as no. 12; “start no. 12” is cut from that rest, “new” from a new plank.';

export const STEPS = {
  title: 'How to lay it',
  click: [
    'Stand with your back to the starting wall and lay each row from left to right.',
    'A start piece is the right part of a plank, an end piece the left part: the cut end always faces a wall, the locks meet in between.',
    KEEP,
    'Measure each end piece in place before you cut it; the lengths here are what the told walls give.',
  ],
  none: [
    'Stand with your back to the starting wall and lay each row from left to right.',
    'These boards have no locks: any cut piece may face any way.',
    KEEP,
    'Measure each end piece in place before you cut it; the lengths here are what the told walls give.',
  ],
} as const;

function strip(which: string, height: string | undefined): string {
  return height === undefined ? `${which} row whole` : `${which} row ripped to ${height}`;
}

export const RULES_TITLE = 'Floor rules for this ask';
export const BROKEN_TITLE = 'Rules that cannot be kept here';

/** A rule not kept, in words. */
export function sayBroken(rule: string, room: string, row: number, place: string, asked: string): string {
  switch (rule) {
    case 'stagger':
      return `${room}, row ${row}: a joint ${place} from the left is nearer than ${asked} to one in the row before.`;
    case 'minEnd':
      return `${room}, row ${row}: the piece at ${place} from the left is shorter than ${asked}.`;
    case 'minRip':
      return `${room}, row ${row}: the strip along the wall at ${place} from the starting wall is narrower than ${asked}.`;
    default:
      return `${room}, row ${row}: moved off the pattern, so that its pieces keep the other rules.`;
  }
}

export const ACTIONS = {
  pattern: (name: string) => `Lay it ${name}`,
  direction: 'Turn the rows',
} as const;
