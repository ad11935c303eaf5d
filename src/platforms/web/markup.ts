/** HTML in pieces: every text is escaped where it is put in, and cleaned of what is not seen but acts. */

import { html } from 'hono/html';

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
export function oneLine(text: string): string {
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
