/** The neutral answer that every platform renders: plain data, no platform's words in it. */

import type { Caution } from './caution.ts';
import type { Drawing } from './drawing.ts';
import type { FileMade } from './file.ts';
import type { Need } from './need.ts';
import type { Source } from './source.ts';

export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'facts'; readonly title?: string; readonly facts: readonly Fact[] }
  | {
      readonly kind: 'table';
      readonly title: string;
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'steps'; readonly title: string; readonly steps: readonly string[] }
  | { readonly kind: 'checklist'; readonly title: string; readonly items: readonly string[] }
  | { readonly kind: 'picture'; readonly drawing: Drawing };

/** An address of our own, with nothing in it that any markup means. */
export const ADDRESS = /^https?:\/\/[\w.:[\]-]{1,300}(?:\/[\w./-]{0,300})?$/;

export interface Fact {
  readonly label: string;
  readonly value: string;
  /** The value is an ADDRESS, to be opened by whoever presses it. */
  readonly opens?: true;
}

/** A next ask, offered: `ask` is a line the text grammar reads. */
export interface Action {
  readonly label: string;
  readonly ask: string;
  /** What it is one choice of: such actions are offered together, as a list under this name. */
  readonly among?: string;
}

/** Typed result data; `kind` tells which. JSON, CSV and PDF are made from it. */
export interface Result {
  readonly kind: string;
}

export interface Reply {
  /** The answer in one line: also the notification and the fallback text. */
  readonly headline: string;
  readonly blocks: readonly Block[];
  /** How each doubtful thing was read. */
  readonly assumed: readonly string[];
  /** The first of these where it says that a plank of ours stands in for theirs: shown right below the headline. */
  readonly example?: string;
  /** No renderer may drop or shorten these. */
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
  readonly actions: readonly Action[];
  readonly audience: 'asker' | 'channel';
  readonly data: Result;
  /** Files that come with it, made of its data when it is sent. */
  readonly files?: readonly FileMade[];
  /** What it takes, for a shopping list; none for an answer that takes nothing. */
  readonly needs?: readonly Need[];
  /** Texts in it that are told this once and kept nowhere: tokens, codes. */
  readonly once?: readonly string[];
}
