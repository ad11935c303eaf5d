/** Where the fasteners of a panel go: close along its supported ends and edges, wider on the joists between. */

import type { Point } from '../units/geometry.ts';
import { type Length, roundUpRatio, ticks } from '../units/length.ts';
import type { Panel } from './patch-panel.ts';

export interface FastenerRule {
  /** Most ticks apart along supported ends and edges. */
  readonly edge: Length;
  /** Most ticks apart on joists between. */
  readonly field: Length;
}

/** How many fasteners stand on a line of a length, one at each end and none more than `apart` from the next: ⌈length/apart⌉ + 1. */
export function fastenersOn(length: number, apart: Length): number {
  return roundUpRatio(BigInt(length), BigInt(apart)) + 1;
}

/**
 * The fasteners of one panel as points (u, v) in ticks: both ends and every joist between along v, and, where the long edges
 * are blocked, between the joists along u (6 in and 12 in: Modern Carpentry, 2016, p. 258). Those at a panel's rim stand
 * `inset` inside it.
 */
export function fastenerPlaces(
  panel: Panel,
  rule: FastenerRule,
  blocked: boolean,
  inset: Length = ticks(0),
): readonly Point[] {
  const [u0, u1] = [panel.u0 + inset, panel.u1 - inset];
  const [v0, v1] = [panel.v0 + inset, panel.v1 - inset];
  const lines = panel.joists.map((line, i) => (i === 0 ? u0 : i === panel.joists.length - 1 ? u1 : line));
  const onJoists = lines.flatMap((u, i) => {
    const end = i === 0 || i === lines.length - 1;
    return along(v0, v1, fastenersOn(panel.v1 - panel.v0, end ? rule.edge : rule.field)).map((v): Point => [u, v]);
  });
  if (!blocked) return onJoists;
  const onBlocks = panel.joists.slice(0, -1).flatMap((line, bay) => {
    const next = panel.joists[bay + 1] ?? line;
    const [from, to] = [lines[bay] ?? line, lines[bay + 1] ?? next];
    const between = along(from, to, fastenersOn(next - line, rule.edge)).slice(1, -1);
    return [v0, v1].flatMap((v) => between.map((u): Point => [u, v]));
  });
  return [...onJoists, ...onBlocks];
}

/** `count` places from one end to the other, evenly, each rounded to a tick. */
function along(from: number, to: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => Math.round(from + ((to - from) * i) / (count - 1)));
}
