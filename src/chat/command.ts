/** What a command is: its words, its options, examples that are also its tests, and what it does. */

import type { z } from 'zod';
import type { ProjectAccess } from '../accounts/account-access.ts';
import type { Asker } from '../accounts/asker.ts';
import type { CommandShape, Options } from '../input/command-shape.ts';
import { drops, invents } from '../input/faithful.ts';
import { factsOf, type Preferences, problemsIn, type Typed, type Units } from '../input/reading.ts';
import type { Project } from '../project/project.ts';
import type { Action, Problem, Refusal, Reply } from '../reply/reply.ts';
import { missingOption, readingStopped } from '../text/chat-text.ts';
import { readInTime } from '../workers/time-limits.ts';

/** Several things the asker can mend, all at once. */
export interface Problems {
  readonly problems: readonly [Problem, ...Problem[]];
  /** The ask so far, for a platform that offers the rest as a form. */
  readonly form?: Form;
  /** The option that one question is open for. */
  readonly open?: string;
  /** What can be pressed or typed instead: each is a request that is answered. */
  readonly choices?: readonly Action[];
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

/** A reply as it leaves the pipeline: with its request as a form, where there are details to change. */
export interface ReplyWithForm extends Reply {
  readonly form?: Form;
}

/** A command and the text of each option, as they were typed. */
export interface CommandTexts {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
}

/** What a command may know besides its options. */
export interface Context {
  readonly asker: Asker;
  readonly preferences: Preferences;
  /** Every command, for help. */
  readonly commands: readonly Command[];
  /** How doubtful things were read, so far. */
  readonly assumed: readonly string[];
  /** What was typed, by option. */
  readonly optionTexts: ReadonlyMap<string, string>;
  /** The asker's projects; undefined where nothing is kept. */
  readonly access: ProjectAccess | undefined;
  /** Milliseconds since 1970. */
  now(): number;
  /** The address that share pages are reached by; undefined where they are not. */
  readonly address?: string | undefined;
  /** Asks a line as this asker would, filled from the project in use, or from one as it would be. */
  ask(line: string, project?: Project): Promise<AnsweredRequest>;
  /** A saved request taken apart; undefined if it can't be read. */
  parse(line: string): CommandTexts | undefined;
  /** Everything typed has been read and goes together: what takes long begins. A rehearsal ends here. */
  begin(): void;
  /** The same ask with these options told otherwise, as a line to type. */
  again(changes: Readonly<Record<string, string>>): string;
  /** What was told, to another command by its own name: every option that both have. */
  alike(name: string): string;
}

/** The answer to a line that stands, and the line whole: with what was filled in from the project in use. */
export interface AnsweredRequest {
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

// Options read: the text told for each, or its standard, into exact values; every problem of an ask at once.

/** Values by option, and how doubtful ones were read. */
export type OptionsRead =
  | { readonly ok: true; readonly values: Readonly<Record<string, unknown>>; readonly assumed: readonly string[] }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

/** Reads all options of a command; where that takes too long, that is the Problem. Never throws on what is typed. */
export function readOptions(
  command: Command,
  optionTexts: ReadonlyMap<string, string>,
  preferences: Preferences,
): OptionsRead {
  const late = (): OptionsRead => ({ ok: false, problems: [readingStopped([...optionTexts.values()].join(' '))] });
  return readInTime(() => optionsRead(command, optionTexts, preferences), late);
}

function optionsRead(
  command: Command,
  optionTexts: ReadonlyMap<string, string>,
  preferences: Preferences,
): OptionsRead {
  const values: Record<string, unknown> = {};
  const problems: Problem[] = [];
  const assumed: string[] = [];
  const metric = unitsOfRequest(optionTexts, preferences) === 'metric';
  for (const [option, schema] of Object.entries(command.options.shape)) {
    const { standard, metric: round = standard, summary } = factsOf(schema);
    const said = optionTexts.get(option) || undefined;
    const text = said ?? (metric ? round : standard);
    if (text === undefined) {
      problems.push(missingOption(option, summary));
      continue;
    }
    const note = (line: string): void => {
      if (said !== undefined && !assumed.includes(line)) assumed.push(line);
    };
    const typed: Typed = { text, reading: { option, preferences, note } };
    const value = schema.safeParse(typed);
    if (value.success) values[option] = value.data;
    else problems.push(...problemsIn(value.error).map((problem) => faithful(problem, typed, schema)));
  }
  const [first, ...rest] = problems;
  return first ? { ok: false, problems: [first, ...rest] } : { ok: true, values, assumed };
}

const METRIC = /\d\s*(?:mm|cm|m|kg|m²|m2|qm|ml|l)(?![\p{L}\d])/iu;
const IMPERIAL =
  /\d\s*(?:['"′″’”]|(?:ft|feet|foot|in|inch|inches|yd|yds|yards?|lbs?|pounds?|sq|fl oz|gal|gallons?)(?![\p{L}\d]))/iu;

/** The units that a request is told in, by all of its texts; the asker's own where it is told in none or in both. */
function unitsOfRequest(optionTexts: ReadonlyMap<string, string>, preferences: Preferences): Units {
  const text = [...optionTexts.values()].join(' ; ');
  const [metric, imperial] = [METRIC.test(text), IMPERIAL.test(text)];
  if (metric === imperial) return preferences.units;
  return metric ? 'metric' : 'imperial';
}

/** A problem whose fix is a value that this option reads, with all that was typed and no figure beside it; without one where there is none. */
function faithful({ fix, ...problem }: Problem, { text, reading }: Typed, schema: z.ZodType): Problem {
  const typed: Typed = { text: fix ?? '', reading: { ...reading, note: () => undefined } };
  const holds = fix !== undefined && !drops(fix, text, 'line') && !invents(fix, [text]);
  return holds && schema.safeParse(typed).success ? { ...problem, fix } : problem;
}
