/** Notches and holes in a joist against the limits printed for a 2×10. */

import { describe, expect, it } from 'vitest';
import { inches, TICKS_PER_INCH } from '../../src/core/length.ts';
import { joistFlaws, joistLimits } from '../../src/core/subfloor/joist-cut.ts';
import { JOIST_LIMITS } from '../../src/trade/joists.ts';

const limits = JOIST_LIMITS.value;
const depth = inches(9.25);

// International Residential Code, R502.8.1 (reported): 2×10, D = 9¼ in: notch 1.54 in, hole 3.08 in, notch at an end 2.31 in.
describe('a 2×10', () => {
  it('has the printed limits', () => {
    const said = joistLimits(depth, limits);
    const inch = (length: number): string => (length / TICKS_PER_INCH).toFixed(2);
    expect([said.notch, said.hole, said.endNotch, said.notchLength].map(inch)).toEqual([
      '1.54',
      '3.08',
      '2.31',
      '3.08',
    ]);
  });

  it.each([
    [1.54, 'outer', []],
    [1.55, 'outer', ['notch-deep']],
    [1.55, 'end', []],
    [2.31, 'end', []],
    [2.32, 'end', ['notch-deep']],
    [0.1, 'middle', ['notch-middle']],
  ] as const)('with a notch of %f in at %s: %j', (notch, place, flaws) => {
    const told = { depth, notch: { depth: inches(notch), length: inches(1), place } };
    expect(joistFlaws(told, limits)).toEqual(flaws);
  });

  it.each([
    [3.08, 2, []],
    [3.09, 2, ['hole-large']],
    [1, 1.99, ['hole-near-edge']],
  ] as const)('with a hole of %f in, %f in from an edge: %j', (diameter, edge, flaws) => {
    expect(joistFlaws({ depth, hole: { diameter: inches(diameter), edge: inches(edge) } }, limits)).toEqual(flaws);
  });

  it('with a notch longer than D/3, or with what was not told, is referred', () => {
    const long = { depth: inches(1), length: inches(3.1), place: 'outer' } as const;
    expect(joistFlaws({ depth, notch: long }, limits)).toEqual(['notch-long']);
    expect(joistFlaws({ depth, notch: { depth: inches(1) } }, limits)).toEqual([
      'notch-place-untold',
      'notch-length-untold',
    ]);
    expect(joistFlaws({ depth, hole: { diameter: inches(1) } }, limits)).toEqual(['hole-edge-untold']);
  });

  it('without either has no flaw', () => {
    expect(joistFlaws({ depth, notch: { depth: inches(0) }, hole: { diameter: inches(0) } }, limits)).toEqual([]);
  });
});
