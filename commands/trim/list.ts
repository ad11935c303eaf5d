/** `trim list`: the sticks of baseboard to buy for the rooms, each piece with its cuts, and saw marks stick by stick. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { drawElevations, type TrimShown } from '../../src/drawing/elevation.ts';
import { drawSticks } from '../../src/drawing/stick-drawing.ts';
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

// How sticks are cut, better and better: the one place that says by what.

/** A first plan at once, then better or proved ones; the last stands. */
export function stickPlans(task: StickTask): AsyncIterable<StickPlan> {
  return cutSticks(task);
}

// From the options of `trim list` to its answers: a first plan of sticks at once, then better or proved ones.

/** An answer carries no more pictures than this; the tables have everything. */
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
    blocks: [
      boughtFacts(plan, task, ask.stock, facts, saying),
      ...(glueUp.length > 0
        ? [{ kind: 'facts', facts: [{ label: TRIM.glueTitle, value: TRIM.glue(glueUp) }] } satisfies Block]
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

/** Coping instead of mitring, and the other trim commands for the same walls. */
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
  summary: 'Sticks of baseboard to buy, every piece with its cuts, and saw marks stick by stick',
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
