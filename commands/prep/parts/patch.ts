/** From the options of `prep patch` to its answer. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { drawPatch } from '../../../src/drawing/patch-drawing.ts';
import { MOULD_AREA } from '../../../src/figures/moisture-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import {
  ADHESIVE_FIGURES,
  JOIST_FIGURES,
  PANEL_AT_24,
  PANEL_GAP,
  PATCH_FIGURES,
} from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut } from '../../../src/input/format.ts';
import { foundAside, together } from '../../../src/input/parse-found.ts';
import { type Patch, planPatch } from '../../../src/prep/subfloor-patch.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { referral } from '../../../src/text/found-text.ts';
import { NO_CUT, PATCH } from '../../../src/text/prep-text.ts';
import { ticks } from '../../../src/units/length.ts';
import { type PatchAsk, patchProblem, patchRules, roomSides, squareFeet, uvOf } from './patch-ask.ts';
import { buyFacts, cutFacts, sheetTable } from './patch-facts.ts';
import { joistQuestion, joistRefusal, limitsSaid } from './patch-joist.ts';
import { patchNeeds } from './patch-needs.ts';
import { patchResult } from './patch-result.ts';
import { refusal, refusalFor } from './patch-screen.ts';

/** The cut, its panels and blocks, with a picture; a refusal where a patch is not a homeowner's job. */
export function answerPatch(ask: PatchAsk, context: Context): Outcome {
  const aside = foundAside(context.told.get('room') ?? '');
  const refused = refusalFor(ask.damage.found, ask.found, aside) ?? joistRefusal(ask, context);
  if (refused) return refused;
  const { mould } = together(ask.damage.found, ask.found);
  if (mould && squareFeet(ask) >= MOULD_AREA.value) return refusal(referral(['mould']), 'mold');
  const saying: Saying = { units: ask.damage.units, decimal: context.habits.decimal };
  const problem = joistQuestion(ask, context) ?? patchProblem(ask, context, saying);
  if (problem) return { problems: [problem] };
  const damage = uvOf(ask);
  const rules = patchRules(ask);
  const joists = { spacing: ask.spacing, first: ask['first-joist'], width: ask['joist-width'] };
  const patch = planPatch(damage, joists, rules);
  if (typeof patch === 'string') return refusal(NO_CUT[patch]);
  const [across, up] = roomSides(patch.cut, ask.joists).map((side) => sayCut(ticks(side), saying));
  const blocks = patch.blocks.length;
  return {
    headline: PATCH.headline(across ?? '', up ?? '', patch.sheets.length, blocks, patch.fasteners.length),
    blocks: [
      cutFacts(patch, ask, saying),
      buyFacts(patch, ask, saying),
      { kind: 'picture', drawing: drawPatch(patch, { run: ask.joists, joistWidth: ask['joist-width'] }, saying) },
      ...notes(patch, ask, mould, saying),
      {
        kind: 'steps',
        title: PATCH.stepsTitle,
        steps: PATCH.steps(
          sayCut(ticks(Math.floor(ask['joist-width'] / 2) - PANEL_GAP.value), saying),
          sayCut(ask['joist-width'], saying),
          sayCut(PANEL_GAP.value, saying),
        ),
      },
      sheetTable(patch, saying),
      { kind: 'checklist', title: PATCH.checkTitle, items: PATCH.check(...limitsSaid(ask['joist-depth'], saying)) },
    ],
    assumed: context.told.has('joists') ? context.assumed : [...context.assumed, PATCH.assumedRun],
    cautions: worded(cautionsFor('subfloor')),
    sources: [...PATCH_FIGURES, ...JOIST_FIGURES, ...ADHESIVE_FIGURES].map(({ source }) => source),
    actions: [],
    audience: 'asker',
    data: patchResult(patch, ask),
    needs: patchNeeds(patch, ask, saying),
  };
}

/** What to mind in this patch, if anything. */
function notes(patch: Patch, ask: PatchAsk, mould: boolean, saying: Saying): readonly Block[] {
  const { beyond, thickness } = PANEL_AT_24.value;
  const say = (length: number): string => sayCut(ticks(length), saying);
  const { cut, damage } = patch;
  const bare = [damage.u0 - cut.u0, cut.u1 - damage.u1, damage.v0 - cut.v0, cut.v1 - damage.v1];
  const items = [
    ...(ask.spacing > beyond && ask.thickness < thickness
      ? [PATCH.thin(say(ask.thickness), say(ask.spacing), say(thickness))]
      : []),
    ...(bare.some((side) => side < ask.margin) ? [PATCH.marginLess(say(ask.margin))] : []),
    ...(mould ? [PATCH.mould] : []),
  ];
  return items.length === 0 ? [] : [{ kind: 'checklist', title: PATCH.notesTitle, items }];
}
