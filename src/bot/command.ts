/** What a command is: its words, its options, examples that are also its tests, and what it does. */

import type { z } from 'zod';
import { factsOf, type OptionFacts } from '../measure/option.ts';
import type { Habits } from '../measure/reading.ts';
import type { Project } from '../project/project.ts';
import type { Problem, Refusal } from '../reply/problem.ts';
import type { Reply } from '../reply/reply.ts';
import type { Desk } from './desk.ts';
import type { Asker } from './asker.ts';

/** An ask and the headline it must produce. */
export interface Example {
  readonly ask: string;
  readonly headline: string;
}

/** Several things the asker can mend, all at once. */
export interface Problems {
  readonly problems: readonly [Problem, ...Problem[]];
  /** The ask so far, for a platform that offers the rest as a form. */
  readonly form?: Form;
  /** Nothing is wrong with the ask: the fix is the ask itself, to be asked again. */
  readonly again?: true;
  /** Where nothing is missing but the plank: the same request with a plank of ours. */
  readonly example?: string | undefined;
}

/** A command's full name, and the text told for each of its options. */
export interface Form {
  readonly command: string;
  readonly told: Readonly<Record<string, string>>;
}

export type Outcome = Reply | Problems | Refusal;

/** What a command may know besides its options. */
export interface Context {
  readonly asker: Asker;
  readonly habits: Habits;
  /** Every command, for help. */
  readonly commands: readonly Command[];
  /** How doubtful things were read, so far. */
  readonly assumed: readonly string[];
  /** What was typed, by option. */
  readonly told: ReadonlyMap<string, string>;
  /** The asker's projects; undefined where nothing is kept. */
  readonly desk: Desk | undefined;
  /** Milliseconds since 1970. */
  now(): number;
  /** The address that share pages are reached by; undefined where they are not. */
  readonly address?: string | undefined;
  /** Asks a line as this asker would, filled from the project in use, or from one as it would be. */
  ask(line: string, project?: Project): Promise<Asked>;
  /** Everything typed has been read and goes together: what takes long begins. A rehearsal ends here. */
  begin(): void;
  /** The same ask with these options told otherwise, as a line to type. */
  again(changes: Readonly<Record<string, string>>): string;
  /** What was told, to another command by its own name: every option that both have. */
  alike(name: string): string;
}

/** The answer to a line that stands, and the line whole: with what was filled in from the project in use. */
export interface Asked {
  readonly outcome: Outcome;
  readonly line: string;
}

export type Options = z.ZodObject<Record<string, z.ZodType>>;

/** One command. A first answer may be followed by better ones; the last one stands. */
export interface Command<O extends Options = Options> {
  readonly group?: string;
  readonly name: string;
  readonly summary: string;
  /** For platforms to ask, not for people: in no menu, no help and no completion. */
  readonly hidden?: true;
  readonly options: O;
  readonly examples: readonly [Example, ...Example[]];
  run(options: z.output<O>, context: Context): Outcome | Promise<Outcome> | AsyncIterable<Outcome>;
}

/** A command as the registry keeps it. */
export function defineCommand<O extends Options>(command: Command<O>): Command {
  return command as unknown as Command;
}

type NamedFacts = OptionFacts & { readonly name: string };

const options = new WeakMap<Command, readonly NamedFacts[]>();

/** A command's options with their facts, in order. */
export function optionsOf(command: Command): readonly NamedFacts[] {
  const known = options.get(command);
  if (known) return known;
  const found = Object.entries(command.options.shape).map(([name, schema]) => ({ name, ...factsOf(schema) }));
  options.set(command, found);
  return found;
}

/** The commands that people are told of. */
export function listed(commands: readonly Command[]): readonly Command[] {
  return commands.filter(({ hidden }) => !hidden);
}

/** A command's name as it is typed, its group before it. */
export function fullName(command: Command): string {
  return command.group ? `${command.group} ${command.name}` : command.name;
}

/**
 * A command's name as it is typed at its shortest. Commands of a project keep their group: their own names are everyday
 * words, such as show and use, that begin sentences about other things.
 */
export function typedName(command: Command): string {
  return command.group === 'project' ? fullName(command) : command.name;
}

/** A command with its options told, as a line that the grammar reads. */
export function askLine(command: Command, told: ReadonlyMap<string, string>): string {
  return [typedName(command), [...told].map(([option, text]) => `${option}: ${text}`).join(', ')].join(' ').trim();
}
