/** Labels spread out as little as can be: checked against every arrangement of small cases. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clippedLines, clippedRings } from '../../src/drawing/shapes.ts';
import { spread } from '../../src/drawing/text.ts';

/** The least sum of squared moves on whole levels, by trying them all in turn from the first label to the last. */
function leastCost(wanted: readonly number[], apart: number): number {
  const levels = Array.from({ length: 121 }, (_, i) => i - 40);
  let best = levels.map((level) => ((wanted[0] ?? 0) - level) ** 2);
  for (const want of wanted.slice(1)) {
    best = levels.map((level, i) => {
      const before = Math.min(...best.slice(0, Math.max(0, i - apart + 1)));
      return (want - level) ** 2 + before;
    });
  }
  return Math.min(...best);
}

describe('labels', () => {
  it('keep apart, and move no more in all than the best of every whole arrangement', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 7 }),
        fc.integer({ min: 1, max: 5 }),
        (some, apart) => {
          const wanted = [...some].sort((a, b) => a - b);
          const levels = spread(wanted, apart);
          levels.slice(1).forEach((level, i) => {
            expect(level - (levels[i] ?? 0)).toBeGreaterThanOrEqual(apart - 1e-9);
          });
          const cost = levels.reduce((sum, level, i) => sum + (level - (wanted[i] ?? 0)) ** 2, 0);
          // The exact answer is never dearer than one on whole levels, and rounding it to whole ones costs at most 1/4 a label.
          const least = leastCost(wanted, apart);
          expect(cost).toBeLessThanOrEqual(least + 1e-9);
          expect(cost).toBeGreaterThanOrEqual(least - wanted.length / 4 - 1e-9);
        },
      ),
    );
  });

  it('stay where they are when there is room', () => {
    expect(spread([0, 12, 30], 10)).toEqual([0, 12, 30]);
    expect(spread([], 10)).toEqual([]);
  });
});

describe('shapes at the edge of a sheet', () => {
  const box = { left: 0, right: 10, top: 0, bottom: 10 };
  const area = (ring: readonly (readonly [number, number])[]): number =>
    Math.abs(
      ring.reduce((sum, [x, y], i) => {
        const [nx, ny] = ring[(i + 1) % ring.length] ?? [x, y];
        return sum + x * ny - nx * y;
      }, 0) / 2,
    );

  it('are cut off there: a rectangle leaves what both boxes share', () => {
    const side = fc.integer({ min: -20, max: 20 });
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 }), (x, y, wide, deep) => {
        const ring = [
          [x, y],
          [x + wide, y],
          [x + wide, y + deep],
          [x, y + deep],
        ] as const;
        const shared = (low: number, size: number): number => Math.max(0, Math.min(10, low + size) - Math.max(0, low));
        const rest = clippedRings([ring], box).reduce((sum, cut) => sum + area(cut), 0);
        expect(rest).toBeCloseTo(shared(x, wide) * shared(y, deep), 9);
      }),
    );
  });

  it('and lines too', () => {
    expect(
      clippedLines(
        [
          [
            [-5, 4],
            [20, 4],
          ],
        ],
        box,
      ),
    ).toEqual([
      [
        [0, 4],
        [10, 4],
      ],
    ]);
    expect(
      clippedLines(
        [
          [
            [3, 20],
            [3, 12],
          ],
        ],
        box,
      ),
    ).toEqual([]);
    expect(
      clippedLines(
        [
          [
            [-1, 0],
            [-1, 10],
          ],
        ],
        box,
      ),
    ).toEqual([]);
  });
});
