/** What was found at the place: free words, screened so that no wording gets round what is unsafe. */

import { distance } from 'fastest-levenshtein';
import { notPlain, rotWhere } from '../words/patch-found.ts';
import {
  BENEATH,
  DECAY,
  FRAME,
  HARMLESS,
  HAZARD_SPELLINGS,
  HAZARD_WORDS,
  HAZARDS,
  type Hazard,
  HURT,
  MOULD,
  PANEL,
  SAFE_CLAUSE,
  UNSURE,
} from './place-hazard.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './room-plain.ts';

/** Hazards named, the gravest first, and whether mould was, or rot in the panel. */
export interface Found {
  readonly hazards: readonly Hazard[];
  readonly mould: boolean;
  readonly rot: boolean;
}

export const NOTHING_FOUND: Found = { hazards: [], mould: false, rot: false };

const LONGEST_TEXT = 400;

/** Free words as what was found; words that may be a hazard and are not known are asked back. Never throws. */
export function readFound(text: string, reading: Reading): Read<Found> {
  return screened(text, reading, 'unsure');
}

/** Screens words left over in another option; `fix` is what to type instead when they are not plain. */
export function screened(text: string, reading: Reading, fix?: string): Read<Found> {
  const got = { option: reading.option, got: text };
  if (text.length > LONGEST_TEXT) return unread(notPlain(got, `${text.slice(0, 40)}…`, fix));
  const rest = doubtful(text);
  const found = foundIn(rest);
  if (found.hazards.length > 0) return read(found);
  if (found.rot && !PANEL.test(rest)) return unread(rotWhere(got));
  const stranger = rest.split(/[^\p{L}\p{N}'-]+/u).find((word) => /\p{L}/u.test(word) && !HARMLESS.has(word));
  return stranger === undefined ? read(found) : unread(notPlain(got, stranger, fix));
}

const ROOM_KINDS =
  /(?<![a-z])(?:electric(?:al|s)?|power|boiler|heat(?:er|ing)|gas|meter|pipe|vent|duct|sprinkler) (?:room|closet|cupboard)(?![a-z])/g;

/** Hazards in words that stand where no finding is asked for: a room’s name, a sentence. A room may be called after its boiler. */
export function foundAside(text: string): Found {
  return foundIn(doubtful(text.slice(0, 2 * LONGEST_TEXT)).replace(ROOM_KINDS, ' '));
}

/** What is left of a text without the clauses that say all is well. */
function doubtful(text: string): string {
  const plain = mended(plainSigns(withoutHidden(text.normalize('NFKC'), ' ').normalize('NFC')).replace(/\s+/g, ' '));
  const clauses = plain
    .split(/[,;.!\n]+|(?<![a-z])but(?![a-z])/)
    .map((clause) => clause.trim())
    .filter((clause) => clause !== '' && !SAFE_CLAUSE.test(clause));
  // What lies between joists lies in the panel.
  return clauses.join(' , ').replace(/(?<![a-z])between (?:the |two |my )?joists?(?![a-z])/g, '');
}

function foundIn(rest: string): Found {
  return { hazards: hazardsIn(rest), mould: MOULD.test(rest), rot: DECAY.test(rest) };
}

/** All hazards of several places and words, the gravest first. */
export function together(...all: readonly Found[]): Found {
  const named = new Set(all.flatMap(({ hazards }) => hazards));
  return {
    hazards: HAZARDS.filter((hazard) => named.has(hazard)),
    mould: all.some(({ mould }) => mould),
    rot: all.some(({ rot }) => rot),
  };
}

function hazardsIn(rest: string): readonly Hazard[] {
  const named = new Set<Hazard>();
  for (const hazard of HAZARDS) if (hazard !== 'unsure' && HAZARD_WORDS[hazard].test(rest)) named.add(hazard);
  // Where decay or hurt is told beside what carries, it is taken to be in what carries.
  if ((FRAME.test(rest) || BENEATH.test(rest)) && (DECAY.test(rest) || HURT.test(rest))) named.add('structure');
  if (UNSURE.test(rest)) named.add('unsure');
  return HAZARDS.filter((hazard) => named.has(hazard));
}

/** Letters spaced or dotted out drawn together, doubled separators gone, and hazards misspelt by a letter spelt right. */
function mended(plain: string): string {
  const drawn = plain
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/(?<![a-z])(?:[a-z][ .*_-]){2,}[a-z](?![a-z])/g, (letters) => letters.replace(/[^a-z]/g, ''))
    .replace(/[_*]/g, ' ')
    .replace(/(?<=[a-z])[01345$@](?=[a-z])/g, (sign) => LETTERS[sign] ?? sign);
  return drawn.replace(/[a-z]{5,}/g, (word) => {
    if (HARMLESS.has(word)) return word;
    return HAZARD_SPELLINGS.find((known) => known[0] === word[0] && isSlip(word, known)) ?? word;
  });
}

/** A letter off, two in a long word, or letters of the word in another order. */
function isSlip(word: string, known: string): boolean {
  const letters = (text: string): string => [...text].sort().join('');
  const most = word.length >= 8 || letters(word) === letters(known) ? 2 : 1;
  return distance(word, known) <= most;
}

const LETTERS: Readonly<Record<string, string>> = {
  '0': 'o',
  '1': 'i',
  '3': 'e',
  '4': 'a',
  '5': 's',
  $: 's',
  '@': 'a',
};
