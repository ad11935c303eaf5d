/** What each surface and line of a patch's picture means. */

import type { Shape } from '../reply/drawing.ts';
import { PATCH_DRAWING } from '../text/drawing-text.ts';
import { MARGIN } from './fit.ts';
import { legend, type Part } from './footer.ts';
import { cross } from './patch-screw.ts';
import { baseline, write } from './text.ts';

const LINE = 13;
/** Width of the swatches of the legend that stands above, and where its texts begin. */
const SWATCH = 16;
const TEXT = MARGIN + SWATCH + 6;

/** The legend: surfaces with their swatch, then the saw cut and the screw as they are drawn. */
export function patchLegend(): Part {
  const words = PATCH_DRAWING.legend;
  const surfaces = legend([
    { role: 'wall', text: words.joist },
    { role: 'offcut-reused', text: words.blocking },
    { role: 'offcut-kept', text: words.damage },
    { role: 'start', text: words.panel },
    { role: 'plank-whole', text: words.kept },
  ]);
  const first = surfaces.height + 3;
  const middle = MARGIN + SWATCH / 2;
  const marks: readonly Shape[] = [
    {
      kind: 'line',
      role: 'direction',
      points: [
        [MARGIN, first],
        [MARGIN + SWATCH, first],
      ],
    },
    write('legend', words.cut, TEXT, baseline(first)),
    { kind: 'lines', role: 'scale-bar', lines: cross([middle, first + LINE]) },
    write('legend', words.screw, TEXT, baseline(first + LINE)),
  ];
  return { shapes: [...surfaces.shapes, ...marks], height: first + 2 * LINE };
}
