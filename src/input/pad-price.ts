/** What a separate pad costs: an amount of money for an area. */

import { padPrice } from '../text/floor-text.ts';
import { SQUARE_TICKS_PER_SQUARE_FOOT, SQUARE_TICKS_PER_SQUARE_METRE } from '../units/length.ts';
import { readPrice } from './price.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import type { Price } from './told.ts';

/** A price for `per` square ticks. */
export interface AreaPrice {
  readonly price: Price;
  readonly per: bigint;
}

/** `$0.45/sq ft`, `0,90 € per m²`; `none` is undefined. */
export function readPadPrice(text: string, reading: Reading): Read<AreaPrice | undefined> {
  if (/^(?:none|no|0)$/i.test(text.trim())) return read(undefined);
  const typed =
    /^(.+?)(?<!\s)\s*(?:\/|per|a|pro)\s*(sq\.?\s*(?:ft|feet|foot)|square (?:foot|feet)|sqft|ft²|m²|m2|sq\.?\s*m|square met(?:er|re)s?)\.?$/i.exec(
      text.trim(),
    );
  const price = typed?.[1] ? readPrice(typed[1], reading) : undefined;
  if (!typed || !price?.ok) return unread(padPrice(reading.option, text));
  const per = /f/i.test(typed[2] ?? '') ? SQUARE_TICKS_PER_SQUARE_FOOT : SQUARE_TICKS_PER_SQUARE_METRE;
  return read({ price: price.value, per });
}
