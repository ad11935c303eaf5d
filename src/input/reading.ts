/** The interface of parsers: typed text and the user's preferences in, a value or problems out. */

import { z } from 'zod';
import type { Plank, Region } from '../layout/floor.ts';
import type { Problem } from '../reply/reply.ts';
import type { Area, Cents, Length } from '../units/length.ts';

export type Units = 'imperial' | 'metric';

/** How this user writes and reads numbers. */
export interface Preferences {
  /** Assumed for a number without a unit: ft or m for rooms, in or mm for planks. */
  readonly units: Units;
  /** The decimal mark for output; both are accepted as input. */
  readonly decimal: '.' | ',';
  /** ISO 4217 code assumed for a price without a currency. */
  readonly currency: string;
}

export const DEFAULT_PREFERENCES: Preferences = { units: 'imperial', decimal: '.', currency: 'USD' };

/**
 * The context of one parse: option name, the user's preferences, and where to note how an ambiguous input was
 * interpreted.
 */
export interface Reading {
  readonly option: string;
  readonly preferences: Preferences;
  note(assumed: string): void;
}

/** Text on its way into a parser. */
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

// Command options: zod schemas that parse text into exact values, with the facts that forms and help need.

type OptionKind = 'room' | 'plank' | 'length' | 'choice' | 'count' | 'percent' | 'pattern' | 'direction' | 'text';

export interface OptionFacts {
  readonly kind: OptionKind;
  readonly summary: string;
  /** An example value; the placeholder of a form. */
  readonly example: string;
  /** The default text; without it the option is required. */
  readonly standard?: string;
  /** The default for metric requests: a round value rather than a converted one. */
  readonly metric?: string;
  /** Source of the default: the record of a trade figure. */
  readonly record?: { readonly name: string; readonly said: string };
  readonly choices?: readonly string[];
  /**
   * What goes here: of a project, one of its rooms, their current floor, a pick, or its name; of the handbook, the title
   * of an entry.
   */
  readonly names?: 'room' | 'covering' | 'pick' | 'project' | 'entry';
  /** Which words before a colon belong to the value; any other is taken as an option name. */
  readonly colons?: Colons;
}

/** Any word; a room's name, which has numbers or a walk after it; the head of a grid. */
export type Colons = 'any' | 'rooms' | 'grid';

const facts = z.registry<OptionFacts>();

/** The facts of an option. Throws for a schema not made by `reader`. */
export function factsOf(schema: z.core.$ZodType): OptionFacts {
  const known = facts.get(schema as z.ZodType);
  if (!known) throw new Error('an option without facts');
  return known;
}

/** A schema for one option: text in, value out. What can't be parsed becomes issues that carry their Problem. */
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

/** The Problems in zod's report on an option. Throws if an issue carries none, which is a bug. */
export function problemsIn(error: z.core.$ZodError): readonly Problem[] {
  return error.issues.map((issue) => {
    const problem = issue.code === 'custom' ? (issue.params?.problem as Problem | undefined) : undefined;
    if (!problem) throw new Error('an option was not read, and no Problem says why', { cause: error });
    return problem;
  });
}

/** Rooms in the order typed; each is a region laid on its own. */
export interface ParsedRooms {
  readonly rooms: readonly Region[];
  readonly units: Units;
}

/** A plank product: the board, and what a carton covers (as printed, or size × count) and costs, if known. */
export interface ParsedPlank {
  readonly plank: Plank;
  readonly cartonArea: Area;
  readonly cartonPrice?: Price;
  readonly attachedPad?: boolean;
  /** Locking boards that come as A and B, for herringbone. */
  readonly handed?: boolean;
  readonly thickness?: Length;
  readonly units: Units;
}

export interface Price {
  readonly cents: Cents;
  /** ISO 4217. */
  readonly currency: string;
}
