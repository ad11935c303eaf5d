/** What a terminal completes: command names, then the options of the command typed. */

import { type Command, fullName, optionsOf, typedName } from '../bot/command.ts';

/** Completions of a line in the form that node:readline wants: whole words, and the word they complete. */
export function completions(line: string, commands: readonly Command[]): [string[], string] {
  const command = commands.find((known) =>
    [typedName(known), fullName(known)].some((name) => line.startsWith(`${name} `)),
  );
  if (!command) {
    const names = [...new Set(commands.flatMap((known) => [fullName(known), typedName(known)]))];
    return [names.filter((name) => name.startsWith(line)).map((name) => `${name} `), line];
  }
  const options = optionsOf(command);
  const value = /(?:^|[\s,])([\p{L}-]+):\s*([^:,]*)$/u.exec(line);
  const told = options.find(({ name }) => name === value?.[1]);
  if (told && value) {
    const typed = value[2] ?? '';
    return [(told.choices ?? []).filter((choice) => choice.startsWith(typed)), typed];
  }
  const word = /[\p{L}-]*$/u.exec(line)?.[0] ?? '';
  const left = options.map(({ name }) => name).filter((name) => !line.includes(`${name}:`) && name.startsWith(word));
  return [left.map((name) => `${name}: `), word];
}
