/** The desk: an account's projects, whoever else is there; nothing of a stranger's is seen, changed or counted. */

import { describe, expect, it } from 'vitest';
import { openAccess } from '../../src/accounts/project-access.ts';
import type { Asker } from '../../src/accounts/records.ts';
import { emptyContent } from '../../src/project/project.ts';
import { DAY } from '../../src/project/project-limits.ts';
import { Outage } from '../../src/storage/types.ts';
import { flatContent, shareWith } from '../project/projects.ts';
import { storeInMemory } from '../storage/shelf-in-memory.ts';

const ANN: Asker = { platform: 'discord', id: '1' };
const BOB: Asker = { platform: 'slack', id: '1', workspace: 'T1' };

function desks() {
  const store = storeInMemory();
  const clock = { now: 1_000_000 };
  const ports = { fault: () => undefined, store, now: () => clock.now };
  const at = (asker: Asker) => {
    const access = openAccess(asker, ports);
    if (!access) throw new Error('no desk');
    return access;
  };
  return { store, clock, at };
}

describe('a desk', () => {
  it('is none where nothing is kept', () => {
    expect(openAccess(ANN, {})).toBeUndefined();
  });

  it('of somebody new reads once and holds nothing', async () => {
    const { at, store } = desks();
    expect(await at(ANN).inUse()).toBeUndefined();
    expect(store.reads).toBe(1);
    expect(await at(ANN).mine()).toEqual([]);
    expect(store.records.size).toBe(0);
  });

  it('keeps a project with an id nobody can guess, and finds it at the next ask', async () => {
    const { at } = desks();
    const { id } = await at(ANN).create(flatContent());
    expect(id).toMatch(/^[\w-]{22}$/);
    expect(await at(ANN).inUse()).toMatchObject({ id, name: 'Upstairs flat' });
    expect(await at(ANN).mine()).toHaveLength(1);
  });

  it('changes it, again when another change came first, and both are there', async () => {
    const { at, store } = desks();
    await at(ANN).create(emptyContent('Flat'));
    const add = (text: string) =>
      at(ANN).change('note', ({ log }) => ({
        parts: { log: [...log, { text, at: 1 }] },
        said: `note ${text}`,
        result: text,
      }));
    store.between = () => add('first');
    expect(await add('second')).toMatchObject({ ok: true, result: 'second' });
    const project = await at(ANN).inUse();
    expect(project?.log.map(({ text }) => text)).toEqual(['first', 'second']);
    expect(project?.history.map(({ no, said, via }) => [no, said, via])).toEqual([
      [1, 'note first', 'discord:1'],
      [2, 'note second', 'discord:1'],
    ]);
  });

  it('shows a stranger nothing, whatever id they have, and reads nothing for them', async () => {
    const { at, store } = desks();
    const { id } = await at(ANN).create(flatContent());
    await at(BOB).create(emptyContent('Mine'));
    const before = JSON.stringify([...store.records]);
    expect(await at(BOB).use(id)).toBe(false);
    expect(await at(BOB).use('no-such-project-at-all')).toBe(false);
    const make = () => ({ parts: { name: 'stolen' }, said: 'x', result: true });
    const stranger = at(BOB);
    await stranger.person();
    store.reads = 0;
    expect(await stranger.change('look', make, id)).toEqual({ ok: false, why: 'gone' });
    expect(await stranger.change('look', make, 'no-such-project-at-all')).toEqual({ ok: false, why: 'gone' });
    expect(store.reads).toBe(0);
    expect(JSON.stringify([...store.records])).toBe(before);
    expect((await at(BOB).mine()).map(({ name }) => name)).toEqual(['Mine']);
  });

  it('refuses an account whose record points at somebody else', async () => {
    const { at, store } = desks();
    await at(ANN).create(flatContent());
    store.records.set('account/slack:T1:1', store.records.get('account/discord:1') ?? '');
    expect(await at(BOB).inUse()).toBeUndefined();
    await at(BOB).create(emptyContent('Mine'));
    expect((await at(BOB).mine()).map(({ name }) => name)).toEqual(['Mine']);
    expect((await at(ANN).mine()).map(({ name }) => name)).toEqual(['Upstairs flat']);
  });

  it('lets a helper do what their role allows', async () => {
    const { at, store } = desks();
    const { id } = await at(ANN).create(flatContent());
    const { id: mine } = await at(BOB).create(emptyContent('Mine'));
    const bob = await at(BOB).person();
    const edit = (key: string, change: (record: Record<string, unknown>) => unknown) =>
      store.records.set(key, JSON.stringify(change(JSON.parse(store.records.get(key) ?? ''))));
    edit(`project/${id}`, (project) => ({ ...project, shares: [shareWith(bob?.id ?? '', 'tick')], given: 1 }));
    edit(`person/${bob?.id}`, (person) => ({
      ...person,
      projects: [
        { id: mine, role: 'owner' },
        { id, role: 'tick' },
      ],
    }));
    const rename = () => ({ parts: { name: 'renamed' }, said: 'renamed', result: 1 });
    const note = () => ({ parts: { log: [{ text: 'damp', at: 1 }] }, said: 'noted', result: 1 });
    expect(await at(BOB).change('note', note, id)).toMatchObject({ ok: true });
    expect(await at(BOB).change('note', rename, id)).toEqual({ ok: false, why: 'not-allowed' });
    expect(await at(BOB).change('own', rename, id)).toEqual({ ok: false, why: 'not-allowed' });
    edit(`project/${id}`, (project) => ({ ...project, shares: [] }));
    expect(await at(BOB).change('note', note, id)).toEqual({ ok: false, why: 'gone' });
    expect(await at(BOB).mine()).toHaveLength(1);
  });

  it('drops a deleted project after 30 days, and not before', async () => {
    const { at, clock, store } = desks();
    const { id } = await at(ANN).create(flatContent());
    await at(ANN).change('own', () => ({
      parts: { state: { kind: 'deleted', at: clock.now } },
      said: 'deleted',
      result: 1,
    }));
    expect(await at(ANN).inUse()).toBeUndefined();
    clock.now += 30 * DAY;
    expect(await at(ANN).mine()).toHaveLength(1);
    clock.now += 1;
    expect(await at(ANN).mine()).toEqual([]);
    expect(store.records.has(`project/${id}`)).toBe(false);
    expect((await at(ANN).person())?.projects).toEqual([]);
  });

  it('is not hindered by a damaged project among others, and does not let go of it', async () => {
    const { at, store } = desks();
    const { id } = await at(ANN).create(flatContent());
    await at(ANN).create(emptyContent('Other'));
    store.records.set(`project/${id}`, '{"version":1}');
    expect((await at(ANN).mine()).map(({ name }) => name)).toEqual(['Other']);
    expect((await at(ANN).person())?.projects).toHaveLength(2);
  });

  it('forgets everything at once', async () => {
    const { at, store } = desks();
    await at(ANN).create(flatContent());
    await at(ANN).create(emptyContent('Other'));
    await at(BOB).create(emptyContent('Mine'));
    await at(ANN).forget([]);
    expect([...store.records.keys()].filter((key) => key.includes('discord'))).toEqual([]);
    expect([...store.records.keys()].filter((key) => key.startsWith('project/'))).toHaveLength(1);
    expect(await at(ANN).person()).toBeUndefined();
  });

  it('throws Outage when the store is down, and nothing was changed', async () => {
    const { at, store } = desks();
    await at(ANN).create(flatContent());
    const before = JSON.stringify([...store.records]);
    store.down = true;
    await expect(at(ANN).inUse()).rejects.toThrow(Outage);
    await expect(at(ANN).create(emptyContent('x'))).rejects.toThrow(Outage);
    expect(JSON.stringify([...store.records])).toBe(before);
  });
});
