/** Scattered floors with few planks and a proof: row lines and joints searched together, each better plan or bound told. */

import type { Highs } from 'highs';
import { boundOf } from '../layout/bounds.ts';
import { type CoveredArea, rowChoices, type Sliced, sliceArea } from '../layout/covered-area.ts';
import { lanesOf, ripPairs } from '../layout/cutting.ts';
import { isFewer, type Plan, type Plank, type Rules } from '../layout/floor.ts';
import { planOf } from '../layout/lay-floor.ts';
import { type FlowTable, flowTable } from '../layout/offcut-flow.ts';
import { anneal, type Dealt, type Effort, quickScatter, scatterMended, startsBy } from '../layout/scatter.ts';
import { scatterFloor } from '../layout/scatter-rules.ts';
import type { ScatterState } from '../layout/scatter-state.ts';
import { bounded, breaksNone, type FlowBounds, FlowModel, leastOf, type OffcutFlow, proved } from './floor-flow.ts';

/** Columns beyond which the program is not rounded: steps, not seconds, so that an answer repeats. */
const MOST_COLUMNS = 6000;
/** A start piece serves at most this part of a block's rows, so that a multiset can be put in an order; each in its turn. */
const SPREADS = [6, 3, 5, 4];
const ROUNDINGS = 20;
/** Steps of the simplex method after which no further rounding begins. */
const MOST_TAKEN = 10_000;
/** Most orders are found in a short search, some only in a long one: that is kept for floors still above their bound. */
const SHORT: Effort = { first: 1, seeds: 1, steps: 8000 };
const LONG: Effort = { first: 4, seeds: 1, steps: 30_000 };
const MOST_LONG = 6;
/** A long search takes at most so many steps a row. */
const ROW_STEPS = 1500;
const LAST_STEPS = 20_000;

/** One way to cut the rows, and what is known of it. */
interface Candidate {
  readonly choice: readonly Sliced[];
  readonly table: FlowTable;
  readonly model: FlowModel;
  readonly bounds: FlowBounds;
  readonly state: ScatterState;
  /** Start pieces that the integer program found. */
  readonly dealt: (readonly Dealt[])[];
}

/** Plans in rising quality, the last with the best bound; boards that lock, walls along and across the rows. */
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
 * Layouts of one way to cut the rows: from start pieces that the program's solution rounds to, fewer planks than `fewest`; then the
 * first layout searched for longer.
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

/** The start pieces of every block; undefined when they are not as many as its rows. */
function dealtBy({ blocks }: FlowTable, { used }: OffcutFlow): readonly Dealt[] | undefined {
  const dealt = blocks.map(({ runs, options }, b) => ({
    runs,
    starts: options.flatMap(({ start }, i) => new Array<number>(used[b]?.[i] ?? 0).fill(start)),
  }));
  return dealt.every(({ runs, starts }) => runs.length === starts.length) ? dealt : undefined;
}
