/** The platform-neutral answer: plain data that every platform renders. */

import type { Drawing } from './drawing.ts';
import type { Need } from './need.ts';

type Standing = 'published' | 'reported' | 'common practice' | 'from memory';

export interface Source {
  readonly title: string;
  readonly standing: Standing;
  readonly publisher?: string;
  readonly year?: number;
  readonly section?: string;
}

// A warning about injury or damage to the floor, shown with an answer.

export interface Caution {
  /** A stable name, for tests and for showing each caution once. */
  readonly topic: string;
  readonly text: string;
  /** The same in one short line, for the brief; without it the first sentence stands there. */
  readonly brief?: string;
  readonly source?: Source;
}

// A file that comes with an answer, described as data and made when it is sent.

export interface FileMade {
  /** Lowercase letters, digits and hyphens, plus an extension. */
  readonly name: string;
  readonly title: string;
  /** A description for those who can't open it. */
  readonly alt: string;
  readonly as: FileForm;
}

/** The file format. `paper`: defaults to the one for the user's units; `list`: which of a project's lists. */
export type FileForm =
  | { readonly form: 'pdf'; readonly paper?: 'letter' | 'a4' }
  | { readonly form: 'csv'; readonly list: FileList }
  | { readonly form: 'json' };

export const FILE_LISTS = ['shopping', 'cuts', 'rows', 'pieces', 'checklist'] as const;
export type FileList = (typeof FILE_LISTS)[number];

/** Media types as registered with IANA. */
export const MEDIA_TYPES: Readonly<Record<FileForm['form'], string>> = {
  pdf: 'application/pdf',
  csv: 'text/csv; charset=utf-8',
  json: 'application/json',
};

/** What a section of an answer is opened by: typed as it stands, or pressed. */
export const SECTIONS = [
  'buy',
  'rows',
  'cuts',
  'plan',
  'list',
  'how',
  'checklist',
  'details',
  'why',
  'read',
  'safety',
  'sources',
] as const;
export type SectionId = (typeof SECTIONS)[number];

export type Block = { readonly section?: SectionId } & BlockContent;

type BlockContent =
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

/** A URL of our own, without characters that have a meaning in any markup. */
export const ADDRESS = /^https?:\/\/[\w.:[\]-]{1,300}(?:\/[\w./-]{0,300})?$/;

export interface Fact {
  readonly label: string;
  readonly value: string;
  /** The value is an ADDRESS that opens when pressed. */
  readonly opens?: true;
}

/** A suggested next request: `ask` is a line the text grammar reads. */
export interface Action {
  readonly label: string;
  readonly ask: string;
  /** Name of the list it is a choice of; such actions are offered together. */
  readonly among?: string;
}

/** Typed result data, discriminated by `kind`; JSON, CSV and PDF are made from it. */
export interface Result {
  readonly kind: string;
}

export interface Reply {
  /** The answer in one line; also the notification and fallback text. */
  readonly headline: string;
  /** Up to four short lines that are seen with it; without them the first facts are. */
  readonly lines?: readonly string[];
  /** The section that was itself asked for: shown under the brief. */
  readonly opens?: SectionId | 'more';
  readonly blocks: readonly Block[];
  /** How each ambiguous input was interpreted. */
  readonly assumed: readonly string[];
  /** The one of these that says the plank is only an example; shown right below the headline. */
  readonly example?: string;
  /** Topics of cautions that this person was shown before, in this conversation. */
  readonly seen?: readonly string[];
  /** All that apply, gravest first: the brief picks from them, `safety` shows them whole. */
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
  readonly actions: readonly Action[];
  readonly audience: 'asker' | 'channel';
  readonly data: Result;
  /** Files made from its data when it is sent. */
  readonly files?: readonly FileMade[];
  /** For the shopping list; absent if the answer needs nothing. */
  readonly needs?: readonly Need[];
  /** Texts shown this once and never stored: tokens, codes. */
  readonly once?: readonly string[];
}

/** A reply to the user with these parts; lists that are left out are empty. */
export function reply<Data extends Result>(
  parts: Pick<Reply, 'headline'> & Partial<Reply> & { readonly data: Data },
): Reply {
  return { blocks: [], assumed: [], cautions: [], sources: [], actions: [], audience: 'asker', ...parts };
}

// A Problem is something the user can fix; a Refusal is something that isn't safe to compute. Plain data.

export interface Problem {
  /** The option it is about, or 'ask' for the whole line. */
  readonly option: string;
  readonly got: string;
  /** What was expected instead, as a sentence. */
  readonly expected: string;
  /**
   * A line that can be typed as is: it keeps everything the user typed, adds no numbers, and gets an answer. Absent if
   * there is no such line.
   */
  readonly fix?: string | undefined;
}

/** Result data of anything about a hazard: an answer or a refusal. */
export interface HazardResult extends Result {
  readonly kind: 'hazard';
  readonly hazard: string;
  /** Someone may be hurt right now: it is answered first and alone. */
  readonly emergency: boolean;
}

export interface Refusal {
  readonly why: string;
  readonly call: string;
  readonly cautions: readonly Caution[];
  readonly data: HazardResult;
}

/** The data of a refusal that isn't an emergency. */
export function unsafe(hazard: string): HazardResult {
  return { kind: 'hazard', hazard, emergency: false };
}
