/** The answer for a floor begun: whether what is left lays the rest, and how. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { type Saying, sayCut } from '../../../src/input/format.ts';
import type { SoFar } from '../../../src/language/old/so-far.ts';
import type { Plan } from '../../../src/layout/floor.ts';
import type { RestPlan } from '../../../src/layout/resume-floor.ts';
import type { Fact, Problem, Reply } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { allLaid, rowMisfits, slantedNotResumed } from '../../../src/text/floor-problems-text.ts';
import { RESUME } from '../../../src/text/home-text.ts';
import { isRectilinear } from '../../../src/units/geometry.ts';
import { roundUpRatio, TICKS_PER_INCH, ticks } from '../../../src/units/length.ts';
import { restAway } from '../../../src/workers/solve.ts';
import { brokenBlocks } from './broken.ts';
import { type LaidFloor, layAsk, sayingOf, settled } from './laid.ts';
import { restTables } from './resume-guide.ts';
import { type Begun, begunFloor } from './resume-told.ts';
import type { PlanksAsk } from './rules.ts';

/** What `floor resume` reads. */
export interface ResumeAsk extends PlanksAsk {
  readonly 'so-far': SoFar;
}

/** The rest of a floor laid as far as told. */
export async function* resumed(ask: ResumeAsk, context: Context): AsyncGenerator<Outcome> {
  // What was told so far is held against the floor as it is laid: nothing is known of it before.
  const first = await layAsk(ask, { ...context, begin: () => undefined });
  if ('problems' in first) {
    yield first;
    return;
  }
  // The rows that lie follow the plan that stood in the end.
  const laid = await settled(first, ask, context);
  const typed = context.told.get('so-far') ?? '';
  const [slanted, ...more] = slantProblems(laid.plan, context);
  if (slanted) {
    yield { problems: [slanted, ...more] };
    return;
  }
  const begun = begunFloor(laid, ask['so-far'], context);
  if ('problems' in begun) {
    yield begun;
    return;
  }
  const saying = sayingOf(ask, context);
  const rest = await restAway(laid.plan, begun.progress, begun.stock);
  if ('misfits' in rest) {
    const [first, ...more] = rest.misfits.map(({ length, planned }) =>
      rowMisfits(
        typed,
        sayCut(ticks(length), saying),
        sayCut(ticks(planned), saying),
        mendedRow(typed, sayCut(ticks(planned), saying)),
      ),
    );
    if (first) yield { problems: [first, ...more] };
    return;
  }
  if (rest.rows.length === 0) {
    yield { problems: [allLaid(typed, 'row 1 is laid')] };
    return;
  }
  yield replyOf(laid, begun, rest, ask, context);
}

/** What is at a slant, by the option that told it: rows by their direction, walls by their room. */
function slantProblems({ regions }: Plan, { told }: Context): readonly Problem[] {
  const walls = regions.find(({ outline, holes }) => ![outline, ...holes].every(isRectilinear));
  const rows = regions.some(({ frame }) => frame.angle % 90 !== 0);
  return [
    ...(walls ? [slantedNotResumed('room', walls.name, '12 x 14 ft')] : []),
    ...(rows ? [slantedNotResumed('direction', told.get('direction') ?? 'long', 'long')] : []),
  ];
}

/** The row told with the end that the plan gives it, and no start. */
function mendedRow(typed: string, end: string): string {
  return typed
    .replace(/(?:started|starts|began|begins)\b[^,;]*?\band\s+(?=ended|ends)/i, '')
    .replace(/((?:ended|ends|finished) (?:at|with) )[^,;.]+/i, `$1${end}`)
    .replace(/(?:started|starts|began|begins) (?:at|with) [^,;.]+/i, `ended at ${end}`);
}

function replyOf(laid: LaidFloor, begun: Begun, rest: RestPlan, ask: ResumeAsk, context: Context): Reply {
  const { plan } = laid;
  const saying = sayingOf(ask, context);
  const short = Math.max(0, rest.planks - begun.stock.planks);
  const cartons = roundUpRatio(BigInt(short), BigInt(plan.plank.perCarton));
  const data: ResumeResult = {
    kind: 'resume',
    ticksPerInch: TICKS_PER_INCH,
    plank: plan.plank,
    rules: plan.rules,
    laid: begun.progress.map(({ region, rows }) => ({ region, rows })),
    before: rest.before,
    stock: begun.stock,
    broke: ask['so-far'].broken,
    need: rest.planks,
    bound: rest.bound,
    suffices: short === 0,
    short,
    cartons,
    rows: rest.rows,
    broken: rest.broken,
  };
  return {
    headline:
      short > 0
        ? RESUME.short(short, cartons)
        : RESUME.enough(
            RESUME.planks(begun.stock.planks),
            RESUME.offcuts(begun.stock.offcuts.length),
            begun.stock.planks - rest.planks,
          ),
    blocks: [
      { kind: 'facts', title: RESUME.title, facts: factsOf(plan, begun, rest, ask['so-far'].broken, cartons, saying) },
      ...brokenBlocks({ ...plan, broken: rest.broken }, saying),
      { kind: 'steps', title: RESUME.read, steps: RESUME.steps },
      ...restTables(plan, rest, saying),
    ],
    assumed: [...laid.assumed, ...begun.notes],
    cautions: worded(cautionsFor('laying')),
    sources: [],
    actions: [],
    audience: 'asker',
    data,
  };
}

/** Result data of kind `resume`; lengths in ticks. `need` whole planks lay `rows`; `short` of them are missing. */
export interface ResumeResult {
  readonly kind: 'resume';
  readonly ticksPerInch: number;
  readonly plank: Plan['plank'];
  readonly rules: Plan['rules'];
  readonly laid: readonly { readonly region: string; readonly rows: number }[];
  readonly before: RestPlan['before'];
  readonly stock: Begun['stock'];
  readonly broke: number;
  readonly need: number;
  readonly bound: number;
  readonly suffices: boolean;
  readonly short: number;
  readonly cartons: number;
  readonly rows: RestPlan['rows'];
  readonly broken: RestPlan['broken'];
}

function factsOf(
  plan: Plan,
  { progress, stock }: Begun,
  rest: RestPlan,
  broke: number,
  cartons: number,
  saying: Saying,
): readonly Fact[] {
  const say = (length: number): string => sayCut(ticks(length), saying);
  const used = new Set(
    rest.rows.flatMap(({ pieces }) => pieces.flatMap(({ from }) => ('offcut' in from ? [from.offcut] : []))),
  );
  const rowsOf = (name: string): number => plan.regions.find((region) => region.name === name)?.rows.length ?? 0;
  const short = rest.planks - stock.planks;
  return [
    {
      label: RESUME.laid,
      value: progress.map(({ region, rows }) => RESUME.laidRows(region, rows, rowsOf(region))).join('; '),
    },
    ...rest.before.map(({ region, row, runs }) => ({
      label: RESUME.last,
      value: RESUME.lastRow(region, row + 1, runs.map(({ lengths }) => lengths.map(say).join(', ')).join(' | ')),
    })),
    { label: RESUME.left, value: String(stock.planks) },
    ...(broke > 0 ? [{ label: RESUME.broken, value: String(broke) }] : []),
    {
      label: RESUME.kept,
      value:
        stock.offcuts.map(({ length, end }, i) => RESUME.offcut(i + 1, say(length), end)).join('; ') || RESUME.none,
    },
    { label: RESUME.takes, value: RESUME.takesOf(rest.planks, used.size, rest.bound) },
    {
      label: RESUME.verdict,
      value: short > 0 ? RESUME.no(short, cartons, plan.plank.perCarton) : RESUME.yes(-short),
    },
  ];
}
