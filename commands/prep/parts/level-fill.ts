/** What fills the low places, by whatever was told of them: a grid, an area with its gaps, a ramp. */

import { DIP_FILL, HEAVIEST_FILL, LEVELLER_WEIGHT } from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayArea, sayCut, sayNumber, sayWeight } from '../../../src/input/format.ts';
import {
  bagsFor,
  DIP_SHAPES,
  type DipShape,
  type DipVerdict,
  filledArea,
  gridFill,
  meanDepth,
  meanFill,
  poundsPerSquareFoot,
  poursFor,
  rampFill,
} from '../../../src/prep/flatness.ts';
import { KILOGRAMS_PER_POUND } from '../../../src/prep/tearout-amounts.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { LEVEL } from '../../../src/text/prep-text.ts';
import { type Length, ticks } from '../../../src/units/length.ts';
import type { LevelAsk } from './level-ask.ts';

const LITRES_PER_CUBIC_FOOT = 28.316846592;
const SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

/** A dip of one shape: litres that fill it, where its area is told, and pounds a square foot at its deepest gap. */
export interface Dip {
  readonly shape: DipShape;
  readonly litres: number;
  readonly pounds: number;
}

/** Litres at the least and the most, and by part; the area in square ticks, the deepest place in ticks. */
export interface Fill {
  readonly least: number;
  readonly litres: number;
  /** By shape, the emptiest first; none without a low gap. */
  readonly dips: readonly Dip[];
  readonly ramp: number;
  readonly cells: number;
  readonly area: bigint;
  readonly deepest: Length;
  /** Pounds a square foot of a ramp and of a grid's low cells. */
  readonly pounds: { readonly ramp: number; readonly cells: number };
}

/** Volumes and weights of all that was told. A gap is the deepest place of its dip: what it holds depends on its shape. */
export function fillOf(ask: LevelAsk): Fill {
  const { readings, area, ramp } = ask;
  const low = lowGaps(ask);
  const grid = readings.kind === 'grid' ? readings.grid : undefined;
  const cells = grid ? gridFill(grid) : 0;
  const sloped = rampFill(ramp.area, ramp.height);
  const mean = meanFill(area.area, low);
  const perInch = weightPerInch(ask);
  // A gap beside a ramp alone is the step that the ramp takes up.
  const dipped = low.length > 0 && (area.area > 0n || ramp.area === 0n);
  const dips = (dipped ? (ask.shape === 'untold' ? DIP_SHAPES : [ask.shape]) : []).map((shape): Dip => {
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

/** Every low gap under a straightedge, in ticks. */
export function lowGaps({ readings }: LevelAsk): readonly Length[] {
  return readings.kind === 'gaps' ? readings.gaps.filter(({ spot }) => spot === 'low').map(({ gap }) => gap) : [];
}

/** Pounds a square foot and inch: the heavy end of what compounds weigh, or the powder of this bag where that alone is more. */
function weightPerInch({ bag }: LevelAsk): number {
  const powder = ((bag.kilograms / bag.litres) * LITRES_PER_CUBIC_FOOT) / KILOGRAMS_PER_POUND / 12;
  return Math.max(LEVELLER_WEIGHT.value.heavy, powder);
}

/** A weight a square foot or square metre, or a range of them; given in pounds a square foot. */
export function sayLoad(pounds: number | readonly [number, number], saying: Saying): string {
  const metric = saying.units === 'metric';
  const each = metric ? KILOGRAMS_PER_POUND / SQUARE_METRES_PER_SQUARE_FOOT : 1;
  const say = (one: number): string => sayNumber(one * each, saying, metric ? 0 : 1);
  const said = typeof pounds === 'number' ? say(pounds) : sayRange(say(pounds[0]), say(pounds[1]));
  return metric ? LEVEL.perMetre(said) : LEVEL.perFoot(said);
}

/** Litres at the least and the most. */
export function sayLitres({ least, litres }: Fill, saying: Saying): string {
  return LEVEL.litres(sayRange(sayNumber(least, saying, 1), sayNumber(litres, saying, 1)));
}

/** From one figure to another, or the one where both are said alike. */
export function sayRange(least: string, most: string): string {
  return least === most ? most : LEVEL.range(least, most);
}

/** Volume, bags, pours, primer and weight, or what to tell so that they can be worked out; of a dip to measure first no more than its shapes. */
export function fillFacts(ask: LevelAsk, fill: Fill, verdict: DipVerdict, saying: Saying): Block {
  const { bag, pour } = ask;
  const title = LEVEL.fillTitle;
  const shapes = fill.dips.map(({ shape, litres, pounds }) => {
    const heavy = verdict === 'measure' && pounds > HEAVIEST_FILL.value;
    return { label: LEVEL.shapes[shape], value: part(litres, pounds, saying) + (heavy ? LEVEL.overLine : '') };
  });
  if (fill.litres === 0)
    return { kind: 'facts', title, facts: [...shapes, { label: LEVEL.untold, value: LEVEL.untoldOf }] };
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
  return { kind: 'facts', title, facts };
}

/** One part of the filling: litres, where they are known, and what it weighs a square foot. */
function part(litres: number, pounds: number, saying: Saying): string {
  const load = LEVEL.loadOf(sayLoad(pounds, saying));
  return litres > 0 ? `${LEVEL.litres(sayNumber(litres, saying, 1))}, ${load}` : load;
}

function volume(fill: Fill, saying: Saying): string {
  const feet = (litres: number): string => sayNumber(litres / LITRES_PER_CUBIC_FOOT, saying, 2);
  const litres = sayLitres(fill, saying);
  return saying.units === 'metric' ? litres : LEVEL.volumeOf(litres, sayRange(feet(fill.least), feet(fill.litres)));
}
