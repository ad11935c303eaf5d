/** Start pieces for the rest of a floor: as planned, along the pattern's line from elsewhere, or after what offcuts there are. */

import type { Plank, Rules } from './floor.ts';
import { jointLine, lineStagger } from './pattern.ts';
import type { RestRegion } from './rest-runs.ts';
import type { Offcut } from './rest-stock.ts';
import { endOf, isJointed, type Run, withinPlank } from './run.ts';
import { faultsAt, GRID, placesFor } from './start-place.ts';
import { laid } from './start-repair.ts';

/** Start pieces by region and run. */
export type RestStarts = readonly (readonly number[])[];

/** Places of the pattern's line that are tried, apart; fewer where many runs are left, so that the answer is not kept waiting. */
const STEP = GRID * 2;
const MOST_RUNS_TRIED = 4000;

/** Start pieces worth comparing, each keeping every rule against the row before it where a place does. */
export function restChoices(
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

/** The wanted start pieces, but for those that break a rule beside the row before: these move by as little as mends it. */
function kept(
  { runs, fixed, planned }: RestRegion,
  wanted: readonly number[],
  plank: Plank,
  rules: Rules,
): readonly number[] {
  const starts: number[] = [];
  runs.forEach((run, i) => {
    const told = i < fixed ? planned[i] : wanted[i];
    const start = isJointed(run, plank.length) ? (told ?? plank.length) : run.length;
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

/** Row by row the place whose start and end pieces the offcuts at hand serve best; `trims` weighs what is trimmed off them. */
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

/** The shortest offcut that holds a piece. */
function holding(lengths: readonly number[], piece: number): number | undefined {
  let least: number | undefined;
  for (const length of lengths) if (length >= piece && (least === undefined || length < least)) least = length;
  return least;
}

/** Takes a piece from the offcuts of its own end, or from a new plank, whose other end is then at hand. */
function take(own: number[], others: number[], piece: number, plank: number, { kerf, minEnd }: Rules): void {
  if (piece === plank) return;
  const offcut = holding(own, piece);
  if (offcut !== undefined) own.splice(own.indexOf(offcut), 1);
  else if (plank - piece - kerf >= minEnd) others.push(plank - piece - kerf);
}

/** True when the second comes before the first, figure by figure. */
function worse(one: readonly number[], other: readonly number[]): boolean {
  const i = one.findIndex((value, k) => value !== other[k]);
  return i >= 0 && (other[i] ?? 0) < (one[i] ?? 0);
}
