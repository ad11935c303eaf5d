/** How the lexicons are written: word classes, look-alikes, and which classes together make a hazard. */

import type { Hazard, Language, Level } from './hazard.ts';

/**
 * Words by class, parted by spaces. `a_b` are words in a row, `word~` is the word and its usual endings, `word*` anything that
 * begins so.
 */
export type Classes = Readonly<Record<string, string>>;

export interface Rule {
  readonly level: Level;
  /** Classes, all of which must stand near one another, each in a word of its own. */
  readonly needs: string;
  /** The most words from the first to the last of them; 6 without it. */
  readonly within?: number;
  /** Whether they stand in this order. */
  readonly ordered?: true;
  /** Classes that rule it out where one stands within six words of it. */
  readonly unless?: string;
  /** What about the hazard, for the answer. */
  readonly about?: string;
  /** Counts even where the words before it deny it: `won't stop bleeding`. */
  readonly undeniable?: true;
}

export interface Lexicon {
  readonly hazard: Hazard;
  readonly language?: Language;
  readonly classes: Classes;
  readonly rules: readonly Rule[];
  /** Classes made of two others in this order: `old` and, within four words, `vinyl`. */
  readonly joins?: Readonly<Record<string, { readonly needs: string; readonly within: number }>>;
  /** Expressions in which a word of a hazard means something else: what is inside them counts for nothing. */
  readonly lookalikes?: string;
  /** Classes whose mere mention counts where something is found, opened, cut or lies below. */
  readonly here?: string;
  /** Rules that count there alone. */
  readonly hereRules?: readonly Rule[];
  /** Facts that end it, as rules; `tested` where a test does. */
  readonly clears?: readonly ClearRule[];
}

export interface ClearRule {
  readonly needs: string;
  readonly within?: number;
  readonly ordered?: true;
  readonly tested?: true;
  /** Whether the hazard must be named as well where several are open: `tested negative` names no substance. */
  readonly bare?: true;
}

/** The usual endings of an English word. More than there are, and none that makes another word. */
export function inflected(word: string): readonly string[] {
  const stem = word.replace(/e$/, '');
  const last = word.at(-1) ?? '';
  const forms = [word, `${word}s`, `${stem}ed`, `${stem}ing`];
  if (/(?:s|x|z|ch|sh)$/.test(word)) forms.push(`${word}es`);
  if (/[^aeiou]y$/.test(word)) forms.push(`${word.slice(0, -1)}ies`, `${word.slice(0, -1)}ied`);
  if (/[^aeiou][aeiou][bdgklmnprt]$/.test(word)) forms.push(`${word}${last}ed`, `${word}${last}ing`);
  return forms;
}
