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
  /** One short line for the brief, which otherwise uses the first sentence. */
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

/** Sections of an answer: typed as they are, or pressed. */
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

/** A URL of ours, without characters that mean anything in markup. */
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

/** A figure of an answer that the handbook explains. */
export interface Reason {
  /** Id of a handbook entry that has a word in `REASONS`. */
  readonly entry: string;
  /** As the answer shows it: `6"`, `10 %`. */
  readonly figure?: string;
}

/** What a question may want to know first of an answer that tells several things. */
export type Focus = 'cost' | 'time' | 'weight' | 'strip' | 'staples' | 'bags' | 'paint' | 'caulk' | 'nails';

export interface Reply {
  /** The answer in one line; also the notification and fallback text. */
  readonly headline: string;
  /** Up to four short lines shown with the headline; without them, the first facts are. */
  readonly lines?: readonly string[];
  /** The headline if the question is about that alone. */
  readonly leads?: Readonly<Partial<Record<Focus, string>>>;
  /** The section that was requested, shown below the brief. */
  readonly opens?: SectionId | 'more';
  readonly blocks: readonly Block[];
  /** How each ambiguous input was interpreted. */
  readonly assumed: readonly string[];
  /** The one that says the plank is only an example, shown right below the headline. */
  readonly example?: string;
  /** Topics this person has already been shown in this conversation. */
  readonly seen?: readonly string[];
  /** Gravest first: the brief picks from them, `safety` shows all. */
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
  readonly actions: readonly Action[];
  /** Offered as “Why 6"?” on every platform. */
  readonly reasons?: readonly Reason[];
  readonly audience: 'asker' | 'channel';
  readonly data: Result;
  /** Files made from its data when it is sent. */
  readonly files?: readonly FileMade[];
  /** For the shopping list; absent if the answer needs nothing. */
  readonly needs?: readonly Need[];
  /** Texts shown this once and never stored: tokens, codes. */
  readonly once?: readonly string[];
  /** Others to whom it gives something: a chat sends each of them one message. */
  readonly invites?: readonly Invite[];
}

/** What somebody is told who was given something. */
export interface Invite {
  /** The key of their account. */
  readonly account: string;
  readonly headline: string;
  readonly lines: readonly string[];
  /** Opens what they were given. */
  readonly action: Action;
}

/** Builds a reply; lists that are left out are empty. */
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
