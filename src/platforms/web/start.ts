/** The share page as routes of the one server. */

import { answer } from '../../chat/pipeline.ts';
import { NO_PAGE } from '../../text/page-text.ts';
import type { PlatformContext, RunningPlatform } from '../platform.ts';
import { assetAt } from './assets.ts';
import { A_MINUTE } from './limits.ts';
import { allowanceOf, isCounted, LATER, receive } from './receive.ts';
import { notFoundPage } from './send.ts';
import { openedBy } from './share-page.ts';
import { OPEN } from './shell.ts';
import type { WebPorts } from './types.ts';

/** What the server is handed for a path. */
export interface PageRoute {
  readonly method: 'GET' | 'ALL';
  readonly path: string;
  handle(request: Request, from?: string): Promise<Response> | Response;
}

/** The routes: every link below `/s/`, the handbook, and what pages are shown with below `/page/`. */
export function startWeb(ports: WebPorts): readonly PageRoute[] {
  return [
    { method: 'ALL', path: '/s/*', handle: receive(ports) },
    { method: 'GET', path: '/page/*', handle: asset },
    { method: 'GET', path: '/handbook/*', handle: handbook(ports) },
  ];
}

function asset(request: Request): Promise<Response> | Response {
  const found = assetAt(new URL(request.url).pathname);
  if (!found) return notFoundPage(NO_PAGE.missing, 404);
  return new Response(found.bytes, { headers: { ...OPEN, 'Content-Type': found.type } });
}

/** Pages of the handbook: for everybody, as often as one address may come. */
function handbook({ allow, fault }: WebPorts): PageRoute['handle'] {
  return async (request, from) => {
    if (isCounted(from) && !(await allow('address', from))) return notFoundPage(NO_PAGE.often, 429, LATER);
    try {
      const { handbookPage } = await import('./handbook-pages.ts');
      return (await handbookPage(request)) ?? notFoundPage(NO_PAGE.noEntry, 404);
    } catch (cause) {
      fault('page', cause);
      return notFoundPage(NO_PAGE.fault, 503);
    }
  };
}

/** Opens the page beside the chats, or on this machine while the terminal is open. */
export async function openPage({ config, catalog, ports, files }: PlatformContext): Promise<RunningPlatform> {
  const { units, decimal, currency } = config;
  const routes = startWeb({
    ...ports,
    preferences: { units, decimal, currency },
    answer: (request) => answer(request, catalog, ports),
    opened: openedBy(ports),
    // A link is nobody's server.
    allow: allowanceOf(ports.store.allowed({ person: A_MINUTE.permission, server: A_MINUTE.permission })),
    files,
  });
  return { routes, connected: () => true };
}
