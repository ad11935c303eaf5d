/** Problems with planks and prices that could not be read, and how ambiguous ones were interpreted. */

import { byUnits } from './units-text.ts';

/** Its size and what is in a carton, as this user would type them. */
export function plankSizeExample(metric: boolean): string {
  return metric ? '180 x 1220 mm' : '6 x 48 in';
}

export function plankCountExample(): string {
  return '10 per carton';
}

export function plankTooLong(most: number): string {
  return `At most ${most} characters are read as a plank: its size, what a carton holds, and its price.`;
}

export function sizeMissing(): string {
  return 'A plank begins with its size: its width and its length with x or “by” between them.';
}

export function sizeOutOfRange(): string {
  return `A plank is from ${byUnits('1 in (25 mm) to 1 m wide and at most 4 m (13 ft)', '25 mm to 1 m wide and at most 4 m')} long: is the unit the one you meant?`;
}

export function cartonMissing(): string {
  return 'How much is in a box? Give the number of planks, or the area it covers.';
}

export function countOutOfRange(most: number): string {
  return `A carton holds from 1 to ${most} planks.`;
}

export function planksNotWhole(area: string, planks: string): string {
  return `${area} a carton comes to ${planks} planks of this size, more than 2% from a whole number: check the size, or give the count.`;
}

export function areaAgainstCount(printed: string, count: number, product: string): string {
  return `${printed} a carton is printed, but ${count} planks of this size come to ${product}, more than 2% apart: one of the figures is wrong.`;
}

export function thickOutOfRange(): string {
  return `A plank is at most ${byUnits('1 in (25 mm)', '25 mm')} thick, and thicker than nothing.`;
}

export function notOfAPlank(): string {
  return 'This isn’t a plank’s size, carton, price, thickness, pad or lock.';
}

export function priceOfWhat(): string {
  return 'A price needs to say what it buys: a carton, a sq ft, a m² or a plank.';
}

export function priceMark(): string {
  return 'A price needs a sign or a code: $, €, £, USD, EUR, GBP, CAD, AUD or CHF.';
}

export function priceTooHigh(most: string): string {
  return `A price is at most ${most}.`;
}

export function priceTwice(): string {
  return 'One price is enough: this is a second one.';
}

export function notAPrice(): string {
  return 'A price is an amount of money, such as $58 or 31.90 EUR.';
}

export function priceExample(currency: string): string {
  return `58 ${currency}`;
}

export function sizeReadIn(typed: string, unit: string): string {
  return `${typed} read as ${unit}`;
}

export function sizeTurned(typed: string, width: string, length: string): string {
  return `${typed} read as ${width} wide, ${length} long`;
}

/** A number per carton that can't be a count of planks. */
export function cartonAreaRead(typed: string, area: string): string {
  return `${typed} read as ${area} a carton`;
}

export function countFromArea(area: string, count: number): string {
  return `${area} a carton read as ${count} planks`;
}

/** The printed area counts even though size × count gives another. */
export function areaStands(printed: string, count: number, product: string): string {
  return `a carton covers ${printed} as printed; ${count} planks of this size come to ${product}`;
}

export function footPriceRead(typed: string): string {
  return `${typed} read as a price per sq ft`;
}

/** A single length after the size. */
export function thicknessRead(typed: string): string {
  return `${typed} read as the thickness`;
}

/** An amount without a currency, or with fractions of a cent. */
export function priceRead(typed: string, price: string): string {
  return `${typed} read as ${price}`;
}
