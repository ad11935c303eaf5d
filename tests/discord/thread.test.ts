/** A project's thread: opened for its owner, its summary pinned, changed as the project does, and what Discord may forbid. */

import { afterEach, describe, expect, it } from 'vitest';
import { forgetAnswers } from '../../src/chat/saved-replies.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { ASKER, choose, slash, snowflake } from './interactions.ts';
import { controlOf, field, labelsOf, textOf } from './json-field.ts';
import { refusalOf } from './loopback-rest.ts';
import { type Stage, stage } from './stage.ts';

const open: Stage[] = [];
afterEach(async () => {
  for (const bot of open.splice(0)) {
    await bot.close();
    expect(bot.discord.flaws).toEqual([]);
  }
});

/** How long changes are waited for. */
const CHANGES = 2500;

async function started(kept = keptInMemory()): Promise<Stage> {
  const ports = await demoPorts({ platform: 'discord', id: ASKER }, () => {});
  const bot = await stage({ kept, ports, over: (milliseconds) => milliseconds === CHANGES });
  open.push(bot);
  return bot;
}

const show = () => slash('project', { what: 'show' });

/** What its owner reads where they pressed. */
async function opened(bot: Stage): Promise<unknown> {
  const shown = field((await bot.ask(show())).body, 'data');
  const pressed = choose(controlOf(shown, 'Open a thread for it'), { message: snowflake() });
  await bot.ask(pressed);
  return (await bot.after(pressed, 'edit')).body;
}

describe('a project’s thread', () => {
  it('is its owner’s alone, begins with the summary, and pins it', async () => {
    const bot = await started();
    const own = opened(bot);
    const thread = await bot.discord.next(({ kind }) => kind === 'thread');
    expect(thread.path).toBe('/channels/500/threads');
    expect(thread.body).toMatchObject({ name: 'Upstairs flat', type: 12, invitable: true });
    const member = await bot.discord.next(({ kind }) => kind === 'member');
    expect(member.path).toMatch(new RegExp(`/thread-members/${ASKER}$`));
    const summary = await bot.discord.next(({ kind }) => kind === 'post');
    const said = textOf(summary.body);
    for (const part of ['Upstairs flat: 5 rooms', 'living', '0 of 44 stages done', '5 things left to buy'])
      expect(said).toContain(part);
    expect(labelsOf(summary.body)).toEqual([]);
    const channel = summary.path.split('/')[2];
    const pin = await bot.discord.next(({ kind }) => kind === 'pin');
    expect(pin.path).toContain(`/channels/${channel}/`);
    expect(textOf(await own)).toContain(`It has a thread now: <#${channel}>`);
  });

  it('has its summary changed in place when something is done, and not for a sum', async () => {
    const bot = await started();
    await opened(bot);
    const summary = await bot.discord.next(({ kind }) => kind === 'post');
    await bot.ask(slash('tape', { sum: '1 ft' }));
    await bot.ask(slash('progress', { done: 'done clear hall' }));
    const change = await bot.discord.next(({ kind }) => kind === 'change');
    expect(change.path.startsWith(summary.path)).toBe(true);
    expect(textOf(change.body)).toContain('1 of 44 stages done');
    expect(bot.discord.captured.filter(({ kind }) => kind === 'post')).toHaveLength(1);
  });

  it('is left alone once it was deleted', async () => {
    const bot = await started();
    await opened(bot);
    bot.discord.refuse({ matching: ({ kind }) => kind === 'change', ...refusalOf(404, 10003, 'Unknown Channel') });
    await bot.ask(slash('progress', { done: 'done clear hall' }));
    await bot.discord.next(({ kind }) => kind === 'change');
    // The same person's later change finds no thread.
    const later = await started();
    await bot.ask(slash('progress', { done: 'done clear living' }));
    await bot.ask(slash('tape', { sum: '1 ft' }));
    await bot.running.close();
    expect(later.faults).toEqual([]);
    expect(bot.faults).toEqual([]);
    expect(bot.discord.captured.filter(({ kind }) => kind === 'change')).toHaveLength(1);
  });

  it('that Discord does not allow is told of where it was pressed', async () => {
    const bot = await started();
    bot.discord.refuse({ matching: ({ kind }) => kind === 'thread', ...refusalOf(403, 50013, 'Missing Permissions') });
    expect(textOf(await opened(bot))).toContain('didn’t let me open a thread here');
    expect(bot.faults).toEqual([]);
  });

  it('stands without a pin where the bot may not pin', async () => {
    const bot = await started();
    bot.discord.refuse({ matching: ({ kind }) => kind === 'pin', ...refusalOf(403, 50013, 'Missing Permissions') });
    expect(textOf(await opened(bot))).toContain('I may not pin there');
  });

  it('is forgotten with everything else of a person', async () => {
    const kept = keptInMemory();
    const bot = await started(kept);
    await opened(bot);
    const account = `discord:${ASKER}`;
    expect(await kept.get(`threads:${account}`)).toHaveLength(1);
    await forgetAnswers(kept, account);
    expect(await kept.get(`threads:${account}`)).toBeUndefined();
  });
});
