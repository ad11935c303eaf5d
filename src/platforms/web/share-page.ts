/** The share page: what somebody was given of a project, sheet by sheet, whole without a script. */

import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { html, raw } from 'hono/html';
import { openAccess } from '../../accounts/project-access.ts';
import type { Asker } from '../../accounts/records.ts';
import { questionsAt } from '../../chat/notifications.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Ports } from '../../chat/ports.ts';
import { isSheets, type JobSheet, type SheetKey, type Sheets } from '../../reply/job-sheet.ts';
import { PAGE, PAGE_ROLES, PAGE_SECTIONS } from '../../text/page-text.ts';
import { SHEETS } from '../../text/sheets-text.ts';
import type { TableFile } from '../platform.ts';
import { MOST_PIECES, PAGE_GOOD, PAGES_KEPT } from './limits.ts';
import {
  blockHtml,
  drawingSvg,
  each,
  fileLinks,
  type Html,
  htmlLine,
  NOTHING,
  replyHtml,
  sourcesHtml,
} from './render.ts';
import { sawCard } from './saw-card.ts';
import { shell } from './shell.ts';
import { listsOf, nextHtml, noteForm, type PageQuestion, questionCards, ticksOf, whenInYear } from './ticks.ts';
import type { OpenedLink, WebPorts } from './types.ts';

/** What a page is made of. */
export interface PageView {
  readonly sheets: Sheets;
  readonly role: 'look' | 'tick' | 'measure';
  /** Milliseconds since 1970; open until it is stopped without it. */
  readonly until?: number;
  /** Names the page where a browser keeps what is not sent yet; says nothing of the link. */
  readonly name: string;
  /** What its forms carry, so that they are known as its own. */
  readonly key: string;
  /** What can be measured for the owner. */
  readonly questions: readonly PageQuestion[];
  /** Names what is noted on this page, so that a note sent twice is kept once. */
  readonly once: string;
  /** What can be taken along; nothing without it. */
  readonly files?: { readonly tables: readonly TableFile[] };
}

/** Stands in the page as it is kept, where what came of a form is told: no text that was typed can hold a bare `<`. */
export const NOTICE = '<!--notice-->';

/** A sheet, and what it is called on its page. */
interface Placed {
  readonly sheet: JobSheet;
  readonly id: string;
}

function placed({ sheets }: Sheets): readonly Placed[] {
  return sheets.map((sheet, place) => ({ sheet, id: `${sheet.key}-${place + 1}` }));
}

/** The whole page: what comes next, then every sheet, opened when it is wanted. */
export function pageHtml(view: PageView): Html {
  const { sheets, role, until, name, questions, once, files } = view;
  const { project, made, zone } = sheets;
  const title = htmlLine(project);
  const shown = placed(sheets);
  const key = role === 'look' ? undefined : view.key;
  const body = html`<header id="top"><h1>${title}</h1><p class="facts-of-page">${PAGE_ROLES[role]} ${until === undefined ? '' : PAGE.until(whenInYear(until, zone))}</p></header>
<div id="live" role="status"></div>${raw(NOTICE)}
<main>${questions.length === 0 || role !== 'measure' ? NOTHING : questionCards(questions, view.key)}
${nextHtml(sheets.sheets, zone, key)}
${shown.length === 0 ? html`<p class="told">${PAGE.nothingHere}</p>` : NOTHING}
${each(shown, (one) => sectionHtml(one, sheets, key))}
${missingHtml(sheets)}
${key === undefined ? NOTHING : noteForm(once, key)}
${files ? fileLinks(sheets, files.tables) : NOTHING}
</main>
<footer>${sourcesHtml(sheets.sheets.flatMap(({ reply }) => reply.sources))}<p>${PAGE.made(whenInYear(made, zone))} ${PAGE.first}</p></footer>`;
  return shell(title, body, { lists: listsOf(sheets), name });
}

/** A saw card on its own, at which somebody stands for an hour; undefined if no sheet with pieces is called that. */
export function sawPageHtml({ sheets, name }: Pick<PageView, 'sheets' | 'name'>, called: string): Html | undefined {
  const one = placed(sheets).find(({ id, sheet }) => id === called && sheet.pieces !== undefined);
  if (!one) return undefined;
  const { sheet, id } = one;
  const title = `${sectionTitle(sheet)} · ${htmlLine(sheets.project)}`;
  const content = contentHtml(sheet, id, { list: NOTHING, itemAt: () => undefined });
  const body = html`<div id="live" role="status"></div><main><section class="sheet cuts" aria-labelledby="${id}-title"><h1 id="${id}-title">${sectionTitle(sheet)}</h1>${content}</section><p class="back"><a class="button" href="?">${PAGE.back}</a></p></main>`;
  return shell(title, body, { lists: listsOf(sheets), name });
}

/** The picture of that name, such as `guide-4-2`; undefined if no sheet has it. */
export function pictureOf(sheets: Sheets, called: string): string | undefined {
  for (const { sheet, id } of placed(sheets)) {
    for (const [place, block] of sheet.reply.blocks.entries()) {
      if (block.kind === 'picture' && `${id}-${place}` === called) return drawingSvg(block.drawing, `${called}-`);
    }
  }
  return undefined;
}

/** What a section is, and of which room. */
function sectionTitle({ key, room, title }: Pick<JobSheet, 'key' | 'room' | 'title'>): string {
  const called: Readonly<Record<SheetKey, string>> = PAGE_SECTIONS;
  // There may be several of these, of several rooms: their own titles tell them apart.
  if (key === 'tearout') return htmlLine(title);
  if (key === 'repairs') return `${called[key]}: ${htmlLine(title)}`;
  return room === undefined ? called[key] : `${called[key]}: ${htmlLine(room)}`;
}

/** What could not be put on the page, so that nobody takes it for all there is; what a list says already isn't said twice. */
function missingHtml({ missing = [], sheets }: Sheets): Html {
  const said = new Set(
    sheets.flatMap(({ reply }) => reply.blocks.flatMap((one) => (one.kind === 'checklist' ? one.items : []))),
  );
  const left = missing.filter((text) => !said.has(text));
  if (left.length === 0) return NOTHING;
  const items = each(left, (text) => html`<li class="told-item">${htmlLine(text)}</li>`);
  return html`<section class="sheet" aria-labelledby="missing-title"><h2 id="missing-title">${SHEETS.missing}</h2><div class="checklist"><ul>${items}</ul></div></section>`;
}

/** Alone it stands open; among others it opens at a touch, but for what is to be bought. */
function sectionHtml({ sheet, id }: Placed, sheets: Sheets, key: string | undefined): Html {
  const alone = sheets.sheets.length < 2;
  const ticks = ticksOf(sheet, sheets.zone, key);
  const title = html`<h2 id="${id}-title">${sectionTitle(sheet)}</h2>`;
  const open = html`<section class="sheet ${raw(sheet.key)}" id="${id}" aria-labelledby="${id}-title">`;
  if (alone) return html`${open}${title}${contentHtml(sheet, id, ticks)}</section>`;
  const own = sheet.key === 'shopping' ? withoutLater(sheet, sheets) : sheet;
  const summary = html`${title}<p class="headline">${htmlLine(sheet.reply.headline)}</p>`;
  if (hasOwnPage(sheet, sheets)) return html`${open}<a class="own-page" href="?open=${id}">${summary}</a></section>`;
  const content = contentHtml(own, id, ticks, true);
  return html`${open}<details${raw(sheet.key === 'shopping' ? ' open' : '')}><summary>${summary}</summary>${content}</details></section>`;
}

/** What can hurt at work is said where the work is: a list leaves it to the sheets below. */
function withoutLater(list: JobSheet, { sheets }: Sheets): JobSheet {
  const others = sheets.filter((sheet) => sheet !== list).flatMap(({ reply }) => reply.cautions);
  const later = new Set(others.map(({ text }) => text));
  return { ...list, reply: { ...list.reply, cautions: list.reply.cautions.filter(({ text }) => !later.has(text)) } };
}

/** Saw cards of a whole home are more than anybody wants to load for the shopping list. */
function hasOwnPage({ pieces = [] }: JobSheet, { sheets }: Sheets): boolean {
  const all = sheets.reduce((sum, sheet) => sum + (sheet.pieces?.length ?? 0), 0);
  return pieces.length > 0 && all > MOST_PIECES;
}

function contentHtml(sheet: JobSheet, id: string, ticks: ReturnType<typeof ticksOf>, headed = false): Html {
  const { key, reply, pieces = [] } = sheet;
  const { list, itemAt } = ticks;
  // Nobody is hurt by a list: whoever stands in the shop sees it first.
  if (key === 'shopping') return replyHtml(reply, id, { headed, itemAt, between: list, first: 'between' });
  if (pieces.length === 0) {
    const pictureAt = (place: number): string => `?get=picture-${id}-${place}`;
    return replyHtml(reply, id, { headed, itemAt, between: list, pictureAt });
  }
  // The cards say what the tables do: those are for paper.
  const tables = reply.blocks.filter(({ kind }) => kind === 'table');
  const others = { ...reply, blocks: reply.blocks.filter(({ kind }) => kind !== 'table') };
  // Whoever comes back to the saw need not pass by all that can hurt again to see the next length.
  const straight = html`<p class="straight"><a class="button" href="#${id}-saw">${PAGE.pieces}</a></p>`;
  const onPaper = html`<div class="on-paper">${each(tables, (table, place) => blockHtml(table, `${id}-t${place}`))}</div>`;
  return replyHtml(others, id, {
    headed,
    itemAt,
    before: straight,
    between: list,
    after: html`${sawCard(pieces, id)}${onPaper}`,
  });
}

// Pages as they were worked out: kept by link and by all that they show, so that a visit lays no floor anew.

/** Packs off the event loop. No secret stands in a page beside what others wrote, which packing could give away. */
const packed = promisify(gzip);

/** The line that gathers what a link shows. */
const GATHER = 'project sheets';

/** The sheets, or what came instead of them. */
export type GatheredSheets = { readonly sheets: Sheets } | { readonly instead: Answer };

/** A page as it is sent, and packed for those who take it so. */
export interface Written {
  readonly text: string;
  readonly packed: Uint8Array<ArrayBuffer>;
}

interface Kept {
  readonly at: number;
  readonly gathered: Promise<GatheredSheets>;
  /** Its pages as they were written, by what is open on each. */
  readonly pages: Map<string, Promise<Written>>;
}

/** Pages of this process. The link's hash is a part of every key: nothing of one link is ever shown for another. */
export class PageCache {
  readonly #ports: Pick<WebPorts, 'answer' | 'preferences' | 'now'>;
  readonly #kept = new Map<string, Kept>();

  constructor(ports: Pick<WebPorts, 'answer' | 'preferences' | 'now'>) {
    this.#ports = ports;
  }

  /** What a link shows now. */
  gathered(asker: Asker, opened: OpenedLink): Promise<GatheredSheets> {
    return this.#entry(asker, opened).gathered;
  }

  /** What `write` makes of one of a link's pages, once for each state of it. */
  written(asker: Asker, opened: OpenedLink, name: string, write: () => Promise<string>): Promise<Written> {
    const { pages } = this.#entry(asker, opened);
    const found = pages.get(name);
    if (found) return found;
    const page = write().then(async (text) => ({ text, packed: new Uint8Array(await packed(text)) }));
    pages.set(name, page);
    // What could not be written is tried anew by the next who comes.
    page.catch(() => pages.delete(name));
    return page;
  }

  #entry(asker: Asker, opened: OpenedLink): Kept {
    const key = `${asker.id} ${opened.state}`;
    const now = this.#ports.now?.() ?? Date.now();
    const found = this.#kept.get(key);
    this.#kept.delete(key);
    const entry =
      found && now - found.at < PAGE_GOOD ? found : { at: now, gathered: this.#gather(asker), pages: new Map() };
    // Kept anew, it is the last to go.
    this.#kept.set(key, entry);
    for (const oldest of this.#kept.keys()) {
      if (this.#kept.size <= PAGES_KEPT) break;
      this.#kept.delete(oldest);
    }
    const forget = (): void => {
      if (this.#kept.get(key) === entry) this.#kept.delete(key);
    };
    if (entry !== found) {
      void entry.gathered.then((gathered) => ('sheets' in gathered ? undefined : forget()), forget);
    }
    return entry;
  }

  async #gather(asker: Asker): Promise<GatheredSheets> {
    const { answer, preferences } = this.#ports;
    let last: Answer | undefined;
    for await (const one of answer({ asker, preferences, text: GATHER })) last = one;
    if (!last) throw new Error('an ask without an answer');
    return 'data' in last && isSheets(last.data) ? { sheets: last.data } : { instead: last };
  }
}

// What a link leads to, from the desk of whoever holds it.

/** Looks links up where projects are kept. The look is the same for a link that leads nowhere. Throws Outage. */
export function openedBy(ports: Ports): WebPorts['opened'] {
  return async (asker) => {
    const access = openAccess(asker, ports);
    const share = await access?.share();
    if (!access || !share) return undefined;
    access.cover();
    const project = await access.inUse();
    if (!project) return undefined;
    // A room's guide is that of the whole floor: it is another when other rooms change.
    const whole = (await access.inUse('whole')) ?? project;
    const { id, shares: _shares, history: _history, undone: _undone, ...shown } = whole;
    const { what, room, role, until, label } = share;
    const standing = [shown, what, room, role, until, label, await access.ownersSettings()];
    return {
      project: id,
      role,
      ...(until !== undefined && { until }),
      state: createHash('sha256').update(JSON.stringify(standing)).digest('base64url'),
      questions: role === 'measure' ? await questionsAt(access) : [],
    };
  };
}
