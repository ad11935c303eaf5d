/** Scattered floors with few planks and a proof: row lines and joints are searched together, yielding each better plan or bound. */

import type { Highs } from 'highs';
import { boundOf } from '../layout/bounds.ts';
import { type CoveredArea, rowChoices, type Sliced, sliceArea } from '../layout/covered-area.ts';
import { lanesOf, ripPairs } from '../layout/cutting.ts';
import { isFewer, type Plan, type Plank, type Rules } from '../layout/floor.ts';
import { planOf } from '../layout/lay-floor.ts';
import { type FlowTable, flowTable } from '../layout/offcut-flow.ts';
import { anneal, type Dealt, type Effort, quickScatter, scatterMended, startsBy } from '../layout/scatter.ts';
import type { ScatterState } from '../layout/scatter-state.ts';
import { scatterFloor } from '../layout/starts.ts';
import { bounded, breaksNone, type FlowBounds, FlowModel, leastOf, type OffcutFlow, proved } from './floor-flow.ts';

/** Programs with more columns aren't rounded. A limit on steps rather than time, so that answers are reproducible. */
const MOST_COLUMNS = 6000;
/**
 * A start piece may be used in at most 1/n of a block's rows, so that the set can be put in order; each n is tried in
 * turn.
 */
const SPREADS = [6, 3, 5, 4];
const ROUNDINGS = 20;
/** Simplex steps after which no further rounding starts. */
const MOST_TAKEN = 10_000;
/**
 * Most orders are found in a short search and some only in a long one, which is reserved for floors still above their
 * bound.
 */
const SHORT: Effort = { first: 1, seeds: 1, steps: 8000 };
const LONG: Effort = { first: 4, seeds: 1, steps: 30_000 };
const MOST_LONG = 6;
/** Maximum steps per row of a long search. */
const ROW_STEPS = 1500;
const LAST_STEPS = 20_000;

interface Candidate {
  readonly choice: readonly Sliced[];
  readonly table: FlowTable;
  readonly model: FlowModel;
  readonly bounds: FlowBounds;
  readonly state: ScatterState;
  readonly dealt: (readonly Dealt[])[];
}

/**
 * Plans of rising quality, the last with the best bound. Only for boards that lock, with walls parallel and
 * perpendicular to the rows.
 */
export function* searchFloor(
  areas: readonly CoveredArea[],
  plank: Plank,
  rules: Rules,
  solver: Highs,
): Generator<Plan> {
  const sliced = areas.map((area) => sliceArea(area, plank, rules));
  const plain = boundOf(
    sliced.map(({ slabs }) => slabs),
    plank,
    rules,
  );
  const rows = rowChoices(sliced, plank, rules);
  const models: FlowModel[] = [];
  let flow: FlowBounds | undefined;
  let best: Plan | undefined;
  const offer = ({ choice }: Pick<Candidate, 'choice'>, state: ScatterState): readonly Plan[] => {
    const plan = planOf(choice, startsBy(choice, state), plank, rules, plain);
    if (best && !isFewer(plan, best)) return [];
    best = plan;
    return [proved(plan, plain, flow)];
  };
  const reaches = (least: number): boolean => best !== undefined && best.planks <= least && breaksNone(best);
  try {
    const candidates: Candidate[] = [];
    for (const choice of rows.choices) {
      const floor = scatterFloor(
        choice.map(({ runs }) => runs),
        plank,
        rules,
        ripPairs(choice, plank, rules),
      );
      const state = quickScatter(floor, plain.best);
      yield* offer({ choice }, state);
      if (reaches(plain.best)) return;
      const table = flowTable(floor, lanesOf(choice, plank, rules));
      const model = new FlowModel(solver, table);
      models.push(model);
      candidates.push({ choice, table, model, state, dealt: [], bounds: bounded(model, table, floor) });
    }
    if (rows.all) flow = leastOf(candidates.map(({ bounds }) => bounds));
    if (best) yield proved(best, plain, flow);
    const goal = Math.max(plain.best, flow?.tight ?? 0);
    for (const candidate of candidates.sort((a, b) => a.bounds.tight - b.bounds.tight)) {
      const { bounds, state } = candidate;
      if (reaches(bounds.tight)) continue;
      for (const better of improved(candidate, () => (best && breaksNone(best) ? best.planks : undefined))) {
        yield* offer(candidate, better);
        if (reaches(bounds.tight)) break;
      }
      if (reaches(goal)) return;
      const steps = Math.min(LONG.steps, ROW_STEPS * state.floor.jointed.length);
      for (const dealt of candidate.dealt.slice(0, MOST_LONG)) {
        if (reaches(bounds.tight)) break;
        for (const better of scatterMended(state, dealt, bounds.tight, { ...LONG, steps }))
          yield* offer(candidate, better);
      }
      if (reaches(goal)) return;
    }
  } finally {
    for (const model of models) model.dispose();
  }
}

/**
 * Layouts for one choice of row lines: from start pieces the program's solution rounds to, with fewer planks than
 * `fewest`; then the first layout, searched for longer.
 */
function* improved(
  { table, model, bounds: { tight }, state, dealt: all }: Candidate,
  fewest: () => number | undefined,
): Generator<ScatterState> {
  const columns = table.blocks.reduce((sum, { options }) => sum + options.length, 0);
  const most = columns <= MOST_COLUMNS && table.exact ? ROUNDINGS : 0;
  for (let seed = 1; seed <= most && model.taken < MOST_TAKEN; seed++) {
    const spread = SPREADS[seed % SPREADS.length] ?? 1;
    const caps = table.blocks.map(({ runs }) => Math.ceil(runs.length / spread));
    const flow = model.rounded(caps, Math.max(tight, (fewest() ?? state.planks) - 1), seed);
    const dealt = flow && dealtBy(table, flow);
    if (!dealt) continue;
    all.push(dealt);
    yield* scatterMended(state, dealt, tight, { ...SHORT, first: seed });
  }
  yield anneal(state, { seed: 2, steps: LAST_STEPS, target: tight, warm: 60, cool: 4 });
}

/** The start pieces of every block; undefined if their number doesn't match its rows. */
function dealtBy({ blocks }: FlowTable, { used }: OffcutFlow): readonly Dealt[] | undefined {
  const dealt = blocks.map(({ runs, options }, b) => ({
    runs,
    starts: options.flatMap(({ start }, i) => new Array<number>(used[b]?.[i] ?? 0).fill(start)),
  }));
  return dealt.every(({ runs, starts }) => runs.length === starts.length) ? dealt : undefined;
}
