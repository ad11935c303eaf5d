/** Picks by option: which of what was told once serves an option of a command. */

import { isCalculating } from '../input/command-shape.ts';
import { factsOf, type Habits } from '../input/reading.ts';
import { readInTime } from '../workers/time-limits.ts';
import type { Command } from './command.ts';

/** Whether an option of a command reads a text. */
export function isRead(command: Command, option: string, text: string, habits: Habits): boolean {
  const schema = command.options.shape[option];
  const reading = { option, habits, note: () => undefined };
  return (
    schema !== undefined &&
    readInTime(
      () => schema.safeParse({ text, reading }).success,
      () => false,
    )
  );
}

/**
 * The text picked for an option of a command: under the command's own name and the option's (`edges stock`), under that of
 * another command whose option is the same, or under the option's name alone.
 */
export function pickFor(
  picks: Readonly<Record<string, string>>,
  command: Command,
  option: string,
  commands: readonly Command[],
): string | undefined {
  const own = textOf(picks, `${command.name} ${option}`);
  if (own !== undefined) return own;
  const alike = commands.find(
    (other) => sameOption(command, other, option) && textOf(picks, `${other.name} ${option}`),
  );
  return alike ? textOf(picks, `${alike.name} ${option}`) : textOf(picks, option);
}

/** Commands that have an option of this name, one for each thing that the name stands for. */
export function meaningsOf(option: string, commands: readonly Command[]): readonly Command[] {
  const having = commands.filter((command) => isCalculating(command) && option in command.options.shape);
  return having.filter((command, i) => !having.slice(0, i).some((other) => sameOption(command, other, option)));
}

function sameOption(one: Command, other: Command, option: string): boolean {
  const [first, second] = [one.options.shape[option], other.options.shape[option]];
  if (!first || !second || !isCalculating(other)) return false;
  return first === second || factsOf(first).summary === factsOf(second).summary;
}

function textOf(picks: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(picks, key) ? picks[key] : undefined;
}
