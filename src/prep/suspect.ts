/** Whether a floor must be taken to hold asbestos: by the year of the house, what is known of its layers, and a test. */

/** What words about one layer tell: nothing doubtful, a resilient floor or glue, a sign of asbestos, or nothing known. */
export type Suspicion = 'none' | 'resilient' | 'sign' | 'unknown';

export type Tested = 'no' | 'clear' | 'asbestos';

/** What is known: `year` is the earliest the house may date from, undefined when that is not known. */
export interface Suspect {
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
export type Verdict = 'go' | 'proof' | 'found' | Exclude<Suspicion, 'none'>;

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
