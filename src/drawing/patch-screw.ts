/** A screw on the picture of a patch. */

import type { Place } from '../reply/drawing.ts';

const HALF = 1.8;

/** A screw's head from above: a cross. */
export function cross([x, y]: Place): readonly (readonly [Place, Place])[] {
  return [
    [
      [x - HALF, y - HALF],
      [x + HALF, y + HALF],
    ],
    [
      [x - HALF, y + HALF],
      [x + HALF, y - HALF],
    ],
  ];
}
