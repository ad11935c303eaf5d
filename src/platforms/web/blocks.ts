/** The blocks of a reply as HTML: every kind is shown, whole; a table is cards on a phone. */

import { html, raw } from 'hono/html';
import { toSvg } from '../../drawing/svg.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { Block } from '../../reply/reply.ts';

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

/** A block. `id` begins the ids of what is in it, and is its own on the page. */
export function blockHtml(block: Block, id: string, itemAt: ItemAt = () => undefined): Html {
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
      return html`<div class="steps">${titled(block.title)}<ol>${each(block.steps, (step) => html`<li>${plain(step)}</li>`)}</ol></div>`;
    case 'checklist':
      return html`<div class="checklist">${titled(block.title)}<ul>${each(
        block.items,
        (item) =>
          itemAt(item) ??
          html`<li class="item still"><span class="box" aria-hidden="true"></span><span>${plain(item)}</span></li>`,
      )}</ul></div>`;
    case 'picture':
      return pictureHtml(block.drawing, id);
  }
}

/** A picture with its title above it; what it shows is said within it, for whoever cannot see it. */
function pictureHtml(drawing: Drawing, id: string): Html {
  const shapes = drawing.shapes.map((shape) =>
    shape.kind === 'text' ? { ...shape, text: htmlLine(shape.text) } : shape,
  );
  const clean = { ...drawing, title: htmlLine(drawing.title), alt: htmlLine(drawing.alt), shapes };
  return html`<figure class="picture"><figcaption>${clean.title}</figcaption>${raw(toSvg(clean, { within: `${id}-` }))}</figure>`;
}

function titled(title: string | undefined): Html {
  return title === undefined ? NOTHING : html`<h4>${plain(title)}</h4>`;
}

/** Roles are told as well, for a table that is laid out as cards is none to a reader of screens. */
function tableHtml({ title, columns, rows }: Extract<Block, { readonly kind: 'table' }>): Html {
  const cell = (text: string, place: number): Html =>
    html`<td role="cell"${text === '' ? raw(' class="empty"') : ''} data-column="${plain(columns[place] ?? '')}">${plain(text)}</td>`;
  return html`<div class="table"><h4>${plain(title)}</h4><table role="table"><thead role="rowgroup"><tr role="row">${each(
    columns,
    (column) => html`<th role="columnheader" scope="col">${plain(column)}</th>`,
  )}</tr></thead><tbody role="rowgroup">${each(rows, (row) => html`<tr role="row">${each(row, cell)}</tr>`)}</tbody></table></div>`;
}
