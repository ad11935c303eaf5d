/** Blocking under the edges of a patch that run between joists. */

import { type Length, ticks } from '../units/length.ts';
import type { Joists, PatchCut, Rect } from './patch-cut.ts';

/** A length cut so many times; ticks. */
export interface BlockingCut {
  readonly length: Length;
  readonly count: number;
}

/** Blocks in their places: each fills a bay between two joists, its middle under an edge as far as the hole's walls allow. */
export function blockPlaces(cut: PatchCut, joists: Joists, edges: readonly number[], depth: Length): readonly Rect[] {
  const half = Math.floor(depth / 2);
  return [cut.v0, ...edges, cut.v1].flatMap((v) =>
    cut.joists.slice(0, -1).map((line, bay) => {
      const next = cut.joists[bay + 1] ?? cut.u1;
      const [u0, u1] = [line + Math.floor(joists.width / 2), next - Math.ceil(joists.width / 2)];
      const v0 = Math.max(0, v - half);
      return { u0, u1, v0, v1: v0 + depth };
    }),
  );
}

/** The blocks by length, the longest first. */
export function blockingCuts(places: readonly Rect[]): readonly BlockingCut[] {
  const counts = new Map<number, number>();
  for (const { u0, u1 } of places) counts.set(u1 - u0, (counts.get(u1 - u0) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => b - a).map(([length, count]) => ({ length: ticks(length), count }));
}
