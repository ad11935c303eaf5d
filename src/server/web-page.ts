/** Serves the share page, beside the chats or on this machine while the terminal is open. */

import { commands } from '../../commands/all.ts';
import { answer } from '../chat/pipeline.ts';
import type { Ports } from '../chat/ports.ts';
import { fileMaker } from '../documents/make.ts';
import { A_MINUTE } from '../platforms/web/limits.ts';
import { allowanceOf } from '../platforms/web/receive.ts';
import { openedBy } from '../platforms/web/share-page.ts';
import { startWeb } from '../platforms/web/start.ts';
import type { OpenStore } from '../storage/store.ts';
import type { Config } from './config.ts';
import { type Listening, listen, type Route, routed } from './http.ts';

/** What the page is made of; its address, where it has one that people reach it by. */
type PageParts = Ports & { readonly store: OpenStore; address?(): string | undefined };

/** The routes of the page. */
export async function pageRoutes({ units, decimal, currency }: Config, ports: PageParts): Promise<readonly Route[]> {
  return startWeb({
    ...ports,
    preferences: { units, decimal, currency },
    answer: (request) => answer(request, commands, ports),
    opened: openedBy(ports),
    // A link is nobody's server.
    allow: allowanceOf(ports.store.allowed({ person: A_MINUTE.permission, server: A_MINUTE.permission })),
    files: fileMaker,
  });
}

/** The page served by itself. Where its port is taken it takes another; undefined where it cannot be served, and why. */
export async function servePage(
  config: Config,
  ports: PageParts,
): Promise<{ readonly server?: Listening; readonly trouble?: unknown }> {
  const app = routed(await pageRoutes(config, ports), (cause) => ports.fault('http', cause));
  try {
    return { server: await listen(app, config.http) };
  } catch (trouble) {
    try {
      return { server: await listen(app, { ...config.http, port: 0 }), trouble };
    } catch {
      return { trouble };
    }
  }
}
