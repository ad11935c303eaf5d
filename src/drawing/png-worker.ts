/** Worker thread entry: turns a drawing into a PNG. */

import { Resvg } from '@resvg/resvg-js';
import type { Drawing } from '../reply/drawing.ts';
import { toSvg } from './svg.ts';

export interface PictureTask {
  readonly drawing: Drawing;
  readonly width: number;
}

/** The PNG. Text is drawn as outlines, so no font is needed. */
export function rasterise({ drawing, width }: PictureTask): Uint8Array {
  const svg = toSvg(drawing, { outlined: true });
  const options = { fitTo: { mode: 'width', value: width }, font: { loadSystemFonts: false } } as const;
  return new Resvg(svg, options).render().asPng();
}
