/** Notches and holes told of a joist, against the limits of its depth. */

import type { Context } from '../../../src/chat/command.ts';
import { JOIST_LIMITS } from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut } from '../../../src/input/format.ts';
import { type JoistFlaw, joistFlaws, joistLimits } from '../../../src/prep/joist-cut.ts';
import type { Problem, Refusal } from '../../../src/reply/reply.ts';
import { cutJoist, ENGINEERED_CUT } from '../../../src/text/found-text.ts';
import { holeApartUntold } from '../../../src/text/prep-problems-text.ts';
import { type Length, TICKS_PER_INCH, TICKS_PER_MM, ticks } from '../../../src/units/length.ts';
import type { PatchAsk } from './patch-ask.ts';
import { refusal } from './patch-screen.ts';

/** A refusal where a notch or hole passes its limit, stands in a joist that no rule lets be cut, or cannot be judged; undefined where it may stay. */
export function joistRefusal(ask: PatchAsk, context: Context): Refusal | undefined {
  const cut = ask.notch > 0 || ask.hole > 0;
  if (cut && ask['joist-kind'] !== 'solid') return refusal(ENGINEERED_CUT);
  const flaws = flawsOf(ask, context);
  if (flaws.length === 0 || isOnlyApart(flaws)) return undefined;
  const depth = ask['joist-depth'];
  const saying: Saying = { units: ask.damage.units, decimal: context.habits.decimal };
  const limits = joistLimits(depth, JOIST_LIMITS.value);
  const say = (length: number): string => sayLimit(length, saying);
  return refusal(
    cutJoist(flaws, {
      depth: sayCut(depth, saying),
      notch: say(limits.notch),
      endNotch: say(limits.endNotch),
      hole: say(limits.hole),
    }),
  );
}

/** Asks how far a hole and a notch stand apart, where both are told and nothing else is wrong with them. */
export function joistQuestion(ask: PatchAsk, context: Context): Problem | undefined {
  if (!isOnlyApart(flawsOf(ask, context))) return undefined;
  const saying: Saying = { units: ask.damage.units, decimal: context.habits.decimal };
  return holeApartUntold(sayCut(JOIST_LIMITS.value.holeApart, saying));
}

function isOnlyApart(flaws: readonly JoistFlaw[]): boolean {
  return flaws.length === 1 && flaws[0] === 'hole-apart-untold';
}

function flawsOf(ask: PatchAsk, { told }: Context): readonly JoistFlaw[] {
  const place = ask['notch-place'];
  return joistFlaws(
    {
      depth: ask['joist-depth'],
      notch: {
        depth: ask.notch,
        ...(told.has('notch-length') && { length: ask['notch-length'] }),
        ...(place !== 'untold' && { place }),
      },
      hole: {
        diameter: ask.hole,
        ...(told.has('hole-edge') && { edge: ask['hole-edge'] }),
        ...(told.has('hole-apart') && { apart: ask['hole-apart'] }),
      },
    },
    JOIST_LIMITS.value,
  );
}

/** A joist’s depth, its deepest notch, its widest hole and how far that stands from other cuts, said. */
export function limitsSaid(
  depth: Length,
  saying: Saying,
): readonly [depth: string, notch: string, hole: string, apart: string] {
  const { notch, hole } = joistLimits(depth, JOIST_LIMITS.value);
  const apart = sayCut(JOIST_LIMITS.value.holeApart, saying);
  return [sayCut(depth, saying), sayLimit(notch, saying), sayLimit(hole, saying), apart];
}

/** A limit down to the mark on the tape below it: said to the nearest, it could allow more than it does. */
function sayLimit(length: number, saying: Saying): string {
  const mark = saying.units === 'metric' ? TICKS_PER_MM : TICKS_PER_INCH / 16;
  return sayCut(ticks(Math.floor(length / mark) * mark), saying);
}
