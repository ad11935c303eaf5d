/** The words of the level answer. Figures come in already said. */

import { counted } from './floor.ts';

/** Bags and litres, each a figure or a range, and whether it is one bag. */
interface Amount {
  readonly bags: string;
  readonly one: boolean;
  readonly litres: string;
}

export const LEVEL = {
  flat: 'Flat enough',
  notFlat: 'Not flat enough',
  headline: (flat: boolean, worst: string, rule: string, fill: string | undefined) =>
    `${flat ? 'Flat enough' : 'Not flat enough'}: ${worst} against ${rule}.${fill === undefined ? '' : ` ${fill}`}`,
  fill: ({ bags, one, litres }: Amount) => `To fill: ${bags} ${one ? 'bag' : 'bags'} (${litres}).`,
  noFill: ({ bags, one, litres }: Amount) =>
    `No filling needed; up to the line it would take ${bags} ${one ? 'bag' : 'bags'} (${litres}).`,
  range: (least: string, most: string) => `${least} to ${most}`,
  litres: (litres: string) => `${litres} L`,
  perFoot: (pounds: string) => `${pounds} lb a sq ft`,
  perMetre: (kilograms: string) => `${kilograms} kg/m²`,
  overLine: ': a stop on wood',
  measureFirst: (load: string, limit: string) =>
    `Measure its shape first: filled it weighs ${load}, and over ${limit} is a stop on wood.`,
  measureHow:
    'Which depth to measure: halfway between the deepest place and the edge of the dip, on every side. As deep there as in the middle, it is even (“shape: even”): then stop and have a contractor look at the joists. Clearly shallower, it is a dish where it is round (“shape: dish”) or a trough where it is long (“shape: trough”), and the bags are worked out.',
  tooDeep: (worst: string, gap: string, over: string, load: string | undefined) =>
    `Stop here: ${worst}. On a wood floor more than ${gap} under a straightedge of up to ${over} is a question about what carries it first: a joist may sag, crack or rot, or its bearing may have sunk. ${load === undefined ? 'Planing it' : `Filling it lays ${load} on that and`} hides it.`,
  tooHeavy: (worst: string, load: string, limit: string) =>
    `Stop here: ${worst}. To fill it lays ${load} on the joists, and over ${limit} it is a question about what carries the floor first: why it sank, and whether it may carry that much more.`,
  stopCall:
    'a licensed contractor or a structural engineer, to look at the joists and what they rest on from below before anything is poured',
  slabRead: 'floor read as concrete',
  floorTaken: 'floor not told: taken as wood; on a slab type “floor: concrete”',
  title: 'Flatness',
  rule: 'Rule',
  ruleOf: (gap: string, over: string) => `${gap} in ${over}`,
  or: ' or ',
  low: 'Low',
  high: 'High',
  gap: (gap: string, over: string) => `${gap} over ${over}`,
  verdict: (flat: boolean, allowed: string) => (flat ? `within ${allowed}` : `more than ${allowed}`),
  grid: 'Grid',
  gridOf: (rows: number, columns: number, dx: string, dy: string) => `${rows} × ${columns} points, ${dx} × ${dy} apart`,
  spread: 'Highest to lowest',
  straight: 'Straightedge on the grid',
  straightOf: (straight: boolean) => (straight ? 'lies within the rule everywhere' : 'leaves too wide a gap somewhere'),
  fillTitle: 'Levelling compound',
  volume: 'Volume',
  volumeOf: (litres: string, cubicFeet: string) => `${litres} (${cubicFeet} cu ft)`,
  shapes: {
    dish: 'As a round dish, 1/2 of gap × area',
    trough: 'As a long trough, 2/3 of it',
    even: 'As deep all over, all of it',
  },
  loadOf: (load: string) => `${load} wet`,
  ramp: 'Ramp, ½ × area × height',
  cells: 'Grid, cell by cell',
  bags: 'Bags',
  bagsOf: (bags: string, litres: string, weight: string) =>
    `${bags} of ${weight}, ${litres} L each; the bag’s own figure wins`,
  buy: 'Buy',
  buyOf: (bags: number) =>
    `${counted(bags, 'bag')}, for the fullest shape: what stays shut goes back, and a pour must not stop for want of a bag`,
  pours: 'Pours',
  poursOf: (pours: number, most: string) => `${pours}, at most ${most} at once; the bag’s own figure wins`,
  weight: 'Weight added',
  weightOf: (weight: string) => `${weight} of dry powder, and its mixing water until it dries`,
  primer: 'Primer',
  primerOf: (area: string) => `${area} to prime, or as the bag says; let it turn clear or dry before you pour`,
  untold: 'How much',
  untoldOf: 'tell the low area (“area: 4 x 6 ft”), a ramp, or a grid of depths, and the bags are worked out',
  highTitle: 'High spots',
  highOf: (gap: string, over: string, take: string) =>
    `Gap ${gap} over ${over}: take off about ${take}, then lay the straightedge on it again.`,
  highGrid: (count: number, most: string) =>
    `${counted(count, 'point')} above the line, up to ${most}: taken down to it before you fill.`,
  highHow:
    'Wood: plane or sand with a vacuum and an N95 mask; look for nail heads first and sink them. Concrete: grind only with a shroud, a HEPA vacuum and a respirator, or hire it out. Old tile, sheet or black adhesive: never.',
  stepsTitle: 'How to do it',
  steps: {
    wood: [
      'Fasten what is loose, set nail heads, fill panel gaps and holes below so that nothing runs through.',
      'Use a compound that is made for wood floors, with its primer and, where the bag asks for it, its lath or mesh.',
      'Dam doorways and vents. Mix with the water on the bag, no more; two people, one mixes, one spreads.',
      'Pour at the lowest place, feather out to nothing at the edge with a straightedge.',
      'Let it dry as long as the bag says, lay the straightedge on it again, then check moisture.',
    ],
    concrete: [
      'Clean to bare, sound concrete: no dust, paint or old adhesive that you have not had tested.',
      'Check moisture first (ask “moisture”); prime as the bag says.',
      'Dam doorways and drains. Mix with the water on the bag, no more; two people, one mixes, one spreads.',
      'Pour at the lowest place, feather out to nothing at the edge with a straightedge.',
      'Let it dry as long as the bag says, then lay the straightedge on it again.',
    ],
  },
  oldFloor: {
    why: 'High spots on an old floor are not sanded or ground: old resilient flooring and its adhesive may hold asbestos.',
    call: 'an accredited asbestos inspector for the test, then a licensed abatement contractor',
  },
  short: (over: string, allowed: string) => `a reading over ${over} held to ${allowed} there`,
} as const;
