/** The share page: how fast a page of a whole project comes, beside a bare page of the same size from the same server. */

import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { commands } from '../../commands/all.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import type { Asker } from '../../src/accounts/records.ts';
import { answer } from '../../src/chat/pipeline.ts';
import { openedBy } from '../../src/platforms/web/share-page.ts';
import { startWeb } from '../../src/platforms/web/start.ts';
import { emptyContent } from '../../src/project/project.ts';
import { listen, type Route, routed } from '../../src/server/http.ts';
import { openStore } from '../../src/storage/store.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { type Bench, type Metric, metric, percentile, type Size } from './metric.ts';
import type { Visited, Visits } from './page-clock.ts';

const BENCH = 'page';
const OWNER: Asker = { platform: 'terminal', id: 'bench' };
const PREFERENCES = { units: 'imperial', decimal: '.', currency: 'USD' } as const;
/** The small upstairs flat. */
const FLAT = [`hall 3'6" x 14'`, `living 14' x 16' + bay 3' x 8'`, `bedroom 11' x 12'6"`, 'closet 3 x 5 ft'] as const;

export const page: Bench = {
  name: BENCH,
  async run(size) {
    const folder = mkdtempSync(join(tmpdir(), 'floorhand-bench-'));
    const clock = fork(fileURLToPath(new URL('./page-clock.js', import.meta.url)));
    try {
      return await visits(folder, clock, size);
    } finally {
      clock.disconnect();
      await closeWorkers();
      rmSync(folder, { recursive: true, force: true });
    }
  },
};

async function visits(folder: string, clock: ChildProcess, size: Size): Promise<readonly Metric[]> {
  const fault = (_: string, cause: unknown): never => {
    throw cause;
  };
  const store = openStore({ url: '', folder, fault: (cause) => fault('store', cause) });
  const ports = { fault, store };
  const web = startWeb({
    ...ports,
    preferences: PREFERENCES,
    answer: (request) => answer(request, commands, ports),
    opened: openedBy(ports),
    // How often one may come is no part of how fast it comes.
    allow: async () => true,
  });
  const bare = bareRoute();
  const server = await listen(
    routed([...web, bare.route], (cause) => fault('http', cause)),
    { host: '127.0.0.1', port: 0 },
  );
  try {
    const url = `http://127.0.0.1:${server.port}`;
    const link = `${url}${await shared(ports)}`;
    const run = async (given: Visits): Promise<Visited> => {
      clock.send(given);
      const [visited] = (await once(clock, 'message')) as [Visited];
      return visited;
    };
    const first = await run({ url: link, count: 1, atOnce: 1 });
    bare.bytes = first.bytes;
    const rounds = size === 'quick' ? 3 : 9;
    const count = size === 'quick' ? 100 : 500;
    const ours: Visited[] = [];
    const bares: Visited[] = [];
    // In turn, so that whatever else the machine does falls on both.
    for (let i = 0; i < rounds; i++) {
      ours.push(await run({ url: link, count, atOnce: 8 }));
      bares.push(await run({ url: `${url}/bare`, count, atOnce: 8 }));
    }
    await ticked(ports);
    const after = await run({ url: link, count: 1, atOnce: 1 });
    return figures({ first, after, ours, bares });
  } finally {
    server.cut();
    await server.close();
    await store.close();
  }
}

interface Found {
  readonly first: Visited;
  readonly after: Visited;
  readonly ours: readonly Visited[];
  readonly bares: readonly Visited[];
}

function figures({ first, after, ours, bares }: Found): readonly Metric[] {
  const p95 = (rounds: readonly Visited[]): number =>
    percentile(
      rounds.map(({ times }) => percentile(times, 0.95)),
      0.5,
    );
  const second = (rounds: readonly Visited[]): number =>
    percentile(
      rounds.map(({ times, took }) => (times.length * 1000) / took),
      0.5,
    );
  return [
    metric(BENCH, 'kilobytes of a whole project, packed', first.bytes / 1024),
    metric(BENCH, 'first visit, every floor laid (ms)', first.times[0] ?? 0),
    metric(BENCH, 'first visit after a tick (ms)', after.times[0] ?? 0),
    metric(BENCH, 'visits a second', second(ours)),
    metric(BENCH, 'visits a second over those of a bare page', second(ours) / second(bares), { atLeast: 0.35 }),
    metric(BENCH, 'p95 of a visit, 8 at once (ms)', p95(ours)),
    metric(BENCH, 'p95 over that of a bare page', p95(ours) / p95(bares), { below: 3 }),
  ];
}

/** A page of as many bytes that knows nothing and asks nothing. */
function bareRoute(): { readonly route: Route; bytes: number } {
  const own = {
    bytes: 0,
    route: {
      method: 'GET',
      path: '/bare',
      handle: () =>
        new Response(new Uint8Array(own.bytes), {
          headers: { 'Content-Type': 'text/html', 'Content-Encoding': 'gzip' },
        }),
    } as const,
  };
  return own;
}

type BenchPorts = Parameters<typeof answer>[2];

/** The flat, all of it shared by a link; the link's path. */
async function shared(ports: BenchPorts): Promise<string> {
  const access = openAccess(OWNER, ports);
  if (!access?.sharing) throw new Error('no desk');
  await access.create(emptyContent('Upstairs flat'));
  for (const room of FLAT) await requested(`project room ${room}, floor: carpet`, ports);
  await requested('project pick plank: 7 x 48 in, 10 per carton', ports);
  await requested('project pick list stock: 8 ft; 12 ft', ports);
  const given = await openAccess(OWNER, ports)?.sharing?.give({ what: 'project', role: 'tick', to: 'link' });
  if (!given?.ok || given.token === undefined) throw new Error('not shared');
  return `/s/${given.token}`;
}

function ticked(ports: BenchPorts): Promise<void> {
  return requested('project progress done clear bedroom', ports);
}

async function requested(text: string, ports: BenchPorts): Promise<void> {
  for await (const one of answer({ asker: OWNER, preferences: PREFERENCES, text }, commands, ports)) {
    if (!('headline' in one)) throw new Error(`no reply to “${text}”: ${JSON.stringify(one)}`);
  }
}
