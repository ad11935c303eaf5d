/** The share page: what somebody was given of a project, sheet by sheet, whole without a script. */

import { html, raw } from 'hono/html';
import type { JobSheet, SheetKey, Sheets } from '../reply/job-sheet.ts';
import { PAGE, PAGE_ROLES, PAGE_SECTIONS } from '../words/page.ts';
import { fileLinks, type TableFile } from './downloads.ts';
import { listsOf } from './lists.ts';
import { each, type Html, NOTHING, oneLine } from './markup.ts';
import { noteForm, type Question, questionCards } from './notes.ts';
import { replyHtml, sourcesHtml } from './render.ts';
import { sawCard } from './saw-card.ts';
import { shell } from './shell.ts';
import { ticksOf } from './ticks.ts';
import { whenInYear } from './when.ts';

/** What a page is made of. */
export interface View {
  readonly sheets: Sheets;
  readonly role: 'look' | 'tick' | 'measure';
  /** Milliseconds since 1970; open until it is stopped without it. */
  readonly until?: number;
  /** Names the page where a browser keeps what is not sent yet; says nothing of the link. */
  readonly name: string;
  /** What can be measured for the owner. */
  readonly questions: readonly Question[];
  /** What can be taken along; nothing without it. */
  readonly files?: { readonly tables: readonly TableFile[] };
}

/** Stand in the page as it is kept for what is fresh each time it is sent: no text that was typed can hold a bare `<`. */
export const ONCE = { note: '<!--note-->', notice: '<!--notice-->' } as const;

/** The whole page. */
export function pageHtml(view: View): Html {
  const { sheets, role, until, name, questions, files } = view;
  const { project, made, zone } = sheets;
  const title = oneLine(project);
  const shown = sheets.sheets.map((sheet, place) => ({ sheet, id: `${sheet.key}-${place + 1}` }));
  const may = role !== 'look';
  const body = html`<header id="top"><h1>${title}</h1><p class="facts-of-page">${PAGE_ROLES[role]} ${until === undefined ? '' : PAGE.until(whenInYear(until, zone))}</p></header>
<div id="live" role="status"></div>${raw(ONCE.notice)}
<main>${questions.length === 0 || role !== 'measure' ? NOTHING : questionCards(questions)}
${shown.length < 2 ? NOTHING : navHtml(shown)}
${shown.length === 0 ? html`<p class="told">${PAGE.nothingHere}</p>` : NOTHING}
${each(shown, ({ sheet, id }) => sectionHtml(sheet, id, { zone, may, alone: shown.length < 2 }))}
${may ? noteForm(ONCE.note) : NOTHING}
${files ? fileLinks(sheets, files.tables) : NOTHING}
</main>
<footer>${sourcesHtml(sheets.sheets.flatMap(({ reply }) => reply.sources))}<p>${PAGE.made(whenInYear(made, zone))} ${PAGE.first}</p></footer>`;
  return shell(title, body, { lists: listsOf(sheets), name });
}

function navHtml(shown: readonly { readonly sheet: JobSheet; readonly id: string }[]): Html {
  const way = ({ sheet, id }: { readonly sheet: JobSheet; readonly id: string }): Html =>
    html`<li><a class="button" href="#${id}">${sectionTitle(sheet)}</a></li>`;
  return html`<nav aria-label="${PAGE.sections}"><ul class="ways">${each(shown, way)}</ul></nav>`;
}

/** What a section is, and of which room. */
function sectionTitle({ key, room }: Pick<JobSheet, 'key' | 'room'>): string {
  const called: Readonly<Record<SheetKey, string>> = PAGE_SECTIONS;
  return room === undefined ? called[key] : `${called[key]}: ${oneLine(room)}`;
}

function sectionHtml(
  sheet: JobSheet,
  id: string,
  { zone, may, alone }: { readonly zone: string; readonly may: boolean; readonly alone: boolean },
): Html {
  const { list, itemAt } = ticksOf(sheet, zone, may);
  const { pieces = [], reply } = sheet;
  const up = alone ? NOTHING : html`<p class="up"><a class="button" href="#top">${PAGE.top}</a></p>`;
  return html`<section class="sheet ${raw(sheet.key)}" id="${id}" aria-labelledby="${id}-title"><h2 id="${id}-title">${sectionTitle(sheet)}</h2>
${replyHtml(reply, id, { itemAt, between: html`${sawCard(pieces, id)}${list}` })}${up}</section>`;
}
