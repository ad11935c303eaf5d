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
import { roomLines } from './floor-brief.ts';
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
import { floorReasons, nextFloorRequests } from './planks.ts';

// The whole home is laid even for one room, because offcuts go from room to room.

/** `only` is a room's name, or `largest`. */
interface LayoutAsk extends PlanksAsk {
  readonly only: string;
}

/** Yields the answer with its picture first. */
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
    reasons: floorReasons(laid.plan, saying),
    data: floorResult(plan, purchase, cost, laid.home),
  };
}

/** Computed once and shared by the guides of all rooms. */
interface WholeFloor {
  readonly given: PlanAsGiven;
  readonly tables: readonly Block[];
}

/** The guide of one region of a floor laid as a whole; its data leave out the purchase. */
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
    lines: roomLines(alone, region, saying),
    opens: 'rows',
    blocks: [
      ...(await inSteps(drawRoom(given, region))).map((drawing) => ({ kind: 'picture' as const, drawing })),
      layFacts({ ...laid, plan: alone, home: { ...laid.home, doorways } }, [], saying),
      ...brokenBlocks(alone, saying),
      { kind: 'steps', section: 'how', title: STEPS.title, steps: stepsFor(alone) },
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
  summary: 'The laying guide for one room, with a bigger picture',
  phrases: [
    'show me the layout row by row for a 11x13 room',
    'how wide will the last row be, room 12 ft 4 wide, planks 7 in',
    'will the last row be a sliver, room is 142 inches, plank 5.75',
    'how many rows in a 10 ft wide room with 6 inch planks',
    'draw the plank layout for my bedroom',
    'what width do i rip the first row to',
    'does it come out even, 13\'2" with 7 1/8 planks',
    'layout guide for 9x12 with thirds pattern',
    'where do the cuts fall in a 14x16',
    'cut list for the planks row by row',
    'last plank in each row how long, 48 in planks in 13 ft',
    'how wide should first row be so the last isnt thin',
    'what size is the last row in a room 118 in wide with 6 in boards',
    'plan out the rows for living room 15x19',
    'work out row starts for me',
    'give me the start lengths for each row',
    'last row would be 1 inch, what should i do with the first',
    'picture of how the planks go',
    'how many rows and how wide the first and last',
    'ill have a skinny strip at the far wall, planks are 8 in, room 11\'9"',
    'cut list row by row for 11x13',
    'give me every row for the office, 10\'4" x 12\'8", planks 7 1/16 by 48',
    "how should i lay this room so i don't end up with a tiny strip along the far wall",
    'room is 133 inches across, plank covers 6.85, how wide do first and last rows come out',
    'rip the first row to what',
    'want the rows written out so i can stand at the saw and just cut',
    'lay out the hall for me, 41 inches wide and 19 feet long, 9 inch planks',
    'starter lengths for each row please, half bond pattern',
    'which boards do i cut and how long, going left to right in the bedroom',
    'work out rows and offcuts for 3.4 by 4.1 m with 1220 x 180 planks',
    'does the last row end up under 2 inches if i start full width',
    "i need the row plan for a room that's 12 foot 5 across with 5 3/4 boards",
    'how many rows and what do i trim off the last one',
    'show how the planks fall in an l shaped room 15x18 with a 5x7 bite out of it',
    'balance the first and last row for me',
    'sketch the rows in my dining room, planks run toward the window',
    'tell me the cut for each row in order so my wife can run the saw',
    'seams every third, room 13x16, what do the rows look like',
    'where will the joints land if i start in the left corner by the closet',
    'lay plan for the nursery',
    'row lengths when planks are random 24, 36 and 48',
    'what size do i cut the last plank in each row, the room is 161 inches long',
    'the floor runs through the doorway from hall into the den, plan the rows for both',
    "i'd like to start along the patio door wall, what happens at the opposite side",
    'plot it out with 60 inch planks in a 14\'10" long room',
    "how wide's that last strip gonna be, 9 ft 11 room with 8.9 inch planks",
    'want at least 8 inch stagger, make me a list of starts for 17 rows',
    'row 1 full, row 2 what? and so on for the 10x14 room',
    'diagram of the planks for my living room with the fireplace bump 5 ft by 20 in',
    'plan the cuts so the scrap from one row begins the next',
    'run it lengthwise in a 12x17 and list the rows',
    'how do the rows come out if i leave a 3/8 gap all the way round',
    'set out the boards for the box room, 2.3 x 2.9 metres',
    "which pieces do i cut first for the kitchen, wall to wall it's 117 by 142",
    'i want step by step rows not just how many boxes',
    'layout w/ 7x60 planks bedroom 3',
    'can you map each row with the plank lengths and offcuts labelled',
    "far wall isn't straight, 139 at one end and 138 1/4 at the other, what do i rip",
    'herringbone layout for an 8x10 entry with 5 x 25 pieces',
    'is there a better starting row so i avoid the sliver by the tub',
  ],
  options: z.object({
    ...floorOptions,
    only: text(
      { summary: 'Which room, if you give several; they share offcuts', example: 'bedroom', standard: 'largest' },
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
