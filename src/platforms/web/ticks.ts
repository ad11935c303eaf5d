/** What can be ticked off, as forms that work without a script: each says the state that is wanted, so that nothing is ticked twice. */

import { createHash } from 'node:crypto';
import { html, raw } from 'hono/html';
import type { JobSheet, Tick } from '../../reply/job-sheet.ts';
import { PAGE_TICKS } from '../../text/page-text.ts';
import type { ItemAt } from './blocks.ts';
import { each, type Html, NOTHING, oneLine } from './markup.ts';
import { when } from './when.ts';

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
  return PAGE_TICKS.by(by === undefined ? undefined : oneLine(by), at === undefined ? undefined : when(at, zone));
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
    return html`<div class="checklist"><h4>${oneLine(group)}</h4><ul>${each(own, item)}</ul></div>`;
  });
  return {
    list: groups.length === 0 ? NOTHING : html`${list}`,
    itemAt: (text) => {
      const tick = byItem.get(text);
      if (tick) return item(tick);
      // Beside what can be ticked, a box that cannot would be tried in vain.
      return tickable ? html`<li class="told-item">${oneLine(text)}</li>` : undefined;
    },
  };
}

function tickHtml(sheet: JobSheet, tick: Tick, zone: string, key: string | undefined): Html {
  const name = tickName(sheet, tick);
  const words = html`<span class="box" aria-hidden="true"></span><span class="words"><span class="label">${oneLine(tick.label)}</span> <span class="who">${sayTicked(tick, zone)}</span> <span class="state" role="status"></span></span>`;
  const checked = raw(tick.ticked ? 'true' : 'false');
  if (key === undefined)
    return html`<li class="item tick still" id="${tickId(name)}" data-tick="${name}" data-ticked="${checked}">${words}</li>`;
  return html`<li class="item tick" id="${tickId(name)}" data-tick="${name}" data-ticked="${checked}"><form method="post"><input type="hidden" name="do" value="tick"><input type="hidden" name="key" value="${key}"><input type="hidden" name="tick" value="${name}"><input type="hidden" name="wanted" value="${tick.ticked ? 'no' : 'yes'}"><button role="checkbox" aria-checked="${checked}">${words}</button></form></li>`;
}
