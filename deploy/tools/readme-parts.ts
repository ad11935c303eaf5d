/** The parts of pages that the program writes itself: what README.md shows being typed, and the table of settings. */

import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import type { Part } from './generated-part.ts';
import { settingsTable } from './settings-listed.ts';

/** What to type, in five lines: a sentence for each part of the job, and a line by options. */
const TYPED = [
  'how many boxes for 12x14, planks 7x48, 23 sq ft a box?',
  'tear out carpet in a 12x14 room, house from 1995',
  'can I lay plank over old tile?',
  "list room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98",
  `tape 12'6" + 2 x 3'4 1/2"`,
];

export interface Page {
  /** From the root of the repository. */
  readonly path: string;
  readonly parts: readonly Part[];
}

/** Every page with such parts, as they would be written now. Throws when a request has no answer with a headline. */
export async function generatedPages(): Promise<readonly Page[]> {
  return [
    { path: 'README.md', parts: [{ name: 'typed', text: await typed(TYPED) }] },
    { path: 'deploy/README.md', parts: [{ name: 'settings', text: settingsTable() }] },
  ];
}

/** Requests behind a prompt, each with the first line of its answer. Throws where one is not answered. */
export async function typed(requests: readonly string[]): Promise<string> {
  const shown: string[] = [];
  for (const request of requests) {
    const given = await lastAnswer(request);
    if (!('headline' in given)) throw new Error(`“${request}” is not answered`);
    shown.push(`> ${request}\n${given.headline}`);
  }
  return `\`\`\`text\n${shown.join('\n\n')}\n\`\`\``;
}

/** The answer to a request that stands. Throws with the cause when it is a fault. */
export async function lastAnswer(request: string): Promise<Answer> {
  const fault = (_reference: string, cause: unknown): never => {
    throw new Error(`a fault at “${request}”`, { cause });
  };
  const asker = { platform: 'terminal', id: 'readme' } as const;
  let last: Answer | undefined;
  for await (const given of answer({ asker, preferences: DEFAULT_PREFERENCES, text: request }, commands, { fault }))
    last = given;
  if (!last) throw new Error(`no answer to “${request}”`);
  return last;
}
