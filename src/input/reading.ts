/** What a reader is given and what it gives back: typed text, the asker's habits, and a value or problems. */

import type { Problem } from '../reply/reply.ts';

export type Units = 'imperial' | 'metric';

/** How this asker writes and reads figures. */
export interface Habits {
  /** Taken for a number typed without a unit: ft or m for rooms, in or mm for planks. */
  readonly units: Units;
  /** The decimal mark in what is printed; both are read. */
  readonly decimal: '.' | ',';
  /** ISO 4217 code taken for a price typed without a currency. */
  readonly currency: string;
}

export const DEFAULT_HABITS: Habits = { units: 'imperial', decimal: '.', currency: 'USD' };

/** The surroundings of one reading: the option's name, the asker's habits, and where to tell how a doubtful thing was read. */
export interface Reading {
  readonly option: string;
  readonly habits: Habits;
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
