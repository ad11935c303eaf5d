/** Formatting lengths, areas, money, numbers, weights, volumes, hours and what was typed for the user's units and decimal mark. */

import { z } from 'zod';
import { LITRES_PER_CUBIC_YARD } from '../prep/old-floor.ts';
import { doubleArea, type Point } from '../units/geometry.ts';
import {
  type Area,
  type Cents,
  type Length,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
  TICKS_PER_INCH,
  TICKS_PER_MM,
} from '../units/length.ts';
import type { OptionFacts, Preferences, Units } from './reading.ts';

// Lengths: to 1/16 in or 1 mm, in a form that parses back to the same length.

export interface Saying {
  readonly units: Units;
  readonly decimal: '.' | ',';
}

/** The finest mark on a common tape. */
const SIXTEENTHS = 16;
const TICKS_PER_SIXTEENTH = TICKS_PER_INCH / SIXTEENTHS;

/**
 * A length as spoken: 12' 6 1/2", 7 1/2", 0" to the nearest 1/16 in, or 805 mm, 3.8 m, 3.805 m to the nearest
 * millimeter. Halves round away from zero; negative lengths get a minus.
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
 * A length to mark for a cut, in one unit so that there is nothing to add up at the saw: 43 1/2" or 1105 mm, rounded
 * like sayLength.
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

/** Sixteenths of an inch as inches, with the fraction in lowest terms. */
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

/** 1 lb = 0.45359237 kg exactly (international yard and pound, 1959; NIST SP 811 app. B.8, from memory). */
const KILOGRAMS_PER_POUND = 0.45359237;

/** 168 sq ft, 168.5 sq ft to one decimal, or 15.61 m² to two; rounded once and exactly, halves away from zero. */
export function sayArea(area: Area, saying: Saying): string {
  return saying.units === 'imperial'
    ? `${sayRatio(area, SQUARE_TICKS_PER_SQUARE_FOOT, 1, saying)} sq ft`
    : `${sayRatio(area, SQUARE_TICKS_PER_SQUARE_METRE, 2, saying)} m²`;
}

/**
 * Areas shown next to their sum: each as `sayArea` gives it, or one last digit more or less, so that the printed values
 * add up to the printed sum. The largest remainders round up.
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
 * Money in its own currency (ISO 4217) with the user's number format: $1,234.50 or 1.234,50 €. Throws a RangeError
 * unless `currency` has three letters.
 */
export function sayMoney(amount: Cents, currency: string, saying: Saying): string {
  const format = new Intl.NumberFormat(localeOf(saying), { style: 'currency', currency });
  return plainSpaces(format.format(amount / 100));
}

/** A number with thousands separators and at most `decimals` decimals, without trailing zeros: 1,234.5. */
export function sayNumber(value: number, saying: Saying, decimals = 2): string {
  const format = new Intl.NumberFormat(localeOf(saying), { maximumFractionDigits: decimals, signDisplay: 'negative' });
  return plainSpaces(format.format(value));
}

/** A weight in kilograms: whole pounds or kilograms from ten up, one decimal below. */
export function sayWeight(kilograms: number, saying: Saying): string {
  const imperial = saying.units === 'imperial';
  const value = imperial ? kilograms / KILOGRAMS_PER_POUND : kilograms;
  return `${sayNumber(value, saying, Math.abs(value) < 10 ? 1 : 0)} ${imperial ? 'lb' : 'kg'}`;
}

/** `amount` / `size` to `decimals` decimals, in integer arithmetic. */
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

/** A locale with this decimal mark that groups digits in threes. */
function localeOf(saying: Saying): string {
  return saying.decimal === ',' ? 'de-DE' : 'en-US';
}

/** Intl separates digits and symbols with special spaces that chats and terminals render inconsistently. */
function plainSpaces(text: string): string {
  return text.replace(/\s/g, ' ');
}

/** Liters as cubic yards or cubic meters, to one decimal: 1.8 cu yd, 1.4 m³. */
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

// What was typed, as it was read.

/** A value in words, where they say more than what was typed. */
export function sayRead(value: unknown, kind: OptionFacts['kind'], { decimal }: Preferences): string | undefined {
  if (kind === 'room') {
    const rooms = roomsRead.safeParse(value);
    if (!rooms.success) return undefined;
    const area = rooms.data.rooms.reduce((sum, { outline }) => sum + doubleArea(outline), 0n) / 2n;
    return sayArea(area, { units: rooms.data.units, decimal });
  }
  if (kind === 'plank') {
    const plank = plankRead.safeParse(value);
    if (!plank.success) return undefined;
    const { units, plank: read } = plank.data;
    const [width, length] = [read.width, read.length].map((side) => sayCut(side, { units, decimal }));
    return `${width} × ${length}, ${read.perCarton} per box`;
  }
  if (kind === 'pattern') return patternRead.safeParse(value).data?.name;
  return typeof value === 'string' || typeof value === 'number' ? String(value) : undefined;
}

const units = z.enum(['imperial', 'metric']);
const side = z.custom<Length>((one) => typeof one === 'number');
const roomsRead = z.object({
  units,
  rooms: z.array(z.object({ outline: z.array(z.custom<Point>(Array.isArray)) })).min(1),
});
const patternRead = z.object({ name: z.string() });
const plankRead = z.object({ units, plank: z.object({ width: side, length: side, perCarton: z.number() }) });
