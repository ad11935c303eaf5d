/** Which test files judge a mutant, and in which order. */

import type { DryFile } from './runs.ts';

/** Tests of whole results, which notice much. */
const WHOLE = ['tests/golden/golden', 'tests/outside/'];

/** What a test file costs beside the time of its tests. */
const START_MS = 100;

/**
 * Test files in the order in which they are likely to notice a mistake soon, going by what they noticed in the same
 * folder so far. What is beyond the time for one mutant is not run.
 */
export class Order {
  readonly #budget: number;
  readonly #ran = new Map<string, number>();
  readonly #noticed = new Map<string, number>();

  /** `budget` is how long the tests of one mutant may take, in milliseconds. */
  constructor(budget: number) {
    this.#budget = budget;
  }

  of(path: string, covering: readonly DryFile[]): readonly string[] {
    const cost = ({ file, ms }: DryFile): number => (START_MS + ms) / this.#likely(path, file);
    let spent = 0;
    return [...covering]
      .sort((a, b) => cost(a) - cost(b))
      .filter(({ ms }, at) => {
        if (at > 0 && spent + ms > this.#budget) return false;
        spent += ms;
        return true;
      })
      .map(({ file }) => file);
  }

  learn(path: string, files: readonly string[], noticed: string | undefined): void {
    const ran = noticed === undefined ? files : files.slice(0, files.indexOf(noticed) + 1);
    for (const file of ran) addOne(this.#ran, keyOf(path, file));
    if (noticed !== undefined) addOne(this.#noticed, keyOf(path, noticed));
  }

  #likely(path: string, file: string): number {
    const folder = path.split('/')[1] ?? '';
    const before = WHOLE.some((place) => file.startsWith(place)) || file.startsWith(`tests/${folder}/`) ? 0.3 : 0.05;
    const key = keyOf(path, file);
    return ((this.#noticed.get(key) ?? 0) + 2 * before) / ((this.#ran.get(key) ?? 0) + 2);
  }
}

function keyOf(path: string, file: string): string {
  return `${path.split('/')[1]} ${file}`;
}

function addOne(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}
