/** Slanted rooms, diagonal rows and herringbones on seeded rooms: legality, planks against the area's bound, and time. */

import { herringResult } from '../../commands/floor/floor-herringbone.ts';
import { floorResult } from '../../commands/floor/lay.ts';
import { type Pattern, type Plank, purchaseOf, type Region } from '../../src/layout/floor.ts';
import { layHerringbone } from '../../src/layout/herringbone-lay.ts';
import { layFloor } from '../../src/layout/lay-floor.ts';
import { stairStep } from '../../src/layout/runs.ts';
import type { Outline } from '../../src/units/geometry.ts';
import { inches } from '../../src/units/length.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { average, type Bench, type Metric, metric, percentile, type Size } from './metric.ts';
import { randomRooms } from './random-rooms.ts';
import { slantedRooms } from './slanted-rooms.ts';

const SEED = 45;
const LIMITS = { gap: inches(0.375), kerf: inches(0.125), stagger: inches(6), minEnd: inches(8), minRip: inches(2) };
const PATTERNS: readonly Pattern['name'][] = ['stair-step', 'half', 'offcut-first'];

export const angled: Bench = {
  name: 'angled',
  async run(size) {
    return [...rows('slanted rooms', 0, size), ...rows('diagonal rows', 45, size), ...herringbones(size)];
  },
};

/** What one floor came to. */
interface Laid {
  readonly data: unknown;
  readonly planks: number;
  readonly bound: number;
  readonly broken: number;
  readonly milliseconds: number;
}

function region(name: string, outline: Outline): Region {
  return { name, outline, holes: [], openings: [] };
}

/** What is laid, and the processor's time for it: a busy machine makes no floor harder. */
function timed<T>(lay: () => T): readonly [T, number] {
  const from = process.cpuUsage();
  const laid = lay();
  return [laid, process.cpuUsage(from).user / 1000];
}

function rows(kind: string, angle: number, size: Size): readonly Metric[] {
  const count = size === 'quick' ? 8 : 30;
  const rooms =
    angle === 0 ? slantedRooms(SEED, count) : [...slantedRooms(SEED, count / 2), ...randomRooms(SEED, count / 2)];
  const board: Plank = { width: inches(7), length: inches(48), perCarton: 10, lock: 'click' };
  return PATTERNS.flatMap((name) => {
    const rules = {
      ...LIMITS,
      pattern: name === 'stair-step' ? stairStep(board, LIMITS.stagger, LIMITS.stagger) : { name },
    };
    const laid = rooms.map((room): Laid => {
      const [plan, milliseconds] = timed(() =>
        layFloor([{ region: region(room.name, room.outline), angle }], board, rules),
      );
      const data = floorResult(plan, purchaseOf(plan.planks, 300, 0, 10), undefined);
      const broken = plan.broken.filter(({ rule }) => rule !== 'pattern').length;
      return { data, planks: plan.planks, bound: plan.bound.best, broken, milliseconds };
    });
    return metrics(`${kind}, ${name}`, laid);
  });
}

function herringbones(size: Size): readonly Metric[] {
  const board: Plank = { width: inches(5), length: inches(25), perCarton: 10, lock: 'none' };
  const laid = slantedRooms(SEED, size === 'quick' ? 6 : 20).map((room, i): Laid => {
    const rules = { gap: LIMITS.gap, kerf: LIMITS.kerf, minEnd: LIMITS.minEnd, border: 0, handed: i % 2 === 1 };
    const areas = [{ region: region(room.name, room.outline), angle: i % 3 === 0 ? 45 : 0 }];
    const [plan, milliseconds] = timed(() => layHerringbone(areas, board, rules));
    if ('why' in plan) throw new Error(`no border was asked in ${plan.region}`);
    const cartons = plan.hands
      ? Math.ceil(plan.hands.A / 10) + Math.ceil(plan.hands.B / 10)
      : Math.ceil(plan.planks / 10);
    const data = herringResult(plan, { cartons, boards: plan.planks, mistakes: 0, spares: 0, left: 0 }, undefined);
    return { data, planks: plan.planks, bound: plan.bound.best, broken: 0, milliseconds };
  });
  return metrics('herringbone', laid);
}

function metrics(kind: string, laid: readonly Laid[]): readonly Metric[] {
  const legal =
    laid.filter(({ data }) => checkFloor(JSON.parse(JSON.stringify(data))).length === 0).length / laid.length;
  const over = laid.map(({ planks, bound }) => (100 * (planks - bound)) / bound);
  const times = laid.map(({ milliseconds }) => milliseconds);
  return [
    metric('angled', `${kind}: legal share`, legal, { atLeast: 1 }),
    metric('angled', `${kind}: planks over the area’s bound, % on average`, average(over), { below: 15 }),
    metric(
      'angled',
      `${kind}: floors that break a rule, share`,
      laid.filter(({ broken }) => broken > 0).length / laid.length,
    ),
    metric('angled', `${kind}: first answer, ms of one core, median`, percentile(times, 0.5), { below: 100 }),
    metric('angled', `${kind}: first answer, ms of one core, 95 of 100`, percentile(times, 0.95)),
  ];
}
