/** A command's interface: its names, options and examples. */

import type { z } from 'zod';
import { factsOf, type OptionFacts } from './reading.ts';

/** A request and the headline it must produce. */
export interface Example {
  readonly ask: string;
  /** The line itself, or what it is with these commands. */
  readonly headline: string | ((commands: readonly CommandShape[]) => string);
}

/** The headline that an example must produce where there are these commands. */
export function headlineOf({ headline }: Example, commands: readonly CommandShape[]): string {
  return typeof headline === 'string' ? headline : headline(commands);
}

export type Options = z.ZodObject<Record<string, z.ZodType>>;

export interface CommandShape<O extends Options = Options> {
  readonly group?: string;
  readonly name: string;
  readonly summary: string;
  /** Used by platforms, not people: not listed in any menu, help or completion. */
  readonly hidden?: true;
  /** At least twelve ways people ask for it in a sentence; none where it is never asked for. */
  readonly phrases?: readonly string[];
  readonly options: O;
  readonly examples: readonly [Example, ...Example[]];
}

type NamedFacts = OptionFacts & { readonly name: string };

const options = new WeakMap<CommandShape, readonly NamedFacts[]>();

export function optionsOf(command: CommandShape): readonly NamedFacts[] {
  const known = options.get(command);
  if (known) return known;
  const found = Object.entries(command.options.shape).map(([name, schema]) => ({ name, ...factsOf(schema) }));
  options.set(command, found);
  return found;
}

/** The commands shown to people. */
export function listed<C extends CommandShape>(commands: readonly C[]): readonly C[] {
  return commands.filter(({ hidden }) => !hidden);
}

export function fullName(command: Pick<CommandShape, 'group' | 'name'>): string {
  return command.group ? `${command.group} ${command.name}` : command.name;
}

/**
 * The shortest name a command can be typed by. Project commands keep their group, because their own names are everyday
 * words, such as show and use, that start sentences about other things.
 */
export function typedName(command: Pick<CommandShape, 'group' | 'name'>): string {
  return command.group === 'project' ? fullName(command) : command.name;
}

/** A command with option texts as a line the grammar reads. */
export function askLine(command: CommandShape, optionTexts: ReadonlyMap<string, string>): string {
  return [typedName(command), [...optionTexts].map(([option, text]) => `${option}: ${text}`).join(', ')]
    .join(' ')
    .trim();
}

/**
 * Whether a command computes something from rooms, planks and sticks: its options are filled in, and its answers can be
 * saved.
 */
export function isCalculating({ group }: CommandShape): boolean {
  return group !== undefined && group !== 'project';
}
