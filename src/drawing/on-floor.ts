/** What lies on a floor, whatever the pattern: surfaces and the lines between them. */

import type { ShapeRole } from '../reply/drawing.ts';
import type { Outline, Point } from '../units/geometry.ts';

/** What lies on the floor, in its laying frame: surfaces with their roles, and the lines between them. */
export interface OnFloor {
  readonly pieces: readonly { readonly role: ShapeRole; readonly rings: readonly Outline[] }[];
  readonly lines: readonly (readonly [Point, Point])[];
}
