/** Whether a floor must be taken to hold asbestos: by the year of the house, what is known of its layers, and a test. */

/** What words about one layer tell: nothing doubtful, an old resilient floor or glue, a sign of asbestos, or nothing known. */
export type Suspicion = 'none' | 'resilient' | 'sign' | 'unknown';

export type Tested = 'no' | 'clear' | 'asbestos';

/** What is known: `year` is the earliest the house may date from, undefined when that is not known. */
export interface Suspect {
  readonly year: number | undefined;
  readonly tested: Tested;
  readonly layers: readonly Suspicion[];
}

/** Why work must stop, or that it may go on. */
export type Verdict = 'go' | 'found' | Exclude<Suspicion, 'none'>;

/** Floors laid up to this year are presumed to hold asbestos unless tested (OSHA Q&A, as reported; RFCI recommended work practices). */
export const LAST_SUSPECT_YEAR = 1980;

/** True for a house built up to 1980, and for one whose year is not known. */
export function mayHoldAsbestos(year: number | undefined): boolean {
  return year === undefined || year <= LAST_SUSPECT_YEAR;
}

/**
 * A test decides. Without one, a sign of asbestos stops whatever the year; in an old house, or one whose year is not known,
 * a resilient floor, its glue, or anything that is not recognised stops too.
 */
export function judge({ year, tested, layers }: Suspect): Verdict {
  if (tested === 'asbestos') return 'found';
  if (tested === 'clear') return 'go';
  if (layers.includes('sign')) return 'sign';
  if (!mayHoldAsbestos(year)) return 'go';
  if (layers.includes('resilient')) return 'resilient';
  return layers.includes('unknown') ? 'unknown' : 'go';
}
