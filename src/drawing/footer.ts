/** Below a figure: the scale, what each surface means, and notes. */

import { type Saying, sayLength } from '../input/format.ts';
import { SHEET_WIDTH, type Shape, type ShapeRole } from '../reply/drawing.ts';
import { feet, inches, type Length, millimetres, ticks } from '../units/length.ts';
import { MARGIN } from './fit.ts';
import { baseline, SMALL, wrapped, write } from './text.ts';

const LINE = 12;
const SWATCH = { width: 16, height: 9 } as const;

/** Shapes from y = 0 down, and how far they reach. */
export interface Part {
  readonly shapes: readonly Shape[];
  readonly height: number;
}

/** An entry of the legend. */
export interface Meaning {
  readonly role: ShapeRole;
  readonly text: string;
}

/** A bar of a round length, as long as reads well. */
export function scaleBar(scale: number, saying: Saying): Part {
  const length = roundLength(scale, saying);
  const width = length * scale;
  const x = MARGIN;
  const y = 6;
  const bar: Shape = {
    kind: 'lines',
    role: 'scale-bar',
    lines: [
      [
        [x, y],
        [x + width, y],
      ],
      [
        [x, y - 3],
        [x, y + 3],
      ],
      [
        [x + width, y - 3],
        [x + width, y + 3],
      ],
    ],
  };
  return { shapes: [bar, write('scale-label', sayLength(length, saying), x + width + 5, baseline(y))], height: 16 };
}

/** The longest of the round lengths that stays within a third of the sheet. */
function roundLength(scale: number, saying: Saying): Length {
  const round =
    saying.units === 'metric'
      ? [50_000, 20_000, 10_000, 5000, 2000, 1000, 500, 200, 100].map(millimetres)
      : [...[100, 50, 20, 10, 5, 2, 1].map(feet), inches(6), inches(3)];
  return round.find((length) => length * scale <= SHEET_WIDTH / 3) ?? ticks(round.at(-1) ?? 0);
}

/** Each meaning beside its swatch. */
export function legend(meanings: readonly Meaning[]): Part {
  const shapes: Shape[] = [];
  let y = 0;
  const left = MARGIN + SWATCH.width + 6;
  for (const { role, text } of meanings) {
    const lines = wrapped(text, SMALL, false, SHEET_WIDTH - MARGIN - left);
    const swatch = { kind: 'rect', x: MARGIN, y: y + 1.5, ...SWATCH } as const;
    if (role === 'page-edge' || role === 'transition') {
      const middle = y + 6;
      shapes.push({
        kind: 'line',
        role,
        points: [
          [MARGIN, middle],
          [MARGIN + SWATCH.width, middle],
        ],
      });
    } else shapes.push({ ...swatch, role }, { ...swatch, role: 'swatch' });
    lines.forEach((line, i) => {
      shapes.push(write('legend', line, left, baseline(y + 6 + i * LINE)));
    });
    y += lines.length * LINE + 1;
  }
  return { shapes, height: y + 3 };
}

/** Sentences, one under the other. */
export function notes(sentences: readonly string[]): Part {
  const lines = sentences.flatMap((sentence) => wrapped(sentence, SMALL, false, SHEET_WIDTH - 2 * MARGIN));
  const shapes = lines.map((line, i) => write('note', line, MARGIN, baseline(6 + i * LINE)));
  return { shapes, height: lines.length * LINE + 2 };
}
