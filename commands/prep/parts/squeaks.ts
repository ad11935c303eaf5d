/** From the options of `prep squeaks` to its answer. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { FASTENER_BITE, SCREW_STEPS, SQUEAK_FIGURES } from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut, sayLength } from '../../../src/input/format.ts';
import type { Found } from '../../../src/input/parse-found.ts';
import type { ToldPart } from '../../../src/input/parse-place.ts';
import { squeakScrews } from '../../../src/prep/joist-cut.ts';
import type { Result } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { areaWithoutSides } from '../../../src/text/prep-problems-text.ts';
import { SQUEAKS } from '../../../src/text/prep-text.ts';
import { type Length, roundUpRatio, ticks } from '../../../src/units/length.ts';
import { refusalOnPanel } from './patch-screen.ts';
import { screwNeed } from './squeaks-needs.ts';

export interface SqueaksAsk {
  readonly area: ToldPart;
  readonly spacing: Length;
  readonly thickness: Length;
  readonly joists: 'short' | 'long';
  readonly apart: Length;
  readonly pack: number;
  readonly found: Found;
}

/** Screws, packs, pattern and steps; a refusal where a screw is not the answer. */
export function answerSqueaks(ask: SqueaksAsk, context: Context): Outcome {
  const refused = refusalOnPanel(ask.area.found, ask.found);
  if (refused) return refused;
  const saying: Saying = { units: ask.area.units ?? context.habits.units, decimal: context.habits.decimal };
  const { sides, line } = ask.area;
  const [longer, shorter] = sides ?? [line, ticks(0)];
  if (longer === undefined) return { problems: [areaWithoutSides(context.told.get('area') ?? '')] };
  const [along, across] = sides && ask.joists === 'short' ? [shorter, longer] : [longer, shorter];
  const made = squeakScrews({ along, across }, ask.spacing, ask.apart, {
    panel: ask.thickness,
    bite: FASTENER_BITE.value,
    step: SCREW_STEPS.value[saying.units],
  });
  const packs = roundUpRatio(BigInt(made.screws), BigInt(ask.pack));
  const spacing = sayCut(made.spacing, saying);
  const data: SqueaksResult = { kind: 'squeaks', screws: made.screws, spacing: made.spacing, length: made.length };
  return {
    headline: SQUEAKS.headline(made.screws, sayCut(made.length, saying), spacing, made.joists),
    blocks: [
      {
        kind: 'facts',
        title: SQUEAKS.title,
        facts: [
          { label: SQUEAKS.screws, value: `${made.screws} (${SQUEAKS.ofJoists(made.joists, made.perJoist)})` },
          { label: SQUEAKS.pattern, value: SQUEAKS.spacing(spacing, sayLength(along, saying)) },
          {
            label: SQUEAKS.length,
            value: SQUEAKS.lengthOf(
              sayCut(made.length, saying),
              sayCut(ask.thickness, saying),
              sayCut(FASTENER_BITE.value, saying),
              sayCut(SCREW_STEPS.value[saying.units], saying),
            ),
          },
          { label: SQUEAKS.packs, value: SQUEAKS.ofPack(packs, ask.pack, packs * ask.pack - made.screws) },
        ],
      },
      { kind: 'steps', title: SQUEAKS.findTitle, steps: SQUEAKS.find(sayCut(ask.spacing, saying)) },
      { kind: 'steps', title: SQUEAKS.fixTitle, steps: SQUEAKS.fix(spacing) },
      { kind: 'checklist', title: SQUEAKS.notTitle, items: SQUEAKS.not },
    ],
    assumed: sides && !context.told.has('joists') ? [...context.assumed, SQUEAKS.assumedRun] : context.assumed,
    cautions: worded(cautionsFor('subfloor')),
    sources: SQUEAK_FIGURES.map(({ source }) => source),
    actions: [],
    audience: 'asker',
    data,
    needs: [screwNeed(made.screws, made.length, ask.pack, saying)],
  };
}

/** Result data of kind `squeaks`: lengths in ticks. */
export interface SqueaksResult extends Result {
  readonly kind: 'squeaks';
  readonly screws: number;
  readonly spacing: number;
  readonly length: number;
}
