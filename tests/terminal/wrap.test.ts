/** Text wrapped: nothing lost, nothing too wide, and no measure torn apart. */

import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { wrap } from '../../src/platforms/terminal/render.ts';

const width = fc.integer({ min: 1, max: 60 });
const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.lorem({ maxCount: 40 }));

const signs = new Intl.Segmenter('en', { granularity: 'grapheme' });
const signsIn = (line: string): number => [...signs.segment(line)].length;

describe('wrap', () => {
  it('breaks at spaces', () => {
    expect(wrap('Keep the gap at every wall', 12)).toEqual(['Keep the gap', 'at every', 'wall']);
  });

  it('breaks a word that is wider than the line', () => {
    expect(wrap('abcdefgh ij', 3)).toEqual(['abc', 'def', 'gh', 'ij']);
  });

  it('counts the columns that a sign takes, and breaks inside none', () => {
    expect(wrap('寝室の床', 4)).toEqual(['寝室', 'の床']);
    expect(wrap('👩‍🔧👩‍🔧', 3)).toEqual(['👩‍🔧', '👩‍🔧']);
    expect(wrap('寝 室', 1)).toEqual(['寝', '室']);
  });

  it('gives one empty line for no text', () => expect(wrap('', 10)).toEqual(['']));

  it.each([
    ['keep 24 3/4" of it', 9, ['keep', '24 3/4"', 'of it']],
    ['stay at 12\' 6 1/2" or so', 12, ['stay at', '12\' 6 1/2"', 'or so']],
    ['the rest 1023 mm new', 11, ['the rest', '1023 mm new']],
    ['a board 6 x 48 in wide', 12, ['a board', '6 x 48 in', 'wide']],
    ['cut from no. 12 now', 12, ['cut from', 'no. 12 now']],
    ['it covers 168 sq ft here', 12, ['it covers', '168 sq ft', 'here']],
    ['a tax of 8% is on top', 11, ['a tax of 8%', 'is on top']],
  ])('holds a measure together: %s', (text, columns, lines) => expect(wrap(text, columns)).toEqual(lines));

  it('tears a measure only where a line is narrower than it', () => {
    expect(wrap('12\' 6 1/2"', 6)).toEqual(["12' 6", '1/2"']);
  });

  it('is never wider than asked, and loses nothing but spaces and control characters', () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: what wrap drops
    const dropped = /[\s\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;
    fc.assert(
      fc.property(anyText, width, (text, columns) => {
        const lines = wrap(text, columns);
        // One sign may be wider than all there is.
        for (const line of lines) if (signsIn(line) > 1) expect(stringWidth(line)).toBeLessThanOrEqual(columns);
        expect(lines.join('').replace(dropped, '')).toBe(text.replace(dropped, ''));
      }),
    );
  });
});
