/** Lays a floor and prices it: the part that all floor commands share. */

import type { Context, Problems } from '../../src/chat/command.ts';
import { LONG_RUN, LONG_RUN_GAP } from '../../src/figures/floor-figures.ts';
import { type Saying, sayLength, sayMoney } from '../../src/input/format.ts';
import { type CoveredArea, groundOf, isSlanted } from '../../src/layout/covered-area.ts';
import { directed, divided, largestOf, largestRoom } from '../../src/layout/direction.ts';
import type { HomeDoorway } from '../../src/layout/doorways.ts';
import { costOf, type Plan, type Purchase, purchaseOf, type Region } from '../../src/layout/floor.ts';
import { frameOf } from '../../src/layout/frame.ts';
import type { Home } from '../../src/layout/home-regions.ts';
import {
  inOrder,
  type KeptOffcut,
  keptOffcuts,
  type Leftover,
  layingOrder,
  leftoverOf,
} from '../../src/layout/lay-floor.ts';
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

// Plain numbers, so that checkers outside this code can read them.

/** Whole cents; `cents` is without tax. */
export interface Cost {
  readonly cents: number;
  readonly tax: number;
}

/** Lengths in ticks, money in cents; `cost` only if there is a price. */
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
  /** Offcuts from one region that a later one uses. */
  readonly kept?: readonly KeptOffcut[];
  readonly leftover?: Leftover & { readonly planks: number };
}

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

/** Some regions without the purchase: cartons and cost are known only for the whole floor. */
type RegionResult = Pick<FloorResult, 'kind' | 'ticksPerInch' | 'plank' | 'rules' | 'regions' | 'broken'>;

export function regionResult({ plank, rules, regions, broken }: Plan): RegionResult {
  return { kind: 'floor', ticksPerInch: TICKS_PER_INCH, plank, rules, regions, broken };
}

/**
 * Larger requests are refused: no home has that many planks, so a unit is probably wrong. About 5,000 m² of ordinary planks,
 * laid within a second or two; on a slant each plank takes several times as long.
 */
const MOST_PLANKS = 25_000;
const MOST_SLANTED = 6_000;

/** `said` is the cost in words. */
export interface LaidFloor {
  readonly areas: readonly CoveredArea[];
  readonly plan: Plan;
  readonly purchase: Purchase;
  readonly cost: Cost | undefined;
  readonly said: string | undefined;
  /** The price of one carton, in words. */
  readonly carton: string | undefined;
  readonly home: Home;
  /** Notes on what was assumed where something was missing or unclear. */
  readonly assumed: readonly string[];
  /** True while a better plan may still follow. */
  readonly searching: boolean;
  /** The most offcuts waiting for a later room at any one time. */
  readonly waiting: number;
  /** For rooms whose walls have moved a little; undefined if they no longer fit together. */
  areasOf(rooms: readonly Region[]): readonly CoveredArea[] | undefined;
}

/** Uses the units in which the rooms were typed. */
export function floorFormat(ask: Pick<PlanksAsk, 'room'>, context: Context): Saying {
  return { units: ask.room.units, decimal: context.preferences.decimal };
}

/** `about` is a rough number of planks. */
interface RequestedAreas {
  readonly areas: readonly CoveredArea[];
  readonly home: Home & { readonly assumed: readonly string[] };
  readonly about: number;
  /** As requested, or wider where the longest run needs it. */
  readonly gap: Length;
}

/** Problems: no such wall, nothing left inside the gap, or far too many planks. */
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
      // A slightly longer wall must not turn the rows of a nearly square room.
      const angleOf = (name: string) => areas.find(({ region }) => region.name === name)?.angle ?? 0;
      return moved.regions.map((region) => ({ region, angle: angleOf(region.name) }));
    },
  };
}

/** Yields each improved plan or bound; the last one is final. */
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

/** Waits for the search to end. */
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

/** All undefined if there is no price. */
export function priceOf(cartons: number, ask: AreasAsk, context: Context): Pick<LaidFloor, 'cost' | 'said' | 'carton'> {
  const price = ask.plank.cartonPrice;
  if (!price) return { cost: undefined, said: undefined, carton: undefined };
  const cost = costOf(cartons, price.cents, ask.tax);
  const money = (amount: number): string => sayMoney(cents(amount), price.currency, floorFormat(ask, context));
  const said = ask.tax === 0 ? money(cost.cents) : BUY.taxed(money(cost.cents + cost.tax), money(cost.tax));
  return { cost, said, carton: money(price.cents) };
}

let turns: Promise<void> = Promise.resolve();

/** Yields to the event loop, so that a long answer doesn't block others: whoever waits goes on in a turn of their own. */
export function otherWork(): Promise<void> {
  turns = turns.then(
    () =>
      new Promise((resolve) => {
        setImmediate(resolve);
      }),
  );
  return turns;
}
