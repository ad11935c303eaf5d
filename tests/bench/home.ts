/** A home of twelve rooms and 2,000 square feet, joined and ended by its doorways: time to the first answer and to the last, and legality. */

import { commands } from '../../commands/all.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { checkHome } from '../outside/home-checker.ts';
import { type Bench, type Metric, metric, percentile, type Size } from './metric.ts';
import { randomHome } from './random-home.ts';

const ROOMS = 12;
const SQUARE_FEET = 2000;
const PATTERNS = ['stair-step', 'offcut-first', 'thirds'] as const;

export const home: Bench = { name: 'home', run };

async function run(size: Size): Promise<readonly Metric[]> {
  const firsts: number[] = [];
  const lasts: number[] = [];
  let illegal = 0;
  let area = 0;
  const seeds = size === 'quick' ? 2 : 6;
  // A bot that answers has its code loaded: the first ask of all is not what an asker waits for.
  await timed(
    "planks room: hall 3'6\" x 14'; bedroom 11' x 12', plank: 7 x 48 in, 10 per carton, doorways: hall to bedroom 32 in, wall 2",
  );
  for (let seed = 1; seed <= seeds; seed++) {
    const drawn = randomHome(seed, ROOMS, SQUARE_FEET, seed % 3 === 0 ? 1 : 0.5);
    area += drawn.squareFeet;
    const pattern = PATTERNS[seed % PATTERNS.length] ?? 'stair-step';
    const text = `planks room: ${drawn.room}, plank: 7 x 48 in, 10 per carton, doorways: ${drawn.doorways}, pattern: ${pattern}, gap: 3/8 in, kerf: 1/8 in`;
    const { first, last, data } = await timed(text);
    firsts.push(first);
    lasts.push(last);
    illegal += checkFloor(data).length + checkHome(data).length;
  }
  return [
    metric('home', 'square feet of twelve rooms, average', area / seeds),
    metric('home', 'first answer, ms, slowest', Math.max(...firsts), { below: 500 }),
    metric('home', 'first answer, ms, median', percentile(firsts, 0.5)),
    metric('home', 'finished, ms, slowest', Math.max(...lasts), { below: 5000 }),
    metric('home', 'finished, ms, median', percentile(lasts, 0.5)),
    metric('home', 'faults found by the outside checkers', illegal, { below: 1 }),
  ];
}

/** An ask put through the whole pipeline: milliseconds to its first and its last answer, and the result data of the last. */
async function timed(text: string): Promise<{ first: number; last: number; data: unknown }> {
  const asker = { platform: 'terminal', id: 'bench' } as const;
  const fault = (reference: string, cause: unknown): never => {
    throw new Error(`fault ${reference}`, { cause });
  };
  const start = performance.now();
  let first: number | undefined;
  let data: unknown;
  for await (const given of answer({ asker, preferences: DEFAULT_PREFERENCES, text }, commands, { fault })) {
    first ??= performance.now() - start;
    if (!('data' in given)) throw new Error(`no floor: ${JSON.stringify(given)}`);
    data = given.data;
  }
  return { first: first ?? 0, last: performance.now() - start, data: JSON.parse(JSON.stringify(data)) };
}
