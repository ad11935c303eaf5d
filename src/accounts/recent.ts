/** Recent activity of an account: the last answer (for “keep that”), earlier option values, and the project changes already seen. */

import { z } from 'zod';
import { isExamplePlank } from '../input/parse-plank.ts';
import { DAY } from '../project/project-limits.ts';
import type { KeyValueStore } from '../storage/types.ts';

/** All of it expires half a year after the last request. */
const KEPT_FOR = 182 * DAY;
const MOST_OPTIONS = 40;
const MOST_VALUES = 12;
const LONGEST_VALUE = 500;

export const recentSchema = z.object({
  last: z.object({ line: z.string(), headline: z.string(), at: z.number() }).readonly().optional(),
  /** Texts by option, latest first. */
  past: z.record(
    z.string(),
    z.array(z.object({ text: z.string(), times: z.number(), at: z.number() }).readonly()).readonly(),
  ),
  /** By project: the number of the last change seen. */
  seen: z.record(z.string(), z.number()),
});

export type Recent = Readonly<z.infer<typeof recentSchema>>;
export type PastValue = Recent['past'][string][number];

export const NOTHING_RECENT: Recent = { past: {}, seen: {} };

/** Throws Outage. */
export async function recentOf(kept: KeyValueStore, via: string): Promise<Recent> {
  const read = recentSchema.safeParse(await kept.get(key(via)));
  return read.success ? read.data : NOTHING_RECENT;
}

export function keepRecent(kept: KeyValueStore, via: string, recent: Recent): Promise<void> {
  return kept.set(key(via), recent, KEPT_FOR);
}

export async function forgetRecent(kept: KeyValueStore, via: string): Promise<void> {
  await kept.delete(key(via));
}

export function withAnswered(recent: Recent, optionTexts: ReadonlyMap<string, string>, at: number): Recent {
  const past = new Map(Object.entries(recent.past));
  for (const [option, text] of optionTexts) {
    if (text === '' || text.length > LONGEST_VALUE || isExamplePlank(text)) continue;
    const before = past.get(option) ?? [];
    const times = (before.find((one) => one.text === text)?.times ?? 0) + 1;
    const others = before.filter((one) => one.text !== text);
    past.delete(option);
    past.set(option, [{ text, times, at }, ...others].slice(0, MOST_VALUES));
  }
  return { ...recent, past: Object.fromEntries([...past].slice(-MOST_OPTIONS)) };
}

function key(via: string): string {
  return `recent:${via}`;
}
