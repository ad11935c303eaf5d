/** Figures for flat floors: how flat is flat enough, and how far levelling compound goes. */

import { feet, inches, type Length } from '../core/length.ts';
import type { Source } from '../reply/source.ts';
import { type Cited, TRADE_CUSTOM } from './cited.ts';

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

export const FLOATING_FLATNESS: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for a floating floor',
  said: '3/16 in in 10 ft, or 1/8 in in 6 ft',
  value: [
    { gap: inches(3 / 16), over: feet(10) },
    { gap: inches(1 / 8), over: feet(6) },
  ],
  source: FLOATING,
};

export const NAILED_FLATNESS: Cited<readonly FlatnessLimit[]> = {
  name: 'Flat enough for nailed-down wood',
  said: '1/4 in in 10 ft, or 3/16 in in 6 ft',
  value: [
    { gap: inches(1 / 4), over: feet(10) },
    { gap: inches(3 / 16), over: feet(6) },
  ],
  source: { title: 'Hardwood Floors, February 2018', publisher: 'NWFA', year: 2018, standing: 'published' },
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

export const POUR_DEPTH: Cited<Length> = {
  name: 'Deepest pour of levelling compound at once',
  said: '1 in; the bag’s own figure wins',
  value: inches(1),
  source: TRADE_CUSTOM,
};

export const FLATNESS_FIGURES = [FLOATING_FLATNESS, NAILED_FLATNESS, FILL_VOLUME, LEVELLER_YIELD, POUR_DEPTH] as const;
