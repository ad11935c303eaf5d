/** A command as a form: its fields, what stands in them already, and the ask that a filled form comes to. */

import { fullName, optionsOf } from '../input/command-shape.ts';
import type { KeyValueStore } from '../storage/types.ts';
import type { Command, Form } from './command.ts';

/** One field of a form. */
export interface Field {
  readonly option: string;
  /** The option's name as a label. */
  readonly label: string;
  readonly summary: string;
  /** Something to type for it: the placeholder. */
  readonly example: string;
  /** What is taken when nothing is typed; without it the field must be filled. */
  readonly standard?: string;
  /** The only words it takes; without them any text may be typed. */
  readonly choices?: readonly string[];
  /** Whether several lines help, as for several rooms. */
  readonly long: boolean;
  /** What was told so far, word for word. */
  readonly given?: string;
}

/** The fields of a command: what must be told first, then what was told, then the rest, each in the command's own order. */
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

/** The options of a filled form, without the empty fields; several lines become one, rooms and planks parted by semicolons. */
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

/** The command of a full name, or of its own name. */
export function commandNamed(name: string, commands: readonly Command[]): Command | undefined {
  return commands.find((command) => fullName(command) === name) ?? commands.find((command) => command.name === name);
}

// Asks not whole yet, kept a while under a short id, so that a form can be opened again with everything
// typed.

/** A day: long enough to measure what was missing. */
const KEPT_FOR = 24 * 3600 * 1000;

export interface KeptDraft {
  /** The account that asked (`accountKey`). */
  readonly by: string;
  /** What was told so far, where the command is known. */
  readonly form?: Form;
  /** The ask mended, as a line to ask. */
  readonly fix?: string;
  /** The ask with a plank of ours, as a line to ask. */
  readonly example?: string;
  /** What each choice of the open question asks, in their order. */
  readonly choices?: readonly string[];
  /** The options that could not be read. */
  readonly wrong?: readonly string[];
  /** The platform's id of the message that a filled form is put in place of. */
  readonly mends?: string;
}

/** Keeps a draft, in place of an earlier one of the id. Throws Outage. */
export async function keepDraft(kept: KeyValueStore, id: string, draft: KeptDraft): Promise<void> {
  await kept.set(`draft:${id}`, draft, KEPT_FOR);
}

/** The draft of an id; undefined when it is gone, was never there, or is another account's. Throws Outage. */
export async function keptDraft(kept: KeyValueStore, id: string, account: string): Promise<KeptDraft | undefined> {
  const draft = (await kept.get(`draft:${id}`)) as KeptDraft | undefined;
  return draft?.by === account ? draft : undefined;
}
