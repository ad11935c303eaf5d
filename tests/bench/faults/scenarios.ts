/** What must not lose a change: many writers, a slow store, a cut connection, a killed process, a server that crashes. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkDataFile } from '../../../src/storage/data-file.ts';
import { PATIENCE } from '../../../src/storage/engine.ts';
import { openStore } from '../../../src/storage/store.ts';
import { Outage } from '../../../src/storage/types.ts';
import { type OwnServer, ownServer, type ServerName } from './own-server.ts';
import { slowProxy } from './slow-proxy.ts';
import { mark, type Outcome, outcome, TALLY, type Tally } from './tally.ts';
import { startWriter, type Writer } from './writers.ts';

const quiet = (): void => {};

/** Several processes change one project on a server, each so many times with so many under way. */
export async function manyProcesses(
  name: ServerName,
  terms: { processes: number; changes: number; lanes: number },
): Promise<Outcome> {
  return withServer(name, async (server) => {
    const writers = await startAll({ url: server.url, folder: '' }, terms);
    return summed(writers, terms.changes, await found({ url: server.url, folder: '' }));
  });
}

/** The same through a store that answers late, its connections cut while changes are under way, some after the server did as told. */
export async function slowAndCut(
  name: ServerName,
  terms: { processes: number; changes: number; lanes: number; delay: number; cuts: number },
): Promise<Outcome> {
  return withServer(name, async (server) => {
    const proxy = await slowProxy(server.port);
    try {
      const running = startAll(
        { url: server.url.replace(String(server.port), String(proxy.port)), folder: '' },
        terms,
        () => {
          proxy.delay = terms.delay;
        },
      );
      let done = false;
      const cutting = (async () => {
        for (let cut = 0; cut < terms.cuts && !done; cut++) {
          await wait(terms.delay * 1.5 + 150);
          proxy.deaf = true;
          await wait(100);
          proxy.cut();
          proxy.deaf = false;
        }
        proxy.delay = Math.min(proxy.delay, 200);
      })();
      const writers = await running;
      done = true;
      await cutting;
      return summed(writers, terms.changes, await found({ url: server.url, folder: '' }));
    } finally {
      await proxy.close();
    }
  });
}

/** A server crashes and comes back under load, so many times: what is asked meanwhile is refused, and nothing acknowledged is lost. */
export async function crashes(name: ServerName, terms: { times: number; lanes: number }): Promise<Outcome> {
  return withServer(name, async (server) => {
    const patience = { ...PATIENCE, operation: 2_000, lost: 300 };
    const store = openStore({ url: server.url, folder: '', fault: quiet, patience });
    const tallies = store.shelf('tally', TALLY);
    await tallies.create('one', {});
    const told: Record<string, number[]> = {};
    let [stop, asked, refused, acknowledged] = [false, 0, 0, 0];
    const lane = async (writer: string): Promise<void> => {
      const marks: number[] = [];
      told[writer] = marks;
      for (let number = 0; !stop; number++) {
        asked++;
        try {
          await tallies.change('one', mark(writer, number));
          marks.push(number);
          acknowledged++;
        } catch (cause) {
          if (!(cause instanceof Outage)) throw cause;
          refused++;
        }
      }
    };
    const lanes = Promise.all(Array.from({ length: terms.lanes }, (_, i) => lane(`lane ${i}`)));
    const more = async (count: () => number): Promise<void> => {
      const before = count();
      while (count() < before + terms.lanes) await Promise.race([wait(10), lanes]);
    };
    try {
      for (let time = 0; time < terms.times; time++) {
        await more(() => acknowledged);
        await server.crash();
        await more(() => refused);
        await server.start();
      }
      await more(() => acknowledged);
    } finally {
      stop = true;
    }
    await lanes;
    await store.close();
    return outcome(told, asked, refused, await found({ url: server.url, folder: '' }));
  });
}

/** Many changes at once in one process on a data folder. */
export async function manyEmbedded(changes: number): Promise<Outcome> {
  return withFolder(async (folder) => {
    const store = openStore({ url: '', folder, fault: quiet });
    const tallies = store.shelf('tally', TALLY);
    await tallies.create('one', {});
    const numbers = Array.from({ length: changes }, (_, i) => i);
    await Promise.all(numbers.map((number) => tallies.change('one', mark('only', number))));
    await store.close();
    return outcome({ only: numbers }, changes, 0, await found({ url: '', folder }));
  });
}

/** A process that writes into a data folder is killed at a random moment, so many times. */
export async function killed(times: number, random: () => number): Promise<Outcome> {
  return withFolder(async (folder) => {
    const told: Record<string, readonly number[]> = {};
    let asked = 0;
    for (let time = 0; time < times; time++) {
      const writer = `life ${time}`;
      const one = await startWriter({ url: '', folder, writer, changes: 1_000_000, lanes: 4 });
      await wait(random() * 40);
      one.kill();
      await one.ended;
      told[writer] = one.done;
      asked += one.done.length + 4;
    }
    return outcome(told, asked, 0, await found({ url: '', folder }));
  });
}

/**
 * Several terminals change one project in a data folder that a bot has open too, while another terminal is killed at
 * random moments, so many times. Throws if the data file is damaged afterwards.
 */
export async function besideKilled(
  terms: { processes: number; changes: number; lanes: number; kills: number },
  random: () => number,
): Promise<Outcome> {
  return withFolder(async (folder) => {
    const bot = openStore({ url: '', folder, use: 'bot', fault: quiet });
    await bot.ping();
    const place = { url: '', folder };
    const told: Record<string, readonly number[]> = {};
    let refused = 0;
    const killing = async (): Promise<void> => {
      for (let time = 0; time < terms.kills; time++) {
        const writer = `killed ${time}`;
        const one = await startWriter({ ...place, use: 'terminal', writer, changes: 1_000_000, lanes: terms.lanes });
        await wait(random() * 40);
        one.kill();
        await one.ended;
        told[writer] = one.done;
        refused += one.refused;
      }
    };
    const [writers] = await Promise.all([startAll(place, terms), killing()]);
    for (const one of writers) {
      told[one.writer] = one.done;
      refused += one.refused;
    }
    const there = (await bot.shelf('tally', TALLY).load('one')) ?? {};
    await bot.close();
    const state = await checkDataFile(folder);
    if (state.state !== 'sound') throw new Error(`The data file is damaged: ${JSON.stringify(state)}`);
    const asked = terms.processes * terms.changes + Object.values(told).flat().length;
    return outcome(told, asked, refused, there);
  });
}

async function startAll(
  place: { url: string; folder: string },
  terms: { processes: number; changes: number; lanes: number },
  started: () => void = quiet,
): Promise<readonly Writer[]> {
  const told = Array.from({ length: terms.processes }, (_, i) => ({
    ...terms,
    ...place,
    use: 'terminal' as const,
    writer: `writer ${i}`,
  }));
  const writers = await Promise.all(told.map(startWriter));
  started();
  const codes = await Promise.all(writers.map(({ ended }) => ended));
  if (codes.some((code) => code !== 0))
    throw new Error(`A writer failed: ${writers.map(({ wrong }) => wrong).join('')}`);
  return writers;
}

function summed(writers: readonly Writer[], changes: number, there: Tally): Outcome {
  const told = Object.fromEntries(writers.map(({ writer, done }) => [writer, done]));
  const refused = writers.reduce((sum, writer) => sum + writer.refused, 0);
  return outcome(told, writers.length * changes, refused, there);
}

async function found(place: { url: string; folder: string }): Promise<Tally> {
  const store = openStore({ ...place, fault: quiet });
  try {
    return (await store.shelf('tally', TALLY).load('one')) ?? {};
  } finally {
    await store.close();
  }
}

async function withServer<T>(name: ServerName, work: (server: OwnServer) => Promise<T>): Promise<T> {
  const server = await ownServer(name);
  try {
    return await work(server);
  } finally {
    await server.clear();
  }
}

async function withFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-faults-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function wait(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}
