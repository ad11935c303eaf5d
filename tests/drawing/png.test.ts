/** PNG files: the asked width, the pixels that the renderer drew, and each text on the ground its contrast was computed for. */

import { crc32, inflateSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import { afterAll, describe, expect, it } from 'vitest';
import { closePictures, PNG_WIDTH, toPng } from '../../src/drawing/png.ts';
import { LETTERING, toSvg } from '../../src/drawing/svg.ts';
import { FONT_FAMILY, FONT_FILES } from '../../src/drawing/text.ts';
import type { Drawing } from '../../src/reply/drawing.ts';
import { region } from '../outside/laid.ts';
import { drawPlan } from './drawn.ts';
import { box, IMPERIAL, METRIC, planOf, ROOMS } from './drawn-rooms.ts';
import { inkBox, textsOf } from './read-drawing.ts';

function drawn(name: keyof typeof ROOMS, angle: 0 | 90 = 0): Drawing {
  const [drawing] = drawPlan(planOf(ROOMS[name], angle), IMPERIAL);
  if (!drawing) throw new Error('no drawing');
  return drawing;
}

interface Picture {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, alpha of each pixel, row by row. */
  readonly pixels: Buffer;
}

/** Reads a PNG (ISO/IEC 15948) of eight-bit RGBA rows; throws at a wrong signature or checksum. */
function readPng(png: Buffer): Picture {
  expect(png.subarray(0, 8)).toEqual(Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]));
  const chunks = new Map<string, Buffer[]>();
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const body = png.subarray(at + 4, at + 8 + length);
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(body));
    const name = body.toString('latin1', 0, 4);
    chunks.set(name, [...(chunks.get(name) ?? []), body.subarray(4)]);
    at += 12 + length;
  }
  const header = chunks.get('IHDR')?.[0] ?? Buffer.alloc(13);
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  expect([...header.subarray(8)]).toEqual([8, 6, 0, 0, 0]);
  const raw = inflateSync(Buffer.concat(chunks.get('IDAT') ?? []));
  expect(raw.length).toBe((4 * width + 1) * height);
  return { width, height, pixels: unfiltered(raw, 4 * width) };
}

/** Rows of `line` bytes with their filters (ISO/IEC 15948, clause 9) undone. */
function unfiltered(raw: Buffer, line: number): Buffer {
  const pixels = Buffer.alloc((raw.length / (line + 1)) * line);
  for (let y = 0; y * (line + 1) < raw.length; y++) {
    const filter = raw[y * (line + 1)];
    for (let x = 0; x < line; x++) {
      const left = x < 4 ? 0 : (pixels[y * line + x - 4] ?? 0);
      const up = y === 0 ? 0 : (pixels[(y - 1) * line + x] ?? 0);
      const corner = x < 4 || y === 0 ? 0 : (pixels[(y - 1) * line + x - 4] ?? 0);
      const guess = [0, left, up, Math.floor((left + up) / 2), paeth(left, up, corner)][filter ?? 5];
      if (guess === undefined) throw new RangeError(`no filter ${filter}`);
      pixels[y * line + x] = ((raw[y * (line + 1) + 1 + x] ?? 0) + guess) & 255;
    }
  }
  return pixels;
}

function paeth(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}

afterAll(closePictures);

describe('a PNG', () => {
  it.each([360, 777, PNG_WIDTH])('is %i pixels wide and in proportion', async (width) => {
    const drawing = drawn('closet');
    const picture = readPng(await toPng(drawing, width));
    expect(picture.width).toBe(width);
    expect(Math.abs(picture.height - (drawing.height * width) / drawing.width)).toBeLessThanOrEqual(1);
  });

  it('holds the pixels that the renderer drew', async () => {
    const drawing = drawn('bay');
    const own = new Resvg(toSvg(drawing, { outlined: true }), { fitTo: { mode: 'width', value: 1080 } }).render()
      .pixels;
    const { pixels } = readPng(await toPng(drawing, 1080));
    expect(pixels.equals(own)).toBe(true);
  });

  it('has letters where the renderer sets the same text in the same font', () => {
    const regions = [region('Über Ångström, jqy & fi', box(4, 6))];
    const [drawing] = drawPlan(planOf(regions), METRIC);
    if (!drawing) throw new Error('no drawing');
    const font = {
      loadSystemFonts: false,
      fontFiles: [FONT_FILES.regular, FONT_FILES.bold],
      defaultFontFamily: FONT_FAMILY,
    };
    const [set, outlined] = [false, true].map(
      (way) =>
        new Resvg(toSvg(drawing, { outlined: way }), { font, fitTo: { mode: 'width', value: 1200 } }).render().pixels,
    );
    const bare = new Resvg(toSvg({ ...drawing, shapes: drawing.shapes.filter(({ kind }) => kind !== 'text') }), {
      fitTo: { mode: 'width', value: 1200 },
    }).render().pixels;
    // Of all the ink that texts put on the sheet, the two ways may differ in the blur at the letters' edges alone.
    let [ink, apart] = [0, 0];
    for (let i = 0; i < bare.length; i += 4) {
      ink += Math.abs((set?.[i] ?? 0) - (bare[i] ?? 0));
      apart += Math.abs((set?.[i] ?? 0) - (outlined?.[i] ?? 0));
    }
    expect(ink).toBeGreaterThan(100_000);
    expect(apart / ink).toBeLessThan(0.03);
  });

  it.each(['T', 'U', 'bay', 'closet', 'hall', 'slot', 'home'] as const)(
    'of %s has each text on its own ground',
    async (name) => {
      const drawing = drawn(name);
      const { width, pixels } = readPng(await toPng(drawing, 720));
      for (const text of textsOf(drawing)) {
        const { left, right, top, bottom } = inkBox(text);
        const counts = new Map<string, number>();
        for (let y = Math.ceil(top * 2); y < bottom * 2; y++) {
          for (let x = Math.ceil(left * 2); x < right * 2; x++) {
            const colour = `#${pixels.toString('hex', 4 * (y * width + x), 4 * (y * width + x) + 3)}`;
            counts.set(colour, (counts.get(colour) ?? 0) + 1);
          }
        }
        const [ground] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
        expect(`${text.text} on ${ground}`).toBe(`${text.text} on ${LETTERING[text.role].on}`);
        // The letters themselves are there, in their colour.
        if (text.text.length > 3) expect([...counts.keys()], text.text).toContain(LETTERING[text.role].fill);
      }
    },
  );

  it('give back what they took of the machine while others come', async () => {
    const drawing = drawn('T');
    const some = () => Promise.all(Array.from({ length: 16 }, () => toPng(drawing)));
    await some();
    const before = process.memoryUsage().rss;
    await some();
    await some();
    // Kept for good, 32 bitmaps of this size take about 4 bytes a pixel each.
    const { width, height } = readPng(await toPng(drawing));
    expect(process.memoryUsage().rss - before).toBeLessThan((32 * width * height * 4) / 2);
  });
});
