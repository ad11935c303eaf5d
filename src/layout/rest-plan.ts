/** The rest of a floor from what is really there: every piece with its source, how many whole planks that takes, what is broken. */

import type { CutPiece } from './cut-pool.ts';
import type { BrokenRule, Part, Plan } from './floor.ts';
import { type MisfitRow, type Progress, type RestRegion, restOf } from './rest-runs.ts';
import { type RestStarts, restChoices } from './rest-starts.ts';
import { type Offcut, sourced } from './rest-stock.ts';
import { endOf, isJointed, pieceLengths, type Run, tooNear } from './run.ts';

/** Whole planks and offcuts at hand, in ticks. */
export interface Stock {
  readonly planks: number;
  readonly offcuts: readonly Offcut[];
}

/** A piece to lay; `from` is an offcut by its index, or a whole plank numbered from 1 as it is begun. */
export interface RestPiece {
  readonly u: number;
  readonly length: number;
  readonly part: Part;
  readonly from: { readonly offcut: number } | { readonly plank: number };
}

/** A row to lay; `row` counts from 0 in its region. */
export interface RestRow {
  readonly region: string;
  readonly row: number;
  readonly pieces: readonly RestPiece[];
}

/** `planks` is how many whole planks the rows take, `bound` what no layout of them can take fewer than. */
export interface RestPlan {
  readonly rows: readonly RestRow[];
  readonly planks: number;
  readonly bound: number;
  readonly broken: readonly BrokenRule[];
  /** The last row as it lies, by region. */
  readonly before: readonly {
    readonly region: string;
    readonly row: number;
    readonly runs: readonly { readonly u: number; readonly lengths: readonly number[] }[];
  }[];
}

/**
 * The best rest found of a floor laid as far as `progress` tells: fewest broken rules, then enough planks if any choice has
 * them, then the fewest off the plan, then the fewest planks. Misfits where a told row cannot lie so. Units: ticks.
 */
export function planRest(
  plan: Plan,
  progress: readonly Progress[],
  stock: Stock,
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
  stock: Stock,
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

/** ⌈(Σ(run + kerf·⌈run / plank⌉) − Σ(offcut + kerf)) / (plank + kerf)⌉: every piece of a plank or an offcut but one costs a kerf. */
function boundOf(rest: readonly RestRegion[], { plank, rules }: Plan, { offcuts }: Stock): number {
  const runs = rest.flatMap(({ runs: own, fixed }) => own.slice(fixed));
  const needed = runs.reduce((sum, { length }) => sum + length + rules.kerf * Math.ceil(length / plank.length), 0);
  const there = offcuts.reduce((sum, { length }) => sum + length + rules.kerf, 0);
  return Math.max(0, Math.ceil((needed - there) / (plank.length + rules.kerf)));
}

/** Rules broken by the rows to lay; strips along walls are those of the plan, whose rows these are. */
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
