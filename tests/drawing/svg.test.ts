/** SVG that any reader of XML takes, whatever a room is called; and colours that can be told apart and read. */

import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escaped, LETTERING, LOOKS, PATTERNS, SHEET_COLOUR, toSvg } from '../../src/drawing/svg.ts';
import type { Drawing } from '../../src/reply/drawing.ts';
import { region } from '../outside/laid.ts';
import { drawPlan } from './drawn.ts';
import { box, IMPERIAL, planOf, ROOMS } from './drawn-rooms.ts';

function named(name: string): readonly Drawing[] {
  return drawPlan(planOf([region(name, box(4, 6)), region(`${name} 2`, box(3, 3))]), IMPERIAL);
}

/** Reads the SVG with resvg, whose XML reader refuses what is not well-formed, and gives it back with its sides. */
function read(svg: string): { readonly width: number; readonly height: number } {
  const { width, height } = new Resvg(svg, { font: { loadSystemFonts: false } });
  return { width, height };
}

describe('the SVG', () => {
  it.each(Object.entries(ROOMS))('of %s is well-formed and as large as its sheet', (_name, regions) => {
    for (const drawing of drawPlan(planOf(regions), IMPERIAL)) {
      expect(read(toSvg(drawing))).toEqual({ width: drawing.width, height: drawing.height });
    }
  });

  it.each([
    '<script>alert(1)</script>',
    `a & b < c > d "e" 'f'`,
    ']]>',
    '&lt;',
    '</text></svg>',
    '<!-- -->',
    '\u0000\u0007\uffff',
    '🛏️ 寝室',
  ])('takes a room called %j', (name) => {
    for (const drawing of named(name)) {
      const svg = toSvg(drawing);
      expect(read(svg).width).toBe(360);
      expect(svg).not.toMatch(/<script|<!--|<\/text><\/svg>/);
      // No element but those that a picture is made of, and no attribute that runs or fetches anything.
      const tags = new Set([...svg.matchAll(/<([a-zA-Z]+)/g)].map((match) => match[1]));
      expect([...tags].sort()).toEqual(
        ['circle', 'defs', 'desc', 'g', 'path', 'pattern', 'rect', 'svg', 'text', 'title'].sort(),
      );
      expect(svg).not.toMatch(/\s(?:on\w+|href|xlink:href)=/);
    }
  });

  it('holds nothing but numbers where numbers belong', () => {
    for (const drawing of Object.values(ROOMS).flatMap((regions) => drawPlan(planOf(regions), IMPERIAL))) {
      expect(toSvg(drawing)).not.toMatch(/NaN|Infinity|undefined/);
    }
  });

  it('breaks on a text that is not escaped', () => {
    const svg = toSvg(named('room')[0] ?? { width: 1, height: 1, title: '', alt: '', shapes: [] });
    expect(() => read(svg.replace('>room<', '>a & <b<'))).toThrow();
  });

  it('escapes whatever characters there are so that they are read back', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const out = escaped(text);
        expect(out).not.toMatch(/[<>"']|&(?!(?:amp|lt|gt|quot|#39);)/);
        // XML 1.0 (W3C, fifth edition) §2.2: the characters that a document may hold.
        const legal = /^[\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]*$/u;
        expect(out).toMatch(legal);
        const back = out.replace(
          /&(amp|lt|gt|quot|#39);/g,
          (_, name: string) => ({ amp: '&', lt: '<', gt: '>', quot: '"' })[name] ?? "'",
        );
        expect(back).toBe([...text].filter((character) => legal.test(character)).join(''));
      }),
    );
  });
});

/** Relative luminance (W3C, WCAG 2.1, definition). */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((share) => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio (W3C, WCAG 2.1, definition). */
function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

describe('colours', () => {
  it('are measured as WCAG has it: black on white is 21 to 1, #767676 on white just 4.54 to 1 (published examples)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  it.each(Object.entries(LETTERING))('of %s texts reach 4.5 to 1 (WCAG 2.1, 1.4.3)', (_role, { fill, on }) => {
    expect(contrast(fill, on)).toBeGreaterThanOrEqual(4.5);
  });

  it('of pieces are told apart in grey: by a pattern, or by 1.3 to 1 between the plain ones', () => {
    const { start, 'plank-whole': whole, 'offcut-kept': kept, 'offcut-reused': reused } = LOOKS;
    expect(contrast(start.fill ?? '', whole.fill ?? '')).toBeGreaterThanOrEqual(1.3);
    expect(new Set([start.pattern, kept.pattern, reused.pattern]).size).toBe(3);
    for (const { fill, ink } of Object.values(PATTERNS)) expect(contrast(fill, ink)).toBeGreaterThanOrEqual(3);
    expect(contrast(LOOKS['wall-start'].fill ?? '', LOOKS.wall.fill ?? '')).toBeGreaterThanOrEqual(3);
    expect(SHEET_COLOUR).toBe('#ffffff');
  });
});
