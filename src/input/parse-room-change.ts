/** Reads changes to the rooms of a project: add one, give its floor, leave it out of the job. */

import { readInTime } from '../workers/time-limits.ts';
import { folded } from './rooms/room-text.ts';

type Rooms = readonly { readonly name: string }[];

export type RoomFact = 'floor' | 'openings' | 'note';

/** One change to the rooms; the text of a `shape` goes to the room reader, with or without a name. */
export type RoomAction =
  | { readonly do: 'list' }
  | { readonly do: 'show'; readonly name: string }
  /** `more`: another room, even where one of its name is there. */
  | { readonly do: 'shape'; readonly text: string; readonly name?: string; readonly more?: boolean }
  | { readonly do: 'remove'; readonly name: string }
  | { readonly do: 'rename'; readonly name: string; readonly to: string }
  | { readonly do: 'scope'; readonly name: string; readonly within: boolean }
  | { readonly do: 'fact'; readonly name: string; readonly fact: RoomFact; readonly text: string }
  /** `note`: its number, counted from 1, or all of them. */
  | { readonly do: 'unnote'; readonly name: string; readonly note: number | 'all' };

const OUT =
  /^(?:is |it |it's |that |should be |to be )*(?:out(?: of (?:the )?(?:scope|job|project))?|not in (?:the )?(?:scope|job)|stays?(?: as (?:it is|is))?|stays put|(?:is )?left(?: as (?:it is|is))?|leave(?: as (?:it is|is))?|as it is|excluded|not (?:included|part of (?:it|the job))|skip(?:ped)?|untouched|no new floor)[.!]?$/;
const IN =
  /^(?:is |it |it's |should be )*(?:back )?(?:in(?: (?:the )?(?:scope|job|project))?|in again|included|part of (?:it|the job)|too|as well)[.!]?$/;
const FACTS: readonly (readonly [RoomFact, RegExp])[] = [
  ['floor', /^(?:(?:has|with) )?(?:the )?(?:old |current )?floor(?: now)?(?: is)?\s*[:=]?\s+(.+)$/is],
  ['floor', /^(?:has|with) (.+?) (?:on the floor|on it|down|now)$/is],
  ['floor', /^(?:has|with) ((?:\p{L}+ )?(?:carpet|laminate|vinyl|tiles?|lino(?:leum)?|hardwood|parquet))[.!]?$/isu],
  ['openings', /^(?:(?:has|with) )?(?:an? )?(?:openings?|doors?|doorways?)\s*[:=]?\s+(.+)$/is],
  ['note', /^(?:has )?notes?\s*[:=]?\s+(.+)$/is],
];

const NOTE_GONE =
  '(?:remove|delete|drop|clear|forget) (?:(?:the |all )?notes?(?: (?:no\\.? ?)?(?<note>\\d{1,2}))?|all the notes)';
const NOTE_GONE_OF = new RegExp(`^${NOTE_GONE} (?:of|from|in) (?:the )?(?<name>.+)$`, 'i');
const NOTE_GONE_HERE = new RegExp(`^${NOTE_GONE}$`, 'i');
/** A name between marks, which no inches stand before. */
const QUOTED_NAME = /(?<=^|[\s;,])["“”„]([\p{L}][\p{L}\p{N} '’-]*)["“”]/gu;

/** The change that a text asks for. Any other text is read as rooms and their shapes. Never throws. */
export function readRoomChange(text: string, rooms: Rooms): RoomAction {
  return readInTime(() => roomChangeIn(text, rooms));
}

function roomChangeIn(text: string, rooms: Rooms): RoomAction {
  const said = text.trim().replace(/\s+/g, ' ').replace(QUOTED_NAME, '$1');
  if (/^(?:|list|all|rooms?|show)$/i.test(said)) return { do: 'list' };
  const bare = said.replace(/^(?:please )?(?:the )?room (?=\S)/i, '').replace(/^(?:show|what is) (?=\S)/i, '');
  const noted = NOTE_GONE_OF.exec(bare)?.groups;
  if (noted) return { do: 'unnote', name: nameOf(noted.name ?? ''), note: noteOf(noted.note) };
  const verb =
    /^(add|new|edit|change|set|update|remove|delete|drop|rename|leave|skip|exclude|include|note)\b[: ]*(.*)$/is.exec(
      bare,
    );
  const [, word = '', rest = ''] = verb ?? [];
  const named = nameAt(rest, rooms);
  switch (word.toLowerCase()) {
    case 'remove':
    case 'delete':
    case 'drop':
      return { do: 'remove', name: nameOf(rest) };
    case 'rename': {
      const [from = '', to = ''] = nameOf(rest).split(/(?<!\s)\s+(?:to|as|into)\s+|(?:(?<!\s)\s+)?(?:->|→)\s*/i);
      return { do: 'rename', name: nameOf(from), to: nameOf(to) };
    }
    case 'leave':
    case 'skip':
    case 'exclude':
      return {
        do: 'scope',
        name: nameOf(named?.name ?? rest.replace(/ (?:as (?:it )?is|out|alone|untouched)$/i, '')),
        within: false,
      };
    case 'include':
      return { do: 'scope', name: nameOf(rest), within: true };
    case 'note':
      if (named && named.rest !== '') return { do: 'fact', name: named.name, fact: 'note', text: named.rest };
      break;
    case 'add':
    case 'new':
      return { do: 'shape', text: shapeOf(rest), more: true };
    case '':
      break;
    default:
      return factOf(rest, rooms) ?? { do: 'shape', text: shapeOf(rest) };
  }
  return factOf(bare, rooms) ?? scopeOf(bare) ?? { do: 'shape', text: bare };
}

/** Whether a room that the project doesn't have is part of the job. */
function scopeOf(text: string): RoomAction | undefined {
  const [, name, rest] = /^(\D{1,60}?) ((?:is |stays|out|left|not in|in scope|excluded|skip).*)$/i.exec(text) ?? [];
  if (name === undefined || rest === undefined) return undefined;
  const within = IN.test(rest.toLowerCase());
  return within || OUT.test(rest.toLowerCase()) ? { do: 'scope', name: nameOf(name), within } : undefined;
}

/** A fact about a room of the project: its scope, its floor, its doors, a note, or its new shape. */
function factOf(text: string, rooms: Rooms): RoomAction | undefined {
  const found = nameAt(text, rooms);
  if (!found) return undefined;
  const { name, rest } = found;
  if (rest === '') return { do: 'show', name };
  const noted = NOTE_GONE_HERE.exec(rest)?.groups;
  if (noted) return { do: 'unnote', name, note: noteOf(noted.note) };
  if (OUT.test(rest.toLowerCase())) return { do: 'scope', name, within: false };
  if (IN.test(rest.toLowerCase())) return { do: 'scope', name, within: true };
  for (const [fact, pattern] of FACTS) {
    const given = pattern.exec(rest)?.[1]?.trim();
    if (given) return { do: 'fact', name, fact, text: given };
  }
  return /^(?:is )?[\d.,'"½¼¾]|^(?:is )?walk\b/i.test(rest)
    ? { do: 'shape', name, text: rest.replace(/^is /i, '') }
    : undefined;
}

/** The longest of the rooms' names that a text begins with, and what follows it. */
function nameAt(text: string, rooms: Rooms): { readonly name: string; readonly rest: string } | undefined {
  const said = text
    .replace(/^(?:the|my|our) /i, '')
    .replace(/\s+/g, ' ')
    .trim();
  const plain = said.toLowerCase().replace(/[’‘]/g, "'");
  const fitting = rooms
    .filter(({ name }) => {
      const one = folded(name);
      return plain.startsWith(one) && !/^[\p{L}\p{N}]/u.test(plain.slice(one.length));
    })
    .sort((one, other) => other.name.length - one.name.length);
  const [room] = fitting;
  if (!room) return undefined;
  return {
    name: room.name,
    rest: said
      .slice(folded(room.name).length)
      .replace(/^[\s,:=–—-]+/, '')
      .replace(/^room(?: |$)/i, '')
      .trim(),
  };
}

function noteOf(number: string | undefined): number | 'all' {
  return number === undefined ? 'all' : Number(number);
}

function nameOf(text: string): string {
  return shapeOf(text)
    .replace(/^["'“”]+/, '')
    .replace(/(?<!["'“”.!])["'“”.!]+$/, '')
    .trim();
}

function shapeOf(text: string): string {
  return text.replace(/^(?:(?:a|an|the|my|our|another) )*(?:room (?=\p{L}))?/iu, '').trim();
}
