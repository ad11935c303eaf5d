/** Countries whose years for old materials are told apart; `elsewhere` is any other. */

import { type Area, areaOf, type Length } from '../units/length.ts';

export type Country = 'us' | 'canada' | 'uk' | 'australia' | 'elsewhere';

/** The country that counts: the one told, else by the units of the sizes, for nobody measures floors of the US in meters. */
export function countryFor(given: Country | undefined, metric: boolean): Country {
  return given ?? (metric ? 'elsewhere' : 'us');
}

// Painted surface disturbed by removing trim, against the rule for minor work.

/** Alike parts that are removed whole. */
export interface TrimPart {
  readonly length: Length;
  readonly height: Length;
  readonly count: number;
}

/** Square ticks disturbed: every removed part counts whole, length × height (US EPA RRP FAQ: a 1 in strip off a 36 in door is 36 in²). */
export function disturbedArea(parts: readonly TrimPart[]): Area {
  return parts.reduce((sum, { length, height, count }) => sum + areaOf(length, height) * BigInt(count), 0n);
}

/** Minor work is up to the limit, that itself included (US EPA RRP: six square feet or less a room). */
export function isMinor(area: Area, limit: Area): boolean {
  return area <= limit;
}

// Whether a floor must be taken to hold asbestos: by the year of the house, what is known of its layers, and
// a test.

/** What words about one layer tell: nothing doubtful, a resilient floor or glue, a sign of asbestos, or nothing known. */
export type Suspicion = 'none' | 'resilient' | 'sign' | 'unknown';

export type Tested = 'no' | 'clear' | 'asbestos';

/** What is known: `year` is the earliest the house may date from, undefined when that is not known. */
interface Suspect {
  readonly year: number | undefined;
  readonly tested: Tested;
  /** What is said of the floor itself and of what lies under it. */
  readonly layers: readonly Suspicion[];
  /** What is said anywhere else, in the name of a room. */
  readonly aside: readonly Suspicion[];
  /** Up to this year an untested resilient floor is refused. */
  readonly margin: number;
}

/** Why work must stop; that it may go on once there is proof; or that it may go on. */
type Verdict = 'go' | 'proof' | 'found' | Exclude<Suspicion, 'none'>;

/** True for a house built up to the margin year, and for one whose year is not known. */
export function mayHoldAsbestos(year: number | undefined, margin: number): boolean {
  return year === undefined || year <= margin;
}

/**
 * A test decides. Without one, a sign of asbestos stops whatever the year; a resilient floor, its backing or its glue, or
 * anything that is not recognized, is presumed to hold it (RFCI: unless positively certain): refused up to the margin year or
 * where the year is not known, and later only with proof.
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
