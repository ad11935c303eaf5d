/** What carries debris away, and the size of a trailer. */

import { LITRES_PER_CUBIC_YARD } from '../prep/tearout-amounts.ts';
import { notAHaul } from '../text/prep-problems-text.ts';
import { TICKS_PER_METRE } from '../units/length.ts';
import { readLengthIn, unitIn } from './length.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { figureOf } from './weight.ts';

/** How debris leaves; a trailer with the litres it holds. */
export type Haul = { readonly kind: 'pickup' | 'container' } | { readonly kind: 'trailer'; readonly litres: number };

const LITRES: readonly (readonly [RegExp, number])[] = [
  [/^(?:cu\.? ?yds?|cubic yards?|yd3|yd³|yds?|yards?)$/, LITRES_PER_CUBIC_YARD],
  [/^(?:cu\.? ?ft|cubic (?:foot|feet)|ft3|ft³)$/, LITRES_PER_CUBIC_YARD / 27],
  [/^(?:cu\.? ?m|cubic met(?:re|er)s?|m3|m³)$/, 1000],
  [/^(?:l|lit(?:re|er)s?)$/, 1],
];

/** `pickup`, `container`, `trailer 3 cu yd`, `trailer 2 m³`, `trailer 5 x 8 x 2 ft`. */
export function readHaul(text: string, reading: Reading): Read<Haul> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  if (/^(?:pick-?up|pick up|truck)(?: truck)?$/.test(plain)) return read({ kind: 'pickup' });
  if (/^(?:container|roll-?off|skip)$/.test(plain)) return read({ kind: 'container' });
  const size = /^trailer,? (?:of )?(.+)$/.exec(plain)?.[1] ?? '';
  const litres = volumeOf(size) ?? boxOf(size, reading) ?? Number.NaN;
  if (!(litres >= 50 && litres <= 100_000)) return unread(notAHaul({ option: reading.option, got: text }));
  return read({ kind: 'trailer', litres });
}

function volumeOf(size: string): number | undefined {
  const match = /^(\d{1,5}(?:[.,]\d{1,3})?) ?(.+)$/.exec(size);
  const litres = LITRES.find(([word]) => word.test(match?.[2] ?? ''))?.[1];
  return match?.[1] && litres !== undefined ? figureOf(match[1]) * litres : undefined;
}

function boxOf(size: string, reading: Reading): number | undefined {
  const sides = size.split(/ ?(?:x|×|by) ?/);
  const unit = unitIn(size) ?? (reading.habits.units === 'metric' ? 'm' : 'ft');
  const read = sides.flatMap((side) => {
    const length = readLengthIn(side, reading, unit);
    return length.ok ? [length.value / TICKS_PER_METRE] : [];
  });
  return sides.length === 3 && read.length === 3 ? read.reduce((product, side) => product * side, 1000) : undefined;
}
