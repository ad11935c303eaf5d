/** Notches and holes in a joist against the limits printed for a 2×10. */

import { describe, expect, it } from 'vitest';
import { JOIST_LIMITS } from '../../src/figures/subfloor-figures.ts';
import { joistFlaws, joistLimits } from '../../src/prep/joist-cut.ts';
import { inches, TICKS_PER_INCH } from '../../src/units/length.ts';
import { answerTo, problemsOf } from '../chat/asked.ts';

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
    const given = { depth, notch: { depth: inches(notch), length: inches(1), place } };
    expect(joistFlaws(given, limits)).toEqual(flaws);
  });

  it.each([
    [3.08, 2, []],
    [3.09, 2, ['hole-large']],
    [1, 1.99, ['hole-near-edge']],
  ] as const)('with a hole of %f in, %f in from an edge: %j', (diameter, edge, flaws) => {
    expect(joistFlaws({ depth, hole: { diameter: inches(diameter), edge: inches(edge) } }, limits)).toEqual(flaws);
  });

  // The same section (reported): a hole stands 2 in from any other hole or notch too.
  it.each([
    [2, []],
    [1.99, ['hole-near-cut']],
    [undefined, ['hole-apart-untold']],
  ] as const)('with a hole %f in from a notch: %j', (apart, flaws) => {
    const hole = { diameter: inches(1), edge: inches(2), ...(apart !== undefined && { apart: inches(apart) }) };
    const notch = { depth: inches(1), length: inches(1), place: 'outer' } as const;
    expect(joistFlaws({ depth, hole, notch }, limits)).toEqual(flaws);
    expect(joistFlaws({ depth, hole: { diameter: inches(1), edge: inches(2) } }, limits)).toEqual([]);
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

describe('asked', () => {
  const ask = (rest: string) =>
    answerTo(
      `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in, joist-depth: 9 1/4 in, ${rest}`,
    );
  const notched = 'notch: 1 in, notch-length: 1 in, notch-place: outer';

  it('a hole and a notch told together are asked how far they stand apart', async () => {
    const both = `${notched}, hole: 1 in, hole-edge: 2 in`;
    expect(problemsOf(await ask(both))).toMatchObject([{ option: 'hole-apart' }]);
    expect(await ask(`${both}, hole-apart: 2 in`)).toHaveProperty('headline');
    expect(await ask(`${both}, hole-apart: 1 in`)).toHaveProperty('why', expect.stringContaining('nearer than 2 in'));
    expect(await ask(notched)).toHaveProperty('headline');
    expect(await ask('hole: 1 in, hole-edge: 2 in')).toHaveProperty('headline');
  });

  // International Residential Code, R502.8.2 (reported): no cuts in I-joists, trusses and glued members but as the maker allows.
  it.each(['i-joist', 'truss', 'glued'])('a cut in a joist of kind %s is refused whatever its size', async (kind) => {
    for (const cut of ['notch: 1/8 in, notch-length: 1/8 in, notch-place: end', 'hole: 1/4 in, hole-edge: 4 in']) {
      const given = await ask(`${cut}, joist-kind: ${kind}`);
      expect(given).toMatchObject({
        why: expect.stringContaining('never notched'),
        call: expect.stringMatching(/engineer/),
      });
    }
    expect(await ask(`joist-kind: ${kind}`)).toHaveProperty('headline');
  });
});
