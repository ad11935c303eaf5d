/** Noise doses against what NIOSH recommends, and against 29 CFR 1910.95: Table G-16, its formula, and the conversion of Appendix A. */

import { describe, expect, it, test } from 'vitest';
import {
  allowedHours,
  noiseDose,
  recommendedDose,
  recommendedHours,
  timeWeightedLevel,
} from '../../src/prep/safe-work.ts';
import { replyTo } from '../chat/asked.ts';

// NIOSH 98-126, table 1-1 (published): 85 dBA for 8 h, 3 dB more halve the time; 100 dBA for 15 min.
test.each([
  [85, 8],
  [88, 4],
  [91, 2],
  [94, 1],
  [97, 0.5],
  [100, 0.25],
  [82, 16],
])('%i dBA is recommended for %f h at most', (level, hours) => {
  expect(recommendedHours(level)).toBeCloseTo(hours, 12);
  expect(recommendedDose([{ hours, level }])).toBeCloseTo(1, 12);
});

it('a mixed day by NIOSH adds up its shares: 15 min at 100 and 4 h at 85 are one and a half', () => {
  expect(
    recommendedDose([
      { hours: 0.25, level: 100 },
      { hours: 4, level: 85 },
      { hours: 24, level: 79.9 },
    ]),
  ).toBeCloseTo(1.5, 12);
});

// 29 CFR 1910.95, Table G-16 (published): hours a day at a level in dBA.
test.each([
  [90, 8],
  [95, 4],
  [100, 2],
  [105, 1],
  [110, 0.5],
  [115, 0.25],
])('%i dBA is allowed for %f h', (level, hours) => {
  expect(allowedHours(level)).toBeCloseTo(hours, 12);
  expect(noiseDose([{ hours, level }])).toBeCloseTo(1, 12);
});

describe('mixed exposure, Σ C/T', () => {
  // 29 CFR 1910.95(a)(2) footnote: the fractions add up. 2 h of 2 at 100 dBA and 1 h of 16 at 85 dBA: 1 + 1/16.
  it('a saw for 2 h at 100 and a vacuum for 1 h at 85 are 106.25%', () => {
    expect(
      noiseDose([
        { hours: 2, level: 100 },
        { hours: 1, level: 85 },
      ]),
    ).toBeCloseTo(1.0625, 12);
  });

  // 29 CFR 1910.95(c)(1): 85 dBA over 8 h equals a dose of 50%; (d)(2)(i): levels from 80 dB on are counted.
  it('85 dBA for 8 h is half, and below 80 dBA nothing is counted', () => {
    expect(noiseDose([{ hours: 8, level: 85 }])).toBeCloseTo(0.5, 12);
    expect(noiseDose([{ hours: 24, level: 79.9 }])).toBe(0);
    expect(noiseDose([{ hours: 32, level: 80 }])).toBeCloseTo(1, 12);
  });
});

// 29 CFR 1910.95 app. A, Table A-1: dose 10 → 73.4, 50 → 85.0, 100 → 90.0, 200 → 95.0, 400 → 100.0 (from memory).
test.each([
  [0.1, 73.4],
  [0.5, 85],
  [1, 90],
  [2, 95],
  [4, 100],
])('a dose of %f is %f dBA over 8 h', (dose, level) => {
  expect(timeWeightedLevel(dose).toFixed(1)).toBe(level.toFixed(1));
});

describe('asked', () => {
  test.each([
    ['saw 2 h at 100, vacuum 1 h at 85', 1.0625],
    ['saw 1,5 h at 100 dBA; vacuum 30 min @ 85 dB', 0.75 + 0.5 / 16],
    ['saw ½ h at 95 and nailer 1 h 30 min at 100', 0.125 + 0.75],
    ['radio 8 h at 70', 0],
  ])('%s', async (day, dose) => {
    const { data } = await replyTo(`safety task: cutting, day: ${day}`);
    expect((data as { noiseDose?: number }).noiseDose).toBeCloseTo(dose, 12);
  });

  // 1 h at 100 dBA is 400% of what NIOSH recommends and half of what OSHA allows an employer.
  it('tells what is recommended first, then the employer’s limit', async () => {
    const { blocks, data } = await replyTo('safety day: saw 1 h at 100');
    const text = JSON.stringify(blocks);
    expect(text).toMatch(/4 times what NIOSH recommends in a day .*: 400%.*OSHA.*50%/);
    expect(data).toMatchObject({ recommendedDose: expect.closeTo(4, 12), noiseDose: expect.closeTo(0.5, 12) });
  });

  it('tells what is over both, over one and within both', async () => {
    const textOf = async (day: string) => JSON.stringify((await replyTo(`safety day: ${day}`)).blocks);
    expect(await textOf('saw 3 h at 100')).toContain('Over both');
    expect(await textOf('saw 1 h at 100')).toContain('Over what is recommended');
    expect(await textOf('saw 1 h at 90')).toContain('Within both');
    expect(await textOf('radio 8 h at 70')).toContain('Nothing in this day is loud enough');
    expect(await textOf('saw 1 min at 120')).toContain('Above 115 dBA');
  });
});
