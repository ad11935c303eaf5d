/** Which of the things on a list a few words name: by its label, by what it is sold in, or by another name for it. */

import { distance } from 'fastest-levenshtein';
import { LETTER, plainSigns } from './rooms/room-text.ts';

/** A thing on a list: its key, its label, and what it is sold in. */
interface Named {
  readonly item: string;
  readonly label: string;
  readonly package?: { readonly label: string; readonly labels: string } | undefined;
}

/** Other names by how the key of a thing begins. */
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

/** Units beside a figure say nothing that the figure does not. */
const UNITS = new Set('ft foot feet in inch inches mm cm m long'.split(' '));

/**
 * The things that all words name; where none is named by all, those named by most of them, at least half. A slip in a longer
 * word is forgiven. Everything for no words.
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
  // A word of the label itself goes before another name: paint is the paint, not all that a painter buys.
  const closest = Math.max(...best.map(({ own }) => own));
  const named = best.filter(({ own }) => own === closest).map(({ thing }) => thing);
  // A whole label is that thing, though its words stand in a longer label too.
  const whole = named.filter((thing) => wordsOf(thing.label).every((word) => wanted.some((one) => isName(one, word))));
  return whole.length > 0 ? whole : named;
}

/** The words of its label and its key; the words of what it is sold in and other names. */
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

/** A word without capitals, marks and the s of many. */
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
