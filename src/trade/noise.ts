/** Figures for noise over a day: benchmarks for workers. */

import type { Cited } from './cited.ts';

const RULE = { title: '29 CFR 1910.95', publisher: 'OSHA', standing: 'published' } as const;

export const NOISE_LIMIT: Cited<number> = {
  name: 'Noise in a day',
  said: '90 dBA for 8 h, 95 for 4, 100 for 2, 105 for 1; mixed, the shares add up to 1 at most',
  value: 1,
  source: RULE,
};

export const HEARING_PROGRAMME: Cited<number> = {
  name: 'Noise from which hearing is looked after',
  said: '85 dBA over 8 h: half of the allowed dose',
  value: 0.5,
  source: RULE,
};

export const NOISE_FIGURES: readonly Cited<unknown>[] = [NOISE_LIMIT, HEARING_PROGRAMME];
