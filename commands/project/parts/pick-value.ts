/** The value of a pick, read by the option that it is for: which of several that is, and what is wrong with it. */

import { isRead, meaningsOf } from '../../../src/chat/autofill.ts';
import type { Command } from '../../../src/chat/command.ts';
import { isExamplePlank } from '../../../src/input/parse-plank.ts';
import { factsOf, type Habits, problemsIn } from '../../../src/input/reading.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { exampleKept, pickAmbiguous, pickTooLong, pickUnknown } from '../../../src/text/project-problems-text.ts';
import { plainly } from './pick-plain.ts';

/** The key that a value is kept under, and the value as it is kept; a problem where no option of its name reads it, or where several things are meant. */
export function valueRead(
  key: string,
  value: string,
  commands: readonly Command[],
  habits: Habits,
  notes: string[],
): readonly [key: string, text: string] | { readonly problem: Problem } {
  const [name, own] = key.includes(' ') ? key.split(' ') : [undefined, key];
  const option = own ?? key;
  if (option === 'plank' && isExamplePlank(value)) return { problem: exampleKept(`${key}: ${value}`) };
  if (value.length > LIMITS.pick) return { problem: pickTooLong(option, LIMITS.pick) };
  const meanings = meaningsOf(option, commands);
  const meant =
    name === undefined ? meanings : commands.filter((one) => one.name === name && option in one.options.shape);
  const readers = meant.filter((one) => isRead(one, option, value, habits));
  // Where only one of several meanings reads the value, that one is meant.
  const [first, ...others] = meant.length > 1 && readers.length === 1 ? readers : meant;
  if (!first) return { problem: pickUnknown(key, undefined, ['plank', 'gap', 'tax']) };
  if (others.length > 0) {
    const all = meant.map((one) => ({ command: one.name, summary: summaryOf(one, option) }));
    return { problem: pickAmbiguous(option, value, all) };
  }
  const read = first.options.shape[option]?.safeParse({
    text: value,
    reading: { option, habits, note: (line: string) => void (notes.includes(line) || notes.push(line)) },
  });
  if (read?.success !== false)
    return [meant.length > 1 ? `${first.name} ${option}` : key, plainly(value, first, option, habits)];
  const [wrong] = problemsIn(read.error);
  const { expected = '', fix } = wrong ?? {};
  const line = fix === undefined ? undefined : `project pick ${key}: ${fix}`;
  return { problem: { option: 'ask', got: `${key}: ${value}`, expected, fix: line } };
}

function summaryOf({ options }: Command, option: string): string {
  const schema = options.shape[option];
  return schema ? factsOf(schema).summary : '';
}
