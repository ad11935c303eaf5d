/** Random sums of lengths against an independent reckoning, and random texts. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COMMA, POINT, tapeIn } from './tape-typed.ts';

interface Reckoned {
  readonly text: string;
  readonly top: bigint;
  readonly bottom: bigint;
}

describe('laws', () => {
  // Each random sum is written out and reckoned by cross-multiplying whole numbers, with no part of the project.
  const atoms: fc.Arbitrary<Reckoned> = fc.oneof(
    fc.tuple(fc.nat(40), fc.integer({ min: 0, max: 11 }), fc.integer({ min: 1, max: 15 })).map(([ft, inch, part]) => ({
      text: `${ft}' ${inch} ${part}/16"`,
      top: BigInt(ft * 97_536 + inch * 8128 + part * 508),
      bottom: 1n,
    })),
    fc.nat(9999).map((mm) => ({ text: `${mm} mm`, top: BigInt(mm * 320), bottom: 1n })),
    fc.nat(999).map((cm) => ({
      text: `${Math.floor(cm / 100)}.${String(cm % 100).padStart(2, '0')} m`,
      top: BigInt(cm * 3200),
      bottom: 1n,
    })),
  );
  const { sum } = fc.letrec<{ sum: Reckoned }>((tie) => ({
    sum: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      atoms,
      fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => ({
        text: `(${a.text} + ${b.text})`,
        top: a.top * b.bottom + b.top * a.bottom,
        bottom: a.bottom * b.bottom,
      })),
      fc.tuple(tie('sum'), tie('sum')).map(([a, b]) => ({
        text: `(${a.text} − ${b.text})`,
        top: a.top * b.bottom - b.top * a.bottom,
        bottom: a.bottom * b.bottom,
      })),
      fc
        .tuple(tie('sum'), fc.integer({ min: 1, max: 9 }))
        .map(([a, n]) => ({ ...a, text: `${n} x ${a.text}`, top: a.top * BigInt(n) })),
      fc.tuple(tie('sum'), fc.integer({ min: 1, max: 9 })).map(([a, n]) => ({
        ...a,
        text: `(${a.text} / ${n})`,
        bottom: a.bottom * BigInt(n),
      })),
      tie('sum').map((a) => ({ ...a, text: `half of (${a.text})`, bottom: a.bottom * 2n })),
    ),
  }));

  it('a random sum is what whole numbers make it', () => {
    fc.assert(
      fc.property(sum, ({ text, top, bottom }) => {
        fc.pre(text.length <= 300);
        const { result } = tapeIn(text);
        const nearest = (2n * top + bottom) / (2n * bottom);
        if (2n * top < bottom || nearest > 3_200_000_000n) return !result.ok;
        expect(result).toMatchObject({
          ok: true,
          value: { kind: 'length', length: Number(nearest), exact: top % bottom === 0n },
        });
        return true;
      }),
      { numRuns: 500 },
    );
  });

  it('no text throws', () => {
    const scraps = fc.array(
      fc.constantFrom(
        `3'`,
        `6 1/2"`,
        '2',
        '3,8 m',
        '5/8"',
        '½',
        ' + ',
        ' - ',
        '-',
        ' x ',
        ' / ',
        '/',
        '(',
        ')',
        'half of ',
        ' in mm',
        '²',
        ' ',
        '.',
        'q1',
        '!',
        ',',
      ),
      { maxLength: 16 },
    );
    const texts = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      scraps.map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(texts, fc.constantFrom(POINT, COMMA), (text, preferences) => {
        const { result } = tapeIn(text, preferences);
        if (!result.ok) return result.problems.every(({ fix, expected }) => fix !== '' && expected !== '');
        const tape = result.value;
        return tape.kind === 'area' ? tape.area > 0n : (tape.kind === 'length' ? tape.length : tape.value) > 0;
      }),
      { numRuns: 4000 },
    );
  });
});
