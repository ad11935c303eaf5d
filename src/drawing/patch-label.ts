/** What is written beside a patch: each joist's number and place, and the sides of the cut. */

import { type Saying, sayCut } from '../input/format.ts';
import { type Rect, toRoom } from '../prep/subfloor-patch.ts';
import type { Place, Shape } from '../reply/drawing.ts';
import { ticks } from '../units/length.ts';
import { baseline, SMALL, write } from './text.ts';

/** Where the floor is seen on the figure: sheet units a tick, and the figure's place of a room point. */
export interface Ground {
  readonly scale: number;
  readonly at: (x: number, y: number) => Place;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** From a text's middle line to its baseline. */
const RISE = SMALL * 0.365;

/** Numbers and places of joists: above those that run up, turned so that they find room; beside those that run across. */
export function joistLabels(
  names: readonly string[],
  joists: readonly number[],
  run: 'up' | 'across',
  ground: Ground,
): readonly Shape[] {
  return joists.map((line, i) => {
    const [x, y] = ground.at(...toRoom([line, 0], run));
    const name = names[i] ?? '';
    return run === 'up'
      ? write('cut', name, x + RISE, ground.top - 3, { turn: -90 })
      : write('cut', name, ground.right + 3, baseline(y));
  });
}

/** The cut's sides: across below the figure, up to the left of it. */
export function dimensions(cut: Rect, run: 'up' | 'across', ground: Ground, saying: Saying): readonly Shape[] {
  const [x0, y0] = toRoom([cut.u0, cut.v0], run);
  const [x1, y1] = toRoom([cut.u1, cut.v1], run);
  const [left, low] = ground.at(x0, y0);
  const [right, high] = ground.at(x1, y1);
  const below = ground.bottom + 3;
  const beside = ground.left - 3;
  const lines: Shape = {
    kind: 'lines',
    role: 'leader',
    lines: [
      [
        [left, below],
        [right, below],
      ],
      [
        [left, below - 2],
        [left, below + 2],
      ],
      [
        [right, below - 2],
        [right, below + 2],
      ],
      [
        [beside, low],
        [beside, high],
      ],
      [
        [beside - 2, low],
        [beside + 2, low],
      ],
      [
        [beside - 2, high],
        [beside + 2, high],
      ],
    ],
  };
  const middle = { anchor: 'middle' } as const;
  return [
    lines,
    write('cut', sayCut(ticks(x1 - x0), saying), (left + right) / 2, baseline(below + 8), middle),
    write('cut', sayCut(ticks(y1 - y0), saying), beside - 7 + RISE, (low + high) / 2, { ...middle, turn: -90 }),
  ];
}
