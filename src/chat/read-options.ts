/** Options read: the text told for each, or its standard, into exact values; every problem of an ask at once. */

import type { z } from 'zod';
import { drops, invents } from '../input/faithful.ts';
import { factsOf, type Habits, problemsIn, type Typed, type Units } from '../input/reading.ts';
import type { Problem } from '../reply/reply.ts';
import { missingOption, readingStopped } from '../text/chat-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import type { Command } from './command.ts';

/** Values by option, and how doubtful ones were read. */
export type OptionsRead =
  | { readonly ok: true; readonly values: Readonly<Record<string, unknown>>; readonly assumed: readonly string[] }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

/** Reads all options of a command; where that takes too long, that is the Problem. Never throws on what is typed. */
export function readOptions(command: Command, told: ReadonlyMap<string, string>, habits: Habits): OptionsRead {
  const late = (): OptionsRead => ({ ok: false, problems: [readingStopped([...told.values()].join(' '))] });
  return readInTime(() => optionsRead(command, told, habits), late);
}

function optionsRead(command: Command, told: ReadonlyMap<string, string>, habits: Habits): OptionsRead {
  const values: Record<string, unknown> = {};
  const problems: Problem[] = [];
  const assumed: string[] = [];
  const metric = unitsOfRequest(told, habits) === 'metric';
  for (const [option, schema] of Object.entries(command.options.shape)) {
    const { standard, metric: round = standard, summary } = factsOf(schema);
    const said = told.get(option) || undefined;
    const text = said ?? (metric ? round : standard);
    if (text === undefined) {
      problems.push(missingOption(option, summary));
      continue;
    }
    const note = (line: string): void => {
      if (said !== undefined && !assumed.includes(line)) assumed.push(line);
    };
    const typed: Typed = { text, reading: { option, habits, note } };
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
export function unitsOfRequest(told: ReadonlyMap<string, string>, habits: Habits): Units {
  const text = [...told.values()].join(' ; ');
  const [metric, imperial] = [METRIC.test(text), IMPERIAL.test(text)];
  if (metric === imperial) return habits.units;
  return metric ? 'metric' : 'imperial';
}

/** A problem whose fix is a value that this option reads, with all that was typed and no figure beside it; without one where there is none. */
function faithful({ fix, ...problem }: Problem, { text, reading }: Typed, schema: z.ZodType): Problem {
  const typed: Typed = { text: fix ?? '', reading: { ...reading, note: () => undefined } };
  const holds = fix !== undefined && !drops(fix, text, 'line') && !invents(fix, [text]);
  return holds && schema.safeParse(typed).success ? { ...problem, fix } : problem;
}
