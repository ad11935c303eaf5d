/** `prep squeaks`: screws to stop a subfloor from squeaking, and when screws won't help. */

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

/** `pack` is the number of screws in a pack, if known. */
export function screwNeed(screws: number, length: Length, pack: number | undefined, saying: Saying): Need {
  return {
    item: `subfloor screw ${length}`,
    label: NEEDS.screws(sayCut(length, saying)),
    stage: 'subfloor',
    quantity: { unit: 'count', amount: screws },
    ...(pack === undefined ? {} : { package: { size: pack, ...NEEDS.pack(pack) } }),
  };
}

interface SqueaksAsk {
  readonly area: ParsedPart;
  readonly spacing: Length;
  readonly thickness: Length;
  readonly joists: 'short' | 'long';
  readonly apart: Length;
  readonly pack: number;
  readonly found: Found;
}

/** Refuses where screws won't help. */
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
    lines: [
      SQUEAKS.packsLine(packs, ask.pack, packs * ask.pack - made.screws),
      SQUEAKS.lengthLine(sayCut(ask.thickness, saying), sayCut(FASTENER_BITE.value, saying)),
      SQUEAKS.findLine(sayCut(ask.spacing, saying)),
      SQUEAKS.softLine,
    ],
    blocks: [
      {
        kind: 'facts',
        section: 'buy',
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
      { kind: 'steps', section: 'how', title: SQUEAKS.findTitle, steps: SQUEAKS.find(sayCut(ask.spacing, saying)) },
      { kind: 'steps', section: 'how', title: SQUEAKS.fixTitle, steps: SQUEAKS.fix(spacing) },
      { kind: 'checklist', section: 'checklist', title: SQUEAKS.notTitle, items: SQUEAKS.not },
    ],
    assumed: sides && !context.optionTexts.has('joists') ? [...context.assumed, SQUEAKS.assumedRun] : context.assumed,
    cautions: worded(cautionsFor('subfloor')),
    sources: SQUEAK_FIGURES.map(({ source }) => source),
    data,
    needs: [screwNeed(made.screws, made.length, ask.pack, saying)],
  });
}

/** Lengths in ticks. */
export interface SqueaksResult extends Result {
  readonly kind: 'squeaks';
  readonly screws: number;
  readonly spacing: number;
  readonly length: number;
}

export default defineCommand({
  group: 'prep',
  name: 'squeaks',
  summary: 'Screws to stop a squeaky floor: how many, how long, how far apart',
  phrases: [
    'floor squeaks in a 4x6 area, how many screws',
    'how to stop squeaks before laying new floor',
    'subfloor squeaks when i walk, carpet is up now',
    'creaky floor upstairs what screws do i use',
    'what length screws to fix squeaky 3/4 plywood subfloor',
    'screw spacing to quiet a squeaky subfloor',
    'joists are 16 in apart and it creaks between bed and door',
    'squeaky osb how do i fix it',
    'how many screws to fasten down subfloor in 12x14 bedroom',
    'floor makes noise when i step near the closet',
    'screw down plywood to joists every how many inches',
    'fix squeeky floors while carpet is off',
    'nails popping up and floor squeaks',
    'do i use deck screws for squeaks',
    'loose subfloor panel, how to refasten',
    'add screws to subfloor for squeak, 10x10',
    'creaks all over the second floor',
    'can i fix the squeaks from above',
    'subfloor moves and squeaks at one seam',
    'glue or screws for squeaky floor',
    'squeak only in hallway 3 by 12',
    'how many screws to stop the squeak in a 4x6 patch of floor',
    'floor squeaks all along the hall, 3 by 16, screws?',
    'squeaky 3/4 ply on 16 inch joists, what length of screw and how many',
    "our bedroom creaks between the bed and the bath, about 5 ft by 7, carpet's off now",
    'screwing the subfloor down across the whole den 12x15, joists 24 apart, give me the count',
    'two noisy seams each 8 ft long',
    'boxes of screws to quiet 180 sq ft',
    'every board creaks on the landing, 900 by 2400 mm, boards 18 mm',
    'do i screw every 6 or every 8 inches to kill squeaks',
    'one long squeak along a joist, 9 feet, need number of screws',
    'how close together should the screws go where the floor pops',
    "floor's noisy by the door only 2x3 ft",
    'pulled up the carpet and now it groans when my son walks on it, how do i pin it down',
    'need screws for the entire upstairs subfloor before plank goes on, 640 square feet',
    'chipboard floor creaks like an old ship, 3 m by 3.5 m bedroom',
    'amount of deck screws for a 10x10 squeaky area',
    'osb has lifted off a joist for about four feet, how many fasteners',
    'i want the squeak gone before i cover it forever',
    'how many should i sink per joist to silence an 11 ft stretch',
    'squeaks near closet, 4 by 4, joists run the long way',
    'does a 1 3/4 screw do it for 5/8 ply or go longer',
    'the nails let go and the panel moves up and down when i step, how do i fasten it again',
    'refasten subfloor: 13x14, 19.2 inch joists',
    'a tub of 350 screws, is that enough for squeaks in three bedrooms',
    'stair landing squeeks',
    'squeak fix for 7 ft of joist, screw pack has 75',
    "quiet the floor under the future office please, room's 9x11",
    'creaking floorboards in the back bedroom, old 1930s house, how many screws will i want',
    'one spot squeaks even after i put four screws in it',
    'how many screws over a 6x8 section with joists at 12 inch centers',
    "where do i put screws if the squeak's halfway between joists",
    'squeaky from tub to door, 5 ft, subfloor 23/32',
    'want the screw schedule for a creaky living room 14x18',
    'drive screws every 150 mm along five joists of 3.6 metres, total?',
    'squeak',
    "subfloor chirps when it's cold, mostly over a 3 ft wide strip down the center, 12 ft long",
    'are drywall screws ok for squeaks or get the other kind, and how many for 50 sq ft',
    'silence creaks in the nursery before baby, 10 x 10',
    'count screws, noisy part is 40 inches by 9 feet',
    "the floor clicks every time the wife goes to the loo at night, it's maybe a metre square",
  ],
  options: z.object({
    area: text(
      { summary: 'The noisy section: its two sides, or its length along one joist', example: '4 x 6 ft' },
      (typed, reading) => readPart(typed, reading, { line: true }),
    ),
    spacing: spacingOption,
    thickness: thicknessOption,
    joists: choice(['short', 'long'], {
      summary: 'Do the joists run along its short or its long side?',
      standard: 'short',
      record: JOIST_RUN,
    }),
    apart: length({
      summary: 'Farthest apart the screws may be',
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
