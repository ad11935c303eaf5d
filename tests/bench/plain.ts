/** Plain sentences of the corpus: how many are read as a person would, how many wrongly for certain, and how fast. */

import { readSentence } from '../../src/language/sentence.ts';
import { CORPUS } from '../language/corpus.ts';
import { preferencesOf, tally } from '../language/judge.ts';
import { type Bench, metric, percentile } from './metric.ts';

const ROUNDS = { quick: 3, full: 20 };

export const plain: Bench = {
  name: 'plain',
  async run(size) {
    const { share, wrong } = tally(CORPUS);
    const times: number[] = [];
    for (let round = 0; round < ROUNDS[size]; round++) {
      for (const message of CORPUS) {
        const start = performance.now();
        readSentence(message.text, preferencesOf(message));
        times.push(performance.now() - start);
      }
    }
    return [
      metric('plain', 'messages', CORPUS.length),
      metric('plain', 'share read as a person would', share, { atLeast: 0.95 }),
      metric('plain', 'wrong readings given as certain', wrong, { below: 1 }),
      metric('plain', 'reading, ms p95', percentile(times, 0.95)),
    ];
  },
};
