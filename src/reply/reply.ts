/** The neutral answer that every platform renders: plain data, no platform's words in it. */

import type { Drawing } from './drawing.ts';
import type { Need } from './need.ts';

// Where a figure comes from, and how far it was checked.

type Standing = 'published' | 'reported' | 'common practice' | 'from memory';

export interface Source {
  readonly title: string;
  readonly standing: Standing;
  readonly publisher?: string;
  readonly year?: number;
  readonly section?: string;
}

// What can hurt someone, or ruin the floor, said with an answer.

export interface Caution {
  /** A stable name, for tests and for saying each caution once. */
  readonly topic: string;
  readonly text: string;
  readonly source?: Source;
}

// A file that comes with an answer: told as plain data, and made of the answer's own data when it is sent.

export interface FileMade {
  /** Small letters, figures and hyphens, with its ending. */
  readonly name: string;
  readonly title: string;
  /** What is in it, for whoever cannot open it. */
  readonly alt: string;
  readonly as: FileForm;
}

/** What it is made as. `paper`: that of the asker's units where none is told; `list`: which of the lists of a project. */
export type FileForm =
  | { readonly form: 'pdf'; readonly paper?: 'letter' | 'a4' }
  | { readonly form: 'csv'; readonly list: FileList }
  | { readonly form: 'json' };

export const FILE_LISTS = ['shopping', 'cuts', 'rows', 'pieces', 'checklist'] as const;
export type FileList = (typeof FILE_LISTS)[number];

/** Media types by form, as registered with IANA. */
export const MEDIA_TYPES: Readonly<Record<FileForm['form'], string>> = {
  pdf: 'application/pdf',
  csv: 'text/csv; charset=utf-8',
  json: 'application/json',
};

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

// What an asker can mend (Problem), and what is not safe to compute (Refusal): plain data.

export interface Problem {
  /** The option it is about, or 'ask' for the line as a whole. */
  readonly option: string;
  /** What was read, word for word. */
  readonly got: string;
  /** What is expected instead, as a sentence. */
  readonly expected: string;
  /** A line that can be typed as it is: it holds all that was typed, no figure that was not, and is answered. Left out where none can be made. */
  readonly fix?: string | undefined;
}

/** Result data of whatever is about a hazard: an answer, or a refusal. */
export interface HazardResult extends Result {
  readonly kind: 'hazard';
  readonly hazard: string;
  /** Somebody may be hurt this minute: it is answered first and alone. */
  readonly emergency: boolean;
}

export interface Refusal {
  readonly why: string;
  readonly call: string;
  readonly cautions: readonly Caution[];
  readonly data: HazardResult;
}

/** The data of a refusal that is no emergency. */
export function unsafe(hazard: string): HazardResult {
  return { kind: 'hazard', hazard, emergency: false };
}
