/** Planks shared by cut pieces, against an enumeration of every way to share them. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutPiece, countPairs, sharePlanks } from '../../src/layout/cutting.ts';
import { fewestLockingPlanks, fewestPlainPlanks } from '../outside/matching-oracle.ts';

const PLANK = 48;
const length = fc.integer({ min: 1, max: PLANK });
const kerf = fc.constantFrom(0, 1, 2);

function pieces(starts: readonly number[], ends: readonly number[], shorts: readonly number[]): CutPiece[] {
  const given = [
    ...starts.map((size) => ({ length: size, part: 'start' as const })),
    ...ends.map((size) => ({ length: size, part: 'end' as const })),
    ...shorts.map((size) => ({ length: size, part: 'any' as const })),
  ];
  return given.map((piece, index) => ({ ...piece, index }));
}

describe('sharing planks', () => {
  it('of locking boards takes as few as any way could (all ways enumerated)', () => {
    const lists = fc.tuple(
      fc.array(length, { maxLength: 3 }),
      fc.array(length, { maxLength: 3 }),
      fc.array(length, { maxLength: 3 }),
      kerf,
    );
    fc.assert(
      fc.property(lists, ([starts, ends, shorts, cut]) => {
        const shared = sharePlanks(pieces(starts, ends, shorts), PLANK, cut, 'click');
        expect(shared.length).toBe(fewestLockingPlanks({ starts, ends, shorts }, PLANK, cut));
      }),
      { numRuns: 1000 },
    );
  });

  it('of boards without locks is plain packing', () => {
    fc.assert(
      fc.property(fc.array(length, { maxLength: 8 }), kerf, (lengths, cut) => {
        expect(sharePlanks(pieces([], [], lengths), PLANK, cut, 'none').length).toBe(
          fewestPlainPlanks(lengths, PLANK, cut),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('puts every piece in one plank, one start and one end each, a kerf between pieces', () => {
    const lists = fc.tuple(
      fc.array(length, { maxLength: 30 }),
      fc.array(length, { maxLength: 30 }),
      fc.array(length, { maxLength: 30 }),
      kerf,
    );
    fc.assert(
      fc.property(lists, ([starts, ends, shorts, cut]) => {
        const all = pieces(starts, ends, shorts);
        const shared = sharePlanks(all, PLANK, cut, 'click');
        expect(shared.flatMap((one) => one.pieces.map((piece) => piece.index)).sort((a, b) => a - b)).toEqual(
          all.map((p) => p.index),
        );
        for (const { pieces: own } of shared) {
          expect(own.reduce((sum, piece) => sum + piece.length, 0) + cut * (own.length - 1)).toBeLessThanOrEqual(PLANK);
          expect(own.filter((piece) => piece.part === 'start').length).toBeLessThanOrEqual(1);
          expect(own.filter((piece) => piece.part === 'end').length).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('counts as many pairs as it makes', () => {
    fc.assert(
      fc.property(
        fc.array(length, { maxLength: 40 }),
        fc.array(length, { maxLength: 40 }),
        kerf,
        (starts, ends, cut) => {
          const shared = sharePlanks(pieces(starts, ends, []), PLANK, cut, 'click');
          expect(starts.length + ends.length - countPairs(starts, ends, PLANK, cut)).toBe(shared.length);
        },
      ),
    );
  });
});
