/** A bound on the planks read off prices of offcuts, in whole numbers: whoever found the prices need not be trusted. */

import type { FlowArc } from './flow-arc.ts';
import type { FlowTable } from './flow-table.ts';
import type { Lane } from './rip-share.ts';

/** Prices are cut to this part of a plank: what is lost only weakens the bound. */
const SCALE = 1_000_000;

/** What an offcut of r units is worth, by r: the half along its near edge, and the half along its far edge. */
export interface Worth {
  readonly near: readonly number[];
  readonly far: readonly number[];
}

/**
 * No layout takes fewer planks than ⌈whole + Σ rows · min over places (cost + price of what it needs − price of what it gives)
 * + the same for short pieces⌉, for any prices by length that never fall as offcuts grow, from 0 to one plank (weak duality of
 * linear programs). An offcut's price has two parts, one for each long edge, that come to a plank at most: a ripped row which
 * keeps one edge pays and earns that part only, for a row that keeps the other may lie beside it. `worth` are prices near the
 * best ones, by units of length. An arc may have a price too: every row in it pays, and what as many rows as it allows would pay
 * comes off.
 */
export function flowBound(
  { nodes, blocks, shorts, wholes }: FlowTable,
  worth: Worth,
  arcs: readonly (FlowArc & { readonly price: number })[] = [],
): number {
  const near = rising(worth.near, nodes, SCALE);
  const far = rising(worth.far, nodes, SCALE - (near[nodes] ?? 0));
  const both = near.map((price, node) => price + (far[node] ?? 0));
  const none = near.map(() => 0);
  const priceIn: Record<Lane, readonly number[]> = { full: both, near, far, none };
  // A whole plank costs one; a strip as long as a plank costs its part of one.
  const plankIn = (lane: Lane): number => (lane === 'full' ? SCALE : (priceIn[lane][nodes] ?? 0));
  const at = (lane: Lane, node: number): number => (node < 0 ? 0 : (priceIn[lane][Math.min(node, nodes)] ?? 0));
  let total = wholes.reduce((sum, { lane, count }) => sum + count * plankIn(lane), 0);
  const tolls = blocks.map(({ options }) => options.map(() => 0));
  for (const { blocks: over, options, most, price: toll } of arcs) {
    const paid = Math.max(0, Math.floor(toll * SCALE));
    for (const block of over) {
      const own = tolls[block] ?? [];
      for (const i of options) own[i] = (own[i] ?? 0) + paid;
    }
    total -= most * paid;
  }
  blocks.forEach(({ runs, lane, options }, b) => {
    const costs = options.map(
      ({ need, give, cost }, i) => cost * plankIn(lane) + at(lane, need) - at(lane, give) + (tolls[b]?.[i] ?? 0),
    );
    total += runs.length * Math.min(...costs);
  });
  for (const { lane, count, least: from, size } of shorts) {
    let cheapest = plankIn(lane);
    for (let node = from; node <= nodes; node++)
      cheapest = Math.min(cheapest, at(lane, node) - (node >= size ? at(lane, node - size) : 0));
    total += count * cheapest;
  }
  return Math.ceil(total / SCALE);
}

function rising(worth: readonly number[], nodes: number, most: number): readonly number[] {
  let least = 0;
  return Array.from({ length: nodes + 1 }, (_, node) => {
    least = Math.min(most, Math.max(least, Math.floor((worth[node] ?? 0) * SCALE)));
    return least;
  });
}
