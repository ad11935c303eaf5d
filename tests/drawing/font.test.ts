/** Text widths against the renderer's own measure of the same font. */

import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { ASCENT, DESCENT, drawable, FONT_FAMILY, FONT_FILES, textWidth, wrapped } from '../../src/drawing/text.ts';

const SIZE = 100;

/** The inked box of a text as resvg (an independent shaper and rasteriser) has it, its baseline at y = 200. */
function inked(text: string, bold: boolean): { left: number; right: number; top: number; bottom: number } {
  const weight = bold ? 'font-weight="bold"' : '';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="9000" height="400"><text x="50" y="200" font-size="${SIZE}" font-family="${FONT_FAMILY}" ${weight} style="font-kerning:none;font-variant-ligatures:none">${text}</text></svg>`;
  const box = new Resvg(svg, {
    font: { loadSystemFonts: false, fontFiles: [FONT_FILES.regular, FONT_FILES.bold], defaultFontFamily: FONT_FAMILY },
  }).getBBox();
  if (!box) throw new Error(`nothing is drawn for ${text}`);
  return { left: box.x, right: box.x + box.width, top: box.y, bottom: box.y + box.height };
}

const TEXTS = [
  '43 1/2&quot;',
  'wall 12 · 14′',
  'no. 1234567890',
  'AVAWATo Ty',
  'office fjord',
  'cut from the rest of that number',
  'Übergröße – 1105 mm',
  'Спальня',
  'κουζίνα',
] as const;

describe.each([false, true])('widths, bold %s', (bold) => {
  it.each(TEXTS)('of %s are those of the renderer', (text) => {
    // Between two equal marks the ink grows by just the text's advance, whatever the bearings at its ends.
    const grown = inked(`|${text}|`, bold);
    const marks = inked('||', bold);
    const advance = grown.right - grown.left - (marks.right - marks.left);
    const width = textWidth(text.replace('&quot;', '"'), SIZE, bold);
    // resvg joins f with its neighbours whatever the SVG asks: narrower there than the letters one by one, never wider.
    if (text.includes('f')) expect(width).toBeLessThan(advance * 1.02);
    else expect(width).toBeCloseTo(advance, 0);
    expect(width).toBeGreaterThan(advance - 0.5);
  });

  it('leave no letter, figure or sign of ours outside its line', () => {
    const box = inked(`ABCXYZabcdefghijklmnopqrstuvwxyz0123456789 &quot;',.:;()/–·×…`, bold);
    expect((200 - box.top) / SIZE).toBeLessThanOrEqual(ASCENT);
    expect((box.bottom - 200) / SIZE).toBeLessThanOrEqual(DESCENT);
  });
});

describe('characters that the font lacks', () => {
  it('are boxes, and marks that join or turn others are left out', () => {
    expect(drawable('bed 🛏️ 寝室')).toBe('bed □ □□');
    expect(drawable('a\u202eb\u0000c\u200d')).toBe('abc');
    expect(drawable('kitchen')).toBe('kitchen');
    expect(drawable('cafe\u0301')).toBe('café');
  });
});

describe('lines', () => {
  it('are broken at spaces, and a longer word where it must be', () => {
    const wide = 100;
    for (const text of ['one two three four five six seven', 'W'.repeat(60), 'a '.repeat(80).trim(), '']) {
      const lines = wrapped(text, 10, false, wide);
      for (const line of lines) expect(textWidth(line, 10, false)).toBeLessThanOrEqual(wide);
      expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    }
    expect(wrapped('one two', 10, false, 1000)).toEqual(['one two']);
  });
});
