/** A plain sentence to the command of its topic, told in the grammar's own words; or the problem that asks one fact back. */

import { readPlain, type Topic } from '../measure/plain.ts';
import type { Habits } from '../measure/reading.ts';
import type { Problem } from '../reply/problem.ts';
import { SAMPLE_ASK } from '../words/asks.ts';
import { askedBack, notYet, unusedNote } from '../words/plain.ts';
import { askLine, type Command } from './command.ts';

/** A sentence understood. `read` tells whether any of it was told to an option of the command typed, if one was. */
export type Sentence =
  | {
      readonly ok: true;
      readonly command: Command;
      readonly told: ReadonlyMap<string, string>;
      readonly assumed: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly [Problem]; readonly read: boolean };

/** What a sample room and plank are asked with, for a topic that has no command. */
const SAMPLE_PLANK = '6 x 48 in, 10 per carton';

/** Reads a sentence for the commands there are; `typed` is the command before it. Undefined when nothing is asked. */
export function parseSentence(
  text: string,
  commands: readonly Command[],
  habits: Habits,
  typed?: Command,
): Sentence | undefined {
  const plain = readPlain(text, habits, typed && topicNamed(typed.name));
  if (plain.kind === 'nothing') return undefined;
  const { topic, told } = plain;
  const command = commandOf(topic, commands);
  const read = told.size > 0 && (typed === undefined || command === typed);
  if (!command) return { ok: false, problems: [notYet(text, topic, told, instead(told))], read };
  if (plain.kind === 'ask') {
    const known = [...told].filter(([option]) => option in command.options.shape);
    const others = [...told].filter(([option]) => !(option in command.options.shape)).map((pair) => pair.join(' '));
    const assumed = others.length > 0 ? [...plain.assumed, unusedNote(others)] : plain.assumed;
    return { ok: true, command, told: new Map(known), assumed };
  }
  const { missing, got, why, samples } = plain;
  // The options in the order of the command, so that the fix reads like any other ask.
  const options = Object.keys(command.options.shape).flatMap((option): [string, string][] => {
    const value = told.get(option) ?? samples.get(option);
    return value === undefined ? [] : [[option, value]];
  });
  const whole = options.length > 0 ? askLine(command, new Map(options)) : SAMPLE_ASK;
  return { ok: false, problems: [askedBack(missing, got || text, why, whole)], read };
}

/** The command that works a topic out: the one of its name, alone or in its group. */
function commandOf(topic: Topic, commands: readonly Command[]): Command | undefined {
  return commands.find(({ name, group }) => (topic === 'trim' ? group === 'trim' && name === 'list' : name === topic));
}

function topicNamed(name: string): Topic | undefined {
  return (['planks', 'tape', 'safety', 'sources', 'help'] as const).find((topic) => topic === name);
}

/** What can be asked of the same room today. */
function instead(told: ReadonlyMap<string, string>): string {
  const room = told.get('room');
  return room === undefined ? SAMPLE_ASK : `planks room: ${room}, plank: ${SAMPLE_PLANK}`;
}
