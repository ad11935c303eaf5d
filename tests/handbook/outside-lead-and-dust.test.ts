/** Figures on lead, dust and masks, against what the agencies publish; the second number is theirs. */

import { describe, expect, it, test } from 'vitest';
import { ASBESTOS_FLOORS_QUOTED, LEAD_AND_DUST_QUOTED } from '../../src/figures/handbook-hazards-figures.ts';
import { figureNumbers } from './figure-numbers.ts';

const quoted = [...ASBESTOS_FLOORS_QUOTED, ...LEAD_AND_DUST_QUOTED];

describe('in US units', () => {
  test.each([
    // OSHA, 29 CFR 1910.1001 and 1926.1101, 1994: resilient floors laid no later than 1980 are presumed.
    ['asbestos-presumed-until', [1980]],
    // US EPA, 40 CFR 61.141, 1990: asbestos-containing means more than 1 percent.
    ['asbestos-counts-from', [1]],
    // Wisconsin State Laboratory of Hygiene, Asbestos for homeowners: a piece of about 1 inch by 1 inch, all layers.
    ['asbestos-sample-size', [1, 1]],
    // US EPA, Renovation, Repair and Painting rule, 2008: target housing was built before 1978.
    ['lead-built-before', [1978]],
    // US EPA, Protect Your Family From Lead in Your Home, citing HUD's survey: 87% before 1940, 24% from 1960 to 1977.
    ['lead-oldest-year', [1940]],
    ['lead-oldest-share', [87]],
    ['lead-newest-share', [24]],
    // US EPA, 40 CFR 745.83: minor repair disturbs 6 square feet or less a room.
    ['lead-minor-area', [6]],
    // US EPA, 40 CFR 745.85(a)(3)(iii): heat guns at or above 1,100 degrees Fahrenheit are prohibited.
    ['lead-heat-gun-limit', [1100]],
    // US EPA, 40 CFR 745.85(a)(2)(i)(D): floor covered 6 feet beyond the surfaces worked on.
    ['lead-plastic-reach', [6]],
    // OSHA, 29 CFR 1926.1153(d)(1), 2016: 50 micrograms per cubic meter over 8 hours.
    ['silica-limit', [50]],
    // OSHA, 29 CFR 1926.1153 Table 1, 2016: a dust collector's filter with 99% or greater efficiency.
    ['silica-collector', [99]],
    // NIOSH, 42 CFR 84, 1995: classes of 95 and 99.97% efficiency.
    ['n95-holds', [95]],
    ['p100-holds', [99.97]],
    // CDC, Clean up after rodents: 1.5 cups in a gallon, soak for 5 minutes; air out for 30 minutes.
    ['droppings-bleach', [1.5]],
    ['droppings-soak', [5]],
    ['droppings-air-out', [30]],
  ])('%s', (id, published) => expect(figureNumbers(quoted, id)).toEqual(published));
});

describe('in metric', () => {
  it('6 sq ft and 6 ft come from 0.3048 m a foot (NIST, 2022)', () => {
    expect(figureNumbers(quoted, 'lead-minor-area', 'metric')[0]).toBeCloseTo(6 * 0.3048 ** 2, 1);
    expect(figureNumbers(quoted, 'lead-plastic-reach', 'metric')[0]).toBeCloseTo(6 * 0.3048, 1);
  });

  it('1,100 °F is (1100 − 32) ÷ 1.8 °C, not rounded up', () => {
    const [celsius = 0] = figureNumbers(quoted, 'lead-heat-gun-limit', 'metric');
    expect(celsius).toBeLessThanOrEqual((1100 - 32) / 1.8);
    expect(celsius).toBeGreaterThan(580);
  });

  it('a cup is a 16th of a gallon: 1.5 cups are near 1 part to 9 or 10 (CDC gives both)', () => {
    const [parts = 0, water = 0] = figureNumbers(quoted, 'droppings-bleach', 'metric');
    expect(water / parts).toBe(9);
    const [cups = 0] = figureNumbers(quoted, 'droppings-bleach');
    expect(Math.abs(16 / cups - water / parts)).toBeLessThan(2);
  });
});
