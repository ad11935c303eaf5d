/** What a room's legend explains: only what is on its sheet. */

import { sayLength } from '../input/format.ts';
import type { Row } from '../layout/floor.ts';
import type { ShapeRole } from '../reply/drawing.ts';
import { DRAWING } from '../text/drawing-text.ts';
import { roleOf } from './floor-shapes.ts';
import type { Meaning } from './footer.ts';
import type { Labelled } from './row-label.ts';

/** Whether the starting wall, a gap drawn wider than it is, and a page's edge are on the sheet. */
export interface OnSheet {
  readonly start: boolean;
  readonly widened: boolean;
  readonly cut: boolean;
  /** A doorway in which the floor stops. */
  readonly transition: boolean;
}

export function meanings(
  rows: readonly Row[],
  { plan, sources, saying }: Labelled,
  shown: OnSheet,
): readonly Meaning[] {
  const roles = new Set(rows.flatMap((row) => row.pieces.map((piece) => roleOf(piece, sources))));
  const cut = (['start', 'end', 'any'] as const).find((role) => roles.has(role));
  const { legend: words } = DRAWING;
  const entry = (role: ShapeRole, text: string, there = true): readonly Meaning[] => (there ? [{ role, text }] : []);
  return [
    ...entry('plank-whole', words.whole, roles.has('plank-whole')),
    ...entry(cut ?? 'start', words.new, cut !== undefined),
    ...entry('offcut-kept', words.kept, roles.has('offcut-kept')),
    ...entry('offcut-reused', words.reused, roles.has('offcut-reused')),
    ...entry('wall-start', words.start, shown.start),
    ...entry('gap', words.gap(sayLength(plan.rules.gap, saying), shown.widened), plan.rules.gap > 0),
    ...entry('transition', words.transition, shown.transition),
    ...entry('page-edge', words.edge, shown.cut),
  ];
}
