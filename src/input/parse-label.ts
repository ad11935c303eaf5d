/** Names and notes: any text as a single line without invisible characters, and actions on lists of them. */

import { labelEmpty, labelTooLong } from '../text/length-problems-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-text.ts';

/** Characters that are invisible or change the direction of the text after them. */
const HIDDEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]+/gu;
/** Joins the parts of an emoji, the one invisible character that is part of something visible. */
const JOINER = /\p{Extended_Pictographic}\uFE0F?\u200D(?=\p{Extended_Pictographic})/gu;

/**
 * Text as one line with single spaces and no invisible characters, at most `most` characters; enclosing quotes are
 * dropped.
 */
export function readLabel(text: string, reading: Reading, most: number): Read<string> {
  const label = singleLine(text);
  const bare = /^(["'“”‘’«»])(.+)(["'“”‘’«»])$/u.exec(label)?.[2]?.trim() ?? label;
  const got = { option: reading.option, got: text };
  if (!/[\p{L}\p{N}\p{Extended_Pictographic}]/u.test(bare)) return unread(labelEmpty(got));
  if (bare.length > most) return unread(labelTooLong(got, most, shortened(bare, most)));
  return read(bare);
}

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

// Actions on a user's list: show, search, add or remove a line.

type ListAction =
  | { readonly do: 'show' }
  | { readonly do: 'search'; readonly words: string }
  /** Counted from 1, as displayed. */
  | { readonly do: 'remove'; readonly place: number }
  | { readonly do: 'add'; readonly text: string };

/** Parses an action; anything that isn't another action is a line to add, without its introductory word. */
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
  // Quotes around everything only mark where it begins and ends.
  const quoted = /^(["“„«])(?<inside>[^"“”„«»]+)["”“»]$/.exec(line)?.groups?.inside;
  return { do: 'add', text: quoted ?? line };
}
