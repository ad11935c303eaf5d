/** From the options of `trim finish` to its answer. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import {
  CAULK_FIGURES,
  DEEPEST_NAIL,
  GLUE_UP,
  LEAST_IN_STUD,
  NAIL_FIGURES,
  NAIL_GAUGE,
  NAIL_HOLE,
  NAIL_STEPS,
  PAINT_FIGURES,
  SAME_STUD,
  STUD_SPACING,
} from '../../../src/figures/trim-figures.ts';
import { type Saying, sayArea, sayCut, sayLength, sayNumber } from '../../../src/input/format.ts';
import type { Caution } from '../../../src/reply/reply.ts';
import { nailTooShort } from '../../../src/text/trim-problems-text.ts';
import { deepNailText, FINISH } from '../../../src/text/trim-text.ts';
import {
  beadLength,
  coatLitres,
  fillerLitres,
  intoStud,
  nailCount,
  nailLength,
  tubesFor,
} from '../../../src/trim/finishing.ts';
import { type Length, roundUp, TICKS_PER_INCH, TICKS_PER_MM, ticks } from '../../../src/units/length.ts';
import type { StudsAsk, WallsAsk } from './ask.ts';
import { cautionsOf } from './cautions.ts';
import { finishNeeds } from './finish-needs.ts';
import type { FinishResult } from './result.ts';
import { askedWalls, sayingOf } from './walls.ts';

/** What `trim finish` reads. `nail` undefined: worked out. Coverage in m² a litre, the tube in litres. */
export interface FinishAsk extends WallsAsk, StudsAsk {
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

/** US fluid ounces and quarts in a litre: 231 in³ a gallon (NIST Handbook 44, appendix C). */
const OUNCES_PER_LITRE = 128 / 3.785411784;

export function answerFinish(ask: FinishAsk, context: Context): Outcome {
  const asked = askedWalls(ask, context);
  if ('problems' in asked) return asked;
  const saying = sayingOf(ask, context);
  const { thickness, wallboard, height, bead, tube, coverage } = ask;
  const least = nailLength(thickness, wallboard, ask.grip, NAIL_STEPS.value[saying.units]);
  const nail = ask.nail ?? least;
  const into = intoStud(nail, thickness, wallboard);
  if (into < LEAST_IN_STUD.value)
    return { problems: [nailTooShort(sayCut(nail, saying), sayCut(least, saying), typeable(least, saying))] };
  const studs = { first: ask['first-stud'], spacing: ask['stud-spacing'] };
  const per = ask['nails-per-stud'];
  const nails = nailCount(asked.stretches, studs, { single: GLUE_UP.value, sameStud: SAME_STUD.value }, per);
  const length = asked.stretches.reduce((sum, { from, to }) => sum + to - from, 0);
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
  return {
    headline: FINISH.headline(nails, size, tubes, sayVolume(litres(ask.coats), saying)),
    blocks: [
      {
        kind: 'facts',
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
          { label: FINISH.filler, value: FINISH.fillerValue(saySmallVolume(filler, saying), nails) },
          { label: FINISH.primer, value: coat(ask.primer) },
          { label: FINISH.paint, value: coat(ask.coats) },
        ],
      },
      { kind: 'steps', title: FINISH.stepsTitle, steps: FINISH.steps },
      { kind: 'checklist', title: FINISH.formulas, items: FINISH.formulaItems },
    ],
    assumed: [...context.assumed, ...asked.assumed],
    cautions: [...deep, ...cautionsOf('nailing', 'sanding')],
    sources: [...NAIL_FIGURES, STUD_SPACING, ...CAULK_FIGURES, ...PAINT_FIGURES].map(({ source }) => source),
    actions: [],
    audience: 'asker',
    data,
    needs: finishNeeds(
      { nails, nail, length, bead, tube, filler, primer: litres(ask.primer), paint: litres(ask.coats) },
      saying,
    ),
  };
}

/** A nail as one types it, never shorter than needed. */
function typeable(nail: Length, saying: Saying): string {
  return saying.units === 'metric' ? `${roundUp(nail / TICKS_PER_MM)} mm` : `${nail / TICKS_PER_INCH} in`;
}

/** Litres, or quarts to a tenth. */
function sayVolume(litres: number, saying: Saying): string {
  if (saying.units === 'metric') return `${sayNumber(litres, saying, 1)} L`;
  return `${sayNumber((litres * OUNCES_PER_LITRE) / 32, saying, 1)} qt`;
}

/** Millilitres, or fluid ounces to a tenth. */
function saySmallVolume(litres: number, saying: Saying): string {
  if (saying.units === 'metric') return `${sayNumber(litres * 1000, saying, 0)} ml`;
  return `${sayNumber(litres * OUNCES_PER_LITRE, saying, 1)} fl oz`;
}
