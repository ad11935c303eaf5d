/** A summary cut to the length of one message: whole lines go, the least important first, and it says which. */

import { HANDOFF } from '../../../src/text/sheets-text.ts';
import type { HandoffLine } from './handoff-lines.ts';

/** Characters that one message takes on the strictest of the platforms: a plain Discord message. */
export const ONE_MESSAGE = 2000;

/** The lines that fit with their title, as facts, the most important first; figures are never cut. */
export function fitted(title: string, lines: readonly HandoffLine[]): readonly HandoffLine[] {
  let all = lines;
  let kept = chosen(title, all);
  while (textOf(title, kept).length > ONE_MESSAGE) {
    const shorter = shortened(all);
    if (!shorter) break;
    all = shorter;
    kept = chosen(title, all);
  }
  return kept;
}

/** The lines that are never left out, and of the others each that there is room for beside what is more important. */
function chosen(title: string, lines: readonly HandoffLine[]): readonly HandoffLine[] {
  const kept = new Set(lines.filter(({ never }) => never));
  const withLeft = (): readonly HandoffLine[] => {
    const left = lines.filter((line) => !kept.has(line)).map(({ label }) => label);
    const told = lines.filter((line) => kept.has(line));
    return left.length === 0 ? told : [...told, { label: HANDOFF.labels.left, items: left }];
  };
  for (const line of lines) {
    if (kept.has(line)) continue;
    kept.add(line);
    // The labels of what is still to come take room as well, for any of it may have to go.
    if (textOf(title, withLeft()).length > ONE_MESSAGE) kept.delete(line);
  }
  return withLeft();
}

/** The summary as plain text, to be sent on as it is. */
export function textOf(title: string, lines: readonly HandoffLine[]): string {
  return [title, ...lines.map((line) => `${line.label}: ${itemsOf(line)}`)].join('\n');
}

export function itemsOf({ items }: HandoffLine): string {
  return items.join('; ');
}

/** With the last room left out and counted, then the last of whom to call: of the lines that stay, rooms hurt nobody. */
function shortened(lines: readonly HandoffLine[]): readonly HandoffLine[] | undefined {
  const labels: readonly string[] = [HANDOFF.labels.rooms, HANDOFF.labels.call];
  const long = labels.flatMap((label) => lines.filter((line) => line.label === label && line.items.length > 2))[0];
  if (!long) return undefined;
  const [last = ''] = long.items.slice(-1);
  const before = /^and (\d+) more/.exec(last);
  const count = before ? Number(before[1]) + 1 : 2;
  const more = long.label === HANDOFF.labels.call ? HANDOFF.moreCalls(count) : HANDOFF.more(count);
  return lines.map((line) => (line === long ? { ...long, items: [...long.items.slice(0, -2), more] } : line));
}
