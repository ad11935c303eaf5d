/** Requests of the share page: whose link it is, what is shown or done, and the same words for every link that leads nowhere. */

import { createHash } from 'node:crypto';
import { RateLimiterMemory } from 'rate-limiter-flexible';
import { emergencyIn } from '../../chat/hazard-answers.ts';
import type { Ports } from '../../chat/ports.ts';
import { Outage } from '../../storage/types.ts';
import { NO_PAGE } from '../../text/page-text.ts';
import { A_MINUTE, COME_AGAIN, LARGEST_FORM, MOST_SCREENED } from './limits.ts';
import { answerPageAction } from './page-actions.ts';
import { fileFor } from './render.ts';
import { answered, file, first, notFoundPage, type PageRequest, page, part, standing } from './send.ts';
import { PageCache } from './share-page.ts';
import { cameFrom, hasKey } from './shell.ts';
import type { WebPorts } from './types.ts';

// How often one link is opened and sent by, and anything from one address: counted in memory, and what is
// sent by all processes together.

/** Allowances of this process; what is sent is counted by the store too, where it counts. */
export function allowanceOf(counted?: Ports['allowed']): WebPorts['allow'] {
  const of = (points: number): RateLimiterMemory => new RateLimiterMemory({ points, duration: 60 });
  const each = { link: of(A_MINUTE.link), address: of(A_MINUTE.address), permission: of(A_MINUTE.permission) } as const;
  return async (what, key) => {
    // It rejects with what is left where none is, and never otherwise.
    const left = await each[what].consume(key).catch(() => undefined);
    if (left === undefined || what !== 'permission' || !counted) return left !== undefined;
    return (await counted({ person: `page:${key}` }, 1)).again === 0;
  };
}

/** Whether requests from an address are counted: behind a proxy on this machine or its network stand many people. */
export function isCounted(address: string | undefined): address is string {
  if (address === undefined) return false;
  const plain = address.replace(/^::ffff:/i, '');
  return !/^(?:127\.|10\.|192\.168\.|172\.(?:1[6-9]|2\d|3[01])\.|169\.254\.|::1$|f[cd][0-9a-f]{2}:|fe80:)/i.test(plain);
}

/** Answers what comes to a link. Never throws: a store that does not answer is told as such, any other fault to the port. */
export function receive(ports: WebPorts): (request: Request, from?: string) => Promise<Response> {
  const pages = new PageCache(ports);
  const turn = turns();
  return async (request, from) => {
    try {
      return await handled(request, from, { pages, turn }, ports);
    } catch (cause) {
      ports.fault('page', cause);
      return notFoundPage(cause instanceof Outage ? NO_PAGE.outage : NO_PAGE.fault, 503);
    }
  };
}

interface Own {
  readonly pages: PageCache;
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
    return notFoundPage(NO_PAGE.method, 405, { Allow: 'GET, HEAD, POST' });
  const id = createHash('sha256').update(token).digest('hex');
  const form = request.method === 'POST' ? await formIn(request) : undefined;
  const urgent = form && emergencyIn(typedIn(form));
  if (form && urgent) {
    void given(typedIn(form), id, from, ports);
    return first(urgent, request.headers.get('accept') === 'application/json');
  }
  if (!(await isLetIn(id, from, request.method === 'POST', ports))) return notFoundPage(NO_PAGE.often, 429, LATER);
  const posted = form && formOf(request, form, id, ports.address?.());
  if (posted === 'elsewhere') return notFoundPage(NO_PAGE.elsewhere, 403);
  if (posted === 'large') return notFoundPage(NO_PAGE.large, 413);
  const asker = { platform: 'web', id } as const;
  const opened = await ports.opened(asker);
  if (!opened) return notFoundPage(NO_PAGE.missing, 404);
  const requested: PageRequest = {
    guest: { asker, opened },
    url,
    script: request.headers.get('accept') === 'application/json',
    packed: /\bgzip\b/.test(request.headers.get('accept-encoding') ?? ''),
  };
  if (posted) {
    const came = await turn(opened.project, async () => {
      // What stands now, and not what stood before those whose turn it was.
      const now = await ports.opened(asker);
      return now && answerPageAction(posted, { asker, opened: now }, pages, ports);
    });
    return came ? answered(came, requested, pages, ports) : notFoundPage(NO_PAGE.missing, 404);
  }
  const get = url.searchParams.get('get');
  const parted = url.searchParams.has('open') || get?.startsWith('picture-');
  if (get === null && !parted) return page(requested, pages, ports);
  const gathered = await pages.gathered(asker, opened);
  if (!('sheets' in gathered)) return page(requested, pages, ports);
  if (parted) return (await part(requested, gathered.sheets, pages)) ?? notFoundPage(NO_PAGE.missing, 404);
  if (get === null) return page(requested, pages, ports);
  if (get === 'state') return standing(gathered.sheets);
  const made = ports.files && (await fileFor(get, gathered.sheets, ports.files));
  return made ? file(made) : notFoundPage(NO_PAGE.missing, 404);
}

/** What somebody who came too often is sent. */
export const LATER = { 'Retry-After': String(COME_AGAIN) };

function moved(to: string): Promise<Response> {
  return notFoundPage(NO_PAGE.moved, 308, { Location: to });
}

async function isLetIn(id: string, from: string | undefined, posted: boolean, { allow }: WebPorts): Promise<boolean> {
  if (isCounted(from) && !(await allow('address', from))) return false;
  return (await allow('link', id)) && (!posted || (await allow('permission', id)));
}

/** What is sent, as far as it is looked at for an emergency. */
interface Sent {
  readonly fields: URLSearchParams;
  readonly large: boolean;
  readonly form: boolean;
}

/** The fields of what is sent: no more of it is read than is screened. */
async function formIn(request: Request): Promise<Sent> {
  const type = request.headers.get('content-type') ?? '';
  if (!/^application\/x-www-form-urlencoded(?:;|$)/i.test(type))
    return { fields: new URLSearchParams(), large: false, form: false };
  const given = Number(request.headers.get('content-length') ?? 0);
  const { text, more } = await beginning(request, MOST_SCREENED);
  return {
    fields: new URLSearchParams(text),
    large: more || text.length > LARGEST_FORM || given > LARGEST_FORM,
    form: true,
  };
}

/** What somebody typed into it. */
function typedIn({ fields }: Sent): string {
  return fields.getAll('text').join('\n');
}

/** A body’s first bytes as text, and whether there is more of it. */
async function beginning({ body }: Request, most: number): Promise<{ readonly text: string; readonly more: boolean }> {
  if (!body) return { text: '', more: false };
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = body.getReader();
  for (;;) {
    const { value, done } = await reader.read();
    if (done) return { text: Buffer.concat(parts).toString(), more: false };
    parts.push(value);
    length += value.length;
    if (length > most) break;
  }
  await reader.cancel();
  return { text: Buffer.concat(parts).subarray(0, most).toString(), more: true };
}

/** What a form of ours sent: never more than forms send, and only from a page of ours. */
function formOf(
  request: Request,
  { fields, large, form }: Sent,
  id: string,
  address: string | undefined,
): URLSearchParams | 'elsewhere' | 'large' {
  const from = cameFrom(request, address);
  if (from === 'elsewhere' || !form) return 'elsewhere';
  if (large) return 'large';
  return from === 'here' || hasKey(fields, id) ? fields : 'elsewhere';
}

/** An emergency told on the page, put through like any text, so that it is remembered. What becomes of it delays nobody. */
async function given(text: string, id: string, from: string | undefined, ports: WebPorts): Promise<void> {
  const { answer, preferences, fault } = ports;
  try {
    if (!(await isLetIn(id, from, true, ports))) return;
    for await (const _ of answer({ asker: { platform: 'web', id }, preferences, text }));
  } catch (cause) {
    if (!(cause instanceof Outage)) fault('page', cause);
  }
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
