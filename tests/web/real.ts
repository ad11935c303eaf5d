/** The share page of a real project: the whole pipeline on a store in memory, with links of every kind. */

import { commands } from '../../commands/all.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import type { Asker } from '../../src/accounts/records.ts';
import type { Offer } from '../../src/accounts/sharing.ts';
import { answer } from '../../src/chat/pipeline.ts';
import type { Ports } from '../../src/chat/ports.ts';
import { fileMaker } from '../../src/documents/make.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { allowanceOf } from '../../src/platforms/web/receive.ts';
import { openedBy } from '../../src/platforms/web/share-page.ts';
import { startWeb } from '../../src/platforms/web/start.ts';
import { type Route, routed } from '../../src/server/http.ts';
import type { Store } from '../../src/storage/types.ts';
import { type DemoPorts, demoPorts } from '../chat/demo-flat.ts';

export const OWNER: Asker = { platform: 'discord', id: '100200300' };

export interface RealPage<P = DemoPorts> {
  readonly ports: P;
  readonly routes: readonly Route[];
  /** Shares something by a link; its path. */
  link(offer: Omit<Offer, 'to'>): Promise<string>;
  /** Ends all that was shared. */
  stopAll(): Promise<void>;
  visit(path: string, init?: RequestInit): Promise<Response>;
}

/** The demo flat with its page. */
export async function realPage(): Promise<RealPage> {
  const fault = (reference: string, cause: unknown): never => {
    throw new Error(`fault ${reference}`, { cause });
  };
  return pageOn(await demoPorts(OWNER, fault));
}

/** A page on a store that somebody keeps, as one process has it. */
export function pageOn<P extends Ports & { readonly store: Store }>(ports: P): RealPage<P> {
  const routes = startWeb({
    ...ports,
    preferences: DEFAULT_PREFERENCES,
    answer: (request) => answer(request, commands, ports),
    opened: openedBy(ports),
    files: fileMaker,
    allow: allowanceOf(),
  });
  const sharing = () => {
    const own = openAccess(OWNER, ports);
    if (!own?.sharing) throw new Error('no desk to share at');
    return { sharing: own.sharing, inUse: () => own.inUse() };
  };
  const app = routed(routes, (cause) => ports.fault('http', cause));
  return {
    ports,
    routes,
    link: async (offer) => {
      const given = await sharing().sharing.give({ ...offer, to: 'link' });
      if (!given.ok || given.token === undefined) throw new Error('not shared');
      return `/s/${given.token}`;
    },
    stopAll: async () => {
      const { sharing: all, inUse } = sharing();
      await all.stop(((await inUse())?.shares ?? []).map(({ id }) => id));
    },
    visit: async (path, init) => app.fetch(new Request(`http://127.0.0.1:3000${path}`, init)),
  };
}
