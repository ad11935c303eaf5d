/** Planning the rest of a floor from what is already laid and the planks and offcuts actually on hand. */

import { type CutPiece, pack, pair, type SharedPlanks, sharePlanks } from './cutting.ts';
import type { BrokenRule, LaidRegion, Part, Plan, Plank, Rules } from './floor.ts';
import {
  endOf,
  isJointed,
  jointLine,
  lineStagger,
  pieceLengths,
  type Run,
  runsIn,
  runsOf,
  tooNear,
  withinPlank,
} from './runs.ts';
import { faultsAt, GRID, laid, placesFor } from './starts.ts';

/** A run as laid: its first or last piece in ticks, if given. `run` counts from 0 within its row. */
interface LaidRun {
  readonly run: number;
  readonly start?: number;
  readonly end?: number;
}

/** How far a region is laid: whole rows, and the last one as it really is. */
export interface Progress {
  readonly region: string;
  readonly rows: number;
  readonly last: readonly LaidRun[];
}

/**
 * Runs to lay, in laying order; the first `fixed` of them are already in place. `start` is the start piece, planned or
 * real.
 */
interface RestRegion {
  readonly region: string;
  readonly runs: readonly Run[];
  readonly fixed: number;
  readonly planned: readonly number[];
  /** Index in the region's rows of the row that `runs` call 0. */
  readonly firstRow: number;
}

/** A row that can't be as described: its pieces miss the run by `by` ticks; `length` is the run's. */
interface MisfitRow {
  readonly region: string;
  readonly run: number;
  readonly length: number;
  readonly planned: number;
}

/** Tolerance for tapes and wavy walls: 1 in (8128 ticks). */
const SLACK = 8128;

/**
 * What is left to lay in each region; regions without progress haven't been started. Returns misfits if a described row
 * is impossible.
 */
function restOf(
  plan: Plan,
  progress: readonly Progress[],
): { readonly rest: readonly RestRegion[] } | { readonly misfits: readonly MisfitRow[] } {
  const misfits: MisfitRow[] = [];
  const rest = plan.regions.map((region) => {
    const own = progress.find((one) => one.region === region.name);
    return restRegion(region, own, plan.plank, misfits);
  });
  return misfits.length > 0 ? { misfits } : { rest: rest.filter(({ runs, fixed }) => runs.length > fixed) };
}

function restRegion(
  region: LaidRegion,
  progress: Progress | undefined,
  plank: Plank,
  misfits: MisfitRow[],
): RestRegion {
  const firstRow = Math.max(0, (progress?.rows ?? 0) - 1);
  const rows = region.rows.slice(firstRow);
  const parts = rows.map((row) => runsIn(row));
  const runs = runsOf(
    rows.map((row, i) => ({
      v: row.v,
      height: row.height,
      runs: (parts[i] ?? []).map((pieces) => {
        const [first, last] = [pieces[0], pieces.at(-1)];
        return { from: first?.u ?? 0, to: (last?.u ?? 0) + (last?.length ?? 0) };
      }),
    })),
  );
  const planned = parts.flat().map((pieces) => pieces[0]?.length ?? 0);
  const fixed = progress && progress.rows > 0 ? runs.filter(({ row }) => row === 0).length : 0;
  const starts = planned.map((start, i) => {
    const run = runs[i];
    const given = i < fixed ? progress?.last.find((one) => one.run === i) : undefined;
    if (!run || !given) return start;
    const real = realStart(run, given, plank.length);
    if (real === undefined)
      misfits.push({
        region: region.name,
        run: i,
        length: run.length,
        planned: endOf(run.length, start, plank.length),
      });
    return real ?? start;
  });
  return { region: region.name, runs, fixed, planned: starts, firstRow };
}

/** The start piece of a run given its first or last piece; undefined if the run can't have such pieces. */
function realStart(run: Run, { start, end }: LaidRun, plank: number): number | undefined {
  if ((start ?? 0) > plank || (end ?? 0) > plank) return undefined;
  if (!isJointed(run, plank)) {
    const given = start ?? end ?? run.length;
    return Math.abs(given - run.length) <= SLACK ? run.length : undefined;
  }
  if (start === undefined) return end === undefined ? undefined : withinPlank(run.length - end, plank);
  if (end === undefined) return start;
  const apart = Math.abs(endOf(run.length, start, plank) - end);
  return Math.min(apart, plank - apart) <= SLACK ? start : undefined;
}

// Cutting pieces from stock: offcuts first, then whole planks, whose rests are reused.

/**
 * An offcut on hand: the left end of a plank makes an end piece, the right end a start piece; `any` only fits between
 * two walls.
 */
export interface Offcut {
  readonly length: number;
  readonly end: 'left' | 'right' | 'any';
}

/** Where each piece comes from, by index: an offcut by index, or a whole plank numbered from 0. */
interface Sourced {
  readonly sources: ReadonlyMap<number, { readonly offcut: number } | { readonly plank: number }>;
  readonly planks: number;
}

interface Opened extends SharedPlanks {
  readonly offcut: number;
}

/**
 * Finds every piece a source that really yields it. A longer piece fits fewer offcuts, so taking the longest first,
 * each from the shortest offcut that holds it, cuts the most and longest pieces from offcuts; the rest are paired in
 * whole planks.
 */
export function sourced(pieces: readonly CutPiece[], offcuts: readonly Offcut[], plank: Plank, kerf: number): Sourced {
  const loose = plank.lock === 'none' ? pieces.map((piece) => ({ ...piece, part: 'any' as const })) : pieces;
  const opened: Opened[] = offcuts.map(({ length }, offcut) => ({ offcut, pieces: [], rest: length + kerf }));
  const unserved: CutPiece[] = [];
  const free = new Set(opened);
  for (const piece of loose.filter(({ part }) => part !== 'any').sort(longestFirst)) {
    const wanted = piece.part === 'start' ? 'right' : 'left';
    const fit = shortest(
      [...free].filter(({ offcut, rest }) => offcuts[offcut]?.end === wanted && rest >= piece.length + kerf),
    );
    if (fit) {
      free.delete(fit);
      fit.pieces.push(piece);
      fit.rest -= piece.length + kerf;
    } else unserved.push(piece);
  }
  const starts = unserved.filter(({ part }) => part === 'start');
  const ends = unserved.filter(({ part }) => part === 'end');
  const paired = pair(starts, ends, plank.length, kerf);
  const shorts = loose.filter(({ part }) => part === 'any').sort(longestFirst);
  // Two tries for the shorts: wherever they fit best, or from offcuts first and then along with the rest. Keep the one
  // with fewer planks.
  const filled = opened.map((one) => ({ ...one, pieces: [...one.pieces] }));
  const left = shorts.filter((piece) => !putInto(filled, piece, kerf));
  const shared = sharePlanks([...unserved, ...left], plank.length, kerf, plank.lock);
  const packed = pack(shorts, [...opened, ...paired], plank.length, kerf).slice(opened.length);
  const isShared = shared.length < packed.length;
  const planks = isShared ? shared : packed;
  const sources = new Map<number, { offcut: number } | { plank: number }>();
  for (const { offcut, pieces: own } of isShared ? filled : opened)
    for (const { index } of own) sources.set(index, { offcut });
  planks.forEach(({ pieces: own }, number) => {
    for (const { index } of own) sources.set(index, { plank: number });
  });
  return { sources, planks: planks.length };
}

/** Puts a piece from any part into the shortest rest that holds it; false when none does. */
function putInto(opened: readonly Opened[], piece: CutPiece, kerf: number): boolean {
  const fit = shortest(opened.filter(({ rest }) => rest >= piece.length + kerf));
  if (!fit) return false;
  fit.pieces.push(piece);
  fit.rest -= piece.length + kerf;
  return true;
}

function shortest(opened: readonly Opened[]): Opened | undefined {
  return opened.reduce<Opened | undefined>((best, one) => (!best || one.rest < best.rest ? one : best), undefined);
}

function longestFirst(a: CutPiece, b: CutPiece): number {
  return b.length - a.length || a.index - b.index;
}

// Choosing start pieces for the rest: as planned, along the pattern's line from elsewhere, or by the offcuts on hand.

type RestStarts = readonly (readonly number[])[];

/** Spacing of the line positions tried; wider when many runs are left, to keep the answer fast. */
const STEP = GRID * 2;
const MOST_RUNS_TRIED = 4000;

/** Candidate start pieces, each keeping every rule against the previous row if some position does. */
function restChoices(
  rest: readonly RestRegion[],
  offcuts: readonly Offcut[],
  plank: Plank,
  rules: Rules,
): readonly RestStarts[] {
  const choices: RestStarts[] = [
    rest.map((region) => kept(region, region.planned, plank, rules)),
    byOffcuts(rest, offcuts, plank, rules, 1),
    byOffcuts(rest, offcuts, plank, rules, 0),
  ];
  const line = jointLine(rules.pattern, plank);
  if (!line || lineStagger(line, plank.length) < rules.stagger) return choices;
  const runs = rest.reduce((sum, region) => sum + region.runs.length, 0);
  const step = Math.max(STEP, Math.ceil((plank.length * 2 * runs) / MOST_RUNS_TRIED / GRID) * GRID);
  for (const way of [1, -1] as const) {
    for (let base = 0; base < plank.length; base += step) {
      const onLine = ({ row, from }: Run): number =>
        withinPlank(base + way * (row % line.rows) * line.step - from, plank.length);
      choices.push(rest.map((region) => kept(region, region.runs.map(onLine), plank, rules)));
    }
  }
  return choices;
}

/** The wanted start pieces; those that break a rule beside the previous row move by as little as fixes it. */
function kept(
  { runs, fixed, planned }: RestRegion,
  wanted: readonly number[],
  plank: Plank,
  rules: Rules,
): readonly number[] {
  const starts: number[] = [];
  runs.forEach((run, i) => {
    const given = i < fixed ? planned[i] : wanted[i];
    const start = isJointed(run, plank.length) ? (given ?? plank.length) : run.length;
    if (i < fixed) {
      starts.push(start);
      return;
    }
    const beside = laid(runs, starts, run.touching);
    const faults = (place: number): number => faultsAt(run, place, beside, plank.length, rules);
    if (faults(start) === 0) {
      starts.push(start);
      return;
    }
    const away = (place: number): number => {
      const rest = Math.abs(place - start) % plank.length;
      return Math.min(rest, plank.length - rest);
    };
    const places = [start, ...placesFor(run, beside, plank.length, rules)];
    starts.push(
      places.reduce((best, place) => (worse([faults(best), away(best)], [faults(place), away(place)]) ? place : best)),
    );
  });
  return starts;
}

/**
 * Row by row, the position whose start and end pieces best use the offcuts on hand; `trims` weighs what gets trimmed
 * off them.
 */
function byOffcuts(
  rest: readonly RestRegion[],
  offcuts: readonly Offcut[],
  plank: Plank,
  rules: Rules,
  trims: 0 | 1,
): RestStarts {
  const rights = offcuts.filter(({ end }) => end === 'right').map(({ length }) => length);
  const lefts = offcuts.filter(({ end }) => end === 'left').map(({ length }) => length);
  return rest.map(({ runs, fixed, planned }) => {
    const starts: number[] = [];
    runs.forEach((run, i) => {
      if (i < fixed || !isJointed(run, plank.length)) {
        starts.push(i < fixed ? (planned[i] ?? 0) : run.length);
        return;
      }
      const beside = laid(runs, starts, run.touching);
      const score = (start: number): readonly number[] => {
        const end = endOf(run.length, start, plank.length);
        const [right, left] = [holding(rights, start), holding(lefts, end)];
        const served =
          Number(start === plank.length || right !== undefined) + Number(end === plank.length || left !== undefined);
        const trimmed = (right === undefined ? 0 : right - start) + (left === undefined ? 0 : left - end);
        return [faultsAt(run, start, beside, plank.length, rules), -served, trims * trimmed, -start];
      };
      const places = [
        ...placesFor(run, beside, plank.length, rules),
        ...rights,
        ...lefts.map((left) => withinPlank(run.length - left, plank.length)),
      ].filter((start) => start > 0 && start <= plank.length && start < run.length);
      const start = places.reduce(
        (best, place) => (worse(score(best), score(place)) ? place : best),
        plank.length as number,
      );
      starts.push(start);
      const end = endOf(run.length, start, plank.length);
      take(rights, lefts, start, plank.length, rules);
      take(lefts, rights, end, plank.length, rules);
    });
    return starts;
  });
}

function holding(lengths: readonly number[], piece: number): number | undefined {
  let least: number | undefined;
  for (const length of lengths) if (length >= piece && (least === undefined || length < least)) least = length;
  return least;
}

/** Takes a piece from the offcuts for its own end, or from a new plank, whose other end then becomes available. */
function take(own: number[], others: number[], piece: number, plank: number, { kerf, minEnd }: Rules): void {
  if (piece === plank) return;
  const offcut = holding(own, piece);
  if (offcut !== undefined) own.splice(own.indexOf(offcut), 1);
  else if (plank - piece - kerf >= minEnd) others.push(plank - piece - kerf);
}

function worse(one: readonly number[], other: readonly number[]): boolean {
  const i = one.findIndex((value, k) => value !== other[k]);
  return i >= 0 && (other[i] ?? 0) < (one[i] ?? 0);
}

export interface RestStock {
  readonly planks: number;
  readonly offcuts: readonly Offcut[];
}

/** A piece to lay; `from` is an offcut by index, or a whole plank numbered from 1 in the order they are opened. */
export interface RestPiece {
  readonly u: number;
  readonly length: number;
  readonly part: Part;
  readonly from: { readonly offcut: number } | { readonly plank: number };
}

/** `row` counts from 0 in its region. */
interface RestRow {
  readonly region: string;
  readonly row: number;
  readonly pieces: readonly RestPiece[];
}

/** `planks` is how many whole planks the rows take; `bound` is the minimum for any layout of them. */
export interface RestPlan {
  readonly rows: readonly RestRow[];
  readonly planks: number;
  readonly bound: number;
  readonly broken: readonly BrokenRule[];
  readonly before: readonly {
    readonly region: string;
    readonly row: number;
    readonly runs: readonly { readonly u: number; readonly lengths: readonly number[] }[];
  }[];
}

/**
 * The best plan found for the rest of a floor laid as far as `progress` says: fewest broken rules, then enough planks
 * if any choice has enough, then the fewest changes to the plan, then the fewest planks. Returns misfits if a described
 * row is impossible. Units: ticks.
 */
export function planRest(
  plan: Plan,
  progress: readonly Progress[],
  stock: RestStock,
): RestPlan | { readonly misfits: readonly MisfitRow[] } {
  const found = restOf(plan, progress);
  if ('misfits' in found) return found;
  const { rest } = found;
  const { plank, rules } = plan;
  let best: { score: readonly number[]; starts: RestStarts } | undefined;
  for (const [i, starts] of restChoices(rest, stock.offcuts, plank, rules).entries()) {
    const pieces = cutsOf(rest, starts, plan);
    const { planks } = sourced(pieces.cut, stock.offcuts, plank, rules.kerf);
    const needed = planks + pieces.whole;
    const score = [brokenIn(rest, starts, plan).length, Math.max(0, needed - stock.planks), i === 0 ? 0 : 1, needed];
    if (!best || isLess(score, best.score)) best = { score, starts };
  }
  const starts = best?.starts ?? [];
  return {
    ...rowsOf(rest, starts, plan, stock),
    bound: boundOf(rest, plan, stock),
    broken: brokenIn(rest, starts, plan),
    before: rest.flatMap(({ region, runs, fixed, planned, firstRow }) =>
      fixed === 0
        ? []
        : [
            {
              region,
              row: firstRow,
              runs: runs
                .slice(0, fixed)
                .map((run, i) => ({ u: run.from, lengths: pieceLengths(run, planned[i] ?? 0, plank.length) })),
            },
          ],
    ),
  };
}

interface Cuts {
  readonly cut: readonly CutPiece[];
  readonly whole: number;
  /** Every piece in laying order with its part. */
  readonly all: readonly {
    readonly region: RestRegion;
    readonly run: Run;
    readonly u: number;
    readonly length: number;
    readonly part: Part;
  }[];
}

function cutsOf(rest: readonly RestRegion[], starts: RestStarts, { plank }: Plan): Cuts {
  const all = rest.flatMap((region, r) =>
    region.runs.flatMap((run, i) => {
      if (i < region.fixed) return [];
      let u = run.from;
      const lengths = pieceLengths(run, starts[r]?.[i] ?? 0, plank.length);
      return lengths.map((length, k) => {
        const piece = { region, run, u, length, part: partOf(length, k, lengths.length, run, plank) };
        u += length;
        return piece;
      });
    }),
  );
  const cut = all.flatMap(({ length, part }, index): CutPiece[] => (part === 'whole' ? [] : [{ length, part, index }]));
  return { all, cut, whole: all.length - cut.length };
}

function partOf(length: number, index: number, count: number, run: Run, plank: Plan['plank']): Part {
  if (length === plank.length) return 'whole';
  if (!isJointed(run, plank.length) || plank.lock === 'none') return 'any';
  return index === 0 ? 'start' : index === count - 1 ? 'end' : 'whole';
}

function rowsOf(
  rest: readonly RestRegion[],
  starts: RestStarts,
  plan: Plan,
  stock: RestStock,
): Pick<RestPlan, 'rows' | 'planks'> {
  const { all, cut } = cutsOf(rest, starts, plan);
  const { sources } = sourced(cut, stock.offcuts, plan.plank, plan.rules.kerf);
  const numbers = new Map<number, number>();
  let planks = 0;
  const rows: { region: string; row: number; pieces: RestPiece[] }[] = [];
  all.forEach(({ region, run, u, length, part }, index) => {
    const source = sources.get(index);
    let from: RestPiece['from'];
    if (source === undefined) from = { plank: ++planks };
    else if ('offcut' in source) from = source;
    else {
      const known = numbers.get(source.plank) ?? ++planks;
      numbers.set(source.plank, known);
      from = { plank: known };
    }
    const row = region.firstRow + run.row;
    const open = rows.at(-1);
    const piece = { u, length, part, from };
    if (open && open.region === region.region && open.row === row) open.pieces.push(piece);
    else rows.push({ region: region.region, row, pieces: [piece] });
  });
  return { rows, planks };
}

/**
 * ⌈(Σ(run + kerf·⌈run / plank⌉) − Σ(offcut + kerf)) / (plank + kerf)⌉: every piece of a plank or an offcut except one
 * costs a kerf.
 */
function boundOf(rest: readonly RestRegion[], { plank, rules }: Plan, { offcuts }: RestStock): number {
  const runs = rest.flatMap(({ runs: own, fixed }) => own.slice(fixed));
  const needed = runs.reduce((sum, { length }) => sum + length + rules.kerf * Math.ceil(length / plank.length), 0);
  const there = offcuts.reduce((sum, { length }) => sum + length + rules.kerf, 0);
  return Math.max(0, Math.ceil((needed - there) / (plank.length + rules.kerf)));
}

/** Rules broken by the rows to lay. Strips along walls are the same as in the plan, since the rows are. */
function brokenIn(rest: readonly RestRegion[], starts: RestStarts, { plank, rules }: Plan): readonly BrokenRule[] {
  return rest.flatMap(({ region, runs, fixed, firstRow }, r) =>
    runs.flatMap((run, i): BrokenRule[] => {
      if (i < fixed || !isJointed(run, plank.length)) return [];
      const start = starts[r]?.[i] ?? 0;
      const end = endOf(run.length, start, plank.length);
      const row = firstRow + run.row;
      const near = run.touching.flatMap((j) => {
        const other = runs[j];
        return other ? tooNear(run, start, other, starts[r]?.[j] ?? 0, plank.length, rules.stagger) : [];
      });
      return [
        ...(start < rules.minEnd ? [{ rule: 'minEnd' as const, region, row, at: run.from }] : []),
        ...(end < rules.minEnd ? [{ rule: 'minEnd' as const, region, row, at: run.from + run.length - end }] : []),
        ...near.map((at) => ({ rule: 'stagger' as const, region, row, at })),
      ];
    }),
  );
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const i = a.findIndex((value, index) => value !== b[index]);
  return i >= 0 && (a[i] ?? 0) < (b[i] ?? 0);
}
