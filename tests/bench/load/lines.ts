/** What people ask under load: the examples of all commands, in the measure in which they are likely asked, and notes on projects. */

import { commands } from '../../../commands/all.ts';
import { parseLine } from '../../../src/chat/grammar.ts';
import { fullName } from '../../../src/input/command-shape.ts';
import { seeded } from '../../../src/layout/scatter.ts';
import type { Said } from './said.ts';

/** How often each group is asked, and the commands that are asked more than others. */
const WEIGHTS: Readonly<Record<string, number>> = { tape: 8, 'floor planks': 6, 'floor compare': 1, help: 1 };

/** Lines that each give one answer, whoever asks them and when, with how often they are asked. */
export function sums(): readonly { readonly line: string; readonly weight: number }[] {
  const given = commands
    .filter(({ group }) => group !== 'project')
    .flatMap((command) => command.examples.map(({ ask }) => ({ line: ask, weight: WEIGHTS[fullName(command)] ?? 2 })));
  // Some are typed wrong.
  const wrong = [`floor planks room: 12' x, plank: 6 x 48 in`, 'tape sum: 12 + apples', 'trim list room: 12 x 14'];
  return [...given, ...wrong.map((line) => ({ line, weight: 2 }))].filter(({ line }) => parseLine(line, commands).ok);
}

/** Draws lines by their weight, the same ones for the same seed. */
export function drawn(seed: number): () => string {
  const random = seeded(seed);
  const all = sums();
  const whole = all.reduce((sum, { weight }) => sum + weight, 0);
  return () => {
    let left = random() * whole;
    for (const { line, weight } of all) {
      left -= weight;
      if (left < 0) return line;
    }
    return all[0]?.line ?? '';
  };
}

/** Begins a project. */
export const BEGIN = 'project new Upstairs flat';

/** Keeps a mark that is found again in the project. */
export function note(mark: string): string {
  return `project log do: note mark ${mark}`;
}

/** The marks among the notes of a project. */
export function marksIn(notes: readonly { readonly text: string }[]): readonly string[] {
  return notes.flatMap(({ text }) => /^mark (\S+)$/.exec(text)?.slice(1) ?? []);
}

/** Whether an answer acknowledges a note. */
export function isNoted({ lines }: Said): boolean {
  return lines.some((line) => /Noted, number \d+\./.test(line));
}
