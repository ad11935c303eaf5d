/** What a command is: its words, its options, examples that are also its tests, and what it does. */

import type { z } from 'zod';
import type { Desk } from '../accounts/account-access.ts';
import type { Asker } from '../accounts/asker.ts';
import type { CommandShape, Options } from '../input/command-shape.ts';
import type { Habits } from '../input/reading.ts';
import type { Project } from '../project/project.ts';
import type { Problem, Refusal, Reply } from '../reply/reply.ts';

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

/** One command. A first answer may be followed by better ones; the last one stands. */
export interface Command<O extends Options = Options> extends CommandShape<O> {
  run(options: z.output<O>, context: Context): Outcome | Promise<Outcome> | AsyncIterable<Outcome>;
}

/** A command as the registry keeps it. */
export function defineCommand<O extends Options>(command: Command<O>): Command {
  return command as unknown as Command;
}
