/** The year a house was built, read from what people type; a year is given only where the words leave no earlier one open. */

import { yearRead, yearUnknown } from '../text/prep-problems-text.ts';
import { type Read, type Reading, read } from './reading.ts';

const FILLER = /\b(?:built|build|was|is|it|its|the|in|year|house|home|flat|from|dated|dates|constructed|completed)\b/g;
const ABOUT = /^(?:about|around|circa|ca|c|approx|approximately|roughly|maybe|probably|say|perhaps)\b|\?$|\bish$/g;
/** How far a year told as “about” may be off. */
const MARGIN = 5;

/** The earliest year that the text leaves open; undefined, and noted, where it tells none for sure. Never a Problem. */
export function readHouseYear(text: string, reading: Reading): Read<number | undefined> {
  const typed = text.trim();
  const plain = typed
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[‘’ʼ`´]/g, "'")
    .replace(/[–—−]/g, '-')
    .replace(/~/g, 'about ')
    .replace(/(?<![.,!])[.,!]+$|\.(?=\s)/g, '')
    .replace(/\s+/g, ' ');
  const year = earliest(plain);
  const known = year !== undefined && year >= 1500 && year <= 2100;
  if (!known && !/^(?:unknown|not known|not sure|don't know|no idea)$/.test(plain)) reading.note(yearUnknown(typed));
  if (known && plain !== String(year)) reading.note(yearRead(typed, year));
  return read(known ? year : undefined);
}

function earliest(plain: string): number | undefined {
  const words = plain.replace(FILLER, ' ').replace(/\s+/g, ' ').trim();
  const later = /^(after|post|since)[ -]?(\d{4})$/.exec(words);
  if (later) return Number(later[2]) + (later[1] === 'since' ? 0 : 1);
  const atLeast = /^(\d{4}) (?:or|and) (?:later|newer|after|younger)$/.exec(words);
  if (atLeast) return Number(atLeast[1]);
  const about = words.search(ABOUT) >= 0;
  const bare = words.replace(ABOUT, '').trim();
  const one = single(bare);
  if (one !== undefined) return about ? one - MARGIN : one;
  const range = /^(?:between )?(\d{4}) ?(?:-|to|or|and) ?(\d{4}|\d{2})$/.exec(bare);
  if (!range) return undefined;
  const [from, to] = [Number(range[1]), Number(range[2])];
  return Math.min(from, to < 100 ? from - (from % 100) + to : to) - (about ? MARGIN : 0);
}

/** A year, a decade by its first year, or a year of last century by its two figures with their mark. */
function single(plain: string): number | undefined {
  const year = /^(\d{4})$/.exec(plain);
  if (year) return Number(year[1]);
  const decade = /^(?:(?:early|mid|late)[ -]?)?(\d{3}0)'?s$/.exec(plain);
  if (decade) return Number(decade[1]);
  const short = /^(?:(?:early|mid|late)[ -]?)?'?([3-9]0)'?s$/.exec(plain) ?? /^'([3-9]\d)$/.exec(plain);
  return short ? 1900 + Number(short[1]) : undefined;
}
