/** A patch as result data. */

import { cornersOf, type Patch } from '../../../src/prep/subfloor-patch.ts';
import type { Result } from '../../../src/reply/reply.ts';
import type { PatchAsk } from './patch-ask.ts';
import { tubesOf } from './patch-facts.ts';

/** Result data of kind `patch`: room coordinates and lengths in ticks; a panel's `length` lies across the joists. */
export interface PatchResult extends Result {
  readonly kind: 'patch';
  readonly cut: readonly (readonly [number, number])[];
  readonly joists: readonly number[];
  readonly blocking: readonly { readonly length: number; readonly count: number }[];
  readonly panels: readonly { readonly width: number; readonly length: number }[];
  readonly sheets: number;
  readonly fasteners: number;
  readonly adhesiveTubes: number;
}

/** The patch as plain numbers that outside checkers read. */
export function patchResult(patch: Patch, ask: PatchAsk): PatchResult {
  return {
    kind: 'patch',
    cut: cornersOf(patch.cut, ask.joists),
    joists: patch.cut.joists,
    blocking: patch.blocking,
    panels: patch.panels.map(({ u0, u1, v0, v1 }) => ({ width: v1 - v0, length: u1 - u0 })),
    sheets: patch.sheets.length,
    fasteners: patch.fasteners.length,
    adhesiveTubes: tubesOf(patch, ask),
  };
}
