/** Options of a command: zod schemas that read typed text into exact values, with what a form or a help text needs to know. */

import { z } from 'zod';
import type { Problem } from '../reply/reply.ts';
import type { Read, Reading, Typed } from './reading.ts';

export type OptionKind =
  | 'room'
  | 'plank'
  | 'length'
  | 'choice'
  | 'count'
  | 'percent'
  | 'pattern'
  | 'direction'
  | 'text';

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
