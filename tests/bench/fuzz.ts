/** Random and mutated lines through the whole pipeline: none throws, none is slow, every Problem says what is missing. */

import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { type Bench, metric } from './metric.ts';
import { mutatedLines } from './mutate.ts';

const SEED = 4;

export const fuzz: Bench = {
  name: 'fuzz',
  async run(size) {
    const count = size === 'quick' ? 2000 : 100_000;
    const seeds = commands.flatMap((command) => command.examples.map(({ ask }) => ask));
    const totals = { faults: 0, answered: 0, dumb: 0, slowest: 0, worst: '' };
    for (const line of mutatedLines(SEED, count, seeds)) {
      const start = performance.now();
      const last = await lastAnswer(line);
      const time = performance.now() - start;
      if (time > totals.slowest) Object.assign(totals, { slowest: time, worst: line });
      if ('reference' in last) totals.faults++;
      else if ('problems' in last)
        totals.dumb += last.problems.filter(({ expected, fix }) =>
          [expected, fix].some((said) => said?.trim() === ''),
        ).length;
      else totals.answered++;
    }
    if (totals.slowest > 1000) process.stderr.write(`slowest line: ${JSON.stringify(totals.worst)}\n`);
    return [
      metric('fuzz', 'lines', count),
      metric('fuzz', 'share answered', totals.answered / count),
      metric('fuzz', 'lines that threw', totals.faults, { below: 1 }),
      metric('fuzz', 'problems that say nothing', totals.dumb, { below: 1 }),
      metric('fuzz', 'slowest line, ms', totals.slowest, { below: 2000 }),
    ];
  },
};

/** The last answer to a line; a fault is written to standard error. */
export async function lastAnswer(text: string): Promise<Answer> {
  const ports = {
    fault: (_: string, cause: unknown) => process.stderr.write(`${JSON.stringify(text)}: ${(cause as Error).stack}\n`),
  };
  let last: Answer | undefined;
  for await (const one of answer(
    { asker: { platform: 'terminal', id: 'bench' }, preferences: DEFAULT_PREFERENCES, text },
    commands,
    ports,
  ))
    last = one;
  if (!last) throw new Error(`no answer to ${JSON.stringify(text)}`);
  return last;
}
