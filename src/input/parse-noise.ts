/** The noises of a day, parsed from a list of tools, hours and levels. */

import type { Noise } from '../prep/noise-dose.ts';
import { dayTooLong, notADay } from '../text/prep-problems-text.ts';
import { readHours, weightFigure } from './parse-weight.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

/** A noise and its source. */
export interface NamedNoise extends Noise {
  readonly name: string;
}

const LONGEST = 500;
const MOST = 20;
const LOUDEST = 160;
const PART = /^(?<name>[^\d½]*)(?<hours>[\d½].*) (?:at|@) (?<level>\d{1,3}(?:[.,]\d)?) ?(?:db ?\(?a?\)?|decibels?)?$/i;

/** `none`, or noises separated by commas or semicolons: `saw 2 h at 100, vacuum 45 min at 85`. At most 24 h in all. */
export function readDay(text: string, reading: Reading): Read<readonly NamedNoise[]> {
  const plain = text.trim().replace(/\s+/g, ' ');
  const bad = () => unread(notADay({ option: reading.option, got: text }));
  if (/^(?:none|no)$/i.test(plain)) return read([]);
  if (plain.length > LONGEST) return bad();
  const parts = plain.split(/ ?; ?| ?,(?!\d) ?| and (?=\D)/);
  const noises = parts.flatMap((part): NamedNoise[] => {
    const groups = PART.exec(part)?.groups;
    const hours = readHours(groups?.hours ?? '');
    const level = weightFigure(groups?.level ?? '');
    const sound = hours !== undefined && hours > 0 && level > 0 && level <= LOUDEST;
    return sound && hours !== undefined
      ? [{ name: groups?.name?.replace(/(?<![ :,])[ :,]+$/, '') || 'noise', hours, level }]
      : [];
  });
  if (noises.length < parts.length || parts.length > MOST) return bad();
  const total = noises.reduce((sum, { hours }) => sum + hours, 0);
  return total > 24 ? unread(dayTooLong({ option: reading.option, got: text })) : read(noises);
}
