/** Text of the tear-out answer and of the plan for the whole job. Figures arrive already formatted. */

import { byUnits } from './answer-text.ts';
import { counted } from './floor-text.ts';

export const COVERING_NAMES = {
  carpet: 'carpet',
  'sheet vinyl': 'sheet vinyl',
  'plank vinyl': 'vinyl plank',
  laminate: 'laminate',
  tile: 'ceramic tile',
} as const;

export const TEAROUT = {
  lines: {
    work: (covering: string, area: string, least: string, most: string) =>
      `${area} of ${covering}: ${least}–${most} hours for one person, not counting breaks.`,
    carpet: (carpet: string, pad: string) => `Carpet ${carpet} in rolls, pad ${pad} in bags.`,
    light: (weight: string) => `It could be as light as ${weight}: weigh a piece to be sure.`,
    held: (tackStrip: string, staples: readonly [number, number] | undefined) =>
      `${tackStrip} of tack strip to pry up${staples === undefined ? '' : `, and roughly ${staples[0]}–${staples[1]} staples`}.`,
    ready: (bags: number, blades: number, masks: number) =>
      `Have ready: ${[counted(bags, 'contractor bag'), ...(blades > 0 ? [counted(blades, 'knife blade')] : []), counted(masks, 'N95 mask')].join(', ')}.`,
  },
  leads: {
    weight: (total: string, haul: string) => `${total} in all, ${haul}.`,
    staples: ([least, most]: readonly [number, number]) => `Roughly ${least}–${most} staples.`,
    bags: (bags: number) => `About ${counted(bags, 'contractor bag')}.`,
  },
  strips: (count: number, size: string | undefined, heaviest: string, total: string, haul: string) =>
    size === undefined
      ? `Cut ${counted(count, 'strip')}, no roll over ${heaviest}: ${total}, ${haul}.`
      : `Cut ${counted(count, 'strip')} of ${size}, ${heaviest} a roll: ${total}, ${haul}.`,
  stacks: (covering: string, loads: number, limit: string, total: string, haul: string) =>
    `Carry the ${covering} out in ${counted(loads, 'load')} of at most ${limit}: ${total} in all, ${haul}.`,
  size: (width: string, length: string) => `${width} x ${length}`,
  pickup: (trips: number) => counted(trips, 'pickup load'),
  trailer: (trips: number) => counted(trips, 'trailer load'),
  container: (trips: number, size: string) =>
    `${trips === 1 ? 'a' : `${trips}`} ${size} container${trips === 1 ? '' : 's'}`,
  tileOnly: 'Weight and disposal only: how tile and its mortar come off is not worked out here.',
  stripsTitle: 'Strips to cut and roll',
  stripsColumns: ['Room', 'Strips', 'Width', 'Length', 'A roll weighs'],
  carryTitle: 'To carry out',
  area: 'Area',
  weight: 'Weight',
  usual: (low: string, high: string, rate: string) => `up to ${high} (${low} if it is light; usually ${rate})`,
  inAll: (total: string) => `${total} in all`,
  withPad: (total: string) => `${total} in all with the pad`,
  carpetAlone: 'Of that',
  carpetAloneOf: (carpet: string, pad: string) => `carpet ${carpet} in rolls, pad ${pad} in bags`,
  given: (weight: string) => `${weight}, by the weight you gave`,
  volume: 'Loose volume',
  haul: 'Haul',
  kerb: 'For curbside pickup',
  kerbFits: (length: string, weight: string, rolls: number, aWeek: number, weeks: number) =>
    `rolls are at most ${length} long and ${weight}${weeks > 1 ? `; ${rolls} rolls are ${counted(weeks, 'week')} at ${aWeek} a week` : ''}; bags may have to go into cans of at most ${byUnits('32 gallons (121 L)', '120 L')}: check with the hauler`,
  kerbNot: (length: string, weight: string) =>
    `some rolls are over ${length} long or ${weight}: cut narrower or shorter, or ask the hauler`,
  kerbStack: (length: string, weight: string, bundles: number) =>
    `${counted(bundles, 'bundle')} of at most ${length} and ${weight}`,
  fixTitle: 'Along the walls and on the floor',
  tackStrip: 'Tack strip',
  tackPieces: (length: string, pieces: number, piece: string) =>
    `${length}, about ${counted(pieces, 'piece')} of ${piece}; doorways left out`,
  tackDoubled: (long: string, pieces: number) => `; in rooms over ${long} it may lie doubled, then up to ${pieces}`,
  tackReach: 'Where to look',
  reach: (reach: string, gully: string) =>
    `its nails reach up to ${reach} out from the wall (it is set at most ${gully} off it)`,
  staples: 'Staples',
  staplesRange: (least: number, most: number) =>
    `${least}–${most}, an estimate: two to three rows in a pad ${byUnits("6' wide, one every 6 to 12 in", '1.8 m wide, one every 15 to 30 cm')}`,
  noStaples: 'none counted: on concrete a pad is glued, and tack strip is held by masonry nails',
  needTitle: 'To have ready',
  bags: 'Contractor bags',
  bagsValue: (bags: number, what: string) =>
    `${bags} of ${byUnits('42 gallons', '160 L')} for ${what}; blades and tack strip go into a box`,
  bagged: { pad: 'pad, dust and scraps', rubble: 'rubble, none filled beyond what you lift', dust: 'dust and scraps' },
  blades: 'Knife blades',
  masks: 'N95 masks',
  masksValue: (masks: number) => `${masks} (a fresh one per person every 4 hours)`,
  hours: 'One person',
  hoursValue: (least: string, most: string) => `${least}–${most} hours, not counting breaks and driving`,
  leadTitle: 'Painted trim to take off',
  leadArea: 'Painted surface',
  leadVerdict: 'By the 6 sq ft rule',
  minor:
    'up to 6 sq ft in a room, every removed part counted whole: minor repair, if each part comes off whole and goes back (tearing it off and throwing it away is demolition, which is not), and if no more is done in that room within 30 days; still wet it and keep the dust in',
  beyond: 'more than 6 sq ft: test the paint first; paid work here needs a lead-safe certified firm',
  severalRooms: 'counted as if all of it were in one room',
  young: (year: number) => `house built in ${year} or later: no lead rule applies`,
  leadElsewhere: 'Lead in the paint',
  testFirst: (year: number) =>
    `a home from before ${year}, or an unknown year: test the paint before it is pried, sanded or cut, and ask for the local rule`,
  youngElsewhere: (year: number) => `a home from ${year} or later: lead is not expected; the local rule wins`,
  proofFirst: (what: string, headline: string) =>
    `Proof first: a laboratory’s report that the “${what.slice(0, 40)}”, its backing and its glue hold no asbestos. Then: ${headline.charAt(0).toLowerCase()}${headline.slice(1)}`,
  stepsTitle: 'Order of work',
  actions: {
    container: 'With a container',
    pickup: 'With a pickup',
    plan: 'Plan the whole job',
  },
} as const;

/** Tear-out steps by covering, except photos and the look underneath; they assume nothing was tested. */
const TEAROUT_STEPS: Readonly<
  Record<'carpet' | 'sheet vinyl' | 'plank vinyl' | 'laminate' | 'tile', readonly string[]>
> = {
  carpet: [
    'Empty the room, take doors off, tape sheeting over its doorway, open a window.',
    'Section by section, from the far end to the door: slit the carpet from behind into strips, pull each off the tack strip, roll it face in and tie it with a slit strip.',
    'Carry the rolls out before the next section, so that nobody walks over them.',
    'Pull the pad of the section, bag it apart from the rolls, then pull or flatten every staple.',
    'Pry up the tack strip with a flat bar, points into a box; leave sound strip only where carpet comes again.',
    'Vacuum the section; only then start the next.',
    'At the end run a magnet and a gloved hand over the floor: anything that catches is a staple still in the floor.',
  ],
  'sheet vinyl': [
    'Empty the room, take doors off, tape sheeting over its doorway, open a window.',
    'Section by section: wet the sheet, score it into strips, pull and roll each from the far end, tie it.',
    'What does not come up with it stays where it is: no blade, no sander, no heat on backing or glue that was not tested. Ask the new floor’s maker whether it may be covered.',
    'Vacuum the section with a HEPA filter; only then start the next.',
  ],
  'plank vinyl': [
    'Empty the room and take off shoe or quarter-round; baseboards may stay.',
    'Begin at the wall that was laid last: unlock or lift row by row and stack boards that are whole.',
    'Section by section: roll up the underlay, then vacuum.',
  ],
  laminate: [
    'Empty the room and take off shoe or quarter-round; baseboards may stay.',
    'Begin at the wall that was laid last: tilt each row up out of its lock and stack the boards face to face.',
    'Section by section: roll up the underlay, then vacuum.',
  ],
  tile: [
    'Tile carries silica: how it comes off is not worked out here; wet methods, a respirator and a closed room come first.',
    'Carry small loads in buckets, and spread the weight over the floor and in the truck.',
    'A container for tile has a weight limit far below its volume: say what goes in when you order it.',
  ],
};

/** For sheet flooring that a lab cleared along with its backing and glue. */
const CLEARED_SHEET: readonly string[] = [
  'Empty the room, take doors off, tape sheeting over its doorway, open a window.',
  'Section by section: score the sheet into strips, pull and roll each from the far end, tie it.',
  'Wet what stays, leave it to soften as the maker of the remover says, and scrape it off with the blade flat.',
  'Vacuum the section; only then start the next.',
];

/** Glue is scraped only if a test cleared it. */
export function tearoutSteps(covering: keyof typeof TEAROUT_STEPS, cleared: boolean): readonly string[] {
  return covering === 'sheet vinyl' && cleared ? CLEARED_SHEET : TEAROUT_STEPS[covering];
}

export const TEAROUT_FIRST = {
  proof:
    'No step before the proof: samples of the floor, its backing and its glue go to an accredited laboratory, one for each layer, cut out wet, by someone the laboratory sends or instructs. A newer house is no proof.',
  photos:
    'Photograph every room, the stains and the layers before anything moves, and keep a piece of carpet and pad: the insurer asks for them.',
  look: 'Lift one corner first. Tile, sheet, paper or black glue below: stop, leave it whole and have it tested.',
} as const;

/** Nothing is assumed silently. */
export const NOT_GIVEN: Readonly<Record<'floor' | 'built' | 'doors', string>> = {
  floor: 'floor: assuming carpet with its pad',
  built: 'built: assuming an old house, as its year is unknown',
  doors: `doors: assuming one ${byUnits('32 in (813 mm)', '81 cm')} doorway per room`,
};

/** A stage: what to check before it starts, and what it needs. */
export interface StageWords {
  readonly name: string;
  readonly before: readonly string[];
  readonly work: readonly string[];
}

export const PLAN = {
  headline: (stages: number, area: string, least: string, most: string, wait: number) =>
    `${counted(stages, 'stage')} for ${area}: tear-out takes one person ${least}–${most} hours${wait === 0 ? '' : `, then ${counted(wait, 'hour')} of waiting before the floor`}.`,
  title: 'At a glance',
  area: 'Area',
  walls: 'Walls for trim',
  hours: 'Tear-out for one',
  hoursValue: (least: string, most: string) => `${least}–${most} hours`,
  wait: 'Waiting before the floor',
  waits: (acclimate: number, level: number) =>
    [
      ...(acclimate > 0 ? [`${acclimate} h for cartons in the room, once wet work is dry`] : []),
      ...(level > 0 ? [`${level} h for the leveler, or what its bag says`] : []),
    ].join('; ') || 'none fixed: the plank’s maker and the leveler’s bag decide',
  order: (stages: readonly string[]) => `In order: ${stages.map((name) => name.toLowerCase()).join(', ')}.`,
  waitsLine: (acclimate: number, level: number) =>
    acclimate + level === 0
      ? 'Waiting time depends on the plank’s maker and the leveler’s bag.'
      : `Wait ${[...(level > 0 ? [`${level} h for the leveler`] : []), ...(acclimate > 0 ? [`${acclimate} h with the cartons in the room`] : [])].join(', then ')}.`,
  wallsLine: (length: string) => `${length} of wall will take trim.`,
  stage: (number: number, name: string) => `${number}. ${name}`,
  must: (condition: string) => `First: ${condition}`,
  tools: 'Tools',
  toolColumns: ['Tool', 'Get it', 'Why'],
  trades: 'What a licensed trade must do',
  tearout: 'The tear-out in figures',
} as const;

export const PLAN_STAGES = {
  prepare: {
    name: 'Before anything moves',
    before: ['the cartons are ordered or the date is sure'],
    work: [
      'Measure every room, and the doors’ clearance over the new floor.',
      'Ask the hauler what they’ll pick up and how to tie it.',
    ],
  },
  tearOut: {
    name: 'Tear-out',
    before: ['what lies below is known: nothing old, black or papery', 'the rooms are empty and the dust is shut in'],
    work: ['Section by section: strips, pad, staples, tack strip; then vacuum.'],
  },
  subfloor: {
    name: 'Subfloor',
    before: ['every staple and nail is out', 'the floor is vacuumed'],
    work: [
      'Walk it and mark squeaks and soft spots; screw squeaks down to the joists.',
      'Cut out and replace what is rotten or delaminated, with its edges blocked.',
    ],
  },
  dryFlat: {
    name: 'Dry and flat',
    before: ['no leak, no wet spot, no new concrete without a moisture test', 'the subfloor does not move'],
    work: ['Measure moisture where the plank’s maker asks for it.'],
  },
  acclimate: {
    name: 'Cartons in the room',
    before: ['the room is heated or cooled as you live in it', 'wet work is dry'],
    work: ['Lay the cartons flat in the room, as the maker says.'],
  },
  floor: {
    name: 'Floor',
    before: [
      'the subfloor is dry, flat, clean and quiet',
      'all cartons are of one lot',
      'the leveler has dried and the cartons have had their hours',
    ],
    work: [
      'Undercut door casings with a piece of plank as the gauge.',
      'Lay row by row by the layout; keep the gap at every wall.',
    ],
  },
  trim: {
    name: 'Trim and thresholds',
    before: ['the last row is in and the spacers are out', 'the gap lies under the trim everywhere'],
    work: [
      'Nail base or shoe to the wall, never to the floor.',
      'Fix transition tracks to the subfloor, hang the doors again.',
    ],
  },
  finish: {
    name: 'Finish',
    before: ['all trim is nailed', 'nails are set'],
    work: [
      'Fill, caulk the top edge only, paint; wait between coats as the label says.',
      'Keep a few planks and the carton’s label for repairs.',
    ],
  },
} as const satisfies Record<string, StageWords>;

export const STAGE_NOTES = {
  straightedge: (over: string, gap: string) =>
    `Lay a ${over} straightedge every way: hollows over ${gap} are filled, humps sanded or planed.`,
  photos: 'Photograph rooms, damage and layers; keep a piece of carpet and pad for the insurer.',
  oldHouse: (margin: number) =>
    `The house was built up to ${margin} or in an unknown year: lift a corner first and stop at tile, sheet, paper or black glue.`,
  oldPaint: (year: number) => `Older than ${year}, or year unknown: test painted trim for lead before you pry it.`,
  tile: 'Tile holds silica: have it removed, or learn wet methods first.',
  level: (hours: number) => `Pour the leveler and leave it ${hours} h, or what its bag says.`,
  acclimate: (hours: number) => `Leave them ${hours} h.`,
  concrete:
    'Concrete: test its moisture before anything goes on it; a 6 mil film under a plank without a barrier of its own, where its maker asks for it.',
  heatedScrews:
    'Heated floor: no screw, nail or saw cut until its tubes or cables are found along their whole run. A licensed heating contractor knows how.',
  heatedFloor: [
    `Heated floor: a plank whose maker allows it; tubes or cables at least ${byUnits('1/2 in (13 mm)', '13 mm')} below it; off while you lay it, as long as the maker says.`,
    `Afterwards warm it up by ${byUnits('5 °F (3 °C)', '3 °C')} a day, the surface never over ${byUnits('80–85 °F (27–29 °C)', '27–29 °C')}.`,
  ],
} as const;

export const TOOLS = {
  knife: ['Utility knife and blades', 'own', 'strips, and planks that are scored and snapped'],
  bar: ['Flat bar and hammer', 'own', 'tack strip and shoe come up without harm to the wall'],
  pliers: ['End-cutting pliers', 'own', 'staples'],
  knees: ['Knee pads, gloves, goggles, N95 masks, ear muffs', 'own', 'each of you wears them the whole job'],
  vacuum: ['Vacuum with a HEPA filter', 'borrow or rent', 'fine dust that a broom only moves'],
  straightedge: ['Long straightedge', 'borrow', 'flatness; a straight plank edge with a string will do'],
  drill: ['Drill-driver', 'borrow', 'subfloor screws'],
  tapping: ['Tapping block, pull bar, spacers', 'own', 'rows closed without crushed edges'],
  undercut: ['Undercut saw or oscillating saw', 'rent', 'door casings, once'],
  saw: ['Miter saw or jigsaw', 'borrow or rent', 'trim, and planks round pipes'],
  nailer: ['Brad nailer, full sequential trigger', 'rent', 'trim; hammer and nail set will do in a small flat'],
  meter: ['Moisture meter', 'borrow or rent', 'wood subfloor and flooring within the maker’s limits'],
  mixer: ['Mixing paddle and buckets', 'rent', 'leveler'],
  scraper: ['Floor scraper', 'borrow', 'cleared glue that stays behind'],
} as const;

export const TRADES = [
  'Suspected asbestos: an accredited inspector for samples, a licensed contractor for removal.',
  'Gas, water and electric lines that are cut, moved or found damaged: a licensed plumber, gas fitter or electrician.',
  'Joists that are cracked, notched or rotten: a licensed contractor or an engineer.',
  `Sewage, or mold over about ${byUnits('10 sq ft', '1 m²')}: a water-damage company.`,
  'Paid painting or trim work in a home whose paint may hold lead (US: older than 1978): a lead-safe certified firm.',
] as const;
