/** Colours and patterns of each role: dark on light, and told apart in grey by pattern as well. */

import type { ShapeRole, TextRole } from '../reply/drawing.ts';

export const SHEET_COLOUR = '#ffffff';
const INK = '#1d2630';
const BAND = '#dfe3e8';
const DARK = '#24384d';

/** How a surface or a line is drawn; `pattern` names one of PATTERNS. */
export interface Look {
  readonly fill?: string;
  readonly pattern?: keyof typeof PATTERNS;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: string;
}

/** Tiles laid over a fill: lines leaning right, or dots. `size` is the tile's side. */
export const PATTERNS = {
  hatch: { fill: '#f1c9a5', ink: '#6b3d14', size: 4, turn: 45, shape: 'line' },
  dots: { fill: '#cfe2dc', ink: '#1f5a4c', size: 4, turn: 0, shape: 'dot' },
} as const;

export const LOOKS: Readonly<Record<ShapeRole, Look>> = {
  wall: { fill: BAND },
  'wall-start': { fill: DARK },
  'wall-face': { stroke: INK, width: 1 },
  gap: { fill: SHEET_COLOUR, stroke: INK, width: 0.9 },
  'plank-whole': { fill: '#fbf8f1' },
  start: { fill: '#d9d0bd' },
  end: { fill: '#d9d0bd' },
  any: { fill: '#d9d0bd' },
  'offcut-kept': { pattern: 'dots' },
  'offcut-reused': { pattern: 'hatch' },
  standing: { fill: BAND, stroke: INK, width: 0.8 },
  transition: { stroke: '#1b5a73', width: 2.4 },
  'label-ground': { fill: SHEET_COLOUR },
  joint: { stroke: '#4f5a66', width: 0.5 },
  'floor-edge': { stroke: '#4f5a66', width: 0.6 },
  leader: { stroke: '#8a949f', width: 0.5 },
  direction: { stroke: DARK, fill: DARK, width: 1.4 },
  'page-edge': { stroke: INK, width: 1, dash: '4 3' },
  'scale-bar': { stroke: INK, width: 1.2 },
  swatch: { stroke: INK, width: 0.6 },
};

/** A text's colour, and the lightest and darkest grounds it may stand on. */
export interface Lettering {
  readonly fill: string;
  readonly on: string;
}

const plain: Lettering = { fill: INK, on: SHEET_COLOUR };
const quiet: Lettering = { fill: '#46525e', on: SHEET_COLOUR };

export const LETTERING: Readonly<Record<TextRole, Lettering>> = {
  title: plain,
  fact: plain,
  dimension: { fill: INK, on: BAND },
  'dimension-start': { fill: '#ffffff', on: DARK },
  'row-number': plain,
  'run-name': plain,
  cut: plain,
  offcut: { fill: '#7a3d0c', on: SHEET_COLOUR },
  rip: { fill: '#1b5a73', on: SHEET_COLOUR },
  'direction-label': quiet,
  'rows-label': plain,
  'room-label': plain,
  'scale-label': quiet,
  legend: quiet,
  note: quiet,
};
