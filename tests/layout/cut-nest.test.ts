/** Slanted cuts nest: worked numbers, and pairs against trying every way. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NestPiece, type NestPlank, nestPlanks, pairUp } from '../../src/layout/cutting.ts';

const board: NestPlank = { length: 480, width: 70, kerf: 0, lock: 'click' };

/** A piece as its outer length and how far its cut runs back at the near and the far edge. */
function start(length: number, near: number, far: number, index = 0): NestPiece {
  return { index, part: 'start', length, near: [near, length], far: [far, length] };
}

function end(length: number, near: number, far: number, index = 1): NestPiece {
  return { index, part: 'end', length, near: [0, length - near], far: [0, length - far] };
}

describe('an end and a start of a 480 × 70 board', () => {
  it('share it with outer lengths of 275 each when both are cut at 45° the same way: 550 − 70 = 480', () => {
    expect(nestPlanks([start(275, 70, 0), end(275, 0, 70)], board)).toHaveLength(1);
    expect(nestPlanks([start(276, 70, 0), end(275, 0, 70)], board)).toHaveLength(2);
  });

  it('do not when the cuts face each other: 275 + 275 at one edge', () => {
    expect(nestPlanks([start(275, 0, 70), end(275, 0, 70)], board)).toHaveLength(2);
    expect(nestPlanks([start(205, 0, 70), end(275, 0, 70)], board)).toHaveLength(1);
  });

  it('lose a kerf of 10 over the cosine of 45° to a cut between them: 14.15 along the board', () => {
    const kerf = { ...board, kerf: 10 };
    expect(nestPlanks([start(270, 70, 0), end(265, 0, 70)], kerf)).toHaveLength(1);
    expect(nestPlanks([start(270, 70, 0), end(266, 0, 70)], kerf)).toHaveLength(2);
  });

  it('turn round only without locks', () => {
    const pieces: NestPiece[] = [
      { index: 0, part: 'any', length: 275, near: [0, 275], far: [70, 275] },
      { index: 1, part: 'any', length: 275, near: [0, 275], far: [70, 275] },
    ];
    expect(nestPlanks(pieces, board)).toHaveLength(2);
    expect(nestPlanks(pieces, { ...board, lock: 'none' })).toHaveLength(1);
  });
});

describe('any pieces', () => {
  const slanted = fc.record({
    length: fc.integer({ min: 80, max: 460 }),
    near: fc.constantFrom(0, 0, 70),
    far: fc.constantFrom(0, 70, 35),
  });
  const few = fc.array(slanted, { maxLength: 6 });

  it('are paired as often as trying every way finds', () => {
    fc.assert(
      fc.property(few, few, fc.constantFrom(0, 10), (up, down, kerf) => {
        const plank = { ...board, kerf };
        const starts = up.map(({ length, near, far }) => start(length, near, near === 0 ? far : 0));
        const ends = down.map(({ length, near, far }) => end(length, near, near === 0 ? far : 0));
        const pairs = pairUp(ends, starts, plank).filter((one) => one >= 0).length;
        expect(pairs).toBe(mostPairs(ends, starts, plank));
      }),
    );
  });

  it('all come, each once, and no plank gives two starts or two ends', () => {
    fc.assert(
      fc.property(few, few, few, (up, down, loose) => {
        const pieces = [
          ...up.map(({ length }) => start(length, 0, 0)),
          ...down.map(({ length }) => end(length, 0, 0)),
          ...loose.map(({ length }): NestPiece => ({ ...start(length, 0, 0), part: 'any' })),
        ].map((piece, index) => ({ ...piece, index }));
        const planks = nestPlanks(pieces, board);
        expect(
          planks
            .flat()
            .map(({ index }) => index)
            .sort((a, b) => a - b),
        ).toEqual(pieces.map(({ index }) => index));
        for (const given of planks) {
          expect(given.filter(({ part }) => part === 'start').length).toBeLessThan(2);
          expect(given.filter(({ part }) => part === 'end').length).toBeLessThan(2);
          expect(given.reduce((sum, { length }) => sum + length, 0)).toBeLessThanOrEqual(board.length);
        }
      }),
    );
  });
});

/** Every pairing tried; whether two fit is asked at a thousand heights across the board. */
function mostPairs(ends: readonly NestPiece[], starts: readonly NestPiece[], plank: NestPlank): number {
  const [first, ...rest] = ends;
  if (!first) return 0;
  const without = mostPairs(rest, starts, plank);
  const withOne = starts.flatMap((one, i) =>
    fits(first, one, plank)
      ? [
          1 +
            mostPairs(
              rest,
              starts.filter((_, k) => k !== i),
              plank,
            ),
        ]
      : [],
  );
  return Math.max(without, ...withOne);
}

function fits(left: NestPiece, right: NestPiece, { length, width, kerf }: NestPlank): boolean {
  const rise = Math.max(Math.abs(left.near[1] - left.far[1]), Math.abs(right.near[0] - right.far[0])) / width;
  const clear = Math.ceil(kerf / Math.cos(Math.atan(rise)) - 1e-9);
  return Array.from({ length: 1001 }, (_, i) => i / 1000).every((share) => {
    const ends = left.near[1] + (left.far[1] - left.near[1]) * share;
    const begins = length - right.length + right.near[0] + (right.far[0] - right.near[0]) * share;
    return begins - ends >= clear - 1e-6;
  });
}
