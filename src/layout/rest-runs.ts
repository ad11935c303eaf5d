/** The runs that are still to be laid of a floor begun, and the row in place before them as it was really laid. */

import type { LaidRegion, Plan, Plank } from './floor.ts';
import { endOf, isJointed, type Run, runsOf, withinPlank } from './run.ts';
import { runsIn } from './run-pieces.ts';

/** A run as it lies: its first or its last piece in ticks, if told. `run` counts from 0 within its row. */
export interface LaidRun {
  readonly run: number;
  readonly start?: number;
  readonly end?: number;
}

/** How far a region is laid: whole rows, and the last one as it lies. */
export interface Progress {
  readonly region: string;
  readonly rows: number;
  readonly last: readonly LaidRun[];
}

/** Runs to lay in laying order; the first `fixed` of them lie already. `start` is the planned start piece, or the real one. */
export interface RestRegion {
  readonly region: string;
  readonly runs: readonly Run[];
  readonly fixed: number;
  readonly planned: readonly number[];
  /** Index in the region's rows of the row that `runs` number 0. */
  readonly firstRow: number;
}

/** A told row that cannot be as told: its pieces miss the run by `by` ticks; `length` is the run's. */
export interface MisfitRow {
  readonly region: string;
  readonly run: number;
  readonly length: number;
  readonly planned: number;
}

/** A tape and a wall that wanders may differ by as much (8128 ticks are an inch). */
const SLACK = 8128;

/** What is left to lay of every region; regions without progress are not begun. Misfits instead where a told row cannot be. */
export function restOf(
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
    const told = i < fixed ? progress?.last.find((one) => one.run === i) : undefined;
    if (!run || !told) return start;
    const real = realStart(run, told, plank.length);
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

/** The start piece of a run told by its first or last piece; undefined where the run cannot have such pieces. */
function realStart(run: Run, { start, end }: LaidRun, plank: number): number | undefined {
  if ((start ?? 0) > plank || (end ?? 0) > plank) return undefined;
  if (!isJointed(run, plank)) {
    const told = start ?? end ?? run.length;
    return Math.abs(told - run.length) <= SLACK ? run.length : undefined;
  }
  if (start === undefined) return end === undefined ? undefined : withinPlank(run.length - end, plank);
  if (end === undefined) return start;
  const apart = Math.abs(endOf(run.length, start, plank) - end);
  return Math.min(apart, plank - apart) <= SLACK ? start : undefined;
}
