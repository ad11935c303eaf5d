/** The bot as it is hosted, with both chats and a store of its own, for faults to be done to. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { StorePlace } from '../../../../src/storage/store.ts';
import { type BotProcess, type Environment, startBot } from '../../load/bot-process.ts';
import { bothChats, type Chats } from '../../load/chats.ts';
import { HANGING } from '../../load/probe.ts';
import type { Known } from '../../load/right.ts';
import { type OwnServer, ownServer } from '../own-server.ts';
import { type SlowProxy, slowProxy } from '../slow-proxy.ts';

export interface Hosted {
  readonly chats: Chats;
  /** The processes; one that was started again stands in the place of the one before. */
  readonly bots: BotProcess[];
  readonly known: Known;
  /** Where the store is read when all is over. */
  readonly place: StorePlace;
  /** While this file is there, worker threads hang. */
  readonly hanging: string;
  /** Starts a process anew, where the one before was. */
  again(at: number): Promise<void>;
  close(): Promise<void>;
}

/** Limits that nobody meets here, and a search that is given up soon. */
const TERMS = {
  FLOORHAND_ASKS_PER_MINUTE: '100000',
  FLOORHAND_SERVER_ASKS_PER_MINUTE: '1000000',
  FLOORHAND_LOG: 'warn',
};

export interface OnServer extends Hosted {
  readonly server: OwnServer;
  readonly proxy: SlowProxy;
}

/** So many processes by HTTP, on Postgres behind a proxy that can slow it. */
export async function onServer(processes: number, known: Known, more: Environment): Promise<OnServer> {
  const server = await ownServer('postgres');
  const proxy = await slowProxy(server.port);
  const url = server.url.replace(String(server.port), String(proxy.port));
  const clear = async (): Promise<void> => {
    await proxy.close();
    await server.clear();
  };
  try {
    const hosted = await host(
      processes,
      false,
      known,
      { ...more, FLOORHAND_STORE: url },
      { url: server.url, folder: '' },
    );
    return { ...hosted, server, proxy, close: () => hosted.close().then(clear) };
  } catch (cause) {
    await clear();
    throw cause;
  }
}

/** One process connected to both chats, its store in a folder. */
export function onFolder(folder: string, known: Known, more: Environment): Promise<Hosted> {
  return host(1, true, known, { ...more, FLOORHAND_DATA: folder }, { url: '', folder });
}

async function host(
  processes: number,
  connected: boolean,
  known: Known,
  more: Environment,
  place: StorePlace,
): Promise<Hosted> {
  const own = mkdtempSync(join(tmpdir(), 'floorhand-faults-'));
  const hanging = join(own, 'hanging');
  const chats = await bothChats({ connected });
  const environment = { ...chats.environment, ...TERMS, ...more, [HANGING]: hanging };
  const bots: BotProcess[] = [];
  const close = async (): Promise<void> => {
    for (const bot of bots) bot.signal('SIGKILL');
    await Promise.all(bots.map(({ ended }) => ended));
    await chats.close();
    rmSync(own, { recursive: true, force: true });
  };
  try {
    // One after another: the first one makes the tables.
    for (let i = 0; i < processes; i++) bots.push(await startBot(environment));
  } catch (cause) {
    await close();
    throw cause;
  }
  chats.reach(bots.map(({ url }) => url));
  return {
    chats,
    bots,
    place,
    hanging,
    known,
    async again(at) {
      const before = bots[at];
      bots[at] = await startBot(environment, before && Number(new URL(before.url).port));
    },
    close,
  };
}
