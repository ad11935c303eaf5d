/** From the options of `trim list` to its answers: a first plan of sticks at once, then better or proved ones. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { drawElevations, type TrimShown } from '../../../src/drawing/elevation.ts';
import { drawSticks } from '../../../src/drawing/stick-drawing.ts';
import { TRIM_FIGURES } from '../../../src/figures/trim-figures.ts';
import { sayLength } from '../../../src/input/format.ts';
import type { Action, Block, Reply } from '../../../src/reply/reply.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import { TRIM, TRIM_ACTIONS } from '../../../src/text/trim-text.ts';
import type { StickPlan } from '../../../src/trim/sticks.ts';
import { wallName } from '../../../src/trim/walls.ts';
import { ticks } from '../../../src/units/length.ts';
import type { ListAsk } from './ask.ts';
import { boughtFacts, boughtHeadline, cuttingTable } from './bought.ts';
import { cautionsOf } from './cautions.ts';
import { notesOf, stepsBlock } from './notes.ts';
import { type AskedPieces, askedPieces } from './pieces.ts';
import { stickPlans } from './plans.ts';
import { trimResult } from './result.ts';
import { stickNeeds, toBuy } from './stick-needs.ts';
import { cornerTable, pieceTable } from './tables.ts';
import { type AskedWalls, askedWalls, sayingOf } from './walls.ts';

/** An answer carries no more pictures than this; the tables have everything. */
const MOST_SHEETS = 16;

export async function* answerList(ask: ListAsk, context: Context): AsyncGenerator<Outcome> {
  const walls = askedWalls(ask, context);
  if ('problems' in walls) {
    yield walls;
    return;
  }
  const cut = askedPieces(ask, walls, context);
  if ('problems' in cut) {
    yield cut;
    return;
  }
  context.begin();
  for await (const plan of stickPlans(cut.task)) yield replyOf(ask, walls, cut, plan, context);
}

function replyOf(
  ask: ListAsk,
  asked: AskedWalls,
  { pieces, task }: AskedPieces,
  plan: StickPlan,
  context: Context,
): Reply {
  const saying = sayingOf(ask, context);
  const { walls, openings, stretches } = asked;
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
  return {
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
    assumed: [...context.assumed, ...asked.assumed, ...notesOf(ask, asked, pieces, context)],
    cautions: cautionsOf('nailing'),
    sources: TRIM_FIGURES.map(({ source }) => source),
    actions: nextAsks(ask, context),
    audience: 'asker',
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
  };
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
