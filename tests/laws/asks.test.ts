/** Laws of whole asks: units do not matter, cartons suffice, cautions are told, and what is offered as a mend mends. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerTo, firstFloorTo, floorTo, problemsOf, replyTo } from '../chat/asked.ts';

const inch = (low: number, high: number) => fc.integer({ min: low, max: high });

const floors = fc.record({
  wide: inch(30, 200),
  deep: inch(30, 200),
  plank: fc.constantFrom([6, 48], [7, 36], [9, 60]),
  perCarton: fc.integer({ min: 4, max: 14 }),
  pattern: fc.constantFrom('stair-step', 'half', 'thirds', 'offcut-first', 'scattered'),
  step: inch(6, 12),
  stagger: inch(4, 6),
  end: inch(6, 9),
  strip: inch(1, 3),
  gap: fc.constantFrom('0.25', '0.5', '0.375'),
  kerf: fc.constantFrom('0', '0.125'),
  mistakes: fc.integer({ min: 0, max: 12 }),
  spares: fc.integer({ min: 0, max: 9 }),
});
type AnsweredRequest = typeof floors extends fc.Arbitrary<infer T> ? T : never;

/** Everything told, every length in one unit: 1 in is 25.4 mm exactly (NIST). */
function requested(floor: AnsweredRequest, unit: 'in' | 'mm'): string {
  const say = (length: number | string): string => {
    // Ten-thousandths of an inch, times 25.4, are whole hundred-thousandths of a millimetre.
    const small = BigInt(Math.round(Number(length) * 10_000)) * 254n;
    return unit === 'in' ? `${length} in` : `${small / 100_000n}.${String(small % 100_000n).padStart(5, '0')} mm`;
  };
  const [width = 0, length = 0] = floor.plank;
  const step = floor.pattern === 'stair-step' ? ` ${say(floor.step)} x 4` : '';
  return [
    `planks room: bedroom ${say(floor.wide)} x ${say(floor.deep)}`,
    `plank: ${say(width)} x ${say(length)}, ${floor.perCarton} per carton`,
    `pattern: ${floor.pattern}${step}`,
    `direction: long`,
    `stagger: ${say(floor.stagger)}`,
    `shortest-end: ${say(floor.end)}`,
    `narrowest-strip: ${say(floor.strip)}`,
    `gap: ${say(floor.gap)}`,
    `kerf: ${say(floor.kerf)}`,
    `mistakes: ${floor.mistakes}%`,
    `spares: ${floor.spares}`,
    `tax: 0%`,
  ].join(', ');
}

describe('an ask', () => {
  it('in inches and in millimetres gives the same plan', async () => {
    await fc.assert(
      fc.asyncProperty(floors, async (floor) => {
        const imperial = await floorTo(requested(floor, 'in'));
        expect(imperial.regions[0]?.rows.length).toBeGreaterThan(0);
        expect(await floorTo(requested(floor, 'mm'))).toEqual(imperial);
      }),
      { numRuns: 10 },
    );
  });

  it('gives the same answer again, and whatever the order in which it is told', async () => {
    await fc.assert(
      fc.asyncProperty(floors, async (floor) => {
        const line = requested(floor, 'in');
        const [first = '', ...rest] = line.slice('planks '.length).split(/, (?=[a-z-]+: )/);
        const turned = `planks ${[...rest.reverse(), first].join(', ')}`;
        expect(await firstFloorTo(turned)).toEqual(await firstFloorTo(line));
      }),
      { numRuns: 10 },
    );
  });

  it('buys cartons that cover planks, mistakes and spares, and one fewer would not', async () => {
    await fc.assert(
      fc.asyncProperty(floors, async (floor) => {
        const { count, plank, regions } = await firstFloorTo(requested(floor, 'in'));
        const cut = new Set(
          regions.flatMap(({ rows }) => rows.flatMap(({ pieces }) => pieces.map((piece) => piece.plank))),
        );
        expect(count.planks).toBe(cut.size);
        expect(count.spares).toBe(floor.spares);
        expect(count.mistakes).toBe(Math.ceil((count.planks * floor.mistakes) / 100));
        const need = count.planks + count.mistakes + count.spares;
        expect(count.cartons * plank.perCarton).toBeGreaterThanOrEqual(need);
        expect((count.cartons - 1) * plank.perCarton).toBeLessThan(need);
      }),
      { numRuns: 10 },
    );
  });

  it('is answered with every caution of laying', async () => {
    await fc.assert(
      fc.asyncProperty(floors, fc.boolean(), async (floor, lock) => {
        const line = requested(floor, 'in').replace('per carton', lock ? 'per carton' : 'per carton, no lock');
        const topics = (await replyTo(line)).cautions.map(({ topic }) => topic);
        expect(topics).toEqual(expect.arrayContaining(['blade', 'dust', 'knees', 'lifting', 'asbestos', 'lead']));
      }),
      { numRuns: 10 },
    );
  });
});

describe('a problem', () => {
  const odd = fc.oneof(
    fc.constantFrom(
      'banana',
      '-3',
      '0',
      '1,234',
      '12 x',
      '9999 ft',
      '½',
      '3m8',
      '400%',
      'wall 99',
      'constructor',
      '5 in x 5 in',
    ),
    fc.string({ maxLength: 12 }).map((text) => text.replace(/[:,;]/g, ' ')),
  );
  const options = [
    'room',
    'plank',
    'pattern',
    'direction',
    'stagger',
    'shortest-end',
    'narrowest-strip',
    'gap',
    'kerf',
    'mistakes',
    'spares',
    'tax',
  ];
  const good = { room: "4' x 6'", plank: '6 x 48 in, 10 per carton' };

  it('offers a whole ask that is answered, or none', async () => {
    let met = 0;
    await fc.assert(
      fc.asyncProperty(fc.dictionary(fc.constantFrom(...options), odd, { minKeys: 1, maxKeys: 4 }), async (typed) => {
        const line = Object.entries({ ...good, ...typed }).map(([option, text]) => `${option}: ${text}`);
        const problems = problemsOf(await answerTo(`planks ${line.join(', ')}`));
        met += problems.length;
        for (const { fix, option } of problems)
          if (fix !== undefined) expect(problemsOf(await answerTo(fix)), `${option}: ${fix}`).toEqual([]);
      }),
      { numRuns: 40 },
    );
    expect(met).toBeGreaterThan(60);
  });

  it.each([
    ['', undefined],
    ['foo', undefined],
    [
      "floor plnks 12' x 14', plank: 6 x 48 in, 10 per carton",
      "floor planks 12' x 14', plank: 6 x 48 in, 10 per carton",
    ],
    ['room: 12x14', undefined],
    ['room: 12x14, plank: 7 x 48 in, 10 per carton', 'planks room: 12x14, plank: 7 x 48 in, 10 per carton'],
    ['planks 12x14, plnk: 7 x 48 in, 10 per carton', 'planks room: 12x14, plank: 7 x 48 in, 10 per carton'],
    ['planks 12x14, room: 10x12, plank: 7 x 48 in, 10 per carton', undefined],
    ['tape', undefined],
  ])('of the line “%s” as a whole offers %s', async (line, fix) => {
    const [problem] = problemsOf(await answerTo(line));
    if (!problem) throw new Error(`no problem with ${line}`);
    expect(problem.fix).toBe(fix);
    if (fix !== undefined) expect(problemsOf(await answerTo(fix))).toEqual([]);
  });

  it('of a command without options told says what is missing, and makes nothing up', async () => {
    for (const name of ['planks', 'tape', 'moisture', 'level', 'patch', 'tearout']) {
      const given = await answerTo(name);
      expect(problemsOf(given).length).toBeGreaterThan(0);
      for (const problem of problemsOf(given)) {
        expect(problem.expected).toMatch(/^(?:Still needed: |Which (?:rooms|plank)\? )/);
        expect(problem).not.toHaveProperty('fix');
      }
      expect(given).toHaveProperty('form.told', {});
    }
  });
});
