/** Compiles lexicons into tables that look up each word once. */

import type { Hazard, Language, Level } from './hazard.ts';

// The format of a lexicon: word classes, look-alikes, and which classes together make a hazard.

/**
 * Words by class, separated by spaces. `a_b` is a sequence of words, `word~` the word with its usual endings, `word*`
 * anything that starts with it.
 */
export type Classes = Readonly<Record<string, string>>;

export interface Rule {
  readonly level: Level;
  /** Classes that all have to occur near each other, each as a separate word. */
  readonly needs: string;
  /** Most words from the first to the last of them; 6 by default. */
  readonly within?: number;
  readonly ordered?: true;
  /** Classes that rule it out within six words. */
  readonly unless?: string;
  /** Classes that rule it out only in the six words before it: `can i`, `how to`. */
  readonly unlessBefore?: string;
  /** Detail about the hazard, for the answer. */
  readonly about?: string;
  /** Counts even if negated: `won't stop bleeding`. */
  readonly undeniable?: true;
}

export interface Lexicon {
  readonly hazard: Hazard;
  readonly language?: Language;
  readonly classes: Classes;
  readonly rules: readonly Rule[];
  /** Classes formed by two others in this order: `old` and, within four words, `vinyl`. */
  readonly joins?: Readonly<Record<string, { readonly needs: string; readonly within: number }>>;
  /** Expressions in which a hazard word means something else: nothing inside them counts. */
  readonly lookalikes?: string;
  /** Classes whose mention alone counts where something is found, opened, cut or underneath. */
  readonly here?: string;
  readonly hereRules?: readonly Rule[];
  /** Rules for facts that end it; `tested` if a test does. */
  readonly clears?: readonly ClearRule[];
}

export interface ClearRule {
  readonly needs: string;
  readonly within?: number;
  readonly ordered?: true;
  readonly tested?: true;
  /** Whether the hazard must also be named if several are open: `tested negative` names no substance. */
  readonly bare?: true;
}

/** The usual endings of an English word. Overgenerates, but never produces another word. */
function inflected(word: string): readonly string[] {
  const stem = word.replace(/e$/, '');
  const last = word.at(-1) ?? '';
  const forms = [word, `${word}s`, `${stem}ed`, `${stem}ing`];
  if (/(?:s|x|z|ch|sh)$/.test(word)) forms.push(`${word}es`);
  if (/[^aeiou]y$/.test(word)) forms.push(`${word.slice(0, -1)}ies`, `${word.slice(0, -1)}ied`);
  if (/[^aeiou][aeiou][bdgklmnprt]$/.test(word)) forms.push(`${word}${last}ed`, `${word}${last}ing`);
  return forms;
}

interface Node {
  readonly next: ReadonlyMap<string, Node>;
  readonly classes: readonly number[];
  /** Whether words inside the sequence are ignored. */
  readonly hides: boolean;
}

interface Growing {
  readonly next: Map<string, Growing>;
  readonly classes: number[];
  hides: boolean;
}

export interface CompiledRule<R> {
  readonly rule: R;
  readonly hazard: Hazard;
  readonly language: Language;
  readonly needs: readonly number[];
  readonly unless: readonly number[];
  readonly unlessBefore: readonly number[];
}

/** A class formed by a word of one class followed by one of another. */
interface Join {
  readonly id: number;
  readonly first: number;
  readonly within: number;
}

export interface Tables {
  readonly classes: ReadonlyMap<string, number>;
  readonly terms: Node;
  /** Prefixes, and the classes of words that start with them. */
  readonly beginnings: ReadonlyMap<string, readonly number[]>;
  /** Rules by each class they need. */
  readonly rules: ReadonlyMap<number, readonly CompiledRule<Rule>[]>;
  /** By the second class. */
  readonly joins: ReadonlyMap<number, readonly Join[]>;
  /** Rules for places that are opened, cut or inspected. */
  readonly hereRules: ReadonlyMap<number, readonly CompiledRule<Rule>[]>;
  readonly clears: ReadonlyMap<number, readonly CompiledRule<ClearRule>[]>;
  /** Classes that count by mention alone where something was found, and their hazard. */
  readonly here: ReadonlyMap<number, Hazard>;
  readonly words: ReadonlySet<string>;
}

/** Compiles lexicons over common classes. Throws if a rule names an unknown class, which is an error in the data. */
export function compiled(common: Readonly<Record<string, string>>, lexicons: readonly Lexicon[]): Tables {
  const classes = new Map<string, number>();
  const terms: Growing = { next: new Map(), classes: [], hides: false };
  const beginnings = new Map<string, number[]>();
  const words = new Set<string>();
  const idOf = (name: string): number => {
    const known = classes.get(name);
    if (known !== undefined) return known;
    classes.set(name, classes.size);
    return classes.size - 1;
  };
  const put = (sequence: readonly string[], classed: number | undefined): void => {
    let node = terms;
    for (const word of sequence) {
      words.add(word);
      const after = node.next.get(word) ?? { next: new Map(), classes: [], hides: false };
      node.next.set(word, after);
      node = after;
    }
    if (classed === undefined) node.hides = true;
    else if (!node.classes.includes(classed)) node.classes.push(classed);
  };
  const add = (text: string, classed: number | undefined): void => {
    for (const written of text.split(/\s+/).filter((one) => one !== '')) {
      if (written.endsWith('*')) {
        if (classed === undefined) throw new Error(`a look-alike with an open end: ${written}`);
        const beginning = written.slice(0, -1);
        beginnings.set(beginning, [...(beginnings.get(beginning) ?? []), classed]);
        words.add(beginning);
        continue;
      }
      const open = written.endsWith('~');
      const sequence = (open ? written.slice(0, -1) : written).split('_');
      const ends = open ? inflected(sequence.at(-1) ?? '') : [sequence.at(-1) ?? ''];
      for (const end of ends) put([...sequence.slice(0, -1), end], classed);
    }
  };
  for (const [name, text] of Object.entries(common)) add(text, idOf(name));
  // All classes first, because a rule may need one from another lexicon.
  for (const { classes: own } of lexicons) for (const [name, text] of Object.entries(own)) add(text, idOf(name));
  for (const { lookalikes = '' } of lexicons) add(lookalikes, undefined);
  const needed = (names: string): number[] =>
    names
      .split(/\s+/)
      .filter((name) => name !== '')
      .map((name) => {
        const id = classes.get(name);
        if (id === undefined) throw new Error(`a rule needs the class ${name}, which is nowhere`);
        return id;
      });
  const joins = new Map<number, Join[]>();
  for (const { joins: own = {} } of lexicons) {
    for (const [name, { needs, within }] of Object.entries(own)) {
      const [first = -1, second = -1] = needed(needs);
      joins.set(second, [...(joins.get(second) ?? []), { id: idOf(name), first, within }]);
    }
  }
  const rules = new Map<number, CompiledRule<Rule>[]>();
  const hereRules = new Map<number, CompiledRule<Rule>[]>();
  const clears = new Map<number, CompiledRule<ClearRule>[]>();
  const here = new Map<number, Hazard>();
  const rulesInto = <R extends Rule | ClearRule>(
    into: Map<number, CompiledRule<R>[]>,
    own: readonly R[],
    of: Pick<CompiledRule<R>, 'hazard' | 'language'>,
  ): void => {
    for (const rule of own) {
      const one = {
        rule,
        ...of,
        needs: needed(rule.needs),
        unless: 'unless' in rule ? needed(rule.unless ?? '') : [],
        unlessBefore: 'unlessBefore' in rule ? needed(rule.unlessBefore ?? '') : [],
      };
      for (const id of one.needs) into.set(id, [...(into.get(id) ?? []), one]);
    }
  };
  for (const {
    hazard,
    language = 'en',
    rules: own,
    clears: ends = [],
    here: present = '',
    hereRules: at = [],
  } of lexicons) {
    rulesInto(rules, own, { hazard, language });
    rulesInto(hereRules, at, { hazard, language });
    rulesInto(clears, ends, { hazard, language });
    for (const id of needed(present)) here.set(id, hazard);
  }
  return { classes, terms, beginnings, joins, rules, hereRules, clears, here, words };
}
