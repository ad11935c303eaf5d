/** The store: changes against each engine's own put, a large project, and very many small ones in a data folder. */

import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bornWith, emptyContent, type Project, projectCodec } from '../../src/project/project.ts';
import { opener, openStore, type StorePlace } from '../../src/storage/store.ts';
import type { Codec } from '../../src/storage/types.ts';
import { type Bench, type Metric, metric, percentile, type Size } from './metric.ts';
import { type BarePut, bareEmbedded, barePostgres, bareRedis } from './store-bare.ts';

const BENCH = 'store';
const POSTGRES = process.env.FLOORHAND_TEST_POSTGRES ?? 'postgres://postgres@127.0.0.1:5432/test';
const REDIS = process.env.FLOORHAND_TEST_REDIS ?? 'redis://127.0.0.1:6379/9';
const TOGETHER = 64;
const COUNT: Codec<{ readonly sum: number }> = { read: (raw) => raw as { sum: number }, write: (value) => value };

export const store: Bench = {
  name: BENCH,
  async run(size) {
    const folder = mkdtempSync(join(tmpdir(), 'floorhand-bench-'));
    try {
      return [
        ...(await changes('embedded', { url: '', folder }, async () => bareEmbedded(folder), size)),
        ...(await onServers(size)),
        ...(await largeProject(join(folder, 'large'), size)),
        ...(await manyProjects(join(folder, 'many'), size === 'quick' ? 10_000 : 1_000_000)),
      ];
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
};

async function onServers(size: Size): Promise<readonly Metric[]> {
  const space = `bench_${process.pid}`;
  const found: Metric[] = [];
  if (await answers(POSTGRES)) {
    const place = { url: POSTGRES, folder: '', space };
    found.push(...(await changes('Postgres', place, () => barePostgres(POSTGRES, space), size)));
  }
  if (await answers(REDIS)) {
    const place = { url: REDIS, folder: '', space };
    found.push(...(await changes('Redis', place, () => bareRedis(REDIS, space), size)));
  }
  return found;
}

/** A change reads and puts; so one after the other half of the bare puts is the most on a server. Together they share a put. */
async function changes(
  name: string,
  place: StorePlace,
  bare: () => Promise<BarePut>,
  size: Size,
): Promise<readonly Metric[]> {
  const rounds = size === 'quick' ? 200 : 2_000;
  const plain = await bare();
  const opened = openStore({ ...place, fault: rethrow });
  try {
    const counts = opened.shelf('count', COUNT);
    await counts.create('one', { sum: 0 });
    const add = () => counts.change('one', ({ sum }) => ({ put: { sum: sum + 1 }, result: sum }));
    const put = (i: number) => plain.put('one', JSON.stringify({ sum: i }));
    const found: Metric[] = [];
    for (const [how, width] of [
      ['one after another', 1],
      [`${TOGETHER} at a time`, TOGETHER],
    ] as const) {
      const ours = await aSecond(add, rounds, width);
      const theirs = await aSecond(put, rounds, width);
      found.push(
        metric(BENCH, `${name}: changes a second, ${how}`, ours),
        metric(BENCH, `${name}: of its own bare puts, ${how}`, ours / theirs),
      );
    }
    return found;
  } finally {
    await opened.close();
    await plain.close();
  }
}

async function aSecond(work: (i: number) => Promise<unknown>, rounds: number, width: number): Promise<number> {
  await work(0);
  const began = performance.now();
  for (let i = 0; i < rounds; i += width) {
    await Promise.all(Array.from({ length: Math.min(width, rounds - i) }, (_, j) => work(i + j)));
  }
  return rounds / ((performance.now() - began) / 1000);
}

async function largeProject(folder: string, size: Size): Promise<readonly Metric[]> {
  const opened = openStore({ url: '', folder, fault: rethrow });
  try {
    const projects = opened.shelf('project', projectCodec);
    const project = largestProject();
    await projects.create(project.id, project);
    const [loads, puts]: [number[], number[]] = [[], []];
    for (let i = 0; i < (size === 'quick' ? 100 : 500); i++) {
      loads.push(await milliseconds(() => projects.load(project.id)));
      const renamed = { name: `Flat ${i}` };
      puts.push(
        await milliseconds(() => projects.change(project.id, (one) => ({ put: { ...one, ...renamed }, result: 0 }))),
      );
    }
    const plain = bareEmbedded(folder);
    const text = JSON.stringify(projectCodec.write(project));
    const bare: number[] = [];
    for (const _ of puts) bare.push(await milliseconds(() => plain.put('one', text)));
    await plain.close();
    const kilobytes = text.length / 1000;
    return [
      metric(BENCH, 'project of 50 rooms, 500 notes: kilobytes', kilobytes),
      metric(BENCH, 'project of 50 rooms, 500 notes: load, ms p95', percentile(loads, 0.95), { below: 20 }),
      metric(BENCH, 'project of 50 rooms, 500 notes: change, ms p50', percentile(puts, 0.5)),
      metric(BENCH, 'project of 50 rooms, 500 notes: change, ms p95', percentile(puts, 0.95), { below: 20 }),
      metric(BENCH, 'a bare put of the same text, flushed, ms p50', percentile(bare, 0.5)),
      metric(BENCH, 'a bare put of the same text, flushed, ms p95', percentile(bare, 0.95)),
    ];
  } finally {
    await opened.close();
  }
}

async function manyProjects(folder: string, many: number): Promise<readonly Metric[]> {
  const text = (id: string): string => JSON.stringify(projectCodec.write(smallProject(id)));
  const engine = await opener({ url: '', folder })();
  const batch = 5_000;
  const filling = await milliseconds(async () => {
    for (let i = 0; i < many; i += batch) {
      const ids = Array.from({ length: Math.min(batch, many - i) }, (_, j) => idOf(i + j));
      await engine.fill(ids.map((id) => ({ record: { kind: 'project', id, rev: 1, text: text(id) } })));
    }
  });
  await engine.close();
  const opened = openStore({ url: '', folder, fault: rethrow });
  try {
    const opening = await milliseconds(() => opened.ping());
    const projects = opened.shelf('project', projectCodec);
    const reads: number[] = [];
    // A step that shares no factor with the number goes everywhere once.
    for (let i = 0; i < 2_000; i++) reads.push(await milliseconds(() => projects.load(idOf((i * 7_919) % many))));
    const named = `${many.toLocaleString('en')} small projects`;
    return [
      metric(BENCH, `${named}: fill, seconds`, filling / 1000),
      metric(BENCH, `${named}: megabytes`, statSync(join(folder, 'store', 'data.mdb')).size / 1e6),
      metric(BENCH, `${named}: open, ms`, opening),
      metric(BENCH, `${named}: read, ms p95`, percentile(reads, 0.95)),
    ];
  } finally {
    await opened.close();
  }
}

function idOf(number: number): string {
  return `project-${String(number).padStart(12, '0')}`;
}

const OWNER = 'owner-of-the-projects';

function smallProject(id: string): Project {
  const room = { name: 'Hall', text: `3'6" x 14'`, notes: [], inScope: true };
  return bornWith({ ...emptyContent('Upstairs'), rooms: [room], picks: { plank: '7 x 48 in' } }, { id, owner: OWNER });
}

function largestProject(): Project {
  const rooms = Array.from({ length: 50 }, (_, i) => ({
    name: `Room ${i + 1}`,
    text: `12'6" x ${10 + i}' + bay 6' x 2'`,
    notes: ['Doorway to the hall, threshold kept'],
    inScope: true,
  }));
  const note = (i: number) => ({
    text: `Row ${i} laid, three cuts, the last offcut kept for the closet.`,
    at: 1e12 + i,
  });
  const log = Array.from({ length: 500 }, (_, i) => note(i));
  return bornWith({ ...emptyContent('Flat'), rooms, log }, { id: idOf(0), owner: OWNER });
}

async function milliseconds(work: () => Promise<unknown>): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

function rethrow(cause: unknown): never {
  throw cause;
}

function answers(url: string): Promise<boolean> {
  const { hostname, port } = new URL(url);
  return new Promise((resolve) => {
    const socket = connect({ host: hostname, port: Number(port) });
    const end = (found: boolean) => {
      socket.destroy();
      resolve(found);
    };
    socket.once('connect', () => end(true)).once('error', () => end(false));
  });
}
