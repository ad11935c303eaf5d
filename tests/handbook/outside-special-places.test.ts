/** Figures on loads, guards, thresholds and weights, against published ones; the second number is theirs. */

import { describe, expect, it, test } from 'vitest';
import { SPECIAL_PLACES_QUOTED } from '../../src/figures/handbook-floors-figures.ts';
import { BEFORE_AND_AFTER_QUOTED } from '../../src/figures/handbook-people-figures.ts';
import { figureNumbers } from './figure-numbers.ts';

const quoted = [...SPECIAL_PLACES_QUOTED, ...BEFORE_AND_AFTER_QUOTED];

describe('published', () => {
  test.each([
    // ICC, International Residential Code, table R301.5: 40 lb a sq ft in rooms, 30 in sleeping rooms.
    ['floor-load-rooms', [40]],
    // US DOT, 49 CFR 575.6(a)(5): five 150 lb passengers in a vehicle of 1400 lb leave 650 lb for cargo.
    ['person-weight', [(1400 - 650) / 5]],
    ['floor-load-bedrooms', [30]],
    // ICC, International Residential Code 2018, R312.1.2 and R312.1.3: guards 36 in; no 4 in sphere.
    ['guard-height', [36]],
    ['guard-opening', [4]],
    // ICC, International Residential Code, R311.7.5.1: risers within 3/8 in.
    ['stairs-alike', [0.375]],
    // HUD, 24 CFR 3280.305(g)(1): 40 lb a sq ft; 3280.305(a): no uncompressed flooring over 1/8 in under bearing walls.
    ['mobile-floor-load', [40]],
    ['mobile-wall-limit', [0.125]],
    // US Department of Justice, ADA Standards 2010, 303.2, 303.3 and 405.2.
    ['lip-vertical', [0.25]],
    ['lip-beveled', [0.5]],
    ['lip-slope', [1, 2]],
    ['ramp-slope', [1, 12]],
    // Installation guide of a maker of rigid-core plank, 2021: 4 in off a slab; room between 35 and 100 °F.
    ['delivery-off-slab', [4]],
    ['delivery-room-range', [35, 100]],
  ])('%s', (id, published) => expect(figureNumbers(quoted, id)).toEqual(published));
});

// NIST Handbook 44 and SP 811: 1 lb is 0.45359237 kg, 1 sq ft 0.09290304 m², 1 sq yd nine times that.
describe('weights in metric', () => {
  test.each([
    ['floor-load-rooms', 1],
    ['plank-weight', 1],
    ['carpet-with-pad-weight', 9],
    ['carpet-only-weight', 9],
  ])('%s', (id, squareFeet) => {
    const pounds = figureNumbers(quoted, id);
    for (const [index, kilograms] of figureNumbers(quoted, id, 'metric').entries()) {
      const exact = ((pounds[index] ?? 0) * 0.45359237) / (squareFeet * 0.09290304);
      expect(Math.abs(kilograms / exact - 1)).toBeLessThan(0.05);
    }
  });

  it('the length figures too', () => {
    expect(figureNumbers(quoted, 'guard-height', 'metric')).toEqual([Math.round(36 * 25.4)]);
    expect(figureNumbers(quoted, 'guard-opening', 'metric')).toEqual([Math.round(4 * 25.4)]);
  });
});
