/** Drafts of asks, the line a form comes to, and the planks of a comparison. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { formRequest } from '../../src/chat/command-line.ts';
import { commandNamed, keepDraft, keptDraft } from '../../src/chat/form.ts';
import { comparedPlanks } from '../../src/chat/offers.ts';
import { answerTo, replyTo } from './asked.ts';
import { keptInMemory } from './kept-in-memory.ts';

const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;

function command(name: string) {
  const found = commandNamed(name, commands);
  if (!found) throw new Error(`no command ${name}`);
  return found;
}

describe('a draft', () => {
  it('is kept for the one who typed it, a day', async () => {
    const kept = keptInMemory();
    const draft = { by: 'discord:1', form: { command: 'tape', told: { sum: '1 +' } } };
    await keepDraft(kept, 'x', draft);
    expect(await keptDraft(kept, 'x', 'discord:1')).toEqual(draft);
    expect(await keptDraft(kept, 'x', 'discord:2')).toBeUndefined();
    kept.pass(24 * 3600 * 1000 + 1);
    expect(await keptDraft(kept, 'x', 'discord:1')).toBeUndefined();
  });
});

describe('a filled form', () => {
  it('is answered as the typed line is, from its values alone', async () => {
    const optionTexts = new Map([
      ['room', `12' x 14'`],
      ['plank', '6 x 48 in, 10 per carton'],
    ]);
    const { text, given } = formRequest(command('floor planks'), optionTexts);
    expect(text).toBe(`floor planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const { headline } = await replyTo(PLANKS);
    expect(await answerTo('tape 1 ft', { given })).toMatchObject({
      headline,
      form: { command: 'floor planks', told: Object.fromEntries(optionTexts) },
    });
    expect((await replyTo(text)).headline).toBe(headline);
  });

  it('reads a sentence in its first field', async () => {
    const optionTexts = new Map([['room', 'a 12 by 14 ft bedroom with 6 x 48 in planks, 10 per carton']]);
    const { text, given } = formRequest(command('floor planks'), optionTexts);
    expect([given, (await replyTo(text)).headline]).toEqual([undefined, (await replyTo(PLANKS)).headline]);
  });

  it('may be empty', () => expect(formRequest(command('help'), new Map()).text).toBe('help'));
});

describe('a comparison', () => {
  it('names its planks; no other answer does', async () => {
    const ask = `compare room: 12' x 14', planks: oak: 6 x 48 in, 10 per carton, $30 a carton; ash: 7 x 48 in, 8 per carton, $30 a carton`;
    expect(comparedPlanks(await replyTo(ask))).toEqual(['oak', 'ash']);
    expect(comparedPlanks(await replyTo(PLANKS))).toBeUndefined();
  });
});
