/** Which of two ways to run the rows is the better, and why: a floor laid as it is, and turned by a quarter. */

import { largestOf } from './direction.ts';
import type { BrokenRule, Plan } from './floor.ts';
import { angleBySide } from './frame.ts';
import type { Area } from './sliced.ts';

/** A floor laid one way. `cartons` are what must be bought for it. */
export interface Way {
  readonly plan: Plan;
  readonly cartons: number;
}

/** In what a way is better than the other: no strip too narrow, other rules kept, fewer planks, along the longest walls, fewer rows. */
export type WayReason =
  | { readonly kind: 'strip' | 'rules' | 'wall' }
  | { readonly kind: 'planks' | 'rows'; readonly fewer: number };

/** `turned` is whether the rows had better run the other way; `reasons` is all that speaks for the better way. */
export interface WayChoice {
  readonly turned: boolean;
  readonly reasons: readonly WayReason[];
}

/** The same regions with their rows turned by a quarter. */
export function quarterTurned(areas: readonly Area[]): readonly Area[] {
  return areas.map(({ region, angle }) => ({ region, angle: (angle + 90) % 360 }));
}

/**
 * A way that breaks fewer rules is better, looks aside, then one that takes a carton less, then rows along the longer side of the
 * largest region, as the eye follows them (common practice), then fewer rows. Planks within one carton decide nothing.
 * Throws a RangeError without regions.
 */
export function betterWay(here: Way, turned: Way): WayChoice {
  const [one, two] = [judged(here), judged(turned)];
  const i = one.order.findIndex((value, k) => value !== two.order[k]);
  const turn = i >= 0 && (two.order[i] ?? 0) < (one.order[i] ?? 0);
  const [better, other] = turn ? [two, one] : [one, two];
  const reasons: WayReason[] = [];
  if (better.strips < other.strips) reasons.push({ kind: 'strip' });
  if (better.rules < other.rules) reasons.push({ kind: 'rules' });
  if (better.planks < other.planks) reasons.push({ kind: 'planks', fewer: other.planks - better.planks });
  if (better.across < other.across) reasons.push({ kind: 'wall' });
  if (better.rows < other.rows) reasons.push({ kind: 'rows', fewer: other.rows - better.rows });
  return { turned: turn, reasons };
}

function judged({ plan, cartons }: Way) {
  const { regions, planks, broken } = plan;
  const count = (holds: (rule: BrokenRule['rule']) => boolean): number =>
    broken.filter(({ rule }) => holds(rule)).length;
  const strips = count((rule) => rule === 'minRip');
  const rules = count((rule) => rule !== 'minRip' && rule !== 'pattern');
  const largest = largestOf(regions);
  const angle = regions.find((region) => region === largest)?.frame.angle ?? 0;
  const across = angle % 180 === angleBySide(largest.outline, 'long') ? 0 : 1;
  const rows = regions.reduce((sum, region) => sum + region.rows.length, 0);
  return { strips, rules, planks, across, rows, order: [strips + rules, cartons, across, rows] };
}
