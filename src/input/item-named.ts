/** Finds items on a list by a few words: from the label, the packaging, or another name. */

import { distance } from 'fastest-levenshtein';
import { LETTER, plainSigns } from './rooms/room-text.ts';

interface Named {
  readonly item: string;
  readonly label: string;
  readonly package?: { readonly label: string; readonly labels: string } | undefined;
}

/** Other names, by key prefix. */
const ALSO: readonly (readonly [start: string, names: string])[] = [
  ['plank', 'plank board flooring floor carton box case vinyl laminate lvp click'],
  ['underlay', 'underlay underlayment pad padding foam roll'],
  ['contractor bag', 'contractor bag trash rubbish garbage sack'],
  ['knife blade', 'knife blade'],
  ['mask', 'mask n95 respirator dust'],
  ['container', 'container skip dumpster'],
  ['subfloor screw', 'subfloor screw deck floor pack'],
  ['block screw', 'block screw'],
  ['panel', 'panel plywood ply osb sheet subfloor'],
  ['block 2x4', '2x4 lumber stud timber block'],
  ['subfloor adhesive', 'subfloor adhesive glue tube construction'],
  ['levelling compound', 'levelling leveling leveller leveler compound self bag'],
  ['levelling primer', 'levelling leveling primer leveller leveler'],
  ['baseboard', 'baseboard base board skirting trim stick length moulding molding'],
  ['transition strip', 'transition strip threshold moulding molding'],
  ['t-moulding', 't-moulding t-molding tmoulding moulding molding stick'],
  ['reducer', 'reducer transition strip stick'],
  ['end cap', 'end cap transition strip stick'],
  ['nosing', 'stair nosing nose stick'],
  ['finish nail', 'finish nail brad'],
  ['caulk', 'caulk caulking sealant tube'],
  ['wood filler', 'wood filler putty tub'],
  ['trim primer', 'trim primer quart can undercoat'],
  ['trim paint', 'trim paint quart can'],
];

/** A unit next to a number adds nothing. */
const UNITS = new Set('ft foot feet in inch inches mm cm m long'.split(' '));

/**
 * The items matching all words, or if there are none, those matching most words, at least half. A typo in a longer word
 * is forgiven. No words match everything.
 */
export function thingsNamed<T extends Named>(words: readonly string[], things: readonly T[]): readonly T[] {
  const wanted = words.map(tokenOf).filter((word) => word !== '' && !UNITS.has(word));
  if (wanted.length === 0) return things;
  const scored = things.map((thing) => {
    const [own, also] = namesOf(thing);
    const hit = (word: string, names: readonly string[]): boolean => names.some((name) => isName(word, name));
    const hits = wanted.filter((word) => hit(word, own) || hit(word, also));
    return { thing, hits: hits.length, own: wanted.filter((word) => hit(word, own)).length };
  });
  const most = Math.max(...scored.map(({ hits }) => hits), 0);
  if (most === 0 || most * 2 < wanted.length) return [];
  const best = scored.filter(({ hits }) => hits === most);
  // Words of the label itself take precedence: "paint" means the paint, not every painting supply.
  const closest = Math.max(...best.map(({ own }) => own));
  const named = best.filter(({ own }) => own === closest).map(({ thing }) => thing);
  // A complete label means that item, even if a longer label contains its words.
  const whole = named.filter((thing) => wordsOf(thing.label).every((word) => wanted.some((one) => isName(one, word))));
  return whole.length > 0 ? whole : named;
}

/** The words of its label and key; and the words of its packaging and other names. */
function namesOf({ item, label, package: sold }: Named): readonly [own: readonly string[], also: readonly string[]] {
  const [, names = ''] = ALSO.find(([start]) => item.startsWith(start)) ?? [];
  return [wordsOf(label), [...wordsOf(sold?.label ?? ''), ...wordsOf(sold?.labels ?? ''), ...names.split(' ')]];
}

function wordsOf(text: string): readonly string[] {
  return text
    .split(/[\s,()×]+/)
    .map(tokenOf)
    .filter((word) => word !== '' && !UNITS.has(word));
}

const OTHER_SIGNS = new RegExp(`[^${LETTER}\\d/.-]`, 'g');

/** A word in lowercase, without punctuation or plural s. */
function tokenOf(word: string): string {
  const plain = plainSigns(word)
    .replace(OTHER_SIGNS, '')
    .replace(/^[.-]+|(?<![.-])[.-]+$/g, '');
  return plain.length > 3 && !/\d$/.test(plain) ? plain.replace(/(?:(?<=x|sh|ch)es|(?<!s)s)$/, '') : plain;
}

function isName(word: string, name: string): boolean {
  if (word === name) return true;
  if (name.length < 5 || word.length < 4) return false;
  const letters = (text: string): string => [...text].sort().join('');
  return letters(word) === letters(name) || distance(word, name) <= (name.length >= 8 ? 2 : 1);
}
