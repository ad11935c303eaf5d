/** Verdicts on moisture: none without the facts, each limit with where it comes from, advice by what is wrong. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MoistureResult } from '../../commands/prep/moisture.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { answerTo, problemsOf, replyTo } from '../chat/asked.ts';

const METRIC = { units: 'metric', decimal: ',', currency: 'EUR' } as const;

const data = async (ask: string): Promise<MoistureResult> => (await replyTo(ask)).data as MoistureResult;

/** All that is advised. */
const steps = ({ blocks }: Reply): string =>
  blocks.flatMap((block) => (block.kind === 'steps' ? block.steps : [])).join(' ');

const BASES = [
  'concrete',
  'a concrete slab',
  'the slab',
  'cement screed',
  'a screed',
  'Estrich',
  'Zementestrich',
  'Anhydritestrich',
  'anhydrite screed',
  'calcium sulphate screed',
  'gypcrete',
  'Betonplatte',
  'tile',
  'ceramic tiles',
  'CONCRETE',
] as const;

describe('readings on concrete, a screed or tile without a test for it', () => {
  const ways = [
    (base: string, values: string) => `moisture readings: ${values}, floor: ${base}`,
    (base: string, values: string) => `moisture readings: ${values} on ${base}`,
    (base: string, values: string) => `moisture ${values}% ${base}`,
    (base: string, values: string) => `moisture floor: ${base}, readings: ${values}, area: 10 x 12 ft`,
    (base: string, values: string) => `moisture readings: ${values}, floor: ${base}, method: wood, limit: 10`,
  ];

  it.each(BASES)('%s gets no verdict and is asked for the test', async (base) => {
    for (const way of ways) {
      for (const values of ['4 5 4', '1.8 2.1 1.9', '12']) {
        const line = way(base, values);
        const problems = problemsOf(await answerTo(line));
        expect(
          problems.map(({ option }) => option),
          line,
        ).toContain('method');
        const requested = problems.find(({ option }) => option === 'method')?.expected ?? '';
        // Which test it was is nobody's guess.
        expect(problems.find(({ option }) => option === 'method')?.fix, line).toBeUndefined();
        expect(requested, line).toMatch(/^Which test on .*method: rh.*method: chloride.*method: cm/);
      }
    }
  });

  it('is asked whatever the readings and units are, and wherever the base is told', async () => {
    const value = fc.integer({ min: 10, max: 600 }).map((tenths) => (tenths / 10).toFixed(1));
    const line = fc.tuple(
      fc.array(value, { minLength: 1, maxLength: 6 }),
      fc.constantFrom(...BASES),
      fc.nat(ways.length - 1),
    );
    await fc.assert(
      fc.asyncProperty(line, async ([values, base, way]) => {
        const given = await answerTo(ways[way]?.(base, values.join(' ')) ?? '');
        expect(given).not.toHaveProperty('headline');
        expect(JSON.stringify(given)).not.toContain('Dry enough');
      }),
      { numRuns: 60 },
    );
    expect(
      problemsOf(await answerTo('moisture readings: 1,8 2,1 1,9, floor: Estrich', { preferences: METRIC }))[0]?.option,
    ).toBe('method');
    expect(problemsOf(await answerTo('moisture readings: 4 5 4, found: concrete slab'))[0]?.option).toBe('method');
  });

  it('is judged once the test is named', async () => {
    expect(await data('moisture readings: 72 74 70% RH on the slab')).toMatchObject({ verdict: 'accept', limit: 75 });
    expect(await data('moisture readings: 3 3 2.5, method: chloride, floor: concrete')).toMatchObject({
      verdict: 'accept',
      limit: 3,
    });
  });

  it('of wood is told as wood, and a test for concrete does not go with it', async () => {
    expect(await data('moisture readings: 10 11 12, floor: plywood')).toMatchObject({ verdict: 'accept', limit: 12 });
    expect(problemsOf(await answerTo('moisture readings: 72% RH, floor: plywood'))[0]?.option).toBe('method');
  });

  it('with nothing told says that wood was taken', async () => {
    const { assumed } = await replyTo('moisture readings: 10 11 12');
    expect(assumed.join(' ')).toContain('Assuming a meter on a wood subfloor');
  });
});

// Trade guidance on screeds (reported): at most 2% CM in cement screed, 0.5% in calcium sulfate (anhydrite).
describe('carbide tests', () => {
  it.each([
    ['2.0 1.9 1.8% CM, floor: cement screed', 'accept', 2],
    ['2.1 1.9 1.8% CM, floor: cement screed', 'wait', 2],
    ['0.5 0.4 0.5 CM, floor: anhydrite screed', 'accept', 0.5],
    ['0.6 0.4 0.5 CM, floor: anhydrite screed', 'wait', 0.5],
    ['2.4 2.1 2.2% CM on concrete, limit: 2.5', 'accept', 2.5],
    ['4.1 2 2% CM, floor: concrete', 'stop', 2],
  ] as const)('%s: %s', async (given, verdict, limit) => {
    expect(await data(`moisture readings: ${given}`)).toMatchObject({ verdict, limit });
  });

  it('on a screed of a kind that is not told get no verdict', async () => {
    for (const given of ['2.1% CM', '0.4% CM, floor: Estrich', '1.9 CM on the screed']) {
      const [problem, ...more] = problemsOf(await answerTo(`moisture readings: ${given}`));
      expect(more).toEqual([]);
      expect(problem).toMatchObject({ option: 'floor', expected: expect.stringContaining('Which screed') });
    }
  });
});

describe('advice', () => {
  it('for too few readings alone is to take more, and nothing is heated or dried', async () => {
    const concrete = await replyTo('moisture readings: 3 lb 2.5 lb 2 lb, area: 2500 sq ft');
    expect(concrete.headline).toBe('Wait: 2 more tests needed for this area.');
    const wood = await replyTo('moisture readings: 9 10, area: 20 x 20 ft');
    for (const reply of [concrete, wood]) {
      expect(steps(reply)).toMatch(/more (?:test|reading)s/);
      expect(steps(reply)).not.toMatch(/heat|dehumidifier|dry/i);
    }
  });

  it('for a gap to the flooring is to let both come together', async () => {
    const text = steps(await replyTo('moisture readings: 11 11 11, flooring: 6%'));
    expect(text).toMatch(/cartons/);
    expect(text).not.toMatch(/dehumidifier/);
  });

  it('for wet wood dries it; for a wet slab names no joists and tells what plank makers allow', async () => {
    expect(steps(await replyTo('moisture readings: 14 13 12'))).toMatch(/dehumidifier/);
    expect(steps(await replyTo('moisture readings: 22 13 12'))).toMatch(/joists/);
    const slab = await replyTo('moisture readings: 95 92 90% RH');
    expect(steps(slab)).not.toMatch(/joist/);
    // 85% RH and 5 lb are common limits for plank (reported).
    expect(JSON.stringify((await replyTo('moisture readings: 84 82 80% RH')).blocks)).toContain('85% RH');
    expect(JSON.stringify((await replyTo('moisture readings: 4 lb 4 lb 4 lb')).blocks)).toContain('5 lb');
    expect(await data('moisture readings: 4 5 4 lb, limit: 5')).toMatchObject({ verdict: 'accept' });
  });

  // Makers' guides (reported): 6 mil polyethylene on concrete where the plank has no barrier of its own.
  it('on a dry slab names the film', async () => {
    expect(steps(await replyTo('moisture readings: 70 71 72% RH'))).toContain('6 mil polyethylene');
  });
});

// ASTM F1869 and F2170 (reported): 3 tests in the first 1,000 sq ft, 1 in each further 1,000; NWFA (reported): 20 readings
// per 1,000 sq ft of wood.
it.each([
  ['70 70 70% RH', undefined, 3],
  ['70 70 70% RH', '1000 sq ft', 3],
  ['70 70 70% RH', '1001 sq ft', 4],
  ['2 2 2 lb', '2500 sq ft', 5],
  ['10 11 12', '1000 sq ft', 20],
])('%s over %s wants %i', async (readings, area, required) => {
  const given = area === undefined ? '' : `, area: ${area}`;
  expect((await data(`moisture readings: ${readings}${given}`)).required).toBe(required);
});

it('limits are F710’s and the makers’, F1869 and F2170 the ways to test', async () => {
  const source = (await replyTo('moisture readings: 70 70 70% RH')).sources.find(({ title }) =>
    title.includes('F2170'),
  );
  expect(source?.title).toMatch(/^F710 and flooring makers/);
});
