/** How a length is said: to 1/16 in or to 1 mm, in a form that is read back as the same length. */

import { type Length, TICKS_PER_INCH, TICKS_PER_MM } from '../units/length.ts';
import type { Units } from './reading.ts';

/** How this asker reads figures. */
export interface Saying {
  readonly units: Units;
  readonly decimal: '.' | ',';
}

/** The finest mark on a tape in common use. */
const SIXTEENTHS = 16;
const TICKS_PER_SIXTEENTH = TICKS_PER_INCH / SIXTEENTHS;

/**
 * A length as it is spoken of: 12' 6 1/2", 7 1/2", 0" to the nearest 1/16 in, or 805 mm, 3.8 m, 3.805 m to the nearest
 * millimetre; a half is rounded away from zero, and what is below zero opens with a minus.
 */
export function sayLength(length: Length, saying: Saying): string {
  if (saying.units === 'metric') return sayMetric(length, saying.decimal);
  const { minus, sixteenths } = sixteenthsOf(length);
  const inFeet = 12 * SIXTEENTHS;
  const feet = Math.floor(sixteenths / inFeet);
  const rest = sixteenths % inFeet;
  if (feet === 0) return `${minus}${sayInches(rest)}`;
  return rest === 0 ? `${minus}${feet}'` : `${minus}${feet}' ${sayInches(rest)}`;
}

/**
 * A length as it is marked for a cut, in one unit so that nothing is added up at the saw: 43 1/2" or 1105 mm, rounded as
 * sayLength rounds.
 */
export function sayCut(length: Length, saying: Saying): string {
  if (saying.units === 'metric') return `${millimetresOf(length)} mm`;
  const { minus, sixteenths } = sixteenthsOf(length);
  return `${minus}${sayInches(sixteenths)}`;
}

function sayMetric(length: Length, decimal: '.' | ','): string {
  const mm = millimetresOf(length);
  if (Math.abs(mm) < 1000) return `${mm} mm`;
  const metres = Math.trunc(mm / 1000);
  const part = String(Math.abs(mm) % 1000)
    .padStart(3, '0')
    .replace(/(?<!0)0+$/, '');
  return part === '' ? `${metres} m` : `${metres}${decimal}${part} m`;
}

/** Whole sixteenths of an inch as inches with the fraction in its lowest terms. */
function sayInches(sixteenths: number): string {
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  let [top, bottom] = [sixteenths % SIXTEENTHS, SIXTEENTHS];
  if (top === 0) return `${whole}"`;
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return whole === 0 ? `${top}/${bottom}"` : `${whole} ${top}/${bottom}"`;
}

function sixteenthsOf(length: Length): { minus: string; sixteenths: number } {
  const sixteenths = Math.round(Math.abs(length) / TICKS_PER_SIXTEENTH);
  return { minus: length < 0 && sixteenths > 0 ? '-' : '', sixteenths };
}

function millimetresOf(length: Length): number {
  const mm = Math.round(Math.abs(length) / TICKS_PER_MM);
  return length < 0 && mm > 0 ? -mm : mm;
}
