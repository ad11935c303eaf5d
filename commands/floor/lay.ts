/** From what was told to a laid floor and its price: the part that every floor command shares. */

import type { Context, Problems } from '../../src/chat/command.ts';
import { LONG_RUN, LONG_RUN_GAP } from '../../src/figures/floor-figures.ts';
import { type Saying, sayLength, sayMoney } from '../../src/input/format.ts';
import { costOf, type Purchase, purchaseOf } from '../../src/layout/cartons.ts';
import { type CoveredArea, groundOf, isSlanted } from '../../src/layout/covered-area.ts';
import { directed, divided, largestOf, largestRoom } from '../../src/layout/direction.ts';
import type { HomeDoorway } from '../../src/layout/doorways.ts';
import type { Plan, Region } from '../../src/layout/floor.ts';
import { frameOf } from '../../src/layout/frame.ts';
import type { Home } from '../../src/layout/home-regions.ts';
import { inOrder, layingOrder } from '../../src/layout/lay-floor.ts';
import { type KeptOffcut, keptOffcuts, type Leftover, leftoverOf } from '../../src/layout/offcuts.ts';
import type { Result } from '../../src/reply/reply.ts';
import {
  directionDivided,
  gapLeavesNothing,
  handedInRows,
  noSuchDirection,
  noSuchWall,
  tooManyPlanks,
} from '../../src/text/floor-problems-text.ts';
import { BUY } from '../../src/text/floor-text.ts';
import { boxOf, doubleArea, type Outline } from '../../src/units/geometry.ts';
import { cents, type Length, TICKS_PER_INCH } from '../../src/units/length.ts';
import { betterFloors, isSearched, layAway } from '../../src/workers/solve.ts';
import { requestedHome } from './floor-home.ts';
import { type AreasAsk, type PlanksAsk, rulesOf } from './floor-options.ts';

// A plan as result data: plain numbers that outside checkers read.

/** Cost in whole cents, tax apart. */
export interface Cost {
  readonly cents: number;
  readonly tax: number;
}

/** Result data of kind `floor`; lengths in ticks, money in cents, cost only if a price was told. */
export interface FloorResult extends Result, Pick<Plan, 'plank' | 'rules' | 'regions' | 'bound' | 'broken'> {
  readonly kind: 'floor';
  readonly ticksPerInch: number;
  readonly count: {
    readonly planks: number;
    readonly reused: number;
    readonly mistakes: number;
    readonly spares: number;
    readonly cartons: number;
  };
  readonly cost?: Cost;
  readonly doorways?: readonly HomeDoorway[];
  /** Offcuts that one region leaves and a later one uses. */
  readonly kept?: readonly KeptOffcut[];
  readonly leftover?: Leftover & { readonly planks: number };
}

/** Plan, purchase and cost as result data. */
export function floorResult(plan: Plan, purchase: Purchase, cost: Cost | undefined, home?: Home): FloorResult {
  const { plank, rules, regions, bound, broken, planks, reused } = plan;
  const { mistakes, spares, cartons } = purchase;
  return {
    kind: 'floor',
    ticksPerInch: TICKS_PER_INCH,
    plank,
    rules,
    regions,
    count: { planks, reused, mistakes, spares, cartons },
    bound,
    broken,
    ...(cost ? { cost } : {}),
    ...(home
      ? {
          doorways: home.doorways,
          kept: keptOffcuts(plan),
          leftover: { planks: purchase.left + mistakes + spares, ...leftoverOf(plan, 1) },
        }
      : {}),
  };
}

/** Result data of kind `floor` of some regions alone: how they are laid, and nothing of what the whole floor takes or costs. */
type RegionResult = Pick<FloorResult, 'kind' | 'ticksPerInch' | 'plank' | 'rules' | 'regions' | 'broken'>;

export function regionResult({ plank, rules, regions, broken }: Plan): RegionResult {
  return { kind: 'floor', ticksPerInch: TICKS_PER_INCH, plank, rules, regions, broken };
}

/**
 * Beyond this many planks an ask is refused: no home has them, and a slip of a unit has. 5,000 m² of usual planks come to about
 * as many, and are laid within a second or two; at a slant, each takes several times as long.
 */
const MOST_PLANKS = 25_000;
const MOST_SLANTED = 6_000;

/** A laid floor with what it takes to buy it. `said` is the cost in words. */
export interface LaidFloor {
  readonly areas: readonly CoveredArea[];
  readonly plan: Plan;
  readonly purchase: Purchase;
  readonly cost: Cost | undefined;
  readonly said: string | undefined;
  /** What a carton costs, in words. */
  readonly carton: string | undefined;
  readonly home: Home;
  /** How doubtful things were read and taken. */
  readonly assumed: readonly string[];
  /** True while a better plan may follow. */
  readonly searching: boolean;
  /** The most offcuts that wait for a later room at one time, rooms laid in the order of the plan. */
  readonly waiting: number;
  /** The same rooms with walls moved, as they would be laid; undefined where they do not go together then. */
  areasOf(rooms: readonly Region[]): readonly CoveredArea[] | undefined;
}

/** How this ask's lengths are said: in the units its rooms were typed in. */
export function floorFormat(ask: Pick<PlanksAsk, 'room'>, context: Context): Saying {
  return { units: ask.room.units, decimal: context.preferences.decimal };
}

/** The rooms of an ask with the way their rows run, and about how many planks they take. */
interface RequestedAreas {
  readonly areas: readonly CoveredArea[];
  readonly home: Home & { readonly assumed: readonly string[] };
  readonly about: number;
  /** The gap to keep: the one told, or the one that the longest run wants. */
  readonly gap: Length;
}

/** What is to be laid; Problems where there is no such wall, no floor within the gap, or far too many planks. */
export function requestedAreas(ask: AreasAsk, context: Context): RequestedAreas | Problems {
  const { plank } = ask.plank;
  const saying = floorFormat(ask, context);
  const home = requestedHome(ask, saying, context.optionTexts);
  if ('problems' in home) return home;
  const areas = directed(home.regions, ask.direction);
  const typed = context.optionTexts.get('direction') ?? '';
  if (!areas && ask.direction.kind === 'each')
    return {
      problems: [
        noSuchDirection(
          typed,
          ask.room.rooms.map(({ name }) => name),
        ),
      ],
    };
  if (!areas) {
    const largest = largestOf(home.regions);
    return { problems: [noSuchWall(typed, largest.name, largestRoom(largest).length)] };
  }
  const apart = divided(home.regions, ask.direction);
  if (apart.length > 0) return { problems: [directionDivided(typed, apart)] };
  const doubled = areas.reduce((sum, { region }) => sum + doubleArea(region.outline), 0n);
  const about = Math.round(Number(doubled) / 2 / plank.width / plank.length);
  const slanted = areas.some(({ region, angle }) => isSlanted(region, angle));
  const most = slanted ? MOST_SLANTED : MOST_PLANKS;
  if (about > most) return { problems: [tooManyPlanks(about, most)] };
  const wide =
    !context.optionTexts.has('gap') && home.regions.some(({ outline }) => longestSide(outline) >= LONG_RUN.value);
  const gap = wide ? LONG_RUN_GAP.value[saying.units] : ask.gap;
  const lost = areas.find(({ region, angle }) => groundOf(region, frameOf(region, angle), gap).length === 0);
  if (lost) return { problems: [gapLeavesNothing(lost.region.name, sayLength(gap, saying))] };
  const taken = wide ? [BUY.wideGap(sayLength(gap, saying), sayLength(LONG_RUN.value, saying))] : [];
  return { areas, home: { ...home, assumed: [...home.assumed, ...taken] }, about, gap };
}

function longestSide(outline: Outline): number {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  return Math.max(maxX - minX, maxY - minY);
}

/** Lays the rooms in rows. */
export async function layAsk(ask: PlanksAsk, context: Context): Promise<LaidFloor | Problems> {
  if (ask.plank.handed) return { problems: [handedInRows(context.optionTexts.get('pattern') ?? 'stair-step')] };
  const requested = requestedAreas(ask, context);
  if ('problems' in requested) return requested;
  const { areas, home, about, gap } = requested;
  const { plank } = ask.plank;
  const saying = floorFormat(ask, context);
  context.begin();
  const laid = await layAway(areas, plank, rulesOf({ ...ask, gap }), about);
  const { order, waiting } = layingOrder(laid);
  return {
    ...priced(inOrder(laid, order), ask, context),
    areas: order.flatMap((index) => areas[index] ?? []),
    home,
    assumed: [...context.assumed, ...home.assumed],
    waiting,
    searching: isSearched(areas, laid),
    areasOf: (rooms) => {
      const moved = requestedHome(ask, saying, context.optionTexts, rooms);
      if ('problems' in moved) return undefined;
      // A wall a little longer must not turn the rows of a room that is nearly square.
      const angleOf = (name: string) => areas.find(({ region }) => region.name === name)?.angle ?? 0;
      return moved.regions.map((region) => ({ region, angle: angleOf(region.name) }));
    },
  };
}

/** The same floor with every better plan, or bound, that is found; the last is found for good. */
export async function* better(laid: LaidFloor, ask: PlanksAsk, context: Context): AsyncGenerator<LaidFloor> {
  let best = laid;
  for await (const plan of betterFloors(laid.areas, laid.plan)) {
    const { order, waiting } = layingOrder(plan);
    const areas = order.flatMap((index) => laid.areas[index] ?? []);
    best = { ...laid, ...priced(inOrder(plan, order), ask, context), areas, waiting };
    yield best;
  }
  yield { ...best, searching: false };
}

/** The floor with the best plan that is found. */
export async function settledLayout(laid: LaidFloor, ask: PlanksAsk, context: Context): Promise<LaidFloor> {
  let best = laid;
  for await (const next of better(laid, ask, context)) best = next;
  return best;
}

type Priced = Pick<LaidFloor, 'plan' | 'purchase' | 'cost' | 'said' | 'carton'>;

function priced(plan: Plan, ask: PlanksAsk, context: Context): Priced {
  const purchase = purchaseOf(plan.planks, ask.mistakes, ask.spares, plan.plank.perCarton);
  return { plan, purchase, ...priceOf(purchase.cartons, ask, context) };
}

/** What so many cartons cost, in figures and words; nothing where no price was told. */
export function priceOf(cartons: number, ask: AreasAsk, context: Context): Pick<LaidFloor, 'cost' | 'said' | 'carton'> {
  const price = ask.plank.cartonPrice;
  if (!price) return { cost: undefined, said: undefined, carton: undefined };
  const cost = costOf(cartons, price.cents, ask.tax);
  const money = (amount: number): string => sayMoney(cents(amount), price.currency, floorFormat(ask, context));
  const said = ask.tax === 0 ? money(cost.cents) : BUY.taxed(money(cost.cents + cost.tax), money(cost.tax));
  return { cost, said, carton: money(price.cents) };
}

// Giving way: a long answer is worked out in short turns.

/** Lets whatever waits for the event loop go first. */
export function otherWork(): Promise<void> {
  return new Promise((resolve) => {
    setImmediate(resolve);
  });
}
