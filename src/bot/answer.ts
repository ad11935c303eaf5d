/** The one pipeline from an ask to its answers, and the one place where faults are caught. */

import { randomBytes } from 'node:crypto';
import type { Problem } from '../reply/problem.ts';
import { askTooLong, SAMPLE_ASK } from '../words/asks.ts';
import { nothingAsked } from '../words/plain.ts';
import { askLine, type Command, type Context, fullName, type Outcome, type Problems } from './command.ts';
import { LONGEST_ASK, type Parsed, parseLine } from './grammar.ts';
import type { Invocation } from './invocation.ts';
import { parseSentence } from './plain.ts';
import { Outage, type Ports } from './ports.ts';
import { readOptions } from './read-options.ts';

/** A fault of ours, as the asker learns of it. */
export interface Fault {
  readonly reference: string;
  /** The store did not answer: nothing was saved, and asking again may do. */
  readonly outage: boolean;
}

export type Answer = Outcome | Fault;

/** Answers an ask: each answer replaces the one before. Never throws; a fault is told to the port and to the asker. */
export async function* answer(
  invocation: Invocation,
  commands: readonly Command[],
  ports: Ports,
): AsyncGenerator<Answer> {
  try {
    yield* outcomes(invocation, commands);
  } catch (cause) {
    const reference = randomBytes(4).toString('hex');
    ports.fault(reference, cause);
    yield { reference, outage: cause instanceof Outage };
  }
}

async function* outcomes(invocation: Invocation, commands: readonly Command[]): AsyncGenerator<Outcome> {
  if (invocation.text.length > LONGEST_ASK) {
    yield { problems: [askTooLong(invocation.text.length, LONGEST_ASK)] };
    return;
  }
  const parsed = parse(invocation, commands);
  if (!parsed.ok) {
    yield withForm(parsed.problems, commands);
    return;
  }
  const options = readOptions(parsed.command, parsed.told, invocation.habits);
  if (!options.ok) {
    yield mendable(options, parsed);
    return;
  }
  const { command, told } = parsed;
  const context: Context = {
    asker: invocation.asker,
    habits: invocation.habits,
    commands,
    assumed: [...(parsed.assumed ?? []), ...options.assumed],
    told,
    again: (changes) => askLine(command, new Map([...told, ...Object.entries(changes)])),
  };
  const outcome = command.run(options.values, context);
  if (Symbol.asyncIterator in outcome) for await (const one of outcome) yield mendable(one, parsed);
  else yield mendable(outcome, parsed);
}

interface Told {
  readonly command: Command;
  readonly told: ReadonlyMap<string, string>;
}

function mendable(outcome: Outcome, told: Told): Outcome {
  if (!('problems' in outcome)) return outcome;
  const form = { command: fullName(told.command), told: Object.fromEntries(told.told) };
  return { problems: typeable(outcome.problems, told), form };
}

/** A line typed for us by the grammar; somebody's message as a sentence. */
function parse({ text, habits, written }: Invocation, commands: readonly Command[]): Parsed {
  if (written !== 'message') return parseLine(text, commands, habits);
  return parseSentence(text, commands, habits) ?? { ok: false, problems: [nothingAsked(text)] };
}

/** Problems of a line, with the form of the whole ask that mends it: what was read of it is told there. */
function withForm(problems: Problems['problems'], commands: readonly Command[]): Problems {
  const mended = parseLine(problems[0].fix, commands);
  // A sample holds nothing of the asker's.
  if (!mended.ok || problems[0].fix === SAMPLE_ASK) return { problems };
  return { problems, form: { command: fullName(mended.command), told: Object.fromEntries(mended.told) } };
}

/** Problems whose fix is the whole ask, mended in every option, so that it can be typed as it is. */
function typeable([first, ...rest]: Problems['problems'], { command, told }: Told): Problems['problems'] {
  const mended = new Map(told);
  for (const { option, fix } of [first, ...rest].reverse()) if (option !== 'ask') mended.set(option, fix);
  const whole = (problem: Problem): Problem =>
    problem.option === 'ask' ? problem : { ...problem, fix: askLine(command, inOrder(command, mended, problem)) };
  return [whole(first), ...rest.map(whole)];
}

/** The options in the command's own order, with this problem's mend. */
function inOrder(command: Command, mended: ReadonlyMap<string, string>, { option, fix }: Problem): Map<string, string> {
  const all = new Map([...mended, [option, fix]]);
  const names = [...new Set([...Object.keys(command.options.shape), ...all.keys()])];
  return new Map(names.flatMap((name) => [...all].filter(([told]) => told === name)));
}
