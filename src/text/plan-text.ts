/** Text of the plan for the whole job: stages, conditions for starting each, tools, and trades to hire. */

import { counted } from './floor-text.ts';
import { byUnits } from './units-text.ts';

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
