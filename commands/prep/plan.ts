/** `prep plan`: the whole job as an ordered checklist, from tear-out to paint. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { HEATING_FIGURES, LONGEST_ACCLIMATION } from '../../src/figures/floor-figures.ts';
import { ASBESTOS_MARGIN, asbestosFigures, LEAD_YEARS, leadFigures } from '../../src/figures/old-materials-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { FLOATING_FLATNESS, FLOATING_FLATNESS_METRIC, LEVELLER_DRIES } from '../../src/figures/subfloor-figures.ts';
import { LIFTING_PACE } from '../../src/figures/tearout-figures.ts';
import { type Saying, sayArea, sayHours, sayLength } from '../../src/input/format.ts';
import { choice, count, room } from '../../src/input/options.ts';
import { type Country, mayHoldAsbestos } from '../../src/prep/old-materials.ts';
import type { Covering } from '../../src/prep/tearout-amounts.ts';
import { type Block, type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { PLAN, PLAN_STAGES, STAGE_NOTES, type StageWords, TOOLS, TRADES } from '../../src/text/plan-text.ts';
import { doorwaysTooWide, notACovering } from '../../src/text/prep-problems-text.ts';
import { TEAROUT, tearoutSteps } from '../../src/text/tearout-text.ts';
import { ticks } from '../../src/units/length.ts';
import { assumedWith, countryOf, houseOptions, houseVerdict, sharedAsk, toProve } from './prep-options.ts';
import { areaOfRooms, doorsOption, staplesOf, tackStripOf, tearoutHours } from './tearout-sums.ts';

// The options of `prep plan`.

const planOptions = {
  room: room({ summary: 'Rooms by their sides, or a walk round the walls; several with ;' }),
  ...houseOptions,
  doors: doorsOption,
  level: choice(['check', 'yes', 'no'], { summary: 'Will leveller be poured?', standard: 'check' }),
  'leveller-dry': count({
    summary: 'Hours the leveller dries, by its bag',
    standard: '24',
    record: LEVELLER_DRIES,
    least: 1,
    most: 336,
  }),
  heated: choice(['no', 'yes'], { summary: 'Is the floor heated, by tubes or cables in it?', standard: 'no' }),
  acclimate: count({
    summary: 'Hours the plank’s maker wants cartons in the room',
    standard: '0',
    record: LONGEST_ACCLIMATION,
    least: 0,
    most: 336,
  }),
};

type PlanAsk = { readonly [O in keyof typeof planOptions]: z.output<(typeof planOptions)[O]> };

// The stages and tools of a plan, as this house and floor need them.

/** Stages in order; what only some houses need is left out of the others. */
function stagesOf(ask: PlanAsk, covering: Covering, country: Country, saying: Saying): readonly StageWords[] {
  const { built, insurer, tested, level, acclimate, heated } = ask;
  const margin = ASBESTOS_MARGIN[country].value;
  const old = mayHoldAsbestos(built, margin) && tested !== 'clear';
  const leadYear = LEAD_YEARS[country].value;
  const oldPaint = built === undefined || built < leadYear;
  const { prepare, tearOut, subfloor, dryFlat, acclimate: cartons, floor, trim, finish } = PLAN_STAGES;
  const wet = [
    ...(ask.below.ground === 'concrete' ? [STAGE_NOTES.concrete] : []),
    ...(level === 'yes' ? [STAGE_NOTES.level(ask['leveller-dry'])] : []),
  ];
  return [
    { ...prepare, work: [...(insurer === 'yes' ? [STAGE_NOTES.photos] : []), ...prepare.work] },
    {
      ...tearOut,
      work: [
        ...(old ? [STAGE_NOTES.oldHouse(margin)] : []),
        ...(oldPaint ? [STAGE_NOTES.oldPaint(leadYear)] : []),
        ...(covering === 'carpet'
          ? tearOut.work
          : covering === 'tile'
            ? [STAGE_NOTES.tile]
            : tearoutSteps(covering, tested === 'clear')),
      ],
    },
    { ...subfloor, work: [...(heated === 'yes' ? [STAGE_NOTES.heatedScrews] : []), ...subfloor.work] },
    { ...dryFlat, work: [...flatWork(saying), ...dryFlat.work, ...wet] },
    ...(acclimate > 0 ? [{ ...cartons, work: [...cartons.work, STAGE_NOTES.acclimate(acclimate)] }] : []),
    { ...floor, work: [...floor.work, ...(heated === 'yes' ? STAGE_NOTES.heatedFloor : [])] },
    trim,
    finish,
  ];
}

/** The straightedge and the hollow that a floating floor is held to, in the asker's units. */
function flatWork(saying: Saying): readonly string[] {
  const [first] = (saying.units === 'metric' ? FLOATING_FLATNESS_METRIC : FLOATING_FLATNESS).value;
  return first ? [STAGE_NOTES.straightedge(sayLength(first.over, saying), sayLength(first.gap, saying))] : [];
}

/** Tools with where to get them and why: only what this floor needs. */
function toolRows({ level, below, tested }: PlanAsk, covering: Covering): readonly (readonly string[])[] {
  const carpet = covering === 'carpet';
  const rows: readonly (readonly [boolean, readonly string[]])[] = [
    [true, TOOLS.knife],
    [true, TOOLS.bar],
    [carpet, TOOLS.pliers],
    [true, TOOLS.knees],
    [true, TOOLS.vacuum],
    [covering === 'sheet vinyl' && tested === 'clear', TOOLS.scraper],
    [true, TOOLS.straightedge],
    [below.ground !== 'concrete', TOOLS.drill],
    [true, TOOLS.meter],
    [level === 'yes', TOOLS.mixer],
    [true, TOOLS.tapping],
    [true, TOOLS.undercut],
    [true, TOOLS.saw],
    [true, TOOLS.nailer],
  ];
  return rows.filter(([needed]) => needed).map(([, row]) => row);
}

// From the options of `prep plan` to its answer, or the Refusal that its floor asks for.

/** Result data of kind plan: square ticks, hours for one person, hours of waiting, names of the stages. */
interface PlanResult extends Result {
  readonly kind: 'plan';
  readonly area: number;
  readonly tearOutHours: readonly [number, number];
  readonly waitHours: number;
  readonly stages: readonly string[];
}

/** Stages in order, each with what must be true before it. */
function answerPlan(ask: PlanAsk, context: Context): Outcome {
  const house = houseVerdict(ask, context);
  if (typeof house === 'object') return house;
  const got = (option: string) => ({ option, got: context.optionTexts.get(option) ?? '' });
  const { covering } = ask.floor;
  if (covering === undefined) return { problems: [notACovering(got('floor'))] };
  const walls = tackStripOf(ask);
  if (walls === undefined) return { problems: [doorwaysTooWide(got('doors'))] };
  const saying: Saying = { units: ask.room.units, decimal: context.preferences.decimal };
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
  return reply({
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
    data,
  });
}

export default defineCommand({
  group: 'prep',
  name: 'plan',
  summary: 'The whole job in order: what must be true first, waiting times, tools, trades',
  options: z.object(planOptions),
  examples: [
    {
      ask: 'plan room: 12x14, built: 1995',
      headline: '7 stages for 168 sq ft: tear-out takes one person 1–4 hours.',
    },
    {
      ask: "plan room: hall 3'6\" x 14'; bedroom 11' x 12'6\", built: 2004, level: yes, acclimate: 48, insurer: yes",
      headline:
        '8 stages for 186.5 sq ft: tear-out takes one person 1 1/2–5 hours, then 72 hours of waiting before the floor.',
    },
  ],
  run: (options, context) => answerPlan(options, context),
});
