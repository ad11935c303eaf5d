/** Sharing of the demo flat as its owner and those it is shared with go about it. */

import { describe, expect, it } from 'vitest';
import { openAccess } from '../../src/accounts/project-access.ts';
import { type Asker, hashOf } from '../../src/accounts/records.ts';
import { keepAnswer, keptAnswer } from '../../src/chat/saved-replies.ts';
import { DAY } from '../../src/project/project-limits.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { answerTo, problemsOf, replyTo } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { HOSTILE_NAMES } from '../outside/hostile.ts';
import { textOf } from '../project/conversation.ts';

const OWNER: Asker = { platform: 'discord', id: '100000000000000001' };
const SAM: Asker = { platform: 'discord', id: '100000000000000002' };

async function sharing() {
  const ports = await demoPorts(OWNER, (_reference, cause) => {
    throw cause;
  });
  const ask = (line: string, asker = OWNER) => replyTo(line, { asker, ports });
  const wrong = async (line: string, asker = OWNER) => problemsOf(await answerTo(line, { asker, ports }))[0];
  return { ports, ask, wrong };
}

const tokenOf = (reply: Reply): string => /\/s\/([\w-]{22})/.exec(textOf(reply))?.[1] ?? '';
const guest = (reply: Reply): Asker => ({ platform: 'web', id: hashOf(tokenOf(reply)) });

describe('a link', () => {
  it('is for the owner alone, says what it opens, until when and how it is stopped, and lasts two weeks', async () => {
    const { ask, ports } = await sharing();
    const reply = await ask('share my shopping list');
    expect(reply.audience).toBe('asker');
    expect(reply.headline).toBe('A link to the shopping list of “Upstairs flat”, until Sat 5 Dec, 12:00.');
    expect(textOf(reply)).toMatch(/https:\/\/floors\.example\/s\/[\w-]{22}/);
    expect(textOf(reply)).toContain('project share stop: 1');
    const at = guest(reply);
    expect((await ask('project shopping', at)).headline).toMatch(/things? left to buy/);
    ports.clock.now += 14 * DAY;
    expect((await answerTo('project shopping', { asker: at, ports })) as object).toHaveProperty('problems');
  });

  it('is gone once it is stopped, whatever it is called by, and undo brings none back', async () => {
    for (const stop of [
      'stop sharing',
      'project share stop: 1',
      'project share stop: Sam',
      'stop sharing the cut list',
      'project share stop all',
    ]) {
      const { ask, wrong } = await sharing();
      const at = guest(await ask('send Sam a link to the cut list'));
      expect((await ask('project sheets', at)).data).toMatchObject({ kind: 'sheets' });
      expect((await ask(stop)).headline).toBe('Stopped, at once: 1 (Sam: the cut list).');
      expect((await wrong('project sheets', at))?.expected).toMatch(/no longer works/);
      await ask('project undo');
      await ask('project undo redo');
      expect((await wrong('project sheets', at))?.expected).toMatch(/no longer works/);
    }
  });

  it('stays of its room when a helper gives the room another name', async () => {
    const { ask } = await sharing();
    const at = guest(await ask('share the laying guide of the closet with a link'));
    await ask('project share whole project, with: <@100000000000000002>, may: measure');
    await ask('project use Upstairs flat', SAM);
    await ask('project room rename closet to store', SAM);
    expect(textOf(await ask('project share'))).toContain('the laying guide of store');
    expect((await ask('project share', at).catch(String)) as string).toContain('the laying guide of store');
    await ask('project undo', SAM);
    expect(textOf(await ask('project share'))).toContain('the laying guide of closet');
  });

  it('is told from members when it is stopped, and of several none is “the link”', async () => {
    const { ask, wrong } = await sharing();
    await ask('share my shoping list with a link');
    await ask('project share checklist, with: <@100000000000000002>');
    expect((await ask('stop the link')).headline).toBe('Stopped, at once: 1 (link 1: the shopping list).');
    for (const part of ['shopping list', 'cut list']) await ask(`share the ${part} with a link`);
    expect((await wrong('stop the link'))?.expected).toContain('There’s no such share. You have 2 (helper 2');
    expect((await ask('stop share 3')).headline).toBe('Stopped, at once: 3 (link 3: the shopping list).');
    expect((await ask('stop all links')).headline).toBe('Stopped, at once: 4 (link 4: the cut list).');
    expect((await ask('project share')).headline).toBe('1 share of “Upstairs flat”.');
  });

  it('is changed as it is told, and no other one is made by a problem', async () => {
    const { ask, wrong } = await sharing();
    await ask('share my shopping list with a link, call it Sam');
    for (const [line, expected] of [
      ['change share 1 to measure', /nothing to measure/],
      ['project share 1 of hall', /can be of one room/],
      ['project share 1 until yesterday', /already past/],
      [`project share 1, name: ${'a'.repeat(60)}`, /at most \d+ characters/],
    ] as const) {
      const problem = await wrong(line);
      expect(problem?.expected).toMatch(expected);
      // No day is made up, and nothing typed is left out.
      if (problem?.fix !== undefined)
        expect((await ask(problem.fix)).headline).toMatch(/^Changed: Sam has the shopping list/);
      else expect(line).toMatch(/hall|yesterday|aaa/);
    }
    expect((await ask('project share 1, may: look')).headline).toMatch(/^Changed: Sam has the shopping list/);
    expect((await ask('project share')).headline).toBe('1 share of “Upstairs flat”.');
  });

  it('tells who ticked what and when, in the list and at the thing, and the number is never given again', async () => {
    const { ask, ports } = await sharing();
    await ask('share the checklist');
    await ask('project share stop: 1');
    const at = guest(await ask('share the checklist with Sam until Friday'));
    ports.clock.now += 60_000;
    await ask('project progress done clear hall', at);
    ports.clock.now += 120_000;
    expect(textOf(await ask('project share'))).toMatch(/2 \| Sam \| the checklist .*hall.*\(2 minutes ago\)/);
    expect(textOf(await ask('project progress'))).toMatch(/Sam.*clear the room in hall, Sat 21 Nov, 12:01/);
    await ask('project log note key under the mat', at);
    expect(textOf(await ask('project log'))).toContain('key under the mat (Sam)');
    const [mark] = (await openAccess(OWNER, ports)?.inUse())?.stages.marks ?? [];
    expect(mark).toMatchObject({ room: 'hall', by: { helper: '2', name: 'Sam' } });
  });

  it('is nowhere in an answer that is kept for its buttons', async () => {
    const { ask, ports } = await sharing();
    const reply = await ask('project share shopping list');
    await keepAnswer(ports.store.kept, 'an-id', { by: 'discord:1', text: 'x', reply, shown: false });
    const kept = await keptAnswer(ports.store.kept, 'an-id', 'discord:1');
    expect(JSON.stringify(kept)).toContain('https://floors.example/s/…');
    expect(JSON.stringify([kept, await ports.store.kept.get('answer:an-id')])).not.toContain(tokenOf(reply));
  });
});

it('all shares end with a project that is deleted, and stay so when it is back', async () => {
  const { ask, wrong } = await sharing();
  const at = guest(await ask('share the checklist'));
  expect(textOf(await ask('project delete'))).toContain('what was shared of it is stopped');
  expect((await wrong('project sheets', at))?.expected).toMatch(/no longer works/);
  await ask('project restore Upstairs flat');
  expect((await ask('project share')).headline).toBe('Nothing of “Upstairs flat” is shared.');
  expect((await wrong('project sheets', at))?.expected).toMatch(/no longer works/);
});

describe('a member', () => {
  it('finds it on their list, takes it into use, ticks what they may, and leaves', async () => {
    const { ask, wrong } = await sharing();
    const reply = await ask('project share shopping list, with: <@100000000000000002>, name: Sam, for: 3 days');
    expect(reply.headline).toBe('Sam has the shopping list of “Upstairs flat”, until Tue 24 Nov, 12:00.');
    expect(tokenOf(reply)).toBe('');
    await ask('project new Upstairs flat', SAM);
    const list = textOf(await ask('project list', SAM));
    expect(list).toContain('Upstairs flat (shared) |  |  | active; shared with you as Sam: the shopping list');
    expect((await ask('project use Upstairs flat (shared)', SAM)).headline).toBe(
      'You now have the shopping list of “Upstairs flat”, until Tue 24 Nov, 12:00.'.replace('flat”', 'flat (shared)”'),
    );
    expect((await ask('project shopping bought 4 cartons planks', SAM)).headline).toMatch(/^Bought/);
    expect((await wrong('project room bedroom', SAM))?.expected).toBe(
      'You can see the shopping list of “Upstairs flat”, and nothing else.',
    );
    expect((await wrong('project spend', SAM))?.expected).toContain(
      'the shopping list of “Upstairs flat”, and nothing else',
    );
    expect((await ask('project undo', SAM)).headline).toMatch(/^Undone/);
    expect((await ask('project share leave', SAM)).headline).toBe('You left “Upstairs flat”.');
    expect(textOf(await ask('project list', SAM))).not.toContain('shared');
    expect((await ask('project share')).headline).toBe('Nothing of “Upstairs flat” is shared.');
  });

  it('has one share of a project: the last one that was given', async () => {
    const { ask } = await sharing();
    await ask('share my shopping list with <@100000000000000002>');
    const reply = await ask('let <@100000000000000002> see the whole project');
    expect(textOf(reply)).toContain('In place of the shopping list, which they had.');
    expect((await ask('project share')).headline).toBe('1 share of “Upstairs flat”.');
    await ask('project use Upstairs flat', SAM);
    expect((await ask('project show', SAM)).headline).toMatch(/^Upstairs flat: 5 rooms/);
    expect((await ask('project share 1 may: tick')).headline).toMatch(/^Changed: helper 1 has the whole project/);
    expect((await ask('project progress done clear hall', SAM)).headline).toMatch(/hall/);
  });

  it('is in nobody’s data, and in their own as what was shared; both can be forgotten', async () => {
    const { ask, ports } = await sharing();
    await ask('project share whole project, with: <@100000000000000002>');
    const ours = JSON.stringify(await ask('project mydata'));
    expect(ours).toContain('"with":"member"');
    expect(ours).not.toContain(SAM.id);
    const theirs = (await ask('project mydata', SAM)).data as unknown as Record<string, readonly object[]>;
    expect(theirs.projects).toEqual([]);
    expect(theirs.sharedWithMe).toMatchObject([{ name: 'Upstairs flat', shares: [{ what: 'project', role: 'look' }] }]);
    await ask('project mydata do: forget, confirm: forget everything', SAM);
    expect((await ask('project share')).headline).toBe('Nothing of “Upstairs flat” is shared.');
    expect(JSON.stringify([...ports.store.records])).not.toContain(SAM.id);
  });
});

describe('what cannot be shared so', () => {
  it.each([
    ['project share bananas', /What do you want to share/],
    ['share my list with mum', /What do you want to share/],
    ['project share guide of the kitchen', /no room “kitchen”/],
    ['project share tear-out of hall', /Only a laying guide and a cut list/],
    ['project share shopping list, may: measure', /nothing to measure/],
    ['project share shopping list, until: yesterday', /already past|can be read/],
    ['project share shopping list, for: 900 days', /at most 180 days/],
    ['project share shopping list, with: @sam', /isn’t a member here/],
    ['project share shopping list, with: <@U0EXAMPLE>', /isn’t a member here/],
    ['project share shopping list, with: <@100000000000000001>', /That is you/],
    [`project share shopping list, name: ${'a'.repeat(60)}`, /at most 40 characters/],
    ['project share stop: 9', /Nothing is shared|There’s no such share/],
    ['project share 9 may: look', /Nothing is shared|There’s no such share/],
    ['project share leave', /your own/],
  ])('%s', async (line, expected) => {
    const { ask, wrong } = await sharing();
    const problem = await wrong(line);
    expect(problem?.expected).toMatch(expected);
    if (problem?.fix !== undefined) await ask(problem.fix);
  });

  it('is no more than a project holds, and a link has an address to lead to', async () => {
    const { ask, wrong, ports } = await sharing();
    for (let i = 0; i < 30; i++) await ask('project share cut list');
    expect((await wrong('project share cut list'))?.expected).toMatch(/at most 30 shares/);
    const { address: _address, ...without } = ports;
    const [problem] = problemsOf(await answerTo('project share cut list', { asker: OWNER, ports: without }));
    expect(problem?.expected).toMatch(/Links don’t work here/);
  });
});

it('a name that would do something elsewhere is kept as a name, without what cannot be seen', async () => {
  const { ask, ports, wrong } = await sharing();
  const names = HOSTILE_NAMES.filter((one) => one.length <= 40).slice(0, 28);
  for (const name of names)
    await answerTo(`project share cut list, with: link, name: ${name}`, { asker: OWNER, ports });
  const shares = (await openAccess(OWNER, ports)?.inUse())?.shares ?? [];
  const labels = shares.flatMap(({ label }) => label ?? []);
  expect(labels.length).toBeGreaterThan(10);
  // What joins an emoji belongs to what is seen.
  for (const label of labels) expect(label.replaceAll('\u200d', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
  expect(textOf(await ask('project share'))).toContain('<script>owned()</script>');
  expect((await wrong('project share stop: <script>'))?.got).toBe('<script>');
});
