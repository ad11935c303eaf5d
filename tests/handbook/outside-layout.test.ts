/** Figures on buying, rows, gaps and laying, against what others publish and against what a layout is computed with. */

import { describe, expect, it, test } from 'vitest';
import {
  LONG_RUN,
  LONG_RUN_GAP,
  NARROWEST_STRIP,
  PERIMETER_GAP,
  SHORTEST_END,
  STAGGER,
} from '../../src/figures/floor-figures.ts';
import {
  EXPANSION_QUOTED,
  LAYING_QUOTED,
  PLANK_DIRECTION_QUOTED,
  ROWS_QUOTED,
} from '../../src/figures/handbook-laying-figures.ts';
import { BUYING_QUOTED } from '../../src/figures/handbook-people-figures.ts';
import { UNDERCUT_CLEARANCE } from '../../src/figures/trim-figures.ts';
import { feet, inches } from '../../src/units/length.ts';
import { figureNumbers } from './figure-numbers.ts';

const quoted = [...BUYING_QUOTED, ...PLANK_DIRECTION_QUOTED, ...ROWS_QUOTED, ...EXPANSION_QUOTED, ...LAYING_QUOTED];
const us = (id: string) => figureNumbers(quoted, id);

describe('published or reported elsewhere', () => {
  test.each([
    // ASTM F3261, Resilient Flooring in Modular Format with Rigid Polymeric Core, 2020: grade 1, commercial, 0.020 in.
    ['wear-hard', [0.02 * 1000]],
    // NAHB, Residential Construction Performance Guidelines: 12 and 16 ft sides, diagonal within 1/2 in of 20 ft.
    ['square-tolerance', [1 / 2, Math.hypot(12, 16)]],
    // NWFA, as This Old House reports it: along the joists, 1/2 in plywood on top or blocking on 24 in centers.
    ['joist-ply', [1 / 2]],
    ['joist-blocking', [24]],
    // floorref.com, Laminate: maximum run length: a break after 26 to 40 ft (8 to 12 m).
    ['run-laminate', [26, 40]],
    // greenyplace.com, Gap with vinyl plank: 1/4 in below 50 ft, 1/2 in from 50 to 85 ft.
    ['run-wider-gap', [50]],
    ['gap-usual', [1 / 4]],
    ['gap-long-run', [1 / 2]],
    ['run-generous', [85]],
    // CPSC, Table saws, 2011: about 67,300 treated blade contact injuries in each of two years.
    ['saw-injuries', [67_300]],
  ])('%s', (id, published) => expect(us(id)).toEqual(published));

  it('20 mil is 0.5 mm, as the grade is printed', () => {
    const [millimeters = 0] = figureNumbers(quoted, 'wear-hard', 'metric');
    expect(millimeters).toBeCloseTo(0.02 * 25.4, 1);
  });

  it('a break after 26 to 40 ft is one after 8 to 12 m', () => {
    expect(us('run-laminate').map((run) => Math.round(run * 0.3048))).toEqual(
      figureNumbers(quoted, 'run-laminate', 'metric'),
    );
  });

  // Euclid, Elements I.48: the angle is right where the squares of two sides make the square of the third.
  test.each(['us', 'metric'] as const)('the triangle has a right angle (%s)', (units) => {
    const [one = 0, two = 0, across = 0] = figureNumbers(quoted, 'square-triangle', units);
    expect(one ** 2 + two ** 2).toBe(across ** 2);
  });
});

describe('the same as a layout is computed with', () => {
  test.each([
    ['stagger-least', STAGGER.value],
    ['end-least', SHORTEST_END.value],
    ['strip-least', NARROWEST_STRIP.value],
    ['gap-usual', PERIMETER_GAP.value],
    ['gap-long-run', LONG_RUN_GAP.value.imperial],
    ['undercut-clearance', UNDERCUT_CLEARANCE.value],
  ])('%s', (id, value) => expect(us(id).map((size) => inches(size))).toEqual([value]));

  test('run-wider-gap', () => expect(us('run-wider-gap').map((size) => feet(size))).toEqual([LONG_RUN.value]));
});
