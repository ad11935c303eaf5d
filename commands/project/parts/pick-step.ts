/** Picks set and cleared: the picks after it and what changed in words, or why it cannot be done. */

import type { Project } from '../../../src/project/project.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { pickUnknown, tooManyPicks } from '../../../src/text/project-problems-text.ts';
import { CHANGED } from '../../../src/text/project-text.ts';
import type { PicksSaid } from './pick-said.ts';

export type PickStep =
  | { readonly picks: Project['picks']; readonly said: readonly string[] }
  | { readonly problem: Problem };

/** Sets and clears picks. Pure. */
export function pickStep(before: Project['picks'], { set, clear }: Pick<PicksSaid, 'set' | 'clear'>): PickStep {
  const picks = new Map(Object.entries(before));
  const said: string[] = [];
  for (const name of clear) {
    const key = [name, name.replaceAll(' ', '-')].find((one) => picks.has(one));
    if (key === undefined) return { problem: pickUnknown(name, undefined, [...picks.keys()]) };
    picks.delete(key);
    said.push(CHANGED.pickGone(key));
  }
  for (const [key, text] of set) {
    const old = picks.get(key);
    if (old === text) continue;
    if (old === undefined && picks.size >= LIMITS.picks) return { problem: tooManyPicks(key, LIMITS.picks) };
    picks.set(key, text);
    said.push(old === undefined ? CHANGED.pick(key, text) : CHANGED.pickChanged(key, old, text));
  }
  return { picks: Object.fromEntries(picks), said };
}
