/** Figures for trim: how boards are cut, joined and what they are taken to measure until told otherwise. */

import { WIDEST_COPE } from '../trim/pieces.ts';
import { feet, inches, type Length } from '../units/length.ts';
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

export const SAW_SETTING: Cited<number> = {
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
  said: 'moulded base: inside corners coped; square-edged base: inside corners butted; outside corners of either mitered',
  value: 'cope or butt inside, miter outside',
  source: { title: 'NAVEDTRA 14044', publisher: 'US Navy', section: 'p. 208', standing: 'published' },
};

export const SCARF_JOINT: Cited<number> = {
  name: 'Scarf joint',
  said: '30°, centred on a stud; costs thickness × tan 30° of stick',
  value: 30,
  source: { title: 'Fine Homebuilding', standing: 'reported' },
};

export const STUD_SPACING: Cited<Length> = {
  name: 'Studs, centre to centre',
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
  name: 'Shoe moulding',
  said: '1/2 x 3/4 in, nailed to the baseboard, never to the floor',
  value: inches(0.5),
  source: { title: 'NAVEDTRA 14044; This Old House (nailed to the baseboard)', standing: 'reported' },
};

export const BREAKS: Cited<{ readonly least: number; readonly usual: number; readonly most: number }> = {
  name: 'Boards that break when taken off',
  said: '5–25 %, 10 % where none is told',
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
  said: 'taken as square: 90°; measure them, walls wander',
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
export const WIDEST_COPE_ANGLE: Cited<number> = {
  name: 'Inside corner that is coped',
  said: 'less than 120°; wider ones are mitered',
  value: WIDEST_COPE,
  source: COMMON_PRACTICE,
};

/** Degrees that the corners of a room may come to more or less than a full turn. */
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

/** Figures of cutting trim, in the order in which they come up. */
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
