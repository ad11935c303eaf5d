/** What a terminal completes: command names, the options of the command typed, and what is likely to be told for one. */

import type { Command } from '../../chat/command.ts';
import { fullName, listed, optionsOf, typedName } from '../../input/command-shape.ts';

/** Completions of a line in the form that node:readline wants: whole words, and the word they complete. */
export function completions(line: string, commands: readonly Command[]): [string[], string] {
  const command = commandIn(line, commands)?.command;
  if (!command) {
    const names = [...new Set(listed(commands).flatMap((known) => [fullName(known), typedName(known)]))];
    return [names.filter((name) => name.startsWith(line)).map((name) => `${name} `), line];
  }
  const options = optionsOf(command);
  const value = valueTyped(line, commands);
  if (value) {
    const { choices = [] } = options.find(({ name }) => name === value.option) ?? {};
    return [choices.filter((choice) => choice.startsWith(value.typed)), value.typed];
  }
  const word = /(?<![\p{L}-])[\p{L}-]*$/u.exec(line)?.[0] ?? '';
  const left = options.map(({ name }) => name).filter((name) => !line.includes(`${name}:`) && name.startsWith(word));
  return [left.map((name) => `${name}: `), word];
}

/** The option whose value is being typed, and what of it is; a name that may stand without its option's is one too. */
export function valueTyped(
  line: string,
  commands: readonly Command[],
): { readonly command: Command; readonly option: string; readonly typed: string } | undefined {
  const found = commandIn(line, commands);
  if (!found) return undefined;
  const { command, rest } = found;
  const options = optionsOf(command);
  const value = /(?:^|[\s,])([\p{L}-]+):([^:,]*)$/u.exec(line);
  const told = options.find(({ name }) => name === value?.[1]);
  if (told && value) return { command, option: told.name, typed: value[2]?.trimStart() ?? '' };
  const [first] = options;
  return first?.names && !/[:,]/.test(rest) ? { command, option: first.name, typed: rest } : undefined;
}

function commandIn(line: string, commands: readonly Command[]) {
  for (const command of commands) {
    const name = [fullName(command), typedName(command)].find((one) => line.startsWith(`${one} `));
    if (name !== undefined) return { command, rest: line.slice(name.length + 1).trimStart() };
  }
  return undefined;
}
