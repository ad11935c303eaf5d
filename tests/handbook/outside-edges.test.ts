/** Figures on openings, fixtures, transitions and stairs, against codes and standards and against the product's own rules. */

import { describe, expect, it, test } from 'vitest';
import { FIXTURES_QUOTED, OPENINGS_QUOTED, TRANSITIONS_QUOTED } from '../../src/figures/handbook-edges-figures.ts';
import { PLANK_DIRECTION_QUOTED } from '../../src/figures/handbook-laying-figures.ts';
import { ALIKE_RISERS, LEVEL_FLOORS, TRIP } from '../../src/figures/trim-figures.ts';
import { inches } from '../../src/units/length.ts';
import { figureNumbers } from './figure-numbers.ts';

const quoted = [...PLANK_DIRECTION_QUOTED, ...OPENINGS_QUOTED, ...FIXTURES_QUOTED, ...TRANSITIONS_QUOTED];
const us = (id: string) => figureNumbers(quoted, id);
const metric = (id: string) => figureNumbers(quoted, id, 'metric');

describe('in US units', () => {
  test.each([
    // ICC, International Residential Code, 2006, R1001.10: 16 in in front, 8 in beyond each side of the opening; 20 and 12 in
    // where it has 6 sq ft or more.
    ['hearth-front', [16]],
    ['hearth-side', [8]],
    ['hearth-front-big', [20]],
    ['hearth-side-big', [12]],
    // ICC, International Residential Code, 2018, R311.3.1: at most 1 1/2 in lower than the top of the threshold.
    ['sill-drop', [1.5]],
    // ICC, International Residential Code, 2018, R302.5.1: not less than 1 3/8 in thick.
    ['garage-door-thick', [1.375]],
    // PNNL, Building America Solution Center, Undercut Doors: bottom supports of hollow doors are roughly 1 in tall.
    ['door-bottom-rail', [1]],
    // ICC, International Residential Code, 2024, Table R301.5: 40 psf, and 30 psf in sleeping rooms.
    ['floor-load', [40]],
    ['floor-load-bedroom', [30]],
    // ANSI and UL 858: ranges come with an anti-tip bracket since 1991 (reported).
    ['range-bracket-year', [1991]],
    // ICC, International Residential Code, R311.7.5.1: 7 3/4 in at most, 3/8 in from the greatest to the smallest.
    ['riser-highest', [7.75]],
    ['riser-alike', [3 / 8]],
    // ICC, International Residential Code, R311.7.5.3: nosings of 3/4 to 1 1/4 in.
    ['nosing-least', [3 / 4]],
    ['nosing-most', [1.25]],
    // US Department of Justice, ADA Standards for Accessible Design, 2010, 303: 1/4 in vertical, to 1/2 in beveled 1:2.
    ['trip-vertical', [1 / 4]],
    ['trip-beveled', [1 / 2]],
    ['trip-bevel', [1, 2]],
    // Carpet and Rug Institute, CRI 105: 1/16 in above the carpet where there is no molding; a gully of 3/8 in at most.
    ['carpet-lip', [1 / 16]],
    ['carpet-gully', [3 / 8]],
  ])('%s', (id, published) => expect(us(id)).toEqual(published));

  // NIST Handbook 44, appendix C: a gallon is 231 cu in. Water at room temperature has 0.998 kg a liter.
  it('weighs water by the gallon of 231 cubic inches', () => {
    const pounds = (231 * 0.0254 ** 3 * 998) / 0.45359237;
    expect(Math.abs((us('water-weight')[0] ?? 0) - pounds)).toBeLessThan(0.05);
  });
});

describe('in metric, as the code prints it', () => {
  test.each([
    // ICC, International Residential Code, the same sections: 406, 203, 508 and 305 mm, here to the centimeter.
    ['hearth-front', [406], 10],
    ['hearth-side', [203], 10],
    ['hearth-front-big', [508], 10],
    ['hearth-side-big', [305], 10],
  ])('%s', (id, [printed = 0], unit) => {
    expect(Math.abs((metric(id)[0] ?? 0) * unit - printed)).toBeLessThanOrEqual(unit / 2 + 1);
  });

  test.each([
    ['sill-drop', [38]],
    ['garage-door-thick', [35]],
    ['riser-highest', [196]],
    ['riser-alike', [9.5]],
    ['nosing-least', [19]],
    ['nosing-most', [32]],
    ['trip-beveled', [13]],
  ])('%s', (id, printed) => expect(metric(id)).toEqual(printed));

  // 1 lb = 0.45359237 kg and 1 ft = 0.3048 m exactly (NIST).
  test.each(['floor-load', 'floor-load-bedroom'])('%s, from pounds on a square foot', (id) => {
    expect(metric(id)[0]).toBe(Math.round(((us(id)[0] ?? 0) * 0.45359237) / 0.3048 ** 2));
  });
});

describe('the same as edges are computed with', () => {
  test.each([
    ['t-molding-level', LEVEL_FLOORS.value],
    ['trip-beveled', TRIP.value],
    ['riser-alike', ALIKE_RISERS.value],
  ])('%s', (id, value) => expect(us(id).map((size) => inches(size))).toEqual([value]));

  it('leaves the usual gap on both sides of a pipe, of a tub and of a molding’s foot', () => {
    const [gap = 0] = us('gap-usual');
    expect(us('pipe-hole')).toEqual([2 * gap]);
    for (const id of ['bath-gap', 't-cap-play', 'flange-cut', 'tile-joint']) expect([id, us(id)]).toEqual([id, [gap]]);
  });
});
