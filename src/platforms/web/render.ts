/** An answer as HTML: pure, total, nothing left out; what can hurt stands first or at its step, and a table is cards on a phone. */

import { html, raw } from 'hono/html';
import { assumedOf } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { toSvg } from '../../drawing/svg.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { Sheets } from '../../reply/job-sheet.ts';
import type { Block, Caution, Problem, Reply, Source } from '../../reply/reply.ts';
import { saySource } from '../../text/answer-text.ts';
import { cautionsAtSteps } from '../../text/caution-text.ts';
import { sayFault } from '../../text/chat-text.ts';
import { PAGE } from '../../text/page-text.ts';
import type { FileMaker, TableFile, WebFile } from '../platform.ts';

// HTML in pieces: every text is escaped where it is put in, and cleaned of what is not seen but acts.

/** A piece of HTML. */
export type Html = ReturnType<typeof html>;

/** Nothing at all. */
export const NOTHING: Html = html``;

/** A text as it may stand in a page: no control characters, no marks that turn the direction of what follows, no halves of characters. */
export function plain(text: string): string {
  return text
    .replace(/\r\n?|[\u2028\u2029]/g, '\n')
    .replace(/[^\P{Cc}\n\t]|\p{Cs}|[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c\ufeff]/gu, '');
}

/** A text on one line. */
export function htmlLine(text: string): string {
  return plain(text).replace(/\s+/g, ' ').trim();
}

/** The same piece for each of many. */
export function each<T>(items: readonly T[], piece: (item: T, place: number) => Html): readonly Html[] {
  return items.map(piece);
}

/** A list under its title; nothing where there is nothing in it. */
export function titledList(title: string, items: readonly string[], kind: string): Html {
  if (items.length === 0) return NOTHING;
  return html`<div class="${kind}"><h4>${title}</h4><ul>${each(items, (item) => html`<li>${plain(item)}</li>`)}</ul></div>`;
}

/** Takes the place of a checklist's item that can be ticked here; undefined for one that cannot. */
export type ItemAt = (item: string) => Html | undefined;

/** How a block is shown on its page. */
interface Shown {
  readonly itemAt?: ItemAt;
  /** The address of a picture that is fetched when it comes into view; without one it stands in the page itself. */
  readonly picture?: string | undefined;
  /** What can hurt at each step. */
  readonly care?: readonly (readonly Caution[])[];
}

/** A block. `id` begins the ids of what is in it, and is its own on the page. */
export function blockHtml(block: Block, id: string, shown: Shown = {}): Html {
  const { itemAt = () => undefined, picture, care = [] } = shown;
  switch (block.kind) {
    case 'text':
      return html`<p class="told">${plain(block.text)}</p>`;
    case 'facts':
      return html`<div class="facts">${titled(block.title)}<dl class="pairs">${each(
        block.facts,
        ({ label, value }) => html`<div><dt>${plain(label)}</dt><dd>${plain(value)}</dd></div>`,
      )}</dl></div>`;
    case 'table':
      return tableHtml(block);
    case 'steps':
      return html`<div class="steps">${titled(block.title)}<ol>${each(block.steps, (step, place) => html`<li>${plain(step)}${careHtml(care[place] ?? [])}</li>`)}</ol></div>`;
    case 'checklist':
      return html`<div class="checklist">${titled(block.title)}<ul>${each(
        block.items,
        (item) =>
          itemAt(item) ??
          html`<li class="item still"><span class="box" aria-hidden="true"></span><span>${plain(item)}</span></li>`,
      )}</ul></div>`;
    case 'picture':
      return pictureHtml(block.drawing, id, picture);
  }
}

/** A picture with its title above it; what it shows is said within it, for whoever cannot see it. */
function pictureHtml(drawing: Drawing, id: string, address?: string): Html {
  const title = htmlLine(drawing.title);
  const drawn =
    address === undefined
      ? raw(drawingSvg(drawing, `${id}-`))
      : html`<a class="zoom" href="${address}"><img loading="lazy" decoding="async" src="${address}" width="${Math.round(drawing.width)}" height="${Math.round(drawing.height)}" alt="${htmlLine(drawing.alt)}"></a>`;
  return html`<figure class="picture"><figcaption>${title}</figcaption>${drawn}</figure>`;
}

/** A drawing for a reader's own fonts, its texts cleaned. `within` begins its ids. */
export function drawingSvg(drawing: Drawing, within: string): string {
  const shapes = drawing.shapes.map((shape) =>
    shape.kind === 'text' ? { ...shape, text: htmlLine(shape.text) } : shape,
  );
  const clean = { ...drawing, title: htmlLine(drawing.title), alt: htmlLine(drawing.alt), shapes };
  return toSvg(clean, { within });
}

function careHtml(cautions: readonly Caution[]): Html {
  if (cautions.length === 0) return NOTHING;
  const [first, ...others] = each(cautions, ({ text }) => html`${plain(text)}`);
  return html`<div class="care"><p><strong>${PAGE.cautions}:</strong> ${first}</p>${others.map((one) => html`<p>${one}</p>`)}</div>`;
}

function titled(title: string | undefined): Html {
  return title === undefined ? NOTHING : html`<h4>${plain(title)}</h4>`;
}

/** Roles are told as well, for a table that is laid out as cards is none to a reader of screens. */
export function tableHtml({ title, columns, rows }: Omit<Extract<Block, { readonly kind: 'table' }>, 'kind'>): Html {
  const cell = (text: string, place: number): Html =>
    html`<td role="cell"${text === '' ? raw(' class="empty"') : ''} data-column="${plain(columns[place] ?? '')}">${plain(text)}</td>`;
  return html`<div class="table"><h4>${plain(title)}</h4><table role="table"><thead role="rowgroup"><tr role="row">${each(
    columns,
    (column) => html`<th role="columnheader" scope="col">${plain(column)}</th>`,
  )}</tr></thead><tbody role="rowgroup">${each(rows, (row) => html`<tr role="row">${each(row, cell)}</tr>`)}</tbody></table></div>`;
}

/** The whole answer. `id` begins the ids of what is in it. */
export function render(answer: Answer, id = 'answer'): Html {
  if ('reference' in answer) return html`<p class="told">${sayFault(answer.reference, answer.outage)}</p>`;
  if ('problems' in answer) return problemsHtml(answer.problems);
  if ('why' in answer) {
    return html`<h3>${answer.data.emergency ? PAGE.emergency : PAGE.refusal}</h3><p class="told">${plain(answer.why)}</p><p class="told">${PAGE.call}: ${plain(answer.call)}</p>${cautionsHtml(answer.cautions)}`;
  }
  return html`${replyHtml(answer, id)}${sourcesHtml(answer.sources)}`;
}

/** What a page puts into a reply. */
interface Within {
  /** The headline stands above it already. */
  readonly headed?: boolean;
  /** In place of items that can be ticked. */
  readonly itemAt?: ItemAt;
  /** Right below the headline. */
  readonly before?: Html;
  /** Between what can hurt and the rest, or before both. */
  readonly between?: Html;
  readonly first?: 'cautions' | 'between';
  /** Behind the rest. */
  readonly after?: Html;
  /** The address of the picture at a place among the blocks, if it is fetched on its own. */
  readonly pictureAt?: (place: number) => string;
}

/** A reply without its sources, which a page of several tells once at its end. */
export function replyHtml(reply: Reply, id: string, within: Within = {}): Html {
  const {
    headed = false,
    itemAt,
    before = NOTHING,
    between = NOTHING,
    first = 'cautions',
    after = NOTHING,
    pictureAt,
  } = within;
  const steps = reply.blocks.find((block) => block.kind === 'steps');
  const care = cautionsAtSteps(reply.cautions, steps?.kind === 'steps' ? steps.steps : []);
  const cautions = cautionsHtml(care.first);
  const blocks = each(reply.blocks, (block, place) =>
    blockHtml(block, `${id}-${place}`, {
      ...(itemAt && { itemAt }),
      picture: pictureAt?.(place),
      ...(block === steps && { care: care.at }),
    }),
  );
  const body = first === 'cautions' ? html`${cautions}${between}${blocks}` : html`${between}${blocks}${cautions}`;
  const headline = headed ? NOTHING : html`<p class="headline">${plain(reply.headline)}</p>`;
  return html`${headline}${reply.example === undefined ? NOTHING : html`<p>${plain(reply.example)}</p>`}${before}${body}${after}${folded(PAGE.assumed, assumedOf(reply), 'assumed')}`;
}

/** A list that opens when it is wanted. */
function folded(title: string, items: readonly string[], kind: string): Html {
  if (items.length === 0) return NOTHING;
  return html`<details class="${kind}"><summary>${title}</summary><ul>${each(items, (item) => html`<li>${plain(item)}</li>`)}</ul></details>`;
}

/** What can hurt, each thing once. */
export function cautionsHtml(cautions: readonly Caution[]): Html {
  return titledList(PAGE.cautions, [...new Set(cautions.map(({ text }) => text))], 'cautions');
}

/** Where figures come from, each source once. */
export function sourcesHtml(sources: readonly Source[]): Html {
  const said = sources.map((source) => `${saySource(source)} (${source.standing})`);
  return folded(PAGE.sources, [...new Set(said)], 'sources');
}

/** What was read, what is expected, and what to tell instead. */
function problemsHtml(problems: readonly Problem[]): Html {
  if (problems.length === 0) return NOTHING;
  const one = ({ option, got, expected, fix }: Problem): Html =>
    html`<li><p>${option === 'ask' ? '' : `${option}: `}${plain(expected)}</p><p>${PAGE.read}: ${got === '' ? PAGE.nothing : plain(got)}</p>${fix === undefined ? NOTHING : html`<p>${PAGE.type}: <kbd>${htmlLine(fix)}</kbd></p>`}</li>`;
  return html`<div class="problems"><h4>${PAGE.problem}</h4><ul>${each(problems, one)}</ul></div>`;
}

// What can be taken along: the sheets as files, made by whoever makes them.

/** Links to the files; the paper of the project's own units first. */
export function fileLinks({ units }: Sheets, tables: readonly TableFile[]): Html {
  const papers = units === 'metric' ? (['a4', 'letter'] as const) : (['letter', 'a4'] as const);
  const links = [
    ...papers.map((paper) => ({ get: paper, label: PAGE[paper] })),
    ...tables.map(({ key, label }) => ({ get: `csv-${key}`, label: PAGE.csv(label) })),
    { get: 'json', label: PAGE.json },
  ];
  return html`<section class="take" aria-labelledby="take-title"><h2 id="take-title">${PAGE.take}</h2><ul class="ways">${each(
    links,
    ({ get, label }) => html`<li><a class="button" href="?get=${encodeURIComponent(get)}" download>${label}</a></li>`,
  )}</ul><p>${PAGE.print}</p></section>`;
}

/** The file that a link asks for; undefined where there is none of that name. */
export async function fileFor(get: string, sheets: Sheets, files: FileMaker): Promise<WebFile | undefined> {
  if (get === 'letter' || get === 'a4') return files.pdf(sheets, get);
  if (get === 'json') return files.json(sheets);
  return get.startsWith('csv-') ? files.table(sheets, get.slice(4)) : undefined;
}
