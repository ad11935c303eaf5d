/** A drawing on a page: as large as it goes, and whole. */

import type { Drawing } from '../reply/drawing.ts';
import type { Flow } from './flow.ts';
import { type Tag, tagOf } from './page.ts';

/** Points for each unit of a drawing: its texts come out at eleven points. */
const LARGEST = 1.25;
/** How much smaller than it could be a drawing may be, to stay on the page it comes up on. */
const SHRINK = 0.8;

/** In the middle of the page's width; on a new page where this one would make it small. */
export function picture(flow: Flow, drawing: Drawing, section: Tag): void {
  const { width, height, title, alt } = drawing;
  flow.gap(8);
  const best = Math.min(LARGEST, flow.width / width, flow.full / height);
  const here = Math.min(best, flow.rest / height);
  if (here < best * SHRINK) flow.turn();
  const scale = Math.min(best, flow.rest / height);
  const x = flow.left + (flow.width - width * scale) / 2;
  const figure = tagOf('Figure', section, [title, alt].filter((text) => text !== '').join(': '));
  flow.ink(figure, { kind: 'drawing', x, y: flow.y, scale, drawing });
  flow.y += height * scale;
}
