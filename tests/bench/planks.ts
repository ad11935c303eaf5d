/** Plank layouts on seeded random rooms: legality, planks against the bound and the rule of thumb, time and its growth. */

import { floorResult, layAsk } from '../../commands/floor/lay.ts';
import { answerPlanks, answerSurely } from '../../commands/floor/planks.ts';
import {
  type Pattern,
  type Plan,
  type Plank,
  planksByArea,
  purchaseOf,
  type Region,
  type Rules,
} from '../../src/layout/floor.ts';
import { angleBySide } from '../../src/layout/frame.ts';
import { layFloor } from '../../src/layout/lay-floor.ts';
import { stairStep } from '../../src/layout/runs.ts';
import { doubleArea, type Outline } from '../../src/units/geometry.ts';
import { feet, inches } from '../../src/units/length.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { average, type Bench, type Metric, metric, percentile, type Size } from './metric.ts';
import { randomRooms } from './random-rooms.ts';
import { scatterFigures } from './scatter.ts';

const BOARDS = [
  [6, 48],
  [5, 36],
  [8, 60],
] as const;
const PATTERNS: readonly Pattern['name'][] = ['stair-step', 'half', 'thirds', 'offcut-first'];
const SEED = 60;
const LIMITS = { gap: inches(0.375), kerf: inches(0.125), stagger: inches(6), minEnd: inches(8), minRip: inches(2) };

export const planks: Bench = {
  name: 'planks',
  async run(size) {
    return [
      ...PATTERNS.flatMap((name) => quality(name, size)),
      ...(await answerTime(size)),
      ...growth(size),
      ...(await scatterFigures(size)),
    ];
  },
};

interface Case {
  readonly region: Region;
  readonly board: Plank;
}

function cases(size: Size): readonly Case[] {
  return randomRooms(SEED, size === 'quick' ? 12 : 60).flatMap(({ name, outline }) =>
    BOARDS.map(([width, length]) => ({
      region: { name, outline, holes: [], openings: [] },
      board: { width: inches(width), length: inches(length), perCarton: 10, lock: 'click' as const },
    })),
  );
}

function rulesFor(name: Pattern['name'], board: Plank): Rules {
  return { ...LIMITS, pattern: name === 'stair-step' ? stairStep(board, LIMITS.stagger, LIMITS.stagger) : { name } };
}

function lay(region: Region, board: Plank, name: Pattern['name']): Plan {
  return layFloor([{ region, angle: angleBySide(region.outline, 'long') }], board, rulesFor(name, board));
}

function quality(name: Pattern['name'], size: Size): readonly Metric[] {
  const laid = cases(size).map(({ region, board }) => lay(region, board, name));
  const share = (holds: (plan: Plan) => boolean): number => laid.filter(holds).length / laid.length;
  const checked = (plan: Plan): boolean =>
    checkFloor(JSON.parse(JSON.stringify(floorResult(plan, purchaseOf(plan.planks, 300, 0, 10), undefined)))).length ===
    0;
  const thumb = (plan: Plan): number =>
    planksByArea(areaOf(plan), BigInt(plan.plank.length) * BigInt(plan.plank.width), [1000]);
  const say = (what: string): string => `${name}: ${what}`;
  return [
    metric('planks', say('share legal by the independent checker'), share(checked), { atLeast: 1 }),
    metric(
      'planks',
      say('share with every rule kept, pattern aside'),
      share((p) => p.broken.every(({ rule }) => rule === 'pattern')),
    ),
    metric(
      'planks',
      say('share with every row on the pattern'),
      share((p) => p.broken.every(({ rule }) => rule !== 'pattern')),
    ),
    metric(
      'planks',
      say('share at the row bound'),
      share((p) => p.planks === p.bound.best),
    ),
    metric(
      'planks',
      say('share within 1 of the row bound'),
      share((p) => p.planks <= p.bound.best + 1),
    ),
    metric('planks', say('planks over the row bound, average'), average(laid.map((p) => p.planks - p.bound.best))),
    metric('planks', say('area + 10% over the plan, planks, average'), average(laid.map((p) => thumb(p) - p.planks))),
    metric(
      'planks',
      say('area + 10% too few, share'),
      share((p) => thumb(p) < p.planks),
    ),
  ];
}

function areaOf(plan: Plan): bigint {
  return plan.regions.reduce((sum, { outline }) => sum + doubleArea(outline) / 2n, 0n);
}

/** The first answer with its reply, and what follows it. */
async function answerTime(size: Size): Promise<readonly Metric[]> {
  const whole: number[] = [];
  const preferences = { units: 'imperial', decimal: '.', currency: 'USD' } as const;
  const context = {
    asker: { platform: 'terminal' as const, id: 'bench' },
    preferences,
    commands: [],
    assumed: [],
    optionTexts: new Map<string, string>(),
    again: () => '',
    parse: () => undefined,
    begin: () => undefined,
    alike: () => '',
    access: undefined,
    now: () => 0,
    ask: () => Promise.reject(new Error('a bench asks nothing')),
  };
  const times: number[] = [];
  for (const { region, board } of cases(size)) {
    const ask = {
      room: { rooms: [region], units: 'imperial' as const },
      plank: { plank: board, cartonArea: 10n * BigInt(board.width) * BigInt(board.length), units: 'imperial' as const },
      pattern: { name: 'stair-step' as const },
      direction: { kind: 'side' as const, side: 'long' as const },
      doorways: [],
      holes: [],
      stagger: LIMITS.stagger,
      'shortest-end': LIMITS.minEnd,
      'narrowest-strip': LIMITS.minRip,
      gap: LIMITS.gap,
      kerf: LIMITS.kerf,
      mistakes: 300,
      spares: 0,
      tax: 0,
      doubt: inches(0.5),
    };
    const start = performance.now();
    const laid = await layAsk(ask, context);
    if ('problems' in laid) throw new Error('a bench room was not laid');
    answerPlanks(laid, ask, context);
    times.push(performance.now() - start);
    const again = performance.now();
    for await (const _ of answerSurely(ask, context));
    whole.push(performance.now() - again);
  }
  return [
    metric('planks', 'first answer, ms, p50', percentile(times, 0.5)),
    metric('planks', 'first answer, ms, p95', percentile(times, 0.95), { below: 20 }),
    metric('planks', 'with other patterns, doubts and pictures, ms, p95', percentile(whole, 0.95)),
  ];
}

/** Time from 50 to 5,000 planks against n log n in the same run. */
function growth(size: Size): readonly Metric[] {
  const board = { width: inches(6), length: inches(48), perCarton: 10, lock: 'click' as const };
  const time = (region: Region): number => {
    const runs = Array.from({ length: size === 'quick' ? 5 : 15 }, () => {
      const start = performance.now();
      lay(region, board, 'stair-step');
      return performance.now() - start;
    });
    return percentile(runs, 0.5);
  };
  const small = time(square(10));
  const large = time(square(100));
  return [
    metric('planks', '50 planks laid, ms', small),
    metric('planks', '5,000 planks laid, ms', large),
    metric(
      'planks',
      'growth over n log n from 50 to 5,000 planks',
      large / small / ((5000 * Math.log(5000)) / (50 * Math.log(50))),
      {
        below: 1,
      },
    ),
  ];
}

function square(side: number): Region {
  const [width, depth] = [feet(side), feet(side)];
  const outline: Outline = [
    [0, 0],
    [width, 0],
    [width, depth],
    [0, depth],
  ];
  return { name: 'square', outline, holes: [], openings: [] };
}
