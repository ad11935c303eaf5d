/** The row line, against trying every line: the narrowest strip could not be wider where the rule made it move, nor less wall be beside one. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseRowLine, stripBeside } from '../../src/layout/slab.ts';

const WIDTH = 24;
const level = fc.record({
  v: fc.integer({ min: 0, max: 200 }),
  side: fc.constantFrom('floor' as const, 'ceiling' as const),
  length: fc.integer({ min: 1, max: 30 }),
});
const levels = fc.array(level, { minLength: 1, maxLength: 6 }).map((list) =>
  [{ v: 0, side: 'floor' as const, length: 9 }, ...list].map(({ length, ...one }) => ({
    ...one,
    spans: [{ from: 0, to: length }],
  })),
);

describe('row line', () => {
  it('stays at the starting wall when no strip is too narrow there, else is the best of all lines', () => {
    fc.assert(
      fc.property(levels, fc.integer({ min: 1, max: WIDTH }), (walls, least) => {
        const narrowest = (line: number): number => Math.min(...walls.map((wall) => stripBeside(wall, line, WIDTH)));
        const chosen = chooseRowLine(walls, WIDTH, least, 0);
        const best = Math.max(...Array.from({ length: WIDTH }, (_, line) => narrowest(line)));
        if (narrowest(0) >= least) expect(chosen).toBe(0);
        else if (best >= least) expect(narrowest(chosen)).toBe(best);
        else {
          // No line keeps every strip: none has less wall beside too narrow ones.
          const narrow = (line: number): number =>
            walls.reduce(
              (sum, wall) => sum + (stripBeside(wall, line, WIDTH) < least ? (wall.spans[0]?.to ?? 0) : 0),
              0,
            );
          expect(narrow(chosen)).toBe(Math.min(...Array.from({ length: WIDTH }, (_, line) => narrow(line))));
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('starts at the wall and leaves a sliver beside a short one, where a plank is notched', () => {
    const walls = [
      { v: 0, side: 'floor' as const, spans: [{ from: 0, to: 90 }] },
      { v: WIDTH - 1, side: 'floor' as const, spans: [{ from: 40, to: 49 }] },
      { v: 4 * WIDTH, side: 'ceiling' as const, spans: [{ from: 0, to: 90 }] },
    ];
    expect(chooseRowLine(walls, WIDTH, 2, 10)).toBe(0);
    expect(chooseRowLine(walls, WIDTH, 2, 9)).not.toBe(0);
  });

  it('balances first and last row of a rectangle: (width + remainder) / 2 (common practice)', () => {
    const walls = [
      { v: 0, side: 'floor' as const, spans: [{ from: 0, to: 9 }] },
      { v: 4 * WIDTH + 2, side: 'ceiling' as const, spans: [{ from: 0, to: 9 }] },
    ];
    const line = chooseRowLine(walls, WIDTH, 8, 0);
    expect(walls.map((wall) => stripBeside(wall, line, WIDTH))).toEqual([13, 13]);
  });
});
