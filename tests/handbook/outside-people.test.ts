/** Figures on money, rentals, insurance and care, against what agencies and makers publish; the second number is theirs. */

import { describe, expect, it, test } from 'vitest';
import { FLOOR_CARE_QUOTED, FLOOR_TROUBLES_QUOTED } from '../../src/figures/handbook-floors-figures.ts';
import { PEOPLE_QUOTED } from '../../src/figures/handbook-people-figures.ts';
import { figureNumbers } from './figure-numbers.ts';

const quoted = [...PEOPLE_QUOTED, ...FLOOR_TROUBLES_QUOTED, ...FLOOR_CARE_QUOTED];
const first = (id: string) => figureNumbers(quoted, id)[0] ?? Number.NaN;

describe('published', () => {
  test.each([
    // State of California, Business and Professions Code 7159.5(a)(3): $1,000 or 10 percent, whichever is less.
    ['deposit-limit', [10, 1000]],
    // FEMA, Standard Flood Insurance Policy, VII.J: proof of loss within 60 days.
    ['flood-proof-of-loss', [60]],
    // US EPA, 402-K-02-003: dry wet materials within 24 to 48 hours.
    ['dry-within', [24, 48]],
    // Instructions of a maker of rigid-core plank, 2022: open 2 to 3 boxes.
    ['cartons-to-open', [2, 3]],
    // Installation guide of a maker of SPC plank: 55 to 85 °F before, during and after.
    ['trouble-room-range', [55, 85]],
    // Instructions of another maker of rigid-core plank, 2022, expansion joints: at most 30 ft where climate is not controlled.
    ['trouble-sunroom-run', [30]],
    // ASTM F710: 3/16 in in 10 ft.
    ['trouble-flat', [3 / 16, 10]],
  ])('%s', (id, published) => expect(figureNumbers(quoted, id)).toEqual(published));
});

// California Department of Consumer Affairs, guide for tenants and landlords: $1,000 for the two of ten years left.
it('the carpet example is what its own figures give', () => {
  const left = first('carpet-example-life') - first('carpet-example-age');
  expect((first('carpet-example-cost') * left) / first('carpet-example-life')).toBe(first('carpet-example-charge'));
  const [least = 0, most = 0] = figureNumbers(quoted, 'carpet-life');
  expect(first('carpet-example-life')).toBeGreaterThanOrEqual(least);
  expect(first('carpet-example-life')).toBeLessThanOrEqual(most);
});

// NIST, 2022: 1 sq ft is 0.09290304 m².
test.each(['labor-click', 'labor-tear-out'])('%s costs the same by the square meter', (id) => {
  const perFoot = figureNumbers(quoted, id);
  const perMeter = figureNumbers(quoted, id, 'metric');
  expect(perMeter).toHaveLength(perFoot.length);
  for (const [index, dollars] of perMeter.entries()) {
    expect(Math.abs(dollars - (perFoot[index] ?? 0) / 0.09290304)).toBeLessThan(0.6);
  }
});
