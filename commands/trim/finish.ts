/** `trim finish`: nails, caulk, filler, primer and paint for the trim of the rooms. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import {
  CAULK_BEAD,
  CAULK_FIGURES,
  CAULK_TUBE,
  DEEPEST_NAIL,
  GLUE_UP,
  LEAST_IN_STUD,
  NAIL_FIGURES,
  NAIL_GAUGE,
  NAIL_GRIP,
  NAIL_HOLE,
  NAIL_STEPS,
  NAILS_PER_STUD,
  PAINT_COATS,
  PAINT_COVERAGE,
  PAINT_FIGURES,
  SAME_STUD,
  STUD_SPACING,
  TRIM_HEIGHT,
  TRIM_THICKNESS,
  WALLBOARD,
} from '../../src/figures/trim-figures.ts';
import { type Saying, sayArea, sayCut, sayLength, sayNumber } from '../../src/input/format.ts';
import { count, length, text } from '../../src/input/options.ts';
import { readCoverage, readNail, readVolume } from '../../src/input/parse-supplies.ts';
import type { Need, Package, Stage } from '../../src/reply/need.ts';
import { type Caution, reply } from '../../src/reply/reply.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { nailTooShort } from '../../src/text/trim-problems-text.ts';
import { deepNailText, FINISH } from '../../src/text/trim-text.ts';
import {
  beadLength,
  coatLitres,
  fillerLitres,
  intoStud,
  nailCount,
  nailLength,
  tubesFor,
} from '../../src/trim/finishing.ts';
import {
  inches,
  type Length,
  millimetres,
  roundUp,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  ticks,
} from '../../src/units/length.ts';
import { cautionsOf, type StudsAsk, studOptions, trimThickness, type WallsAsk, wallOptions } from './trim-options.ts';
import type { FinishResult } from './trim-results.ts';
import { requestedWalls, trimFormat } from './trim-walls.ts';

// Amounts aren't rounded up here: the shopping list adds them to other needs first.

/** US fluid ounces per liter: 231 in³ in a gallon of 128 (NIST Handbook 44, appendix C). */
const OUNCES_PER_LITRE = 128 / 3.785411784;
/** Paint is sold by the quart (almanac.com, as PAINT_COVERAGE); metric cans differ. */
const LITRES_PER_QUART = 32 / OUNCES_PER_LITRE;
/** The half-pint tub that wood filler is commonly sold in, and its metric neighbor (from memory), in liters. */
const FILLER_TUB = { imperial: 8 / OUNCES_PER_LITRE, metric: 0.25 } as const;

/** Nails by number, the bead's length and diameter in ticks, the rest in liters. */
interface Finishing {
  readonly nails: number;
  readonly nail: Length;
  readonly length: number;
  readonly bead: Length;
  readonly tube: number;
  readonly filler: number;
  readonly primer: number;
  readonly paint: number;
}

function finishNeeds(finishing: Finishing, saying: Saying): readonly Need[] {
  const { nails, nail, length, bead, tube, filler, primer, paint } = finishing;
  const can: Package | undefined = saying.units === 'imperial' ? { size: LITRES_PER_QUART, ...NEEDS.quart } : undefined;
  const liquid = (item: string, label: string, stage: Stage, amount: number, sold?: Package): readonly Need[] =>
    amount > 0 ? [{ item, label, stage, quantity: { unit: 'volume', amount }, ...(sold && { package: sold }) }] : [];
  const size = sayCut(nail, saying);
  const ounces = `${sayNumber(tube * OUNCES_PER_LITRE, saying, 1)} fl oz`;
  const given = saying.units === 'metric' ? `${sayNumber(tube * 1000, saying, 0)} ml` : ounces;
  return [
    {
      item: `finish nail ${nail}`,
      label: NEEDS.nails(size),
      stage: 'baseboards',
      quantity: { unit: 'count', amount: nails },
      note: NEEDS.nailsNote,
    },
    ...liquid('caulk', NEEDS.caulk, 'caulk', (length / beadLength(tube, bead)) * tube, {
      size: tube,
      ...NEEDS.tube(given),
    }),
    ...liquid('wood filler', NEEDS.filler, 'caulk', filler, { size: tubOf(saying), ...NEEDS.tub(sayTub(saying)) }),
    ...liquid('trim primer', NEEDS.trimPrimer, 'paint', primer, can),
    ...liquid('trim paint', NEEDS.paint, 'paint', paint, can),
  ];
}

/** Coverage in m² per liter, the tube in liters; the nail is computed if `nail` is undefined. */
interface FinishAsk extends WallsAsk, StudsAsk {
  readonly thickness: Length;
  readonly height: Length;
  readonly wallboard: Length;
  readonly grip: Length;
  readonly nail: Length | undefined;
  readonly 'nails-per-stud': number;
  readonly bead: Length;
  readonly tube: number;
  readonly primer: number;
  readonly coats: number;
  readonly coverage: number;
}

function answerFinish(ask: FinishAsk, context: Context): Outcome {
  const requested = requestedWalls(ask, context);
  if ('problems' in requested) return requested;
  const saying = trimFormat(ask, context);
  const { thickness, wallboard, height, bead, tube, coverage } = ask;
  const least = nailLength(thickness, wallboard, ask.grip, NAIL_STEPS.value[saying.units]);
  const nail = ask.nail ?? least;
  const into = intoStud(nail, thickness, wallboard);
  if (into < LEAST_IN_STUD.value)
    return { problems: [nailTooShort(sayCut(nail, saying), sayCut(least, saying), typeable(least, saying))] };
  const studs = { first: ask['first-stud'], spacing: ask['stud-spacing'] };
  const per = ask['nails-per-stud'];
  const nails = nailCount(requested.stretches, studs, { single: GLUE_UP.value, sameStud: SAME_STUD.value }, per);
  const length = requested.stretches.reduce((sum, { from, to }) => sum + to - from, 0);
  const tubes = tubesFor(length, tube, bead);
  const filler = fillerLitres(nails, NAIL_HOLE.value, NAIL_HOLE.value);
  const litres = (coats: number): number => coatLitres(length, height, thickness, coats, coverage);
  const area = sayArea(BigInt(length) * BigInt(height + thickness), saying);
  const coat = (coats: number): string =>
    coats === 0 ? FINISH.none : FINISH.coatsValue(sayVolume(litres(coats), saying), coats, area);
  const size = sayCut(nail, saying);
  const deep: readonly Caution[] =
    into > DEEPEST_NAIL.value
      ? [
          {
            topic: 'nail-depth',
            text: deepNailText(size, sayCut(into, saying), sayCut(DEEPEST_NAIL.value, saying)),
            source: DEEPEST_NAIL.source,
          },
        ]
      : [];
  const data: FinishResult = {
    kind: 'finish',
    nails,
    caulkTubes: tubes,
    paintLitres: litres(ask.coats),
    fillerLitres: filler,
  };
  return reply({
    reasons: [{ entry: 'nail-length', figure: size }],
    headline: FINISH.headline(nails, size, tubes, sayVolume(litres(ask.coats), saying)),
    leads: {
      caulk: FINISH.leads.caulk(tubes, sayLength(ticks(length), saying)),
      nails: FINISH.leads.nails(nails, size, sayLength(ticks(length), saying)),
      ...(ask.coats > 0
        ? {
            paint: FINISH.leads.paint(
              sayVolume(litres(ask.coats), saying),
              ask.coats,
              sayLength(ticks(length), saying),
            ),
          }
        : {}),
    },
    lines: [
      FINISH.lengthLine(sayLength(ticks(length), saying), nails / per),
      FINISH.nailLine(size, sayCut(into, saying)),
      ...(ask.primer > 0 ? [FINISH.primerLine(sayVolume(litres(ask.primer), saying))] : []),
      FINISH.caulkLine,
    ],
    blocks: [
      {
        kind: 'facts',
        section: 'buy',
        title: FINISH.title,
        facts: [
          { label: FINISH.length, value: sayLength(ticks(length), saying) },
          { label: FINISH.nails, value: FINISH.nailsValue(nails, per, nails / per, size) },
          {
            label: FINISH.nail,
            value:
              ask.nail === undefined
                ? FINISH.nailValue(size, sayCut(thickness, saying), sayCut(wallboard, saying), sayCut(ask.grip, saying))
                : `${size}, ${FINISH.deep(sayCut(into, saying))}`,
          },
          { label: FINISH.gauge, value: NAIL_GAUGE.said },
          {
            label: FINISH.caulk,
            value: FINISH.caulkValue(
              tubes,
              sayCut(bead, saying),
              sayLength(ticks(Math.floor(beadLength(tube, bead))), saying),
            ),
          },
          {
            label: FINISH.filler,
            value: FINISH.fillerValue(
              Math.ceil(filler / tubOf(saying)),
              sayTub(saying),
              saySmallVolume(filler, saying),
              nails,
            ),
          },
          { label: FINISH.primer, value: coat(ask.primer) },
          { label: FINISH.paint, value: coat(ask.coats) },
        ],
      },
      { kind: 'steps', section: 'how', title: FINISH.stepsTitle, steps: FINISH.steps },
      { kind: 'checklist', section: 'why', title: FINISH.formulas, items: FINISH.formulaItems },
    ],
    assumed: [...context.assumed, ...requested.assumed],
    cautions: [...deep, ...finishCautions()],
    sources: [...NAIL_FIGURES, STUD_SPACING, ...CAULK_FIGURES, ...PAINT_FIGURES].map(({ source }) => source),
    data,
    needs: finishNeeds(
      { nails, nail, length, bead, tube, filler, primer: litres(ask.primer), paint: litres(ask.coats) },
      saying,
    ),
  });
}

/** What a length of trim takes with the usual nails, bead and paint; `tubes` and `nails` are whole, `paint` is in quarts or liters. */
export function usualSupplies(run: Length, saying: Saying): Supplies {
  const studs = { first: STUD_SPACING.value, spacing: STUD_SPACING.value };
  const rule = { single: GLUE_UP.value, sameStud: SAME_STUD.value };
  const step = NAIL_STEPS.value[saying.units];
  const litres = coatLitres(run, TRIM_HEIGHT.value, TRIM_THICKNESS.value, PAINT_COATS.value, PAINT_COVERAGE.value);
  return {
    tubes: tubesFor(run, CAULK_TUBE.value, CAULK_BEAD.value),
    nails: nailCount([{ from: ticks(0), to: run }], studs, rule, NAILS_PER_STUD.value),
    nail: sayCut(nailLength(TRIM_THICKNESS.value, WALLBOARD.value, NAIL_GRIP.value, step), saying),
    paint: sayVolume(litres, saying),
  };
}

export interface Supplies {
  readonly tubes: number;
  readonly nails: number;
  readonly nail: string;
  readonly paint: string;
}

/** Fumes come first, because most of this work is caulk, filler and paint. */
export function finishCautions(): readonly Caution[] {
  const all = cautionsOf('painting', 'nailing', 'sanding');
  const first = ['fumes', 'hidden-lines'];
  const rank = ({ topic }: Caution): number => (first.includes(topic) ? first.indexOf(topic) : first.length);
  return [...all].sort((a, b) => rank(a) - rank(b));
}

/** The way a user would type it; rounded up in metric, so that it's never too short. */
function typeable(nail: Length, saying: Saying): string {
  return saying.units === 'metric' ? `${roundUp(nail / TICKS_PER_MM)} mm` : `${nail / TICKS_PER_INCH} in`;
}

/** In quarts, to a tenth, outside metric. */
function sayVolume(litres: number, saying: Saying): string {
  if (saying.units === 'metric') return `${sayNumber(litres, saying, 1)} L`;
  return `${sayNumber((litres * OUNCES_PER_LITRE) / 32, saying, 1)} qt`;
}

function tubOf(saying: Saying): number {
  return FILLER_TUB[saying.units === 'metric' ? 'metric' : 'imperial'];
}

function sayTub(saying: Saying): string {
  return saying.units === 'metric' ? '250 ml' : '8 fl oz';
}

/** In fluid ounces, to a tenth, outside metric. */
function saySmallVolume(litres: number, saying: Saying): string {
  if (saying.units === 'metric') return `${sayNumber(litres * 1000, saying, 0)} ml`;
  return `${sayNumber(litres * OUNCES_PER_LITRE, saying, 1)} fl oz`;
}

export default defineCommand({
  group: 'trim',
  name: 'finish',
  summary: 'Nails, caulk, filler, primer and paint for your baseboard',
  phrases: [
    'how many nails caulk and paint for baseboards in a 12x14 room',
    'how many tubes of caulk for 120 feet of baseboard',
    'how much paint for trim in 3 rooms',
    'how many nails do i need for 200 ft of base',
    'caulk needed for 90 linear feet',
    'paint for 150 ft of 5 inch baseboard',
    'box of finish nails enough for a bedroom?',
    'one tube of caulk how far does it go',
    'supplies to finish trim: nails filler caulk',
    'how much wood filler for nail holes',
    'quart or gallon of paint for baseboards',
    'primer amount for 250 feet of trim',
    'how many brad nails per baseboard',
    'caulk for the whole house trim',
    'how much caulk do i buy',
    'gallon enough for two coats on all trim',
    'finishing materials for trim in 4 rooms',
    'number of nails every 16 inches on 60 ft wall',
    'what to buy to finish baseboards',
    'how many tubes of paintable caulk for a 11x12 bedroom',
    'how many nails for 96 feet of baseboard',
    "tubes of caulk for two bedrooms' worth of base",
    'one quart of trim paint enough for 140 feet of 5 1/4 base, two coats?',
    'nail count if studs are 16 on center and the room is 12x15',
    'what finishing supplies do i pick up for the trim, filler, caulk, nails, paint',
    'caulk for 210 linear ft',
    "how far does a tube of painter's caulk go along the top of a baseboard",
    'brads or finish nails, and how many per 16 ft stick',
    'gallon or quart for baseboards in five rooms, 4 inch tall',
    'filler to plug 300 nail holes',
    'litres of satinwood for 46 metres of 120 mm skirting',
    'primer and two top coats on raw pine base, 88 feet, what do i need',
    'do i get away with one tube of caulk in a 10x11',
    '15 gauge nails box of 1000 is that overkill for one room',
    'paint needed for quarter round and base, 3 rooms, about 165 ft',
    'trim supplies for the hall 3x20 doors and all',
    'finish materials list for trim',
    'how many cartridges of decorators caulk for the lounge and landing, 31 m of skirting',
    "i'm nailing base every 16 inches both top and bottom, 60 feet of wall",
    'spackle tub size for filling the nail holes in a whole house',
    'what length nail through 9/16 base and half inch drywall into a stud',
    "tell me how much semi gloss i'd use on 250 ft",
    'gaps at the top are 1/8 or so, caulk amount for 112 feet',
    '18 gauge 2 inch brads, total for living room trim 15x18',
    "touch up paint for base i'm putting back, maybe 70 feet",
    'nails, caulk, paint for 13x13',
    'is a pint of paint going to do the baseboards in the bathroom 5x9',
    'need numbers for painting and caulking 6 doors of casing plus 180 ft of base',
    'one coat only, prefinished white, how many nails and how much caulk',
    'how many ounces of wood putty',
    "coverage is 350 sq ft a gallon, trim's 5.5 in tall and 190 feet long, how much paint",
    'shoe molding gets a nail every foot, how many for 122 feet',
    'supplies for the last step, caulk, fill and paint baseboard in bed 2, 11x14 with one door',
    'glue for trim on a concrete block wall, 24 ft, how many tubes',
    'do three tubes cover both bedrooms and hall',
    'nails per stick of base?',
    'paint quantity baseboard upstairs',
    'how much caulk would i go through if i do top edge and the inside corners of 5 rooms',
    'give me the finishing shopping amounts for 55 metres of skirting',
    'is a box of 500 nails good for 230 feet of base',
  ],
  options: z.object({
    ...wallOptions,
    thickness: trimThickness,
    height: length({
      summary: 'Height of the trim',
      standard: '3 1/4 in',
      record: TRIM_HEIGHT,
      metric: '80 mm',
      example: '5 1/4 in',
      least: millimetres(5),
      most: inches(24),
    }),
    wallboard: length({
      summary: 'Thickness of the wallboard',
      standard: '1/2 in',
      record: WALLBOARD,
      metric: '12.5 mm',
      example: '5/8 in',
      least: ticks(0),
      most: inches(3),
    }),
    grip: length({
      summary: 'How far nails go into the stud',
      standard: '3/4 in',
      record: NAIL_GRIP,
      metric: '20 mm',
      example: '1 in',
      least: inches(0.5),
      most: inches(2),
    }),
    nail: text(
      {
        summary: 'Length of the nails you have; leave it out to get the right length',
        example: '2 in',
        standard: 'computed',
      },
      readNail,
    ),
    'nails-per-stud': count({
      summary: 'Nails at every stud',
      standard: '2',
      record: NAILS_PER_STUD,
      least: 1,
      most: 4,
    }),
    ...studOptions,
    bead: length({
      summary: 'Width of the caulk bead',
      standard: '1/8 in',
      record: CAULK_BEAD,
      metric: '3 mm',
      example: '1/4 in',
      least: inches(0.03125),
      most: inches(1),
    }),
    tube: text(
      {
        summary: 'What a tube of caulk holds',
        example: '10.1 fl oz',
        standard: '10.1 fl oz',
        record: CAULK_TUBE,
        metric: '300 ml',
      },
      readVolume,
    ),
    primer: count({ summary: 'Coats of primer', standard: '1', record: PAINT_COATS, least: 0, most: 5 }),
    coats: count({ summary: 'Coats of paint', standard: '2', record: PAINT_COATS, least: 0, most: 5 }),
    coverage: text(
      {
        summary: 'What the paint covers',
        example: '350 sq ft per gallon',
        standard: '350 sq ft per gallon',
        record: PAINT_COVERAGE,
        metric: '9 m² per liter',
      },
      readCoverage,
    ),
  }),
  examples: [
    {
      ask: `finish room: 12' x 14', doors: 32 in on wall 2`,
      headline: '88 nails (2"), 1 tube of caulk, 0.4 qt of paint.',
    },
    {
      ask: 'finish room: 3,6 x 4,2 m, doors: 800 mm on wall 1, thickness: 15 mm, coverage: 10 m² per liter',
      headline: '88 nails (50 mm), 1 tube of caulk, 0.3 L of paint.',
    },
  ],
  run: (options, context) => answerFinish(options, context),
});
