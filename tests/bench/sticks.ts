/** Baseboard lists cut from sticks of several lengths and prices: how many proven cheapest, how fast, and what best-fit decreasing costs more. */

import { bestFit, numbersOf, type StickPlan, type StickTask, stickPlan } from '../../src/trim/sticks.ts';
import { highs } from '../../src/workers/floor-flow.ts';
import { searchSticks } from '../../src/workers/stick-search.ts';
import { average, type Bench, type Metric, metric, percentile, type Size } from './metric.ts';
import { mulberry32 } from './random-rooms.ts';

const SIXTEENTH = 508;
const INCH = 8128;
const KERF = INCH / 8;

/** Lists of 15–60 pieces (2 in – 15 ft 6 in, in sixteenths), stock 8, 12 and 16 ft, 1/2 in off each end. */
export function randomLists(seed: number, count: number): readonly StickTask[] {
  const random = mulberry32(seed);
  return Array.from({ length: count }, () => {
    const pieces = 15 + Math.floor(random() * 46);
    const dear = 0.95 + random() * 0.2;
    return {
      endTrim: INCH / 2,
      stock: [
        { length: 96 * INCH, cents: Math.round(798 * dear) },
        { length: 144 * INCH, cents: Math.round(1248 * (0.95 + random() * 0.1)) },
        { length: 192 * INCH, cents: Math.round(1697 * (0.93 + random() * 0.1)) },
      ],
      pieces: Array.from({ length: pieces }, (_, i) => ({
        id: `p${i}`,
        length: Math.round((2 + random() ** 1.5 * 184) * 16) * SIXTEENTH,
        kerf: KERF,
      })),
    };
  });
}

export const sticks: Bench = {
  name: 'sticks',
  async run(size: Size): Promise<readonly Metric[]> {
    const solver = await highs();
    const lists = randomLists(320, size === 'quick' ? 20 : 320);
    const runs = lists.map((task) => {
      const start = performance.now();
      let last: StickPlan | undefined;
      for (const plan of searchSticks(task, solver)) last = plan;
      const numbers = numbersOf(task);
      return { last, time: performance.now() - start, greedy: stickPlan(task, numbers, bestFit(numbers), 0).cents };
    });
    const proven = runs.filter(({ last }) => last?.proven);
    const open = runs.filter(({ last }) => !last?.proven);
    const gaps = open.map(({ last }) => (last ? (last.cents - last.bound) / last.cents : 1));
    const say = (what: string, value: number, goal?: { atLeast: number } | { below: number }): Metric =>
      metric('sticks', what, value, goal);
    return [
      say('lists', runs.length),
      say('share proven cheapest', proven.length / runs.length, { atLeast: 0.99 }),
      say('share of proven under 200 ms', proven.filter(({ time }) => time < 200).length / proven.length, {
        atLeast: 0.97,
      }),
      say('slowest, ms', Math.max(...runs.map(({ time }) => time)), { below: 1000 }),
      say(
        'time, ms, p50',
        percentile(
          runs.map(({ time }) => time),
          0.5,
        ),
      ),
      say(
        'time, ms, p95',
        percentile(
          runs.map(({ time }) => time),
          0.95,
        ),
      ),
      say('gap of the unproven, largest share', Math.max(0, ...gaps)),
      say(
        'best-fit decreasing costs more, average share',
        average(runs.map(({ last, greedy }) => greedy / (last?.cents ?? greedy) - 1)),
      ),
      say(
        'best-fit decreasing costs more, largest share',
        Math.max(...runs.map(({ last, greedy }) => greedy / (last?.cents ?? greedy) - 1)),
      ),
    ];
  },
};
