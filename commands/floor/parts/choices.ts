/** Planks side by side on the same rooms: each laid, priced and weighed, and the first by each measure. */

import type { Context, Problems } from '../../../src/chat/command.ts';
import { choicesIn, type ToldChoice } from '../../../src/input/parse-choices.ts';
import type { AreaPrice } from '../../../src/input/parse-price.ts';
import { countCuts } from '../../../src/layout/cutting.ts';
import { handedInRows } from '../../../src/text/floor-problems-text.ts';
import { tooManyTogether } from '../../../src/text/floor-text.ts';
import { portion } from '../../../src/units/length.ts';
import { wallToWall } from './facts.ts';
import { askedAreas, type LaidFloor, layAsk, settled } from './laid.ts';
import type { PlanksAsk } from './rules.ts';

/** What `floor compare` reads. */
export interface CompareAsk extends Omit<PlanksAsk, 'plank'> {
  readonly planks: readonly ToldChoice[];
  readonly pad: AreaPrice | undefined;
}

/** One plank laid and weighed; money in cents, waste in percent of the area wall to wall. */
export interface Weighed {
  readonly choice: ToldChoice;
  readonly laid: LaidFloor;
  readonly area: bigint;
  readonly wastePercent: number;
  readonly rows: number;
  readonly cuts: number;
  /** The pad that it needs and that has a price; 0 where one is attached. */
  readonly padCents: number | undefined;
  /** Cartons with tax, and the pad where its price was told. */
  readonly total: number | undefined;
}

/** Planks of all choices together: they are laid one after the other before there is an answer. */
const MOST_TOGETHER = 12_000;

/** Every plank laid in the same rooms; the Problems of the first that cannot be, or that all together are too many. */
export async function weigh(ask: CompareAsk, context: Context): Promise<readonly Weighed[] | Problems> {
  const abouts: number[] = [];
  for (const choice of ask.planks) {
    if (choice.plank.handed) return { problems: [handedInRows(context.told.get('pattern') ?? 'stair-step')] };
    const asked = askedAreas({ ...ask, plank: choice.plank }, context);
    if ('problems' in asked) return asked;
    abouts.push(asked.about);
  }
  const upTo = (count: number): number => abouts.slice(0, count).reduce((sum, about) => sum + about, 0);
  if (upTo(abouts.length) > MOST_TOGETHER) {
    const few = [4, 3, 2].find((count) => upTo(count) <= MOST_TOGETHER) ?? 0;
    const fewer = choicesIn(context.told.get('planks') ?? '').slice(0, few);
    return { problems: [tooManyTogether(upTo(abouts.length), MOST_TOGETHER, fewer)] };
  }
  context.begin();
  const weighed: Weighed[] = [];
  for (const choice of ask.planks) {
    const laid = await layAsk({ ...ask, plank: choice.plank }, context);
    if ('problems' in laid) return laid;
    weighed.push(weighedOf(choice, laid, ask));
  }
  return weighed;
}

/** The same planks with the layouts that stand when every search has ended. */
export async function weighSettled(
  weighed: readonly Weighed[],
  ask: CompareAsk,
  context: Context,
): Promise<readonly Weighed[]> {
  const found: Weighed[] = [];
  for (const { choice, laid } of weighed)
    found.push(weighedOf(choice, await settled(laid, { ...ask, plank: choice.plank }, context), ask));
  return found;
}

function weighedOf(choice: ToldChoice, laid: LaidFloor, { pad }: CompareAsk): Weighed {
  const { plan, cost } = laid;
  const area = wallToWall(plan);
  const bought = BigInt(plan.planks) * BigInt(plan.plank.length) * BigInt(plan.plank.width);
  const padCents = choice.plank.attachedPad === true ? 0 : pad && portion(BigInt(pad.price.cents), area, pad.per);
  return {
    choice,
    laid,
    area,
    wastePercent: Number(((bought - area) * 1000n) / area) / 10,
    rows: plan.regions.reduce((sum, { rows }) => sum + rows.length, 0),
    cuts: countCuts(plan),
    padCents,
    total: cost && cost.cents + cost.tax + (padCents ?? 0),
  };
}

/** Those with the least figure among the ones that have it; none when fewer than two have it or all tie. */
export function firstBy(weighed: readonly Weighed[], figure: (one: Weighed) => number | undefined): readonly Weighed[] {
  const told = weighed.filter((one) => figure(one) !== undefined);
  const least = Math.min(...told.map((one) => figure(one) ?? Number.POSITIVE_INFINITY));
  const first = told.filter((one) => figure(one) === least);
  return told.length < 2 || first.length === told.length ? [] : first;
}
