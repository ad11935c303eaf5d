/** Laying a floor whose walls or rows are slanted: rows by outer extents, pieces with their shapes, planks shared where cuts nest. */

import { brokenRules, type Layout } from './broken.ts';
import { type NestPiece, nestPlanks } from './cut-nest.ts';
import type { Frame, LaidRegion, Part, Piece, Plan, Plank, Region, Row, Rules } from './floor.ts';
import { frameOf } from './frame.ts';
import { groundArea, groundOf } from './ground.ts';
import { shapeOf } from './piece-shape.ts';
import { chooseRowLine } from './row-line.ts';
import { isJointed, pieceLengths, runsOf } from './run.ts';
import { quickScatter, startsBy } from './scatter.ts';
import { scatterFloor } from './scatter-floor.ts';
import { levelsOf, type SlantRow, sliceSlanted } from './slant-slice.ts';
import { type SlantRun, type SlantStarts, slantStarts } from './slant-starts.ts';
import { leastWall } from './wall-level.ts';

/** Placings of the joint line that are cut out and counted, a region. */
const KEPT = 6;

/** Cut pieces of the rooms before that a room's placings are tried with: all of a usual floor's, and of a larger one those nearest in the laying. */
const TRIED_WITH = 300;

interface Slanted extends Pick<Layout, 'name' | 'levels' | 'line'> {
  readonly region: Region;
  readonly frame: Frame;
  readonly rows: readonly SlantRow[];
  readonly runs: readonly SlantRun[];
}

type Cut = Omit<Piece, 'plank'>;

/**
 * The plan of a floor with slanted walls, or with rows at a slant: lengths are outer lengths, and the row rules hold for them.
 * The one bound is the area's, so `proven` is told only where the count meets it. Throws nothing; a region in which the gap
 * leaves nothing gets no rows.
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

/** Start pieces scattered over all regions, offcuts reckoned by outer lengths as if every end were square. */
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

/** The pieces of every row from left to right, without plank numbers. */
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

/** A piece as it is cut from its plank; a ripped one takes the whole width at its outer length. */
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

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const i = a.findIndex((value, index) => value !== b[index]);
  return i >= 0 && (a[i] ?? 0) < (b[i] ?? 0);
}
