/** The share page as routes of the one server. */

import { NO_PAGE } from '../../text/page-text.ts';
import { assetAt } from './assets.ts';
import { receive } from './receive.ts';
import { notFoundPage } from './send.ts';
import { OPEN } from './shell.ts';
import type { WebPorts } from './types.ts';

/** What the server is handed for a path. */
export interface PageRoute {
  readonly method: 'GET' | 'ALL';
  readonly path: string;
  handle(request: Request, from?: string): Promise<Response> | Response;
}

/** The routes: every link below `/s/`, and what pages are shown with below `/page/`. */
export function startWeb(ports: WebPorts): readonly PageRoute[] {
  return [
    { method: 'ALL', path: '/s/*', handle: receive(ports) },
    { method: 'GET', path: '/page/*', handle: asset },
  ];
}

function asset(request: Request): Promise<Response> | Response {
  const found = assetAt(new URL(request.url).pathname);
  if (!found) return notFoundPage(NO_PAGE.missing, 404);
  return new Response(found.bytes, { headers: { ...OPEN, 'Content-Type': found.type } });
}
