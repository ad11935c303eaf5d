/** What goes back: the page, a file, what came of a form, or the same page for every link that leads nowhere. */

import { html } from 'hono/html';
import { mintLongId } from '../../accounts/records.ts';
import { sheetText } from '../../chat/files.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Sheets } from '../../reply/job-sheet.ts';
import { sayFault } from '../../text/chat-text.ts';
import { NO_PAGE, PAGE, PAGE_NOTES } from '../../text/page-text.ts';
import type { WebFile } from '../platform.ts';
import { NOTIFIED_KEPT } from './limits.ts';
import type { Guest, PageAction } from './page-actions.ts';
import { type Html, htmlLine, NOTHING, plain, render } from './render.ts';
import { NOTICE, type PageCache, pageHtml, pictureOf, sawPageHtml, type Written } from './share-page.ts';
import { formKey, SEALED, shell } from './shell.ts';
import { listsOf, sayTicked, tickId, tickName } from './ticks.ts';
import type { WebPorts } from './types.ts';

/** A request that was let in. */
export interface PageRequest {
  readonly guest: Guest;
  readonly url: URL;
  /** Whether the page's script asks, which wants data. */
  readonly script: boolean;
  /** Whether a page may come packed. */
  readonly packed: boolean;
}

const PAGE_TYPE = 'text/html; charset=utf-8';

/** A page that says no more than why there is none. */
export async function notFoundPage(
  { title, text }: { readonly title: string; readonly text: string },
  status: number,
  headers: Readonly<Record<string, string>> = {},
): Promise<Response> {
  const body = await written(shell(title, html`<main class="nowhere"><h1>${title}</h1><p>${text}</p></main>`));
  return new Response(body, { status, headers: { ...SEALED, 'Content-Type': PAGE_TYPE, ...headers } });
}

/** An emergency, answered before the link is looked at. */
export async function first(answer: Answer, script: boolean): Promise<Response> {
  if (script) return data({ ok: false, said: saidOf(answer) }, 422);
  const body = await written(
    shell(PAGE.emergency, html`<main><div class="notice wrong" role="alert">${render(answer)}</div></main>`),
  );
  return new Response(body, { status: 422, headers: { ...SEALED, 'Content-Type': PAGE_TYPE } });
}

/** The page of a link; with what came of a form, told once. */
export async function page(
  { guest, url, packed }: PageRequest,
  pages: PageCache,
  ports: WebPorts,
  notice?: Html,
  status = 200,
): Promise<Response> {
  const { asker, opened } = guest;
  const gathered = await pages.gathered(asker, opened);
  if (!('sheets' in gathered)) return instead(gathered.instead);
  const { sheets } = gathered;
  const { role, until, questions } = opened;
  const name = asker.id.slice(0, 12);
  const whole = await pages.written(asker, opened, 'whole', () => {
    const files = ports.files && { tables: ports.files.tables(sheets) };
    const once = mintLongId();
    return written(
      pageHtml({
        sheets,
        role,
        name,
        key: formKey(asker.id),
        questions,
        once,
        ...(files && { files }),
        ...(until && { until }),
      }),
    );
  });
  const given = await written(notice ?? (await givenBefore(guest, url.searchParams.get('told'), ports)));
  const headers = { ...SEALED, 'Content-Type': PAGE_TYPE, Vary: 'Accept-Encoding' };
  if (given !== '')
    return new Response(
      whole.text.replace(NOTICE, () => given),
      { status, headers },
    );
  return sent(whole, PAGE_TYPE, packed, status);
}

/** What is fetched when it is wanted: a saw card's page, or a picture; undefined for what the link doesn't show. */
export async function part(
  { guest, url, packed }: PageRequest,
  sheets: Sheets,
  pages: PageCache,
): Promise<Response | undefined> {
  const { asker, opened } = guest;
  const [open, picture] = [url.searchParams.get('open'), /^picture-(.+)$/.exec(url.searchParams.get('get') ?? '')?.[1]];
  const made =
    open === null
      ? picture === undefined
        ? undefined
        : pictureOf(sheets, picture)
      : sawPageHtml({ sheets, name: asker.id.slice(0, 12) }, open);
  if (made === undefined) return undefined;
  const kept = await pages.written(asker, opened, `${open ?? picture}`, async () => `${await made}`);
  return sent(kept, open === null ? 'image/svg+xml' : PAGE_TYPE, packed, 200);
}

function sent({ text, packed }: Written, type: string, takesPacked: boolean, status: number): Response {
  const headers = { ...SEALED, 'Content-Type': type, Vary: 'Accept-Encoding' };
  if (!takesPacked) return new Response(text, { status, headers });
  return new Response(packed, { status, headers: { ...headers, 'Content-Encoding': 'gzip' } });
}

/** Where nothing could be gathered: what is lacking, as the owner will want to know. */
async function instead(answer: Answer): Promise<Response> {
  const title = NO_PAGE.instead;
  const body = await written(shell(title, html`<main><h1>${title}</h1>${render(answer)}</main>`));
  const status = 'reference' in answer ? 503 : 200;
  return new Response(body, { status, headers: { ...SEALED, 'Content-Type': PAGE_TYPE } });
}

/** A file to keep, under its own name. */
export function file({ name, type, bytes }: WebFile): Response {
  const simple = name.replace(/[^\w.-]+/g, '-');
  const disposition = `attachment; filename="${simple}"; filename*=UTF-8''${encodeURIComponent(name)}`;
  return new Response(bytes, { headers: { ...SEALED, 'Content-Type': type, 'Content-Disposition': disposition } });
}

/** What stands ticked now, for the script. */
export function standing(sheets: Sheets): Response {
  return data({ lists: listsOf(sheets), ticks: ticksIn(sheets) }, 200);
}

/** What came of a form: the page again, or data for the script. */
export async function answered(
  came: PageAction,
  requested: PageRequest,
  pages: PageCache,
  ports: WebPorts,
): Promise<Response> {
  const { guest, url } = requested;
  const said = came.answer && saidOf(came.answer);
  if (!requested.script) {
    if (came.done) return seeOther(url, came, said === undefined ? undefined : await keepGiven(guest, said, ports));
    const status = statusOf(came.answer);
    return page(
      requested,
      pages,
      ports,
      html`<div class="notice wrong" role="alert">${render(came.answer)}</div>`,
      status,
    );
  }
  if (!came.done) return data({ ok: false, said }, statusOf(came.answer));
  const opened = await ports.opened(guest.asker);
  const gathered = opened && (await pages.gathered(guest.asker, opened));
  const now =
    gathered && 'sheets' in gathered ? { lists: listsOf(gathered.sheets), ticks: ticksIn(gathered.sheets) } : {};
  return data({ ok: true, said: said ?? PAGE_NOTES.saved, once: mintLongId(), ...now }, 200);
}

/** Whether it can be sent again as it is: later, at once, or not before it is mended. */
function statusOf(answer: Answer): 429 | 503 | 422 {
  if ('reference' in answer) return 503;
  return 'problems' in answer && answer.again === true ? 429 : 422;
}

/** Back to the page, at what was ticked; the address names no link. */
function seeOther(url: URL, { tick }: Extract<PageAction, { done: true }>, given: string | undefined): Response {
  const query = given === undefined ? '' : `?told=${given}`;
  const at = tick === undefined ? '' : `#${tickId(tick)}`;
  return new Response(null, { status: 303, headers: { ...SEALED, Location: `${url.pathname}${query}${at}` } });
}

function notifiedKey({ asker }: Guest, id: string): string {
  return `page-told:${asker.id}:${id}`;
}

async function keepGiven(guest: Guest, said: string, { store }: WebPorts): Promise<string | undefined> {
  if (!store) return undefined;
  const id = mintLongId();
  await store.kept.set(notifiedKey(guest, id), said, NOTIFIED_KEPT);
  return id;
}

async function givenBefore(guest: Guest, id: string | null, { store }: WebPorts): Promise<Html> {
  const said = id === null || !/^[\w-]{22}$/.test(id) ? undefined : await store?.kept.get(notifiedKey(guest, id));
  return typeof said === 'string'
    ? html`<div class="notice" role="status"><p class="told">${plain(said)}</p></div>`
    : NOTHING;
}

/** An answer as a few lines. */
function saidOf(answer: Answer): string {
  if ('headline' in answer) {
    const short = answer.blocks.filter(({ kind }) => kind === 'text' || kind === 'facts');
    return sheetText({ ...answer, sources: [], assumed: [] }, short).trim();
  }
  if ('problems' in answer) return answer.problems.map(({ expected }) => expected).join('\n');
  if ('why' in answer) return `${answer.why}\n${answer.call}`;
  return sayFault(answer.reference, answer.outage);
}

/** Each tick by its name on the page: whether it is ticked, by whom in words, and what it is called now. */
function ticksIn({ sheets, zone }: Sheets): Readonly<Record<string, readonly [boolean, string, string]>> {
  const all = sheets.flatMap((sheet) =>
    (sheet.ticks ?? []).map(
      (tick) => [tickName(sheet, tick), [tick.ticked, sayTicked(tick, zone), htmlLine(tick.label)]] as const,
    ),
  );
  return Object.fromEntries(all);
}

function data(value: unknown, status: number): Response {
  return new Response(JSON.stringify(value), { status, headers: { ...SEALED, 'Content-Type': 'application/json' } });
}

async function written(page: Html): Promise<string> {
  return `${await page}`;
}
