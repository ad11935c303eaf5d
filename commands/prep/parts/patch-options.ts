/** The options that subfloor commands share. */

import {
  BEAD,
  ENGINEERED_JOIST,
  JOIST_DEPTH,
  JOIST_RUN,
  JOIST_SPACING,
  JOIST_WIDTH,
  PANEL_THICKNESS,
  PATCH_MARGIN,
  SHEET,
  TUBE,
} from '../../../src/figures/subfloor-figures.ts';
import { choice, length, text } from '../../../src/input/options.ts';
import { readFound } from '../../../src/input/parse-found.ts';
import { readSheet, readTube } from '../../../src/input/parse-place.ts';
import { type Read, type Reading, read, unread } from '../../../src/input/reading.ts';
import type { ToldRooms } from '../../../src/input/readings-made.ts';
import { readRooms } from '../../../src/input/rooms/parse-room.ts';
import { severalRooms } from '../../../src/text/prep-problems-text.ts';
import { feet, inches, ticks } from '../../../src/units/length.ts';

export const foundOption = text(
  {
    summary: 'What you found there, in your words: stain, rot in a joist, sagging, cable, pipe, sewage',
    example: 'water stain',
    standard: 'none',
  },
  readFound,
);

export const spacingOption = length({
  summary: 'Joists, centre to centre',
  standard: '16 in',
  metric: '400 mm',
  record: JOIST_SPACING,
  example: '24 in',
  least: inches(8),
  most: inches(24.1),
});

export const thicknessOption = length({
  summary: 'Thickness of the subfloor panel',
  standard: '3/4 in',
  metric: '18 mm',
  record: PANEL_THICKNESS,
  example: '5/8 in',
  least: inches(0.25),
  most: inches(2),
});

const nothing = ticks(0);

export const firstJoist = length({
  summary: 'Centre of the first joist from the left wall (from the bottom wall where joists run across)',
  example: '16 in',
  least: nothing,
  most: feet(40),
});

/** Everything else that a patch depends on, each with its usual value. */
export const patchOptions = {
  joists: choice(['up', 'across'], {
    summary: 'Joists run up the plan or across it',
    standard: 'up',
    record: JOIST_RUN,
  }),
  room: text(
    {
      summary: 'The room’s sides, if the damage is near a far wall',
      example: `12' x 14'`,
      standard: 'none',
      colons: 'rooms',
    },
    readRoom,
  ),
  margin: length({
    summary: 'Sound wood round the damage',
    standard: '2 in',
    record: PATCH_MARGIN,
    metric: '50 mm',
    example: '3 in',
    least: nothing,
    most: inches(12),
  }),
  'joist-width': length({
    summary: 'How wide a joist is',
    standard: '1 1/2 in',
    record: JOIST_WIDTH,
    metric: '38 mm',
    example: '2 1/2 in',
    least: inches(1),
    most: inches(6),
  }),
  'joist-depth': length({
    summary: 'How deep a joist is; the shallowest usual one unless told',
    standard: '5 1/2 in',
    record: JOIST_DEPTH,
    metric: '140 mm',
    example: '9 1/4 in',
    least: inches(3),
    most: inches(24),
  }),
  notch: length({
    summary: 'Depth of a notch in a joist there',
    standard: '0',
    example: '1 in',
    least: nothing,
    most: inches(24),
  }),
  'notch-length': length({
    summary: 'Its length along the joist',
    standard: '0',
    example: '2 in',
    least: nothing,
    most: feet(10),
  }),
  'notch-place': choice(['untold', 'end', 'outer', 'middle'], {
    summary: 'Where the notch is: at an end, in the outer or the middle third of the span',
    standard: 'untold',
  }),
  hole: length({
    summary: 'Width of a hole through a joist there',
    standard: '0',
    example: '1 in',
    least: nothing,
    most: inches(24),
  }),
  'hole-edge': length({
    summary: 'From the hole to the joist’s nearer edge',
    standard: '0',
    example: '2 in',
    least: nothing,
    most: inches(24),
  }),
  'hole-apart': length({
    summary: 'From the hole to the nearest other hole or notch',
    standard: '0',
    example: '4 in',
    least: nothing,
    most: feet(40),
  }),
  'joist-kind': choice(['solid', 'i-joist', 'truss', 'glued'], {
    summary: 'Solid lumber, or an I-joist, truss or glued beam, which no rule allows to be cut',
    standard: 'solid',
    record: ENGINEERED_JOIST,
    example: 'i-joist',
  }),
  sheet: text(
    { summary: 'A sheet of panel', example: '4 x 8 ft', standard: '4 x 8 ft', record: SHEET, metric: '1220 x 2440 mm' },
    readSheet,
  ),
  bead: length({
    summary: 'Bead of adhesive',
    standard: '3/8 in',
    record: BEAD,
    metric: '10 mm',
    example: '1/4 in',
    least: inches(0.125),
    most: inches(0.75),
  }),
  tube: text(
    {
      summary: 'What a tube of adhesive holds',
      example: '10.1 fl oz',
      standard: '28 fl oz',
      record: TUBE,
      metric: '825 ml',
    },
    readTube,
  ),
};

function readRoom(typed: string, reading: Reading): Read<ToldRooms | 'none'> {
  if (/^(?:none|no)$/i.test(typed.trim())) return read('none');
  const rooms = readRooms(typed, reading);
  return rooms.ok && rooms.value.rooms.length > 1 ? unread(severalRooms(reading.option, typed)) : rooms;
}
