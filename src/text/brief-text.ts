/** Text around a short answer: the names of its sections, and how to open them. */

import type { SectionId } from '../reply/reply.ts';

export const SECTION_TITLES: Readonly<Record<SectionId, string>> = {
  buy: 'What to buy',
  rows: 'Row by row',
  cuts: 'Cuts',
  plan: 'Plan',
  list: 'List',
  how: 'How to do it',
  checklist: 'Checklist',
  details: 'Details',
  why: 'Why this number',
  read: 'How I read it',
  safety: 'Safety',
  sources: 'Sources',
};

/** What people type to open a section. */
const WORDS: Readonly<Record<string, SectionId | 'more'>> = {
  more: 'more',
  everything: 'more',
  details: 'details',
  buy: 'buy',
  rows: 'rows',
  row: 'rows',
  'row list': 'rows',
  'laying guide': 'rows',
  cuts: 'cuts',
  'cut list': 'cuts',
  plan: 'plan',
  picture: 'plan',
  list: 'list',
  steps: 'how',
  how: 'how',
  checklist: 'checklist',
  why: 'why',
  'why that many': 'why',
  'why so many': 'why',
  safety: 'safety',
  sources: 'sources',
  read: 'read',
  'how you read it': 'read',
};

export const BRIEF = {
  words: WORDS,
  /** The button that opens every section. */
  everything: 'More',
  caution: (text: string) => `Caution: ${text}`,
  /** The ids are what people type. */
  more: (ids: readonly string[]) => `More: ${ids.join(', ')}`,
  wrong: 'Not what you meant? Type wrong',
} as const;
