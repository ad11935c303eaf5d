/** What runs in a worker thread: a drawing made into a PNG. */

import { Resvg } from '@resvg/resvg-js';
import type { Drawing } from '../reply/drawing.ts';
import { toSvg } from './svg.ts';

/** A drawing and the width of its picture in pixels. */
export interface PictureTask {
  readonly drawing: Drawing;
  readonly width: number;
}

/** The PNG. Letters are outlines, so that no font is looked for. */
export function rasterise({ drawing, width }: PictureTask): Uint8Array {
  const svg = toSvg(drawing, { outlined: true });
  const options = { fitTo: { mode: 'width', value: width }, font: { loadSystemFonts: false } } as const;
  return new Resvg(svg, options).render().asPng();
}
