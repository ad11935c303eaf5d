/** One person's accounts on Discord, Slack and the terminal led to the same projects by a code, and nobody else's by any guess. */

import { describe, expect, it } from 'vitest';
import { readCode } from '../../src/accounts/linking.ts';
import { type Asker, accountKey } from '../../src/accounts/records.ts';
import { keepAnswer, keptAnswer } from '../../src/chat/saved-replies.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { type AnsweredRequest, answerTo, problemsOf, replyTo } from './asked.ts';
import { portsInMemory } from './demo-flat.ts';

const DISCORD: Asker = { platform: 'discord', id: '1' };
const SLACK: Asker = { platform: 'slack', workspace: 'T1', id: 'U1' };
const TERMINAL: Asker = { platform: 'terminal', id: 'me' };
/** The same id in another workspace is somebody else. */
const ELSEWHERE: Asker = { platform: 'slack', workspace: 'T2', id: 'U1' };

function throwing(_reference: string, cause: unknown): never {
  throw cause;
}

function house() {
  const ports = portsInMemory(throwing);
  const as = (asker: Asker) => {
    const requested: AnsweredRequest = { asker, ports };
    return { say: (line: string) => replyTo(line, requested), answer: (line: string) => answerTo(line, requested) };
  };
  return { ports, as };
}

function codeIn({ blocks }: Reply): string {
  const code = blocks
    .flatMap((block) => (block.kind === 'facts' ? block.facts : []))
    .find(({ label }) => label === 'Code');
  if (!code) throw new Error('no code');
  return code.value;
}

async function names(say: (line: string) => Promise<Reply>): Promise<readonly string[]> {
  const { blocks } = await say('project list');
  return blocks.flatMap((block) => (block.kind === 'table' ? block.rows.map(([name = '']) => name) : []));
}

async function link(from: (line: string) => Promise<Reply>, to: (line: string) => Promise<Reply>): Promise<Reply> {
  return to(`project link ${codeIn(await from('link my accounts'))}, confirm: link`);
}

describe('a code for accounts', () => {
  it('is read as people type it', () => {
    for (const typed of ['7KQ2-M9XA', '7kq2m9xa', ' 7kq2 – m9xa. ', '“7KQ2 M9XA”', '7 k q 2 m 9 x a'])
      expect(readCode(typed)).toBe('7KQ2M9XA');
    expect(readCode('OIL0-olio')).toBe('01100110');
    expect(readCode('Ｏ000-0000')).toBe('00000000');
    for (const typed of ['', '7KQ2', '7KQ2-M9XA7', '7KQ2-M9X!', '7KQ2-M9Xß']) expect(readCode(typed)).toBeUndefined();
  });

  it('leads all three accounts to the projects of all, and each change is seen on all', async () => {
    const { as, ports } = house();
    const [discord, slack, terminal] = [as(DISCORD), as(SLACK), as(TERMINAL)];
    await discord.say('project new Flat, rooms: bedroom 11x12');
    await slack.say('project new Cabin');
    const sure = await slack.say(`project link ${codeIn(await discord.say('project link'))}`);
    expect(sure.headline).toBe(
      'This links this account with one on Discord: 1 project there, 1 here. Nothing is linked yet.',
    );
    expect(sure.audience).toBe('asker');
    expect(await names(slack.say)).toEqual(['Cabin']);
    const [go] = sure.actions;
    expect((await slack.say(go?.ask ?? '')).headline).toBe('Linked with your account on Discord: 2 projects on both.');
    expect((await link(slack.say, terminal.say)).headline).toBe(
      'Linked with your account on Slack: 2 projects on both.',
    );
    for (const { say } of [discord, slack, terminal]) expect(await names(say)).toEqual(['Flat', 'Cabin']);
    await terminal.say('project use Flat');
    await terminal.say('project room hall 3x14');
    expect((await discord.say('project show')).data).toMatchObject({ rooms: [{ name: 'bedroom' }, { name: 'hall' }] });
    expect((await slack.say('project rename Hut')).headline).toContain('Hut');
    expect([...ports.store.records.keys()].filter((key) => key.startsWith('person/'))).toHaveLength(1);
    for (const [key, json] of ports.store.records)
      if (key.startsWith('project/')) expect(JSON.parse(json).owner).toBe(personId(ports));
  });

  it('keeps the settings of the one who made it, tells what gave way, and tells two projects of one name apart', async () => {
    const { as } = house();
    const [discord, slack] = [as(DISCORD), as(SLACK)];
    await discord.say('project new Flat');
    await discord.say('project settings units: metric, mistakes: 5%');
    await slack.say('project new Flat, rooms: den 10x12');
    await slack.say('project settings units: imperial, tax: 8%');
    const linked = await link(discord.say, slack.say);
    expect(linked.assumed.join('\n')).toContain(
      'there were two projects “Flat”: yours from this account is “Flat 2” now',
    );
    expect(linked.assumed.join('\n')).toContain('units is metric now, as on the other account (was imperial here)');
    const { blocks } = await slack.say('project settings');
    expect(JSON.stringify(blocks)).toContain('8%');
    expect(JSON.stringify(blocks)).toContain('5%');
    expect(await names(discord.say)).toEqual(['Flat', 'Flat 2']);
  });

  it('works once and for ten minutes; wrong, used, over and replaced read the same', async () => {
    const { as, ports } = house();
    const [discord, slack, other] = [as(DISCORD), as(SLACK), as(ELSEWHERE)];
    const wrong = problemsOf(await other.answer('project link 0000-0000, confirm: link'));
    expect(wrong).toHaveLength(1);
    const replaced = codeIn(await discord.say('project link'));
    const code = codeIn(await discord.say('project link'));
    expect(problemsOf(await other.answer(`project link ${replaced}, confirm: link`))).toEqual(wrong);
    await slack.say(`project link ${code.toLowerCase().replace('-', ' ')}, confirm: link`);
    expect(problemsOf(await other.answer(`project link ${code}, confirm: link`))).toEqual(wrong);
    const late = codeIn(await discord.say('project link'));
    ports.clock.now += 10 * 60_000;
    expect(problemsOf(await other.answer(`project link ${late}, confirm: link`))).toEqual(wrong);
    expect(await names(other.say)).toEqual([]);
  });

  it('is nowhere in an answer kept for its buttons', async () => {
    const { as, ports } = house();
    const { say } = as(DISCORD);
    await say('project new Flat');
    for (const line of ['project link', 'project share checklist, with: code']) {
      const reply = await say(line);
      await keepAnswer(ports.store.kept, 'an-id', { by: 'discord:1', text: line, reply, shown: false });
      const kept = JSON.stringify(await keptAnswer(ports.store.kept, 'an-id', 'discord:1'));
      expect(kept).toContain('project link …');
      expect(kept).not.toContain(codeIn(reply));
    }
  });

  it('is nowhere in the store as it is typed', async () => {
    const { as, ports } = house();
    const given: string[] = [];
    const { set } = ports.store.kept;
    ports.store.kept.set = (key, value, time) => {
      given.push(`${key} ${JSON.stringify(value)}`);
      return set(key, value, time);
    };
    const code = codeIn(await as(DISCORD).say('project link'));
    expect(given.some((one) => one.startsWith('code:'))).toBe(true);
    const all = [...given, ...ports.store.records.values()].join('\n');
    for (const form of [code, code.replace('-', '')]) expect(all.toUpperCase()).not.toContain(form);
  });

  it('cannot be guessed: after five wrong ones even the right one has to wait, for that account alone', async () => {
    const { as, ports } = house();
    const code = codeIn(await as(DISCORD).say('project link'));
    const stranger = as(ELSEWHERE);
    for (let i = 0; i < 5; i++)
      expect(problemsOf(await stranger.answer(`project link 0000-000${i}`))[0]?.expected).toContain('doesn’t work');
    expect(problemsOf(await stranger.answer(`project link ${code}, confirm: link`))[0]?.expected).toContain('wait 10');
    expect((await as(SLACK).say(`project link ${code}`)).headline).toContain('Nothing is linked yet');
    ports.store.kept.pass(10 * 60_000);
    expect(problemsOf(await stranger.answer('project link 0000-0009'))[0]?.expected).toContain('doesn’t work');
  });

  it('is guessed at by many accounts of one workspace a few hundred times only', async () => {
    const { as } = house();
    const code = codeIn(await as(DISCORD).say('project link'));
    const given: string[] = [];
    for (let i = 0; i < 60; i++) {
      const { answer } = as({ platform: 'slack', workspace: 'T9', id: `U${i}` });
      for (let j = 0; j < 5; j++) given.push(problemsOf(await answer('project link 1111-1111'))[0]?.expected ?? '');
    }
    const looked = given.filter((one) => one.includes('doesn’t work')).length;
    expect(looked).toBeGreaterThan(100);
    expect(looked).toBeLessThanOrEqual(200);
    // Nobody of another workspace is kept from linking by it.
    expect((await as(SLACK).say(`project link ${code}`)).headline).toContain('Nothing is linked yet');
  });

  it('of one’s own account links nothing and says so; a text that is no code costs no guess', async () => {
    const { as } = house();
    const { say, answer } = as(DISCORD);
    const code = codeIn(await say('project link'));
    expect(problemsOf(await answer(`project link ${code}, confirm: link`))[0]?.expected).toContain('already linked');
    for (let i = 0; i < 7; i++) expect(problemsOf(await answer('project link banana'))[0]).not.toHaveProperty('fix');
  });

  it('is refused, and not used up, where both have more projects than one may keep', async () => {
    const { as } = house();
    const [discord, slack] = [as(DISCORD), as(SLACK)];
    for (let i = 0; i < 12; i++) {
      await discord.say(`project new Flat ${String.fromCharCode(65 + i)}`);
      await slack.say(`project new Cabin ${String.fromCharCode(65 + i)}`);
    }
    const code = codeIn(await discord.say('project link'));
    expect(problemsOf(await slack.answer(`project link ${code}, confirm: link`))[0]?.expected).toContain(
      'more than 20',
    );
    for (let i = 0; i < 4; i++) await slack.say(`project delete Cabin ${String.fromCharCode(65 + i)}`);
    expect((await slack.say(`project link ${code}, confirm: link`)).headline).toContain('24 projects');
  }, 20_000);
});

describe('a code for a project', () => {
  it('lets somebody on another platform help, with no account linked, and as far as it was shared', async () => {
    const { as } = house();
    const [discord, slack] = [as(DISCORD), as(SLACK)];
    await discord.say('project new Flat, rooms: bedroom 11x12; hall 3x14');
    const given = await discord.say('project share laying guide of bedroom, with: code, may: measure, name: Sam');
    expect(given.headline).toBe(
      'Here is a code for the laying guide of bedroom of “Flat”. It works once, for 10 minutes.',
    );
    const code = codeIn(given);
    expect((await discord.say('project share')).headline).toContain('Nothing of');
    expect(problemsOf(await discord.answer(`project link ${code}`))[0]?.expected).toContain('your own project');
    const taken = await slack.say(`link ${code.toLowerCase()}`);
    expect(taken.headline).toContain('Flat');
    expect(problemsOf(await as(ELSEWHERE).answer(`project link ${code}`))[0]?.expected).toContain('doesn’t work');
    expect(JSON.stringify((await discord.say('project share')).blocks)).toContain('Sam');
    expect((await discord.say('project link list')).headline).toBe('Only this account opens your projects.');
    expect(problemsOf(await slack.answer('project shopping'))[0]?.expected).toContain('and nothing else');
    expect(problemsOf(await slack.answer('project measure wall 1 of hall is 3 ft'))).toHaveLength(1);
    expect((await slack.say(`project measure wall 1 of bedroom is 11'6"`)).headline).toContain(`is now 11' 6"`);
    const news = JSON.stringify((await discord.say('project show')).blocks);
    expect(news).toContain(`wall 1 of bedroom: 11' is now 11' 6`);
  }, 20_000);

  it('lets nobody in once its maker is gone', async () => {
    const { as } = house();
    const [discord, slack] = [as(DISCORD), as(SLACK)];
    await discord.say('project new Flat, rooms: bedroom 11x12');
    const code = codeIn(await discord.say('project share whole project, with: code'));
    await discord.say('project mydata do: forget, confirm: forget everything');
    expect(problemsOf(await slack.answer(`project link ${code}`))[0]?.expected).toContain('doesn’t work');
    expect(await names(slack.say)).toEqual([]);
  });
});

describe('linked accounts', () => {
  it('are listed, told of on the others, and parted by number or platform; the projects stay', async () => {
    const { as } = house();
    const [discord, slack] = [as(DISCORD), as(SLACK)];
    await discord.say('project new Flat');
    await slack.say('project new Cabin');
    await link(discord.say, slack.say);
    const given = JSON.stringify((await discord.say('project list')).blocks);
    expect(given).toContain('An account on Slack was linked to yours');
    expect(JSON.stringify((await discord.say('project list')).blocks)).not.toContain('was linked to yours');
    expect(JSON.stringify((await slack.say('project list')).blocks)).not.toContain('was linked to yours');
    const list = await discord.say('which accounts are linked?');
    expect(list.headline).toBe('2 accounts open your projects.');
    expect(list.actions.map(({ ask }) => ask)).toEqual(['project link remove 1', 'project link remove 2']);
    expect((await discord.say('unlink slack')).headline).toContain('on Slack is unlinked');
    expect(await names(discord.say)).toEqual(['Flat', 'Cabin']);
    expect(await names(slack.say)).toEqual([]);
    expect(problemsOf(await discord.answer('project link remove this'))[0]?.expected).toBeTruthy();
    await slack.say('project new Shed');
    expect(await names(discord.say)).toEqual(['Flat', 'Cabin']);
  });

  it('have what was shared between them as their own, and the share that is not over where each had one', async () => {
    const { as, ports } = house();
    const clock = { now: Date.UTC(2026, 10, 21, 12) };
    Object.assign(ports, { now: () => clock.now });
    const [owner, slack, terminal] = [as(DISCORD), as(SLACK), as(TERMINAL)];
    await owner.say('project new Flat');
    const code = async (line: string) => codeIn(await owner.say(line));
    await slack.say(`project link ${await code('project share whole project, with: code, for: 1 day')}`);
    await terminal.say(`project link ${await code('project share checklist, with: code')}`);
    clock.now += 2 * 24 * 3600 * 1000;
    await link(slack.say, terminal.say);
    for (const { say } of [slack, terminal])
      expect((await say('project share')).headline).toBe('You now have the checklist of “Flat”, until stopped.');
    await slack.say('project new Flat');
    const linked = await link(owner.say, slack.say);
    expect(linked.assumed).toEqual(['there were two projects “Flat”: yours from this account is “Flat 2” now']);
    expect((await owner.say('project share')).headline).toBe('Nothing of “Flat” is shared.');
  });

  it('are confirmed in words, and a code is taken by itself; a sum of lengths is none', async () => {
    const { as } = house();
    const [discord, slack] = [as(DISCORD), as(SLACK)];
    await discord.say('project new Flat');
    const code = codeIn(await discord.say('link my phone'));
    expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
    expect((await slack.say(`project link ${code.toLowerCase()} confirm link`)).headline).toContain('Linked with');
    expect(problemsOf(await slack.answer('7KQ2-M9XA'))[0]?.expected).toContain('This code doesn’t work');
    expect(JSON.stringify(await slack.answer('12ft-10ft'))).not.toContain('code');
  });

  it('are forgotten together', async () => {
    const { as, ports } = house();
    const [discord, slack] = [as(DISCORD), as(SLACK)];
    await discord.say('project new Flat');
    await slack.say('project new Cabin');
    await link(discord.say, slack.say);
    expect((await discord.say('project mydata')).data).toMatchObject({ accounts: ['discord:1', accountKey(SLACK)] });
    const open = codeIn(await slack.say('project link'));
    await slack.say('project mydata do: forget, confirm: forget everything');
    expect(ports.store.records.size).toBe(0);
    expect(await names(discord.say)).toEqual([]);
    expect(problemsOf(await as(TERMINAL).answer(`project link ${open}, confirm: link`))).toHaveLength(1);
  });
});

function personId({ store }: ReturnType<typeof portsInMemory>): string {
  const key = [...store.records.keys()].find((one) => one.startsWith('person/')) ?? '';
  return key.slice('person/'.length);
}
