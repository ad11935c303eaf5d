/** Rules of a floating floor that are not sums: which of them touch an ask. */

/** What the ask says about the floor. */
export interface FloorTraits {
  readonly lock: 'click' | 'none';
  readonly attachedPad: boolean | undefined;
  readonly cartons: number;
  readonly longRun: boolean;
  /** The gap told is less than the standard one. */
  readonly smallGap: boolean;
}

export type FloorRule =
  | 'one-lot'
  | 'mix-cartons'
  | 'measure-ten'
  | 'end-in-place'
  | 'gap-under-trim'
  | 'small-gap'
  | 'nothing-through'
  | 'tracks-to-subfloor'
  | 'one-pad'
  | 'pad-choice'
  | 'long-run'
  | 'dishwasher'
  | 'stairs'
  | 'keep-some';

/** The rules to show, in the order in which they come up on the job. All are common practice. */
export function floorRules({ lock, attachedPad, cartons, longRun, smallGap }: FloorTraits): readonly FloorRule[] {
  const floating = lock === 'click';
  const rules: [FloorRule, boolean][] = [
    ['one-lot', cartons > 1],
    ['mix-cartons', cartons > 1],
    ['measure-ten', true],
    ['end-in-place', true],
    ['gap-under-trim', true],
    ['small-gap', floating && smallGap],
    ['nothing-through', floating],
    ['tracks-to-subfloor', floating],
    ['one-pad', attachedPad === true],
    ['pad-choice', attachedPad === undefined && floating],
    ['long-run', longRun],
    ['dishwasher', true],
    ['stairs', true],
    ['keep-some', true],
  ];
  return rules.filter(([, touches]) => touches).map(([rule]) => rule);
}
