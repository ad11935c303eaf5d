/** Fasteners, sheets and screws of a panel subfloor against what the trade prints. */

import { describe, expect, it } from 'vitest';
import { FASTENER_BITE, FASTENER_SPACING, SCREW_STEPS } from '../../src/figures/subfloor-figures.ts';
import { squeakScrews } from '../../src/prep/joist-cut.ts';
import { fastenerPlaces } from '../../src/prep/subfloor-patch.ts';
import { inches } from '../../src/units/length.ts';

/** A whole 4×8 sheet across joists. */
function sheet(spacing: number) {
  const joists = Array.from({ length: Math.round(96 / spacing) + 1 }, (_, i) => inches(i * spacing));
  return { u0: 0, v0: 0, u1: inches(96), v1: inches(48), joists };
}

// The 6/12 rule (published: Modern Carpentry, Goodheart-Willcox, 2016, p. 258), its counts worked by hand (derived):
// 16 in: 2 ends × 9 + 5 joists × 5 = 43; 24 in: 2 × 9 + 3 × 5 = 33.
describe('a 4×8 sheet with its long edges unblocked', () => {
  it.each([
    [16, 43],
    [24, 33],
    [12, 2 * 9 + 7 * 5],
  ])('over joists %f in apart takes %i fasteners', (spacing, count) => {
    const places = fastenerPlaces(sheet(spacing), FASTENER_SPACING.value, false);
    expect(places.length).toBe(count);
    expect(new Set(places.map(String)).size).toBe(count);
  });

  // Blocked edges are supported edges: 6 in apart there too, so between joists 16 in apart two more at each edge.
  it('blocked along its long edges takes two more in each bay at each edge', () => {
    expect(fastenerPlaces(sheet(16), FASTENER_SPACING.value, true).length).toBe(43 + 2 * 6 * 2);
    expect(fastenerPlaces(sheet(24), FASTENER_SPACING.value, true).length).toBe(33 + 2 * 4 * 3);
  });

  it('has none further from the next than the rule allows', () => {
    const { edge, field } = FASTENER_SPACING.value;
    const panel = sheet(16);
    const places = fastenerPlaces(panel, FASTENER_SPACING.value, true);
    for (const [i, joist] of panel.joists.entries()) {
      const on = places.flatMap(([u, v]) => (u === joist ? [v] : [])).sort((a, b) => a - b);
      const most = i === 0 || i === panel.joists.length - 1 ? edge : field;
      expect(Math.max(...on.slice(1).map((v, k) => v - (on[k] ?? 0)))).toBeLessThanOrEqual(most);
      expect([on[0], on.at(-1)]).toEqual([panel.v0, panel.v1]);
    }
    for (const v of [panel.v0, panel.v1]) {
      const on = places.flatMap(([u, at]) => (at === v ? [u] : [])).sort((a, b) => a - b);
      expect(Math.max(...on.slice(1).map((u, k) => u - (on[k] ?? 0)))).toBeLessThanOrEqual(edge);
    }
  });
});

const SCREWED = { panel: inches(0.75), bite: inches(1), step: SCREW_STEPS.value.imperial };

// At least 1 in into the joist (published: the same page).
describe('screws against a squeak', () => {
  it.each([
    [3 / 4, 1.75],
    [23 / 32, 1.75],
    [5 / 8, 1.75],
    [1 / 2, 1.5],
    [1.125, 2.25],
  ])('through %f in of panel are %f in long', (panel, length) => {
    const made = squeakScrews({ along: inches(48), across: inches(0) }, inches(16), inches(6), {
      panel: inches(panel),
      bite: FASTENER_BITE.value,
      step: SCREW_STEPS.value.imperial,
    });
    expect(made.length).toBe(inches(length));
    expect(made.length - inches(panel)).toBeGreaterThanOrEqual(inches(1));
  });

  it('stand on every joist that the noisy section can hold', () => {
    const noisy = { along: inches(48), across: inches(72) };
    const made = squeakScrews(noisy, inches(16), inches(6), SCREWED);
    // 72 in hold at most 5 lines 16 in apart; 48 in at 6 in are 9 screws.
    expect([made.joists, made.perJoist, made.screws, made.spacing]).toEqual([5, 9, 45, inches(6)]);
  });

  it('want distances above nothing', () => {
    const noisy = { along: inches(0), across: inches(0) };
    expect(() => squeakScrews(noisy, inches(16), inches(6), SCREWED)).toThrow(RangeError);
  });
});
