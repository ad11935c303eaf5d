/** Helpers who tick at once on two processes of one store: each thing is done once, and nothing of anybody is lost. */

import { randomBytes } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openAccess } from '../../src/accounts/project-access.ts';
import { type OpenStore, openStore } from '../../src/storage/store.ts';
import { replyTo } from '../chat/asked.ts';
import { flatContent } from '../project/projects.ts';
import { clearPostgres, POSTGRES, withServer } from '../storage/servers.ts';
import { OWNER, pageOn, type RealPage } from './real.ts';
import { HERE } from './stage.ts';

const TIMES = Array.from({ length: 10 }, (_, i) => i);

await withServer('Postgres', POSTGRES, () => {
  const space = `test_${randomBytes(6).toString('hex')}`;
  const fault = (_: string, cause: unknown): never => {
    throw cause;
  };
  const open = () => {
    const store = openStore({ url: POSTGRES, folder: '', space, fault: (cause) => fault('store', cause) });
    return pageOn({ store, fault });
  };
  let pages: readonly [RealPage<{ store: OpenStore; fault: typeof fault }>, ReturnType<typeof open>];
  let links: readonly [string, string];
  beforeAll(async () => {
    pages = [open(), open()];
    const access = openAccess(OWNER, pages[0].ports);
    await access?.create(flatContent());
    links = [
      await pages[0].link({ what: 'project', role: 'tick', label: 'Sam' }),
      await pages[1].link({ what: 'project', role: 'tick', label: 'Kim' }),
    ];
  });
  afterAll(async () => {
    for (const { ports } of pages) await ports.store.close();
    await clearPostgres(space);
  });

  const ticksOf = async (place: 0 | 1) => {
    const response = await pages[place].visit(`${links[place]}?get=state`);
    return ((await response.json()) as { ticks: Readonly<Record<string, readonly [boolean, string, string]>> }).ticks;
  };
  const send = (place: number, tick: string) => {
    const [page, link] = place % 2 === 0 ? [pages[0], links[0]] : [pages[1], links[1]];
    const body = new URLSearchParams({ do: 'tick', tick, wanted: 'yes' });
    return page.visit(link, { method: 'POST', body, headers: { Origin: HERE, Accept: 'application/json' } });
  };
  const project = async () => {
    const found = await openAccess(OWNER, pages[0].ports)?.inUse();
    if (!found) throw new Error('no project');
    return found;
  };

  it.each(['shopping:', 'checklist:'])('the same tick of %s ten times at once, through both, acts once', async (of) => {
    const [name = ''] = Object.entries(await ticksOf(0)).find(([one, [ticked]]) => one.startsWith(of) && !ticked) ?? [];
    expect(name).not.toBe('');
    await ticksOf(1);
    const before = await project();
    const came = await Promise.all(TIMES.map((i) => send(i, name)));
    expect(came.map(({ status }) => status)).toEqual(TIMES.map(() => 200));
    const after = await project();
    const changes = ({ shopping, history, stages }: typeof after) =>
      [shopping.bought.length + stages.marks.length, history.length] as const;
    expect(changes(after)).toEqual(changes(before).map((count) => count + 1));
    for (const place of [0, 1] as const) expect((await ticksOf(place))[name]?.[0]).toBe(true);
  });

  it('different things by two helpers and the owner at once are all there, each with who did it', async () => {
    const free = Object.entries(await ticksOf(0)).filter(([one, [ticked]]) => one.startsWith('checklist:') && !ticked);
    const names = free.slice(0, 8).map(([name]) => name);
    expect(names).toHaveLength(8);
    const owner = { asker: OWNER, ports: pages[1].ports };
    await Promise.all([
      ...names.map((name, i) => send(i, name)),
      ...TIMES.slice(0, 4).map((i) => replyTo(`project log do: note stain ${i}`, owner)),
    ]);
    const now = await ticksOf(1);
    const by = names.map((name) => /ticked by (\w+)/.exec(now[name]?.[1] ?? '')?.[1]);
    expect(by).toEqual(names.map((_, i) => (i % 2 === 0 ? 'Sam' : 'Kim')));
    expect((await project()).log.map(({ text }) => text).sort()).toEqual(TIMES.slice(0, 4).map((i) => `stain ${i}`));
  });
});
