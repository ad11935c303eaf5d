/** Old materials: which country's rules apply, lead paint on trim, and asbestos in floors. */

import { type Area, areaOf, type Length } from '../units/length.ts';

export type Country = 'us' | 'canada' | 'uk' | 'australia' | 'elsewhere';

/** The country given, or else a guess from the units: nobody in the US measures floors in meters. */
export function countryFor(given: Country | undefined, metric: boolean): Country {
  return given ?? (metric ? 'elsewhere' : 'us');
}

// Lead paint: area disturbed by removing trim, against the limit for minor work.

export interface TrimPart {
  readonly length: Length;
  readonly height: Length;
  readonly count: number;
}

/**
 * Square ticks disturbed: every removed part counts whole, length × height (US EPA RRP FAQ: a 1 in strip off a 36 in
 * door is 36 in²).
 */
export function disturbedArea(parts: readonly TrimPart[]): Area {
  return parts.reduce((sum, { length, height, count }) => sum + areaOf(length, height) * BigInt(count), 0n);
}

/** Minor work is up to and including the limit (US EPA RRP: six square feet or less per room). */
export function isMinor(area: Area, limit: Area): boolean {
  return area <= limit;
}

// Asbestos: by the year of the house, what is known of the layers, and a test.

/**
 * What the words about a layer suggest: nothing suspicious, a resilient floor or glue, a sign of asbestos, or unknown.
 */
export type Suspicion = 'none' | 'resilient' | 'sign' | 'unknown';

export type Tested = 'no' | 'clear' | 'asbestos';

/** `year` is the earliest the house may date from, undefined if unknown. */
interface Suspect {
  readonly year: number | undefined;
  readonly tested: Tested;
  /** What was said about the floor itself and the layers under it. */
  readonly layers: readonly Suspicion[];
  /** What was said elsewhere, such as in a room's name. */
  readonly aside: readonly Suspicion[];
  /** Up to this year an untested resilient floor is refused. */
  readonly margin: number;
}

/** go: carry on. proof: only with proof. Anything else is why work must stop. */
type Verdict = 'go' | 'proof' | 'found' | Exclude<Suspicion, 'none'>;

/** True for a house built up to the margin year, and for an unknown year. */
export function mayHoldAsbestos(year: number | undefined, margin: number): boolean {
  return year === undefined || year <= margin;
}

/**
 * A test decides. Without one, a sign of asbestos stops work whatever the year. A resilient floor, its backing or glue,
 * or anything unrecognized is presumed to contain it (RFCI: unless positively certain): refused up to the margin year
 * or when the year is unknown, and later only with proof.
 */
export function judge({ year, tested, layers, aside, margin }: Suspect): Verdict {
  if (tested === 'asbestos') return 'found';
  if (tested === 'clear') return 'go';
  const all = [...layers, ...aside];
  if (all.includes('sign')) return 'sign';
  if (!mayHoldAsbestos(year, margin)) return layers.some((layer) => layer !== 'none') ? 'proof' : 'go';
  if (all.includes('resilient')) return 'resilient';
  return all.includes('unknown') ? 'unknown' : 'go';
}
