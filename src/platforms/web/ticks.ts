/** What can be ticked off, as forms that work without a script: each says the state that is wanted, so that nothing is ticked twice. */

import { createHash } from 'node:crypto';
import { html, raw } from 'hono/html';
import type { JobSheet, Sheets, Tick } from '../../reply/job-sheet.ts';
import { PAGE, PAGE_NOTES, PAGE_TICKS } from '../../text/page-text.ts';
import { LONGEST_MEASURE, LONGEST_PAGE_NOTE, MOST_NEXT } from './limits.ts';
import { each, type Html, htmlLine, type ItemAt, NOTHING } from './render.ts';

// A moment in words, in the zone in which the project's times are told.

/** Such as `Wed, Nov 25, 14:05`. A zone that the machine does not know is told as UTC. */
function when(at: number, zone: string): string {
  return format(at, zone, { weekday: 'short', month: 'short', day: 'numeric', hour: '2-digit', minute: '2-digit' });
}

/** Such as `Wed, Nov 25, 2026, 14:05`, for what lies further away. */
export function whenInYear(at: number, zone: string): string {
  return format(at, zone, {
    weekday: 'short',
    year: 'numeric',
    month: 'short',
    day: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  });
}

function format(at: number, zone: string, parts: Intl.DateTimeFormatOptions): string {
  const timeZone = isZone(zone) ? zone : 'UTC';
  return new Intl.DateTimeFormat('en-US', { ...parts, hourCycle: 'h23', timeZone }).format(at);
}

function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en-US', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

/** A tick's name on the page, among those of all sheets. */
export function tickName(sheet: Pick<JobSheet, 'key'>, tick: Pick<Tick, 'key'>): string {
  return `${sheet.key}:${tick.key}`;
}

/** The id of a tick's place on the page: what it is called may hold what an id may not. */
export function tickId(name: string): string {
  return `t-${createHash('sha256').update(name).digest('base64url').slice(0, 10)}`;
}

/** Who ticked it and when, in words; empty for what is not ticked. */
export function sayTicked({ ticked, by, at }: Tick, zone: string): string {
  if (!ticked) return '';
  return PAGE_TICKS.by(by === undefined ? undefined : htmlLine(by), at === undefined ? undefined : when(at, zone));
}

/** A sheet's ticks by their groups, but for those that stand in a list of its reply; and what takes their place there. Without the key of its forms none can be ticked. */
export function ticksOf(sheet: JobSheet, zone: string, key?: string): { readonly list: Html; readonly itemAt: ItemAt } {
  const { ticks = [], reply } = sheet;
  const tickable = sheet.ticks !== undefined;
  const item = (tick: Tick): Html => tickHtml(sheet, tick, zone, key);
  const listed = new Set(reply.blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : [])));
  const byItem = new Map(ticks.filter(({ label }) => listed.has(label)).map((tick) => [tick.label, tick]));
  const rest = ticks.filter((tick) => byItem.get(tick.label) !== tick);
  const groups = [...new Set(rest.map(({ group }) => group))];
  const list = each(groups, (group) => {
    const own = rest.filter((tick) => tick.group === group);
    return html`<div class="checklist"><h4>${htmlLine(group)}</h4><ul>${each(own, item)}</ul></div>`;
  });
  return {
    list: groups.length === 0 ? NOTHING : html`${list}`,
    itemAt: (text) => {
      const tick = byItem.get(text);
      if (tick) return item(tick);
      // Beside what can be ticked, a box that cannot would be tried in vain.
      return tickable ? html`<li class="told-item">${htmlLine(text)}</li>` : undefined;
    },
  };
}

/** Of each room the first stage that isn't done, as far as a phone screen goes; nothing where a list is short anyway. */
export function nextHtml(sheets: readonly JobSheet[], zone: string, key?: string): Html {
  const sheet = sheets.find((one) => one.key === 'checklist');
  const left = (sheet?.ticks ?? []).filter(({ ticked }) => !ticked);
  if (!sheet || left.length <= MOST_NEXT) return NOTHING;
  const firsts = left.filter((tick, place) => left.findIndex(({ group }) => group === tick.group) === place);
  const items = each(firsts.slice(0, MOST_NEXT), (tick) => tickHtml(sheet, tick, zone, key, true));
  return html`<section class="next" aria-labelledby="next-title"><h2 id="next-title">${PAGE.next}</h2><div class="checklist"><ul>${items}</ul></div></section>`;
}

/** `again`: it stands further down too, under its room. */
function tickHtml(sheet: JobSheet, tick: Tick, zone: string, key: string | undefined, again = false): Html {
  const name = tickName(sheet, tick);
  const room = again ? html`<span class="of">${htmlLine(tick.group)}</span> ` : NOTHING;
  const id = again ? NOTHING : html` id="${tickId(name)}"`;
  const words = html`<span class="box" aria-hidden="true"></span><span class="words"><span class="label">${htmlLine(tick.label)}</span> ${room}<span class="who">${sayTicked(tick, zone)}</span> <span class="state" role="status"></span></span>`;
  const checked = raw(tick.ticked ? 'true' : 'false');
  if (key === undefined)
    return html`<li class="item tick still"${id} data-tick="${name}" data-ticked="${checked}">${words}</li>`;
  return html`<li class="item tick"${id} data-tick="${name}" data-ticked="${checked}"><form method="post"><input type="hidden" name="do" value="tick"><input type="hidden" name="key" value="${key}"><input type="hidden" name="tick" value="${name}"><input type="hidden" name="wanted" value="${tick.ticked ? 'no' : 'yes'}"><button role="checkbox" aria-checked="${checked}">${words}</button></form></li>`;
}

// What can be told on the page: a note, and what the tape says where the owner asks.

/** Something that the owner asks to be measured. */
export interface PageQuestion {
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
  return html`<section class="note-form" aria-labelledby="note-title"><h2 id="note-title">${PAGE_NOTES.title}</h2><form method="post" data-send="note"><input type="hidden" name="do" value="note"><input type="hidden" name="key" value="${key}"><input type="hidden" name="once" value="${once}"><label for="note-text">${PAGE_NOTES.label}</label><textarea id="note-text" name="text" rows="3" maxlength="${LONGEST_PAGE_NOTE}" required></textarea><button class="button">${PAGE_NOTES.send}</button> <span class="state" role="status"></span></form></section>`;
}

/** A card for each question. */
export function questionCards(questions: readonly PageQuestion[], key: string): Html {
  const card = ({ id, label, kept, example }: PageQuestion): Html =>
    html`<form method="post" class="question" data-send="measure"><input type="hidden" name="do" value="measure"><input type="hidden" name="key" value="${key}"><input type="hidden" name="question" value="${id}"><p class="asked" id="q-${id}">${htmlLine(label)}${kept === undefined ? NOTHING : html` <span class="kept">${PAGE_NOTES.measureKept(htmlLine(kept))}</span>`}</p><label for="m-${id}">${PAGE_NOTES.measureLabel}</label><input id="m-${id}" name="text" type="text" autocomplete="off" autocapitalize="off" spellcheck="false" maxlength="${LONGEST_MEASURE}" aria-describedby="q-${id} h-${id}" required><p class="hint" id="h-${id}">${PAGE_NOTES.measureHint(htmlLine(example))}</p><button class="button">${PAGE_NOTES.measureSend}</button> <span class="state" role="status"></span></form>`;
  return html`<section class="questions" aria-labelledby="measure-title"><h2 id="measure-title">${PAGE_NOTES.measureTitle}</h2>${each(questions, card)}</section>`;
}

// What stands in the lists of a page, told apart from what is ticked in them: a page with other lists is
// stale.

/** A short name of what stands in the lists. */
export function listsOf({ sheets }: Sheets): string {
  const listed = sheets.map(({ key, room, reply, ticks = [], pieces = [] }: JobSheet) => [
    key,
    room,
    // What is left is told in these headlines, and changes with every tick.
    key === 'shopping' || key === 'checklist' ? '' : reply.headline,
    ticks.map((tick) => tick.key).sort(),
    pieces.map((piece) => [piece.place, piece.ticks]),
  ]);
  return createHash('sha256').update(JSON.stringify(listed)).digest('base64url').slice(0, 12);
}
