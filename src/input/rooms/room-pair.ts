/** Two sides typed together, read in one unit. */

import { sideTooShort } from '../../text/room-problems-text.ts';
import { TICKS_PER_INCH } from '../../units/length.ts';
import { unitIn } from '../length.ts';
import type { LengthUnit } from '../length-units.ts';
import type { Reading } from '../reading.ts';
import type { Flaw } from './room-flaw.ts';
import type { Sides } from './room-notch.ts';
import type { Shape } from './room-piece.ts';
import { readSide } from './room-side.ts';

/** Two sides in one unit: that of the side which names one, else `unit`. */
export function readSides(
  shape: Extract<Shape, { kind: 'sides' }>,
  unit: LengthUnit,
  reading: Reading,
): { ok: true; sides: Sides } | { ok: false; flaws: readonly Flaw[] } {
  const { from, to, a, b } = shape;
  const x = readSide(a, unitIn(b) ?? unit, reading);
  const y = a === b && x.ok ? x : readSide(b, unitIn(a) ?? unit, reading);
  const flaw = (expected: string, ...mends: string[]): Flaw => ({
    from,
    to,
    expected,
    mends: () => mends,
  });
  if (!x.ok) return { ok: false, flaws: [flaw(x.expected, ...x.mends.map((mend) => `${mend} x ${b}`))] };
  if (!y.ok) return { ok: false, flaws: [flaw(y.expected, ...y.mends.map((mend) => `${a} x ${mend}`))] };
  if (x.length < TICKS_PER_INCH || y.length < TICKS_PER_INCH) return { ok: false, flaws: [flaw(sideTooShort())] };
  return { ok: true, sides: { x: x.length, y: y.length } };
}
