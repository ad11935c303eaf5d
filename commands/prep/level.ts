/** `prep level`: whether a floor is flat enough, what to take down, and what fills the rest. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import {
  FLATNESS_FIGURES,
  FLOATING_FLATNESS,
  FLOATING_FLATNESS_METRIC,
  HEAVIEST_FILL,
  LEVEL_TAKEN,
  LEVELLER_YIELD,
  NAILED_FLATNESS,
  NAILED_FLATNESS_METRIC,
  POUR_DEPTH,
} from '../../src/figures/subfloor-figures.ts';
import { type Saying, sayArea, sayCut, sayLength, sayWeight } from '../../src/input/format.ts';
import { choice, length, text } from '../../src/input/options.ts';
import {
  type ParsedReadings,
  type ParsedRule,
  readRamp,
  readReadings,
  readRule,
  readYield,
} from '../../src/input/parse-flatness.ts';
import { mineralIn } from '../../src/input/parse-moisture.ts';
import { readPart } from '../../src/input/parse-place.ts';
import type { Units } from '../../src/input/reading.ts';
import {
  allowedGap,
  bagsFor,
  type DipVerdict,
  type FlatLimit,
  isFlat,
  isGridFlat,
  isGridStraight,
  limitFor,
} from '../../src/prep/flat-and-dry.ts';
import { type Block, type Fact, type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { LEVEL } from '../../src/text/prep-text.ts';
import { inches, type Length, ticks } from '../../src/units/length.ts';
import {
  fillFacts,
  fillOf,
  type LevelAsk,
  levelNeeds,
  loadRange,
  sayLitres,
  sayLoad,
  sayRange,
  stopRefusal,
  USUAL_BAG,
  verdictOf,
} from './level-fill.ts';
import { foundOption, refusal, refusalOnPanel } from './prep-options.ts';

type Limits = readonly [FlatLimit, ...FlatLimit[]];

/** Functions of `Saying` because the units are settled only later. */
interface Flatness {
  readonly flat: boolean;
  readonly facts: (saying: Saying) => readonly Fact[];
  readonly worst: (saying: Saying) => string;
  readonly assumed: (saying: Saying) => readonly string[];
}

function flatOf({ readings, line }: LevelAsk, limits: Limits): Flatness {
  if (readings.kind === 'pour') return poured(readings.depth);
  return readings.kind === 'gaps' ? gapsFlat(readings.gaps, limits) : gridFlat(readings.grid, line, limits);
}

/** Nothing was measured that could be flat. */
function poured(depth: Length): Flatness {
  return { flat: false, facts: () => [], worst: (saying) => LEVEL.pourOf(sayCut(depth, saying)), assumed: () => [] };
}

function gapsFlat(gaps: Extract<ParsedReadings, { kind: 'gaps' }>['gaps'], limits: Limits): Flatness {
  const judged = gaps.map((given) => {
    const allowed = ticks(Math.floor(allowedGap(given.over, limits)));
    return { ...given, allowed, flat: isFlat(given.gap, given.over, limits) };
  });
  // The worst reading uses up the largest share of what's allowed.
  const [worst] = [...judged].sort((a, b) => b.gap * a.allowed - a.gap * b.allowed);
  const say = (gap: Length, over: Length, saying: Saying): string =>
    LEVEL.gap(sayCut(gap, saying), sayLength(over, saying));
  const short = judged.filter(({ over }) => over < limitFor(over, limits).over);
  return {
    flat: judged.every(({ flat }) => flat),
    worst: (saying) => (worst ? say(worst.gap, worst.over, saying) : ''),
    facts: (saying) =>
      judged.map(({ gap, over, spot, allowed, flat }) => ({
        label: spot === 'high' ? LEVEL.high : LEVEL.low,
        value: `${say(gap, over, saying)}: ${LEVEL.verdict(flat, sayCut(allowed, saying))}`,
      })),
    assumed: (saying) =>
      short.map(({ over, allowed }) => LEVEL.short(sayLength(over, saying), sayCut(allowed, saying))),
  };
}

function gridFlat(
  grid: Extract<ParsedReadings, { kind: 'grid' }>['grid'],
  line: LevelAsk['line'],
  limits: Limits,
): Flatness {
  const depths = grid.rows.flat();
  const spread = ticks(Math.max(...depths) - Math.min(...depths));
  const straight = isGridStraight(grid, limits);
  return {
    flat: line === 'level' ? straight : straight && isGridFlat(grid, limits),
    worst: (saying) => sayCut(spread, saying),
    facts: (saying) => [
      {
        label: LEVEL.grid,
        value: LEVEL.gridOf(
          grid.rows.length,
          grid.rows[0]?.length ?? 0,
          sayLength(grid.dx, saying),
          sayLength(grid.dy, saying),
        ),
      },
      { label: LEVEL.spread, value: sayCut(spread, saying) },
      { label: LEVEL.straight, value: LEVEL.straightOf(straight) },
    ],
    assumed: () => [],
  };
}

function flatFacts(flatness: Flatness, rule: string, saying: Saying): Block {
  return {
    kind: 'facts',
    section: 'why',
    title: LEVEL.title,
    facts: [{ label: LEVEL.rule, value: rule }, ...flatness.facts(saying)],
  };
}

function hasHigh(readings: ParsedReadings): boolean {
  if (readings.kind === 'pour') return false;
  return readings.kind === 'gaps'
    ? readings.gaps.some(({ spot }) => spot === 'high')
    : readings.grid.rows.flat().some((depth) => depth < 0);
}

function hasLow(readings: ParsedReadings): boolean {
  return readings.kind !== 'gaps' || readings.gaps.some(({ spot }) => spot === 'low');
}

/** Only high spots that break the rule; empty if there are none. */
function highSteps({ readings }: LevelAsk, limits: Limits, saying: Saying): readonly Block[] {
  const steps: string[] = [];
  if (readings.kind === 'gaps') {
    for (const { gap, over, spot } of readings.gaps) {
      if (spot === 'low' || isFlat(gap, over, limits)) continue;
      const take = ticks(gap - Math.floor(allowedGap(over, limits)));
      steps.push(LEVEL.highOf(sayCut(gap, saying), sayLength(over, saying), sayCut(take, saying)));
    }
  } else if (readings.kind === 'grid') {
    const high = readings.grid.rows.flat().filter((depth) => depth < 0);
    if (high.length > 0) steps.push(LEVEL.highGrid(high.length, sayCut(ticks(-Math.min(...high)), saying)));
  }
  return steps.length === 0
    ? []
    : [{ kind: 'steps', section: 'how', title: LEVEL.highTitle, steps: [...steps, LEVEL.highHow] }];
}

/** Liters of filler, and kilograms of powder. */
interface Amount {
  readonly litres: number;
  readonly bags: number;
  readonly kilograms: number;
}

/** The amounts are for the shape that holds most, then for the one that holds least. */
export interface LevelResult extends Result, Amount {
  readonly kind: 'level';
  readonly flat: boolean;
  readonly least: Amount;
  /** Whether to fill it, or to measure its shape first. */
  readonly verdict: DipVerdict;
}

/** Refuses where they mention something unsafe. */
function answerLevel(given: LevelAsk, context: Context): Outcome {
  const slab = !context.optionTexts.has('floor') && isSlab(context.optionTexts.get('readings') ?? '');
  const ask: LevelAsk = slab ? { ...given, floor: 'concrete' } : given;
  const refused = refusalOnPanel(ask.readings.found, ask.area.found, ask.found);
  if (refused) return refused;
  if (ask.floor === 'old' && hasHigh(ask.readings)) return refusal(LEVEL.oldFloor, 'asbestos');
  const saying: Saying = { units: ask.readings.units, decimal: context.preferences.decimal };
  if (ask.readings.kind === 'pour' && ask.area.area === 0n)
    return { problems: [{ option: 'area', got: '', expected: LEVEL.pourArea }] };
  const limits = limitsOf(ask.rule, saying.units);
  const flatness = flatOf(ask, limits);
  const fill = fillOf(ask);
  const verdict = verdictOf(ask, fill, flatness.flat);
  const floorGiven = slab || context.optionTexts.has('floor');
  if (verdict === 'stop') return stopRefusal(ask, fill, flatness.worst(saying), floorGiven, saying);
  const [least, most] = [bagsFor(fill.least, ask.bag), bagsFor(fill.litres, ask.bag)];
  const rule = limits.map(({ gap, over }) => LEVEL.ruleOf(sayLength(gap, saying), sayLength(over, saying)));
  const floor = ask.floor === 'concrete' ? 'concrete' : 'wood';
  const needs = verdict === 'fill' ? levelNeeds(ask, fill, saying) : [];
  const bags = sayRange(String(least.bags), String(most.bags));
  const amount = { bags, one: bags === '1', litres: sayLitres(fill, saying) };
  const measure = LEVEL.measureFirst(loadRange(fill, saying) ?? '', sayLoad(HEAVIEST_FILL.value, saying));
  const toFill = fill.litres > 0 ? (flatness.flat ? LEVEL.noFill : LEVEL.fill)(amount) : undefined;
  const data: LevelResult = {
    kind: 'level',
    flat: flatness.flat,
    litres: fill.litres,
    ...most,
    least: { litres: fill.least, ...least },
    verdict,
  };
  return reply({
    headline:
      ask.readings.kind === 'pour'
        ? LEVEL.pourHeadline(amount, sayArea(ask.area.area, saying), sayCut(ask.readings.depth, saying))
        : LEVEL.headline(
            flatness.flat,
            flatness.worst(saying),
            rule.join(LEVEL.or),
            verdict === 'measure' ? measure : toFill,
          ),
    lines: [
      ...flatness
        .facts(saying)
        .filter(({ label }) => label !== LEVEL.grid)
        .slice(0, 2)
        .map(({ label, value }) => LEVEL.line(label, value)),
      ...(hasHigh(ask.readings) && !flatness.flat ? [LEVEL.highLine] : []),
      ...(verdict === 'measure'
        ? [LEVEL.measureLine]
        : fill.litres > 0
          ? [
              ask.readings.kind === 'pour'
                ? LEVEL.pourLine(
                    sayWeight(ask.bag.kilograms, saying),
                    sayCut(ask.pour, saying),
                    loadRange(fill, saying) ?? '',
                  )
                : LEVEL.buyLine(most.bags, sayWeight(ask.bag.kilograms, saying), sayCut(ask.pour, saying)),
            ]
          : flatness.flat
            ? []
            : hasLow(ask.readings)
              ? [LEVEL.areaLine]
              : []),
    ],
    blocks: [
      flatFacts(flatness, rule.join(LEVEL.or), saying),
      ...(verdict === 'measure' ? [{ kind: 'text' as const, section: 'how' as const, text: LEVEL.measureHow }] : []),
      fillFacts(ask, fill, verdict, saying),
      ...highSteps(ask, limits, saying),
      ...(verdict === 'measure'
        ? []
        : [{ kind: 'steps' as const, section: 'how' as const, title: LEVEL.stepsTitle, steps: LEVEL.steps[floor] }]),
    ],
    assumed: [
      ...context.assumed,
      ...(slab ? [LEVEL.slabRead] : []),
      ...(floorGiven ? [] : [LEVEL.floorTaken]),
      ...flatness.assumed(saying),
    ],
    cautions: worded(levelHazards()),
    reasons: rule.slice(0, 1).map((figure) => ({ entry: 'must-be-level', figure })),
    sources: FLATNESS_FIGURES.map(({ source }) => source),
    data,
    ...(needs.length > 0 && { needs }),
  });
}

/** Puts the hazards of pouring, grinding and sanding before those of screwing and sawing. */
function levelHazards() {
  const poured = cautionsFor('levelling');
  const others = [...cautionsFor('sanding').filter(({ topic }) => topic === 'lead'), ...cautionsFor('subfloor')];
  return [...poured, ...others.filter(({ topic }) => !poured.some((one) => one.topic === topic))];
}

/** Cement board doesn't count: it lies on wood. */
function isSlab(readings: string): boolean {
  const mineral = mineralIn(readings);
  return (
    (mineral === 'concrete' || mineral === 'screed') &&
    !/board|backer|over (?:wood|ply)|on (?:wood|ply)|joist/i.test(readings)
  );
}

function limitsOf(rule: ParsedRule, units: Units): readonly [FlatLimit, ...FlatLimit[]] {
  if (rule.name === 'own') return [{ gap: rule.gap, over: rule.over }];
  const metric = units === 'metric';
  const floating = metric ? FLOATING_FLATNESS_METRIC : FLOATING_FLATNESS;
  const nailed = metric ? NAILED_FLATNESS_METRIC : NAILED_FLATNESS;
  const [first, ...rest] = (rule.name === 'floating' ? floating : nailed).value;
  if (!first) throw new RangeError('a rule without limits');
  return [first, ...rest];
}

export default defineCommand({
  group: 'prep',
  name: 'level',
  summary: 'Is the floor flat enough? High spots, filler, bags and weight, from straightedge readings',
  phrases: [
    'how much leveler for a dip 1/4 inch deep 4x6 ft',
    'how many bags of self leveler for 120 sq ft at 1/8',
    'floor is off 3/8 over 6 feet how do i fix it',
    'low spot in middle of room 1/2 inch',
    'bags of leveling compound for a 10x12 dip',
    'readings 3/16 over 10 ft is that flat enough',
    'hump along the seam 1/4 in high',
    'how much floor patch for a low spot',
    'dip by the door 5/16 in over 4 ft',
    'how do i fill a dip in the plywood',
    'kitchen floor sags 1/2 inch across 8 ft need filler',
    'how many 50 lb bags for 300 sq ft at 1/4 in',
    'level a concrete floor with 1 inch low corner',
    'how thick does the leveler need to be',
    'fix uneven subfloor before vinyl plank',
    'floor slopes 3/4 inch how much compound',
    'low corner 3/8 how much self leveling do i need',
    'patch compound quantity for a 3 ft round dip',
    'straightedge shows 1/4 gap over 6 ft',
    'amount of self-leveling cement for basement 20x15',
    'uneven floor where wall was removed',
    'dip in the middle of the den 1/4 inch deep, 4x6 ft, how many bags of leveler',
    '3/16 gap under a 6 foot straightedge, is it flat enough for vinyl plank',
    'bags of self leveling for 140 sq ft at 3/16',
    'low corner 1/2 inch down, about 3x5',
    'concrete basement is wavy, up to 3/8 over ten feet, 18x22, what do i need',
    'hump on the seam by the hall, quarter inch high, sand or fill around it',
    'screed dips 8 mm over 2 m in the lounge, bags of compound?',
    "my level rocks in the middle of the kitchen, gap's 5/16 at each end over 8 ft",
    'how much floor patch for a trough 20 inches wide and 9 ft long, 1/4 deep',
    'does 1/8 in 6 ft pass',
    "where the old wall was there's a ridge and next to it a 3/8 drop",
    'feather out a half inch step between ply and slab, 4 ft wide',
    'leveling compound amount, dip is round, 40 inches across, 7 mm at the deepest',
    'slab slopes 1 inch toward the door over 14 ft',
    'two dips, one 3x4 at 1/4, one 2x6 at 3/16, buy how many 50 lb bags',
    "i ran a string across and it's 9/16 low in the center, room's 12 wide",
    'flatness readings 1/8, 1/8, 1/4, 3/16 all over 10 feet, ok?',
    'how thick can i pour at once, need 1 1/2 in one spot',
    'primer and leveler for a 9x11 area average 1/4',
    "floor bounces a marble to one side, how do i tell if it's too uneven for click plank",
    'gap of 4 mm under 2 metre edge, acceptable',
    'fill in a low spot by the patio door 5/16 x 5 ft x 30 in',
    "weight of leveler to level 200 sq ft at 3/8, i've got to haul it upstairs",
    'grid of depths 0 1/8 1/4, 1/8 3/8 1/4, 0 1/8 1/8 over 6 by 6 ft',
    'bags for sunken spot under the old tub, 30x60 inches, three quarters deep',
    'leveller for 11 sq metres at 5 mm, bag does 13 litres',
    'tile thinset ridges left over, need skim coat for 65 sq ft',
    'old plywood cups at every seam, maybe 1/16',
    'can plank go over a 3/8 dip if i use thicker underlay or do i fill it first',
    'how many sacks',
    'bathroom floor out 1/2 over 5 ft, small room 5x7',
    'low along the outside wall, runs 13 feet, 16 in out, 1/4 at the wall tapering to nothing',
    "self leveler 1/8 average over the whole basement 26x30 that's how many bags",
    "my 4 ft level shows daylight, a nickel's thickness, in the middle of the room",
    'quantity of patching compound, shallow bowl shape 6 feet across, 5/16 deep',
    'laser says the slab drops 14 mm corner to corner, 5 x 4 m room, what now',
    'does anything need leveling if worst gap is 3/32 in six feet',
    'we pulled the tile up and the mortar bed leaves a 5/8 hole 3 by 8',
    'joists crown in the center so both sides fall away 3/8, 13x13',
    'mixing one bag covers how much of a 1/4 inch low area',
  ],
  options: z.object({
    readings: text(
      {
        summary: 'Gaps over a length, with ; between them, or a grid of depths',
        example: '3/16 in over 10 ft',
        colons: 'grid',
      },
      readReadings,
    ),
    rule: text(
      {
        summary: 'floating, nail-down, or the maker’s own limit: a gap in a length',
        example: '1/8 in in 6 ft',
        standard: 'floating',
        record: FLOATING_FLATNESS,
      },
      readRule,
    ),
    area: text(
      { summary: 'Size of the low area you measured the gaps in', example: '4 x 6 ft', standard: 'none' },
      (typed, reading) => readPart(typed, reading, { line: false }),
    ),
    ramp: text(
      { summary: 'A step to feather out: sides and height', example: '3 x 4 ft, 1/2 in', standard: 'none' },
      readRamp,
    ),
    bag: text(
      {
        summary: 'What a bag fills, and what it weighs',
        example: '13 L per 25 kg',
        standard: '0.45 cu ft per 50 lb',
        record: LEVELLER_YIELD,
      },
      (typed, reading) => readYield(typed, reading, USUAL_BAG),
    ),
    pour: length({
      summary: 'Deepest single pour, from the bag',
      standard: '1 in',
      record: POUR_DEPTH,
      metric: '25 mm',
      example: '1/2 in',
      least: inches(0.0625),
      most: inches(6),
    }),
    line: choice(['straightedge', 'level'], {
      summary: 'What a grid was measured from: a straightedge, or a level line or laser',
      standard: 'straightedge',
      record: LEVEL_TAKEN,
    }),
    shape: choice(['unknown', 'dish', 'trough', 'even'], {
      summary: 'Shape of the low spot: dish (round), trough (long), even (same depth); otherwise you get a range',
      standard: 'unknown',
      example: 'trough',
    }),
    floor: choice(['wood', 'concrete', 'old'], {
      summary: 'What the floor is: wood, concrete, or old flooring',
      standard: 'wood',
      record: LEVEL_TAKEN,
    }),
    found: foundOption,
  }),
  examples: [
    {
      ask: 'level readings: 3/16 in over 10 ft; low 1/4 in over 6 ft, area: 4 x 6 ft',
      headline: `Not flat enough: 1/4" over 6'; the limit is 3/16" in 10' or 1/8" in 6'. To fill: 1 bag (6.2 to 12.4 L).`,
    },
    {
      ask: 'level readings: grid 2 ft: 0 1/8 1/4; 0 1/4 3/8',
      headline: `Not flat enough: 3/8"; the limit is 3/16" in 10' or 1/8" in 6'. To fill: 1 bag (3.2 L).`,
    },
    {
      ask: 'level readings: 1/8 in all over, area: 120 sq ft',
      headline: 'Buy 3 bags for 120 sq ft at 1/8": 35.4 L.',
    },
    {
      ask: 'level readings: low 25 mm over 4 m, area: 20 m², bag: 2.2 kg/m²/mm, 50 kg, floor: concrete',
      headline:
        'Not flat enough: 25 mm over 4 m; the limit is 5 mm in 3 m or 3 mm in 2 m. To fill: 11 to 22 bags (250 to 500 L).',
    },
  ],
  run: (options, context) => answerLevel(options, context),
});
