/** Rows laid in order, each beginning with the offcut of an earlier one: where a search for scattered joints sets out from. */

import { endOf, isJointed, withinPlank } from './run.ts';
import { endsKept, type ScatterFloor } from './scatter-floor.ts';
import { ScatterState } from './scatter-state.ts';

/** Offcuts serve one to three rows on, so that neighbours come from other chains; each chain sets out from so many places. */
const CHAINS = [1, 2, 3];
const SET_OUTS = 16;
/** Chains begun in all: a large floor sets out from fewer places. */
const MOST_RUNS = 640;

/** The chained layout that costs least. */
export function bestChain(floor: ScatterFloor): ScatterState {
  let best: ScatterState | undefined;
  const outs = Math.max(2, Math.min(SET_OUTS, Math.floor(MOST_RUNS / Math.max(1, floor.runs.length))));
  for (const chains of CHAINS) {
    for (let k = 0; k < outs; k++) {
      const state = new ScatterState(floor, chained(floor, chains, Math.round(((k + 1) * floor.plank) / outs)));
      if (!best || state.cost < best.cost) best = state;
    }
  }
  return best ?? new ScatterState(floor, []);
}

/** Each run begins with the offcut of the run `chains` before it, trimmed to the nearest place that keeps the rules. */
function chained(floor: ScatterFloor, chains: number, first: number): readonly number[] {
  const { runs, plank, kerf, stagger, minEnd, inLine } = floor;
  const starts: number[] = [];
  const circle = (difference: number): number => {
    const rest = ((difference % plank) + plank) % plank;
    return Math.min(rest, plank - rest);
  };
  const left: number[] = [];
  runs.forEach((run, i) => {
    if (!isJointed(run, plank)) {
      starts.push(run.length);
      return;
    }
    const offcut = left.length >= chains ? (left.shift() ?? 0) : withinPlank(first + i * Math.floor(plank / 3), plank);
    const phase = (j: number): number => (runs[j]?.from ?? 0) + (starts[j] ?? 0);
    const keeps = (start: number): boolean =>
      endsKept(run.length, start, plank, minEnd) &&
      run.touching.every(
        (j) =>
          circle(run.from + start - phase(j)) >= stagger &&
          (runs[j]?.touching ?? []).every(
            (k) =>
              circle(run.from + start - phase(k)) >= inLine &&
              circle(run.from + start - 2 * phase(j) + phase(k)) >= inLine,
          ),
      );
    const fitting = (floor.places[i] ?? []).filter((start) => start <= offcut && keeps(start));
    const trimmed = keeps(offcut) ? offcut : Math.max(...fitting, 0);
    const start = trimmed > 0 ? trimmed : ((floor.places[i] ?? []).find(keeps) ?? floor.places[i]?.[0] ?? plank);
    starts.push(start);
    left.push(plank - kerf - endOf(run.length, start, plank));
  });
  return starts;
}
