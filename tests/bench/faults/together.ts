/** Owner and helpers tick at once: in two processes on a server, and many at a time in one process on a data folder. */

import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { type Project, projectCodec } from '../../../src/project/project.ts';
import { openStore } from '../../../src/storage/store.ts';
import type { Store } from '../../../src/storage/types.ts';
import { ownServer, type ServerName } from './own-server.ts';
import type { Outcome } from './tally.ts';
import { type Party, sharedProject, ticked, ticks } from './ticking.ts';

const run = promisify(execFile);

/** The built program, also where this file runs as it is written. */
const PROGRAM = fileURLToPath(
  new URL(
    import.meta.url.endsWith('.ts') ? '../../../dist/tests/bench/faults/ticker.js' : './ticker.js',
    import.meta.url,
  ),
);

/** Lines of each person, and of each how many are under way in each process. */
export interface Terms {
  readonly lines: number;
  readonly lanes: number;
}

const fault = (cause: unknown): never => {
  throw cause;
};

/** Two processes on a server, all three people in both. */
export async function tickOnServer(name: ServerName, terms: Terms): Promise<Outcome> {
  const server = await ownServer(name);
  try {
    return await tickInTwo({ url: server.url, folder: '' }, terms);
  } finally {
    await server.clear();
  }
}

/** Two processes on a data folder that this one has open as the bot. */
export async function tickBesideBot(terms: Terms): Promise<Outcome> {
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-ticks-'));
  try {
    return await tickInTwo({ url: '', folder }, terms);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function tickInTwo(place: { url: string; folder: string }, { lines, lanes }: Terms): Promise<Outcome> {
  const store = openStore({ ...place, fault });
  const parties = await sharedProject(store);
  const numbers = Array.from({ length: lines }, (_, i) => i);
  const half = (odd: number): readonly number[] => numbers.filter((number) => Math.floor(number / 4) % 2 === odd);
  const processes = [0, 1].map((odd) =>
    run(process.execPath, [PROGRAM, JSON.stringify({ ...place, parties, numbers: half(odd), lanes })]),
  );
  const printed = (await Promise.all(processes)).map(({ stdout }) => stdout).join('');
  const found = outcomeOf(await onlyProject(store), parties, savedIn(printed), lines);
  await store.close();
  return found;
}

/** One process on a data folder, everybody at once. */
export async function tickInFolder({ lines, lanes }: Terms): Promise<Outcome> {
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-ticks-'));
  try {
    const store = openStore({ url: '', folder, fault });
    const parties = await sharedProject(store);
    const numbers = Array.from({ length: lines }, (_, i) => i);
    const saved: Record<string, number[]> = {};
    await Promise.all(
      parties.map((party) =>
        ticks(party, numbers, lanes, store, (number, done) => {
          if (done) saved[party.name] = [...(saved[party.name] ?? []), number];
        }),
      ),
    );
    const found = outcomeOf(await onlyProject(store), parties, saved, lines);
    await store.close();
    return found;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function outcomeOf(
  project: Project,
  parties: readonly Party[],
  saved: Readonly<Record<string, readonly number[]>>,
  lines: number,
): Outcome {
  return ticked(project, parties, saved, lines * parties.length);
}

function savedIn(told: string): Readonly<Record<string, readonly number[]>> {
  const saved: Record<string, number[]> = {};
  for (const line of told.split('\n')) {
    const [name = '', number = ''] = line.split(' ');
    if (number !== '') saved[name] = [...(saved[name] ?? []), Number(number)];
  }
  return saved;
}

async function onlyProject(store: Store): Promise<Project> {
  const shelf = store.shelf('project', projectCodec);
  for await (const id of shelf.ids()) {
    const project = await shelf.load(id);
    if (project) return project;
  }
  throw new Error('no project');
}
