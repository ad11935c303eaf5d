/** What can be told on the page: a note, and what the tape says where the owner asks. */

import { html } from 'hono/html';
import { PAGE_NOTES } from '../../text/page-text.ts';
import { LONGEST_MEASURE, LONGEST_NOTE } from './limits.ts';
import { each, type Html, NOTHING, oneLine } from './markup.ts';

/** Something that the owner asks to be measured. */
export interface Question {
  readonly id: string;
  readonly label: string;
  /** What it is kept as. */
  readonly kept?: string;
  /** How a length is told, in the project's own units. */
  readonly example: string;
  /** The line that answers it with a text. */
  line(text: string): string;
}

/** A form for a note; `once` names it, so that it is kept once however often it is sent. */
export function noteForm(once: string, key: string): Html {
  return html`<section class="note-form" aria-labelledby="note-title"><h2 id="note-title">${PAGE_NOTES.title}</h2><form method="post" data-send="note"><input type="hidden" name="do" value="note"><input type="hidden" name="key" value="${key}"><input type="hidden" name="once" value="${once}"><label for="note-text">${PAGE_NOTES.label}</label><textarea id="note-text" name="text" rows="3" maxlength="${LONGEST_NOTE}" required></textarea><button class="button">${PAGE_NOTES.send}</button> <span class="state" role="status"></span></form></section>`;
}

/** A card for each question. */
export function questionCards(questions: readonly Question[], key: string): Html {
  const card = ({ id, label, kept, example }: Question): Html =>
    html`<form method="post" class="question" data-send="measure"><input type="hidden" name="do" value="measure"><input type="hidden" name="key" value="${key}"><input type="hidden" name="question" value="${id}"><p class="asked" id="q-${id}">${oneLine(label)}${kept === undefined ? NOTHING : html` <span class="kept">${PAGE_NOTES.measureKept(oneLine(kept))}</span>`}</p><label for="m-${id}">${PAGE_NOTES.measureLabel}</label><input id="m-${id}" name="text" type="text" autocomplete="off" autocapitalize="off" spellcheck="false" maxlength="${LONGEST_MEASURE}" aria-describedby="q-${id} h-${id}" required><p class="hint" id="h-${id}">${PAGE_NOTES.measureHint(oneLine(example))}</p><button class="button">${PAGE_NOTES.measureSend}</button> <span class="state" role="status"></span></form>`;
  return html`<section class="questions" aria-labelledby="measure-title"><h2 id="measure-title">${PAGE_NOTES.measureTitle}</h2>${each(questions, card)}</section>`;
}
