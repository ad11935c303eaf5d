/** How much filler low spots take, from whatever they measured: a grid, an area with its gaps, or a ramp. */

import {
  DEEPEST_DIP,
  DIP_FILL,
  HEAVIEST_FILL,
  LEVELLER_WEIGHT,
  LEVELLER_YIELD,
} from '../../src/figures/subfloor-figures.ts';
import { type Saying, sayArea, sayCut, sayLength, sayNumber, sayWeight } from '../../src/input/format.ts';
import type { ParsedRamp, ParsedReadings, ParsedRule } from '../../src/input/parse-flatness.ts';
import type { Found } from '../../src/input/parse-found.ts';
import type { ParsedPart } from '../../src/input/parse-place.ts';
import {
  type Bag,
  bagsFor,
  DIP_SHAPES,
  type DipShape,
  type DipVerdict,
  dipVerdict,
  filledArea,
  gridFill,
  isDeeper,
  isGridDeeper,
  meanDepth,
  meanFill,
  poundsPerSquareFoot,
  poursFor,
  rampFill,
} from '../../src/prep/flat-and-dry.ts';
import { KILOGRAMS_PER_POUND } from '../../src/prep/old-floor.ts';
import type { Need } from '../../src/reply/need.ts';
import type { Block, Fact, Refusal } from '../../src/reply/reply.ts';
import { capital } from '../../src/text/chat-text.ts';
import { LEVEL } from '../../src/text/prep-text.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { type Length, ticks } from '../../src/units/length.ts';
import { refusal } from './prep-options.ts';

export interface LevelAsk {
  readonly readings: ParsedReadings;
  readonly rule: ParsedRule;
  readonly line: 'straightedge' | 'level';
  readonly shape: 'unknown' | DipShape;
  readonly floor: 'wood' | 'concrete' | 'old';
  readonly area: ParsedPart;
  readonly ramp: ParsedRamp;
  readonly bag: Bag;
  readonly pour: Length;
  readonly found: Found;
}

const LITRES_PER_CUBIC_FOOT = 28.316846592;
export const USUAL_BAG = {
  litres: LEVELLER_YIELD.value.cubicFeet * LITRES_PER_CUBIC_FOOT,
  kilograms: LEVELLER_YIELD.value.pounds * KILOGRAMS_PER_POUND,
};

const SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

/** `litres` is 0 without an area; `pounds` are per square foot at the deepest gap. */
interface Dip {
  readonly shape: DipShape;
  readonly litres: number;
  readonly pounds: number;
}

/** Litres at the least and the most and for each part; the area in square ticks, the deepest place in ticks. */
interface Fill {
  readonly least: number;
  readonly litres: number;
  /** One per possible shape, the one that holds least first; empty if no gap is low. */
  readonly dips: readonly Dip[];
  readonly ramp: number;
  readonly cells: number;
  readonly area: bigint;
  readonly deepest: Length;
  /** Per square foot, for a ramp and for the low cells of a grid. */
  readonly pounds: { readonly ramp: number; readonly cells: number };
}

/** A gap is the depth at the deepest point of its dip, so what the dip holds depends on its shape. */
export function fillOf(ask: LevelAsk): Fill {
  const { readings, area, ramp } = ask;
  const low = lowGaps(ask);
  const grid = readings.kind === 'grid' ? readings.grid : undefined;
  const cells = grid ? gridFill(grid) : 0;
  const sloped = rampFill(ramp.area, ramp.height);
  const mean = meanFill(area.area, low);
  const perInch = weightPerInch(ask);
  // Without an area for it, a gap next to a ramp is the step that the ramp evens out.
  const known = readings.kind === 'pour' ? 'even' : ask.shape;
  const dipped = low.length > 0 && (area.area > 0n || ramp.area === 0n);
  const dips = (dipped ? (known === 'unknown' ? DIP_SHAPES : [known]) : []).map((shape): Dip => {
    const share = DIP_FILL.value[shape];
    return { shape, litres: mean * share, pounds: poundsPerSquareFoot(Math.max(...low) * share, perInch) };
  });
  const fixed = sloped + cells;
  const covered = grid ? filledArea(grid) : 0n;
  const weight = (litres: number, over: bigint): number => poundsPerSquareFoot(meanDepth(litres, over), perInch);
  return {
    least: (dips[0]?.litres ?? 0) + fixed,
    litres: (dips.at(-1)?.litres ?? 0) + fixed,
    dips,
    ramp: sloped,
    cells,
    area: covered + (mean > 0 ? area.area : 0n) + ramp.area,
    deepest: ticks(Math.max(0, ramp.height, ...(grid ? grid.rows.flat() : low))),
    pounds: { ramp: weight(sloped, ramp.area), cells: weight(cells, covered) },
  };
}

/** In ticks, under a straightedge. */
function lowGaps({ readings }: LevelAsk): readonly Length[] {
  if (readings.kind === 'pour') return [readings.depth];
  return readings.kind === 'gaps' ? readings.gaps.filter(({ spot }) => spot === 'low').map(({ gap }) => gap) : [];
}

/**
 * Pounds per square foot and inch of depth. Uses the heavy end of what compounds weigh, or this bag's powder if that alone is
 * more.
 */
function weightPerInch({ bag }: LevelAsk): number {
  const powder = ((bag.kilograms / bag.litres) * LITRES_PER_CUBIC_FOOT) / KILOGRAMS_PER_POUND / 12;
  return Math.max(LEVELLER_WEIGHT.value.heavy, powder);
}

/** `pounds` are per square foot, one figure or a range; the text is per square meter in metric. */
export function sayLoad(pounds: number | readonly [number, number], saying: Saying): string {
  const metric = saying.units === 'metric';
  const each = metric ? KILOGRAMS_PER_POUND / SQUARE_METRES_PER_SQUARE_FOOT : 1;
  const say = (one: number): string => sayNumber(one * each, saying, metric ? 0 : 1);
  const said = typeof pounds === 'number' ? say(pounds) : sayRange(say(pounds[0]), say(pounds[1]));
  return metric ? LEVEL.perMetre(said) : LEVEL.perFoot(said);
}

export function sayLitres({ least, litres }: Fill, saying: Saying): string {
  return LEVEL.litres(sayRange(sayNumber(least, saying, 1), sayNumber(litres, saying, 1)));
}

/** Just one figure if both read the same. */
export function sayRange(least: string, most: string): string {
  return least === most ? most : LEVEL.range(least, most);
}

/** Also says what's missing to compute the rest. Until a doubtful dip has been measured, only its possible shapes are shown. */
export function fillFacts(ask: LevelAsk, fill: Fill, verdict: DipVerdict, saying: Saying): Block {
  const { bag, pour } = ask;
  const title = LEVEL.fillTitle;
  const shapes = fill.dips.map(({ shape, litres, pounds }) => {
    const heavy = verdict === 'measure' && pounds > HEAVIEST_FILL.value;
    return { label: LEVEL.shapes[shape], value: part(litres, pounds, saying) + (heavy ? LEVEL.overLine : '') };
  });
  if (fill.litres === 0)
    return {
      kind: 'facts',
      section: 'buy',
      title,
      facts: [...shapes, { label: LEVEL.notGiven, value: LEVEL.notGivenOf }],
    };
  const [least, most] = [bagsFor(fill.least, bag), bagsFor(fill.litres, bag)];
  const powder = LEVEL.weightOf(sayRange(sayWeight(least.kilograms, saying), sayWeight(most.kilograms, saying)));
  const bags: Fact = {
    label: LEVEL.bags,
    value: LEVEL.bagsOf(
      sayRange(String(least.bags), String(most.bags)),
      sayNumber(bag.litres, saying, 1),
      sayWeight(bag.kilograms, saying),
    ),
  };
  const job: readonly Fact[] = [
    ...(fill.dips.length > 1 ? [{ label: LEVEL.buy, value: LEVEL.buyOf(most.bags) }] : []),
    { label: LEVEL.pours, value: LEVEL.poursOf(poursFor(fill.deepest, pour), sayCut(pour, saying)) },
    { label: LEVEL.weight, value: powder },
    { label: LEVEL.primer, value: LEVEL.primerOf(sayArea(fill.area, saying)) },
  ];
  const facts: readonly Fact[] = [
    { label: LEVEL.volume, value: volume(fill, saying) },
    ...shapes,
    ...(fill.ramp > 0 ? [{ label: LEVEL.ramp, value: part(fill.ramp, fill.pounds.ramp, saying) }] : []),
    ...(fill.cells > 0 ? [{ label: LEVEL.cells, value: part(fill.cells, fill.pounds.cells, saying) }] : []),
    bags,
    ...(verdict === 'measure' ? [] : job),
  ];
  return { kind: 'facts', section: 'buy', title, facts };
}

/** Leaves out the volume where it isn't known. `pounds` are per square foot. */
function part(litres: number, pounds: number, saying: Saying): string {
  const load = LEVEL.loadOf(sayLoad(pounds, saying));
  return litres > 0 ? `${LEVEL.litres(sayNumber(litres, saying, 1))}, ${load}` : load;
}

function volume(fill: Fill, saying: Saying): string {
  const feet = (litres: number): string => sayNumber(litres / LITRES_PER_CUBIC_FOOT, saying, 2);
  const litres = sayLitres(fill, saying);
  return saying.units === 'metric' ? litres : LEVEL.volumeOf(litres, sayRange(feet(fill.least), feet(fill.litres)));
}

/** The compound by volume and its primer by area; empty if nothing needs filling. */
export function levelNeeds({ bag }: LevelAsk, fill: Fill, saying: Saying): readonly Need[] {
  if (fill.litres === 0) return [];
  const sold = NEEDS.sack(sayWeight(bag.kilograms, saying), sayNumber(bag.litres, saying, 1));
  return [
    {
      item: 'levelling compound',
      label: NEEDS.leveller,
      stage: 'flat',
      quantity: { unit: 'volume', amount: fill.litres },
      package: { size: bag.litres, ...sold },
    },
    ...(fill.area > 0n
      ? [
          {
            item: 'levelling primer',
            label: NEEDS.primer,
            stage: 'flat',
            quantity: { unit: 'area', amount: Number(fill.area) },
          } as const,
        ]
      : []),
  ];
}

// In a wood floor, a dip that is too deep or takes too much filler raises the question of structure first.

/** Concrete carries what's poured on it, so it is always filled. On wood, nothing is filled if the floor is flat enough. */
export function verdictOf(ask: LevelAsk, fill: Fill, flat: boolean): DipVerdict {
  if (ask.floor === 'concrete') return 'fill';
  if (isTooDeep(ask)) return 'stop';
  if (flat) return 'fill';
  const limit = HEAVIEST_FILL.value;
  const verdicts = [
    dipVerdict(
      fill.dips.map(({ pounds }) => pounds),
      limit,
    ),
    dipVerdict([fill.pounds.ramp], limit),
    dipVerdict([fill.pounds.cells], limit),
  ];
  return verdicts.find((verdict) => verdict === 'stop') ?? verdicts.find((verdict) => verdict === 'measure') ?? 'fill';
}

function isTooDeep({ readings, line }: LevelAsk): boolean {
  const limit = DEEPEST_DIP.value;
  if (readings.kind === 'pour') return false;
  if (readings.kind === 'gaps') return readings.gaps.some(({ gap, over }) => isDeeper(gap, over, limit));
  const { grid } = readings;
  const [across, along] = [(grid.rows[0]?.length ?? 1) - 1, grid.rows.length - 1];
  const longest = Math.max(across * grid.dx, along * grid.dy);
  // Depths below a straightedge are gaps. Below a level line they can come from a slope, which isn't a dip.
  const below = line === 'straightedge' && isDeeper(Math.max(...grid.rows.flat()), longest, limit);
  return below || isGridDeeper(grid, limit);
}

export function stopRefusal(ask: LevelAsk, fill: Fill, worst: string, floorGiven: boolean, saying: Saying): Refusal {
  const { gap, over } = DEEPEST_DIP.value;
  const why = isTooDeep(ask)
    ? LEVEL.tooDeep(worst, sayCut(gap, saying), sayLength(over, saying), loadRange(fill, saying))
    : LEVEL.tooHeavy(worst, loadRange(fill, saying) ?? '', sayLoad(HEAVIEST_FILL.value, saying));
  return refusal({ why: floorGiven ? why : `${why} ${capital(LEVEL.floorTaken)}.`, call: LEVEL.stopCall });
}

/** Per square foot, from the shape that holds least to the one that holds most, or the heaviest part. Undefined for a hump. */
export function loadRange({ dips, pounds }: Fill, saying: Saying): string | undefined {
  const [first, last] = [dips[0], dips.at(-1)];
  const part = Math.max(pounds.ramp, pounds.cells);
  if (first && last && last.pounds >= part) return sayLoad([first.pounds, last.pounds], saying);
  return part > 0 ? sayLoad(part, saying) : undefined;
}
