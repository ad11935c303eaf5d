/** The picture of a patch: to scale, every screw and block there, no text over another or off the sheet. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawPatch } from '../../src/drawing/patch-drawing.ts';
import { LOOKS } from '../../src/drawing/svg.ts';
import { meet, textBox } from '../../src/drawing/text.ts';
import { FASTENER_SPACING, PANEL_GAP, PANEL_SHEET } from '../../src/figures/subfloor-figures.ts';
import { type Patch, planPatch } from '../../src/prep/subfloor-patch.ts';
import type { Drawing, Shape } from '../../src/reply/drawing.ts';
import { feet, inches, ticks } from '../../src/units/length.ts';

const RULES = {
  margin: inches(2),
  bays: 2,
  least: inches(24.25),
  gap: PANEL_GAP.value,
  kerf: inches(0.125),
  sheet: PANEL_SHEET.value,
  fasteners: FASTENER_SPACING.value,
  rim: inches(0.375),
  block: inches(3.5),
};
const WIDTH = inches(1.5);

function patchOf(spacing: number, across: number, along: number, from = 0): Patch {
  const first = inches(16);
  const damage = { u0: first + from, v0: from, u1: first + from + across, v1: from + along };
  const patch = planPatch(damage, { spacing: ticks(spacing), first, width: WIDTH }, RULES);
  if (typeof patch === 'string') throw new Error(patch);
  return patch;
}

const rects = ({ shapes }: Drawing, role: string) =>
  shapes.flatMap((shape) => (shape.kind === 'rect' && shape.role === role && shape.x > 8.1 ? [shape] : []));
const texts = ({ shapes }: Drawing) => shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));

const SIZES = fc.record({
  spacing: fc.integer({ min: inches(8), max: inches(24) }),
  across: fc.integer({ min: inches(1), max: feet(12) }),
  along: fc.integer({ min: inches(1), max: feet(12) }),
  from: fc.integer({ min: 0, max: feet(12) }),
  run: fc.constantFrom('up', 'across'),
  units: fc.constantFrom('imperial', 'metric'),
} as const);

describe('the picture of a patch', () => {
  it('has no text over another or off the sheet, and nothing beyond its edges', () => {
    fc.assert(
      fc.property(SIZES, ({ spacing, across, along, from, run, units }) => {
        const drawing = drawPatch(
          patchOf(spacing, across, along, from),
          { run, joistWidth: WIDTH },
          { units, decimal: '.' },
        );
        const boxes = texts(drawing).map(textBox);
        boxes.forEach((box, i) => {
          expect(Math.min(box.left, box.top)).toBeGreaterThanOrEqual(0);
          expect(box.right).toBeLessThanOrEqual(drawing.width);
          expect(box.bottom).toBeLessThanOrEqual(drawing.height);
          expect(boxes.slice(i + 1).filter((other) => meet(box, other))).toEqual([]);
        });
        for (const shape of drawing.shapes) {
          if (shape.kind !== 'rect') continue;
          expect(shape.x).toBeGreaterThanOrEqual(0);
          expect(shape.x + shape.width).toBeLessThanOrEqual(drawing.width);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('shows every block, panel, joist and screw, to one scale', () => {
    fc.assert(
      fc.property(SIZES, ({ spacing, across, along, from, run }) => {
        const patch = patchOf(spacing, across, along, from);
        const drawing = drawPatch(patch, { run, joistWidth: WIDTH }, { units: 'imperial', decimal: '.' });
        const blocks = rects(drawing, 'offcut-reused');
        const panels = rects(drawing, 'start');
        expect(blocks.length).toBe(patch.blocks.length);
        expect(panels.length).toBe(patch.panels.length);
        expect(rects(drawing, 'wall').length).toBe(patch.cut.joists.length);
        const [panel, first] = [panels[0], patch.panels[0]];
        const scale =
          (run === 'up' ? (panel?.width ?? 0) : (panel?.height ?? 0)) / ((first?.u1 ?? 0) - (first?.u0 ?? 0));
        for (const [i, { u0, u1, v0, v1 }] of patch.blocks.entries()) {
          const sides = run === 'up' ? [u1 - u0, v1 - v0] : [v1 - v0, u1 - u0];
          expect(blocks[i]?.width).toBeCloseTo((sides[0] ?? 0) * scale, 0);
          expect(blocks[i]?.height).toBeCloseTo((sides[1] ?? 0) * scale, 0);
        }
        const screws = drawing.shapes.find((shape): shape is Extract<Shape, { kind: 'lines' }> => {
          return shape.kind === 'lines' && shape.role === 'scale-bar';
        });
        expect(screws?.lines.length).toBe(patch.fasteners.length * 2);
      }),
      { numRuns: 40 },
    );
  });

  it('names every joist with its place, and the sides of the cut, and says so in words', () => {
    const patch = patchOf(inches(16), inches(20), inches(30), inches(20));
    const drawing = drawPatch(patch, { run: 'up', joistWidth: WIDTH }, { units: 'imperial', decimal: '.' });
    const said = texts(drawing).map(({ text }) => text);
    expect(said).toEqual(expect.arrayContaining([`1 · 2' 8"`, `2 · 4'`, `3 · 5' 4"`, '32"', '34"']));
    expect(drawing.alt).toBe(
      'A cut of 32" × 34" over 3 joists, its sides on the outer two; 4 blocks between them under the edges, 1 new panel with 26 screws.',
    );
  });

  it('tells joists, blocks and damage apart by pattern, without colour', () => {
    const { wall, start } = LOOKS;
    expect(LOOKS['offcut-reused'].pattern).toBeDefined();
    expect(LOOKS['offcut-kept'].pattern).toBeDefined();
    expect(LOOKS['offcut-kept'].pattern).not.toBe(LOOKS['offcut-reused'].pattern);
    expect([wall.pattern, start.pattern]).toEqual([undefined, undefined]);
    // Joists lie over panels within an outline of their own.
    const drawing = drawPatch(
      patchOf(inches(16), inches(20), inches(30)),
      { run: 'up', joistWidth: WIDTH },
      { units: 'imperial', decimal: '.' },
    );
    const outlines = rects(drawing, 'swatch');
    for (const joist of rects(drawing, 'wall')) {
      expect(
        outlines.some(
          ({ x, y, width, height }) =>
            x === joist.x && y === joist.y && width === joist.width && height === joist.height,
        ),
      ).toBe(true);
    }
  });
});
