/** The noise dose of a day: what NIOSH recommends, and what 29 CFR 1910.95 allows. */

/** One noise: hours of it, at a level in dBA. */
export interface Noise {
  readonly hours: number;
  readonly level: number;
}

/** Levels below this are not counted (29 CFR 1910.95(d)(2)(i): 80 to 130 dB). */
export const LEAST_COUNTED = 80;
/** The loudest steady level of Table G-16. */
export const LOUDEST_ALLOWED = 115;

/** Hours recommended at most at a level in dBA: T = 8 ÷ 2^((L − 85) ÷ 3) (NIOSH 98-126, table 1-1 and its formula, from memory). */
export function recommendedHours(level: number): number {
  return 8 / 2 ** ((level - 85) / 3);
}

/** Σ C ÷ T over the day's noises by NIOSH, levels from 80 dBA on counted: 1 is all of what is recommended in a day. */
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

/** Σ C ÷ T over the day's noises: 1 is the whole of a worker's allowance, half of it calls for a hearing programme. */
export function noiseDose(noises: readonly Noise[]): number {
  return noises.reduce((sum, { hours, level }) => sum + (level < LEAST_COUNTED ? 0 : hours / allowedHours(level)), 0);
}

/** The steady level over 8 h with the same dose: 16.61 log₁₀ dose + 90 dBA, the dose as a share (app. A: 100 is the whole there). */
export function timeWeightedLevel(dose: number): number {
  return 16.61 * Math.log10(dose) + 90;
}
