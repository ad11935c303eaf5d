/** What a command is: its names, options, examples (which are also its tests), and what it does. */

import type { z } from 'zod';
import type { ProjectAccess } from '../accounts/account-access.ts';
import type { Asker } from '../accounts/records.ts';
import type { CommandShape, Options } from '../input/command-shape.ts';
import { drops, invents } from '../input/faithful.ts';
import { factsOf, type Preferences, problemsIn, type Typed, type Units } from '../input/reading.ts';
import type { Project } from '../project/project.ts';
import type { Action, Problem, Refusal, Reply } from '../reply/reply.ts';
import { missingOption, readingStopped } from '../text/chat-text.ts';
import { readInTime } from '../workers/time-limits.ts';

/** Everything the user has to fix, reported at once. */
export interface Problems {
  readonly problems: readonly [Problem, ...Problem[]];
  /** The request so far, for platforms that ask for the rest in a form. */
  readonly form?: Form;
  /** Set if a single question is open: the option it is for. */
  readonly open?: string;
  /** Alternatives to press or type, each a request that gets an answer. */
  readonly choices?: readonly Action[];
  /** The question after an answer that was said to be wrong. */
  readonly complaint?: true;
  /** Nothing is wrong with the request; it only has to be sent again. */
  readonly again?: true;
  /** If only the plank is missing: the same request with an example plank. */
  readonly example?: string | undefined;
}

export interface Form {
  readonly command: string;
  readonly told: Readonly<Record<string, string>>;
}

/** How a sentence was understood, kept with its answer for whoever says that it is wrong. */
export interface Understood extends Form {
  /** The sentence; of a follow-up, the one that began it. */
  readonly said: string;
}

export type Outcome = Reply | Problems | Refusal;

/** A reply as it leaves the pipeline; with a form if it has details to change. */
export interface ReplyWithForm extends Reply {
  readonly form?: Form;
  /** Set if it answers a sentence. */
  readonly understood?: Understood;
}

/** A command and the text of each option, as typed. */
export interface CommandTexts {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
}

/** What a command gets besides its options. */
export interface Context {
  readonly asker: Asker;
  readonly preferences: Preferences;
  /** All commands, for help. */
  readonly commands: readonly Command[];
  /** How ambiguous input was interpreted so far. */
  readonly assumed: readonly string[];
  /** What was typed, by option. */
  readonly optionTexts: ReadonlyMap<string, string>;
  /** The user's projects; undefined where nothing is stored. */
  readonly access: ProjectAccess | undefined;
  /** Milliseconds since 1970. */
  now(): number;
  /** Base address of the share pages; undefined if there are none. */
  readonly address?: string | undefined;
  /** Answers a line on the user's behalf, filled in from the open project or from the one passed. */
  ask(line: string, project?: Project): Promise<AnsweredRequest>;
  /** Takes a saved request apart; undefined if it can't be read. */
  parse(line: string): CommandTexts | undefined;
  /** Called once all input is read and consistent, before anything slow. A trial run ends here. */
  begin(): void;
  /** The same request with these options changed, as a line to type. */
  again(changes: Readonly<Record<string, string>>): string;
  /** The same request for another command, with every option that both have. */
  alike(name: string): string;
}

/** The final answer to a line, and the line with everything that was filled in. */
export interface AnsweredRequest {
  readonly outcome: Outcome;
  readonly line: string;
}

/** One command. A first answer may be followed by better ones; the last one stands. */
export interface Command<O extends Options = Options> extends CommandShape<O> {
  run(options: z.output<O>, context: Context): Outcome | Promise<Outcome> | AsyncIterable<Outcome>;
}

export function defineCommand<O extends Options>(command: Command<O>): Command {
  return command as unknown as Command;
}

/** Values by option, and how ambiguous ones were interpreted. */
export type OptionsRead =
  | { readonly ok: true; readonly values: Readonly<Record<string, unknown>>; readonly assumed: readonly string[] }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

/**
 * Reads all options of a command and reports every problem at once, including a reader that takes too long. Never
 * throws on user input.
 */
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
  const metric = unitsOfRequest(optionTexts.values(), preferences) === 'metric';
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

/** The units all of the texts use together; the user's own if they use neither or both. */
export function unitsOfRequest(texts: Iterable<string>, preferences: Preferences): Units {
  const text = [...texts].join(' ; ');
  const [metric, imperial] = [METRIC.test(text), IMPERIAL.test(text)];
  if (metric === imperial) return preferences.units;
  return metric ? 'metric' : 'imperial';
}

/** Drops the fix unless the option reads it and it keeps everything typed without adding a number. */
function faithful({ fix, ...problem }: Problem, { text, reading }: Typed, schema: z.ZodType): Problem {
  const typed: Typed = { text: fix ?? '', reading: { ...reading, note: () => undefined } };
  const holds = fix !== undefined && !drops(fix, text, 'line') && !invents(fix, [text]);
  return holds && schema.safeParse(typed).success ? { ...problem, fix } : problem;
}
