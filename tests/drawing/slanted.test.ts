/** Pictures of slanted rooms, diagonal rows and herringbones: nothing overlaps or leaves the sheet, and every piece is there. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawHerringbone } from '../../src/drawing/herringbone-sheet.ts';
import { layHerringbone } from '../../src/layout/herringbone-lay.ts';
import type { Drawing } from '../../src/reply/drawing.ts';
import { inches } from '../../src/units/length.ts';
import { slantedRooms } from '../bench/slanted-rooms.ts';
import { plank, region } from '../outside/laid.ts';
import { atOnce, drawPlan } from './drawn.ts';
import { IMPERIAL, METRIC, planOf } from './drawn-rooms.ts';
import { clashes, textsOf } from './read-drawing.ts';

function check(drawings: readonly Drawing[]): void {
  for (const drawing of drawings) {
    expect(clashes(drawing)).toEqual([]);
    expect(drawing.width).toBe(360);
    expect(drawing.height).toBeLessThanOrEqual(1600);
    expect(Math.min(...textsOf(drawing).map(({ size }) => size))).toBeGreaterThanOrEqual(9);
    expect(drawing.alt).not.toMatch(/undefined|NaN/);
    expect(JSON.parse(JSON.stringify(drawing))).toEqual(drawing);
    for (const shape of drawing.shapes) {
      if (shape.kind !== 'polygon') continue;
      for (const [x, y] of shape.rings.flat()) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(360);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(drawing.height);
      }
    }
  }
}

/** The area that polygons of planks cover on a sheet, in its own units. */
function covered({ shapes }: Drawing): number {
  const roles = ['plank-whole', 'start', 'end', 'any', 'offcut-kept', 'offcut-reused'];
  return shapes.reduce((sum, shape) => {
    if (shape.kind !== 'polygon' || !roles.includes(shape.role)) return sum;
    const areas = shape.rings.map((ring) =>
      ring.reduce((area, [ax, ay], i) => {
        const [bx, by] = ring[(i + 1) % ring.length] ?? [ax, ay];
        return area + (ax * by - bx * ay) / 2;
      }, 0),
    );
    return sum + Math.abs(areas.reduce((all, area) => all + area, 0));
  }, 0);
}

describe('pictures of slanted floors', () => {
  it('read well at any angle', () => {
    const asks = fc.record({
      seed: fc.integer({ min: 1, max: 1e6 }),
      angle: fc.constantFrom(0, 90, 180, 270, 45, 135, 30, 200),
      metric: fc.boolean(),
    });
    fc.assert(
      fc.property(asks, ({ seed, angle, metric }) => {
        const regions = slantedRooms(seed, 1).map(({ name, outline }) => region(name, outline));
        check(drawPlan(planOf(regions, angle, plank(7, 48)), metric ? METRIC : IMPERIAL));
      }),
      { numRuns: 25 },
    );
  });

  it('show a diagonal floor as it lies, then turned so that its rows lie straight, each with as much floor', () => {
    const plan = planOf(
      [
        region('den', [
          [0, 0],
          [inches(120), 0],
          [inches(120), inches(96)],
          [0, inches(96)],
        ]),
      ],
      45,
      plank(7, 48),
    );
    const [lies, straight] = drawPlan(plan, IMPERIAL);
    if (!lies || !straight) throw new Error('two sheets were wanted');
    expect(lies.title).toBe('den: plan, as it lies');
    expect(
      textsOf(straight)
        .map(({ text }) => text)
        .join(' '),
    ).toContain('45°');
    const bar = (sheet: Drawing): number => {
      const line = sheet.shapes.find(({ kind, role }) => kind === 'lines' && role === 'scale-bar');
      const [
        [from, to] = [
          [0, 0],
          [0, 0],
        ],
      ] = line?.kind === 'lines' ? line.lines : [];
      const feet = Number(/^(\d+)'/.exec(textsOf(sheet).find(({ role }) => role === 'scale-label')?.text ?? '')?.[1]);
      return (to[0] - from[0]) / feet;
    };
    // 119 1/4 by 95 1/4 inches within the gap of 3/8, at each sheet's own scale.
    for (const sheet of [lies, straight])
      expect(covered(sheet) / bar(sheet) ** 2).toBeCloseTo((119.25 * 95.25) / 144, 0);
  });
});

describe('pictures of herringbones', () => {
  it.each([
    [0, 0, false],
    [45, 0, true],
    [90, 2, false],
  ])('with zigzags at %s°, a border of %s, A and B boards: %s', (angle, border, handed) => {
    const board = plank(3, 18, handed ? 'click' : 'none');
    const areas = slantedRooms(7, 2).map(({ name, outline }) => ({ region: region(name, outline), angle }));
    const plan = layHerringbone(areas, board, {
      gap: inches(0.25),
      kerf: inches(0.125),
      minEnd: inches(4),
      border,
      handed,
    });
    if ('why' in plan) throw new Error('the border was to fit');
    const drawings = atOnce(drawHerringbone(plan, IMPERIAL));
    expect(drawings).toHaveLength(2);
    check(drawings);
    plan.regions.forEach((part, i) => {
      const polygons =
        drawings[i]?.shapes.filter(({ kind, role }) => kind === 'polygon' && role !== 'wall' && role !== 'gap') ?? [];
      expect(polygons).toHaveLength(part.boards.length);
    });
  });
});
