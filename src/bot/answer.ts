/** The one pipeline from an ask to its answers, and the one place where faults are caught. */

import { randomBytes } from 'node:crypto';
import { askTooLong } from '../words/asks.ts';
import { askLine, type Command, type Context, type Outcome } from './command.ts';
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
  const parsed = parseLine(invocation.text, commands);
  if (!parsed.ok) {
    yield { problems: parsed.problems };
    return;
  }
  const options = readOptions(parsed.command, parsed.told, invocation.habits);
  if (!options.ok) {
    yield { problems: options.problems };
    return;
  }
  const { command, told } = parsed;
  const context: Context = {
    habits: invocation.habits,
    commands,
    assumed: options.assumed,
    told,
    again: (changes) => askLine(command, new Map([...told, ...Object.entries(changes)])),
  };
  const outcome = command.run(options.values, context);
  if (Symbol.asyncIterator in outcome) yield* outcome;
  else yield outcome;
}
