/** Scattered floors on seeded rooms: legality, planks against what is proved, usual practice and the rule of thumb, looks, time. */

import { floorResult } from '../../commands/floor/lay.ts';
import type { CoveredArea } from '../../src/layout/covered-area.ts';
import {
  isFewer,
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
import { doubleArea } from '../../src/units/geometry.ts';
import { inches } from '../../src/units/length.ts';
import { highs } from '../../src/workers/floor-flow.ts';
import { searchFloor } from '../../src/workers/floor-search.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { fewestOf } from '../outside/layout-oracle.ts';
import { average, type Metric, metric, percentile, type Size } from './metric.ts';
import { mulberry32, type RandomRoom, randomRooms } from './random-rooms.ts';
import { crowded, misplaced } from './scatter-looks.ts';
import { loopFigures } from './scatter-loop.ts';

const BOARDS = [
  [6, 48],
  [5, 36],
  [8, 60],
] as const;
const LIMITS = { gap: inches(0.375), kerf: inches(0.125), stagger: inches(6), minEnd: inches(8), minRip: inches(2) };
const SHAPES = 4;

/** Every figure of the search. */
export async function scatterFigures(size: Size): Promise<readonly Metric[]> {
  const solver = await highs();
  const found = cases(size).map((one) => searched(one, solver));
  return [
    ...quality(found),
    ...practice(found),
    ...looks(found),
    ...times(found),
    ...(await loopFigures(found, rulesFor('scattered'))),
    ...slack(size, solver),
  ];
}

interface Case {
  readonly shape: RandomRoom['shape'];
  readonly areas: readonly CoveredArea[];
  readonly board: Plank;
}

interface Found extends Case {
  readonly first: Plan;
  readonly last: Plan;
  readonly firstTime: number;
  readonly wholeTime: number;
  /** Processor time of both, which other work on the machine does not lengthen. */
  readonly processor: number;
}

/** The 60 rooms in three planks, and a room each of 200 more seeds. */
function cases(size: Size): readonly Case[] {
  const [rooms, seeds] = size === 'quick' ? [8, 8] : [60, 200];
  const of = ({ shape, name, outline }: RandomRoom, [width, length]: readonly [number, number]): Case => {
    const region: Region = { name, outline, holes: [], openings: [] };
    return {
      shape,
      areas: [{ region, angle: angleBySide(outline, 'long') }],
      board: { width: inches(width), length: inches(length), perCarton: 10, lock: 'click' },
    };
  };
  const more = Array.from({ length: seeds }, (_, i) => {
    const room = randomRooms(1000 + i, SHAPES)[i % SHAPES];
    return room ? [of(room, BOARDS[i % BOARDS.length] ?? BOARDS[0])] : [];
  });
  const boards = BOARDS.slice(0, size === 'quick' ? 1 : BOARDS.length);
  return [...randomRooms(60, rooms).flatMap((room) => boards.map((board) => of(room, board))), ...more.flat()];
}

function rulesFor(name: 'scattered' | 'offcut-first'): Rules {
  const pattern: Pattern = { name };
  return { ...LIMITS, pattern };
}

function searched(one: Case, solver: Awaited<ReturnType<typeof highs>>): Found {
  const rules = rulesFor('scattered');
  const used = process.cpuUsage();
  const begun = performance.now();
  const first = layFloor(one.areas, one.board, rules);
  const answered = performance.now();
  let last = first;
  if (!first.bound.proven || first.broken.length > 0) {
    for (const plan of searchFloor(one.areas, one.board, rules, solver)) if (!isFewer(last, plan)) last = plan;
  }
  return {
    ...one,
    first,
    last,
    firstTime: answered - begun,
    wholeTime: performance.now() - answered,
    processor: process.cpuUsage(used).user / 1000,
  };
}

function isLegal(plan: Plan): boolean {
  const data = floorResult(plan, purchaseOf(plan.planks, 300, 0, 10), undefined);
  return checkFloor(JSON.parse(JSON.stringify(data))).length === 0;
}

function quality(found: readonly Found[]): readonly Metric[] {
  const illegal = found.filter(({ first, last }) => !isLegal(first) || !isLegal(last)).length;
  const within = (some: readonly Found[], gap: number): number =>
    some.filter(({ last }) => last.planks - last.bound.best <= gap).length / some.length;
  const rectangles = found.filter(({ shape }) => shape === 'rectangle');
  const others = found.filter(({ shape }) => shape !== 'rectangle');
  return [
    metric('planks', 'searched: floors', found.length),
    metric('planks', 'searched: illegal by the independent checker', illegal, { below: 1 }),
    metric('planks', 'searched: rectangles at the proven bound, share', within(rectangles, 0), { atLeast: 1 }),
    metric('planks', 'searched: all rectilinear rooms at the proven bound, share', within(found, 0)),
    metric('planks', 'searched: all rectilinear rooms within 1, share', within(found, 1), { atLeast: 0.98 }),
    metric('planks', 'searched: all rectilinear rooms within 2, share', within(found, 2), { atLeast: 0.998 }),
    metric('planks', 'searched: L, U and T rooms within 1, share', within(others, 1)),
    metric('planks', 'searched: L, U and T rooms within 2, share', within(others, 2)),
    metric(
      'planks',
      'searched: first answer over the last, planks, average',
      average(found.map((f) => f.first.planks - f.last.planks)),
    ),
  ];
}

/** Against the last offcut first and area + 10%: planks over the searched plan, and floors with a broken rule, narrow strips aside. */
function practice(found: readonly Found[]): readonly Metric[] {
  const breaks = (plan: Plan): boolean => plan.broken.some(({ rule }) => rule !== 'minRip');
  const usual = found.map(({ areas, board }) => layFloor(areas, board, rulesFor('offcut-first')));
  const thumb = found.map(({ areas, board, last }) => {
    const area = areas.reduce((sum, { region }) => sum + doubleArea(region.outline) / 2n, 0n);
    return planksByArea(area, BigInt(board.length) * BigInt(board.width), [1000]) - last.planks;
  });
  return [
    metric(
      'planks',
      'searched: floors with a broken rule, searched, share',
      found.filter(({ last }) => breaks(last)).length / found.length,
    ),
    metric(
      'planks',
      'searched: floors with a broken rule, offcut first, share',
      usual.filter(breaks).length / found.length,
    ),
    metric(
      'planks',
      'searched: offcut first over searched, planks, average',
      average(usual.map((plan, i) => plan.planks - (found[i]?.last.planks ?? 0))),
    ),
    metric('planks', 'searched: area + 10% over searched, planks, average', average(thumb)),
    metric('planks', 'searched: area + 10% too few, share', thumb.filter((over) => over < 0).length / found.length),
  ];
}

/** How 20 rooms look with the last offcut first, and searched. */
function looks(found: readonly Found[]): readonly Metric[] {
  const some = found.slice(0, 20);
  const rules = rulesFor('scattered');
  const before = some.map(({ areas, board }) => ({ ...layFloor(areas, board, rulesFor('offcut-first')), rules }));
  const all = (plans: readonly Plan[], count: (plan: Plan) => number): number =>
    plans.reduce((sum, plan) => sum + count(plan), 0);
  return [
    metric('planks', 'looks, 20 rooms: in line or stairs, offcut first', all(before, misplaced)),
    metric(
      'planks',
      'looks, 20 rooms: in line or stairs, searched',
      all(
        some.map(({ last }) => last),
        misplaced,
      ),
      { below: 1 },
    ),
    metric('planks', 'looks, 20 rooms: joints in clusters, offcut first', all(before, crowded)),
    metric(
      'planks',
      'looks, 20 rooms: joints in clusters, searched',
      all(
        some.map(({ last }) => last),
        crowded,
      ),
    ),
  ];
}

function times(found: readonly Found[]): readonly Metric[] {
  const firsts = found.map(({ firstTime }) => firstTime);
  const wholes = found.map(({ wholeTime }) => wholeTime);
  const processor = found.map((one) => one.processor);
  return [
    metric('planks', 'searched: first answer, ms, p50', percentile(firsts, 0.5)),
    metric('planks', 'searched: first answer, ms, p95', percentile(firsts, 0.95), { below: 100 }),
    metric('planks', 'searched: search to its end, ms, p50', percentile(wholes, 0.5)),
    metric('planks', 'searched: search to its end, ms, p95', percentile(wholes, 0.95), { below: 2000 }),
    metric('planks', 'searched: all of it, ms of processor, p50', percentile(processor, 0.5)),
    metric('planks', 'searched: all of it, ms of processor, p95', percentile(processor, 0.95)),
  ];
}

/** Rooms of 2 to 5 rows in planks of 12 in, every joint tried on every inch: how much of what stays open is the bound's own slack. */
function slack(size: Size, solver: Awaited<ReturnType<typeof highs>>): readonly Metric[] {
  const random = mulberry32(5);
  const draw = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const rules: Rules = {
    ...rulesFor('scattered'),
    gap: inches(0),
    kerf: inches(1),
    stagger: inches(3),
    minEnd: inches(2),
    minRip: inches(1),
  };
  const board: Plank = { width: inches(4), length: inches(12), perCarton: 10, lock: 'click' };
  let [gap, own, reached, all] = [0, 0, 0, 0];
  for (let i = 0; i < (size === 'quick' ? 10 : 60); i++) {
    const [count, length] = [draw(2, 5), draw(25, 44)];
    const row = { from: 0, length };
    const rows = Array.from({ length: count }, () => row);
    const fewest = fewestOf({ rows, plank: 12, kerf: 1, minEnd: 2, stagger: 3, inLine: 0.5 });
    const [wide, deep] = [inches(length), inches(4 * count)];
    const region: Region = {
      name: 'small',
      outline: [
        [0, 0],
        [wide, 0],
        [wide, deep],
        [0, deep],
      ],
      holes: [],
      openings: [],
    };
    const last = [...searchFloor([{ region, angle: 0 }], board, rules, solver)].at(-1);
    if (fewest === undefined || !last || last.broken.length > 0) continue;
    all++;
    if (last.planks <= fewest) reached++;
    gap += last.planks - last.bound.best;
    own += Math.max(0, Math.min(last.planks, fewest) - last.bound.best);
  }
  return [
    metric('planks', 'searched: small rooms enumerated', all),
    metric('planks', 'searched: small rooms at their true fewest, share', all === 0 ? 0 : reached / all, {
      atLeast: 1,
    }),
    metric('planks', 'searched: small rooms: gap that is the bound’s own slack, share', gap === 0 ? 1 : own / gap),
  ];
}
