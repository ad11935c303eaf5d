/** `prep squeaks`: screws against a squeaking subfloor, and when a screw is not the answer. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import {
  FASTENER_BITE,
  JOIST_RUN,
  SCREW_PACK,
  SCREW_STEPS,
  SQUEAK_FIGURES,
  SQUEAK_SPACING,
} from '../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut, sayLength } from '../../src/input/format.ts';
import { choice, count, length, text } from '../../src/input/options.ts';
import type { Found } from '../../src/input/parse-found.ts';
import { type ParsedPart, readPart } from '../../src/input/parse-place.ts';
import { squeakScrews } from '../../src/prep/joist-cut.ts';
import type { Need } from '../../src/reply/need.ts';
import { type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { areaWithoutSides } from '../../src/text/prep-problems-text.ts';
import { SQUEAKS } from '../../src/text/prep-text.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { inches, type Length, roundUpRatio, ticks } from '../../src/units/length.ts';
import { foundOption, refusalOnPanel, spacingOption, thicknessOption } from './prep-options.ts';

// Screws for a subfloor as something to buy.

/** Screws of a length; `pack` is how many a pack holds, where it is told. */
export function screwNeed(screws: number, length: Length, pack: number | undefined, saying: Saying): Need {
  return {
    item: `subfloor screw ${length}`,
    label: NEEDS.screws(sayCut(length, saying)),
    stage: 'subfloor',
    quantity: { unit: 'count', amount: screws },
    ...(pack === undefined ? {} : { package: { size: pack, ...NEEDS.pack(pack) } }),
  };
}

// From the options of `prep squeaks` to its answer.

interface SqueaksAsk {
  readonly area: ParsedPart;
  readonly spacing: Length;
  readonly thickness: Length;
  readonly joists: 'short' | 'long';
  readonly apart: Length;
  readonly pack: number;
  readonly found: Found;
}

/** Screws, packs, pattern and steps; a refusal where a screw is not the answer. */
function answerSqueaks(ask: SqueaksAsk, context: Context): Outcome {
  const refused = refusalOnPanel(ask.area.found, ask.found);
  if (refused) return refused;
  const saying: Saying = { units: ask.area.units ?? context.preferences.units, decimal: context.preferences.decimal };
  const { sides, line } = ask.area;
  const [longer, shorter] = sides ?? [line, ticks(0)];
  if (longer === undefined) return { problems: [areaWithoutSides(context.optionTexts.get('area') ?? '')] };
  const [along, across] = sides && ask.joists === 'short' ? [shorter, longer] : [longer, shorter];
  const made = squeakScrews({ along, across }, ask.spacing, ask.apart, {
    panel: ask.thickness,
    bite: FASTENER_BITE.value,
    step: SCREW_STEPS.value[saying.units],
  });
  const packs = roundUpRatio(BigInt(made.screws), BigInt(ask.pack));
  const spacing = sayCut(made.spacing, saying);
  const data: SqueaksResult = { kind: 'squeaks', screws: made.screws, spacing: made.spacing, length: made.length };
  return reply({
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
    assumed: sides && !context.optionTexts.has('joists') ? [...context.assumed, SQUEAKS.assumedRun] : context.assumed,
    cautions: worded(cautionsFor('subfloor')),
    sources: SQUEAK_FIGURES.map(({ source }) => source),
    data,
    needs: [screwNeed(made.screws, made.length, ask.pack, saying)],
  });
}

/** Result data of kind `squeaks`: lengths in ticks. */
export interface SqueaksResult extends Result {
  readonly kind: 'squeaks';
  readonly screws: number;
  readonly spacing: number;
  readonly length: number;
}

export default defineCommand({
  group: 'prep',
  name: 'squeaks',
  summary: 'Screws that quiet a subfloor: how many, how long, how far apart',
  options: z.object({
    area: text(
      { summary: 'The noisy section: its two sides, or its length along one joist', example: '4 x 6 ft' },
      (typed, reading) => readPart(typed, reading, { line: true }),
    ),
    spacing: spacingOption,
    thickness: thicknessOption,
    joists: choice(['short', 'long'], {
      summary: 'Joists run along the short or the long side of it',
      standard: 'short',
      record: JOIST_RUN,
    }),
    apart: length({
      summary: 'Screws this far apart at most',
      standard: '6 in',
      record: SQUEAK_SPACING,
      metric: '150 mm',
      example: '8 in',
      least: inches(2),
      most: inches(12),
    }),
    pack: count({
      summary: 'Screws in a pack',
      standard: '100',
      record: SCREW_PACK,
      example: '75',
      least: 1,
      most: 5000,
    }),
    found: foundOption,
  }),
  examples: [
    { ask: 'squeaks area: 4 x 6 ft', headline: '45 screws, 1 3/4" or longer, 6" apart along 5 joists.' },
    {
      ask: 'squeaks area: 2,4 m, thickness: 18 mm, apart: 150 mm',
      headline: '17 screws, 45 mm or longer, 150 mm apart along 1 joist.',
    },
  ],
  run: (options, context) => answerSqueaks(options, context),
});
