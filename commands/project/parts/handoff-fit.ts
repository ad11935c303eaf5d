/** A summary cut to the length of one message: whole lines go, the least important first, and it says which. */

import { HANDOFF } from '../../../src/words/handoff.ts';
import type { HandoffLine } from './handoff-lines.ts';

/** Characters that one message takes on the strictest of the platforms: a plain Discord message. */
export const ONE_MESSAGE = 2000;

/** The lines that fit with their title, as facts; figures are never cut. */
export function fitted(title: string, lines: readonly HandoffLine[]): readonly HandoffLine[] {
  let kept = lines;
  const left: string[] = [];
  const all = (): readonly HandoffLine[] =>
    left.length === 0 ? kept : [...kept, { label: HANDOFF.labels.left, items: left }];
  while (textOf(title, all()).length > ONE_MESSAGE) {
    const last = kept.filter(({ never }) => !never).at(-1);
    if (last) {
      kept = kept.filter((line) => line !== last);
      left.unshift(last.label);
      continue;
    }
    const shorter = withoutLast(kept);
    if (!shorter) break;
    kept = shorter;
  }
  return all();
}

/** The summary as plain text, to be sent on as it is. */
export function textOf(title: string, lines: readonly HandoffLine[]): string {
  return [title, ...lines.map((line) => `${line.label}: ${itemsOf(line)}`)].join('\n');
}

export function itemsOf({ items }: HandoffLine): string {
  return items.join('; ');
}

/** With the last room left out and counted: of the lines that stay, the rooms are the longest and hurt nobody. */
function withoutLast(lines: readonly HandoffLine[]): readonly HandoffLine[] | undefined {
  const rooms = lines.find(({ label, items }) => label === HANDOFF.labels.rooms && items.length > 2);
  if (!rooms) return undefined;
  const [last = ''] = rooms.items.slice(-1);
  const before = /^and (\d+) more$/.exec(last);
  const count = before ? Number(before[1]) + 1 : 2;
  const items = [...rooms.items.slice(0, -2), HANDOFF.more(count)];
  return lines.map((line) => (line === rooms ? { ...rooms, items } : line));
}
