/** Splits a command line into `name: value` pairs in any order; text without a name goes to the first option. */

import { closest, distance } from 'fastest-levenshtein';
import { askLine, fullName, typedName } from '../input/command-shape.ts';
import { UNIT_WORDS } from '../input/parse-number.ts';
import { type Colons, factsOf, type Preferences } from '../input/reading.ts';
import type { Partly } from '../language/sentence.ts';
import type { Action, Problem } from '../reply/reply.ts';
import { givenTwice, misspeltOption, strangeOption } from '../text/chat-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import { type Catalog, entryTyped, loadCommand } from './catalog.ts';
import type { Command } from './command.ts';
import type { Request } from './ports.ts';

/** Longer lines are rejected before anything reads them. */
export const LONGEST_ASK = 4000;

/** The limit for `project restore`, which carries exported data. */
export const LONGEST_IMPORT = 400_000;
export const IMPORT = /^\W{0,3}project\s+mydata\s/i;

/**
 * Accepted by every command: a hazard that was mentioned, so that a suggested line keeps it. The hazard screen reads
 * it.
 */
export const HAZARD_OPTION = 'hazard';

export interface ParsedCommand {
  readonly ok: true;
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly assumed?: readonly string[];
}

/** A line taken apart: the command, the text of each option, and how a sentence was understood. */
export type Parsed =
  | ParsedCommand
  | {
      readonly ok: false;
      readonly problems: readonly [Problem, ...Problem[]];
      readonly partly?: Partly<Command> | undefined;
      /** The command that is meant and the options read so far, for a form. */
      readonly about?: Pick<Partly<Command>, 'command' | 'optionTexts'> | undefined;
      /** Set if the answer is one open question: the option it is for. */
      readonly open?: string;
      /** Possible meanings, each a request that gets an answer. */
      readonly choices?: readonly Action[];
      /** It asks what was wrong with the last answer. */
      readonly complaint?: true;
    };

/**
 * How much a line looks like a sentence: `unread` if its first option can't read it, `read` if it can; undefined for a
 * list of options.
 */
export type Looseness = 'unread' | 'read' | undefined;

export function looseness(command: Command, parsed: Parsed, preferences: Preferences): Looseness {
  if (!parsed.ok) return 'unread';
  const [only, ...more] = [...parsed.optionTexts];
  const schema = only && command.options.shape[only[0]];
  if (!schema || more.length > 0) return undefined;
  const [option, text] = only;
  const { kind, standard } = factsOf(schema);
  if (kind === 'text' && standard !== undefined) return text.split(/\s+/).length > 2 ? 'unread' : undefined;
  return schema.safeParse({ text, reading: { option, preferences, note: () => undefined } }).success
    ? 'read'
    : 'unread';
}

/** The text after a command's name, which may be followed by a colon. */
export function behindName(text: string, length: number): string {
  return text.slice(length).replace(/^\s*:/, '');
}

export function parseOptions(command: Command, text: string): Parsed {
  const own = Object.keys(command.options.shape);
  const names = own.length > 0 ? [...own, HAZARD_OPTION] : own;
  const { optionTexts, twice, pairs } = pairsIn(text, names);
  const misspelt = misspeltNames(text, names);
  const strange = strangeNames(command, pairs);
  const mended = [
    ...misspelt.map(({ typed, near }) => [typed, `${near}:`] as const),
    ...strange.map(({ typed, said }) => [`${typed}${said}`, ' '] as const),
  ].reduce((line, [from, to]) => line.replace(from, to), text);
  const fix = askLine(command, pairsIn(mended, names).optionTexts);
  const [problem, ...more] = [
    ...misspelt.map(({ typed, near }) => misspeltOption(typed, near, fix)),
    ...strange.map(({ typed, said }) => strangeOption(`${typed}${said}`, typed, typedName(command), own, fix)),
    ...twice.map(({ option, before, value }) => givenTwice(option, before, value, fix)),
  ];
  return problem ? { ok: false, problems: [problem, ...more] } : { ok: true, command, optionTexts };
}

interface Pair {
  readonly option: string;
  readonly value: string;
}

interface Pairs {
  /** If an option occurs twice, the last one counts. */
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly pairs: readonly Pair[];
  readonly twice: readonly { readonly option: string; readonly before: string; readonly value: string }[];
}

function pairsIn(text: string, names: readonly string[]): Pairs {
  const labelled = [...text.matchAll(pairStart(names))];
  const bare = labelled.length > 0 ? [...text.matchAll(bareStart(names))] : [];
  const pairs = [...labelled, ...bare].sort((a, b) => a.index - b.index);
  const optionTexts = new Map<string, string>();
  const twice: Pairs['twice'][number][] = [];
  const each: Pair[] = [];
  const tell = (option: string, value: string): void => {
    each.push({ option, value });
    const before = optionTexts.get(option);
    if (before) twice.push({ option, before, value });
    optionTexts.set(option, value);
  };
  const [first] = names;
  const unlabelled = trimmed(text.slice(0, pairs[0]?.index ?? text.length));
  if (unlabelled !== '' && first !== undefined) tell(first, unlabelled);
  pairs.forEach((pair, i) => {
    const value = trimmed(text.slice(pair.index + pair[0].length, pairs[i + 1]?.index ?? text.length));
    tell((pair[1] ?? '').toLowerCase().replaceAll(' ', '-'), value);
  });
  return { optionTexts, twice, pairs: each };
}

/** One pattern per set of option names, compiled once and reused for every line. */
const PAIR_STARTS = new Map<string, RegExp>();

/** A known option's name and its colon, at the start or after a space, comma or semicolon. */
export function pairStart(names: readonly string[]): RegExp {
  const key = names.join(' ');
  const known = PAIR_STARTS.get(key);
  if (known) return known;
  const longestFirst = [...names].sort((a, b) => b.length - a.length);
  const alternatives = longestFirst.map((name) => name.replaceAll('-', '[- ]')).join('|');
  const made = names.length === 0 ? /(?!)/gu : new RegExp(`(?<=^|[\\s,;])(${alternatives})\\s*:`, 'giu');
  PAIR_STARTS.set(key, made);
  return made;
}

/** Options that may start without a colon if the line has a colon elsewhere: `room: 12x14, plank 6 x 48 in`. */
function bareStart(names: readonly string[]): RegExp {
  const figures = ['plank', 'planks'].filter((name) => names.includes(name));
  const words = ['pattern', 'direction'].filter((name) => names.includes(name));
  const starts = [
    ...(figures.length > 0 ? [`(?:${figures.join('|')})(?=\\s+[\\d.½¼¾])`] : []),
    ...(words.length > 0 ? [`(?:${words.join('|')})(?=\\s+[\\p{L}\\d])`] : []),
  ];
  return starts.length > 0 ? new RegExp(`(?=[pd])(?<=[,;]\\s*)(${starts.join('|')})`, 'giu') : /(?!)/gu;
}

/** Words before a colon that are almost an option's name. Other words stay in the value: a room may be called that. */
function misspeltNames(text: string, names: readonly string[]): readonly { typed: string; near: string }[] {
  // A hyphenated name typed with a space is known; its last word isn't a typo for something else.
  const others = text.replace(pairStart(names), (pair) => ' '.repeat(pair.length));
  return [...others.matchAll(/(?<=^|[\s,;])([\p{L}-]{3,})\s*:/gu)].flatMap((match) => {
    const word = match[1]?.toLowerCase() ?? '';
    if (names.length === 0 || names.includes(word)) return [];
    const near = closest(word, names as string[]);
    return isNear(word, near) ? [{ typed: match[0], near }] : [];
  });
}

/** When a word before a colon is part of the value. */
const OWN_COLONS: Readonly<Record<Colons, RegExp>> = {
  any: /[\s\S]+/g,
  rooms: /(?<![\p{L}-])[\p{L}-]+\s*:(?=[^:;,\n]*\d|\s*walk\b)/giu,
  grid: /^\s*grid[^:]*:/gi,
};

/**
 * Names before a colon that aren't part of the value, each with its text: an option this command doesn't have, which
 * must not end up in the option before it. Near misses are reported as typos.
 */
function strangeNames({ options }: Command, pairs: readonly Pair[]): readonly { typed: string; said: string }[] {
  const names = Object.keys(options.shape);
  return pairs.flatMap(({ option, value }) => {
    const schema = options.shape[option];
    const own = schema && factsOf(schema).colons;
    const others = own ? value.replace(OWN_COLONS[own], (words) => words.replaceAll(':', ' ')) : value;
    const found = [...others.matchAll(/(?<=^|[\s,;])(\p{L}[\p{L}-]+)\s*:/gu)];
    return found.flatMap((match, i) => {
      const word = match[1]?.toLowerCase() ?? '';
      if (isNear(word, closest(word, names as string[]))) return [];
      const said = value.slice(match.index + match[0].length, found[i + 1]?.index ?? value.length);
      return [{ typed: match[0], said }];
    });
  });
}

export function trimmed(value: string): string {
  return value.replace(/^[\s,;]+|(?<![\s,;])[\s,;]+$/g, '');
}

/** One wrong letter in a short word, two in a longer one, or two letters swapped. */
function isNear(word: string, name: string): boolean {
  const letters = (text: string): string => [...text].sort().join('');
  return distance(word, name) <= (word.length <= 4 && letters(word) !== letters(name) ? 1 : 2);
}

/**
 * Writes a filled form as a line, with the group first. Words alone in the first option go without its name, so that a
 * sentence typed there is read as one.
 */
function formLine(command: Command, optionTexts: ReadonlyMap<string, string>): string {
  const name = fullName(command);
  const [only, ...more] = optionTexts;
  const [first] = Object.keys(command.options.shape);
  if (only && more.length === 0 && only[0] === first && /\p{L}{4}/u.test(only[1])) return `${name} ${only[1]}`;
  return labelledLine(command, optionTexts);
}

function labelledLine(command: Command, optionTexts: ReadonlyMap<string, string>): string {
  return `${fullName(command)}${askLine(command, optionTexts).slice(typedName(command).length)}`;
}

/**
 * A filled form or menu as a request. Its values are passed on unparsed, unless they contain more than values: a
 * sentence alone in the first field, or another option's name inside a value.
 */
export function formRequest(
  command: Command,
  optionTexts: ReadonlyMap<string, string>,
): Pick<Request, 'text' | 'given'> {
  const text = formLine(command, optionTexts);
  const given = new Map([...optionTexts].map(([option, value]) => [option, trimmed(value)]));
  if (text !== labelledLine(command, optionTexts) || namesOptions(command, given)) return { text };
  return { text, given: { command, optionTexts: given } };
}

/** Whether a value contains another option's name, or a typo of one. */
function namesOptions(command: Command, optionTexts: ReadonlyMap<string, string>): boolean {
  const names = [...Object.keys(command.options.shape), HAZARD_OPTION];
  const pairs = [...optionTexts].map(([option, value]) => ({ option, value }));
  const begins = [pairStart(names), bareStart(names)];
  return (
    pairs.some(({ value }) => begins.some((begin) => value.search(begin) >= 0)) ||
    pairs.some(({ value }) => misspeltNames(value, names).length > 0) ||
    strangeNames(command, pairs).length > 0
  );
}

const UNIT_WORD = new RegExp(`^(?:${UNIT_WORDS})$`, 'i');

/**
 * Recognizes a line that can't be a sentence: a command's name followed by figures and units that its first option
 * reads. Only that command is loaded. Lines with words, or with a product such as 12 x 14, don't qualify.
 */
export async function figuresTyped(
  line: string,
  catalog: Catalog,
  preferences: Preferences,
): Promise<ParsedCommand | undefined> {
  const found = entryTyped(line.trim().replace(/^\/+/, ''), catalog);
  if (!found || found.entry.group !== undefined || !/^[\p{L}\d\s.,'"′″/()+-]*$/u.test(found.rest)) return undefined;
  if (!(found.rest.match(/\p{L}+/gu) ?? []).every((word) => UNIT_WORD.test(word))) return undefined;
  const command = await loadCommand(found.entry);
  return readInTime(
    () => {
      const parsed = parseOptions(command, found.rest);
      return parsed.ok && looseness(command, parsed, preferences) === 'read' ? parsed : undefined;
    },
    () => undefined,
  );
}
