/** A handbook entry: one decision or rule that homeowners ask about, with a direct answer and the figures behind it. */

import type { Source } from '../reply/reply.ts';

export const TOPICS = [
  'buying',
  'layout',
  'gaps and edges',
  'tear-out',
  'old materials',
  'subfloor',
  'moisture',
  'laying',
  'trim',
  'stairs',
  'people and money',
  'care and repair',
  'safety',
] as const;
export type EntryTopic = (typeof TOPICS)[number];

export interface Entry {
  /** Lowercase words with hyphens; stable because links and saved replies store it. */
  readonly id: string;
  readonly topic: EntryTopic;
  /** The question in a few words, as a button shows it; at most 40 characters. */
  readonly title: string;
  /** At least twelve ways people ask it, lowercase, as typed. */
  readonly phrases: readonly string[];
  /**
   * The direct answer: at most 60 words, the deciding word first. Numbers stand as `{figure-id}` and come from
   * `src/figures/`.
   */
  readonly answer: string;
  /** Up to four further lines, same rules, shown on request. */
  readonly more?: readonly string[];
  /** The one detail that would make the answer exact, as a question. */
  readonly asks?: string;
  /** Topics of its cautions, gravest first. */
  readonly cautions?: readonly string[];
  /** Where the rule itself comes from when no figure carries it. */
  readonly source?: Source;
  /** A request to try next; must be accepted as typed. */
  readonly next?: { readonly label: string; readonly request: string };
  /** Ids of two entries that are often meant instead. */
  readonly near?: readonly string[];
}
