/** Outlines of the font's glyphs: the table glyf (ISO/IEC 14496-22) read into curves. */

import { faceOf } from './font-file.ts';

/** A point of a contour in units of the em, y up; between two points off the curve lies one on it, half-way. */
export interface ContourPoint {
  readonly x: number;
  readonly y: number;
  readonly on: boolean;
}

export type Contour = readonly ContourPoint[];

const known = { regular: new Map<number, readonly Contour[]>(), bold: new Map<number, readonly Contour[]>() };

/** The contours of a glyph; none for a space. */
export function contoursOf(glyph: number, bold: boolean): readonly Contour[] {
  const cache = bold ? known.bold : known.regular;
  const before = cache.get(glyph);
  if (before) return before;
  const data = faceOf(bold).outline(glyph);
  const contours = data.length === 0 ? [] : data.readInt16BE(0) < 0 ? composed(data, bold) : simple(data);
  cache.set(glyph, contours);
  return contours;
}

/** A simple glyph: ends of contours, instructions (passed over), flags with repeats, then x and y as differences. */
function simple(data: Buffer): readonly Contour[] {
  const ends = Array.from({ length: data.readInt16BE(0) }, (_, i) => data.readUInt16BE(10 + 2 * i));
  const count = (ends.at(-1) ?? -1) + 1;
  let at = 10 + 2 * ends.length;
  at += 2 + data.readUInt16BE(at);
  const flags: number[] = [];
  while (flags.length < count) {
    const flag = data.readUInt8(at++);
    const times = flag & 8 ? data.readUInt8(at++) + 1 : 1;
    for (let i = 0; i < times; i++) flags.push(flag);
  }
  const axis = (short: number, same: number): readonly number[] => {
    let value = 0;
    return flags.map((flag) => {
      if (flag & short) {
        const size = data.readUInt8(at++);
        value += flag & same ? size : -size;
      } else if (!(flag & same)) {
        value += data.readInt16BE(at);
        at += 2;
      }
      return value;
    });
  };
  const xs = axis(2, 16);
  const ys = axis(4, 32);
  return ends.map((end, i) => {
    const first = (ends[i - 1] ?? -1) + 1;
    return flags
      .slice(first, end + 1)
      .map((flag, k) => ({ x: xs[first + k] ?? 0, y: ys[first + k] ?? 0, on: (flag & 1) === 1 }));
  });
}

/** A glyph made of others, each moved and perhaps scaled. */
function composed(data: Buffer, bold: boolean): readonly Contour[] {
  const contours: Contour[] = [];
  let at = 10;
  let flags: number;
  do {
    flags = data.readUInt16BE(at);
    const glyph = data.readUInt16BE(at + 2);
    at += 4;
    const words = flags & 1;
    const [dx, dy] = words
      ? [data.readInt16BE(at), data.readInt16BE(at + 2)]
      : [data.readInt8(at), data.readInt8(at + 1)];
    at += words ? 4 : 2;
    const count = flags & 8 ? 1 : flags & 64 ? 2 : flags & 128 ? 4 : 0;
    const scales = Array.from({ length: count }, (_, i) => data.readInt16BE(at + 2 * i) / 2 ** 14);
    at += 2 * count;
    const [a = 1, b = count === 4 ? 0 : a, c = 0, d = 1] = scales;
    const [xx, xy, yx, yy] = count === 4 ? [a, b, c, d] : [a, 0, 0, b];
    for (const contour of contoursOf(glyph, bold)) {
      contours.push(contour.map(({ x, y, on }) => ({ x: x * xx + y * yx + dx, y: x * xy + y * yy + dy, on })));
    }
  } while (flags & 32);
  return contours;
}
