/** Findings on site in free text, screened so that no wording gets past an unsafe condition. */

import type { Hazard } from '../hazards/hazard.ts';
import { screenHere, tells } from '../hazards/screen.ts';
import { notPlain, rotWhere } from '../text/found-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { plainSigns, withoutHidden } from './rooms/room-text.ts';

type FoundHazard = Hazard | 'unsure';

/** Hazards mentioned, most serious first, and whether mold or rot in the panel was mentioned. */
export interface Found {
  readonly hazards: readonly FoundHazard[];
  readonly mould: boolean;
  readonly rot: boolean;
}

export const NOTHING_FOUND: Found = { hazards: [], mould: false, rot: false };

const LONGEST_TEXT = 400;

/** Complete clauses saying that the structure is sound or that something wasn't found; nothing else may be in them. */
const SOUND = '(?:sound|solid|dry|fine|good|ok|okay|hard|intact|undamaged|healthy)';
const NOTHING =
  '(?:rot|decay|sagging|sag|sewage|asbestos|mou?ld|wir(?:es|ing)|cables?|pipes?|plumbing|ducts?|gas(?: lines?)?|insects|termites|damage|hazards?|problems?|hidden lines|tubes?)';
const SAFE_CLAUSE = new RegExp(
  `^(?:none|no|nothing|n/a|nothing (?:else|found|special|there)|(?:and )?(?:the |all |all the )?joists?(?: (?:is|are|look|looks|feel|feels|seem|seems))?(?: all| both| still)? ${SOUND}(?: and ${SOUND})*|(?:and )?no (?:sign of |signs of )?${NOTHING}(?:(?: or| and| nor) (?:no )?${NOTHING})*(?: (?:found|seen|there))?)$`,
);

/** Words of a sound job that mean no hazard by themselves. */
const HARMLESS: ReadonlySet<string> = new Set(
  `a an the in on at of off near by from to is are was were it its and or only just also some any all still very my our we i there this that here one two three few small big large little old wide long tall high low deep thick thin
  water moisture stain stains stained staining spot spots mark marks damage damaged soft spongy damp wet dry dried shower washing machine dishwasher fridge leak leaks leaked leaking spill spilled spills rain window pet dog cat urine pee smell smells smelly odor odour
  panel panels subfloor subflooring sub floor floors plywood ply osb particleboard particle chipboard chip board boards sheet sheets deck decking underlayment surface
  delaminated delaminating delamination layers swollen swelling swelled puffed bubbled bubbling warped cupped buckled burn burns burned burnt scorch scorched iron
  crack cracks cracked split broken chipped chip worn hole holes gap gaps seam seams joint joints edge edges corner corners middle center centre tongue groove nail nails screw screws staple staples carpet pad tack strip strips
  uneven squeak squeaks squeaky creak creaks creaky loose noisy noise hump humps dip dips ridge ridges bump bumps dust dirt dirty paint painted rust rusty rough round rectangle square area part place patch damaged-area wall walls room hall bay closet bedroom living left right bottom top upper lower under underneath below beneath around where with concrete slab wood wooden new gypsum
  none no nothing found seen else mould mold mouldy moldy mildew rot rotten rotted dark black spores cut discolored discoloured`
    .split(/\s+/)
    .filter((word) => word !== ''),
);

/** Parses findings; unknown words that may mean a hazard are questioned. Never throws. */
export function readFound(text: string, reading: Reading): Read<Found> {
  return screened(text, reading, 'unsure');
}

/** Screens words left over in another option; `fix` is what to type instead if they aren't clear. */
export function screened(text: string, reading: Reading, fix?: string): Read<Found> {
  const got = { option: reading.option, got: text };
  if (text.length > LONGEST_TEXT) return unread(notPlain(got, `${text.slice(0, 40)}…`, fix));
  const rest = doubtful(text);
  const found = foundIn(rest);
  if (found.hazards.length > 0) return read(found);
  if (found.rot && !tells(rest, 'PANEL')) return unread(rotWhere(got));
  const stranger = rest.split(/[^\p{L}\p{N}'-]+/u).find((word) => /\p{L}/u.test(word) && !HARMLESS.has(word));
  return stranger === undefined ? read(found) : unread(notPlain(got, stranger, fix));
}

const ROOM_KINDS =
  /(?<![a-z])(?:electric(?:al|s)?|power|boiler|heat(?:er|ing)|gas|meter|pipe|vent|duct|sprinkler) (?:room|closet|cupboard)(?![a-z])/g;

/** Hazards in words outside the findings: a room's name, a sentence. A room may be named after its boiler. */
export function foundAside(text: string): Found {
  return foundIn(doubtful(text.slice(0, 2 * LONGEST_TEXT)).replace(ROOM_KINDS, ' '));
}

function doubtful(text: string): string {
  const plain = plainSigns(withoutHidden(text.normalize('NFKC'), ' ').normalize('NFC')).replace(/\s+/g, ' ');
  const clauses = plain
    .split(/[,;!\n]+|\.(?!\w)|(?<![a-z])but(?![a-z])/)
    .map((clause) => clause.trim())
    .filter((clause) => clause !== '' && !SAFE_CLAUSE.test(clause));
  // What is between joists is in the panel.
  return clauses.join(' , ').replace(/(?<![a-z])between (?:the |two |my )?joists?(?![a-z])/g, '');
}

/** What may be noted on site without stopping work there. */
const NOTED: readonly Hazard[] = ['mold', 'lead', 'silica', 'droppings', 'opening', 'fumes'];

function foundIn(rest: string): Found {
  const { sightings } = screenHere(rest);
  const hazards = sightings.flatMap(({ hazard, level }) =>
    level === 'note' || NOTED.includes(hazard) ? [] : [hazard],
  );
  return {
    hazards: tells(rest, 'UNSURE') ? [...hazards, 'unsure'] : hazards,
    mould: tells(rest, 'MOLD') || tells(rest, 'SPOTS'),
    rot: tells(rest, 'DECAY'),
  };
}

/** All hazards of several texts, most serious first in each. */
export function together(...all: readonly Found[]): Found {
  const named = [...new Set(all.flatMap(({ hazards }) => hazards))];
  return {
    hazards: [...named.filter((one) => one !== 'unsure'), ...named.filter((one) => one === 'unsure')],
    mould: all.some(({ mould }) => mould),
    rot: all.some(({ rot }) => rot),
  };
}

const LONGEST = 120;

/** The part of a sentence that names something unsafe or rotten, fit for the option `found`; undefined where none does. */
export function unsafeWords(text: string): string | undefined {
  // Where the joists lie is asked for, and no harm to them.
  const said = text.replace(/(?:first[ -]?)?joists? (?:is |are |spacing )?(?:at |every )?\d[^,;]*/gi, ' ');
  const unsafe = ({ hazards, rot }: Found): boolean => hazards.length > 0 || rot;
  const clauses = [...said.split(/[,;.!?\n]+/), said];
  const clause = clauses.find((part) => unsafe(foundAside(part)));
  const words = clause?.replace(/[,;:]/g, ' ').replace(/\s+/g, ' ').trim();
  return words === undefined || (words.length <= LONGEST && unsafe(foundAside(words))) ? words : 'unsure';
}
