/** Text of the trim list, reset, edges and finish answers. Figures arrive already formatted. */

import { byUnits } from './answer-text.ts';
import { counted } from './floor-text.ts';

export function trimHeadline(
  bought: readonly (readonly [count: number, length: string])[],
  pieces: number,
  cost: string | undefined,
): string {
  const all = bought.reduce((sum, [count]) => sum + count, 0);
  const cut = counted(pieces, 'piece');
  if (all === 0) return `Nothing to buy: what you have gives all ${cut}.`;
  const each = bought.map(([count, length]) => `${count} × ${length}`).join(', ');
  return `Buy ${counted(all, 'stick')} (${each}) for ${cut}${cost === undefined ? '' : `: ${cost}`}.`;
}

export const TRIM = {
  title: 'What to buy',
  lengthLine: (length: string, rooms: number, openings: number) =>
    `${length} of trim in ${counted(rooms, 'room')}${openings === 0 ? '' : `, ${counted(openings, 'door or opening', 'doors or openings')} left out`}.`,
  sureLine: (proven: boolean, priced: boolean) =>
    proven
      ? `Proven: with no joint along a wall, no other way to cut it ${priced ? 'costs less' : 'uses less'}.`
      : `A ${priced ? 'cheaper' : 'shorter'} way to cut it may exist; see “buy”.`,
  glueLine: (pieces: readonly string[]) => `Glue up first: ${pieces.join(', ')}, too short to nail.`,
  sticks: 'Sticks to buy',
  had: 'Sticks you have, used',
  length: 'Trim on the walls',
  openings: 'Openings with casing',
  cost: 'Cost',
  left: 'Left over',
  sure: 'How sure',
  proved: (priced: boolean) => (priced ? 'proven minimum cost' : 'proven minimum length'),
  widest: ', with the widest saw cut counted throughout',
  atMost: (over: string) => `at most ${over} above the least possible`,
  each: (count: number, length: string, price: string | undefined) =>
    `${count} × ${length}${price === undefined ? '' : ` at ${price}`}`,
  cutTitle: 'Cut the sticks',
  cutColumns: ['Stick', 'Saw marks, one after another from the squared end', 'Left'],
  mark: (at: string, piece: string) => `${at} ${piece}`,
  pieceTitle: 'Pieces, each wall from left to right as you face it',
  pieceColumns: ['Piece', 'Long point to long point', 'Left end', 'Right end', 'Stick'],
  glueTitle: 'Glue up first',
  glue: (pieces: readonly string[]) =>
    `${pieces.join(', ')}: too short to nail without splitting. Cut, glue to the neighboring piece on the bench, and let it set before it goes in.`,
  cornerTitle: 'Corners',
  cornerColumns: ['Wall', 'Length', 'Left corner', 'Right corner'],
  corner: (angle: string, setting: string) => `${angle}, saw ${setting}`,
  straight: 'straight on',
} as const;

/** `outside` if it goes around an outside corner. */
export function sayTrimCut(cut: 'miter' | 'square' | 'cope' | 'scarf', setting: string, outside: boolean): string {
  switch (cut) {
    case 'miter':
      return `${outside ? 'outside' : 'inside'} miter ${setting}`;
    case 'cope':
      return `cope, inside bevel ${setting}`;
    case 'scarf':
      return `scarf ${setting}`;
    case 'square':
      return 'square';
  }
}

export const TRIM_NOTES = {
  taken: (values: readonly string[]) => `Assuming ${values.join(', ')}. Say so if yours differ.`,
  takenValues: {
    stock: (lengths: string) => `sticks of ${lengths}`,
    casing: (width: string) => `${width} door casing`,
    thickness: (size: string) => `${size} thick trim`,
    kerf: (size: string) => `a ${size} saw cut`,
  },
  doorTaken: (door: string, wall: string) =>
    `Assuming the ${door} door is in the middle of ${wall}; else say where, such as “on wall 2”`,
  studs: (spacing: string, first: string) =>
    `Assuming studs every ${spacing}, the first ${first} from the left end of each wall: find them before you cut a joint`,
  turning: (room: string, turned: string) =>
    `corners of ${room} turn through ${turned} in all, and a closed room through 360°: measure them again`,
  coped: (corner: string) => `${corner} is out of square: coped, which hides it better than a miter`,
} as const;

const MEASURE =
  'Measure each wall at the floor before you cut: these lengths assume your walls are exactly as you measured. Check every corner with an angle gauge, and run it again with “corners: corner 3: 88.5” where one is off. Corner 3 lies between walls 3 and 4.';

export const TRIM_STEPS = {
  title: 'How to cut and fit it',
  base: [
    MEASURE,
    'Left and right are as you face the wall. Lengths run long point to long point: at an inside corner the long point is at the back, at an outside corner at the face.',
    'Cut the longest pieces first. Cut outside corners a little long, and try both pieces together before you nail one.',
    'Set the saw to the angle given, never more than it reaches, and never cut a corner freehand.',
  ],
  cope: 'A coped end: cut the inside bevel first, full wall length, then saw along the line that shows on the face, a little back of it, and file it to fit the square board beside it. Put up the square board first.',
  scarf:
    'A scarf joint: both ends at 30°, the same way, over the middle of a stud, with glue between and nails through both.',
  glue: 'Glue up the short pieces first.',
  full: 'A piece takes a whole stick to its very end: measure the stick first, and begin the miter with its long point right at the factory end.',
  nail: 'Nail into studs, two nails a stud; shoe goes onto the baseboard, never into the floor.',
} as const;

export const TRIM_ACTIONS = {
  cope: 'Cope the inside corners',
  finish: 'Nails, caulk and paint for it',
  reset: 'Set the old boards again instead',
} as const;

// Reusing the old boards.

export const RESET = {
  headline: (boards: number, broken: number, range: string) =>
    `${counted(boards, 'board')} to label and set again; ${broken === 0 ? 'none should break' : `expect ${broken} to break`} (${range}).`,
  range: (least: number, most: number) => (least === most ? String(least) : `${least} to ${most}`),
  moneyTitle: 'What each way costs',
  reset: 'Set the boards again',
  resetValue: (cost: string, broken: number) =>
    broken === 0
      ? 'nothing to buy as long as none breaks'
      : `${cost}: new stick for the ${counted(broken, 'longest board')}, in case those are the ones`,
  replace: 'Replace all of it',
  shoe: 'Leave the boards, shoe over the gap',
  sticks: (sticks: string, cost: string | undefined) => (cost === undefined ? sticks : `${cost}: ${sticks}`),
  noPrices: `Add prices to compare costs: “${byUnits('stock: 8 ft $7.98; 12 ft $12.48” and “shoe: 8 ft $3.98', 'stock: 2.4 m €8; 3.6 m €12” and “shoe: 2.4 m €4')}”.`,
  line: (label: string, value: string) => `${label}: ${value}.`,
  labelLine: 'Label each board on its back and on the wall behind it before you pry.',
  labelsTitle: 'Labels: write each on the back of its board and on the wall behind it',
  labelColumns: ['Label', 'Wall', 'Length', 'From the left'],
  mapTitle: 'Map: round each room to the right, from its door',
  map: (letter: string, room: string, labels: readonly string[]) => `${letter} = ${room}: ${labels.join(' → ')}`,
  stepsTitle: 'How to take them off',
  steps: [
    'House older than 1978 (elsewhere than about 1997): test the paint for lead before you pry.',
    'Score the caulk and paint along the top edge with a knife.',
    'Label first: the letter is the room, then the wall, then the place from the door. Photograph each wall with its labels.',
    'Pry at the studs with a thin bar against a scrap of wood, a little at each nail, back and forth along the board.',
    'Pull nails through from the back with pliers: the face does not chip.',
    'Set again in the order of the labels. A floor that is lower or higher than the old one leaves a line on the wall or a gap at the floor: shoe covers it.',
  ],
} as const;

// Floor edges: profiles, undercuts, stairs.

const SINGULAR: Readonly<Record<string, string>> = {
  't-moulding': 'T-molding',
  reducer: 'reducer',
  'end cap': 'end cap',
  nosing: 'stair nosing',
};

export function sayProfile(profile: string): string {
  return SINGULAR[profile] ?? profile;
}

export const EDGES = {
  headline: (
    counts: readonly (readonly [profile: string, edges: number])[],
    sticks: number,
    cost: string | undefined,
  ) =>
    `${counts.map(([profile, edges]) => counted(edges, sayProfile(profile))).join(', ')}: buy ${counted(sticks, 'length')}${cost === undefined ? '' : `, ${cost}`}.`,
  line: (name: string, profile: string, length: string, why: string) => `${name}: ${profile}, ${length} (${why}).`,
  stairsLine: (steps: number, length: string) => `Stairs: ${counted(steps, 'nosing')}, ${length} each.`,
  moreLine: (count: number) => `And ${count} more: see “list”.`,
  undercutLine: (height: string) => `Undercut door jambs and casings ${height} above the subfloor.`,
  title: 'At each doorway',
  stairsTitle: 'At each step',
  trip: (limit: string) => `; a step of more than ${limit} is a trip: a ramped threshold in its place`,
  columns: ['Doorway', 'Profile', 'Length', 'Step to the floor beyond', 'Why'],
  level: 'level',
  up: (by: string) => `up ${by}`,
  down: (by: string) => `down ${by}`,
  why: {
    't-moulding': 'both floors the same height',
    reducer: 'slopes down to the lower floor',
    nosing: 'over the edge of the step',
    hard: 'covers the edge beside the higher floor',
    carpet: 'covers the edge; tuck the carpet against it',
    track: 'covers the edge short of the track, so the door still slides',
  },
  buyTitle: 'What to buy',
  buy: (sticks: string, cost: string | undefined) => (cost === undefined ? sticks : `${sticks}, ${cost}`),
  undercut: 'Undercut jambs and casings at',
  undercutValue: (height: string, floor: string, clearance: string) =>
    `${height} over the subfloor: ${floor} floor and pad + ${clearance}`,
  riser: 'Steps',
  cutTitle: (profile: string) => `Cut: ${sayProfile(profile)}`,
  stepsTitle: 'How to fit it',
  steps: (trip: string) => [
    'Measure each doorway between the jambs before you cut: profiles run from jamb to jamb, or from stop to stop.',
    'Fix every track to the subfloor, never to or through the floating floor, and keep the floor’s gap beside it. Look for heating tubes and cables before a screw goes in.',
    'Undercut jambs and casings with a flush saw laid on a scrap of plank and pad. Cut the wall side too, so that the floor keeps its gap.',
    'A T-molding sits in its track with the gap of both floors under its wings. A reducer or an end cap closes over the last plank’s gap.',
    `A step of more than ${trip} is a trip: take a ramped threshold.`,
  ],
  nosingSteps: ['Each step: nosing glued and screwed to the tread, with nothing floating on a stair.'],
} as const;

export function riserText(floor: string, limit: string, over: boolean): string {
  const much = over ? `, more than ${limit}` : '';
  return `A landing that gains ${floor} makes the last riser higher by as much${much} unless every tread gains the same. Risers must stay alike within ${limit} from the lowest to the highest: measure all of them first, without carpet, rugs or runners, and as they will be with the new floor.`;
}

// Finishing: nails, caulk, filler, primer and paint.

export const FINISH = {
  headline: (nails: number, size: string, tubes: number, paint: string) =>
    `${counted(nails, 'nail')} (${size}), ${counted(tubes, 'tube')} of caulk, ${paint} of paint.`,
  leads: {
    paint: (paint: string, coats: number, length: string) =>
      `${paint} of paint for ${counted(coats, 'coat')} on ${length} of trim.`,
    caulk: (tubes: number, length: string) => `${counted(tubes, 'tube')} of caulk for ${length} of trim.`,
    nails: (nails: number, size: string, length: string) =>
      `${counted(nails, 'nail')} (${size}) for ${length} of trim.`,
  },
  lengthLine: (length: string, places: number) => `${length} of trim, nailed at ${places} places.`,
  nailLine: (size: string, into: string) => `${size} nails reach ${into} into the stud.`,
  primerLine: (amount: string) => `Also ${amount} of primer for bare wood and filler.`,
  caulkLine: 'Caulk the top edge only, never the bottom: the floor has to move.',
  title: 'What it takes',
  length: 'Trim',
  nails: 'Nails',
  nailsValue: (nails: number, per: number, places: number, size: string) =>
    `${nails} of ${size}: ${per} at each of ${places} places, every stud and both ends of each stretch`,
  nail: 'Nail length',
  nailValue: (size: string, trim: string, board: string, grip: string) =>
    `${size} ≥ ${trim} trim + ${board} wallboard + ${grip} into the stud`,
  gauge: 'Gauge',
  deep: (into: string) => `${into} into the stud`,
  caulk: 'Caulk, top edge only',
  caulkValue: (tubes: number, bead: string, each: string) =>
    `${counted(tubes, 'tube')}: a ${bead} bead, a tube gives ${each}`,
  filler: 'Filler',
  fillerValue: (tubs: number, tub: string, amount: string, holes: number) =>
    `${counted(tubs, 'tub')} of ${tub} (${amount} for ${counted(holes, 'hole')})`,
  primer: 'Primer',
  paint: 'Paint',
  coatsValue: (amount: string, coats: number, area: string) => `${amount}: ${counted(coats, 'coat')} on ${area}`,
  none: 'none',
  formulas: 'How it is calculated',
  formulaItems: [
    'Nails: studs behind each stretch, and its two ends, × nails a stud.',
    `Nail length: trim + wallboard + ${byUnits('3/4 to 1 in, up to the next 1/4 in or 5 mm', '20 to 25 mm, up to the next 5 mm')}.`,
    `Caulk: ${byUnits('in³ of the tube ÷ (bead² in in² × 12) = feet a tube', 'ml of the tube ÷ bead² in mm² = meters a tube')}; tubes are whole.`,
    'Paint and primer: length × (height + thickness) × coats ÷ coverage; the top edge is painted too.',
    'Filler: holes × π/4 × width² × depth.',
  ],
  stepsTitle: 'In this order',
  steps: [
    'Nail into studs: two nails a stud, one high and one low enough to meet the plate; outside corners glued and pinned.',
    'Shoe goes onto the baseboard with its own short nails, never into a floating floor.',
    'Set the nails, fill the holes a little proud, let it dry, sand with 120 grit, then all of it with 180. Wipe the dust off.',
    'Prime bare wood and filler. Sand with 220 once it is dry.',
    'Caulk the top edge only. Never the bottom edge: the floor must be able to move under it.',
    'Paint, sand lightly with 220, paint again.',
  ],
} as const;

/** A nail that goes deeper into the stud than is safe without checking. */
export function deepNailText(size: string, into: string, limit: string): string {
  return `A ${size} nail goes ${into} into the stud. Past ${limit} it may meet a cable or a pipe: find them first, or take a shorter nail.`;
}

type Bought = readonly [count: number, length: string, money: string | undefined];

export const TRIM_RUN = {
  headline: (count: number, length: string, money: string | undefined, run: string, share: string) =>
    `About ${counted(count, 'stick')} of ${length} for ${run} of trim with ${share} extra${money === undefined ? '.' : `: ${money}.`}`,
  supplies: (
    {
      tubes,
      nails,
      nail,
      paint,
    }: { readonly tubes: number; readonly nails: number; readonly nail: string; readonly paint: string },
    run: string,
  ) => `About ${counted(tubes, 'tube')} of caulk, ${nails} nails (${nail}) and ${paint} of paint for ${run} of trim.`,
  suppliesAssume: 'One thin bead along the top, two nails at every stud, two coats on base of the usual height.',
  nothing: (run: string) => `Nothing to buy: the sticks you have cover ${run}.`,
  others: (ways: readonly Bought[]) =>
    `Or ${ways.map(([count, length, money]) => `${count} × ${length}${money === undefined ? '' : ` for ${money}`}`).join(', or ')}.`,
  exact: 'For each cut, and fewer joints, give the room’s length and width.',
  assumedExtra: (share: string) => `Assuming ${share} extra for cuts and mistakes.`,
  whyTitle: 'Why this number',
  length: 'Trim, end to end',
  withExtra: (share: string) => `With ${share} extra`,
} as const;
