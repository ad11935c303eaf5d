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
  wideGap: (gap: string, run: string) => `gap not told: ${gap} taken, for a run of ${run} or more`,
  cartons: 'Cartons',
  planks: 'Planks to lay',
  mistakes: 'For mistakes',
  spares: 'Spares',
  left: 'Left over in the last carton',
  cost: 'Cost',
  area: 'Area, wall to wall',
  waste: 'Waste, computed',
  byArea: 'By area + 10 % (rule of thumb)',
  proof: 'Fewer planks?',
  used: (planks: number, reused: number) =>
    `${planks}${reused > 0 ? `; ${counted(reused, 'plank')} cut to serve twice or more` : ''}`,
  /** How sure a searched count is: `still` while the search goes on, `spare` planks between it and its bound, `jogs` where planks are cut round walls. */
  proved: (planks: number, spare: number, still: boolean, jogs: boolean) => {
    if (spare === 0)
      return `No, proven: no scattered layout of these rows needs fewer than ${planks}${jogs ? ', a plank cut round a jog counted whole' : ''}.`;
    const gap = `none of these rows needs fewer than ${planks - spare}`;
    return still
      ? `First answer, a better one may follow: ${gap}.`
      : `At most ${counted(spare, 'plank')} fewer: ${gap}.`;
  },
  taxed: (total: string, tax: string) => `${total} with ${tax} tax`,
  of: (cartons: number, perCarton: number, price: string | undefined) =>
    `${counted(cartons, 'carton')} of ${perCarton}${price === undefined ? '' : ` at ${price}`}`,
  /** `bound` is undefined when the count is proven least. */
  counted: (planks: number, reused: number, bound: number | undefined) => {
    const least = `no layout with rows this way needs fewer${bound === undefined ? '' : ` than ${bound}`}`;
    return `${planks} (${least})${reused > 0 ? `; ${counted(reused, 'plank')} cut to serve twice or more` : ''}`;
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
  /** Another pattern: what it needs, cartons it saves (below zero: takes), rules it breaks. */
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
  /** Part of a row that a wall leaves lower than a plank, measured from the row's left end. */
  notch: (from: string, to: string, height: string) => `${from} to ${to} only ${height} wide`,
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

const WALL =
  'Wall 1 is the lowest on the plan, drawn as you told it: the first side across, a walk setting off upwards. The others follow against the clock. Stand with your back to the starting wall and lay each row from left to right.';

const KEEP =
  '“Whole” counts every whole plank of the row, a first or last one too. “new” is cut from a new plank. “keep” is the rest of it: write its number on it, such as no. 12; where “no. 12” stands later, cut that piece from this rest.';

const SHAPES =
  '“rip” is the width to keep; the ripped edge faces the wall. “24" to 60" only 3" wide” is where a wall steps into the row, from its left end: cut the planks there to that width. Rows 5a, 5b are parts of row 5 with a wall between.';

const MEASURE = 'Measure each end piece in place before you cut it; the lengths here are what the told walls give.';

export const STEPS = {
  title: 'How to lay it',
  click: [
    WALL,
    'A start piece is the right part of a plank, an end piece the left part: the cut end always faces a wall, the locks meet in between.',
    KEEP,
    SHAPES,
    MEASURE,
  ],
  none: [WALL, 'These boards have no locks: any cut piece may face any way.', KEEP, SHAPES, MEASURE],
} as const;

function strip(which: string, height: string | undefined): string {
  return height === undefined ? `${which} row whole` : `${which} row ripped to ${height}`;
}

export const RULES_TITLE = 'Floor rules for this ask';
export const BROKEN_TITLE = 'Rules that cannot be kept here';
export const NOT_SCATTERED_TITLE = 'Joints that do not look scattered';
export const OFF_PATTERN_TITLE = 'Rows off the pattern';

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
      return offPattern(room, [row]);
  }
}

/** Rows that left the pattern for the rules' sake: a note, for every rule is kept there. */
export function offPattern(room: string, rows: readonly number[]): string {
  const which = rows.length === 1 ? `row ${rows[0]} is` : `rows ${rows.join(', ')} are`;
  return `${room}: ${which} moved off the pattern, so that no piece is too short and no joint too near.`;
}

/** Joints of a scattered floor that could not be kept from lining up or stepping like a stair. */
export function notScattered(room: string, rows: readonly number[]): string {
  const which = rows.length === 1 ? `row ${rows[0]}` : `rows ${rows.join(', ')}`;
  return `${room}: joints in ${which} line up with those two rows before, or step like a stair: no layout without that was found that keeps the other rules.`;
}

export const ACTIONS = {
  pattern: (name: string) => `Lay it ${name}`,
  patterns: 'Other pattern',
  direction: 'Turn the rows',
} as const;

/** The headline of one room's laying guide. */
export function oneRoomHeadline(room: string, rows: string, planks: string, cuts: number): string {
  return `${room}: ${rows}, from ${planks}, ${counted(cuts, 'piece')} to cut.`;
}

/** Which of several rooms was taken when none was named, and how to have another. */
export function largestTaken(room: string, others: readonly string[]): string {
  return `${room} is the largest room and is shown; for another tell “only: ${others.join('” or “only: ')}”`;
}
