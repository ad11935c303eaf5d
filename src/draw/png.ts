/** A drawing as a PNG of a given width, drawn in bands side by side and packed off the event loop. */

import { buffer } from 'node:stream/consumers';
import { crc32, createDeflate, type Deflate } from 'node:zlib';
import { type RenderedImage, renderAsync } from '@resvg/resvg-js';
import type { Drawing } from '../reply/drawing.ts';
import { toSvg } from './svg.ts';

/** Width of a picture in pixels when none is asked for: two and a half for each unit of the sheet, sharp on a phone. */
export const PNG_WIDTH = 900;

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const BYTES_A_PIXEL = 4;
/** Pixels down a band: what is taken over from the renderer at once holds the event loop for a few milliseconds only. */
const BAND = 640;
/** zlib's level: flat colours pack nearly as small as at the highest, in a third of the time. */
const LEVEL = 4;
/** Bytes that zlib hands over at a time: each hand-over waits for its turn. */
const CHUNK = 256 * 1024;

/**
 * The picture `width` pixels wide. Letters are outlines, so that no font is looked for. Eight bits a channel with alpha
 * (ISO/IEC 15948); packed here, since the renderer's own packing holds the event loop.
 */
export async function toPng(drawing: Drawing, width = PNG_WIDTH): Promise<Buffer> {
  const height = Math.round((drawing.height * width) / drawing.width);
  const svg = toSvg(drawing, { outlined: true });
  const bands = Array.from({ length: Math.ceil(height / BAND) }, (_, i) => {
    const top = i * BAND;
    return renderAsync(cutOut(svg, drawing.width / width, { width, top, height: Math.min(BAND, height - top) }), {
      font: { loadSystemFonts: false },
    });
  });
  const deflate = createDeflate({ level: LEVEL, chunkSize: CHUNK });
  const [data] = await Promise.all([buffer(deflate), feed(deflate, bands, width * BYTES_A_PIXEL)]);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 6, 0, 0, 0], 8);
  return Buffer.concat([SIGNATURE, chunk('IHDR', header), chunk('IDAT', data), chunk('IEND', Buffer.alloc(0))]);
}

/** The same SVG showing a band of pixels alone, `unit` sheet units a pixel. */
function cutOut(svg: string, unit: number, { width, top, height }: Record<'width' | 'top' | 'height', number>): string {
  const view = [0, top * unit, width * unit, height * unit].join(' ');
  return svg.replace(
    /^<svg (xmlns="[^"]*") [^>]*>/,
    `<svg $1 width="${width}" height="${height}" viewBox="${view}" preserveAspectRatio="none">`,
  );
}

/** Feeds rows of `line` bytes, each behind the number of its filter: 0, none. */
async function feed(deflate: Deflate, bands: readonly Promise<RenderedImage>[], line: number): Promise<void> {
  for (const image of await Promise.all(bands)) {
    const { height, pixels } = image;
    const rows = Buffer.alloc((line + 1) * height);
    for (let y = 0; y < height; y++) pixels.copy(rows, y * (line + 1) + 1, y * line, (y + 1) * line);
    await new Promise<void>((resolve, reject) => {
      deflate.write(rows, (fault) => (fault ? reject(fault) : resolve()));
    });
  }
  deflate.end();
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const whole = Buffer.alloc(body.length + 8);
  whole.writeUInt32BE(data.length, 0);
  body.copy(whole, 4);
  whole.writeUInt32BE(crc32(body), body.length + 4);
  return whole;
}
