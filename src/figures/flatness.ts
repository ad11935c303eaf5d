/** Figures for flat floors: how flat is flat enough, and how far levelling compound goes. */

import type { DeepestDip, DipShape } from '../prep/flatness.ts';
import type { Source } from '../reply/reply.ts';
import { feet, inches, type Length, millimetres } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited, TRADE_CUSTOM } from './cited.ts';

/** A gap under a straightedge of a length. */
export interface FlatnessLimit {
  readonly gap: Length;
  readonly over: Length;
}

const FLOATING: Source = {
  title: 'F710 and trade guidance for floating floors',
  publisher: 'ASTM',
  standing: 'reported',
};

const inch = (gap: number, over: number): FlatnessLimit => ({ gap: inches(gap), over: feet(over) });
const metric = (gap: number, over: number): FlatnessLimit => ({
  gap: millimetres(gap),
  over: millimetres(over * 1000),
});

export const FLOATING_FLATNESS: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for a floating floor',
  said: '3/16 in in 10 ft, or 1/8 in in 6 ft',
  value: [inch(3 / 16, 10), inch(1 / 8, 6)],
  source: FLOATING,
};

export const FLOATING_FLATNESS_METRIC: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for a floating floor, in metric',
  said: '5 mm in 3 m, or 3 mm in 2 m',
  value: [metric(5, 3), metric(3, 2)],
  source: FLOATING,
};

const NAILED: Source = {
  title: 'Hardwood Floors, February 2018',
  publisher: 'NWFA',
  year: 2018,
  standing: 'published',
};

export const NAILED_FLATNESS: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for nailed-down wood',
  said: '1/4 in in 10 ft, or 3/16 in in 6 ft',
  value: [inch(1 / 4, 10), inch(3 / 16, 6)],
  source: NAILED,
};

export const NAILED_FLATNESS_METRIC: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for nailed-down wood, in metric',
  said: '6 mm in 3 m, or 5 mm in 2 m: the inch rule in round millimeters',
  value: [metric(6, 3), metric(5, 2)],
  source: { ...NAILED, standing: 'reported' },
};

/** A bag: what it fills in cubic feet, and its weight in pounds. */
export const LEVELLER_YIELD: Cited<{ readonly cubicFeet: number; readonly pounds: number }> = {
  name: 'A bag of levelling compound fills',
  said: '0.45 cu ft per 50 lb; bags differ, 0.42 to 0.52: take the bag’s own figure',
  value: { cubicFeet: 0.45, pounds: 50 },
  source: { title: 'Makers’ coverage tables for levelling compound', standing: 'reported' },
};

export const FILL_VOLUME: Cited<string> = {
  name: 'Levelling compound',
  said: 'area × mean depth; a feathered ramp ½ × area × height',
  value: 'area × mean depth',
  source: { title: 'Trade guidance for levelling', standing: 'reported' },
};

/** Shares of area × deepest gap: a section that is a parabola, and a bowl that is one turned round. */
export const DIP_FILL: Cited<Readonly<Record<DipShape, number>>> = {
  name: 'What a dip holds of its area × its deepest gap',
  said: 'a round dish 1/2, a long trough 2/3, a dip as deep all over 1',
  value: { dish: 1 / 2, trough: 2 / 3, even: 1 },
  source: { title: 'Geometry: areas and volumes under a parabola', standing: 'common practice' },
};

/** Pounds a square foot and inch of depth, wet; plans are made for the heavy end. */
export const LEVELLER_WEIGHT: Cited<{ readonly light: number; readonly heavy: number }> = {
  name: 'What levelling compound weighs as it is poured',
  said: '12–14 lb a sq ft for each inch of depth; reckoned with 14',
  value: { light: 12, heavy: 14 },
  source: { title: 'Trade guidance for levelling', standing: 'reported' },
};

export const DEEPEST_DIP: Cited<DeepestDip> = {
  name: 'Dip in a wood floor that is a question about its structure first',
  said: 'deeper than 3/4 in (19 mm) under any straightedge up to 10 ft (3 m), longer ones in proportion',
  value: { gap: inches(3 / 4), over: feet(10) },
  source: CAUTIOUS_DEFAULT,
};

/** Pounds a square foot over the dip's own area. */
export const HEAVIEST_FILL: Cited<number> = {
  name: 'Levelling compound on a wood floor that is a question about its structure first',
  said: 'over 5 lb a sq ft (24 kg/m²) of the dip’s own area',
  value: 5,
  source: CAUTIOUS_DEFAULT,
};

export const POUR_DEPTH: Cited<Length> = {
  name: 'Deepest pour of levelling compound at once',
  said: '1 in; the bag’s own figure wins',
  value: inches(1),
  source: TRADE_CUSTOM,
};

export const LEVELLER_DRIES: Cited<number> = {
  name: 'Levelling compound dries, untold',
  said: '24 h; the bag’s own figure wins',
  value: 24,
  source: TRADE_CUSTOM,
};

export const LEVEL_TAKEN: Cited<string> = {
  name: 'Floor and line of flatness readings, untold',
  said: 'a wood floor, for it carries the least, and depths below a straightedge',
  value: 'wood',
  source: CAUTIOUS_DEFAULT,
};

export const FLATNESS_FIGURES = [
  FLOATING_FLATNESS,
  FLOATING_FLATNESS_METRIC,
  NAILED_FLATNESS,
  NAILED_FLATNESS_METRIC,
  FILL_VOLUME,
  DIP_FILL,
  LEVELLER_YIELD,
  LEVELLER_WEIGHT,
  DEEPEST_DIP,
  HEAVIEST_FILL,
  POUR_DEPTH,
  LEVELLER_DRIES,
  LEVEL_TAKEN,
] as const;
