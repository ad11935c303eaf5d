/** What a command looks like from outside: its names, its options and its examples. */

import type { z } from 'zod';
import { factsOf, type OptionFacts } from './reading.ts';

/** An ask and the headline it must produce. */
export interface Example {
  readonly ask: string;
  readonly headline: string;
}

export type Options = z.ZodObject<Record<string, z.ZodType>>;

/** All of a command but what it does. */
export interface CommandShape<O extends Options = Options> {
  readonly group?: string;
  readonly name: string;
  readonly summary: string;
  /** For platforms to ask, not for people: in no menu, no help and no completion. */
  readonly hidden?: true;
  readonly options: O;
  readonly examples: readonly [Example, ...Example[]];
}

type NamedFacts = OptionFacts & { readonly name: string };

const options = new WeakMap<CommandShape, readonly NamedFacts[]>();

/** A command's options with their facts, in order. */
export function optionsOf(command: CommandShape): readonly NamedFacts[] {
  const known = options.get(command);
  if (known) return known;
  const found = Object.entries(command.options.shape).map(([name, schema]) => ({ name, ...factsOf(schema) }));
  options.set(command, found);
  return found;
}

/** The commands that people are told of. */
export function listed<C extends CommandShape>(commands: readonly C[]): readonly C[] {
  return commands.filter(({ hidden }) => !hidden);
}

/** A command's name as it is typed, its group before it. */
export function fullName(command: Pick<CommandShape, 'group' | 'name'>): string {
  return command.group ? `${command.group} ${command.name}` : command.name;
}

/**
 * A command's name as it is typed at its shortest. Commands of a project keep their group: their own names are everyday
 * words, such as show and use, that begin sentences about other things.
 */
export function typedName(command: Pick<CommandShape, 'group' | 'name'>): string {
  return command.group === 'project' ? fullName(command) : command.name;
}

/** A command with its options told, as a line that the grammar reads. */
export function askLine(command: CommandShape, optionTexts: ReadonlyMap<string, string>): string {
  return [typedName(command), [...optionTexts].map(([option, text]) => `${option}: ${text}`).join(', ')]
    .join(' ')
    .trim();
}

/** Whether a command works something out from rooms, planks and sticks: its options are filled, and its answers can be kept. */
export function isCalculating({ group }: CommandShape): boolean {
  return group !== undefined && group !== 'project';
}
