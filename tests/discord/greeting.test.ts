/** The greeting of somebody new: behind their first answer, once, for them alone, and what its buttons open. */

import { afterEach, describe, expect, it } from 'vitest';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { OTHER, press, slash } from './interactions.ts';
import { controlOf, field, textOf } from './json-field.ts';
import { type Stage, stage } from './stage.ts';

const open: Stage[] = [];
afterEach(async () => {
  for (const bot of open.splice(0)) {
    await bot.close();
    expect([bot.discord.flaws, bot.faults]).toEqual([[], []]);
  }
});

async function started(kept = keptInMemory()): Promise<Stage> {
  const bot = await stage({ kept, strangers: true });
  open.push(bot);
  return bot;
}

const tape = (user?: string) => slash('tape', { sum: '1 ft + 2 in' }, user === undefined ? {} : { user });

describe('somebody new', () => {
  it('is greeted behind their first answer, once, for them alone', async () => {
    const kept = keptInMemory();
    const bot = await started(kept);
    const first = tape();
    expect(textOf(field((await bot.ask(first)).body, 'data'))).toContain(`1' 2"`);
    const greeting = await bot.after(first, 'follow-up');
    expect(textOf(greeting.body)).toMatch(/^### Hi![\s\S]*mention me/);
    expect(Number(field(greeting.body, 'flags')) & 64).toBe(64);
    await bot.ask(tape());
    // Nor by another process.
    const later = await started(kept);
    await later.ask(tape());
    await later.ask(tape(OTHER));
    await later.discord.next(({ kind }) => kind === 'follow-up');
    for (const one of [bot, later])
      expect(one.discord.captured.filter(({ kind }) => kind === 'follow-up')).toHaveLength(1);
  });

  it('who meets an emergency is not greeted', async () => {
    const bot = await started();
    await bot.ask(slash('ask', { question: 'I smell gas in the hall' }));
    const next = tape();
    await bot.ask(next);
    await bot.after(next, 'follow-up');
    expect(bot.discord.captured.filter(({ kind }) => kind === 'follow-up')).toHaveLength(1);
  });

  it('has a form, a project and help behind the buttons', async () => {
    const bot = await started();
    const first = tape();
    await bot.ask(first);
    const { body } = await bot.after(first, 'follow-up');
    const opened = async (label: string) => (await bot.ask(press(controlOf(body, label).id))).body;
    const boxes = await opened('How many boxes?');
    expect([field(boxes, 'type'), JSON.stringify(boxes)]).toEqual([9, expect.stringContaining('"plank"')]);
    expect(field(await opened('Start a project'), 'type')).toBe(9);
    expect(textOf(field(await opened('What can I ask?'), 'data'))).toContain('Ask in your own words');
  });
});
