/** The pages by which a workspace installs the app, served by the one HTTP server through Slack's own install provider. */

import type { IncomingMessage, ServerResponse } from 'node:http';
import type { InstallProvider } from '@slack/oauth';
import { SCOPES } from './register.ts';

export const INSTALL_PATH = '/slack/install';
export const REDIRECT_PATH = '/slack/oauth_redirect';

/** What is answered at a path of ours. */
export interface Page {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  handle(request: Request): Promise<Response>;
}

/** The page that leads to Slack's own, and the one that Slack sends people back to. */
export function installPages(installer: InstallProvider): readonly Page[] {
  const options = { scopes: SCOPES.map(({ scope }) => scope) };
  return [
    {
      method: 'GET',
      path: INSTALL_PATH,
      handle: (request) => answered(request, (req, res) => installer.handleInstallPath(req, res, undefined, options)),
    },
    {
      method: 'GET',
      path: REDIRECT_PATH,
      handle: (request) => answered(request, (req, res) => installer.handleCallback(req, res)),
    },
  ];
}

/** The provider speaks to Node's own request and response: it reads an address and cookies, and writes a head and a text. */
async function answered(
  request: Request,
  run: (request: IncomingMessage, response: ServerResponse) => Promise<void>,
): Promise<Response> {
  const headers = new Headers();
  let status = 200;
  let text = '';
  const put = (name: string, value: number | string | readonly string[]): void => {
    headers.delete(name);
    for (const one of [value].flat()) headers.append(name, `${one}`);
  };
  const { pathname, search, host } = new URL(request.url);
  const incoming = {
    url: `${pathname}${search}`,
    method: request.method,
    headers: { host, cookie: request.headers.get('cookie') ?? undefined },
  };
  const outgoing = {
    setHeader: put,
    getHeader: (name: string) => headers.get(name) ?? undefined,
    writeHead(code: number, more: Readonly<Record<string, string>> = {}) {
      status = code;
      for (const [name, value] of Object.entries(more)) put(name, value);
    },
    end(body = '') {
      text = body;
    },
  };
  await run(incoming as unknown as IncomingMessage, outgoing as unknown as ServerResponse);
  return new Response(text, { status, headers });
}
