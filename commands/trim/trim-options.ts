/** The options that trim commands share: rooms, doors, bays, corners, and how boards are cut. */

import { type CautionTask, cautionsFor } from '../../src/figures/safety-figures.ts';
import {
  CASING_WIDTH,
  END_TRIM,
  GLUE_UP,
  JOINTS,
  SAW_KERF,
  SAW_REACH,
  SQUARE_CORNERS,
  STICKS,
  STUD_SPACING,
  TRIM_THICKNESS,
} from '../../src/figures/trim-figures.ts';
import { choice, length, room, text } from '../../src/input/options.ts';
import { type ParsedStock, readStock } from '../../src/input/parse-stock.ts';
import type { ParsedRooms } from '../../src/input/reading.ts';
import { readAngle, readCorners } from '../../src/input/rooms/parse-corners.ts';
import { readBays, readDoors } from '../../src/input/rooms/parse-openings.ts';
import type { Caution } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import type { Bay, Door, MeasuredCorner } from '../../src/trim/walls.ts';
import { inches, type Length, millimetres, ticks } from '../../src/units/length.ts';

const nothing = ticks(0);

/** Degrees: the least and the most that `saw-reach` accepts. Common practice. */
const REACH = { least: 1, most: 80 } as const;

export const wallOptions = {
  room: room({ summary: 'Rooms by their sides, or a walk around the walls, with ; between rooms' }),
  doors: text(
    {
      summary: "Doors: “2 doors 32 in”, or “32 in on wall 2, 3' from the left”",
      example: '32 in on wall 2',
      colons: 'any',
      standard: 'none',
    },
    readDoors,
  ),
  casing: length({
    summary: 'Width of the casing on each side of a door',
    standard: '2 1/4 in',
    record: CASING_WIDTH,
    metric: '60 mm',
    example: '3 in',
    least: nothing,
    most: inches(12),
  }),
  bay: text(
    {
      summary: "A bay: “wall 2: front 5', sides 3', 135°”",
      example: `wall 1: front 5', sides 3'`,
      standard: 'none',
      colons: 'any',
    },
    readBays,
  ),
  corners: text(
    {
      summary: 'Corners you measured: “corner 3: 88.5” is between walls 3 and 4',
      example: 'corner 3: 88.5',
      colons: 'any',
      standard: 'square',
      record: SQUARE_CORNERS,
    },
    readCorners,
  ),
};

export const studOptions = {
  'stud-spacing': length({
    summary: 'Stud spacing, center to center',
    standard: '16 in',
    record: STUD_SPACING,
    metric: '400 mm',
    example: '24 in',
    least: inches(4),
    most: inches(48),
  }),
  'first-stud': length({
    summary: 'From the left end of a wall to the first stud',
    standard: '16 in',
    record: STUD_SPACING,
    metric: '400 mm',
    example: '15 1/4 in',
    least: nothing,
    most: inches(48),
  }),
};

export const trimThickness = length({
  summary: 'Thickness of the trim',
  standard: '9/16 in',
  record: TRIM_THICKNESS,
  metric: '15 mm',
  example: '5/8 in',
  least: millimetres(2),
  most: inches(3),
});

export const stickOptions = {
  stock: text(
    {
      summary: 'Sticks on sale: “8 ft $7.98; 12 ft $12.48; have 3 x 8 ft”',
      example: '8 ft $7.98; 12 ft $12.48',
      standard: '8 ft; 12 ft; 16 ft',
      record: STICKS,
      metric: '2.4 m; 3 m; 4.2 m',
    },
    readStock,
  ),
  kerf: length({
    summary: 'Width of the saw’s cut',
    standard: '1/8 in',
    record: SAW_KERF,
    metric: '3 mm',
    example: '3/32 in',
    least: nothing,
    most: inches(0.5),
  }),
  'end-trim': length({
    summary: 'How much to cut off each stick first to square it',
    standard: '0',
    record: END_TRIM,
    example: '1/2 in',
    least: nothing,
    most: inches(12),
  }),
};

const cuttingOptions = {
  thickness: trimThickness,
  'inside-joint': choice(['miter', 'cope', 'mitre'], {
    summary: 'Inside corners: miter or cope; corners out of square are coped',
    standard: 'miter',
    record: JOINTS,
    example: 'cope',
  }),
  'glue-up': length({
    summary: 'Pieces up to this length are glued up first',
    standard: '6 in',
    record: GLUE_UP,
    metric: '150 mm',
    example: '4 in',
    least: nothing,
    most: inches(24),
  }),
  'saw-reach': text(
    { summary: 'How far the saw swings, in degrees', example: '50', standard: '50', record: SAW_REACH },
    (typed, reading) => readAngle(typed, reading, REACH.least, REACH.most),
  ),
};

export const listOptions = { ...wallOptions, ...stickOptions, ...cuttingOptions, ...studOptions };

export interface WallsAsk {
  readonly room: ParsedRooms;
  readonly doors: readonly Door[];
  readonly casing: Length;
  readonly bay: readonly Bay[];
  readonly corners: readonly MeasuredCorner[];
}

export interface StudsAsk {
  readonly 'stud-spacing': Length;
  readonly 'first-stud': Length;
}

export interface SticksAsk {
  readonly stock: ParsedStock;
  readonly kerf: Length;
  readonly 'end-trim': Length;
}

export interface ListAsk extends WallsAsk, StudsAsk, SticksAsk {
  readonly thickness: Length;
  readonly 'inside-joint': 'miter' | 'cope' | 'mitre';
  readonly 'glue-up': Length;
  readonly 'saw-reach': number;
}

export function cautionsOf(...tasks: readonly CautionTask[]): readonly Caution[] {
  const all = worded(tasks.flatMap((task) => cautionsFor(task)));
  return all.filter(({ topic }, i) => all.findIndex((one) => one.topic === topic) === i);
}
