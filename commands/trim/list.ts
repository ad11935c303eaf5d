/** `trim list`: the sticks of baseboard to buy, each piece with its cuts, and saw marks stick by stick. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { drawElevations, drawSticks, type TrimShown } from '../../src/drawing/trim-drawings.ts';
import { TRIM_FIGURES } from '../../src/figures/trim-figures.ts';
import { sayLength } from '../../src/input/format.ts';
import { type Action, type Block, type Reply, reply } from '../../src/reply/reply.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { TRIM, TRIM_ACTIONS } from '../../src/text/trim-text.ts';
import type { StickPlan, StickTask } from '../../src/trim/sticks.ts';
import { wallName } from '../../src/trim/walls.ts';
import { ticks } from '../../src/units/length.ts';
import { cutSticks } from '../../src/workers/solve.ts';
import { cautionsOf, type ListAsk, listOptions } from './trim-options.ts';
import {
  boughtFacts,
  boughtHeadline,
  cuttingTable,
  notesOf,
  type RequestedPieces,
  requestedPieces,
  stepsBlock,
} from './trim-pieces.ts';
import { cornerTable, pieceTable, stickNeeds, toBuy, trimResult } from './trim-results.ts';
import { type RequestedWalls, requestedWalls, trimFormat } from './trim-walls.ts';

/** Yields a first plan at once, then better ones or the proof that it's the best; the last one is final. */
export function stickPlans(task: StickTask): AsyncIterable<StickPlan> {
  return cutSticks(task);
}

/** Pictures per answer; the tables still list everything. */
const MOST_SHEETS = 16;

async function* answerList(ask: ListAsk, context: Context): AsyncGenerator<Outcome> {
  const walls = requestedWalls(ask, context);
  if ('problems' in walls) {
    yield walls;
    return;
  }
  const cut = requestedPieces(ask, walls, context);
  if ('problems' in cut) {
    yield cut;
    return;
  }
  context.begin();
  for await (const plan of stickPlans(cut.task)) yield replyOf(ask, walls, cut, plan, context);
}

function replyOf(
  ask: ListAsk,
  requested: RequestedWalls,
  { pieces, task }: RequestedPieces,
  plan: StickPlan,
  context: Context,
): Reply {
  const saying = trimFormat(ask, context);
  const { walls, openings, stretches } = requested;
  const glueUp = pieces.filter(({ length }) => length <= ask['glue-up']).map(({ id }) => id);
  const shown: TrimShown = {
    walls,
    openings,
    pieces,
    glueUp: new Set(glueUp),
    studs: { first: ask['first-stud'], spacing: ask['stud-spacing'] },
  };
  const sum = (parts: readonly { readonly from: number; readonly to: number }[]): string =>
    sayLength(ticks(parts.reduce((total, { from, to }) => total + to - from, 0)), saying);
  const facts = [
    { label: TRIM.length, value: sum(stretches) },
    ...(openings.length > 0 ? [{ label: TRIM.openings, value: sum(openings) }] : []),
  ];
  const pictures = [
    ...ask.room.rooms.flatMap(({ name }) => drawElevations(name, shown, saying)),
    ...drawSticks({ ...task, sticks: plan.sticks, endTrim: ask['end-trim'] }, saying),
  ].slice(0, MOST_SHEETS);
  return reply({
    headline: boughtHeadline(plan, task, ask.stock, saying),
    lines: [
      TRIM.lengthLine(sum(stretches), ask.room.rooms.length, openings.length),
      TRIM.sureLine(plan.proven, ask.stock.currency !== undefined),
      ...(glueUp.length > 0 ? [TRIM.glueLine(glueUp)] : []),
    ],
    blocks: [
      boughtFacts(plan, task, ask.stock, facts, saying),
      ...(glueUp.length > 0
        ? [
            {
              kind: 'facts',
              section: 'cuts',
              facts: [{ label: TRIM.glueTitle, value: TRIM.glue(glueUp) }],
            } satisfies Block,
          ]
        : []),
      ...pictures.map((drawing) => ({ kind: 'picture' as const, drawing })),
      cuttingTable(plan, task, saying),
      pieceTable(shown, plan, saying),
      cornerTable(walls, saying),
      stepsBlock(pieces, plan.sticks, glueUp.length > 0),
    ],
    assumed: [...context.assumed, ...requested.assumed, ...notesOf(ask, requested, pieces, context)],
    cautions: cautionsOf('nailing'),
    sources: TRIM_FIGURES.map(({ source }) => source),
    actions: nextAsks(ask, context),
    reasons: [{ entry: 'cope-or-miter' }],
    data: trimResult(
      {
        stock: ask.stock,
        kerf: ask.kerf,
        endTrim: ask['end-trim'],
        thickness: ask.thickness,
        walls: walls.map((wall) => ({
          name: wallName(wall),
          length: wall.length,
          corners: [wall.left.interior, wall.right.interior],
        })),
        pieces,
        glueUp,
        units: saying.units,
      },
      plan,
    ),
    ...toBuy(stickNeeds(plan, ask.stock, { item: 'baseboard', label: NEEDS.baseboard, stage: 'baseboards' }, saying)),
  });
}

/** Coping instead of mitering, and the other trim commands for the same walls. */
function nextAsks(ask: ListAsk, context: Context): readonly Action[] {
  return [
    ...(ask['inside-joint'] === 'cope'
      ? []
      : [{ label: TRIM_ACTIONS.cope, ask: context.again({ 'inside-joint': 'cope' }) }]),
    { label: TRIM_ACTIONS.finish, ask: context.alike('finish') },
    { label: TRIM_ACTIONS.reset, ask: context.alike('reset') },
  ];
}

export default defineCommand({
  group: 'trim',
  name: 'list',
  summary: 'Sticks of baseboard to buy, each piece with its cuts, and where to mark each stick',
  phrases: [
    'how much baseboard do i need for a 12x14 room',
    'baseboard for 3 bedrooms, sticks of 8 ft',
    'linear feet of baseboard for 10x12 with a 32 in door',
    'how many 16 ft pieces of trim for a 15x18 room',
    'trim cut list for living room walls 12 14 12 14',
    'quarter round needed for 11x13 room with 2 doors',
    'how much shoe molding do i need',
    'cut list for baseboards with 12 foot stock',
    'what lengths of molding should i buy 8, 12 or 16',
    'how many sticks for 54 feet of wall',
    'calculate baseboard perimeter minus doors',
    'how many feet of quarter round for the whole house',
    'best way to cut my baseboards from 8 foot sticks with least waste',
    'base trim for hallway 3x20 with 5 doors',
    'need molding for walls 143 in, 97 in, 143, 97',
    'how many pieces of baseboard for a room 4 m by 5 m',
    'trim for a closet 2x6',
    'how mutch baseboard for a 14 by 15',
    'baseboard order list with doors 30 and 36',
    'how many linear feet of trim around a 16x20',
    'cheapest mix of 8 and 12 ft boards for my baseboard',
    'how much extra trim should i buy',
    'how much baseboard do i buy for a 12x14 with two doors',
    'bedroom walls are 11, 13, 11 and 13 feet, sticks come in 12s and 16s, what do i get',
    'count the trim pieces for me, living room 15x19, one 6 foot opening',
    'quarter round all around the den 10x12',
    'skirting for a room 3.6 by 4.2 m, lengths are 2.4',
    'how many 8 footers of base for the hall 3x18 with four 30 inch doors',
    'baseboards for the whole upstairs, rooms 10x11, 12x13 and 9x10 plus a hall',
    'which stick length wastes less for walls of 142, 96, 142 and 51 inches',
    'i need linear feet of shoe molding for a 13x17 family room',
    'trim shopping, 16 ft sticks at 14.20 or 8 ft at 6.98',
    "cut list for base, don't want any joints on the long wall 14'9\"",
    'how many sticks to go around a 9 by 12',
    "buying new 5 1/4 baseboard for bedroom 3, closet has a 48 inch opening, room's 12x12",
    'add up baseboard for two bathrooms, both 5x8 with a tub along one side',
    'what lengths of moulding to get for an l shaped room 14x18 with a notch of 4x6',
    'how many feet of base with ten percent extra, perimeter is 64 ft',
    'perimeter minus doors please, doors are 32, 30 and a 72 slider, room 16x20',
    "my kitchen's got cabinets on two walls so only about 17 feet of baseboard, how many 8 ft sticks",
    'number of 2.44 metre skirting boards for 19 metres of wall',
    'do i buy three 16s or six 8s for a 10x13 room',
    'list the boards to get for base in the dining room, four outside corners round the chimney',
    'trim for closets, three of them 2x6',
    'figure out how many primed mdf boards at 15\'8" will do 212 feet',
    'new base throughout, house is 1,250 square feet, roughly how much do i need',
    'i want a mitred outside corner in the entry, does that eat more trim, walls 6, 4, 9 and 3 feet',
    'best cuts out of 12 ft baseboard for walls 7\'3", 4\'10", 11\'1" and 9\'6"',
    'how much base and shoe for 13x15',
    'need enough baseboard for a room with a bay, 12x15 plus three 34 inch sides',
    '5 rooms of trim, give me pieces by length',
    'how many lengths for the box room, 2.2 x 2.8, door 762',
    'the store only stocks 10 foot base, bedroom is 14x16 how many and where are the splices',
    'base for stairwell landing 4x8 one open side',
    'order list for the trim lady, living room 17 by 21 with a fireplace 6 ft wide',
    'total up the quarter round, kitchen has toe kicks 14 feet and walls 22',
    'how many sticks of trim if i mess up a couple of miters',
    'trim needed behind the vanity too? bath 6x9, door 28',
    'cheapest way to buy 87 feet of baseboard, comes in 8, 12 and 16',
    'will six sixteen footers of base go round a 13x18 room with a 36 in door',
    'how much baseboard should i get',
    'casing not included, just base for the office 10x10 and hall 3x11',
  ],
  options: z.object(listOptions),
  examples: [
    {
      ask: `list room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98`,
      headline: `Buy 4 sticks (1 × 16', 3 × 12') for 5 pieces: $55.42.`,
    },
    {
      ask: `list room: living walk 12' right 15' right 8' right 6' left 4' right 9' right; closet 3 x 5, doors: 2 doors 32 in, corners: corner 3: 88.5`,
      headline: `Buy 5 sticks (2 × 16', 3 × 12') for 12 pieces.`,
    },
    {
      ask: 'list room: 3,6 x 4,2 m, doors: 800 mm, bay: wall 3: front 1.5 m, sides 0.9 m, stock: 2.4 m 9,90 €; 3.6 m 13,90 €; have 2 x 1.5 m, inside-joint: cope',
      headline: 'Buy 4 sticks (3 × 3.6 m, 1 × 2.4 m) for 10 pieces: €51.60.',
    },
  ],
  run: (options, context) => answerList(options, context),
});
