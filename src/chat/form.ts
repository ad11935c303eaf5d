/** A command as a form: its fields, their current values, and the request a filled form makes. */

import { askLine, fullName, optionsOf } from '../input/command-shape.ts';
import type { Problem } from '../reply/reply.ts';
import type { KeyValueStore } from '../storage/types.ts';
import type { Command, CommandTexts, Form, Problems } from './command.ts';

export interface Field {
  readonly option: string;
  /** The label. */
  readonly label: string;
  readonly summary: string;
  /** The placeholder. */
  readonly example: string;
  /** The default; without one the field is required. */
  readonly standard?: string;
  /** The only values it accepts; without them it is free text. */
  readonly choices?: readonly string[];
  /** Whether it deserves several lines, as for several rooms. */
  readonly long: boolean;
  /** What was typed so far, word for word. */
  readonly given?: string;
}

/**
 * The fields of a command: required ones first, then those already filled in, then the rest, each in the command's own
 * order.
 */
export function formFields(command: Command, given: Readonly<Record<string, string>> = {}): readonly Field[] {
  const fields = optionsOf(command).map(({ name, kind, summary, example, standard, choices }): Field => {
    const value = Object.hasOwn(given, name) ? given[name] : undefined;
    return {
      option: name,
      label: name.charAt(0).toUpperCase() + name.slice(1).replaceAll('-', ' '),
      summary,
      example,
      long: kind === 'room' || kind === 'plank' || kind === 'text',
      ...(standard === undefined ? {} : { standard }),
      ...(kind === 'choice' && choices ? { choices } : {}),
      ...(value === undefined || value === '' ? {} : { given: value }),
    };
  });
  const rank = ({ standard, given: value }: Field): number =>
    standard === undefined ? 0 : value === undefined ? 2 : 1;
  return [0, 1, 2].flatMap((wanted) => fields.filter((field) => rank(field) === wanted));
}

/**
 * The options of a filled form without the empty fields; several lines become one, with rooms and planks separated by
 * semicolons.
 */
export function formGiven(
  command: Command,
  typed: Readonly<Record<string, string | null | undefined>>,
): ReadonlyMap<string, string> {
  return new Map(
    optionsOf(command).flatMap(({ name, kind }): [string, string][] => {
      const between = kind === 'room' || kind === 'plank' ? '; ' : ' ';
      const lines = ((Object.hasOwn(typed, name) ? typed[name] : undefined) ?? '').split(/[\r\n]+/);
      const text = lines
        .map((line) => line.trim().replace(/(?<![;,])[;,]+$/, ''))
        .filter((line) => line !== '')
        .join(between);
      return text === '' ? [] : [[name, text]];
    }),
  );
}

/** By full name or by its own name. */
export function commandNamed(name: string, commands: readonly Command[]): Command | undefined {
  return commands.find((command) => fullName(command) === name) ?? commands.find((command) => command.name === name);
}

// Drafts: incomplete requests, stored for a while so that a form can be opened again with everything typed.

/** A day: long enough to go and measure. */
const KEPT_FOR = 24 * 3600 * 1000;

export interface KeptDraft {
  /** The account it belongs to (`accountKey`). */
  readonly by: string;
  /** What was typed so far, if the command is known. */
  readonly form?: Form;
  /** The corrected request as a line. */
  readonly fix?: string;
  /** The request with an example plank, as a line. */
  readonly example?: string;
  /** The request behind each choice of the open question, in order. */
  readonly choices?: readonly string[];
  /** Options that could not be read. */
  readonly wrong?: readonly string[];
  /** The platform's id of the message that the filled form replaces. */
  readonly mends?: string;
}

/** Replaces an earlier draft with the same id. Throws Outage. */
export async function keepDraft(kept: KeyValueStore, id: string, draft: KeptDraft): Promise<void> {
  await kept.set(`draft:${id}`, draft, KEPT_FOR);
}

/** Undefined if it is gone, never existed, or belongs to another account. Throws Outage. */
export async function keptDraft(kept: KeyValueStore, id: string, account: string): Promise<KeptDraft | undefined> {
  const draft = (await kept.get(`draft:${id}`)) as KeptDraft | undefined;
  return draft?.by === account ? draft : undefined;
}

/** Makes each fix the whole corrected request, so that it can be typed as is; no fix if one option can't be corrected. */
export function wholeFixes(
  [first, ...rest]: Problems['problems'],
  { command, optionTexts }: CommandTexts,
): Problems['problems'] {
  const mended = new Map(optionTexts);
  const ofOptions = [first, ...rest].filter(({ option }) => option !== 'ask');
  const hopeless = ofOptions.some(({ fix }) => fix === undefined);
  for (const { option, fix = '' } of ofOptions.toReversed()) mended.set(option, fix);
  const whole = (problem: Problem): Problem => {
    if (problem.option === 'ask') return problem;
    return { ...problem, fix: hopeless ? undefined : askLine(command, inCommandOrder(command, mended, problem)) };
  };
  return [whole(first), ...rest.map(whole)];
}

/** In the command's own order, with this problem's fix. */
export function inCommandOrder(
  command: Command,
  mended: ReadonlyMap<string, string>,
  { option, fix = '' }: Pick<Problem, 'option' | 'fix'>,
): Map<string, string> {
  const all = new Map([...mended, [option, fix]]);
  const names = [...new Set([...Object.keys(command.options.shape), ...all.keys()])];
  return new Map(names.flatMap((name) => [...all].filter(([given]) => given === name)));
}
