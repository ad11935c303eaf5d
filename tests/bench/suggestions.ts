/** Every line that is suggested, over examples, whole answers and 2,000 mutations of them: answered, nothing made up, nothing left out. */

import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { GOLDEN_ASKS } from '../golden/golden-asks.ts';
import { suggestionFlaws } from '../outside/suggestion-checker.ts';
import { type Bench, metric } from './metric.ts';
import { mutatedLines } from './mutate.ts';

const SEED = 23;

export const suggestions: Bench = {
  name: 'suggestions',
  async run(size) {
    const examples = commands.flatMap(({ examples }) => examples.map(({ ask }) => ask));
    // No store stands behind them here: what is kept is tried in tests/laws/suggestions.test.ts.
    const seeds = [...examples.filter((ask) => !ask.startsWith('project ')), ...Object.values(GOLDEN_ASKS)];
    const lines = [...seeds, ...mutatedLines(SEED, size === 'quick' ? 400 : 2000, seeds)];
    const known = new Map<string, Promise<boolean>>();
    const isAnswered = (line: string): Promise<boolean> => {
      const answered = known.get(line) ?? firstAnswer(line).then((given) => 'headline' in given);
      known.set(line, answered);
      return answered;
    };
    const totals = { suggested: 0, mended: 0, problems: 0, flaws: 0 };
    for (const line of lines) {
      const given = await firstAnswer(line);
      if (!('problems' in given || 'actions' in given)) continue;
      const { lines: suggested, flaws } = await suggestionFlaws(line, given, isAnswered);
      for (const flaw of flaws) process.stderr.write(`${flaw}\n`);
      totals.suggested += suggested;
      totals.flaws += flaws.length;
      if (!('problems' in given)) continue;
      totals.problems += 1;
      if (given.problems.some(({ fix }) => fix !== undefined)) totals.mended += 1;
    }
    return [
      metric('suggestions', 'lines tried', lines.length),
      metric('suggestions', 'suggested lines', totals.suggested),
      metric('suggestions', 'share of problems with a line to type', totals.mended / Math.max(1, totals.problems)),
      metric('suggestions', 'not answered, made up or left out', totals.flaws, { below: 1 }),
    ];
  },
};

async function firstAnswer(text: string): Promise<Answer> {
  const fault = (_: string, cause: unknown): never => {
    throw cause;
  };
  const request = { asker: { platform: 'terminal', id: 'bench' }, preferences: DEFAULT_PREFERENCES, text } as const;
  for await (const first of answer(request, commands, { fault })) return first;
  throw new Error(`no answer to ${JSON.stringify(text)}`);
}
