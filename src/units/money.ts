/** Money in whole cents of one currency, and the exact sums a price needs. */

declare const centsBrand: unique symbol;

/** Whole cents (hundredths of the asker's currency). */
export type Cents = number & { readonly [centsBrand]: true };

/** Cents from a whole number. Throws a RangeError when it is not a safe whole number. */
export function cents(value: number): Cents {
  if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number of cents: ${value}`);
  return value as Cents;
}

/** `amount` × `numerator` ÷ `denominator`, rounded once, half a cent up. Exact: the product is a bigint. */
export function portion(amount: bigint, numerator: bigint, denominator: bigint): Cents {
  if (denominator <= 0n) throw new RangeError(`cannot divide by ${denominator}`);
  const doubled = 2n * amount * numerator + denominator;
  const half = 2n * denominator;
  const quotient = doubled >= 0n ? doubled / half : -((-doubled + half - 1n) / half);
  return cents(Number(quotient));
}
