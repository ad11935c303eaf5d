/** Levelling against examples worked by others and against a general numeric library. */

import fc from 'fast-check';
import { add, type Fraction, fraction, type MathType, multiply, number, subtract } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { LevelResult } from '../../commands/prep/level.ts';
import {
  DIP_FILL,
  FLOATING_FLATNESS,
  FLOATING_FLATNESS_METRIC,
  NAILED_FLATNESS,
  NAILED_FLATNESS_METRIC,
} from '../../src/figures/subfloor-figures.ts';
import {
  allowedGap,
  bagsFor,
  gapUnder,
  gridFill,
  isFlat,
  isGridStraight,
  meanFill,
  rampFill,
} from '../../src/prep/flat-and-dry.ts';
import { inches, millimetres, SQUARE_TICKS_PER_SQUARE_METRE, TICKS_PER_MM, ticks } from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';

async function levelled(ask: string): Promise<LevelResult> {
  return (await replyTo(ask)).data as LevelResult;
}

// Worked examples of suppliers (reported): 2.2 kg/m²/mm × 25 mm × 20 m² = 1,100 kg = 22 bags of 50 kg;
// 6 m² × 30 mm × 1.7 = 306 kg = 13 bags of 25 kg.
describe('volume by mean depth', () => {
  it.each([
    [20, 25, 2.2, 50, 500, 1100, 22],
    [6, 30, 1.7, 25, 180, 306, 13],
  ])('%f m² × %f mm at %f kg/m²/mm in bags of %f kg', async (area, depth, rate, bag, litres, kilograms, bags) => {
    const square = BigInt(area) * SQUARE_TICKS_PER_SQUARE_METRE;
    expect(meanFill(square, [millimetres(depth)])).toBe(litres);
    const bought = bagsFor(litres, { litres: bag / rate, kilograms: bag });
    expect(bought.bags).toBe(bags);
    expect(bought.kilograms).toBeCloseTo(kilograms, 9);
    // As deep all over, which is what these examples are; on concrete, for wood does not carry so much.
    const line = `level readings: ${depth} mm over 3 m, area: ${area} m², bag: ${rate} kg/m²/mm, ${bag} kg, floor: concrete`;
    const data = await levelled(`${line}, shape: even`);
    expect(data).toMatchObject({ litres, bags, flat: false, least: { litres, bags } });
    // Of unknown shape the same gap is the most that it may take.
    expect(await levelled(line)).toMatchObject({ litres, bags, least: { litres: litres / 2 } });
    expect(data.kilograms).toBeCloseTo(kilograms, 9);
  });

  // Makers' coverage (reported): a 50 lb bag does 40–50 ft² at 1/8 in, 20–25 at 1/4 in, 10–12 at 1/2 in, as makers differ. By
  // the yield taken here, 0.45 cu ft a bag, it is 43.2, 21.6 and 10.8 ft², to the tenth of a square foot.
  it.each([
    ['1/8', 43.2, [40, 50]],
    ['1/4', 21.6, [20, 25]],
    ['1/2', 10.8, [10, 12]],
  ] as const)('a bag at %s in covers %f ft²', async (depth, covers, [least, most]) => {
    const bags = async (area: number) =>
      (await levelled(`level readings: ${depth} in over 10 ft, area: ${area} sq ft, shape: even, floor: concrete`))
        .bags;
    expect(covers).toBeGreaterThanOrEqual(least);
    expect(covers).toBeLessThanOrEqual(most);
    expect([await bags(covers), await bags(Number((covers + 0.1).toFixed(1)))]).toEqual([1, 2]);
  });
});

// Geometry: a segment of a parabola holds 2/3 of its box, a paraboloid turned round 1/2 of its cylinder (Archimedes, Quadrature
// of the Parabola, and On Conoids and Spheroids; from memory). Summed here in thin slices.
describe('a dip by the shape of it', () => {
  const slices = 2000;
  const at = (i: number): number => (i + 0.5) / slices;
  const parabola =
    Array.from({ length: slices }, (_, i) => 1 - at(i) ** 2).reduce((sum, depth) => sum + depth, 0) / slices;
  const paraboloid =
    Array.from({ length: slices }, (_, i) => (1 - at(i) ** 2) * 2 * at(i)).reduce((sum, ring) => sum + ring, 0) /
    slices;

  it.each([
    ['trough', parabola, 2 / 3],
    ['dish', paraboloid, 1 / 2],
    ['even', 1, 1],
  ] as const)('%s', async (shape, summed, share) => {
    expect(DIP_FILL.value[shape]).toBeCloseTo(summed, 6);
    // 20 m² × 10 mm are 200 L where it is as deep all over.
    const data = await levelled(`level readings: 10 mm over 3 m, area: 20 m², shape: ${shape}, floor: concrete`);
    expect(data.litres).toBeCloseTo(200 * share, 9);
  });

  it('is a range from the dish to the even one where the shape is not told, bought for the fullest', async () => {
    const data = await levelled('level readings: low 1/4 in over 6 ft, area: 4 x 6 ft');
    expect([data.least.litres, data.litres]).toEqual([expect.closeTo(7.08, 2), expect.closeTo(14.16, 2)]);
    expect([data.least.bags, data.bags]).toEqual([1, 2]);
    const { headline, needs } = await replyTo('level readings: low 1/4 in over 6 ft, area: 4 x 6 ft');
    expect(headline).toContain('To fill: 1 to 2 bags (7.1 to 14.2 L).');
    expect(needs?.[0]?.quantity.amount).toBeCloseTo(14.16, 2);
  });
});

// ½ · area · height (reported), exactly: 3 × 4 ft rising 1/2 in is 1/4 ft³.
it('a ramp is half its block', async () => {
  const cubicFoot = 28.316846592;
  expect(rampFill(BigInt(inches(36)) * BigInt(inches(48)), inches(0.5))).toBeCloseTo(cubicFoot / 4, 9);
  const data = await levelled('level readings: 1/2 in over 8 ft, ramp: 3 x 4 ft, 1/2 in');
  expect(data.litres).toBeCloseTo(cubicFoot / 4, 9);
});

/** Adds by mathjs, whose types allow more than fractions. */
const plus = (a: Fraction, b: Fraction): Fraction => fraction(String(add(a as MathType, b as MathType)));
const times = (a: Fraction, b: Fraction): Fraction => fraction(String(multiply(a as MathType, b as MathType)));
const minus = (a: Fraction, b: Fraction): Fraction => fraction(String(subtract(a as MathType, b as MathType)));

/** Simpson's rule both ways, exact for a bilinear surface, in mathjs's fractions: the volume of one cell of 1 × 1. */
function cellVolume(a: number, b: number, c: number, d: number): Fraction {
  const whole = fraction(1);
  const at = (x: Fraction, y: Fraction): Fraction => {
    const low = plus(times(minus(whole, x), fraction(a)), times(x, fraction(b)));
    const high = plus(times(minus(whole, x), fraction(c)), times(x, fraction(d)));
    return plus(times(minus(whole, y), low), times(y, high));
  };
  const nodes = [
    [fraction(0), fraction(1, 6)],
    [fraction(1, 2), fraction(2, 3)],
    [fraction(1), fraction(1, 6)],
  ] as const;
  let sum = fraction(0);
  for (const [x, wx] of nodes) for (const [y, wy] of nodes) sum = plus(sum, times(times(wx, wy), at(x, y)));
  return sum;
}

describe('volume of a grid', () => {
  const grids = fc.tuple(fc.integer({ min: 2, max: 4 }), fc.integer({ min: 2, max: 4 })).chain(([rows, columns]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: columns, maxLength: columns }), {
      minLength: rows,
      maxLength: rows,
    }),
  );

  it('is the integral of the bilinear surface through its points, by mathjs', () => {
    fc.assert(
      fc.property(grids, fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }), (mm, dx, dy) => {
        let cells = fraction(0);
        for (let row = 0; row + 1 < mm.length; row++) {
          for (let i = 0; i + 1 < (mm[0]?.length ?? 0); i++) {
            const [low, high] = [mm[row] ?? [], mm[row + 1] ?? []];
            cells = plus(cells, cellVolume(low[i] ?? 0, low[i + 1] ?? 0, high[i] ?? 0, high[i + 1] ?? 0));
          }
        }
        // dx and dy in decimetres, depth in mm: a decimetre square of a mm is a hundredth of a litre.
        const litres = (number(cells) * dx * dy) / 100;
        const grid = {
          dx: millimetres(dx * 100),
          dy: millimetres(dy * 100),
          rows: mm.map((row) => row.map((depth) => depth * TICKS_PER_MM)),
        };
        expect(gridFill(grid)).toBeCloseTo(litres, 9);
      }),
      { numRuns: 40 },
    );
  });

  // By hand: cells of 4 ft² with means of 3/32 and 1/4 in: 11/32 in × 4 ft² = 11/96 ft³.
  it('of the printed example is 11/96 ft³', async () => {
    const data = await levelled('level readings: grid 2 ft: 0 1/8 1/4; 0 1/4 3/8');
    expect(data.litres).toBeCloseTo((11 / 96) * 28.316846592, 9);
    expect(data).toMatchObject({ bags: 1, flat: false });
  });

  it('in millimetres and in inches is the same', async () => {
    const inch = await levelled('level readings: grid 2 ft: 0 1/8 1/4; 0 1/4 3/8');
    const mm = await levelled('level readings: grid 609.6 mm: 0 3.175 6.35; 0 6.35 9.525');
    expect(mm).toEqual(inch);
  });
});

// ASTM F710 and trade guidance (reported): 3/16 in in 10 ft, or 1/8 in in 6 ft. NWFA magazine, February 2018 (published),
// nailed-down wood: 1/4 in in 10 ft, or 3/16 in in 6 ft.
describe('flat enough', () => {
  it.each([
    ['3/16 in over 10 ft', 'floating', true],
    ['7/32 in over 10 ft', 'floating', false],
    ['1/8 in over 6 ft', 'floating', true],
    ['5/32 in over 6 ft', 'floating', false],
    ['1/4 in over 10 ft', 'floating', false],
    ['1/4 in over 10 ft', 'nail-down', true],
    ['3/16 in over 6 ft', 'nail-down', true],
    ['1/4 in over 6 ft', 'nail-down', false],
    ['3/16 in over 10 ft; 1/4 in over 6 ft', 'floating', false],
    ['high 3/16 in over 6 ft', 'floating', false],
    ['3/16 in over 10 ft', '1/8 in in 10 ft', false],
    ['1/16 in over 10 ft', '1/8 in in 10 ft', true],
  ])('%s by %s: %s', async (readings, rule, flat) => {
    expect((await levelled(`level readings: ${readings}, rule: ${rule}`)).flat).toBe(flat);
  });

  // The same rules as they are told in metric (reported): 5 mm in 3 m, 3 mm in 2 m.
  it.each([
    ['5 mm over 3 m', 'floating', true],
    ['6 mm over 3 m', 'floating', false],
    ['3 mm over 2 m', 'floating', true],
    ['4 mm over 2 m', 'floating', false],
    ['6 mm over 3 m', 'nail-down', true],
    ['5 mm over 2 m', 'nail-down', true],
    ['7 mm over 3 m', 'nail-down', false],
  ])('%s by %s: %s', async (readings, rule, flat) => {
    const ask = `level readings: ${readings}, rule: ${rule}`;
    expect((await levelled(ask)).flat).toBe(flat);
    expect(JSON.stringify((await replyTo(ask)).blocks)).not.toMatch(/3\.048|1\.829|\d'|\d"/);
  });

  it('a metric rule is near the inch one, and round', () => {
    for (const [inch, metric] of [
      [FLOATING_FLATNESS, FLOATING_FLATNESS_METRIC],
      [NAILED_FLATNESS, NAILED_FLATNESS_METRIC],
    ] as const) {
      for (const [i, { gap, over }] of metric.value.entries()) {
        expect(gap % TICKS_PER_MM).toBe(0);
        expect(Math.abs(gap / over / ((inch.value[i]?.gap ?? 0) / (inch.value[i]?.over ?? 1)) - 1)).toBeLessThan(0.16);
      }
    }
  });

  it('a short straightedge is held to its share', () => {
    const [long, short] = FLOATING_FLATNESS.value;
    if (!long || !short) throw new Error('no rule');
    const limits = [long, short] as const;
    expect(allowedGap(inches(36), limits)).toBe(inches(1 / 16));
    expect(isFlat(inches(1 / 16), inches(36), limits)).toBe(true);
    expect(isFlat(inches(1 / 16) + 1, inches(36), limits)).toBe(false);
    expect(NAILED_FLATNESS.value.map(({ gap }) => gap)).toEqual([inches(1 / 4), inches(3 / 16)]);
  });

  // A slope is flat and not level: a straightedge lies on it without a gap (common practice).
  it('a slope below a level line is flat, a bend is not', async () => {
    const slope = 'grid 2 ft: 0 1/2 1 ; 0 1/2 1';
    expect((await levelled(`level readings: ${slope}, line: level`)).flat).toBe(true);
    expect((await levelled(`level readings: ${slope}, floor: concrete`)).flat).toBe(false);
    expect((await levelled('level readings: grid 3 ft: 0 1/4 0; 0 1/4 0, line: level')).flat).toBe(false);
  });

  /** The gap by its definition: each point below the highest chord over it that no point stands above, by brute force. */
  function gapByForce(depths: readonly number[]): number {
    return Math.max(
      0,
      ...depths.map((depth, at) => {
        const lines = depths.flatMap((da, a) =>
          depths.flatMap((db, b) => (a <= at && at <= b && a < b ? [da + ((db - da) * (at - a)) / (b - a)] : [])),
        );
        return depth - Math.min(depth, ...lines);
      }),
    );
  }

  it('the gap under a straightedge is that found by trying every pair of points', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 2, maxLength: 9 }), (depths) => {
        expect(gapUnder(depths)).toBeCloseTo(gapByForce(depths), 6);
      }),
    );
    const [long, short] = FLOATING_FLATNESS.value;
    if (!long || !short) throw new Error('no rule');
    const dip = {
      dx: inches(36),
      dy: inches(36),
      rows: [
        [0, inches(0.13), 0],
        [0, 0, 0],
      ],
    };
    expect(isGridStraight(dip, [long, short])).toBe(false);
    expect(
      isGridStraight(
        {
          ...dip,
          rows: [
            [0, ticks(1000), 0],
            [0, 0, 0],
          ],
        },
        [long, short],
      ),
    ).toBe(true);
  });

  // 3/16 in in 10 ft or 1/8 in in 6 ft (F710, reported). By hand, of the points 2 ft apart: under 10 ft the gap is 0.19 in, over
  // 3/16; under 8 ft at most 0.19 - 0.14/2 = 0.12 in, under 6 ft 0.14 - 0.19/3 = 0.077 in, under 4 ft 0.045 in.
  it('is laid on over the whole of the rule’s span, and on no longer one', () => {
    const depths = [0, 0.14, 0.19, 0.19, 0.14, 0].map((depth) => inches(depth));
    const flat = depths.map(() => ticks(0));
    const [long, short] = FLOATING_FLATNESS.value;
    if (!long || !short) throw new Error('no rule');
    const rules = [long, short] as const;
    const over = (row: readonly number[]) => ({ dx: inches(24), dy: inches(24), rows: [row, row.map(() => 0)] });
    expect([gapUnder(depths), gapUnder(depths.slice(0, 5)), gapUnder(depths.slice(0, 4))]).toEqual([
      inches(0.19),
      inches(0.12),
      expect.closeTo(inches(0.14) - inches(0.19) / 3, 0),
    ]);
    expect(isGridStraight(over(depths), rules)).toBe(false);
    expect(isGridStraight(over(depths.slice(0, 5)), rules)).toBe(true);
    expect(isGridStraight(over(flat), rules)).toBe(true);
    // A bend that only a straightedge of 12 ft would show breaks no rule.
    const wide = [0, 0.075, 0.12, 0.135, 0.12, 0.075, 0].map((depth) => inches(depth * 1.42));
    expect(gapUnder(wide)).toBeGreaterThan(inches(3 / 16));
    expect(isGridStraight(over(wide), rules)).toBe(true);
  });
});
