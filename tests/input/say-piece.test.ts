/** How cut pieces are told to whoever saws them: by their sides, the corner cut off, or all their corners, without nicks no tape shows. */

import { describe, expect, it } from 'vitest';
import { sayPieceMarked } from '../../src/input/format-piece.ts';
import { inUnits } from '../../src/text/answer-text.ts';
import type { Outline } from '../../src/units/geometry.ts';
import { ticks } from '../../src/units/length.ts';

const IN = 8128;
const ROW = { v: 0, height: 3 * IN };
const ALONE = { near: 'edge toward you', far: 'edge away' };

function said(length: number, corners: readonly (readonly [number, number])[]): string {
  const shape: Outline = corners.map(([x, y]) => [Math.round(x * IN), Math.round(y * IN)] as const);
  const piece = { u: 0, length: ticks(Math.round(length * IN)), part: 'any', edge: 'full', shape: [shape] } as const;
  return inUnits(sayPieceMarked(piece, ROW, { units: 'imperial', decimal: '.' }, ALONE), 'imperial');
}

describe('a piece', () => {
  it.each<[string, number, readonly (readonly [number, number])[], string]>([
    [
      'with a nick of a 64th is a board',
      15,
      [
        [0, 0],
        [15, 0],
        [15, 3 - 1 / 64],
        [15 - 1 / 64, 3],
        [0, 3],
      ],
      '15", less than 1/16" off a corner',
    ],
    [
      'mitred at one end, a corner a tick off, has two sides',
      6,
      [
        [0, 0],
        [6, 0],
        [3, 3],
        [0.0001, 3],
      ],
      '6" long side (edge toward you), 3" short side, 45°',
    ],
    [
      'that a cut leaves no short side is a triangle of one',
      3,
      [
        [0, 0],
        [3, 0],
        [3, 3 - 1 / 64],
      ],
      '3" long side (edge toward you), 0 short side, 45°',
    ],
    [
      'that loses a corner tells which, and how much',
      15,
      [
        [0, 0],
        [14, 0],
        [15, 2],
        [15, 3],
        [0, 3],
      ],
      '15", the corner at its right end, edge toward you, cut off: 1" along, 2" across',
    ],
    [
      'ripped from end to end tells its width and the edge it keeps',
      12,
      [
        [0, 1],
        [12, 1],
        [12, 3],
        [0, 3],
      ],
      '12", ripped to 2" (kept: edge away)',
    ],
    [
      'that keeps few corners of its own tells all',
      2,
      [
        [0, 0],
        [2, 0],
        [2, 2],
      ],
      '2", cut to a shape with corners at 0 × 0, 2" × 0, 2" × 2"',
    ],
    [
      'with a notch tells the notch',
      10,
      [
        [0, 0],
        [10, 0],
        [10, 3],
        [6, 3],
        [6, 1],
        [4, 1],
        [4, 3],
        [0, 3],
      ],
      '10", cut to a shape with corners at 6" × 3", 6" × 1", 4" × 1", 4" × 3"',
    ],
  ])('%s', (_name, length, corners, words) => {
    expect(said(length, corners)).toBe(words);
  });
});
