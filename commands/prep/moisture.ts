/** `prep moisture`: dry enough to lay, wait, or stop; covers leaks too. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import {
  CONCRETE_TESTS,
  DRY_WITHIN,
  METHOD_NOT_GIVEN,
  MOISTURE_LIMITS,
  MOISTURE_RANGES,
  MOISTURE_SPREAD,
  MOISTURE_STOPS,
  MOULD_AREA,
  type MoistureKind,
  type MoistureMethod,
  moistureFigures,
  PLANK_ALLOWS,
  WOOD_READINGS,
} from '../../src/figures/moisture-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { type Saying, sayNumber } from '../../src/input/format.ts';
import { choice, text } from '../../src/input/options.ts';
import type { Found } from '../../src/input/parse-found.ts';
import {
  type Base,
  type Mineral,
  mineralIn,
  type ParsedMoisture,
  readAge,
  readBase,
  readFlooring,
  readLimit,
  readMoisture,
  readWater,
  type Water,
} from '../../src/input/parse-moisture.ts';
import { type ParsedPart, readPart } from '../../src/input/parse-place.ts';
import {
  type MoistureFlaw,
  moistureVerdict,
  readingsByArea,
  testsByArea,
  type Verdict,
} from '../../src/prep/flat-and-dry.ts';
import { type Block, type Fact, type Problem, type Result, reply } from '../../src/reply/reply.ts';
import { saySource } from '../../src/text/answer-text.ts';
import { worded } from '../../src/text/caution-text.ts';
import { referral } from '../../src/text/found-text.ts';
import {
  limitTooWet,
  METHOD_TAKEN,
  methodForWood,
  methodRead,
  methodUnit,
  notLikely,
  whichScreed,
  whichTest,
} from '../../src/text/prep-problems-text.ts';
import { MOISTURE } from '../../src/text/prep-text.ts';
import { SQUARE_TICKS_PER_SQUARE_FOOT } from '../../src/units/length.ts';
import { foundOption, refusal, refusalFor } from './prep-options.ts';

interface MoistureAsk {
  readonly readings: ParsedMoisture;
  readonly method: MoistureMethod;
  readonly floor: Base | 'untold';
  readonly limit: number | 'usual';
  readonly area: ParsedPart;
  readonly flooring: number | 'none';
  readonly boards: 'strip' | 'wide';
  readonly leak: number | 'none';
  readonly water: Water;
  readonly mould: ParsedPart;
  readonly found: Found;
}

// The test method is the one they name, or follows from the unit of the readings; it is never guessed on concrete.

const UNITS = {
  lb: { method: 'chloride', said: 'lb' },
  rh: { method: 'rh', said: '% RH' },
  cm: { method: 'cm', said: '% CM' },
} as const;

type MethodRead =
  | { readonly kind: MoistureKind; readonly method: MoistureMethod; readonly assumed: readonly string[] }
  | { readonly problem: Problem };

/**
 * A Problem where concrete was measured without naming a test, where the options contradict each other, where a reading is
 * outside the method's range, or where a limit for wood is too wet to lay on.
 */
function methodOf(ask: MoistureAsk, context: Context): MethodRead {
  const { readings, method: given, limit } = ask;
  const unit = readings.unit && UNITS[readings.unit];
  if (unit && context.optionTexts.has('method') && unit.method !== given)
    return { problem: methodUnit(given, unit.said, unit.method) };
  const method = unit?.method ?? given;
  const mineral = mineralOf(ask, context);
  const got = { option: 'readings', got: context.optionTexts.get('readings') ?? '' };
  if (mineral && method === 'wood') return { problem: whichTest({ ...got, option: 'method' }, mineral) };
  if (ask.floor === 'wood' && method !== 'wood')
    return { problem: methodForWood({ option: 'method', got: context.optionTexts.get('method') ?? got.got }) };
  const { least, most } = MOISTURE_RANGES[method].value;
  const odd = readings.values.find((value) => value < least || value > most);
  if (odd !== undefined) return { problem: notLikely({ option: 'readings', got: String(odd) }, least, most) };
  const kind = method === 'cm' ? screedOf(mineral, limit) : method;
  if (!kind) return { problem: whichScreed({ option: 'floor', got: context.optionTexts.get('floor') ?? got.got }) };
  const keepBelow = MOISTURE_STOPS.wood.value;
  if (kind === 'wood' && limit !== 'usual' && limit >= keepBelow)
    return {
      problem: limitTooWet({ option: 'limit', got: context.optionTexts.get('limit') ?? String(limit) }, keepBelow),
    };
  const taken = kind === 'wood' && ask.floor === 'untold' && !context.optionTexts.has('method') ? [METHOD_TAKEN] : [];
  const read = unit && !context.optionTexts.has('method') ? [methodRead(unit.said, method)] : taken;
  return { kind, method, assumed: read };
}

/** The concrete, screed or other mineral base named in any option. */
function mineralOf({ floor }: MoistureAsk, { optionTexts }: Context): Mineral | undefined {
  if (floor !== 'untold' && floor !== 'wood') return floor;
  const texts = [...optionTexts].flatMap(([option, text]) =>
    ['method', 'limit', 'floor'].includes(option) ? [] : [text],
  );
  return mineralIn(texts.join(' ; '));
}

/** A screed's limit depends on its binder. Undefined if neither the binder nor the maker's limit is known. */
function screedOf(mineral: Mineral | undefined, limit: number | 'usual'): 'cement' | 'gypsum' | undefined {
  if (mineral === 'gypsum') return 'gypsum';
  return mineral === 'concrete' || limit !== 'usual' ? 'cement' : undefined;
}

interface Known {
  readonly kind: MoistureKind;
  readonly limit: number;
  readonly required: number;
  readonly verdict: Verdict;
  readonly flaws: readonly MoistureFlaw[];
}

const UNIT_NAMES: Readonly<Record<MoistureKind, string>> = {
  wood: '%',
  chloride: ' lb',
  rh: '% RH',
  cement: '% CM',
  gypsum: '% CM',
};

function sayMoisture(value: number, kind: MoistureKind, saying: Saying): string {
  return `${sayNumber(value, saying)}${UNIT_NAMES[kind]}`;
}

/** Over the strict limit, but within what many plank makers allow on concrete. */
function isStrict({ readings, limit }: MoistureAsk, { kind }: Known): boolean {
  const allowed = kind === 'rh' || kind === 'chloride' ? PLANK_ALLOWS.value[kind] : undefined;
  return limit === 'usual' && allowed !== undefined && Math.max(...readings.values) <= allowed;
}

/** The reading farthest from the flooring's. */
function apartSaid({ readings, flooring, boards }: MoistureAsk, saying: Saying): string {
  const own = flooring === 'none' ? 0 : flooring;
  const [farthest = own] = [...readings.values].sort((one, other) => Math.abs(other - own) - Math.abs(one - own));
  const say = (value: number): string => sayMoisture(value, 'wood', saying);
  return MOISTURE.flaw.apart(say(farthest), say(own), String(MOISTURE_SPREAD.value[boards]));
}

/** Gives only the first reason. */
function moistureHeadline(ask: MoistureAsk, known: Known, saying: Saying): string {
  const { readings } = ask;
  const { kind, limit, required, verdict, flaws } = known;
  const worst = sayMoisture(Math.max(...readings.values), kind, saying);
  const said = sayMoisture(limit, kind, saying);
  const [flaw] = flaws;
  if (verdict === 'accept' || flaw === undefined) return MOISTURE.headline.accept(worst, said);
  const why =
    flaw === 'too-few'
      ? MOISTURE.flaw['too-few'](required - readings.values.length, kind !== 'wood')
      : flaw === 'apart'
        ? apartSaid(ask, saying)
        : MOISTURE.flaw[flaw === 'over' && isStrict(ask, known) ? 'strict' : flaw](worst, said);
  return MOISTURE.headline[verdict](why);
}

function moistureFacts(ask: MoistureAsk, known: Known, saying: Saying): Block {
  const { kind, limit, required, flaws } = known;
  const { values } = ask.readings;
  const say = (value: number): string => sayMoisture(value, kind, saying);
  const source = ask.limit === 'usual' ? saySource(MOISTURE_LIMITS[kind].source) : MOISTURE.own;
  const plank =
    ask.limit === 'usual' && flaws.includes('over') && (kind === 'rh' || kind === 'chloride')
      ? [{ label: MOISTURE.plank, value: MOISTURE.plankOf[kind] }]
      : [];
  const others = flaws.slice(1).filter((flaw) => flaw === 'apart' || flaw === 'too-few');
  const facts: readonly Fact[] = [
    { label: MOISTURE.method, value: MOISTURE.methods[kind] },
    { label: MOISTURE.count, value: MOISTURE.countOf(values.length, required) },
    { label: MOISTURE.range, value: `${say(Math.min(...values))}, ${say(Math.max(...values))}` },
    { label: MOISTURE.limit, value: `${say(limit)} (${source})` },
    ...plank,
    ...(flaws.includes('over') ? [{ label: MOISTURE.stop, value: MOISTURE_STOPS[kind].said }] : []),
    ...(ask.flooring === 'none' || kind !== 'wood'
      ? []
      : [
          {
            label: MOISTURE.flooring,
            value: MOISTURE.flooringOf(say(ask.flooring), String(MOISTURE_SPREAD.value[ask.boards])),
          },
        ]),
    ...others.map((flaw) => ({
      label: MOISTURE.also,
      value:
        flaw === 'apart' ? apartSaid(ask, saying) : MOISTURE.flaw['too-few'](required - values.length, kind !== 'wood'),
    })),
  ];
  return { kind: 'facts', section: 'why', title: MOISTURE.title, facts };
}

function moistureLines(ask: MoistureAsk, known: Known, saying: Saying): readonly string[] {
  const { kind, limit, required, flaws } = known;
  const { values } = ask.readings;
  const say = (value: number): string => sayMoisture(value, kind, saying);
  const source = ask.limit === 'usual' ? saySource(MOISTURE_LIMITS[kind].source) : MOISTURE.own;
  const steps = moistureSteps(ask, known);
  return [
    MOISTURE.readingsLine(values.length, required, say(Math.min(...values)), say(Math.max(...values))),
    MOISTURE.limitLine(say(limit), source),
    ...(ask.limit === 'usual' && flaws.includes('over') && (kind === 'rh' || kind === 'chloride')
      ? [MOISTURE.plankLine[kind]]
      : []),
    ...(steps.kind === 'steps' ? steps.steps.slice(0, 1) : []),
  ];
}

/** Depends on what rules out laying; if the only flaw is too few readings, nothing needs drying. */
function moistureSteps({ readings }: MoistureAsk, { kind, required, verdict, flaws }: Known): Block {
  const base = kind === 'wood' ? 'wood' : 'concrete';
  const { steps } = MOISTURE;
  const over = flaws.includes('over') ? steps.over[base] : [];
  const all = [
    ...(verdict === 'stop' ? steps.stop[base] : over),
    ...(flaws.includes('apart') ? [steps.apart] : []),
    ...(flaws.includes('too-few') ? [steps.more(required - readings.values.length, base === 'concrete')] : []),
  ];
  return {
    kind: 'steps',
    section: 'how',
    title: MOISTURE.stepsTitle[verdict],
    steps: verdict === 'accept' ? steps.lay[base] : all,
  };
}

/** Adds the steps for gray water. */
function leakBlocks({ leak, water }: MoistureAsk): readonly Block[] {
  if (leak === 'none' && water === 'none') return [];
  const left = leak === 'none' ? DRY_WITHIN.value.to : Math.floor(DRY_WITHIN.value.to - leak);
  const items = MOISTURE.leak(left > 0 ? MOISTURE.hours(left) : undefined);
  return [
    {
      kind: 'checklist',
      section: 'checklist',
      title: MOISTURE.leakTitle,
      items: water === 'grey' ? [MOISTURE.grey, ...items] : items,
    },
  ];
}

/** The limit is in the method's own unit. */
export interface MoistureResult extends Result {
  readonly kind: 'moisture';
  readonly verdict: 'accept' | 'wait' | 'stop';
  readonly limit: number;
  readonly readings: number;
  readonly required: number;
}

/** Refuses for sewage, a large area of mold and anything else unsafe. */
function answerMoisture(ask: MoistureAsk, context: Context): Outcome {
  const { readings, area, found, water, mould } = ask;
  const refused = refusalFor(readings.found, area.found, mould.found, found);
  if (refused) return refused;
  if (water === 'sewage' || water === 'unsure')
    return refusal(referral([water]), water === 'sewage' ? 'sewage' : 'water');
  // A patch of mold given only by its length is assumed to be as wide as it is long.
  const spread = mould.line === undefined ? mould.area : BigInt(mould.line) ** 2n;
  if (spread >= BigInt(MOULD_AREA.value) * SQUARE_TICKS_PER_SQUARE_FOOT) return refusal(referral(['mould']), 'mold');
  const method = methodOf(ask, context);
  if ('problem' in method) return { problems: [method.problem] };
  const { kind } = method;
  const limit = ask.limit === 'usual' ? MOISTURE_LIMITS[kind].value : ask.limit;
  const required = requiredFor(kind, area.area);
  const most = MOISTURE_SPREAD.value[ask.boards];
  const { verdict, flaws } = moistureVerdict({
    readings: readings.values,
    limit,
    // A maker's higher limit raises the level to stop at too.
    stop: Math.max(MOISTURE_STOPS[kind].value, limit),
    required,
    ...(ask.flooring !== 'none' && kind === 'wood' && { flooring: { moisture: ask.flooring, most } }),
    ...(ask.leak !== 'none' && { leak: { hours: ask.leak, dryWithin: DRY_WITHIN.value.to } }),
  });
  const saying: Saying = context.preferences;
  const known = { kind, limit, required, verdict, flaws };
  const data: MoistureResult = { kind: 'moisture', verdict, limit, readings: readings.values.length, required };
  const areaNotGiven = MOISTURE.areaNotGiven[kind === 'wood' ? 'wood' : 'concrete'];
  return reply({
    headline: moistureHeadline(ask, known, saying),
    lines: moistureLines(ask, known, saying),
    blocks: [moistureFacts(ask, known, saying), moistureSteps(ask, known), ...leakBlocks(ask)],
    assumed: [...context.assumed, ...method.assumed, ...(area.area === 0n ? [areaNotGiven] : [])],
    cautions: worded(cautionsOf(kind)),
    sources: moistureFigures(kind).map(({ source }) => source),
    reasons: ask.limit === 'usual' ? [{ entry: 'moisture-limits', figure: sayMoisture(limit, kind, saying) }] : [],
    data,
  });
}

/** For wood, the hazards of water and mold; concrete adds drilling holes for probes: the dust, and what may be in the slab. */
function cautionsOf(kind: MoistureKind) {
  const topics = ['leak-water', 'mould', ...(kind === 'wood' ? [] : ['asbestos', 'hidden-lines'])];
  const silica = kind === 'wood' ? [] : cautionsFor('levelling').filter(({ topic }) => topic === 'silica');
  return [...cautionsFor('leak').filter(({ topic }) => topics.includes(topic)), ...silica];
}

function requiredFor(kind: MoistureKind, area: bigint): number {
  if (kind === 'wood' && area === 0n) return 1;
  if (kind === 'wood') return readingsByArea(area, WOOD_READINGS.value.count, WOOD_READINGS.value.squareFeet);
  const { first, more, squareFeet } = CONCRETE_TESTS.value;
  return testsByArea(area, first, more, squareFeet);
}

export default defineCommand({
  group: 'prep',
  name: 'moisture',
  summary: 'Is it dry enough to lay? Wood or concrete readings against their limit',
  phrases: [
    'moisture readings 10 11 9 12 on plywood ok to lay?',
    'my concrete reads 78 rh is that ok',
    'pin meter says 14 percent in the subfloor',
    'calcium chloride test came back 4 lb',
    'moisture meter reads 16 near the bathroom is it dry enough',
    'is 12% too wet for wood subfloor',
    'how dry should the slab be, got 82% rh',
    'subfloor at 13 and planks at 8',
    'readings 9 10 18 11 can i lay floor',
    'slab tested 5.5 lbs can i put vinyl plank',
    'rh test 88 percent basement',
    'is my concrete dry enough, meter says 4.5',
    'wood moisture 15 after leak wait how long',
    'check my moisture numbers',
    'mc of joists 19 percent',
    'basement slab 76 80 74 rh',
    'moisture limit for lvp on concrete',
    'got 10% in plywood and 12% in the hardwood',
    'humidity reading in slab 91',
    'are these readings ok 11 12 12 14',
    'plywood reads 11 12 10 15 near the slider, dry enough?',
    'slab rh came back 83, can the vinyl go down',
    'meter shows 17% by where the dishwasher leaked, how much longer do i wait',
    'is 9 percent good',
    'got readings of 13, 13.5 and 12 in osb, planks have been in the room two days',
    'calcium chloride kit says 3.8 lb, that alright for click plank on concrete',
    'tested six spots in the basement, 74 77 81 79 75 72, anything too high',
    "wood floor next to it is at 7 and the subfloor's 12, is that a problem",
    'pinless meter beeped red at 20 in the corner by the tub',
    'screed is 2.1 on the carbide test, okay to lay',
    'how wet is too wet for a subfloor before plank goes on',
    'toilet overflowed 4 days back, ply still says 18, fans running',
    'number on my meter is 14.2, go or no go',
    "the concrete's three weeks old and 91% inside, guess that's a no",
    'does 10 to 12 pass',
    'moisture test 5 lb per 1000 sq ft',
    'subfloor reading 16 percent under old vinyl but only 9 in the middle of the room',
    "taped plastic to the slab overnight and there's fog under it, can i go ahead",
    'readings from tonight 12 12 13 11 9, yesterday they were all 15',
    'hall is 8, bath is 19, do i have to dry the bath part out first',
    'my joists read 15 and plywood 13, fine?',
    'in the conservatory the concrete shows 4% on a cheap meter, should i trust it',
    "what's the limit for rh in a slab with a floating floor",
    'box says max 85 rh and mine measures 84.5',
    "wet vac'd the room sunday, meter today reads 22 18 17 25, how dry does it need to get",
    'can i lay over plywood at 13.5 if the planks are vinyl not wood',
    'check these: 10.5, 11, 14, 10',
    'three pin readings by the back door, 15 16 15 and the rest of the room 10',
    'is the chipboard dry enough at 11 percent, house has heating on',
    'in situ probe gave 78 and 80, one more tomorrow',
    'kitchen slab test came back 6.2 pounds do i need a barrier',
    'how many % is dry for wood boards',
    'crawl space is damp and the subfloor above is reading 16.5, lay or wait',
    'reading drifted from 14 down to 12.5 in a week is that low enough now',
    'will 88 humidity in concrete wreck luxury vinyl',
    "the moisture guy wrote 4.1 lbs and 79% rh on my sheet, what's that mean for laying",
    '13 percent here in florida in august, normal or too damp',
    'do i need to test it again, first numbers were 12 and 17',
    'cement screed 75% rh by hygrometer after ten weeks, ok for planks',
    'subfloor feels dry to my hand but meter goes 19, believe which one',
  ],
  options: z.object({
    readings: text({ summary: 'Meter or test readings, with spaces between them', example: '10 11 12' }, readMoisture),
    method: choice(['wood', 'chloride', 'rh', 'cm'], {
      summary: 'Wood meter in %; on concrete: calcium chloride in lb, humidity in the slab in % RH, carbide in % CM',
      standard: 'wood',
      record: METHOD_NOT_GIVEN,
    }),
    floor: text(
      {
        summary: 'What you measured: wood, concrete, cement or anhydrite screed, tile; for concrete, name the test',
        example: 'concrete',
        standard: 'unknown',
      },
      readBase,
    ),
    limit: text(
      {
        summary: 'The maker’s own limit, in the readings’ unit',
        example: '10',
        standard: 'usual',
        record: MOISTURE_LIMITS.wood,
      },
      readLimit,
    ),
    area: text(
      { summary: 'Size of the floor the readings are for', example: '10 x 12 ft', standard: 'none' },
      (typed, reading) => readPart(typed, reading, { line: false }),
    ),
    flooring: text(
      { summary: 'Moisture of the wood flooring you’ll lay; none for vinyl', example: '8%', standard: 'none' },
      readFlooring,
    ),
    boards: choice(['strip', 'wide'], {
      summary: 'Wood flooring in strips, or in boards 3 in or wider',
      standard: 'strip',
      record: MOISTURE_SPREAD,
    }),
    leak: text({ summary: 'How long it has been wet, after a leak', example: '30 hours', standard: 'none' }, readAge),
    water: text(
      { summary: 'What kind of water: clean, gray (washing machine), or sewage', example: 'clean', standard: 'none' },
      readWater,
    ),
    mould: text(
      { summary: 'Mold you can see: its sides or its area', example: '1 x 2 ft', standard: 'none' },
      (typed, reading) => readPart(typed, reading, { line: true }),
    ),
    found: foundOption,
  }),
  examples: [
    {
      ask: 'moisture readings: 10 11 9 12, area: 10 x 12 ft',
      headline: 'Dry enough: 12% at most, the limit is 12%.',
    },
    {
      ask: 'moisture readings: 84% RH 79% RH 71% RH, area: 30 m²',
      headline: 'Wait: 84% RH is over the strict limit of 75% RH; only go on if your carton allows it.',
    },
    {
      ask: 'moisture readings: 17 22 14, leak: 3 days, water: clean',
      headline: 'Stop: 22% is far over the limit of 12%; find where the water comes from.',
    },
  ],
  run: (options, context) => answerMoisture(options, context),
});
