/** A command's line taken apart: `name: value` pairs in any order, the first unlabelled text to the first option. */

import { closest, distance } from 'fastest-levenshtein';
import { askLine, fullName, typedName } from '../input/command-shape.ts';
import { UNIT_WORDS } from '../input/parse-number.ts';
import { type Colons, factsOf, type Preferences } from '../input/reading.ts';
import type { Partly } from '../language/old/plain.ts';
import type { Action, Problem } from '../reply/reply.ts';
import { givenTwice, misspeltOption, strangeOption } from '../text/chat-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import { type Catalog, entryTyped, loadCommand } from './catalog.ts';
import type { Command } from './command.ts';
import type { Request } from './ports.ts';

/** Longer lines are refused before anything looks at them. */
export const LONGEST_ASK = 4000;

/** But for a line that brings back what was taken out. */
export const LONGEST_IMPORT = 400_000;
export const IMPORT = /^\W{0,3}project\s+mydata\s/i;

/** Every command takes it: what was told of a hazard, so that a line suggested keeps it. The screen reads it where it stands. */
export const HAZARD_OPTION = 'hazard';

/** A command with the texts of its options. */
export interface ParsedCommand {
  readonly ok: true;
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
  readonly assumed?: readonly string[];
}

/** A line taken apart: the command, the text told for each option, and how a sentence was taken where it was one. */
export type Parsed =
  | ParsedCommand
  | {
      readonly ok: false;
      readonly problems: readonly [Problem, ...Problem[]];
      readonly partly?: Partly<Command> | undefined;
      /** The command that is meant, with what was read for its options: for a form. */
      readonly about?: Pick<Partly<Command>, 'command' | 'optionTexts'> | undefined;
      /** The option that one question is open for, where that is all. */
      readonly open?: string;
      /** What may have been meant: each a request that is answered. */
      readonly choices?: readonly Action[];
    };

/** How much a line could be a sentence: `unread` by the option it is told to, `read` by it all the same; undefined for a list of options. */
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

/** What is told to a command behind its name, which some write a colon after. */
export function behindName(text: string, length: number): string {
  return text.slice(length).replace(/^\s*:/, '');
}

/** Takes the options of a known command apart. */
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
  /** As told last. */
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

/** By the names of the options: as many as there are commands, each looked for in every line. */
const PAIR_STARTS = new Map<string, RegExp>();

/** A known option's name and its colon, at the start or behind a space, comma or semicolon. */
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

/** Options that begin a part of their own without a colon, in a line that has one elsewhere: `room: 12x14, plank 6 x 48 in`. */
function bareStart(names: readonly string[]): RegExp {
  const figures = ['plank', 'planks'].filter((name) => names.includes(name));
  const words = ['pattern', 'direction'].filter((name) => names.includes(name));
  const starts = [
    ...(figures.length > 0 ? [`(?:${figures.join('|')})(?=\\s+[\\d.½¼¾])`] : []),
    ...(words.length > 0 ? [`(?:${words.join('|')})(?=\\s+[\\p{L}\\d])`] : []),
  ];
  return starts.length > 0 ? new RegExp(`(?=[pd])(?<=[,;]\\s*)(${starts.join('|')})`, 'giu') : /(?!)/gu;
}

/** Words before a colon that are nearly an option's name. Others belong to a value: a room may be named that way. */
function misspeltNames(text: string, names: readonly string[]): readonly { typed: string; near: string }[] {
  // A name told with a space for its hyphen is known, and its last word is no slip of another.
  const others = text.replace(pairStart(names), (pair) => ' '.repeat(pair.length));
  return [...others.matchAll(/(?<=^|[\s,;])([\p{L}-]{3,})\s*:/gu)].flatMap((match) => {
    const word = match[1]?.toLowerCase() ?? '';
    if (names.length === 0 || names.includes(word)) return [];
    const near = closest(word, names as string[]);
    return isNear(word, near) ? [{ typed: match[0], near }] : [];
  });
}

/** Where a word before a colon belongs to the value. */
const OWN_COLONS: Readonly<Record<Colons, RegExp>> = {
  any: /[\s\S]+/g,
  rooms: /(?<![\p{L}-])[\p{L}-]+\s*:(?=[^:;,\n]*\d|\s*walk\b)/giu,
  grid: /^\s*grid[^:]*:/gi,
};

/**
 * Words before a colon inside a value that is of no such words, each with what is told behind it: the name of an option
 * that this command has not, which its neighbor must not swallow. Nearly an option's name is a slip, and told as one.
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

/** A slip or two away: one letter in a short word, two in a longer one, or two letters swapped. */
function isNear(word: string, name: string): boolean {
  const letters = (text: string): string => [...text].sort().join('');
  return distance(word, name) <= (word.length <= 4 && letters(word) !== letters(name) ? 1 : 2);
}

// A filled form or menu as the line that the grammar reads.

/** The command with its options told, its group before it. Words in a first option alone stand without its name: a sentence typed there is read as one. */
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
 * A filled form or menu as a request. Its values are handed on as they are; it is text like any other where the grammar
 * reads more than values in it: a sentence alone in the first field, or another option named inside a value.
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

/** Whether a value holds what begins a part of its own in a line, or is a slip of it. */
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
 * A line that cannot be a sentence: the name of a command that nothing is filled in for, then figures and units that its
 * first option reads. Only that command is loaded. Without words nothing is said, and without a product (12 x 14) there is
 * no room and no plank.
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
