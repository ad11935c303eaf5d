/** Figures on joints, nails and paint of trim, against published ones and against geometry. */

import { describe, expect, it, test } from 'vitest';
import {
  BASEBOARDS_QUOTED,
  TRIM_FASTENING_QUOTED,
  TRIM_JOINTS_QUOTED,
} from '../../src/figures/handbook-edges-figures.ts';
import { TOOLS_AND_BODY_QUOTED } from '../../src/figures/handbook-work-figures.ts';
import { figureNumbers } from './figure-numbers.ts';

const quoted = [...TRIM_JOINTS_QUOTED, ...BASEBOARDS_QUOTED, ...TRIM_FASTENING_QUOTED, ...TOOLS_AND_BODY_QUOTED];
const first = (id: string, units: 'us' | 'metric' = 'us') => figureNumbers(quoted, id, units)[0] ?? Number.NaN;

// Each half of a miter turns half of what the wall turns.
const setting = (corner: number) => (180 - corner) / 2;

describe('saw settings', () => {
  test.each([
    ['miter-square-corner', 90],
    ['miter-bay-corner', 135],
    ['miter-93-corner', 93],
  ])('%s', (id, corner) => expect(first(id)).toBe(setting(corner)));

  it('three pieces around a rounded square corner turn it twice', () =>
    expect(first('bullnose-setting')).toBe(90 / 2 / 2));
});

describe('published', () => {
  test.each([
    // NAVEDTRA 14044, US Navy, p. 208: shoe 1/2 by 3/4 in.
    ['shoe-size', [0.5, 0.75]],
    // NAVEDTRA 14044, p. 208: 8d finish nails; an 8d nail is 2 1/2 in (NAVEDTRA 14043, table of nails).
    ['nail-base-hand', [8, 2.5]],
    // ICC, International Residential Code, table R602.3(5): studs at 16 or 24 in.
    ['studs-apart', [16]],
    ['studs-apart-wide', [24]],
    // NIST, American Softwood Lumber Standard PS 20-20: a 2x4 is 1 1/2 in thick.
    ['plate-height', [1.5]],
  ])('%s', (id, published) => expect(figureNumbers(quoted, id)).toEqual(published));

  // NFPA, National Electrical Code 300.4(A)(1): cables may lie 1 1/4 in behind a stud's face.
  it('the usual nail for base stops short of cables', () => {
    const inStud = first('nail-base-usual') - 9 / 16 - 1 / 2;
    const [least = 0, most = 0] = figureNumbers(quoted, 'nail-into-stud');
    expect(inStud).toBeGreaterThanOrEqual(least);
    expect(inStud).toBeLessThanOrEqual(most);
    expect(most).toBeLessThan(first('cable-depth'));
  });

  // NIST Handbook 44, app. C: a gallon is 231 in³; NIST SP 811: a foot is 0.3048 m, so 1 sq ft a gallon is 0.02454 m² a liter.
  it('paint covers the same in metric', () => {
    const squareMetersALiter = 0.3048 ** 2 / (231 * 0.0254 ** 3 * 1000);
    const [least = 0, most = 0] = figureNumbers(quoted, 'paint-covers');
    const [low = 0, high = 0] = figureNumbers(quoted, 'paint-covers', 'metric');
    expect(Math.abs(low - least * squareMetersALiter)).toBeLessThan(0.3);
    expect(Math.abs(high - most * squareMetersALiter)).toBeLessThan(0.3);
  });
});
