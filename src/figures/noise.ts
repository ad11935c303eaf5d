/** Figures for noise over a day: what is recommended for hearing, and what employers must keep to. */

import type { Cited } from './cited.ts';

const NIOSH = {
  title: 'Criteria for a Recommended Standard: Occupational Noise Exposure, 98-126',
  publisher: 'NIOSH',
  year: 1998,
  standing: 'published',
} as const;
const OSHA = { title: '29 CFR 1910.95', publisher: 'OSHA', standing: 'published' } as const;

/** The level for 8 h, and the decibels that halve the time. */
export const NOISE_RECOMMENDED: Cited<{ readonly level: number; readonly exchange: number }> = {
  name: 'Noise in a day, recommended',
  said: '85 dBA for 8 h, 88 for 4, 91 for 2, 94 for 1, 100 for 15 min: 3 dB more halve the time',
  value: { level: 85, exchange: 3 },
  source: NIOSH,
};

export const NOISE_LIMIT: Cited<number> = {
  name: 'Noise in a day, an employer’s limit',
  said: '90 dBA for 8 h, 95 for 4, 100 for 2, 105 for 1; mixed, the shares add up to 1 at most',
  value: 1,
  source: OSHA,
};

export const HEARING_PROGRAMME: Cited<number> = {
  name: 'Noise from which an employer looks after hearing',
  said: '85 dBA over 8 h: half of the allowed dose',
  value: 0.5,
  source: OSHA,
};

export const NOISE_FIGURES: readonly Cited<unknown>[] = [NOISE_RECOMMENDED, NOISE_LIMIT, HEARING_PROGRAMME];
