/** Pictures of laid floors: time and size of a room's and of a large floor's, and how long the event loop is held. */

import { monitorEventLoopDelay } from 'node:perf_hooks';
import { drawPlan, planAsGiven } from '../../src/drawing/floor-plans.ts';
import { PNG_WIDTH, toPng } from '../../src/drawing/png.ts';
import type { Plan } from '../../src/layout/floor.ts';
import { layFloor } from '../../src/layout/lay-floor.ts';
import { stairStep } from '../../src/layout/runs.ts';
import type { Outline } from '../../src/units/geometry.ts';
import { feet, inches } from '../../src/units/length.ts';
import { inSteps } from '../../src/workers/time-limits.ts';
import { type Bench, type Metric, metric, percentile, type Size } from './metric.ts';

/** Milliseconds between looks at the event loop. */
const RESOLUTION = 2;
const SAYING = { units: 'imperial', decimal: '.' } as const;
const FLOORS = [
  { name: '12 x 14 ft', wide: 12, deep: 14 },
  { name: '26 x 30 ft (about 400 planks)', wide: 26, deep: 30 },
] as const;

export const pictures: Bench = {
  name: 'pictures',
  async run(size) {
    const metrics: Metric[] = [];
    for (const floor of FLOORS) metrics.push(...(await measured(floor.name, laid(floor.wide, floor.deep), size)));
    return metrics;
  },
};

async function measured(name: string, plan: Plan, size: Size): Promise<readonly Metric[]> {
  const runs = size === 'quick' ? 8 : 40;
  const times: number[] = [];
  const drawing: number[] = [];
  let bytes = 0;
  // The first picture loads the font and the renderer.
  await pictureOf(plan);
  for (let run = 0; run < runs; run++) {
    const { milliseconds, drawn, largest } = await pictureOf(plan);
    times.push(milliseconds);
    drawing.push(drawn);
    bytes = Math.max(bytes, largest);
  }
  const held = await longestHold(async () => {
    for (let run = 0; run < runs; run++) await pictureOf(plan);
  });
  const say = (what: string): string => `${name}: ${what}`;
  return [
    metric('pictures', say('plan drawn as data, ms, p95'), percentile(drawing, 0.95)),
    metric('pictures', say('picture, ms, p50'), percentile(times, 0.5)),
    metric('pictures', say('picture, ms, p95'), percentile(times, 0.95), { below: 150 }),
    metric('pictures', say(`bytes at ${PNG_WIDTH} px`), bytes, { below: 400_000 }),
    metric('pictures', say('longest hold of the event loop, ms'), held, { below: 50 }),
  ];
}

/** All sheets of a plan as PNG: time a sheet, time of the drawing itself, and bytes of the largest. */
async function pictureOf(plan: Plan): Promise<{ milliseconds: number; drawn: number; largest: number }> {
  const start = performance.now();
  const drawings = await inSteps(drawPlan(planAsGiven(plan, SAYING)));
  const drawn = performance.now() - start;
  // As in the product, where the answer's words are written first.
  await new Promise((resolve) => setImmediate(resolve));
  let largest = 0;
  for (const drawing of drawings) {
    const { length } = await toPng(drawing);
    largest = Math.max(largest, length);
  }
  return { milliseconds: (performance.now() - start) / drawings.length, drawn, largest };
}

/** The longest time that the event loop was held while the work ran, ms: what a timer of `RESOLUTION` was late by. */
async function longestHold(work: () => Promise<void>): Promise<number> {
  const watch = monitorEventLoopDelay({ resolution: RESOLUTION });
  watch.enable();
  await work();
  watch.disable();
  return Math.max(0, watch.max / 1e6 - RESOLUTION);
}

function laid(wide: number, deep: number): Plan {
  const plank = { width: inches(6), length: inches(48), perCarton: 10, lock: 'click' } as const;
  const [x, y] = [feet(wide), feet(deep)];
  const outline: Outline = [
    [0, 0],
    [x, 0],
    [x, y],
    [0, y],
  ];
  const stagger = inches(6);
  return layFloor([{ region: { name: 'living', outline, holes: [], openings: [] }, angle: 90 }], plank, {
    gap: inches(0.25),
    kerf: inches(0),
    stagger,
    minEnd: inches(8),
    minRip: inches(2),
    pattern: stairStep(plank, stagger, stagger),
  });
}
