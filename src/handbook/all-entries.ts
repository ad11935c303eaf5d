/** Every entry of the handbook, by topic in the order in which help lists them. */

import { ASBESTOS_FLOORS_ENTRIES } from './asbestos-floors.ts';
import { BASEBOARDS_ENTRIES } from './baseboards.ts';
import { BEFORE_AND_AFTER_ENTRIES } from './before-and-after.ts';
import { BUYING_ENTRIES } from './buying.ts';
import { CONCRETE_SLAB_ENTRIES } from './concrete-slab.ts';
import { COVERING_OVER_ENTRIES } from './covering-over.ts';
import { DAMP_AND_SMELL_ENTRIES } from './damp-and-smell.ts';
import type { Entry } from './entry.ts';
import { EXPANSION_ENTRIES } from './expansion.ts';
import { FIRM_SUBFLOOR_ENTRIES } from './firm-subfloor.ts';
import { FIXTURES_ENTRIES } from './fixtures.ts';
import { FLAT_FLOOR_ENTRIES } from './flat-floor.ts';
import { FLOOR_CARE_ENTRIES } from './floor-care.ts';
import { FLOOR_TROUBLES_ENTRIES } from './floor-troubles.ts';
import { LAYING_ENTRIES } from './laying.ts';
import { LEAD_AND_DUST_ENTRIES } from './lead-and-dust.ts';
import { MENDING_ENTRIES } from './mending.ts';
import { OPENINGS_ENTRIES } from './openings.ts';
import { PAD_AND_SOUND_ENTRIES } from './pad-and-sound.ts';
import { PEOPLE_ENTRIES } from './people.ts';
import { PLANK_DIRECTION_ENTRIES } from './plank-direction.ts';
import { PLANNING_ENTRIES } from './planning.ts';
import { ROOM_CLIMATE_ENTRIES } from './room-climate.ts';
import { ROWS_ENTRIES } from './rows.ts';
import { SPECIAL_PLACES_ENTRIES } from './special-places.ts';
import { TEARING_OUT_ENTRIES } from './tearing-out.ts';
import { TOOLS_AND_BODY_ENTRIES } from './tools-and-body.ts';
import { TRANSITIONS_ENTRIES } from './transitions.ts';
import { TRIM_FASTENING_ENTRIES } from './trim-fastening.ts';
import { TRIM_JOINTS_ENTRIES } from './trim-joints.ts';

export const ENTRIES: readonly Entry[] = [
  ...ASBESTOS_FLOORS_ENTRIES,
  ...BASEBOARDS_ENTRIES,
  ...BEFORE_AND_AFTER_ENTRIES,
  ...BUYING_ENTRIES,
  ...CONCRETE_SLAB_ENTRIES,
  ...COVERING_OVER_ENTRIES,
  ...DAMP_AND_SMELL_ENTRIES,
  ...EXPANSION_ENTRIES,
  ...FIRM_SUBFLOOR_ENTRIES,
  ...FIXTURES_ENTRIES,
  ...FLAT_FLOOR_ENTRIES,
  ...FLOOR_CARE_ENTRIES,
  ...FLOOR_TROUBLES_ENTRIES,
  ...LAYING_ENTRIES,
  ...LEAD_AND_DUST_ENTRIES,
  ...MENDING_ENTRIES,
  ...OPENINGS_ENTRIES,
  ...PAD_AND_SOUND_ENTRIES,
  ...PEOPLE_ENTRIES,
  ...PLANK_DIRECTION_ENTRIES,
  ...PLANNING_ENTRIES,
  ...ROOM_CLIMATE_ENTRIES,
  ...ROWS_ENTRIES,
  ...SPECIAL_PLACES_ENTRIES,
  ...TEARING_OUT_ENTRIES,
  ...TOOLS_AND_BODY_ENTRIES,
  ...TRANSITIONS_ENTRIES,
  ...TRIM_FASTENING_ENTRIES,
  ...TRIM_JOINTS_ENTRIES,
];

const BY_ID = new Map(ENTRIES.map((entry) => [entry.id, entry]));

export function entryOf(id: string): Entry | undefined {
  return BY_ID.get(id);
}

/** Entries that a few typed letters or words may mean, likeliest first: by how the title begins, by title, id or topic, by how people ask. */
export function entriesLike(typed: string): readonly Entry[] {
  const words = [
    ...new Set(
      typed
        .slice(0, LONGEST_SEARCH)
        .toLowerCase()
        .match(/[a-z0-9/]+/g) ?? [],
    ),
  ];
  if (words.length > MOST_WORDS) return [];
  const named = ENTRIES.filter(({ id, title, topic }) => holdsAll(`${title} ${id} ${topic}`.toLowerCase(), words));
  const first = named.filter(({ title }) => title.toLowerCase().startsWith(words[0] ?? ''));
  const asked = ENTRIES.filter(({ phrases }) => phrases.some((phrase) => holdsAll(phrase, words)));
  return [...new Set([...first, ...named, ...asked])];
}

/** Longer texts are no search. */
const LONGEST_SEARCH = 200;
const MOST_WORDS = 12;

/** Whether every typed word begins a word of the text. */
function holdsAll(text: string, words: readonly string[]): boolean {
  const spaced = ` ${text.replace(/[^a-z0-9/]+/g, ' ')}`;
  return words.every((word) => spaced.includes(` ${word}`));
}
