/** Questions and conversations with what is shown of each answer at first, as one text: `npm run golden` rewrites it. */

import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { z } from 'zod';
import type { Answer } from '../../src/chat/pipeline.ts';
import { renderBrief } from '../../src/platforms/terminal/render.ts';
import { answerTo } from '../chat/asked.ts';
import { portsInMemory } from '../chat/demo-flat.ts';

const conversation = z.object({ id: z.string(), messages: z.array(z.string()), expects: z.string() });
const question = z.object({ topic: z.string(), question: z.string(), 'a good answer has': z.string() });

const CONVERSATIONS = [
  ...linesOf('questions').map((line) => {
    const { topic, question: asked, 'a good answer has': expects } = question.parse(line);
    return { id: topic, messages: [asked], expects };
  }),
  ...linesOf('follow-ups').map((line) => conversation.parse(line)),
];

const MOST_BYTES = 200 * 1024;

function linesOf(name: string): readonly unknown[] {
  const text = readFileSync(new URL(`../questions/${name}.jsonl`, import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .map((line): unknown => JSON.parse(line));
}

/** The brief alone; a section that opens with it is only named. */
function briefly(answer: Answer): string {
  const sheet = { width: 100, colour: false };
  if (!('headline' in answer) || answer.opens === undefined) return renderBrief(answer, sheet);
  const { opens, ...rest } = answer;
  return `${renderBrief(rest, sheet)}\n[opens: ${opens}]`;
}

async function transcriptOf({ id, messages, expects }: (typeof CONVERSATIONS)[number]): Promise<string> {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  const parts = [`## ${id}`, `Expected: ${expects}`];
  for (const text of messages) {
    parts.push(`> ${text}`, briefly(await answerTo(text, { ports })));
  }
  return parts.join('\n\n');
}

it('the transcript reads as it did', { timeout: 240_000 }, async () => {
  const texts: string[] = [];
  for (const one of CONVERSATIONS) texts.push(await transcriptOf(one));
  const whole = `${texts.join('\n\n\n')}\n`;
  expect(Buffer.byteLength(whole)).toBeLessThan(MOST_BYTES);
  await expect(whole).toMatchFileSnapshot('transcript.txt');
});
