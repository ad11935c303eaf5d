/** Laying a floor with slanted walls or rows: rows by outer extent, pieces with their shapes, planks shared where cuts nest. */

import { at, boxOf, type Outline } from '../units/geometry.ts';
import { brokenRules, type Layout } from './bounds.ts';
import { groundArea, groundOf, shapeOf, within } from './covered-area.ts';
import { countPairs, type NestPiece, nestPlanks } from './cutting.ts';
import type { Frame, LaidRegion, Part, Piece, Plan, Plank, Region, Row, Rules } from './floor.ts';
import { frameOf } from './frame.ts';
import { endOf, isJointed, jointLine, lineStagger, pieceLengths, type Run, runsOf, withinPlank } from './runs.ts';
import { quickScatter, startsBy } from './scatter.ts';
import { chooseRowLine, leastWall, type SlicedRow, type Span, subtract, union, type WallLevel } from './slab.ts';
import { faultsAt, GRID, laid, placesFor, repairStarts, scatterFloor } from './starts.ts';

/** A row with the outlines (frame, even–odd) of what lies in it. */
interface SlantRow extends SlicedRow {
  readonly rings: readonly Outline[];
}

/** Rows from bottom to top; row lines lie at `line` + k × `width`. Empty rows are left out. */
function sliceSlanted(ground: readonly Outline[], line: number, width: number): readonly SlantRow[] {
  if (ground.length === 0) return [];
  const boxes = ground.map(boxOf);
  const [left, right] = [Math.min(...boxes.map(({ minX }) => minX)), Math.max(...boxes.map(({ maxX }) => maxX))];
  const [bottom, end] = [Math.min(...boxes.map(({ minY }) => minY)), Math.max(...boxes.map(({ maxY }) => maxY))];
  const rows: SlantRow[] = [];
  for (let v = bottom; v < end; ) {
    const offset = (((v - line) % width) + width) % width;
    const top = Math.min(v + width - offset, end);
    const rings = within(ground, { left: left - 1, right: right + 1, bottom: v, top });
    const runs = union(
      rings.map((ring): Span => {
        const { minX, maxX } = boxOf(ring);
        return { from: minX, to: maxX };
      }),
    );
    if (runs.length > 0) rows.push({ v, height: top - v, runs, rings });
    v = top;
  }
  return rows;
}

function levelsOf(ground: readonly Outline[]): readonly WallLevel[] {
  const found = new Map<number, { floor: Span[]; ceiling: Span[] }>();
  for (const path of ground) {
    path.forEach(([u, v], i) => {
      const [nextU, nextV] = at(path, i + 1);
      if (v !== nextV || u === nextU) return;
      const level = found.get(v) ?? { floor: [], ceiling: [] };
      found.set(v, level);
      // The area is to the left of every wall.
      if (nextU > u) level.floor.push({ from: u, to: nextU });
      else level.ceiling.push({ from: nextU, to: u });
    });
  }
  return [...found]
    .sort(([a], [b]) => a - b)
    .flatMap(([v, { floor, ceiling }]) =>
      (['floor', 'ceiling'] as const).flatMap((side): readonly WallLevel[] => {
        const spans =
          side === 'floor' ? subtract(union(floor), union(ceiling)) : subtract(union(ceiling), union(floor));
        return spans.length > 0 ? [{ v, side, spans }] : [];
      }),
    );
}

// Start pieces for rows with slanted ends: the joint line is positioned, or offcuts used, so that the cuts nest.

/** A run, and how far from its outer ends the walls cut either edge of its first and last board. */
interface SlantRun extends Run {
  readonly leftNear: number;
  readonly leftFar: number;
  readonly rightNear: number;
  readonly rightFar: number;
}

/** Start pieces by run, and those the pattern asks for, if any. */
interface SlantStarts {
  readonly starts: readonly number[];
  readonly patterned: readonly number[] | undefined;
}

/**
 * Start choices for one region worth cutting out and counting: the best few positions of the joint line, or the single
 * chain of offcuts.
 */
function slantStarts(runs: readonly SlantRun[], plank: Plank, rules: Rules, keep: number): readonly SlantStarts[] {
  const line = jointLine(rules.pattern, plank);
  if (!line) return [{ starts: offcutChain(runs, plank, rules), patterned: undefined }];
  const mend = { stagger: lineStagger(line, plank.length) < rules.stagger ? 0 : rules.stagger, minEnd: rules.minEnd };
  const origin = runs.find((run) => isJointed(run, plank.length))?.from ?? 0;
  const placings: { starts: number[]; short: number; planks: number }[] = [];
  for (const way of [-1, 1]) {
    for (let back = 0; back < plank.length; back += GRID) {
      const starts = runs.map((run) =>
        isJointed(run, plank.length)
          ? withinPlank(origin + plank.length - back + way * (run.row % line.rows) * line.step - run.from, plank.length)
          : run.length,
      );
      placings.push({ starts, ...judged(runs, starts, plank, rules) });
    }
  }
  placings.sort((a, b) => a.short - b.short || a.planks - b.planks);
  return placings.slice(0, keep).map(({ starts: patterned }) => ({
    starts: repairStarts(runs, patterned, plank.length, mend),
    patterned,
  }));
}

/**
 * Ends that are too short, and planks by lengths along the middle of the boards: exact for parallel cuts, slightly
 * optimistic otherwise.
 */
function judged(runs: readonly SlantRun[], starts: readonly number[], plank: Plank, rules: Rules) {
  const cuts = { starts: [] as number[], ends: [] as number[], whole: 0 };
  let short = 0;
  runs.forEach((run, i) => {
    if (!isJointed(run, plank.length)) return;
    const start = starts[i] ?? 0;
    const end = endOf(run.length, start, plank.length);
    if (Math.min(start, end) < rules.minEnd) short++;
    cuts.whole += Math.round((run.length - start - end) / plank.length);
    cuts.starts.push(start - (run.leftNear + run.leftFar) / 2);
    cuts.ends.push(end - (run.rightNear + run.rightFar) / 2);
  });
  const pairs = countPairs(cuts.starts, cuts.ends, plank.length, rules.kerf);
  return { short, planks: cuts.whole + cuts.starts.length + cuts.ends.length - pairs };
}

interface Offcut {
  readonly near: number;
  readonly far: number;
}

/** Starts each run with the offcut that nests best and keeps the rules, or else with a new plank. */
function offcutChain(runs: readonly SlantRun[], plank: Plank, rules: Rules): readonly number[] {
  const starts: number[] = [];
  let kept: Offcut[] = [];
  for (const run of runs) {
    if (!isJointed(run, plank.length)) {
      starts.push(run.length);
      continue;
    }
    const beside = laid(runs, starts, run.touching);
    // The longest start piece that the rest of an earlier end piece still yields, cut at this run's slant.
    const longest = kept.map((offcut) => longestFrom(offcut, run, plank, rules.kerf));
    const options = new Set([
      ...placesFor(run, beside, plank.length, rules),
      ...longest.filter((most) => most > 0 && most < plank.length),
    ]);
    let best: { start: number; score: readonly number[]; from: number } | undefined;
    for (const start of options) {
      let from = -1;
      longest.forEach((most, k) => {
        if (start < plank.length && most >= start && (from < 0 || most < (longest[from] ?? 0))) from = k;
      });
      const faults = faultsAt(run, start, beside, plank.length, rules);
      const score = [faults, from < 0 ? 1 : 0, (longest[from] ?? plank.length) - start, -start];
      if (!best || isLess(score, best.score)) best = { start, score, from };
    }
    const start = best?.start ?? plank.length;
    starts.push(start);
    kept = kept.filter((_, k) => k !== best?.from);
    const end = endOf(run.length, start, plank.length);
    kept.push({ near: end - run.rightNear, far: end - run.rightFar });
  }
  return starts;
}

function longestFrom({ near, far }: Offcut, run: SlantRun, plank: Plank, kerf: number): number {
  const rise = Math.max(Math.abs(near - far), Math.abs(run.leftNear - run.leftFar)) / plank.width;
  const clear = Math.ceil(kerf * Math.hypot(1, rise));
  return plank.length - clear - Math.max(near - run.leftNear, far - run.leftFar);
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const i = a.findIndex((value, index) => value !== b[index]);
  return i >= 0 && (a[i] ?? 0) < (b[i] ?? 0);
}

/** Positions of the joint line that are cut out and counted, per region. */
const KEPT = 6;

/**
 * Cut pieces from previous rooms that a room's options are counted with: all of them on a usual floor, only the nearest
 * in laying order on a larger one.
 */
const TRIED_WITH = 300;

interface Slanted extends Pick<Layout, 'name' | 'levels' | 'line'> {
  readonly region: Region;
  readonly frame: Frame;
  readonly rows: readonly SlantRow[];
  readonly runs: readonly SlantRun[];
}

type Cut = Omit<Piece, 'plank'>;

/**
 * Plans a floor with slanted walls or rows. Lengths are outer lengths, and the row rules apply to them. The only bound
 * is by area, so `proven` is set only when the count meets it. Never throws; a region in which the gap leaves nothing
 * gets no rows.
 */
export function laySlanted(
  areas: readonly { readonly region: Region; readonly angle: number }[],
  plank: Plank,
  rules: Rules,
): Plan {
  const grounds = areas.map(({ region, angle }) => groundOf(region, frameOf(region, angle), rules.gap));
  const sliced = areas.map(({ region, angle }, i) => sliceRegion(region, angle, grounds[i] ?? [], plank, rules));
  const square = BigInt(plank.length) * BigInt(plank.width);
  const area = Number((grounds.reduce((sum, ground) => sum + groundArea(ground), 0n) + square - 1n) / square);
  const scattered = rules.pattern.name === 'scattered' ? scatteredStarts(sliced, plank, rules, area) : [];
  const done: Cut[][][] = [];
  const layouts = sliced.map((part, i): Layout & Slanted => {
    let best: { way: SlantStarts; cuts: Cut[][]; score: readonly number[] } | undefined;
    const before = done.flat(2).filter(({ part: place }) => place !== 'whole');
    for (const way of [...scattered.slice(i, i + 1), ...slantStarts(part.runs, plank, rules, KEPT)]) {
      const layout = { ...part, ...way };
      const cuts = cutsOf(part, way.starts, plank);
      const broken = brokenRules(layout, plank, rules);
      const hard = broken.filter(({ rule }) => rule !== 'pattern').length;
      const planks = countPlanks([...before.slice(-TRIED_WITH), ...cuts.flat()], plank, rules.kerf);
      const score = [hard, broken.length - hard, planks];
      if (!best || isLess(score, best.score)) best = { way, cuts, score };
    }
    done.push(best?.cuts ?? []);
    return { ...part, starts: best?.way.starts ?? [], patterned: best?.way.patterned };
  });
  const { regions, planks, reused } = numbered(layouts, done, plank, rules.kerf);
  return {
    plank,
    rules,
    regions,
    planks,
    reused,
    bound: { area, row: area, best: area, proven: planks === area },
    broken: layouts.flatMap((layout) => brokenRules(layout, plank, rules)),
  };
}

/** Start pieces scattered over all regions, with offcuts computed from outer lengths as if every end were square. */
function scatteredStarts(parts: readonly Slanted[], plank: Plank, rules: Rules, least: number): readonly SlantStarts[] {
  const floor = scatterFloor(
    parts.map(({ runs }) => runs),
    plank,
    rules,
  );
  return startsBy(parts, quickScatter(floor, least));
}

function sliceRegion(
  region: Region,
  angle: number,
  ground: Slanted['region']['holes'],
  plank: Plank,
  rules: Rules,
): Slanted {
  const levels = levelsOf(ground);
  const bottom = Math.min(...ground.flat().map(([, v]) => v), Number.MAX_SAFE_INTEGER);
  const line = levels.length > 0 ? chooseRowLine(levels, plank.width, rules.minRip, leastWall(plank, rules)) : bottom;
  const rows = sliceSlanted(ground, line, plank.width);
  const runs = runsOf(rows).map((run): SlantRun => {
    const row = rows[run.row];
    const length = Math.min(run.length, plank.length);
    const box = { v: row?.v ?? 0, height: row?.height ?? 0, length };
    const { left } = shapeOf({ ...box, u: run.from }, row?.rings ?? []);
    const { right } = shapeOf({ ...box, u: run.from + run.length - length }, row?.rings ?? []);
    return {
      ...run,
      leftNear: left?.near ?? 0,
      leftFar: left?.far ?? 0,
      rightNear: right?.near ?? 0,
      rightFar: right?.far ?? 0,
    };
  });
  return { region, name: region.name, frame: frameOf(region, angle), levels, line, rows, runs };
}

function cutsOf(part: Slanted, starts: readonly number[], plank: Plank): Cut[][] {
  const rows: Cut[][] = part.rows.map(() => []);
  part.runs.forEach((run, i) => {
    const row = part.rows[run.row];
    if (!row) return;
    const edge = row.height === plank.width ? 'full' : run.row === 0 ? 'near' : 'far';
    const lengths = pieceLengths(run, starts[i] ?? 0, plank.length);
    let u = run.from;
    lengths.forEach((length, k) => {
      const place = partOf(length, k, lengths.length, isJointed(run, plank.length), plank);
      rows[run.row]?.push({
        u,
        length,
        part: place,
        edge,
        ...shapeOf({ u, length, v: row.v, height: row.height }, row.rings),
      });
      u += length;
    });
  });
  return rows;
}

function partOf(length: number, index: number, count: number, jointed: boolean, plank: Plank): Part {
  if (length === plank.length) return 'whole';
  if (!jointed || plank.lock === 'none') return 'any';
  return index === 0 ? 'start' : index === count - 1 ? 'end' : 'whole';
}

/** A piece as it is cut from its plank; a ripped one takes the full width over its outer length. */
function nestOf({ length, part, edge, left, right }: Cut, index: number): NestPiece | undefined {
  if (part === 'whole') return undefined;
  const slanted = edge === 'full';
  return {
    index,
    length,
    part,
    near: [slanted ? (left?.near ?? 0) : 0, length - (slanted ? (right?.near ?? 0) : 0)],
    far: [slanted ? (left?.far ?? 0) : 0, length - (slanted ? (right?.far ?? 0) : 0)],
  };
}

function nested(cuts: readonly Cut[], plank: Plank, kerf: number): readonly (readonly NestPiece[])[] {
  const pieces = cuts.flatMap((cut, index) => nestOf(cut, index) ?? []);
  return nestPlanks(pieces, { length: plank.length, width: plank.width, kerf, lock: plank.lock });
}

function countPlanks(cuts: readonly Cut[], plank: Plank, kerf: number): number {
  return cuts.filter(({ part }) => part === 'whole').length + nested(cuts, plank, kerf).length;
}

function numbered(
  layouts: readonly Slanted[],
  cuts: readonly (readonly (readonly Cut[])[])[],
  plank: Plank,
  kerf: number,
): { regions: readonly LaidRegion[]; planks: number; reused: number } {
  const shared = nested(cuts.flat(2), plank, kerf);
  const sources = new Map(shared.flatMap((pieces, source) => pieces.map(({ index }) => [index, source] as const)));
  const numbers = new Map<number, number>();
  let [last, index] = [0, 0];
  const number = (): number => {
    const source = sources.get(index++);
    const known = source === undefined ? undefined : numbers.get(source);
    if (known !== undefined) return known;
    last++;
    if (source !== undefined) numbers.set(source, last);
    return last;
  };
  const regions = layouts.map(({ region, frame, rows }, i) => ({
    ...region,
    frame,
    rows: rows.map(
      ({ v, height }, r): Row => ({
        v,
        height,
        pieces: (cuts[i]?.[r] ?? []).map((cut): Piece => ({ ...cut, plank: number() })),
      }),
    ),
  }));
  return { regions, planks: last, reused: shared.filter((pieces) => pieces.length > 1).length };
}
