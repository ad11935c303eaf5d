/** Files that an answer comes with, through the real client: attached, listed, and told of where they cannot be. */

import { extractText, getDocumentProxy } from 'unpdf';
import { afterAll, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { closeFiles } from '../../src/documents/make.ts';
import { FILE_BYTES } from '../../src/platforms/discord/limits.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { slash } from './interactions.ts';
import { field, textOf } from './json-field.ts';
import { type Staged, stage } from './stage.ts';

const fault = (_reference: string, cause: unknown): never => {
  throw cause;
};

async function handed(given: Readonly<Record<string, string>>, staged: Staged = {}) {
  const bot = await stage({
    answer: async function* (request) {
      yield* answer(request, commands, await demoPorts(request.asker, fault));
    },
    ...staged,
  });
  const sent = await bot.ask(slash('project handoff', given));
  await bot.close();
  return { sent, text: textOf(field(sent.body, 'data')), flaws: bot.discord.flaws, faults: bot.faults };
}

afterAll(closeFiles);

describe('files on Discord', () => {
  it('are attached for real: the checklist as a PDF that reads as one', async () => {
    const { sent, flaws, faults } = await handed({ as: 'pdf', of: 'checklist' });
    expect([flaws, faults]).toEqual([[], []]);
    const [[name = '', bytes] = []] = [...sent.files].filter(([one]) => one.endsWith('.pdf'));
    expect(name).toBe('upstairs-flat-checklist.pdf');
    const { text } = await extractText(await getDocumentProxy(new Uint8Array(bytes ?? [])), { mergePages: true });
    expect(text).toMatch(/Checklist[\s\S]*clear the room/);
  });

  it('too large for a message, or not made, are told of by name', async () => {
    const large = async (): Promise<Buffer> => Buffer.alloc(FILE_BYTES + 1);
    const torn = async (): Promise<Buffer> => {
      throw new Error('torn');
    };
    for (const makeFile of [large, torn]) {
      const { sent, text, flaws } = await handed({ as: 'pdf', of: 'checklist' }, { makeFile });
      expect(flaws).toEqual([]);
      expect([...sent.files.keys()].filter((name) => name.endsWith('.pdf'))).toEqual([]);
      expect(text).toMatch(/Checklist[\s\S]{0,200}(?:large|could not be made)/i);
    }
  });
});
