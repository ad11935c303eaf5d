/** The lengths within the text of a room, and how one is written in the place of another. */

import { type Length, TICKS_PER_INCH, TICKS_PER_MM } from '../../units/length.ts';
import { unitIn } from '../length.ts';
import { type Quantity, quantityAt } from '../length-quantity.ts';
import { plainText } from '../length-text.ts';
import { type LengthUnit, UNITS } from '../length-units.ts';
import type { Habits, Units } from '../reading.ts';

/** A sixty-fourth of an inch, in ticks. */
export const FINEST = TICKS_PER_INCH / 64;

/** A length in a plain text, in ticks, and where it stands. */
export interface Figure {
  readonly from: number;
  readonly to: number;
  readonly ticks: number;
}

/** Every length in a text, angles left out. */
export function figuresIn(text: string, habits: Habits): readonly Figure[] {
  const plain = plainText(text);
  const bare = unitIn(text) ?? (habits.units === 'metric' ? 'm' : 'ft');
  const reading = { option: 'room', habits, note: () => undefined };
  const figures: Figure[] = [];
  for (let at = 0; at < plain.length; at++) {
    if (!/[\d.]/.test(plain[at] ?? '')) continue;
    // A minus leaves out a corner here, and joins no two parts of one length.
    const part = plain.slice(0, at) + (/^.*?(?= [-+] )/.exec(plain.slice(at))?.[0] ?? plain.slice(at));
    const quantity = quantityAt(part, at, { reading, bare, sum: false });
    if (!quantity || 'expected' in quantity) continue;
    if (!/^ ?(?:°|deg)/.test(plain.slice(quantity.end)))
      figures.push({ from: at, to: quantity.end, ticks: ticksOf(quantity, bare) });
    at = quantity.end - 1;
  }
  return figures;
}

function ticksOf({ power, top, bottom }: Quantity, bare: LengthUnit): number {
  return Number(power === 0 ? top * UNITS[bare].ticks : top) / Number(bottom);
}

/** A length to 1/64 in or to 1 mm, whichever it is exactly, else in its own system. */
export function fine(length: Length, units: Units): string {
  const metric = length % TICKS_PER_MM === 0 && (units === 'metric' || length % FINEST !== 0);
  if (metric || (units === 'metric' && length % FINEST !== 0)) return `${Math.round(length / TICKS_PER_MM)} mm`;
  const all = Math.round(length / FINEST);
  const [feet, inches] = [Math.floor(all / (64 * 12)), Math.floor(all / 64) % 12];
  let [top, bottom] = [all % 64, 64];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const part = top === 0 ? '' : `${top}/${bottom}`;
  const inch = inches === 0 && part !== '' ? part : [inches, part].filter((one) => one !== '').join(' ');
  if (feet === 0) return `${inch}"`;
  return inch === '0' ? `${feet}'` : `${feet}' ${inch}"`;
}
