/** A bound on the planks read off prices of offcuts, in whole numbers: whoever found the prices need not be trusted. */

import type { FlowArc } from './flow-arc.ts';
import type { FlowTable } from './flow-table.ts';

/** Prices are cut to this part of a plank: what is lost only weakens the bound. */
const SCALE = 1_000_000;

/**
 * No layout takes fewer planks than ⌈whole + Σ rows · min over places (cost + price of what it needs − price of what it gives)
 * + the same for short pieces⌉, for any prices by length that never fall as offcuts grow, from 0 to one plank (weak duality of
 * linear programs). `worth` are prices near the best ones, by units of length. An arc may have a price too: every row in it pays,
 * and what as many rows as it allows would pay comes off.
 */
export function flowBound(
  { nodes, blocks, shorts, whole }: FlowTable,
  worth: readonly number[],
  arcs: readonly (FlowArc & { readonly price: number })[] = [],
): number {
  const price: number[] = [];
  let least = 0;
  for (let node = 0; node <= nodes; node++) {
    least = Math.min(SCALE, Math.max(least, Math.floor((worth[node] ?? 0) * SCALE)));
    price.push(least);
  }
  const at = (node: number): number => (node < 0 ? 0 : (price[Math.min(node, nodes)] ?? 0));
  let total = whole * SCALE;
  const tolls = blocks.map(({ options }) => options.map(() => 0));
  for (const { block, first, last, most, price: toll } of arcs) {
    const paid = Math.max(0, Math.floor(toll * SCALE));
    const own = tolls[block] ?? [];
    for (let i = first; i <= last; i++) own[i] = (own[i] ?? 0) + paid;
    total -= most * paid;
  }
  blocks.forEach(({ runs, options }, b) => {
    const costs = options.map(({ need, give, cost }, i) => cost * SCALE + at(need) - at(give) + (tolls[b]?.[i] ?? 0));
    total += runs.length * Math.min(...costs);
  });
  for (const { count, least: from, size } of shorts) {
    let cheapest = SCALE;
    for (let node = from; node <= nodes; node++)
      cheapest = Math.min(cheapest, at(node) - (node >= size ? at(node - size) : 0));
    total += count * cheapest;
  }
  return Math.ceil(total / SCALE);
}
