/** From the options of a floor command with `pattern: herringbone` to its answer. */

import type { Context, Outcome, Problems } from '../../../src/chat/command.ts';
import { drawHerringbone } from '../../../src/drawing/herringbone-sheet.ts';
import { PLANK_FIGURES } from '../../../src/figures/floor-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import type { ToldHerringbone } from '../../../src/input/parse-layout.ts';
import type { HerringPlan, HerringRules } from '../../../src/layout/herringbone.ts';
import type { Reply } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { borderOfHanded, clickInHerringbone, noBorder } from '../../../src/text/floor-problems-text.ts';
import { boardsHeadline, HERRING, HERRING_STEPS } from '../../../src/text/home-text.ts';
import { layHerringboneAway } from '../../../src/workers/solve.ts';
import { inSteps } from '../../../src/workers/time-limits.ts';
import { type BoughtHerring, boughtBoards, cutTables, fieldFacts, herringFacts } from './herringbone-facts.ts';
import { herringResult } from './herringbone-result.ts';
import { askedAreas, priceOf, sayingOf } from './laid.ts';
import { floorNeeds } from './needs.ts';
import type { AreasAsk } from './rules.ts';

/** What a herringbone reads. */
export interface HerringAsk extends AreasAsk {
  readonly pattern: ToldHerringbone;
}

/** A first answer, then the same with its pictures. */
export async function* answerHerringbone(ask: HerringAsk, context: Context): AsyncGenerator<Outcome> {
  const laid = await layHerringAsk(ask, context);
  if ('problems' in laid) {
    yield laid;
    return;
  }
  const reply = herringReply(laid, ask, context);
  yield reply;
  const drawings = await inSteps(drawHerringbone(laid.plan, sayingOf(ask, context)));
  const pictures = drawings.map((drawing) => ({ kind: 'picture' as const, drawing }));
  const [buy, lay, ...blocks] = reply.blocks;
  yield { ...reply, blocks: [...(buy && lay ? [buy, lay] : []), ...pictures, ...blocks] };
}

/** Lays the boards; Problems where they cannot lie so. */
export async function layHerringAsk(ask: HerringAsk, context: Context): Promise<BoughtHerring | Problems> {
  const { plank, handed = false } = ask.plank;
  const pattern = context.told.get('pattern') ?? ask.pattern.name;
  if (plank.lock === 'click' && !handed) return { problems: [clickInHerringbone(context.told.get('plank') ?? '')] };
  if (handed && ask.pattern.border > 0) return { problems: [borderOfHanded(pattern)] };
  const asked = askedAreas(ask, context);
  if ('problems' in asked) return asked;
  const { areas, home, about, gap } = asked;
  const rules: HerringRules = {
    gap,
    kerf: ask.kerf,
    minEnd: ask['shortest-end'],
    border: ask.pattern.border,
    handed,
  };
  // Only boards that are laid tell whether a border goes round.
  if (rules.border === 0) context.begin();
  const plan = await layHerringboneAway(areas, plank, rules, about);
  if ('why' in plan) return { problems: [noBorder(pattern, plan.region, plan.why === 'meets a hole', rules.border)] };
  const purchase = boughtBoards(plan, ask);
  const assumed = [...context.assumed, ...home.assumed, ...(handed ? [HERRING.handsRead] : [])];
  return { plan, home, assumed, purchase, ...priceOf(purchase.cartons, ask, context) };
}

/** The answer for a laid herringbone, without its pictures. */
export function herringReply(laid: BoughtHerring, ask: HerringAsk, context: Context): Reply {
  const { plan, purchase, cost, said } = laid;
  const saying = sayingOf(ask, context);
  return {
    headline: boardsHeadline({ ...purchase, perCarton: plan.plank.perCarton }, said),
    blocks: [
      herringFacts(laid, saying),
      fieldFacts(laid, saying),
      {
        kind: 'steps',
        title: HERRING_STEPS.title,
        steps: plan.rules.handed ? HERRING_STEPS.handed : HERRING_STEPS.none,
      },
      ...cutTables(plan, saying),
    ],
    assumed: laid.assumed,
    cautions: worded(cautionsFor('laying')),
    sources: PLANK_FIGURES.map(({ source }) => source),
    actions: actionsFor(plan, context),
    audience: 'asker',
    data: herringResult(plan, purchase, cost, laid.home),
    needs: floorNeeds({ plan }, ask),
  };
}

function actionsFor({ rules }: HerringPlan, context: Context): Reply['actions'] {
  const diagonal = /diagonal|45/i.test(context.told.get('direction') ?? '');
  const border =
    rules.border > 0
      ? { label: HERRING.actions.plain, ask: context.again({ pattern: 'herringbone' }) }
      : { label: HERRING.actions.border, ask: context.again({ pattern: 'herringbone, border 1' }) };
  return [
    ...(rules.handed ? [] : [border]),
    diagonal
      ? { label: HERRING.actions.along, ask: context.again({ direction: 'long' }) }
      : { label: HERRING.actions.diagonal, ask: context.again({ direction: 'diagonal' }) },
  ];
}
