/** What is done with a list of lines of one's own: shown, searched, one added or removed. */

import { readInTime } from '../workers/time-limits.ts';
import { plainSigns, withoutHidden } from './rooms/room-plain.ts';

export type ListDeed =
  | { readonly do: 'show' }
  | { readonly do: 'search'; readonly words: string }
  /** Counted from 1, as it is shown. */
  | { readonly do: 'remove'; readonly place: number }
  | { readonly do: 'add'; readonly text: string };

/** A text as a deed on a list; whatever is no other deed is a line to add, without the word that says so. */
export function readListDeed(typed: string, adding: RegExp): ListDeed {
  return readInTime(() => listDeedIn(typed, adding));
}

function listDeedIn(typed: string, adding: RegExp): ListDeed {
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
