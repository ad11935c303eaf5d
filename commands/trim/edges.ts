/** `trim edges`: the profile for each doorway where the floor ends, undercuts, and stair nosing. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import {
  ALIKE_RISERS,
  EDGE_FIGURES,
  FLOOR_HEIGHT,
  LEVEL_FLOORS,
  PROFILE_STICKS,
  TRIP,
  UNDERCUT_CLEARANCE,
} from '../../src/figures/trim-figures.ts';
import { type Saying, sayCut, sayLength } from '../../src/input/format.ts';
import { length, text } from '../../src/input/options.ts';
import { unitIn, unitsOf } from '../../src/input/parse-length.ts';
import { readStockOnSale } from '../../src/input/parse-stock.ts';
import { type ParsedStairs, readEdgeDoorways, readStairs } from '../../src/input/rooms/parse-doorways.ts';
import { type Block, type Caution, type Reply, reply } from '../../src/reply/reply.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { edgeTooLong, floorTaken, noEdges } from '../../src/text/trim-problems-text.ts';
import { EDGES, riserText, sayProfile } from '../../src/text/trim-text.ts';
import { type Beyond, type EdgeDoorway, type Profile, profileFor, stepOf, undercut } from '../../src/trim/pieces.ts';
import type { StickPlan, StickTask } from '../../src/trim/sticks.ts';
import { SQUARE } from '../../src/trim/walls.ts';
import { inches, type Length, millimetres, ticks } from '../../src/units/length.ts';
import { stickPlans } from './list.ts';
import { cautionsOf, type SticksAsk, stickOptions } from './trim-options.ts';
import { cuttingTable, longerStick, longestPiece, sayBought, sayCost, stockOf } from './trim-pieces.ts';
import { stickNeeds, toBuy, trimResult } from './trim-results.ts';

// Each profile is cut from sticks of its own.

interface EdgesAsk extends SticksAsk {
  readonly doorways: readonly EdgeDoorway[];
  readonly floor: Length;
  readonly level: Length;
  readonly clearance: Length;
  readonly stairs: ParsedStairs;
}

interface Edge {
  readonly name: string;
  readonly profile: Profile;
  readonly length: Length;
  readonly why: Exclude<Profile, 'end cap'> | Beyond;
  readonly doorway: EdgeDoorway | undefined;
}

interface ProfilePlan {
  readonly profile: Profile;
  readonly task: StickTask;
  readonly plan: StickPlan;
}

function edgesOf({ doorways, stairs, floor, level }: EdgesAsk): readonly Edge[] {
  const names = doorways.map(({ name }, i) => {
    const before = doorways.slice(0, i).filter((one) => one.name === name).length;
    return before === 0 ? name : `${name} (${before + 1})`;
  });
  return [
    ...doorways.map((doorway, i): Edge => {
      const profile = profileFor(doorway, floor, level);
      const why = profile === 'end cap' ? doorway.beyond : profile;
      return { name: names[i] ?? '', profile, length: doorway.width, why, doorway };
    }),
    ...Array.from(
      { length: stairs.count },
      (_, i): Edge => ({
        name: `step ${i + 1}`,
        profile: 'nosing',
        length: stairs.width,
        why: 'nosing',
        doorway: undefined,
      }),
    ),
  ];
}

/** Each yield has the plans of all profiles, one of them improved. */
async function* profilePlans(edges: readonly Edge[], ask: EdgesAsk): AsyncGenerator<readonly ProfilePlan[]> {
  const profiles = [...new Set(edges.map(({ profile }) => profile))];
  const plans = new Map<Profile, ProfilePlan>();
  const streams = profiles.map((profile) => {
    const pieces = edges
      .filter((edge) => edge.profile === profile)
      .map(({ name, length }) => ({ id: name, length, kerf: ask.kerf }));
    const task: StickTask = { pieces, stock: stockOf(ask), endTrim: ask['end-trim'] };
    return { profile, task, plans: stickPlans(task)[Symbol.asyncIterator]() };
  });
  for (const { profile, task, plans: stream } of streams) {
    const first = await stream.next();
    if (!first.done) plans.set(profile, { profile, task, plan: first.value });
  }
  yield [...plans.values()];
  for (const { profile, task, plans: stream } of streams) {
    for (let next = await stream.next(); !next.done; next = await stream.next()) {
      plans.set(profile, { profile, task, plan: next.value });
      yield [...plans.values()];
    }
  }
}

async function* answerEdges(ask: EdgesAsk, context: Context): AsyncGenerator<Outcome> {
  const saying = sayingOf(context);
  const edges = edgesOf(ask);
  if (edges.length === 0) {
    yield { problems: [noEdges(saying.units === 'metric' ? '800 mm to tile 10 mm' : 'bath 30 in to tile 1/2 in')] };
    return;
  }
  const long = edges.filter(({ length }) => length > longestPiece(ask)).sort((a, b) => b.length - a.length)[0];
  if (long) {
    const longer = sayLength(longerStick(long.length, saying), saying);
    const given = context.optionTexts.get('stock');
    yield {
      problems: [edgeTooLong(long.name, sayLength(long.length, saying), given ? `${given}; ${longer}` : longer)],
    };
    return;
  }
  context.begin();
  for await (const plans of profilePlans(edges, ask)) yield replyOf(ask, edges, plans, saying, context);
}

/** Uses the units in which the doorways or the stairs were typed, otherwise the user's own. */
function sayingOf({ optionTexts, preferences }: Context): Saying {
  const unit = unitIn(optionTexts.get('doorways') ?? '') ?? unitIn(optionTexts.get('stairs') ?? '');
  return { units: unit === undefined ? preferences.units : unitsOf(unit), decimal: preferences.decimal };
}

function replyOf(
  ask: EdgesAsk,
  edges: readonly Edge[],
  plans: readonly ProfilePlan[],
  saying: Saying,
  context: Context,
): Reply {
  const sum = (of: (plan: ProfilePlan['plan']) => number): number =>
    plans.reduce((total, { plan }) => total + of(plan), 0);
  const bought = sum(({ sticks }) => sticks.filter(({ stock }) => ask.stock.items[stock]?.have === undefined).length);
  const counts = plans.map(({ profile, task }) => [profile, task.pieces.length] as const);
  return reply({
    reasons: [{ entry: 'which-transition' }],
    headline: EDGES.headline(
      counts,
      bought,
      sayCost(
        sum(({ cents }) => cents),
        ask.stock,
        saying,
      ),
    ),
    lines: edgeLines(ask, edges, saying),
    blocks: [
      doorwayTable(ask, edges, saying),
      {
        kind: 'facts',
        section: 'buy',
        title: EDGES.buyTitle,
        facts: [
          ...plans.map(({ profile, plan, task }) => ({
            label: sayProfile(profile),
            value: EDGES.buy(sayBought(plan, task, ask.stock, saying), sayCost(plan.cents, ask.stock, saying)),
          })),
          {
            label: EDGES.undercut,
            value: EDGES.undercutValue(
              sayCut(undercut(ask.floor, ask.clearance), saying),
              sayCut(ask.floor, saying),
              sayCut(ask.clearance, saying),
            ),
          },
        ],
      },
      ...plans.map(({ profile, plan, task }) => cuttingTable(plan, task, saying, EDGES.cutTitle(profile))),
      {
        kind: 'steps',
        section: 'how',
        title: EDGES.stepsTitle,
        steps: [...EDGES.steps(sayCut(TRIP.value, saying)), ...(ask.stairs.count > 0 ? EDGES.nosingSteps : [])],
      },
    ],
    assumed: [
      ...context.assumed,
      ...(context.optionTexts.has('floor') ? [] : [floorTaken(sayLength(ask.floor, saying))]),
    ],
    cautions: [...riserCaution(ask, saying), ...cautionsOf('laying', 'subfloor')],
    sources: EDGE_FIGURES.map(({ source }) => source),
    data: trimResult(
      {
        stock: ask.stock,
        kerf: ask.kerf,
        endTrim: ask['end-trim'],
        thickness: 0,
        walls: edges.map(({ name, length }) => ({ name, length, corners: [90, 90] })),
        pieces: edges.map(({ name, length, profile }) => ({
          id: name,
          wall: name,
          length,
          left: SQUARE,
          right: SQUARE,
          profile: sayProfile(profile),
        })),
        glueUp: [],
        units: saying.units,
      },
      {
        sticks: plans.flatMap(({ plan }) => plan.sticks),
        cents: sum(({ cents }) => cents),
        bound: sum(({ bound }) => bound),
        proven: plans.every(({ plan }) => plan.proven),
      },
    ),
    ...toBuy(
      plans.flatMap(({ profile, plan }) =>
        stickNeeds(
          plan,
          ask.stock,
          { item: profile, label: NEEDS.profile(sayProfile(profile)), stage: 'transitions' },
          saying,
        ),
      ),
    ),
  });
}

function edgeLines(ask: EdgesAsk, edges: readonly Edge[], saying: Saying): readonly string[] {
  const most = ask.stairs.count > 0 ? 2 : 3;
  const doorways = edges.filter(({ doorway }) => doorway);
  return [
    ...doorways
      .slice(0, most)
      .map(({ name, profile, length, why }) =>
        EDGES.line(name, sayProfile(profile), sayCut(length, saying), EDGES.why[why]),
      ),
    ...(doorways.length > most ? [EDGES.moreLine(doorways.length - most)] : []),
    ...(ask.stairs.count > 0 ? [EDGES.stairsLine(ask.stairs.count, sayCut(ask.stairs.width, saying))] : []),
    ...(doorways.length > 0 && doorways.length <= most
      ? [EDGES.undercutLine(sayCut(undercut(ask.floor, ask.clearance), saying))]
      : []),
  ];
}

function doorwayTable(ask: EdgesAsk, edges: readonly Edge[], saying: Saying): Block {
  const rows = edges.map(({ name, profile, length, why, doorway }) => {
    const step = doorway ? stepOf(doorway, ask.floor) : 0;
    const size = sayCut(ticks(Math.abs(step)), saying);
    const said = !doorway?.height ? '' : step === 0 ? EDGES.level : step > 0 ? EDGES.up(size) : EDGES.down(size);
    const trip = doorway?.height && Math.abs(step) > TRIP.value ? EDGES.trip(sayCut(TRIP.value, saying)) : '';
    return [name, sayProfile(profile), sayCut(length, saying), said, `${EDGES.why[why]}${trip}`];
  });
  return {
    kind: 'table',
    section: 'list',
    title: ask.doorways.length > 0 ? EDGES.title : EDGES.stairsTitle,
    columns: EDGES.columns,
    rows,
  };
}

function riserCaution({ floor, stairs }: EdgesAsk, saying: Saying): readonly Caution[] {
  if (stairs.count === 0) return [];
  const text = riserText(sayCut(floor, saying), sayCut(ALIKE_RISERS.value, saying), floor > ALIKE_RISERS.value);
  return [{ topic: 'riser', text, source: ALIKE_RISERS.source }];
}

export default defineCommand({
  group: 'trim',
  name: 'edges',
  summary: 'The profile for each doorway where the floor ends, undercuts, and stair nosing',
  phrases: [
    'what transition pieces do i need for 3 doorways',
    'bath doorway 30 in to tile, bedroom 32 in to carpet, what strips',
    'how many transition strips for my house',
    'which profile for each doorway',
    't molding for 36 inch opening how many sticks',
    'reducers needed for hall to kitchen vinyl',
    'list of transitions and undercuts for my doors',
    'threshold pieces for 5 doorways 72 in stock',
    'end cap for sliding door 6 ft',
    'how long a t-mold for a 32 in door',
    'transitions count and cost',
    'strip lengths to buy for doors 28 30 and 36',
    'what goes at the edge where floor meets carpet, 2 doors at 30 in',
    'buy list for thresholds',
    'how many reducers and t molds',
    '72 inch strips, 4 doors 30 inches each, how many',
    'transition for 8 foot wide opening to the tile',
    'need trim where the plank ends at 3 places',
    'transition strips for bath, laundry and closet',
    'order transition molding for upstairs',
    'what do i put where the plank meets the tile in the bath doorway, 30 in wide',
    'five doorways, two to carpet, two to tile, one to hardwood, what strips do i buy',
    't molding for a 32 inch opening',
    "reducer from 5/16 plank down to old lino, door's 36",
    'how many 72 inch transition strips for doors of 28, 30, 30 and 32',
    'list transitions for upstairs',
    'slider to the deck is 6 ft wide, do i use an end cap there and how many lengths',
    'carpet in the bedrooms stays, so four thresholds at 30 inches',
    'door bars needed for lounge to hall and hall to kitchen, both 762 mm',
    "what edge goes along the fireplace hearth, it's 5 feet plus two 18 inch sides",
    "do i need a strip between the hall and bedroom if it's the same floor on both sides, room's 34 ft long",
    'front door sill is metal and 36 inches, which piece do i get to finish the plank there',
    'what pieces for a cased opening of 7 feet into the dining room where the tile starts',
    'buy list of t moldings and reducers, 3 of one and 2 of the other',
    'tile is a quarter inch higher than my vinyl, what profile',
    'threshold for the laundry room',
    'how many sticks of end cap for two sliders 5 ft and 8 ft',
    'transition where plank stops at stairs, opening 38 inches',
    'edge trim quantity, kitchen to living 11 ft opening, bath 28 in, garage door 32 in',
    'need a carpet to vinyl strip for 6 bedroom doors at 2 ft 8',
    'can one 94 inch t mold do three doorways of 30',
    'floor heights: hall plank 6.5 mm, bath tile 11, which transition fits',
    'what do i cap the plank with at the shower curb and along the tub',
    'two pocket doors 60 inches each, one into carpet one into wood floor',
    'thresholds count please',
    "the transitions at doors cost 19.95 each, doors 24 30 30 36, what's my bill",
    'how do i close off the edge at the brick wall, no baseboard there',
    'arch between rooms is 9\'4" wide, floor continues, should there be a t-molding',
    'reducer pieces for a ramp down to concrete in the utility, 34 inches',
    'what goes under each door between old oak and new plank',
    "i've got four doors plus the sliding patio one, get me a transitions list",
    'the strip by the front door is missing from my list, 38 inch opening to slate',
    'will i need something at every doorway or only where floor type changes',
    'nosing or reducer at a 1 inch step down to the sunroom, 6 ft',
    'bathroom threshold 27 1/2 inches to marble',
    'order t bars in 90 cm lengths for three 838 mm doors',
    'trim for the edge where carpet picks up again at the bedroom closets',
    'work out what each of the seven doorways gets',
    'metal strip or matching wood one for hall to carpet, 2 doors',
    'how much transition molding total for the downstairs',
  ],
  options: z.object({
    doorways: text(
      {
        summary: 'Width, what’s beyond it, and its height: “bath 30 in to tile 1/2 in; closet 24 in to carpet”',
        example: 'bath 30 in to tile 1/2 in',
        colons: 'any',
        standard: 'none',
      },
      readEdgeDoorways,
    ),
    floor: length({
      summary: 'Thickness of your floor with its pad',
      standard: '5/16 in',
      record: FLOOR_HEIGHT,
      metric: '8 mm',
      example: '1/4 in',
      least: millimetres(1),
      most: inches(2),
    }),
    stock: text(
      {
        summary: 'Lengths of profile on sale, with prices if you like',
        example: '36 in $14; 72 in $24',
        standard: '36 in; 72 in; 94 in',
        record: PROFILE_STICKS,
        metric: '0.9 m; 1.8 m; 2.4 m',
      },
      readStockOnSale,
    ),
    kerf: stickOptions.kerf,
    'end-trim': stickOptions['end-trim'],
    level: length({
      summary: 'Height difference that still counts as level',
      standard: '1/8 in',
      record: LEVEL_FLOORS,
      metric: '3 mm',
      example: '1/16 in',
      least: ticks(0),
      most: inches(0.5),
    }),
    clearance: length({
      summary: 'Clearance under jambs',
      standard: '1/16 in',
      record: UNDERCUT_CLEARANCE,
      metric: '2 mm',
      example: '1/8 in',
      least: ticks(0),
      most: inches(0.5),
    }),
    stairs: text(
      { summary: 'Steps that get nosing: “12 x 36 in”', example: '12 x 36 in', standard: 'none' },
      readStairs,
    ),
  }),
  examples: [
    {
      ask: 'edges doorways: bath 30 in to tile 1/2 in; bedroom 32 in to carpet; hall 36 in to wood 5/16 in, stock: 36 in $14; 72 in $24',
      headline: '2 end caps, 1 T-molding: buy 2 lengths, $38.00.',
    },
    {
      ask: 'edges doorways: balcony 6 ft to track, stairs: 12 x 36 in',
      headline: '1 end cap, 12 stair nosings: buy 13 lengths.',
    },
    {
      ask: 'edges doorways: 2 x 800 mm to tile 4 mm, floor: 8 mm, stock: 0.9 m 12 €; 1.8 m 20 €',
      headline: '2 reducers: buy 1 length, €20.00.',
    },
  ],
  run: (options, context) => answerEdges(options, context),
});
