/** Laws of patches and levelling: a patch lands on joists and covers its damage, its pieces fit their sheets, deeper takes no less. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LevelResult } from '../../commands/prep/level.ts';
import type { PatchResult } from '../../commands/prep/patch.ts';
import { FASTENER_SPACING, PANEL_GAP, PANEL_SHEET } from '../../src/figures/subfloor-figures.ts';
import { type Patch, type PatchRules, patchRange, planPatch } from '../../src/prep/subfloor-patch.ts';
import { feet, inches, type Length, millimetres, ticks } from '../../src/units/length.ts';
import { replyTo } from '../chat/asked.ts';

const RULES: PatchRules = {
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

const length = (least: Length, most: Length) => fc.integer({ min: least, max: most }).map(ticks);

/** A damage beyond the first joist, anywhere, with joists at any spacing that is met. */
const requested = fc
  .record({
    first: length(ticks(0), feet(2)),
    spacing: fc.oneof(
      fc.constantFrom(
        inches(12),
        inches(16),
        inches(19.2),
        inches(24),
        millimetres(400),
        millimetres(600),
        millimetres(610),
      ),
      length(inches(8), inches(24)),
    ),
    beyond: length(ticks(0), feet(12)),
    v: length(ticks(0), feet(12)),
    across: length(inches(0.5), feet(12)),
    along: length(inches(0.5), feet(12)),
  })
  .map(({ first, spacing, beyond, v, across, along }) => ({
    joists: { first, spacing, width: inches(1.5) },
    damage: { u0: first + beyond, v0: v, u1: first + beyond + across, v1: v + along },
  }));

function patched({ joists, damage }: { joists: Parameters<typeof planPatch>[1]; damage: Patch['damage'] }): Patch {
  const patch = planPatch(damage, joists, RULES);
  if (typeof patch === 'string') throw new Error(`no patch: ${patch}`);
  return patch;
}

describe('a patch of unknown place', () => {
  it('is as wide as one of the widths and as long as the range, wherever the damage turns out to be', () => {
    fc.assert(
      fc.property(requested, fc.boolean(), ({ joists, damage }, turned) => {
        const sides = [damage.u1 - damage.u0, damage.v1 - damage.v0] as const;
        const cut = { ...damage, v0: feet(30), v1: feet(30) + sides[1] };
        const { spacing, width } = joists;
        const range = patchRange(turned ? [sides[1], sides[0]] : sides, [turned], { spacing, width }, RULES);
        if (typeof range === 'string') throw new Error(range);
        // Far enough from the first joist that the margin finds one beyond it.
        const plan = patched({ joists: { ...joists, first: ticks(joists.first % spacing) }, damage: cut });
        if (plan.cut.u0 > joists.first) expect(range.across).toContain(plan.cut.u1 - plan.cut.u0);
        expect(range.along[0]).toBe(plan.cut.v1 - plan.cut.v0);
        expect(range.along[1]).toBe(range.along[0]);
      }),
      { numRuns: 60 },
    );
  });

  // By hand: 24 in and a margin of 2 on both sides are 28 in; joists 16 in apart give 32 where a joist lies right beside it, else 48.
  it('of 24 in between joists 16 in apart takes two bays or three', () => {
    const joists = { spacing: inches(16), width: inches(1.5) };
    const range = patchRange([inches(24), inches(24)], [false], joists, RULES);
    expect(range).toMatchObject({ across: [inches(32), inches(48)], along: [inches(28), inches(28)] });
  });
});

describe('a patch', () => {
  it('covers its damage, lands on joists and spans two bays or more', () => {
    fc.assert(
      fc.property(requested, (one) => {
        const { cut } = patched(one);
        const { first, spacing } = one.joists;
        expect(cut.u0).toBeLessThanOrEqual(one.damage.u0);
        expect(cut.u1).toBeGreaterThanOrEqual(one.damage.u1);
        expect(cut.v0).toBeLessThanOrEqual(one.damage.v0);
        expect(cut.v1).toBeGreaterThanOrEqual(one.damage.v1);
        for (const side of [cut.u0, cut.u1, ...cut.joists]) expect((side - first) % spacing).toBe(0);
        expect(cut.joists.length).toBeGreaterThanOrEqual(3);
        expect([cut.joists[0], cut.joists.at(-1)]).toEqual([cut.u0, cut.u1]);
        expect(cut.v1 - cut.v0).toBeGreaterThanOrEqual(RULES.least);
        expect(cut.v0).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('is the least that does: a bay less on either side would miss the damage, its margin or the second bay', () => {
    fc.assert(
      fc.property(requested, (one) => {
        const { cut } = patched(one);
        const { spacing, first } = one.joists;
        if (cut.joists.length === 3) return;
        const margin = RULES.margin;
        expect(cut.u0 + spacing > one.damage.u0 - margin || cut.u0 === first).toBe(true);
        expect(cut.u1 - spacing).toBeLessThan(one.damage.u1 + margin);
      }),
    );
  });

  it('has panels that keep the gap from each other and from the cut, each on three joists, and leave no wider gap', () => {
    fc.assert(
      fc.property(requested, (one) => {
        const { cut, panels } = patched(one);
        const area = panels.reduce((sum, { u0, u1, v0, v1 }) => sum + (u1 - u0) * (v1 - v0), 0);
        const { gap } = RULES;
        panels.forEach((a, i) => {
          expect(Math.min(a.u0 - cut.u0, a.v0 - cut.v0, cut.u1 - a.u1, cut.v1 - a.v1)).toBeGreaterThanOrEqual(gap);
          expect(a.joists.length).toBeGreaterThanOrEqual(3);
          for (const b of panels.slice(i + 1)) {
            const apart = Math.max(a.u0 - b.u1, b.u0 - a.u1, a.v0 - b.v1, b.v0 - a.v1);
            expect(apart).toBeGreaterThanOrEqual(gap);
          }
        });
        const columns = new Set(panels.map(({ u0 }) => u0)).size;
        const rows = new Set(panels.map(({ v0 }) => v0)).size;
        const open = (cut.u1 - cut.u0 - (columns + 1) * gap) * (cut.v1 - cut.v0 - (rows + 1) * gap);
        expect(area).toBe(open);
      }),
    );
  });

  it('has blocks between joists under every edge that runs across them', () => {
    fc.assert(
      fc.property(requested, (one) => {
        const { cut, panels, blocks, blocking } = patched(one);
        const edges = new Set(panels.map(({ v0 }) => v0)).size + 1;
        expect(blocks.length).toBe(edges * cut.bays);
        expect(blocking.reduce((sum, { count }) => sum + count, 0)).toBe(blocks.length);
        for (const { length: long } of blocking) expect(long).toBe(one.joists.spacing - one.joists.width);
        for (const { v0, v1 } of panels) {
          for (const edge of [v0, v1]) expect(blocks.some((block) => block.v0 <= edge && edge <= block.v1)).toBe(true);
        }
      }),
    );
  });

  it('has a cutting plan in which every piece is there once, fits its sheet and keeps a kerf from its neighbours', () => {
    fc.assert(
      fc.property(requested, (one) => {
        const { panels, sheets } = patched(one);
        const { sheet, kerf } = RULES;
        const pieces = sheets.flat();
        expect(pieces.map(({ piece }) => piece).sort((a, b) => a - b)).toEqual(panels.map((_, i) => i));
        for (const on of sheets) {
          on.forEach((a, i) => {
            const panel = panels[a.piece];
            expect([a.length, a.width]).toEqual([
              (panel?.u1 ?? 0) - (panel?.u0 ?? 0),
              (panel?.v1 ?? 0) - (panel?.v0 ?? 0),
            ]);
            expect(a.x + a.length).toBeLessThanOrEqual(sheet.length);
            expect(a.y + a.width).toBeLessThanOrEqual(sheet.width);
            for (const b of on.slice(i + 1)) {
              const apart = Math.max(
                a.x - b.x - b.length,
                b.x - a.x - a.length,
                a.y - b.y - b.width,
                b.y - a.y - a.width,
              );
              expect(apart).toBeGreaterThanOrEqual(kerf);
            }
          });
        }
      }),
    );
  });

  // Panels = net area ÷ 32 ft², rounded up to a whole sheet (published: Modern Carpentry, 2016, p. 260): no plan goes below.
  it('takes no fewer sheets than its area', () => {
    fc.assert(
      fc.property(requested, (one) => {
        const { panels, sheets } = patched(one);
        const area = panels.reduce((sum, { u0, u1, v0, v1 }) => sum + BigInt(u1 - u0) * BigInt(v1 - v0), 0n);
        const whole = BigInt(inches(48)) * BigInt(inches(96));
        expect(sheets.length).toBeGreaterThanOrEqual(Number((area + whole - 1n) / whole));
        expect(sheets.length).toBeLessThanOrEqual(panels.length);
      }),
    );
  });

  it('lies on its side where joists run across: the same patch with x and y changed over', async () => {
    const inch = fc.integer({ min: 1, max: 60 });
    await fc.assert(
      fc.asyncProperty(inch, inch, inch, inch, async (w, h, x, y) => {
        const tail = 'first-joist: 1 in, spacing: 16 in';
        const up = await patchTo(
          `patch damage: ${w} x ${h} in at ${x} in from left, ${y} in from bottom, ${tail}, joists: up`,
        );
        const over = await patchTo(
          `patch damage: ${h} x ${w} in at ${y} in from left, ${x} in from bottom, ${tail}, joists: across`,
        );
        const turned = over.cut.map(([a, b]) => [b, a]);
        expect(new Set(turned.map(String))).toEqual(new Set(up.cut.map(String)));
        expect({ ...over, cut: [] }).toEqual({ ...up, cut: [] });
        // Corners run counter-clockwise.
        for (const { cut } of [up, over]) {
          const twice = cut.reduce((sum, [ax, ay], i) => {
            const [bx, by] = cut[(i + 1) % cut.length] ?? [0, 0];
            return sum + (ax * by - bx * ay);
          }, 0);
          expect(twice).toBeGreaterThan(0);
        }
      }),
      { numRuns: 25 },
    );
  });
});

async function patchTo(ask: string): Promise<PatchResult> {
  return (await replyTo(ask)).data as PatchResult;
}

async function levelTo(ask: string): Promise<LevelResult> {
  return (await replyTo(ask)).data as LevelResult;
}

describe('levelling', () => {
  const sixteenths = fc.integer({ min: 0, max: 24 });

  it('takes no less, and no fewer bags, for a deeper reading of a grid', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(sixteenths, { minLength: 6, maxLength: 6 }),
        fc.nat(5),
        fc.integer({ min: 1, max: 12 }),
        async (depths, at, more) => {
          const deeper = depths.map((depth, i) => (i === at ? depth + more : depth));
          const grid = (all: readonly number[]) =>
            `level readings: grid 4 ft: ${[0, 3]
              .map((from) =>
                all
                  .slice(from, from + 3)
                  .map((depth) => `${depth}/16`.replace(/^0\/16$/, '0'))
                  .join(', '),
              )
              .join('; ')}, floor: concrete`;
          const [before, after] = [await levelTo(proper(grid(depths))), await levelTo(proper(grid(deeper)))];
          expect(after.litres).toBeGreaterThan(before.litres);
          expect(after.bags).toBeGreaterThanOrEqual(before.bags);
          expect(after.kilograms).toBeGreaterThan(before.kilograms);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('by gaps over an area takes more for a deeper gap, and a floor past the rule stays past it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 24 }), fc.integer({ min: 1, max: 12 }), async (gap, more) => {
        const ask = (mm: number) => levelTo(`level readings: low ${mm} mm over 3 m, area: 3 x 2 m, floor: concrete`);
        const [before, after] = [await ask(gap), await ask(gap + more)];
        expect(after.litres).toBeCloseTo(before.litres + 6 * more, 9);
        if (!before.flat) expect(after.flat).toBe(false);
        expect(before.flat).toBe(gap <= 5);
      }),
      { numRuns: 30 },
    );
  });
});

/** Sixteenths above one as mixed numbers, which is how they are typed. */
function proper(ask: string): string {
  return ask.replace(/(\d+)\/16/g, (_, top: string) => {
    const sixteenths = Number(top);
    const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
    return rest === 0 ? String(whole) : whole === 0 ? `${rest}/16` : `${whole} ${rest}/16`;
  });
}
