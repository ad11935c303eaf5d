/** Requests of the share page: whose link it is, what is shown or done, and the same words for every link that leads nowhere. */

import { createHash } from 'node:crypto';
import { Outage } from '../bot/ports.ts';
import { NO_PAGE } from '../words/page.ts';
import { isCounted } from './allowance.ts';
import { deed } from './deeds.ts';
import { fileFor } from './downloads.ts';
import { cameFrom, hasKey } from './gate.ts';
import { COME_AGAIN, LARGEST_FORM } from './limits.ts';
import { Pages } from './pages.ts';
import type { WebPorts } from './ports.ts';
import { type Asked, answered, file, nowhere, page, standing } from './send.ts';

/** Answers what comes to a link. Never throws: a store that does not answer is told as such, any other fault to the port. */
export function receive(ports: WebPorts): (request: Request, from?: string) => Promise<Response> {
  const pages = new Pages(ports);
  const turn = turns();
  return async (request, from) => {
    try {
      return await handled(request, from, { pages, turn }, ports);
    } catch (cause) {
      ports.fault('page', cause);
      return nowhere(cause instanceof Outage ? NO_PAGE.outage : NO_PAGE.fault, 503);
    }
  };
}

interface Own {
  readonly pages: Pages;
  readonly turn: ReturnType<typeof turns>;
}

async function handled(
  request: Request,
  from: string | undefined,
  { pages, turn }: Own,
  ports: WebPorts,
): Promise<Response> {
  const url = new URL(request.url);
  const token = url.pathname.slice('/s/'.length);
  // A slash behind the link is a slip of whoever copied it.
  if (/^[^/]+\/$/.test(token)) return moved(`${url.pathname.slice(0, -1)}${url.search}`);
  if (!['GET', 'HEAD', 'POST'].includes(request.method))
    return nowhere(NO_PAGE.method, 405, { Allow: 'GET, HEAD, POST' });
  const id = createHash('sha256').update(token).digest('hex');
  if (!(await isLetIn(id, from, request.method === 'POST', ports))) return nowhere(NO_PAGE.often, 429, LATER);
  const posted = request.method === 'POST' ? await formOf(request, id, ports.address?.()) : undefined;
  if (posted === 'elsewhere') return nowhere(NO_PAGE.elsewhere, 403);
  if (posted === 'large') return nowhere(NO_PAGE.large, 413);
  const asker = { platform: 'web', id } as const;
  const opened = await ports.opened(asker);
  if (!opened) return nowhere(NO_PAGE.missing, 404);
  const asked: Asked = {
    guest: { asker, opened },
    url,
    script: request.headers.get('accept') === 'application/json',
    packed: /\bgzip\b/.test(request.headers.get('accept-encoding') ?? ''),
  };
  if (posted) {
    const came = await turn(opened.project, async () => {
      // What stands now, and not what stood before those whose turn it was.
      const now = await ports.opened(asker);
      return now && deed(posted, { asker, opened: now }, pages, ports);
    });
    return came ? answered(came, asked, pages, ports) : nowhere(NO_PAGE.missing, 404);
  }
  const get = url.searchParams.get('get');
  if (get === null) return page(asked, pages, ports);
  const gathered = await pages.gathered(asker, opened);
  if (!('sheets' in gathered)) return page(asked, pages, ports);
  if (get === 'state') return standing(gathered.sheets);
  const made = ports.files && (await fileFor(get, gathered.sheets, ports.files));
  return made ? file(made) : nowhere(NO_PAGE.missing, 404);
}

const LATER = { 'Retry-After': String(COME_AGAIN) };

function moved(to: string): Promise<Response> {
  return nowhere(NO_PAGE.moved, 308, { Location: to });
}

async function isLetIn(id: string, from: string | undefined, posted: boolean, { allow }: WebPorts): Promise<boolean> {
  if (isCounted(from) && !(await allow('address', from))) return false;
  return (await allow('link', id)) && (!posted || (await allow('deed', id)));
}

/** What a form of ours sent: never more than forms send, and only from a page of ours. */
async function formOf(
  request: Request,
  id: string,
  address: string | undefined,
): Promise<URLSearchParams | 'elsewhere' | 'large'> {
  const from = cameFrom(request, address);
  if (from === 'elsewhere') return 'elsewhere';
  const type = request.headers.get('content-type') ?? '';
  if (!/^application\/x-www-form-urlencoded(?:;|$)/i.test(type)) return 'elsewhere';
  if (Number(request.headers.get('content-length') ?? 0) > LARGEST_FORM) return 'large';
  const body = await request.text();
  if (body.length > LARGEST_FORM) return 'large';
  const form = new URLSearchParams(body);
  return from === 'here' || hasKey(form, id) ? form : 'elsewhere';
}

/** One after the other for one project, in this process: what is sent twice at once finds the second time that it is done. */
function turns(): <T>(project: string, work: () => Promise<T>) => Promise<T> {
  const last = new Map<string, Promise<unknown>>();
  return async (project, work) => {
    const mine = (last.get(project) ?? Promise.resolve()).then(work, work);
    const settled = mine.catch(() => undefined);
    last.set(project, settled);
    try {
      return await mine;
    } finally {
      if (last.get(project) === settled) last.delete(project);
    }
  };
}
