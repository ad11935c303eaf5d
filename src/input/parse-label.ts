/** Names and notes of people's own: any text in one line, without what cannot be seen. */

import { labelEmpty, labelTooLong } from '../text/length-problems-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-text.ts';

/** Signs that cannot be seen, or that turn the direction of what follows them. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]+/gu;
/** Joins the parts of an emoji: the one hidden sign that belongs to what is seen. */
const JOINER = /\p{Extended_Pictographic}\uFE0F?\u200D(?=\p{Extended_Pictographic})/gu;

/** A text in one line with single spaces and without hidden signs, at most `most` characters; quotes round it are dropped. */
export function readLabel(text: string, reading: Reading, most: number): Read<string> {
  const label = singleLine(text);
  const bare = /^(["'“”‘’«»])(.+)(["'“”‘’«»])$/u.exec(label)?.[2]?.trim() ?? label;
  const got = { option: reading.option, got: text };
  if (!/[\p{L}\p{N}\p{Extended_Pictographic}]/u.test(bare)) return unread(labelEmpty(got));
  if (bare.length > most) return unread(labelTooLong(got, most, shortened(bare, most)));
  return read(bare);
}

/** A text in one line, as `readLabel` keeps it. */
export function singleLine(text: string): string {
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

// What is done with a list of lines of one's own: shown, searched, one added or removed.

type ListAction =
  | { readonly do: 'show' }
  | { readonly do: 'search'; readonly words: string }
  /** Counted from 1, as it is shown. */
  | { readonly do: 'remove'; readonly place: number }
  | { readonly do: 'add'; readonly text: string };

/** A text as a deed on a list; whatever is no other deed is a line to add, without the word that says so. */
export function readListAction(typed: string, adding: RegExp): ListAction {
  return readInTime(() => listActionIn(typed, adding));
}

function listActionIn(typed: string, adding: RegExp): ListAction {
  const text = withoutHidden(typed, ' ').replace(/\s+/g, ' ').trim();
  const plain = plainSigns(text);
  if (/^(?:list|show|all|read|notes?|log|found)?$/.test(plain)) return { do: 'show' };
  const search = /^(?:search|look for|find)(?: for)?[: ]{1,9}(?<words>.+)$/.exec(plain)?.groups?.words;
  if (search !== undefined) return { do: 'search', words: search.replace(/^["']|["']$/g, '') };
  const place =
    /^(?:remove|delete|strike|drop|take out)(?: (?:note|number|no\.?|line|finding))? ?#?(?<place>\d{1,4})$/.exec(plain);
  if (place) return { do: 'remove', place: Number(place.groups?.place) };
  const added = adding.exec(text);
  const rest = added ? text.slice(added[0].length) : text;
  const line = rest.replace(/^[\s:,-]+/, '').trim();
  // Quotes round all of it are the asker's own marks for where it begins and ends.
  const quoted = /^(["“„«])(?<inside>[^"“”„«»]+)["”“»]$/.exec(line)?.groups?.inside;
  return { do: 'add', text: quoted ?? line };
}
