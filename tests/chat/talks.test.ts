/** Short conversations of people who know no command: what each answer shows first holds what they expected of it. */

import { expect, it } from 'vitest';
import { z } from 'zod';
import { renderBrief } from '../../src/platforms/terminal/render.ts';
import { sentencesOf } from '../language/kept-out.ts';
import { answerTo } from './asked.ts';
import { portsInMemory } from './demo-flat.ts';

const talk = z.object({
  id: z.string(),
  messages: z.array(
    z.object({
      say: z.string(),
      expect: z.string(),
      /** Patterns of what is shown first: one that it matches, and one that it doesn't. */
      brief: z.string(),
      not: z.string().optional(),
    }),
  ),
});

const TALKS = sentencesOf('talks.jsonl').map((line) => talk.parse(line));
/** How many held when they were last mended for; it may only rise. */
const HOLD = 56;

/** The first message whose answer isn't what was expected, with that answer. */
async function missIn({ id, messages }: (typeof TALKS)[number]): Promise<string | undefined> {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  for (const { say, expect: expected, brief, not } of messages) {
    const shown = renderBrief(await answerTo(say, { ports }), { width: 80, colour: false }).trim();
    const holds = new RegExp(brief, 'i').test(shown) && (not === undefined || !new RegExp(not, 'i').test(shown));
    if (!holds) return `${id}: “${say}”, expected: ${expected}\n${shown}`;
  }
  return undefined;
}

it(`${HOLD} of ${TALKS.length} conversations go as a person would expect`, { timeout: 240_000 }, async () => {
  const misses: string[] = [];
  for (const one of TALKS) misses.push(...[await missIn(one)].flatMap((miss) => miss ?? []));
  expect(TALKS.length - misses.length, misses.join('\n\n')).toBeGreaterThanOrEqual(HOLD);
});
