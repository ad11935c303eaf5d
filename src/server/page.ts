/** The share page on the one server: beside the chats, and on this machine while the terminal is open. */

import { commands } from '../../commands/index.ts';
import { answer } from '../chat/pipeline.ts';
import type { Ports } from '../chat/ports.ts';
import type { OpenStore } from '../storage/store.ts';
import type { Config } from './config.ts';
import { type Listening, listen, type Route, routed } from './server.ts';

/** What the page is made of; its address, where it has one that people reach it by. */
type PageParts = Ports & { readonly store: OpenStore; address?(): string | undefined };

/** The routes of the page. */
export async function pageRoutes({ units, decimal, currency }: Config, ports: PageParts): Promise<readonly Route[]> {
  const [{ startWeb }, { openedBy }, { allowanceOf }, { A_MINUTE }, { fileMaker }] = await Promise.all([
    import('../platforms/web/start.ts'),
    import('../platforms/web/share-page.ts'),
    import('../platforms/web/receive.ts'),
    import('../platforms/web/limits.ts'),
    import('../documents/make.ts'),
  ]);
  return startWeb({
    ...ports,
    habits: { units, decimal, currency },
    answer: (invocation) => answer(invocation, commands, ports),
    opened: openedBy(ports),
    // A link is nobody's server.
    allow: allowanceOf(ports.store.allowed({ person: A_MINUTE.deed, server: A_MINUTE.deed })),
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
