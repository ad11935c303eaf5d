/** What a reader is given and what it gives back: typed text, the asker's habits, and a value or problems. */

import { z } from 'zod';
import type { Problem } from '../reply/reply.ts';

export type Units = 'imperial' | 'metric';

/** How this asker writes and reads figures. */
export interface Preferences {
  /** Taken for a number typed without a unit: ft or m for rooms, in or mm for planks. */
  readonly units: Units;
  /** The decimal mark in what is printed; both are read. */
  readonly decimal: '.' | ',';
  /** ISO 4217 code taken for a price typed without a currency. */
  readonly currency: string;
}

export const DEFAULT_PREFERENCES: Preferences = { units: 'imperial', decimal: '.', currency: 'USD' };

/** The surroundings of one reading: the option's name, the asker's habits, and where to tell how a doubtful thing was read. */
export interface Reading {
  readonly option: string;
  readonly preferences: Preferences;
  note(assumed: string): void;
}

/** Text on its way into a reader. */
export interface Typed {
  readonly text: string;
  readonly reading: Reading;
}

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly [Problem, ...Problem[]] };

export function read<T>(value: T): Read<T> {
  return { ok: true, value };
}

export function unread(...problems: readonly [Problem, ...Problem[]]): {
  ok: false;
  problems: readonly [Problem, ...Problem[]];
} {
  return { ok: false, problems };
}

// Options of a command: zod schemas that read typed text into exact values, with what a form or a help text
// needs to know.

type OptionKind = 'room' | 'plank' | 'length' | 'choice' | 'count' | 'percent' | 'pattern' | 'direction' | 'text';

/** What is known of an option besides its reader. */
export interface OptionFacts {
  readonly kind: OptionKind;
  readonly summary: string;
  /** Something to type for it; the placeholder of a form. */
  readonly example: string;
  /** Typed for the asker when nothing is told; without it the option is required. */
  readonly standard?: string;
  /** The same where the request is told in metric: a round figure there, and none converted. */
  readonly metric?: string;
  /** Where the standard comes from: the record of a figure of the trade. */
  readonly record?: { readonly name: string; readonly said: string };
  readonly choices?: readonly string[];
  /** What of a project is typed here: one of its rooms, the floor that is on them now, a pick, the name of a project. */
  readonly names?: 'room' | 'covering' | 'pick' | 'project';
  /** Which words before a colon belong to the value; any other is taken for the name of an option. */
  readonly colons?: Colons;
}

/** Any word; a room's name, which has figures or a walk behind it; the head of a grid. */
export type Colons = 'any' | 'rooms' | 'grid';

const facts = z.registry<OptionFacts>();

/** The facts of an option. Throws for a schema that no reader made. */
export function factsOf(schema: z.core.$ZodType): OptionFacts {
  const known = facts.get(schema as z.ZodType);
  if (!known) throw new Error('an option without facts');
  return known;
}

/** A schema for one option: typed text in, the value out; what cannot be read becomes issues that carry their Problem. */
export function reader<T>(known: OptionFacts, readText: (text: string, reading: Reading) => Read<T>) {
  const schema = z
    .custom<Typed>((typed) => typeof typed === 'object' && typed !== null && 'reading' in typed)
    .transform((typed, context): T => {
      const result = readText(typed.text, typed.reading);
      if (result.ok) return result.value;
      for (const problem of result.problems) {
        context.addIssue({ code: 'custom', message: problem.expected, params: { problem } });
      }
      return z.NEVER;
    });
  facts.add(schema, known);
  return schema;
}

/** The Problems in what zod reports of an option. Throws when an issue carries none: that is a fault of ours. */
export function problemsIn(error: z.core.$ZodError): readonly Problem[] {
  return error.issues.map((issue) => {
    const problem = issue.code === 'custom' ? (issue.params?.problem as Problem | undefined) : undefined;
    if (!problem) throw new Error('an option was not read, and no Problem says why', { cause: error });
    return problem;
  });
}
