/** Lines as tired or hostile people type them: none is a fault, and every Problem says what is missing. */

import { expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { render } from '../../src/platforms/terminal/render.ts';
import { mutatedLines } from '../bench/mutate.ts';
import { answerTo, problemsOf } from '../chat/asked.ts';

const LINES = 500;
const SEEDS = commands.flatMap(({ examples }) => examples.map(({ ask }) => ask));

it('500 mutated lines are answered, or met with problems that say what to type', async () => {
  const seen = { answered: 0, mended: 0 };
  for (const line of mutatedLines(7, LINES, SEEDS)) {
    const given = await answerTo(line);
    const problems = problemsOf(given);
    for (const { option, expected, fix } of problems)
      expect(
        [option, expected, fix].map((part) => part?.trim()),
        JSON.stringify(line),
      ).not.toContain('');
    if (problems.length > 0) seen.mended++;
    else seen.answered++;
    for (const shown of render(given, { width: 60, colour: false }).split('\n'))
      expect([...shown].length, JSON.stringify(line)).toBeLessThanOrEqual(60);
  }
  expect(seen.answered + seen.mended).toBe(LINES);
  // About one in twenty of the lines is left whole enough, give or take what is drawn.
  expect(seen.answered).toBeGreaterThan(LINES / 30);
  expect(seen.mended).toBeGreaterThan(LINES / 20);
});
