/** Figures for laying floating click plank: rules that apply unless the maker or the user says otherwise. */

import { USUAL_WALL } from '../layout/doorways.ts';
import type { Source } from '../reply/reply.ts';
import { inches, type Length, millimetres } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited, COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';

const TRADE_GUIDANCE = { title: 'Trade guidance for floating floors', standing: 'reported' } as const;

export const STAGGER: Cited<Length> = {
  name: 'Stagger between joints of touching rows',
  said: '6 in (150 mm), or the maker’s, whichever is more',
  value: inches(6),
  source: TRADE_GUIDANCE,
};

export const SHORTEST_END: Cited<Length> = {
  name: 'Shortest end piece',
  said: '8 in (200 mm)',
  value: inches(8),
  source: COMMON_PRACTICE,
};

export const NARROWEST_STRIP: Cited<Length> = {
  name: 'Narrowest strip along a wall parallel to the rows',
  said: '2 in (50 mm), half a plank preferred',
  value: inches(2),
  source: TRADE_CUSTOM,
};

export const PERIMETER_GAP: Cited<Length> = {
  name: 'Gap at every wall',
  said: '1/4 in (6 mm); 1/2 in for runs of 50 to 85 ft',
  value: inches(0.25),
  source: TRADE_GUIDANCE,
};

/** The gap for such a run. */
export const LONG_RUN_GAP: Cited<{ readonly imperial: Length; readonly metric: Length }> = {
  name: 'Gap at every wall of a long run',
  said: '1/2 in (12 mm) for runs of 50 to 85 ft; beyond, its maker’s word on breaks',
  value: { imperial: inches(0.5), metric: millimetres(12) },
  source: TRADE_GUIDANCE,
};

/** From this length a run needs the wider gap, and the maker's advice on breaks. */
export const LONG_RUN: Cited<Length> = {
  name: 'Run from which a wider gap is asked',
  said: '50 ft',
  value: inches(600),
  source: TRADE_GUIDANCE,
};

export const KERF: Cited<Length> = {
  name: 'Kerf',
  said: '0 for score and snap, 1/8 in for a saw',
  value: inches(0),
  source: TRADE_CUSTOM,
};

export const MISTAKES_PERCENT: Cited<number> = {
  name: 'Allowance for mistakes',
  said: '3% of the computed planks',
  value: 3,
  source: TRADE_CUSTOM,
};

export const STAIR_STEP: Cited<{ readonly imperial: Length; readonly metric: Length; readonly rows: number }> = {
  name: 'Stair-step',
  said: 'each row stepped 6 in (150 mm) from the last, five rows, then start over',
  value: { imperial: inches(6), metric: millimetres(150), rows: 5 },
  source: COMMON_PRACTICE,
};

export const RULE_OF_THUMB_PERCENT: Cited<number> = {
  name: 'Rule-of-thumb waste, straight laying',
  said: '5–10% of the area; shown only beside the computed figure',
  value: 10,
  source: TRADE_CUSTOM,
};

export const HERRINGBONE_THUMB_PERCENT: Cited<number> = {
  name: 'Rule-of-thumb waste, herringbone',
  said: '15–20% of the area; shown only beside the computed figure',
  value: 15,
  source: TRADE_CUSTOM,
};

/** How far a printed carton area may differ from size × count, since printed sizes are nominal. */
const NOMINAL_PERCENT: Cited<number> = {
  name: 'Printed carton area against size × count',
  said: 'within 2%',
  value: 2,
  source: COMMON_PRACTICE,
};

/** Longest acclimation time of cartons in the room; the maker's own figure takes precedence. */
export const LONGEST_ACCLIMATION: Cited<number> = {
  name: 'Cartons in the room before laying',
  said: 'acclimation of none to 72 h: makers differ',
  value: 72,
  source: TRADE_GUIDANCE,
};

export const LAYING_DIRECTION: Cited<string> = {
  name: 'Way the rows run',
  said: 'along the longer side of the room, unless you say otherwise',
  value: 'long',
  source: COMMON_PRACTICE,
};

export const SPARES: Cited<number> = {
  name: 'Planks kept for repairs',
  said: 'none beyond what the last carton leaves, unless you say so; a few of the lot are worth keeping',
  value: 0,
  source: TRADE_CUSTOM,
};

/** Possible error of a wall length, for the confidence in the carton count. */
export const WALL_DOUBT: Cited<Length> = {
  name: 'Wall measured off by',
  said: '1/2 in, where you give none',
  value: inches(0.5),
  source: CAUTIOUS_DEFAULT,
};

const WALL_THICKNESS: Cited<Length> = {
  name: 'Wall that a doorway goes through',
  said: '4 1/2 in thick: a stud of 3 1/2 in and wallboard of 1/2 in on each side',
  value: USUAL_WALL,
  source: COMMON_PRACTICE,
};

/** Figures for laying planks, in the order they are used. */
export const PLANK_FIGURES = [
  STAGGER,
  SHORTEST_END,
  NARROWEST_STRIP,
  PERIMETER_GAP,
  LONG_RUN_GAP,
  LONG_RUN,
  KERF,
  MISTAKES_PERCENT,
  STAIR_STEP,
  RULE_OF_THUMB_PERCENT,
  HERRINGBONE_THUMB_PERCENT,
  NOMINAL_PERCENT,
  LAYING_DIRECTION,
  SPARES,
  WALL_DOUBT,
  WALL_THICKNESS,
  LONGEST_ACCLIMATION,
] as const;

// Rules of a floating floor that aren't calculations, and when they apply.

interface FloorTraits {
  readonly lock: 'click' | 'none';
  readonly attachedPad: boolean | undefined;
  readonly cartons: number;
  readonly longRun: boolean;
  /** The given gap is smaller than the standard one. */
  readonly smallGap: boolean;
}

type FloorRule =
  | 'one-lot'
  | 'mix-cartons'
  | 'measure-ten'
  | 'end-in-place'
  | 'gap-under-trim'
  | 'small-gap'
  | 'nothing-through'
  | 'tracks-to-subfloor'
  | 'one-pad'
  | 'pad-choice'
  | 'long-run'
  | 'dishwasher'
  | 'stairs'
  | 'keep-some';

/** The rules to show, in job order. All are common practice. */
export function floorRules({ lock, attachedPad, cartons, longRun, smallGap }: FloorTraits): readonly FloorRule[] {
  const floating = lock === 'click';
  const rules: [FloorRule, boolean][] = [
    ['one-lot', cartons > 1],
    ['mix-cartons', cartons > 1],
    ['measure-ten', true],
    ['end-in-place', true],
    ['gap-under-trim', true],
    ['small-gap', floating && smallGap],
    ['nothing-through', floating],
    ['tracks-to-subfloor', floating],
    ['one-pad', attachedPad === true],
    ['pad-choice', attachedPad === undefined && floating],
    ['long-run', longRun],
    ['dishwasher', true],
    ['stairs', true],
    ['keep-some', true],
  ];
  return rules.filter(([, touches]) => touches).map(([rule]) => rule);
}

// Plank over a heated floor. The plank's maker has the last word and may forbid it.

const MAKERS: Source = { title: 'Makers’ guides for floating plank over heated floors', standing: 'reported' };

/** Degrees Fahrenheit. */
const HEATED_SURFACE: Cited<{ readonly least: number; readonly most: number }> = {
  name: 'Surface of a heated floor',
  said: 'at most 80–85 °F (27–29 °C)',
  value: { least: 80, most: 85 },
  source: MAKERS,
};

const HEATED_DEPTH: Cited<Length> = {
  name: 'Pipes or cables of a heated floor',
  said: 'at least 1/2 in (13 mm) below the plank',
  value: inches(0.5),
  source: MAKERS,
};

/** Degrees Fahrenheit per day. */
const HEATED_STEP: Cited<number> = {
  name: 'Heating up a heated floor after laying',
  said: 'by 5 °F (3 °C) a day',
  value: 5,
  source: MAKERS,
};

export const HEATING_FIGURES = [HEATED_SURFACE, HEATED_DEPTH, HEATED_STEP] as const;
