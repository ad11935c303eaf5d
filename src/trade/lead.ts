/** Figures for lead paint on trim. */

import { type Area, SQUARE_TICKS_PER_SQUARE_FOOT } from '../core/area.ts';
import type { Cited } from './cited.ts';

const RRP = {
  title: 'Renovation, Repair and Painting rule: questions and answers',
  publisher: 'US EPA',
  standing: 'published',
} as const;

export const LEAD_YEAR: Cited<number> = {
  name: 'Homes whose paint may hold lead',
  said: 'built before 1978',
  value: 1978,
  source: RRP,
};

export const MINOR_WORK: Cited<Area> = {
  name: 'Minor work on old paint',
  said: 'up to 6 sq ft a room, a removed part counted whole; paid work beyond it falls under the rule',
  value: 6n * SQUARE_TICKS_PER_SQUARE_FOOT,
  source: RRP,
};

export const LEAD_FIGURES: readonly Cited<unknown>[] = [LEAD_YEAR, MINOR_WORK];
