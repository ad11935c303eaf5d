/** How areas, money, plain numbers and weights are said, each with the asker's decimal mark. */

import { type Area, type Cents, SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';
import type { Saying } from './say-length.ts';

/** 1 lb = 0.45359237 kg exactly (international yard and pound, 1959; NIST SP 811 app. B.8, from memory). */
const KILOGRAMS_PER_POUND = 0.45359237;

/** An area: 168 sq ft, 168.5 sq ft to a tenth, or 15.61 m² to a hundredth; rounded once and exactly, a half away from zero. */
export function sayArea(area: Area, saying: Saying): string {
  return saying.units === 'imperial'
    ? `${sayRatio(area, SQUARE_TICKS_PER_SQUARE_FOOT, 1, saying)} sq ft`
    : `${sayRatio(area, SQUARE_TICKS_PER_SQUARE_METRE, 2, saying)} m²`;
}

/**
 * Areas that are said beside their sum: each as `sayArea` says it or one step of its last figure beside it, so that the
 * figures as they are read come to the sum as it is read. The largest remainders are rounded up.
 */
export function sayAreasOfSum(areas: readonly Area[], saying: Saying): readonly string[] {
  const imperial = saying.units === 'imperial';
  const step = imperial ? SQUARE_TICKS_PER_SQUARE_FOOT / 10n : SQUARE_TICKS_PER_SQUARE_METRE / 100n;
  const sum = areas.reduce((all, area) => all + area, 0n);
  const whole = areas.map((area) => area / step);
  const missing = (2n * sum + step) / (2n * step) - whole.reduce((all, steps) => all + steps, 0n);
  const upwards = areas
    .map((area, i) => ({ i, rest: area % step }))
    .sort((one, other) => (one.rest === other.rest ? one.i - other.i : one.rest > other.rest ? -1 : 1))
    .slice(0, Number(missing))
    .map(({ i }) => i);
  return whole.map((steps, i) => sayArea((upwards.includes(i) ? steps + 1n : steps) * step, saying));
}

/**
 * Money in its own currency (ISO 4217) with the asker's marks: $1,234.50 or 1.234,50 €.
 * Throws a RangeError when `currency` is not three letters.
 */
export function sayMoney(amount: Cents, currency: string, saying: Saying): string {
  const format = new Intl.NumberFormat(localeOf(saying), { style: 'currency', currency });
  return plainSpaces(format.format(amount / 100));
}

/** A number with groups of three and at most `decimals` decimals, those at the end that are zero left out: 1,234.5. */
export function sayNumber(value: number, saying: Saying, decimals = 2): string {
  const format = new Intl.NumberFormat(localeOf(saying), { maximumFractionDigits: decimals, signDisplay: 'negative' });
  return plainSpaces(format.format(value));
}

/** A weight given in kilograms: whole pounds or kilograms from ten up, to a tenth below. */
export function sayWeight(kilograms: number, saying: Saying): string {
  const imperial = saying.units === 'imperial';
  const value = imperial ? kilograms / KILOGRAMS_PER_POUND : kilograms;
  return `${sayNumber(value, saying, Math.abs(value) < 10 ? 1 : 0)} ${imperial ? 'lb' : 'kg'}`;
}

/** `amount` / `size` to `decimals` decimals, by whole numbers all the way. */
function sayRatio(amount: bigint, size: bigint, decimals: number, saying: Saying): string {
  const scale = 10n ** BigInt(decimals);
  const least = amount < 0n ? -amount : amount;
  const scaled = (2n * least * scale + size) / (2n * size);
  const whole = new Intl.NumberFormat(localeOf(saying)).format(scaled / scale);
  const part = String(scaled % scale)
    .padStart(decimals, '0')
    .replace(/(?<!0)0+$/, '');
  const minus = amount < 0n && scaled > 0n ? '-' : '';
  return `${minus}${whole}${part === '' ? '' : `${saying.decimal}${part}`}`;
}

/** A locale that writes figures with this decimal mark and groups of three. */
function localeOf(saying: Saying): string {
  return saying.decimal === ',' ? 'de-DE' : 'en-US';
}

/** Intl parts figures and signs with spaces that a chat and a terminal show in ways of their own. */
function plainSpaces(text: string): string {
  return text.replace(/\s/g, ' ');
}
