/** The one text grammar: a command's name, then `name: value` pairs in any order; the first unlabelled text goes to the first option. */

import { closest, distance } from 'fastest-levenshtein';
import type { Problem } from '../reply/problem.ts';
import { commandMissing, emptyAsk, misspeltOption, toldTwice, unknownCommand } from '../words/asks.ts';
import { askLine, type Command, fullName } from './command.ts';

/** Longer lines are refused before anything looks at them. */
export const LONGEST_ASK = 4000;

/** A line taken apart: the command, and the text told for each option. */
export type Parsed =
  | { readonly ok: true; readonly command: Command; readonly told: ReadonlyMap<string, string> }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

/** Takes a line apart. Never throws. */
export function parseLine(line: string, commands: readonly Command[]): Parsed {
  const text = line.trim().replace(/^\/+/, '');
  const found = findCommand(text, commands);
  if ('problem' in found) return { ok: false, problems: [found.problem] };
  return parseOptions(found.command, found.rest);
}

function findCommand(
  text: string,
  commands: readonly Command[],
): { command: Command; rest: string } | { problem: Problem } {
  if (text === '') return { problem: emptyAsk() };
  const words = /^([\p{L}-]+)(?:\s+([\p{L}-]+))?/u.exec(text.toLowerCase());
  const [first, second] = [words?.[1] ?? '', words?.[2] ?? ''];
  for (const command of commands) {
    const named = fullName(command);
    if (`${first} ${second}` === named) return { command, rest: text.slice(words?.[0].length ?? 0) };
  }
  const single = commands.find((command) => command.name === first);
  if (single) return { command: single, rest: text.slice(first.length) };
  const owner = commands.find((command) => pairStart(Object.keys(command.options.shape)).exec(text)?.index === 0);
  if (owner) return { problem: commandMissing(text, owner.name) };
  const names = commands.flatMap((command) => [fullName(command), command.name]);
  const grouped = commands.some((command) => command.group === first);
  const word = grouped ? `${first} ${second}`.trim() : first;
  const near = word === '' ? undefined : closest(word, names);
  const likely = near !== undefined && isNear(word, near) ? near : undefined;
  const rest = likely === undefined ? '' : text.slice(grouped ? words?.[0].length : first.length).trimStart();
  return { problem: unknownCommand(text, word, likely, rest, commands.map(fullName)) };
}

/** Takes the options of a known command apart. */
export function parseOptions(command: Command, text: string): Parsed {
  const names = Object.keys(command.options.shape);
  const { told, twice } = pairsIn(text, names);
  const misspelt = misspeltNames(text, names);
  const mended = misspelt.reduce((line, { typed, near }) => line.replace(typed, `${near}:`), text);
  const fix = askLine(command, pairsIn(mended, names).told);
  const [problem, ...more] = [
    ...misspelt.map(({ typed, near }) => misspeltOption(typed, near, fix)),
    ...twice.map(({ option, before, value }) => toldTwice(option, before, value, fix)),
  ];
  return problem ? { ok: false, problems: [problem, ...more] } : { ok: true, command, told };
}

interface Pairs {
  /** As told last. */
  readonly told: ReadonlyMap<string, string>;
  readonly twice: readonly { readonly option: string; readonly before: string; readonly value: string }[];
}

function pairsIn(text: string, names: readonly string[]): Pairs {
  const pairs = [...text.matchAll(pairStart(names))];
  const told = new Map<string, string>();
  const twice: Pairs['twice'][number][] = [];
  const tell = (option: string, value: string): void => {
    const before = told.get(option);
    if (before) twice.push({ option, before, value });
    told.set(option, value);
  };
  const [first] = names;
  const unlabelled = trimmed(text.slice(0, pairs[0]?.index ?? text.length));
  if (unlabelled !== '' && first !== undefined) tell(first, unlabelled);
  pairs.forEach((pair, i) => {
    const value = trimmed(text.slice(pair.index + pair[0].length, pairs[i + 1]?.index ?? text.length));
    tell((pair[1] ?? '').toLowerCase().replaceAll(' ', '-'), value);
  });
  return { told, twice };
}

/** A known option's name and its colon, at the start or behind a space, comma or semicolon. */
function pairStart(names: readonly string[]): RegExp {
  const longestFirst = [...names].sort((a, b) => b.length - a.length);
  return new RegExp(
    `(?<=^|[\\s,;])(${longestFirst.map((name) => name.replaceAll('-', '[- ]')).join('|')})\\s*:`,
    'giu',
  );
}

/** Words before a colon that are nearly an option's name. Others belong to a value: a room may be named that way. */
function misspeltNames(text: string, names: readonly string[]): readonly { typed: string; near: string }[] {
  return [...text.matchAll(/(?<=^|[\s,;])([\p{L}-]{3,})\s*:/gu)].flatMap((match) => {
    const word = match[1]?.toLowerCase() ?? '';
    if (names.includes(word)) return [];
    const near = closest(word, names as string[]);
    return isNear(word, near) ? [{ typed: match[0], near }] : [];
  });
}

function trimmed(value: string): string {
  return value.replace(/^[\s,;]+|[\s,;]+$/g, '');
}

/** A slip or two away: one letter in a short word, two in a longer one, or two letters swapped. */
function isNear(word: string, name: string): boolean {
  const letters = (text: string): string => [...text].sort().join('');
  return distance(word, name) <= (word.length <= 4 && letters(word) !== letters(name) ? 1 : 2);
}
