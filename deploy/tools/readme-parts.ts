/** The parts of README.md that the program writes itself: the tables of commands and settings, and transcripts. */

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { commands } from '../../commands/all.ts';
import type { Command } from '../../src/chat/command.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import { fullName, listed } from '../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { render } from '../../src/platforms/terminal/render.ts';
import { openStore } from '../../src/storage/store.ts';
import type { Store } from '../../src/storage/types.ts';
import type { Part } from './generated-part.ts';
import { tableOf } from './markdown-table.ts';
import { settingsTable } from './settings-listed.ts';

const WIDTH = 96;

/** A small upstairs flat: its hall in full, a sum about the bay, and a slip mended step by step. */
const ASKS = [
  `planks room: hall 3'6" x 14', plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft`,
  `tape 15'2 1/2" - 2 x 4'0 3/8"`,
  `planks rooom: bedroom 11' x 12'6"; plank: 7 x 48 in`,
  `planks room: bedroom 11' x 12'6", plank: 7 x 48 in`,
];

/** From nothing to a shopping list. */
const CONVERSATION = [
  'start a project called Upstairs flat',
  `add hall 3'6" x 14'; living 14' x 16'; bedroom 11' x 12'6"; closet 3' x 5'`,
  `project room bath 5' x 8', scope: out`,
  'project pick plank: 7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft',
  'project pick old floor: carpet, built: 1995, baseboard: 8 ft $7.98; 16 ft $15.98',
  'how many boxes do I need?',
  'keep that',
  'project shopping',
];

/** Every part, as it would be written now. Throws when an ask ends in a fault. */
export async function readmeParts(): Promise<readonly Part[]> {
  return [
    { name: 'transcript', text: await transcript(ASKS) },
    { name: 'commands', text: commandTable(listed(commands)) },
    { name: 'conversation', text: await conversation(CONVERSATION) },
    { name: 'settings', text: settingsTable() },
  ];
}

/** A Markdown table: each command, what it answers, and its first example; columns padded as the formatter pads them. */
export function commandTable(listed: readonly Command[]): string {
  return tableOf([
    ['Command', 'What it answers', 'Type for instance'],
    ...listed.map((command) => [`\`${fullName(command)}\``, command.summary, code(command.examples[0].ask)]),
  ]);
}

/** What a terminal shows for some asks, each behind a prompt. Throws with the cause when an ask ends in a fault. */
export async function transcript(asks: readonly string[]): Promise<string> {
  const shown: string[] = [];
  for (const ask of asks) shown.push(`> ${ask}\n\n${render(await lastAnswer(ask), { width: WIDTH, colour: false })}`);
  return `\`\`\`text\n${shown.join('\n\n\n')}\n\`\`\``;
}

/** A conversation about a project: what each message is answered in one line, and the last in full. Throws as `transcript`. */
export async function conversation(asks: readonly string[]): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'floorhand-'));
  const store = openStore({ url: '', folder, fault: thrown });
  try {
    const shown: string[] = [];
    for (const [i, ask] of asks.entries()) {
      const given = await lastAnswer(ask, store);
      const whole = i === asks.length - 1 || !('headline' in given);
      const said = whole ? render(given, { width: WIDTH, colour: false }) : given.headline;
      shown.push(`> ${ask}\n\n${said}`);
    }
    return `\`\`\`text\n${shown.join('\n\n\n')}\n\`\`\``;
  } finally {
    await store.close();
    await rm(folder, { recursive: true });
  }
}

function thrown(cause: unknown): never {
  throw cause;
}

/** The answer to an ask that stands. Throws with the cause when it is a fault. */
export async function lastAnswer(ask: string, store?: Store): Promise<Answer> {
  const fault = (_reference: string, cause: unknown): never => {
    throw new Error(`a fault at “${ask}”`, { cause });
  };
  const asker = { platform: 'terminal', id: 'readme' } as const;
  let last: Answer | undefined;
  const ports = { fault, ...(store && { store }) };
  for await (const given of answer({ asker, preferences: DEFAULT_PREFERENCES, text: ask }, commands, ports))
    last = given;
  if (!last) throw new Error(`no answer to “${ask}”`);
  return last;
}

function code(text: string): string {
  return text.includes('`') ? `\`\` ${text} \`\`` : `\`${text}\``;
}
