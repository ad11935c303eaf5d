/** From the options of `prep plan` to its answer, or the Refusal that its floor asks for. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { HEATING_FIGURES } from '../../../src/figures/floor-figures.ts';
import { asbestosFigures, leadFigures } from '../../../src/figures/old-materials-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { LIFTING_PACE } from '../../../src/figures/tearout-figures.ts';
import { type Saying, sayArea, sayHours, sayLength } from '../../../src/input/format.ts';
import type { Block, Result } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { PLAN, TRADES } from '../../../src/text/plan-text.ts';
import { doorwaysTooWide, notACovering } from '../../../src/text/prep-problems-text.ts';
import { TEAROUT } from '../../../src/text/tearout-text.ts';
import { ticks } from '../../../src/units/length.ts';
import { countryOf, houseVerdict, sharedAsk, toProve } from './house.ts';
import { assumedWith } from './not-told.ts';
import type { PlanAsk } from './plan-options.ts';
import { stagesOf, toolRows } from './plan-stages.ts';
import { areaOfRooms, staplesOf, tackStripOf, tearoutHours } from './tearout-sums.ts';

/** Result data of kind plan: square ticks, hours for one person, hours of waiting, names of the stages. */
interface PlanResult extends Result {
  readonly kind: 'plan';
  readonly area: number;
  readonly tearOutHours: readonly [number, number];
  readonly waitHours: number;
  readonly stages: readonly string[];
}

/** Stages in order, each with what must be true before it. */
export function answerPlan(ask: PlanAsk, context: Context): Outcome {
  const house = houseVerdict(ask, context);
  if (typeof house === 'object') return house;
  const got = (option: string) => ({ option, got: context.told.get(option) ?? '' });
  const { covering } = ask.floor;
  if (covering === undefined) return { problems: [notACovering(got('floor'))] };
  const walls = tackStripOf(ask);
  if (walls === undefined) return { problems: [doorwaysTooWide(got('doors'))] };
  const saying: Saying = { units: ask.room.units, decimal: context.habits.decimal };
  const area = areaOfRooms(ask.room.rooms);
  const strip = covering === 'carpet' ? walls : ticks(0);
  const hours = tearoutHours(covering, area, strip, staplesOf(covering, area, ask.below.ground));
  const [least, most] = hours.map((part) => sayHours(part, saying));
  const level = ask.level === 'yes' ? ask['leveller-dry'] : 0;
  const wait = ask.acclimate + level;
  const country = countryOf(ask, context);
  const stages = stagesOf(ask, covering, country, saying);
  const facts = [
    { label: PLAN.area, value: sayArea(area, saying) },
    { label: PLAN.walls, value: sayLength(walls, saying) },
    { label: PLAN.hours, value: PLAN.hoursValue(least ?? '', most ?? '') },
    { label: PLAN.wait, value: PLAN.waits(ask.acclimate, level) },
  ];
  const headline = PLAN.headline(stages.length, sayArea(area, saying), least ?? '', most ?? '', wait);
  const data: PlanResult = {
    kind: 'plan',
    area: Number(area),
    tearOutHours: hours,
    waitHours: wait,
    stages: stages.map(({ name }) => name),
  };
  return {
    headline: house === 'proof' ? TEAROUT.proofFirst(toProve(ask, context), headline) : headline,
    blocks: [
      { kind: 'facts', title: PLAN.title, facts },
      ...stages.map(
        ({ name, before, work }, i): Block => ({
          kind: 'checklist',
          title: PLAN.stage(i + 1, name),
          items: [...before.map(PLAN.must), ...work],
        }),
      ),
      { kind: 'table', title: PLAN.tools, columns: PLAN.toolColumns, rows: toolRows(ask, covering) },
      { kind: 'checklist', title: PLAN.trades, items: TRADES },
    ],
    assumed: assumedWith(ask, context),
    cautions: worded(cautionsFor('tear-out')),
    sources: [
      LIFTING_PACE[covering],
      ...(ask.heated === 'yes' ? HEATING_FIGURES : []),
      ...asbestosFigures(country),
      ...leadFigures(country),
    ].map(({ source }) => source),
    actions: [{ label: PLAN.tearout, ask: sharedAsk('tearout', context) }],
    audience: 'asker',
    data,
  };
}
