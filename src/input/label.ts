/** Names and notes of people's own: any text in one line, without what cannot be seen. */

import { labelEmpty, labelTooLong } from '../text/length-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

/** Signs that cannot be seen, or that turn the direction of what follows them. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]+/gu;
/** Joins the parts of an emoji: the one hidden sign that belongs to what is seen. */
const JOINER = /\p{Extended_Pictographic}\uFE0F?\u200D(?=\p{Extended_Pictographic})/gu;

/** A text in one line with single spaces and without hidden signs, at most `most` characters; quotes round it are dropped. */
export function readLabel(text: string, reading: Reading, most: number): Read<string> {
  const label = oneLine(text);
  const bare = /^(["'“”‘’«»])(.+)(["'“”‘’«»])$/u.exec(label)?.[2]?.trim() ?? label;
  const got = { option: reading.option, got: text };
  if (!/[\p{L}\p{N}\p{Extended_Pictographic}]/u.test(bare)) return unread(labelEmpty(got));
  if (bare.length > most) return unread(labelTooLong(got, most, shortened(bare, most)));
  return read(bare);
}

/** A text in one line, as `readLabel` keeps it. */
export function oneLine(text: string): string {
  const joined = text.normalize('NFC').replace(JOINER, (emoji) => `${emoji.slice(0, -1)}\u{F0000}`);
  return joined
    .replace(/\s+/gu, ' ')
    .replace(HIDDEN, (found) => found.replace(/[^\u{F0000}]/gu, ''))
    .replaceAll('\u{F0000}', '\u200D')
    .trim();
}

function shortened(text: string, most: number): string {
  return text
    .slice(0, most)
    .replace(/[\uD800-\uDBFF]$/, '')
    .trim();
}
