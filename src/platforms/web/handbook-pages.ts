/** The handbook as pages that anybody can open and link: an index by topic and a page for each entry, in either units. */

import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import { html } from 'hono/html';
import { ENTRIES, entryOf } from '../../handbook/all-entries.ts';
import { entryCautions, entryPath, entryText } from '../../handbook/answer.ts';
import { type Entry, type EntryTopic, TOPICS } from '../../handbook/entry.ts';
import { saySource } from '../../text/answer-text.ts';
import { HANDBOOK_PAGES } from '../../text/page-text.ts';
import { cautionsHtml, each, type Html, NOTHING, tableHtml } from './render.ts';
import { SEALED, shell } from './shell.ts';

/** How the pages are written: the parts of the path after `/handbook`. */
interface HandbookPlace {
  readonly entry?: Entry;
  readonly metric: boolean;
}

/** What a path leads to; undefined where the handbook has nothing there. */
function placeAt(path: string): HandbookPlace | undefined {
  const [, , ...parts] = path.replace(/\/$/, '').split('/');
  const metric = parts.at(-1) === 'metric';
  const [id, ...more] = metric ? parts.slice(0, -1) : parts;
  if (id === undefined) return { metric };
  const entry = entryOf(id);
  return entry && more.length === 0 ? { entry, metric } : undefined;
}

interface Written {
  readonly text: string;
  readonly packed: Uint8Array<ArrayBuffer>;
  readonly tag: string;
}

const written = new Map<string, Promise<Written>>();

/** The page of a path below `/handbook`; undefined where there is none. Each is written once and kept. */
export async function handbookPage(request: Request): Promise<Response | undefined> {
  const place = placeAt(new URL(request.url).pathname);
  if (!place) return undefined;
  const path = entryPath(place.entry, place.metric);
  const page = written.get(path) ?? write(place);
  written.set(path, page);
  const { text, packed, tag } = await page;
  const headers = { ...OPEN_PAGE, ETag: tag };
  if (request.headers.get('if-none-match')?.includes(tag)) return new Response(null, { status: 304, headers });
  const isPacked = /\bgzip\b/.test(request.headers.get('accept-encoding') ?? '');
  if (!isPacked) return new Response(text, { headers });
  return new Response(packed, { headers: { ...headers, 'Content-Encoding': 'gzip' } });
}

const { 'X-Robots-Tag': _hidden, ...SAFE } = SEALED;

/** As strict as a share page, but nobody's secret: kept for an hour by whoever likes. */
const OPEN_PAGE = {
  ...SAFE,
  'Cache-Control': 'public, max-age=3600',
  'Content-Type': 'text/html; charset=utf-8',
  Vary: 'Accept-Encoding',
} as const;

async function write({ entry, metric }: HandbookPlace): Promise<Written> {
  const text = `${await (entry ? entryHtml(entry, metric) : indexHtml(metric))}`;
  const tag = `"${createHash('sha256').update(text).digest('base64url').slice(0, 16)}"`;
  return { text, packed: new Uint8Array(gzipSync(text)), tag };
}

function indexHtml(metric: boolean): Html {
  const topics = TOPICS.filter((topic) => ENTRIES.some((entry) => entry.topic === topic));
  const body = html`<header><h1>${HANDBOOK_PAGES.title}</h1><p class="facts-of-page">${HANDBOOK_PAGES.about(ENTRIES.length)}</p></header>
<main class="handbook"><nav aria-label="${HANDBOOK_PAGES.topics}"><ul class="ways">${each(
    topics,
    (topic) => html`<li><a class="button" href="#${topicId(topic)}">${HANDBOOK_PAGES.topic(topic)}</a></li>`,
  )}</ul></nav>
${each(
  topics,
  (topic) =>
    html`<section id="${topicId(topic)}"><h2>${HANDBOOK_PAGES.topic(topic)}</h2>${questions(
      ENTRIES.filter((entry) => entry.topic === topic),
      metric,
    )}</section>`,
)}</main>
${footer(undefined, metric)}`;
  return shell(HANDBOOK_PAGES.title, body, undefined, true);
}

function topicId(topic: EntryTopic): string {
  return topic.replace(/ /g, '-');
}

function questions(entries: readonly Entry[], metric: boolean): Html {
  return html`<ul class="questions-list">${each(
    entries,
    (entry) => html`<li><a href="${entryPath(entry, metric)}">${entry.title}</a></li>`,
  )}</ul>`;
}

function entryHtml(entry: Entry, metric: boolean): Html {
  const { lead, lines, more, figures, sources } = entryText(entry, metric);
  const near = (entry.near ?? []).flatMap((id) => entryOf(id) ?? []);
  const same = ENTRIES.filter((other) => other.topic === entry.topic && other !== entry && !near.includes(other));
  const own = entry.source ? [entry.source] : figures.length === 0 ? sources : [];
  const body = html`<nav class="trail" aria-label="${HANDBOOK_PAGES.title}"><a href="${entryPath(undefined, metric)}">${HANDBOOK_PAGES.title}</a> <span aria-hidden="true">›</span> <a href="${entryPath(undefined, metric)}#${topicId(entry.topic)}">${HANDBOOK_PAGES.topic(entry.topic)}</a></nav>
<header><h1>${entry.title}</h1></header>
<main class="handbook"><section><p class="headline">${lead}</p>${lines.length > 0 ? html`<p>${lines.join(' ')}</p>` : NOTHING}${
    entry.asks === undefined ? NOTHING : html`<p class="asks">${HANDBOOK_PAGES.exact(entry.asks)}</p>`
  }
${cautionsHtml(entryCautions(entry, metric))}
${more.length > 0 ? html`<h2>${HANDBOOK_PAGES.more}</h2><ul>${each(more, (line) => html`<li>${line}</li>`)}</ul>` : NOTHING}</section>
<section class="figures">${
    figures.length > 0
      ? tableHtml({
          title: HANDBOOK_PAGES.figures,
          columns: HANDBOOK_PAGES.columns,
          rows: figures.map(({ name, us, metric: other = us, source }) => [
            name,
            metric ? other : us,
            source.standing,
            saySource(source),
          ]),
        })
      : NOTHING
  }${each(own, (source) => html`<p>${saySource(source)} (${source.standing})</p>`)}
<p class="hint">${HANDBOOK_PAGES.standing}</p></section>
${near.length > 0 ? html`<section><h2>${HANDBOOK_PAGES.near}</h2>${questions(near, metric)}</section>` : NOTHING}
${same.length > 0 ? html`<section><h2>${HANDBOOK_PAGES.same(entry.topic)}</h2>${questions(same, metric)}</section>` : NOTHING}
</main>
${footer(entry, metric)}`;
  return shell(HANDBOOK_PAGES.named(entry.title), body, undefined, true);
}

/** The same page in the other units, the way back, and what comes before all of it. */
function footer(entry: Entry | undefined, metric: boolean): Html {
  const other = metric ? HANDBOOK_PAGES.units.us : HANDBOOK_PAGES.units.metric;
  const back =
    entry === undefined
      ? NOTHING
      : html`<a class="button" href="${entryPath(undefined, metric)}">${HANDBOOK_PAGES.all}</a>`;
  return html`<footer><p class="ways-on">${back}<a class="button" href="${entryPath(entry, !metric)}">${other}</a></p><p>${HANDBOOK_PAGES.first}</p></footer>`;
}
