/** `prep plan`: the whole job as an ordered checklist, from tear-out to paint. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { HEATING_FIGURES, LONGEST_ACCLIMATION } from '../../src/figures/floor-figures.ts';
import { FLOATING_FLATNESS, FLOATING_FLATNESS_METRIC, LEVELLER_DRIES } from '../../src/figures/subfloor-figures.ts';
import {
  ASBESTOS_MARGIN,
  asbestosFigures,
  LEAD_YEARS,
  LIFTING_PACE,
  leadFigures,
} from '../../src/figures/tearout-figures.ts';
import { type Saying, sayArea, sayHours, sayLength } from '../../src/input/format.ts';
import { choice, count, room } from '../../src/input/options.ts';
import { type Country, type Covering, mayHoldAsbestos } from '../../src/prep/old-floor.ts';
import { type Block, type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { doorwaysTooWide, notACovering } from '../../src/text/prep-problems-text.ts';
import {
  PLAN,
  PLAN_STAGES,
  STAGE_NOTES,
  type StageWords,
  TEAROUT,
  TOOLS,
  TRADES,
  tearoutSteps,
} from '../../src/text/tearout-text.ts';
import { ticks } from '../../src/units/length.ts';
import {
  assumedWith,
  countryOf,
  houseOptions,
  houseVerdict,
  sharedAsk,
  tearoutHazards,
  toProve,
} from './prep-options.ts';
import { areaOfRooms, doorsOption, staplesOf, tackStripOf, tearoutHours } from './tearout-sums.ts';

const planOptions = {
  room: room({ summary: 'Rooms by their sides, or a walk around the walls, with ; between rooms' }),
  ...houseOptions,
  doors: doorsOption,
  level: choice(['check', 'yes', 'no'], { summary: 'Will you pour leveler?', standard: 'check' }),
  'leveller-dry': count({
    summary: 'Hours the leveler needs to dry, from the bag',
    standard: '24',
    record: LEVELLER_DRIES,
    least: 1,
    most: 336,
  }),
  heated: choice(['no', 'yes'], { summary: 'Is the floor heated, with tubes or cables in it?', standard: 'no' }),
  acclimate: count({
    summary: 'Hours the plank’s maker wants the cartons to sit in the room',
    standard: '0',
    record: LONGEST_ACCLIMATION,
    least: 0,
    most: 336,
  }),
};

type PlanAsk = { readonly [O in keyof typeof planOptions]: z.output<(typeof planOptions)[O]> };

/** In order; a stage that only some houses need is left out for the others. */
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

/** In the user's units. */
function flatWork(saying: Saying): readonly string[] {
  const [first] = (saying.units === 'metric' ? FLOATING_FLATNESS_METRIC : FLOATING_FLATNESS).value;
  return first ? [STAGE_NOTES.straightedge(sayLength(first.over, saying), sayLength(first.gap, saying))] : [];
}

/** Only the tools this floor needs, with why and where to get them. */
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

/** Square ticks, hours of work for one person, hours of waiting, names of the stages. */
interface PlanResult extends Result {
  readonly kind: 'plan';
  readonly area: number;
  readonly tearOutHours: readonly [number, number];
  readonly waitHours: number;
  readonly stages: readonly string[];
}

/** Refuses a floor that may hold asbestos. */
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
    lines: [
      PLAN.order(stages.map(({ name }) => name)),
      PLAN.waitsLine(ask.acclimate, level),
      PLAN.wallsLine(sayLength(walls, saying)),
    ],
    blocks: [
      { kind: 'facts', section: 'details', title: PLAN.title, facts },
      ...stages.map(
        ({ name, before, work }, i): Block => ({
          kind: 'checklist',
          section: 'checklist',
          title: PLAN.stage(i + 1, name),
          items: [...before.map(PLAN.must), ...work],
        }),
      ),
      { kind: 'table', section: 'list', title: PLAN.tools, columns: PLAN.toolColumns, rows: toolRows(ask, covering) },
      { kind: 'checklist', section: 'details', title: PLAN.trades, items: TRADES },
    ],
    assumed: assumedWith(ask, context),
    cautions: worded(tearoutHazards(ask, context)),
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
  phrases: [
    'what order do i do things in',
    'give me a step by step plan for the whole job',
    'whats first, paint, trim or floor',
    'checklist for replacing carpet with vinyl plank',
    'where do i start with this project',
    'steps to redo floors in 3 bedrooms',
    'plan for the weekend, what do i do saturday and sunday',
    'what needs done before i lay the floor',
    'order of work for tearing out carpet and putting plank',
    'make me a plan room 12x14',
    'what do i have to do start to finish',
    'what should be finished before the floor arrives',
    'sequence: demo, subfloor, paint, floor, trim?',
    'how do i go about replacing my carpet with lvp',
    'what comes after the tear out',
    'prep list before flooring',
    'help me plan my flooring project',
    'how should i organise the job',
    'whole house redo what goes first',
    'todo list for new floors',
    'what am i forgetting before i start',
    "i've got three bedrooms to do, carpet out to trim, what are the stages",
    'where do i even start',
    'tools i need for tearing carpet and laying plank',
    'make a plan for my whole job, rooms 11x12, 12x14 and a hall',
    'weekend plan: friday tear out, saturday what, sunday what',
    'do i paint first or do floors first',
    'step by step from old carpet to finished trim for one 13x15 room',
    'what comes after the carpet is out',
    'list of tools to borrow before i begin',
    'give me the whole sequence, subfloor, leveling, floor, transitions, baseboards',
    'how do i plan this if we have to live in the house the whole time',
    'when does the trim come off, before or after the carpet',
    'plan for doing two rooms this month and two next month',
    'what saw do i need for this, and anything else to rent',
    'never done this, walk me through the order of a flooring job in a 1978 house',
    'do doors come off before tearing out or right before laying',
    'job plan for the basement with leveler, 18x24',
    'checklist start to finish',
    'which room goes first when the hall connects everything',
    'stages and what gets done at each',
    'when should the planks be delivered and sit in the room',
    'what do i need to have on hand before i rip out the first room',
    "i'm about to start tomorrow, what's the order",
    'what tools for laminate and baseboard, i own a drill and a hammer',
    'plan my job: living room 4.2 x 5 m, carpet now, click vinyl after, skirting back on',
    'how many days should i block out with leveler drying in the middle',
    "lay out the stages for me and my dad, we've got four days",
    'what goes before what, squeaks, patching, leveling, moisture?',
    'prep steps in order',
    'is there a proper order for doing floors and kitchen trim',
    'what all is involved in replacing carpet with plank myself',
    'draw up a schedule of work for a flat, 2 rooms and hallway',
    'could you set out the job from day one through cleanup',
    "big picture plan please, i'm lost",
    'do all the tear out at once or go room by room',
    'tool list w/ pull bar and spacers etc',
    "the floor guys cancelled so it's on me now, what's step one and step two and so on",
    'help me plan replacing floor in 4 rooms with a toddler around',
    "what's next after plan approval... i mean what happens in each stage of the work",
  ],
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
