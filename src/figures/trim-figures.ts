/** Figures for trim: cutting, nailing, caulking, painting, and floor edges at doorways and stairs. */

import { WIDEST_COPE } from '../trim/pieces.ts';
import { feet, inches, type Length, millimetres } from '../units/length.ts';
import { type Cited, COMMON_PRACTICE } from './cited.ts';

export const TRIM_THICKNESS: Cited<Length> = {
  name: 'Thickness of baseboard',
  said: '9/16 in',
  value: inches(0.5625),
  source: COMMON_PRACTICE,
};

export const CASING_WIDTH: Cited<Length> = {
  name: 'Width of door casing',
  said: '2 1/4 in each side',
  value: inches(2.25),
  source: COMMON_PRACTICE,
};

export const SAW_KERF: Cited<Length> = {
  name: 'Kerf of a miter saw',
  said: '1/8 in; kerf ÷ cos(setting) along the stick',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

const SAW_SETTING: Cited<number> = {
  name: 'Saw setting for a miter',
  said: '|180° − interior angle| ÷ 2: 90° → 45°, 135° → 22.5°, 270° → 45°',
  value: 45,
  source: { title: 'Trade guidance on miters', standing: 'reported' },
};

export const SAW_REACH: Cited<number> = {
  name: 'How far a miter saw swings',
  said: '50°',
  value: 50,
  source: COMMON_PRACTICE,
};

export const JOINTS: Cited<string> = {
  name: 'Joints of baseboard',
  said: 'molded base: inside corners coped; square-edged base: inside corners butted; outside corners of either mitered',
  value: 'cope or butt inside, miter outside',
  source: { title: 'NAVEDTRA 14044', publisher: 'US Navy', section: 'p. 208', standing: 'published' },
};

const SCARF_JOINT: Cited<number> = {
  name: 'Scarf joint',
  said: '30°, centred on a stud; costs thickness × tan 30° of stick',
  value: 30,
  source: { title: 'Fine Homebuilding', standing: 'reported' },
};

export const STUD_SPACING: Cited<Length> = {
  name: 'Studs, center to center',
  said: '16 in (24 in in some walls)',
  value: inches(16),
  source: { title: 'International Residential Code', section: 'R602.3(5)', standing: 'reported' },
};

export const GLUE_UP: Cited<Length> = {
  name: 'Piece short enough to be glued up before it goes in',
  said: '6 in and shorter',
  value: inches(6),
  source: COMMON_PRACTICE,
};

export const SHOE: Cited<Length> = {
  name: 'Shoe molding',
  said: '1/2 x 3/4 in, nailed to the baseboard, never to the floor',
  value: inches(0.5),
  source: { title: 'NAVEDTRA 14044; This Old House (nailed to the baseboard)', standing: 'reported' },
};

export const BREAKS: Cited<{ readonly least: number; readonly usual: number; readonly most: number }> = {
  name: 'Boards that break coming off',
  said: '5–25%, 10% if you give none',
  value: { least: 500, usual: 1000, most: 2500 },
  source: COMMON_PRACTICE,
};

export const STICKS: Cited<readonly Length[]> = {
  name: 'Sticks of trim on sale',
  said: '8, 12 and 16 ft',
  value: [feet(8), feet(12), feet(16)],
  source: COMMON_PRACTICE,
};

export const SQUARE_CORNERS: Cited<number> = {
  name: 'Corners of a room, unmeasured',
  said: 'assumed square: 90°; measure them, walls wander',
  value: 90,
  source: COMMON_PRACTICE,
};

export const END_TRIM: Cited<Length> = {
  name: 'Cut off each stick before it is used',
  said: 'nothing, unless its end is not square',
  value: inches(0),
  source: COMMON_PRACTICE,
};

/** Degrees, interior. */
const WIDEST_COPE_ANGLE: Cited<number> = {
  name: 'Inside corner that is coped',
  said: 'less than 120°; wider ones are mitered',
  value: WIDEST_COPE,
  source: COMMON_PRACTICE,
};

/** Degrees by which the corners of a room may miss a full turn. */
export const OFF_TURN: Cited<number> = {
  name: 'Corners of a room that are worth measuring again',
  said: 'more than 1° off a full turn',
  value: 1,
  source: COMMON_PRACTICE,
};

export const NO_SLACK: Cited<Length> = {
  name: 'Stick with nothing to spare',
  said: 'less than 1/8 in left over: a slip of the saw costs it',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

/** Figures for cutting trim, in the order they are used. */
export const TRIM_FIGURES = [
  TRIM_THICKNESS,
  CASING_WIDTH,
  SAW_KERF,
  SAW_SETTING,
  SAW_REACH,
  JOINTS,
  SCARF_JOINT,
  STUD_SPACING,
  GLUE_UP,
  SHOE,
  BREAKS,
  STICKS,
  SQUARE_CORNERS,
  END_TRIM,
  WIDEST_COPE_ANGLE,
  OFF_TURN,
  NO_SLACK,
] as const;

// Nailing.

export const NAILS_PER_STUD: Cited<number> = {
  name: 'Nails in baseboard',
  said: 'two at every stud',
  value: 2,
  source: { title: 'NAVEDTRA 14044', publisher: 'US Navy', standing: 'published' },
};

export const NAIL_GRIP: Cited<Length> = {
  name: 'How far a nail goes into the stud',
  said: '3/4 to 1 in: nail = trim + wallboard + that',
  value: inches(0.75),
  source: COMMON_PRACTICE,
};

export const DEEPEST_NAIL: Cited<Length> = {
  name: 'Nail so far into a stud that it may meet a cable or a pipe',
  said: 'more than 1 1/4 in: holes for cables stand at least that far from the stud’s face',
  value: inches(1.25),
  source: {
    title: 'National Electrical Code',
    publisher: 'NFPA',
    section: '300.4(A)(1)',
    standing: 'reported',
  },
};

export const WALLBOARD: Cited<Length> = {
  name: 'Thickness of wallboard',
  said: '1/2 in',
  value: inches(0.5),
  source: COMMON_PRACTICE,
};

export const NAIL_GAUGE: Cited<string> = {
  name: 'Gauge of finish nails',
  said: '15 or 16 gauge for base into studs, 18 gauge for shoe and thin trim; for a nailer they are bought in strips, by the box',
  value: '15 or 16, 18',
  source: { title: 'Trade guidance on nailing trim', standing: 'reported' },
};

/** Nails are sold in steps of a quarter inch, or of 5 mm. */
export const NAIL_STEPS: Cited<{ readonly imperial: Length; readonly metric: Length }> = {
  name: 'Lengths that nails are sold in',
  said: 'steps of 1/4 in, or 5 mm',
  value: { imperial: inches(0.25), metric: millimetres(5) },
  source: COMMON_PRACTICE,
};

export const LEAST_IN_STUD: Cited<Length> = {
  name: 'Nail that does not hold in the stud',
  said: 'less than 1/2 in into it',
  value: inches(0.5),
  source: COMMON_PRACTICE,
};

/** A stud closer to an end than half its own width takes the same nails as the framing there. */
export const SAME_STUD: Cited<Length> = {
  name: 'Stud assumed as the framing at an end',
  said: 'nearer than 3/4 in, half its width',
  value: inches(0.75),
  source: COMMON_PRACTICE,
};

export const NAIL_FIGURES = [
  NAILS_PER_STUD,
  NAIL_GRIP,
  LEAST_IN_STUD,
  DEEPEST_NAIL,
  NAIL_GAUGE,
  NAIL_STEPS,
  SAME_STUD,
  WALLBOARD,
] as const;

// Caulking and filling nail holes.

export const CAULK_BEAD: Cited<Length> = {
  name: 'Bead of caulk along the top of trim',
  said: '1/8 in; never along its foot on a floating floor',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

/** 231/128 in³ per fluid ounce; 10.1 fl oz are 18.23 in³, 0.29869 L. */
export const CAULK_TUBE: Cited<number> = {
  name: 'Caulk in a tube',
  said: '10.1 fl oz = 18.23 in³; feet = in³ ÷ (bead² in in² × 12): 24.3 ft at 1/4 x 1/4 in',
  value: 10.1 * 0.0295735295625,
  source: {
    title: 'NIST Handbook 44, appendix C; length derived',
    publisher: 'NIST',
    standing: 'published',
  },
};

export const NAIL_HOLE: Cited<Length> = {
  name: 'Nail hole to fill',
  said: '1/8 in wide and deep',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

export const CAULK_FIGURES = [CAULK_BEAD, CAULK_TUBE, NAIL_HOLE] as const;

/** Square meters per liter: 350 ft² per US gallon. */
export const PAINT_COVERAGE: Cited<number> = {
  name: 'What paint covers',
  said: '350–400 sq ft a gallon, a quart 100; figured with 350',
  value: (350 * 0.09290304) / 3.785411784,
  source: { title: 'almanac.com on how far paint goes', standing: 'reported' },
};

export const PAINT_COATS: Cited<number> = {
  name: 'Coats of paint on trim',
  said: 'two, over one of primer',
  value: 2,
  source: COMMON_PRACTICE,
};

export const TRIM_HEIGHT: Cited<Length> = {
  name: 'Height of baseboard',
  said: '3 1/4 in',
  value: inches(3.25),
  source: COMMON_PRACTICE,
};

const SANDING: Cited<string> = {
  name: 'Sanding trim',
  said: '120 grit for filler, 180 grit before paint, 220 grit between coats',
  value: '120, 180, 220',
  source: COMMON_PRACTICE,
};

export const PAINT_FIGURES = [PAINT_COVERAGE, PAINT_COATS, TRIM_HEIGHT, SANDING] as const;

// Floor edges at doorways and stairs.

export const LEVEL_FLOORS: Cited<Length> = {
  name: 'Floors level enough for a T-molding',
  said: 'within 1/8 in; a lower floor takes a reducer, a higher one, carpet or a track an end cap',
  value: inches(0.125),
  source: COMMON_PRACTICE,
};

const TRACK: Cited<string> = {
  name: 'Track of a transition',
  said: 'fixed to the subfloor, never through a floating floor',
  value: 'subfloor',
  source: COMMON_PRACTICE,
};

export const UNDERCUT_CLEARANCE: Cited<Length> = {
  name: 'Clearance under jambs and casings',
  said: '1/16 in over floor and pad',
  value: inches(0.0625),
  source: COMMON_PRACTICE,
};

export const ALIKE_RISERS: Cited<Length> = {
  name: 'Stair risers alike',
  said: 'within 3/8 in from the lowest to the highest, measured without carpets, rugs or runners',
  value: inches(0.375),
  source: { title: 'International Residential Code', publisher: 'ICC', section: 'R311.7.5.1', standing: 'reported' },
};

export const FLOOR_HEIGHT: Cited<Length> = {
  name: 'Height of a click plank floor with its pad',
  said: '5/16 in; measure yours',
  value: inches(0.3125),
  source: COMMON_PRACTICE,
};

export const PROFILE_STICKS: Cited<readonly Length[]> = {
  name: 'Lengths of profile on sale',
  said: '36, 72 and 94 in',
  value: [inches(36), inches(72), inches(94)],
  source: COMMON_PRACTICE,
};

export const TRIP: Cited<Length> = {
  name: 'Step at a doorway that is a trip',
  said: 'more than 1/2 in: a ramped threshold',
  value: inches(0.5),
  source: COMMON_PRACTICE,
};

export const EDGE_FIGURES = [
  LEVEL_FLOORS,
  TRACK,
  UNDERCUT_CLEARANCE,
  ALIKE_RISERS,
  FLOOR_HEIGHT,
  PROFILE_STICKS,
  TRIP,
] as const;
