/** Counts, percentages and choices as people type them. */

import { closest } from 'fastest-levenshtein';
import { notACount, notAmong, notAPercent } from '../text/length-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

/** A whole number from `least` to `most`; `none` is 0. */
export function readCount(text: string, reading: Reading, least: number, most: number): Read<number> {
  const match = /^(?:(\d{1,9})|none|no)$/i.exec(text.trim().replace(/[,\s](?=\d{3}\b)/g, ''));
  const value = match ? Number(match[1] ?? 0) : Number.NaN;
  if (!(value >= least && value <= most)) return unread(notACount({ option: reading.option, got: text }, least, most));
  return read(value);
}

/** A percentage from 0 to 100 in hundredths of a percent: `8.25 %`, `8,25`, `none`. */
export function readPercent(text: string, reading: Reading): Read<number> {
  const match = /^(?:(\d{1,3})(?:[.,](\d{1,2}))?\s*(?:%|percent|per cent|pct)?|none|no)$/i.exec(text.trim());
  const value = match ? Number(match[1] ?? 0) * 100 + Number((match[2] ?? '').padEnd(2, '0')) : Number.NaN;
  if (!(value >= 0 && value <= 10_000)) return unread(notAPercent({ option: reading.option, got: text }));
  return read(value);
}

/** One of a few words; a near miss is answered with the nearest. */
export function readChoice<const T extends string>(
  text: string,
  reading: Reading,
  choices: readonly [T, ...T[]],
): Read<T> {
  const word = text.trim().toLowerCase();
  const choice = choices.find((candidate) => candidate === word);
  if (choice !== undefined) return read(choice);
  return unread(
    notAmong(
      { option: reading.option, got: text },
      choices,
      closest(word.slice(0, 40), choices as unknown as string[]),
    ),
  );
}
