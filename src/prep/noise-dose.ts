/** The noise dose of a day: what NIOSH recommends, and what 29 CFR 1910.95 allows. */

export interface Noise {
  readonly hours: number;
  readonly level: number;
}

/** Quieter levels aren't counted (29 CFR 1910.95(d)(2)(i): 80 to 130 dB). */
export const LEAST_COUNTED = 80;
/** The loudest steady level in Table G-16. */
export const LOUDEST_ALLOWED = 115;

/**
 * Recommended maximum hours at a level in dBA: T = 8 ÷ 2^((L − 85) ÷ 3) (NIOSH 98-126, table 1-1 and its formula, from
 * memory).
 */
export function recommendedHours(level: number): number {
  return 8 / 2 ** ((level - 85) / 3);
}

/** Σ C ÷ T over the day by NIOSH, levels from 80 dBA up: 1 is everything that is recommended in a day. */
export function recommendedDose(noises: readonly Noise[]): number {
  return noises.reduce(
    (sum, { hours, level }) => sum + (level < LEAST_COUNTED ? 0 : hours / recommendedHours(level)),
    0,
  );
}

/** Hours allowed at a level in dBA: T = 8 ÷ 2^((L − 90) ÷ 5) (29 CFR 1910.95, Table G-16 and app. A). */
export function allowedHours(level: number): number {
  return 8 / 2 ** ((level - 90) / 5);
}

/** Σ C ÷ T over the day: 1 is a worker's whole allowance; half of it calls for a hearing program. */
export function noiseDose(noises: readonly Noise[]): number {
  return noises.reduce((sum, { hours, level }) => sum + (level < LEAST_COUNTED ? 0 : hours / allowedHours(level)), 0);
}

/**
 * The steady level over 8 h with the same dose: 16.61 log₁₀ dose + 90 dBA, the dose as a fraction (app. A uses 100 for
 * the whole).
 */
export function timeWeightedLevel(dose: number): number {
  return 16.61 * Math.log10(dose) + 90;
}
