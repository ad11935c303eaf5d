/** The guides of a herringbone floor, room by room, with the boards to cut grouped by kind. */

import type { Context, Outcome } from '../../src/chat/command.ts';
import { drawHerringbone } from '../../src/drawing/herringbone-sheet.ts';
import { type Saying, sayCut } from '../../src/input/format.ts';
import type { HerringPlan, HerringRegion } from '../../src/layout/herringbone.ts';
import type { SawPiece } from '../../src/reply/job-sheet.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { SAW } from '../../src/text/drawing-text.ts';
import { SHAPE } from '../../src/text/floor-text.ts';
import { HERRING_DRAWING, HERRING_STEPS } from '../../src/text/home-text.ts';
import { ticks } from '../../src/units/length.ts';
import { inSteps } from '../../src/workers/time-limits.ts';
import { floorNeeds } from './floor-facts.ts';
import { type Guide, guidesReply } from './floor-guides.ts';
import {
  type BoughtHerring,
  boardKinds,
  cutTables,
  fieldFacts,
  fieldLine,
  type HerringAsk,
  herringReply,
  herringResult,
  layHerringAsk,
} from './floor-herringbone.ts';
import { sawEnd } from './guide.ts';
import { floorFormat, otherWork } from './lay.ts';

export async function answerHerringGuides(ask: HerringAsk, context: Context): Promise<Outcome> {
  const laid = await layHerringAsk(ask, context);
  if ('problems' in laid) return laid;
  const { plan, purchase, cost, home } = laid;
  const saying = floorFormat(ask, context);
  const whole = herringReply(laid, ask, context);
  const drawings = await inSteps(drawHerringbone(plan, saying));
  const guides: Guide[] = [];
  for (const [i, region] of plan.regions.entries()) {
    await otherWork();
    const drawing = drawings[i];
    const reply = regionReply(region, laid, whole, saying);
    guides.push({
      room: region.name,
      rooms: region.rooms?.map(({ name }) => name) ?? [region.name],
      reply: drawing ? { ...reply, blocks: [{ kind: 'picture', drawing }, ...reply.blocks] } : reply,
      pieces: piecesOf(region, plan, saying),
    });
  }
  return guidesReply(
    { guides, floor: herringResult(plan, purchase, cost, home), buy: whole.headline },
    laid.assumed,
    floorNeeds({ plan }, ask),
  );
}

function regionReply(region: HerringRegion, laid: BoughtHerring, whole: Reply, saying: Saying): Reply {
  const { plan, home } = laid;
  const alone: HerringPlan = { ...plan, regions: [region] };
  const own = region.rooms?.map(({ name }) => name) ?? [region.name];
  const doorways = home.doorways.filter(({ rooms }) => rooms.some((room) => own.includes(room)));
  const cut = region.boards.filter(({ part, shape }) => part !== 'whole' || shape).length;
  const { count: _count, cost: _cost, ...data } = herringResult(alone, laid.purchase, undefined);
  return {
    ...whole,
    headline: HERRING_DRAWING.headline(region.name, region.boards.length, cut),
    lines: [fieldLine(alone, saying)],
    opens: 'cuts',
    blocks: [
      fieldFacts({ ...laid, plan: alone, home: { ...home, doorways } }, saying),
      {
        kind: 'steps',
        section: 'how',
        title: HERRING_STEPS.title,
        steps: plan.rules.handed ? HERRING_STEPS.handed : HERRING_STEPS.none,
      },
      ...cutTables(alone, saying),
    ],
    actions: [],
    needs: [],
    data,
  };
}

function piecesOf({ name, boards }: HerringRegion, { plank }: HerringPlan, saying: Saying): readonly SawPiece[] {
  return boardKinds(boards, plank.width, saying).map(({ row: [said, make], board, count }, i) => ({
    no: i + 1,
    of: 'plank',
    room: name,
    place: SAW.atWall,
    what: make === '' ? SAW.board : SAW.boardMake(make),
    ...(count > 1 && { count }),
    length: sayCut(ticks(board.length), saying),
    ticks: board.length,
    left: sawEnd(board, 'left', saying, SHAPE.alone),
    right: sawEnd(board, 'right', saying, SHAPE.alone),
    from: SAW.boards,
    ...(board.shape && { note: said }),
  }));
}
