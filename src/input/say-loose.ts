/** How a loose volume and a span of hours are said. */

import { LITRES_PER_CUBIC_YARD } from '../prep/tearout-amounts.ts';
import { sayNumber } from './say.ts';
import type { Saying } from './say-length.ts';

/** Litres as cubic yards or cubic metres, to a tenth: 1.8 cu yd, 1.4 m³. */
export function sayLoose(litres: number, saying: Saying): string {
  return saying.units === 'imperial'
    ? `${sayNumber(litres / LITRES_PER_CUBIC_YARD, saying, 1)} cu yd`
    : `${sayNumber(litres / 1000, saying, 1)} m³`;
}

/** Hours with a half as a fraction or a decimal: 1 1/2, or 1,5 in metric. */
export function sayHours(hours: number, saying: Saying): string {
  if (saying.units === 'metric' || hours * 2 !== Math.round(hours * 2)) return sayNumber(hours, saying, 1);
  const whole = Math.floor(hours);
  if (hours === whole) return String(whole);
  return whole === 0 ? '1/2' : `${whole} 1/2`;
}
