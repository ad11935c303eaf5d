/** The laying guides of all rooms, each an answer of its own with its cut list. */

import type { Context, Outcome } from '../../src/chat/command.ts';
import { planAsGiven } from '../../src/drawing/floor-plans.ts';
import type { SawPiece } from '../../src/reply/job-sheet.ts';
import type { Need } from '../../src/reply/need.ts';
import { type Block, type Reply, type Result, reply } from '../../src/reply/reply.ts';
import { planksHeadline } from '../../src/text/floor-text.ts';
import { GUIDES } from '../../src/text/sheets-text.ts';
import { floorNeeds } from './floor-facts.ts';
import type { HerringResult } from './floor-herringbone.ts';
import type { PlanksAsk } from './floor-options.ts';
import { guideTables, plankPieces } from './guide.ts';
import { type FloorResult, floorFormat, floorResult, layAsk, otherWork, settledLayout } from './lay.ts';
import { roomReply } from './layout.ts';

/** A region is one room, or several that one floor runs through. */
export interface Guide {
  readonly room: string;
  readonly rooms: readonly string[];
  readonly reply: Reply;
  readonly pieces: readonly SawPiece[];
}

export interface GuidesResult extends Result {
  readonly kind: 'guides';
  readonly floor: FloorResult | HerringResult;
  readonly guides: readonly Guide[];
  /** Same wording as in the plank answer. */
  readonly buy: string;
}

export async function answerGuides(ask: PlanksAsk, context: Context): Promise<Outcome> {
  const first = await layAsk(ask, context);
  if ('problems' in first) return first;
  const laid = await settledLayout(first, ask, context);
  const { plan, purchase, cost, said, home } = laid;
  const saying = floorFormat(ask, context);
  await otherWork();
  const floor = { given: planAsGiven(plan, saying), tables: guideTables(plan, saying) };
  await otherWork();
  const pieces = plankPieces(plan, saying);
  const guides: Guide[] = [];
  for (const [i, region] of plan.regions.entries()) {
    // Drawing every room of a home at once would hold up everybody else.
    await otherWork();
    guides.push({
      room: region.name,
      rooms: region.rooms?.map(({ name }) => name) ?? [region.name],
      reply: await roomReply(laid, region, ask, context, floor),
      pieces: pieces[i] ?? [],
    });
  }
  const buy = planksHeadline({ ...purchase, perCarton: plan.plank.perCarton }, said);
  return guidesReply(
    { guides, floor: floorResult(plan, purchase, cost, home), buy },
    laid.assumed,
    floorNeeds(laid, ask),
  );
}

export function guidesReply(
  { guides, floor, buy }: Pick<GuidesResult, 'guides' | 'floor' | 'buy'>,
  assumed: readonly string[],
  needs: readonly Need[],
): Reply {
  const data: GuidesResult = { kind: 'guides', floor, guides, buy };
  const [first] = guides;
  return reply({
    headline: GUIDES.headline(guides.map(({ room }) => room)),
    lines: guides.map(({ reply }) => reply.headline),
    opens: 'rows',
    blocks: guides.flatMap(({ reply }): readonly Block[] => [
      { kind: 'text', section: 'rows', text: reply.headline },
      ...reply.blocks.flatMap((block) => (block.kind === 'table' ? [{ ...block, section: 'rows' as const }] : [])),
    ]),
    assumed,
    cautions: first?.reply.cautions ?? [],
    sources: first?.reply.sources ?? [],
    data,
    needs,
  });
}
