/** Problems with planks and prices: what is expected where one could not be read, and how a doubtful one was read. */

/** A plank as this asker would type one: its size, and what a carton holds. */
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
  return 'A plank is from 1 in (25 mm) to 1 m wide and at most 4 m (13 ft) long: is the unit the one you meant?';
}

export function cartonMissing(): string {
  return 'How much is in a carton is not told: the number of planks, or the area it covers.';
}

export function countOutOfRange(most: number): string {
  return `A carton holds from 1 to ${most} planks.`;
}

export function planksNotWhole(area: string, planks: string): string {
  return `${area} a carton comes to ${planks} planks of this size, more than 2 % from a whole number: check the size, or tell the count.`;
}

export function areaAgainstCount(printed: string, count: number, product: string): string {
  return `${printed} a carton is printed, but ${count} planks of this size come to ${product}, more than 2 % apart: one of the figures is wrong.`;
}

export function thickOutOfRange(): string {
  return 'A plank is at most 1 in (25 mm) thick, and thicker than nothing.';
}

export function notOfAPlank(): string {
  return 'This says nothing of the size, the carton, the price, the thickness, the pad or the lock of a plank.';
}

export function priceOfWhat(): string {
  return 'A price needs to say what it buys: a carton, a sq ft, a m² or a plank.';
}

export function priceMark(): string {
  return 'A price has a mark or a code: $, €, £, USD, EUR, GBP, CAD, AUD or CHF.';
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

/** How a size without a unit was read. */
export function sizeReadIn(typed: string, unit: string): string {
  return `${typed} read as ${unit}`;
}

/** A size typed with its longer side first. */
export function sizeTurned(typed: string, width: string, length: string): string {
  return `${typed} read as ${width} wide, ${length} long`;
}

/** A number a carton that is no count of planks. */
export function cartonAreaRead(typed: string, area: string): string {
  return `${typed} read as ${area} a carton`;
}

/** The planks in a carton, worked out from its area. */
export function countFromArea(area: string, count: number): string {
  return `${area} a carton read as ${count} planks`;
}

/** A printed area that stands beside size × count. */
export function areaStands(printed: string, count: number, product: string): string {
  return `a carton covers ${printed} as printed; ${count} planks of this size come to ${product}`;
}

/** A price a foot. */
export function footPriceRead(typed: string): string {
  return `${typed} read as a price per sq ft`;
}

/** A lone length after the size. */
export function thicknessRead(typed: string): string {
  return `${typed} read as the thickness`;
}

/** An amount without a currency, or finer than a cent. */
export function priceRead(typed: string, price: string): string {
  return `${typed} read as ${price}`;
}
