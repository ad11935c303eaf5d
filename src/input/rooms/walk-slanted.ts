/** A walk round walls at any angle, read: `right 45°`, and `right diagonal 2' x 3'` for a slanted wall by its offsets. */

import {
  angleOutOfRange,
  angleWithoutSide,
  diagonalWithoutSide,
  lastTurnWrong,
  notInWalk,
  turnMissing,
  turnTwice,
  walkCrosses,
  walkEndsAway,
  walkTooLong,
  walkTooShort,
  wallTooShort,
} from '../../text/room-problems-text.ts';
import { TICKS_PER_INCH, ticks } from '../../units/length.ts';
import { unitsOf } from '../length.ts';
import type { LengthUnit } from '../length-units.ts';
import type { Reading } from '../reading.ts';
import type { Saying } from '../say-length.ts';
import { degreesOf } from './corners-angle.ts';
import type { Flaw } from './room-flaw.ts';
import { readSide } from './room-side.ts';
import { type ClosedLegs, closeLegs, EASE } from './walk-bearing.ts';
import { type Element, legsOf, mendedTexts } from './walk-element.ts';
import { FEWEST_WALLS, MOST_WALLS, type ReadWalk, way } from './walk-read.ts';
import type { Step } from './walk-steps.ts';

const LEAST_TURN = 1;
const MOST_TURN = 179;
/** Bare numbers read as an angle where a turn stands before and a wall behind. */
const USUAL = /^(?:15|22[.,]5|30|45|60|67[.,]5|75|120|135|150)$/;

/** True when a walk tells angles or diagonals. */
export function isSlantedWalk(steps: readonly Step[]): boolean {
  return angled(steps).some(({ kind }) => kind === 'angle' || kind === 'diagonal');
}

/** Bare angles told as such: “right 45 3'” is a turn of 45° and a wall of 3'. */
function angled(steps: readonly Step[]): readonly Step[] {
  return steps.map((step, i) => {
    const before = steps[i - 1]?.kind;
    // After a turn it is the turn's angle; between two walls one without a side, which is told back as such.
    const bare =
      step.kind === 'wall' &&
      USUAL.test(step.typed) &&
      (before === 'turn' || before === 'wall') &&
      steps[i + 1]?.kind === 'wall';
    return bare ? { kind: 'angle', from: step.from, to: step.to, typed: `${step.typed}°` } : step;
  });
}

/** Reads the steps of a slanted walk; a wall without a unit is taken in `unit`. */
export function readSlantedWalk(
  told: readonly Step[],
  place: { readonly from: number; readonly to: number },
  unit: LengthUnit,
  reading: Reading,
): ReadWalk {
  const saying: Saying = { units: unitsOf(unit), decimal: reading.habits.decimal };
  const failed = (expected: string, mends: () => readonly string[]): ReadWalk => ({
    ok: false,
    flaws: [{ ...place, expected, mends }],
  });
  const { elements, flaws } = elementsOf(angled(told), unit, reading);
  if (elements.length > 2 * MOST_WALLS) return failed(walkTooLong(MOST_WALLS), () => []);
  if (flaws.length > 0) return { ok: false, flaws };
  const walls = elements.filter(({ kind }) => kind !== 'turn');
  const { legs, after } = legsOf(elements);
  const closed = closeLegs(legs, after);
  if (closed.kind === 'outline' && closed.outline.length >= FEWEST_WALLS) {
    const { outline, closing, eased } = closed;
    return {
      ok: true,
      outline,
      eased: eased > 1 && ticks(eased),
      ...(closing !== undefined && { closing: ticks(closing) }),
    };
  }
  const expected = walls.length < FEWEST_WALLS ? walkTooShort(FEWEST_WALLS) : expectedOf(closed, walls, saying);
  return failed(expected, () => mendedTexts(elements));
}

function expectedOf(closed: ClosedLegs, walls: readonly Element[], saying: Saying): string {
  if (closed.kind === 'crossing') {
    const [one, other] = closed.walls.map((i) => ({ number: i + 1, typed: walls[i]?.typed }));
    return walkCrosses(one, other);
  }
  if (closed.kind !== 'open') return lastTurnWrong();
  return walkEndsAway(
    way(closed.ahead, 'ahead of', 'behind', EASE / 8, saying),
    way(closed.right, 'right of', 'left of', EASE / 8, saying),
    walls.length,
  );
}

/** Walls, turns with their degrees, and diagonals in order; and what is wrong with them. */
function elementsOf(
  steps: readonly Step[],
  unit: LengthUnit,
  reading: Reading,
): { elements: Element[]; flaws: Flaw[] } {
  const elements: Element[] = [];
  const flaws: Flaw[] = [];
  const flaw = ({ from, to }: Step, expected: string, ...mends: string[]): void =>
    void flaws.push({ from, to, expected, mends: () => mends });
  const length = (step: Step, typed: string, mend: (side: string) => string = (side) => side): number => {
    const side = readSide(typed, unit, reading);
    if (!side.ok) flaw(step, side.expected, ...side.mends.map(mend));
    else if (side.length < TICKS_PER_INCH) flaw(step, wallTooShort());
    return side.ok ? side.length : 0;
  };
  let angle: Step | undefined;
  steps.forEach((step, i) => {
    const last = elements.at(-1);
    const { typed } = step;
    if (step.kind === 'word') flaw(step, notInWalk(typed), '');
    else if (step.kind === 'wall') {
      if (last?.kind === 'wall' && !angle) flaw(step, turnMissing(), `right ${typed}`, `left ${typed}`);
      elements.push({ kind: 'wall', typed, length: length(step, typed) });
    } else if (step.kind === 'turn') {
      if (last?.kind === 'turn') flaw(step, turnTwice(), '');
      elements.push({ kind: 'turn', typed, turn: step.turn, degrees: angle ? degreesIn(angle, flaw) : 90 });
      angle = undefined;
    } else if (step.kind === 'diagonal') {
      if (last?.kind === 'turn') {
        const { ahead, aside } = step;
        const [one, other] = [
          length(step, ahead, (side) => typed.replace(ahead, side)),
          length(step, aside, (side) => typed.replace(aside, side)),
        ];
        elements.splice(-1, 1, { kind: 'diagonal', typed, turn: last.turn, ahead: one, aside: other });
      } else flaw(step, diagonalWithoutSide(), `right ${typed}`, `left ${typed}`);
    } else if (last?.kind === 'turn' && steps[i - 1]?.kind === 'turn')
      elements.splice(-1, 1, { ...last, degrees: degreesIn(step, flaw) });
    else if (steps[i + 1]?.kind === 'turn') angle = step;
    else {
      const swing = 180 - (degreesOf(typed) ?? 90);
      flaw(step, angleWithoutSide(typed), ...[`right ${swing}°`, `left ${swing}°`, `right ${typed}`, `left ${typed}`]);
    }
  });
  return { elements, flaws };
}

function degreesIn(step: Step, flaw: (step: Step, expected: string, ...mends: string[]) => void): number {
  const degrees = degreesOf(step.typed.replace('*', '°').replace('˚', '°')) ?? 0;
  if (degrees >= LEAST_TURN && degrees <= MOST_TURN) return degrees;
  flaw(step, angleOutOfRange(LEAST_TURN, MOST_TURN), '45°', '90°');
  return 90;
}
