/** The one pipeline from an ask to its answers, and the one place where faults are caught. */

import { randomBytes } from 'node:crypto';
import type { Problem } from '../reply/problem.ts';
import { askTooLong } from '../words/asks.ts';
import { askLine, type Command, type Context, type Outcome, type Problems } from './command.ts';
import { LONGEST_ASK, parseLine } from './grammar.ts';
import type { Invocation } from './invocation.ts';
import type { Ports } from './ports.ts';
import { readOptions } from './read-options.ts';

/** A fault of ours, as the asker learns of it. */
export interface Fault {
  readonly reference: string;
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
    yield { reference };
  }
}

async function* outcomes(invocation: Invocation, commands: readonly Command[]): AsyncGenerator<Outcome> {
  if (invocation.text.length > LONGEST_ASK) {
    yield { problems: [askTooLong(invocation.text.length, LONGEST_ASK)] };
    return;
  }
  const parsed = parseLine(invocation.text, commands, invocation.habits);
  if (!parsed.ok) {
    yield { problems: parsed.problems };
    return;
  }
  const options = readOptions(parsed.command, parsed.told, invocation.habits);
  if (!options.ok) {
    yield { problems: typeable(options.problems, parsed) };
    return;
  }
  const { command, told } = parsed;
  const context: Context = {
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
  return 'problems' in outcome ? { problems: typeable(outcome.problems, told) } : outcome;
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
