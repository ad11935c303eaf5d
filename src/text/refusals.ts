/** The words of refusals for safety: why something is not worked out, and whom to call. */

const NEVER =
  'Do not sand, saw, drill, dry-scrape, dry-sweep or chip it, leave it whole, and keep people off it until it is tested.';

const WHY: Readonly<Record<'found' | 'sign' | 'resilient' | 'unknown', (margin: number) => string>> = {
  found: () => 'This floor holds asbestos by its test, so its tear-out is not worked out here.',
  sign: () =>
    'Black glue, asphalt or nine-inch tiles are what asbestos floors are made of, so tear-out stops here until a laboratory has cleared it.',
  resilient: (margin) =>
    `A resilient floor, its backing or its glue is taken to hold asbestos until it was tested, and this house was built up to ${margin} or in a year not known: test first.`,
  unknown: (margin) =>
    `What is told of this floor is not known to be free of asbestos, and the house was built up to ${margin} or in a year not known: test first. Carpet, laminate and ceramic tile are read by these names alone.`,
};

/** Why an old floor's tear-out is not worked out; `margin` is the year up to which it is not, `fact` what led there, in the asker's own words. */
export function asbestosWhy(verdict: keyof typeof WHY, margin: number, fact: string | undefined): string {
  return `${WHY[verdict](margin)}${fact === undefined ? '' : ` Told: ${fact}.`} ${NEVER}`;
}

export const ASBESTOS_CALL =
  'An accredited asbestos laboratory or inspector for samples of floor, backing and glue; a licensed abatement contractor for their removal; your state’s or council’s asbestos office for the local rules. With a report that clears all three, ask again with “tested: clear”.';

export const LAID_OVER =
  'Often it may stay: a sound old floor can be covered instead of torn out. Ask the same people, and the maker of the new floor.';

/** Why a lift is not worked out; `way` is what does not hold. */
export function liftWhy(way: string): string {
  return `The lifting equation does not hold for ${way}: it is for two hands, standing, with a steady load and sound footing.`;
}

export const LIFT_REACH =
  'No weight is recommended for this lift: the load is held too far out, too high, too much aside, or lifted too often.';

export const LIFT_CALL =
  'A second pair of hands, a hand truck or a part load first; for a bad back, a doctor or physiotherapist before the job. Ask again for cartons lifted with two hands, standing.';
