/** `floor layout`: the laying guide for one room alone, with its picture. */

import { closest } from 'fastest-levenshtein';
import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { drawRoom, type PlanAsGiven, planAsGiven } from '../../src/drawing/floor-plans.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { text } from '../../src/input/options.ts';
import { read } from '../../src/input/reading.ts';
import { largestOf } from '../../src/layout/direction.ts';
import type { LaidRegion, Plan, Region } from '../../src/layout/floor.ts';
import { type Block, type Reply, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { noSuchRoom } from '../../src/text/floor-problems-text.ts';
import { counted, largestTaken, oneRoomHeadline, STEPS } from '../../src/text/floor-text.ts';
import { inSteps } from '../../src/workers/time-limits.ts';
import { layFacts } from './floor-facts.ts';
import { answerHerringbone } from './floor-herringbone.ts';
import { brokenBlocks, floorOptions, type PlanksAsk } from './floor-options.ts';
import { guideTables, stepsFor } from './guide.ts';
import {
  floorFormat,
  floorResult,
  type LaidFloor,
  layAsk,
  regionResult,
  requestedAreas,
  settledLayout,
} from './lay.ts';
import { nextFloorRequests } from './planks.ts';

// The laying guide of one room among those told: all are laid, so that offcuts serve from room to room.

/** What `floor layout` reads: `only` names a room; `largest` is the largest. */
interface LayoutAsk extends PlanksAsk {
  readonly only: string;
}

/** The guide of one room, its picture first. */
async function* layoutOf(ask: LayoutAsk, context: Context): AsyncGenerator<Outcome> {
  const requested = requestedAreas(ask, context);
  if ('problems' in requested) {
    yield requested;
    return;
  }
  const regions = requested.areas.map(({ region }) => region);
  const names = regions.flatMap(({ name, rooms }) => rooms?.map((room) => room.name) ?? [name]);
  const wanted = ask.only.toLowerCase() === 'largest' ? largestOf(regions).name : ask.only;
  const isWanted = ({ name, rooms }: Pick<Region, 'name' | 'rooms'>): boolean =>
    [name, ...(rooms ?? []).map((room) => room.name)].some((one) => one.toLowerCase() === wanted.toLowerCase());
  if (!regions.some(isWanted)) {
    yield { problems: [noSuchRoom(ask.only, names, closest(wanted, names))] };
    return;
  }
  const first = await layAsk(ask, context);
  if ('problems' in first) {
    yield first;
    return;
  }
  const laid = await settledLayout(first, ask, context);
  const { plan, purchase, cost } = laid;
  const region = plan.regions.find(isWanted);
  if (!region) throw new Error(`a floor was laid without “${wanted}”`);
  const saying = floorFormat(ask, context);
  const drawn = { given: planAsGiven(plan, saying), tables: guideTables(plan, saying) };
  const reply = await roomReply(laid, region, ask, context, drawn);
  const given = context.optionTexts.get('only') !== undefined || names.length === 1;
  const others = names.filter((name) => name !== region.name);
  yield {
    ...reply,
    assumed: given ? laid.assumed : [...laid.assumed, largestTaken(region.name, others)],
    actions: nextFloorRequests(laid.plan, context),
    data: floorResult(plan, purchase, cost, laid.home),
  };
}

/** What is made once for all rooms of a floor: the plan as it is drawn, and the guide of each region. */
interface WholeFloor {
  readonly given: PlanAsGiven;
  readonly tables: readonly Block[];
}

/**
 * One region of a laid floor as an answer of its own: its picture, how it is laid, its guide out of those of all. The data are
 * those of the region alone, without what it costs.
 */
export async function roomReply(
  laid: LaidFloor,
  region: LaidRegion,
  ask: PlanksAsk,
  context: Context,
  { given, tables }: WholeFloor,
): Promise<Reply> {
  const { plan } = laid;
  const saying = floorFormat(ask, context);
  const alone: Plan = { ...plan, regions: [region], broken: plan.broken.filter((one) => one.region === region.name) };
  const own = region.rooms?.map(({ name }) => name) ?? [region.name];
  const doorways = laid.home.doorways.filter(({ rooms }) => rooms.some((room) => own.includes(room)));
  const pieces = region.rows.flatMap((row) => row.pieces);
  const planks = new Set(pieces.map(({ plank }) => plank)).size;
  return reply({
    headline: oneRoomHeadline(
      region.name,
      counted(region.rows.length, 'row'),
      counted(planks, 'plank'),
      pieces.filter(({ part }) => part !== 'whole').length,
    ),
    blocks: [
      ...(await inSteps(drawRoom(given, region))).map((drawing) => ({ kind: 'picture' as const, drawing })),
      layFacts({ ...laid, plan: alone, home: { ...laid.home, doorways } }, [], saying),
      ...brokenBlocks(alone, saying),
      { kind: 'steps', title: STEPS.title, steps: stepsFor(alone) },
      ...tables.filter((_, i) => plan.regions[i] === region),
    ],
    assumed: laid.assumed,
    cautions: worded(cautionsFor('laying')),
    data: regionResult(alone),
  });
}

export default defineCommand({
  group: 'floor',
  name: 'layout',
  summary: 'The laying guide of one room alone, bigger, with its picture',
  options: z.object({
    ...floorOptions,
    only: text(
      { summary: 'Which room, when several are told: they share offcuts', example: 'bedroom', standard: 'largest' },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    {
      ask: `layout room: bedroom 11' x 12'6", plank: 7 x 48 in, 10 per carton, pattern: thirds`,
      headline: 'bedroom: 19 rows, from 64 planks, 38 pieces to cut.',
    },
    {
      ask: "layout room: hall 3'6\" x 14'; bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, only: hall",
      headline: 'hall: 6 rows, from 23 planks, 10 pieces to cut.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? answerHerringbone({ ...options, pattern }, context)
      : layoutOf({ ...options, pattern }, context),
});
