/** What a sum of lengths comes to, said in both systems, and as result data. */

import type { Fact, Result } from '../reply/reply.ts';
import { TAPE } from '../text/help-text.ts';
import { type Length, TICKS_PER_INCH } from '../units/length.ts';
import { unitsOf } from './length.ts';
import { type LengthUnit, UNITS } from './length-units.ts';
import type { Habits } from './reading.ts';
import { sayArea, sayNumber } from './say.ts';
import { sayCut, sayLength } from './say-length.ts';
import type { Tape } from './tape.ts';

const TICKS_PER_SIXTEENTH = TICKS_PER_INCH / 16;

/** Result data of kind tape: a length in ticks, an area in square ticks, or a plain number. */
export type TapeResult = Result & { readonly kind: 'tape' } & (
    | { readonly length: number }
    | { readonly area: number }
    | { readonly number: number }
  );

/** Headline, facts and data of a sum; `typed` is the sum as typed, whose own units come first unless it names others. */
export function sayTape(
  tape: Tape,
  typed: string,
  habits: Habits,
): { headline: string; facts: readonly Fact[]; data: TapeResult } {
  const { decimal } = habits;
  const imperial = { units: 'imperial', decimal } as const;
  const metric = { units: 'metric', decimal } as const;
  if (tape.kind === 'number') {
    const value = sayNumber(tape.value, imperial, 6);
    return { headline: `${typed} = ${value}`, facts: [], data: { kind: 'tape', number: tape.value } };
  }
  const { units } = tape;
  if (tape.kind === 'area') {
    const said = units === 'metric' ? sayArea(tape.area, metric) : sayArea(tape.area, imperial);
    return {
      headline: `${typed} = ${said}`,
      facts: [
        { label: TAPE.squareFeet, value: sayArea(tape.area, imperial) },
        { label: TAPE.squareMetres, value: sayArea(tape.area, metric) },
      ],
      data: { kind: 'tape', area: Number(tape.area) },
    };
  }
  return {
    headline: `${typed} = ${tape.to ? sayIn(tape.length, tape.to, decimal) : sayLength(tape.length, { units, decimal })}`,
    facts: [
      { label: TAPE.imperial, value: sayLength(tape.length, imperial) },
      { label: TAPE.inches, value: sayCut(tape.length, imperial) },
      { label: TAPE.metric, value: sayLength(tape.length, metric) },
      { label: TAPE.millimetres, value: sayIn(tape.length, 'mm', decimal) },
    ],
    data: { kind: 'tape', length: tape.length },
  };
}

/** Decimals worth showing: a tenth of a millimetre, or finer where that is exact. */
const DECIMALS: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 2, m: 4, in: 4, ft: 4, yd: 4 };

/** A length in the one unit asked for; feet and inches as on a tape, and where that is not exact, both. */
function sayIn(length: Length, unit: LengthUnit, decimal: Habits['decimal']): string {
  const saying = { units: unitsOf(unit), decimal };
  const value = Number((length / Number(UNITS[unit].ticks)).toFixed(DECIMALS[unit]));
  // No thousands mark: 3,810 mm could be read as a decimal.
  const figure = `${String(value).replace('.', decimal)} ${unit}`;
  if (unit !== 'ft' && unit !== 'in') return figure;
  const onTape = unit === 'ft' ? sayLength(length, saying) : sayCut(length, saying);
  return length % TICKS_PER_SIXTEENTH === 0 ? onTape : TAPE.about(figure, onTape);
}
