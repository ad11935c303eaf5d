/** Figures on tools, noise, wounds and cables, against what the agencies publish; the second number is theirs. */

import { expect, it, test } from 'vitest';
import { TOOLS_AND_BODY_QUOTED } from '../../src/figures/handbook-work-figures.ts';
import { figureNumbers } from './figure-numbers.ts';

test.each([
  // OSHA and NIOSH, Nail Gun Safety, 2011: some 37,000 emergency visits a year.
  ['nailer-visits', [37_000]],
  // OSHA, 29 CFR 1926.302(b)(3): more than 100 psi at the tool needs a safety device on the muzzle.
  ['nailer-muzzle-pressure', [100]],
  // CPSC, Table saw blade contact injuries, 2011: 67,300 medically treated in a year.
  ['saw-visits', [67_300]],
  // NIOSH 90-104, 1990: knee claims at 108 times the rate expected of their share of the workforce.
  ['knee-claims', [108]],
  // CDC, tetanus wound management: 5 years for dirty and major wounds, 10 for clean and minor ones.
  ['tetanus-dirty', [5]],
  ['tetanus-clean', [10]],
  // ANSI/ISEA Z358.1, 2014: an eyewash runs for 15 minutes.
  ['eye-rinse', [15]],
  // NFPA, National Electrical Code 300.4(A)(1): bored holes not less than 1 1/4 in from the nearest edge.
  ['cable-depth', [1.25]],
])('%s', (id, published) => expect(figureNumbers(TOOLS_AND_BODY_QUOTED, id)).toEqual(published));

// NIOSH 98-126, 1998: 85 dBA for 8 hours, and 3 dB more halve the time.
it('the time at 100 dBA follows from 85 dBA for 8 hours', () => {
  expect(figureNumbers(TOOLS_AND_BODY_QUOTED, 'saw-noise')).toEqual([(8 * 60) / 2 ** ((100 - 85) / 3)]);
});

// NFPA gives 1 1/4 in as 32 mm; 1 psi is 0.0689 bar (NIST SP 811, 2008).
it('the metric words are the same figures', () => {
  expect(figureNumbers(TOOLS_AND_BODY_QUOTED, 'cable-depth', 'metric')).toEqual([32]);
  expect(figureNumbers(TOOLS_AND_BODY_QUOTED, 'nailer-muzzle-pressure', 'metric')[0]).toBeCloseTo(100 * 0.0689, 0);
});
