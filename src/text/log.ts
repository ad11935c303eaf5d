/** The words of a project's notes. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import { counted } from './floor.ts';

export const LOG = {
  headline: (notes: number, shown: number) =>
    notes === 0
      ? 'No notes yet.'
      : shown < notes
        ? `${counted(notes, 'note')}, the last ${shown} shown.`
        : `${counted(notes, 'note')}.`,
  added: (no: number) => `Noted, number ${no}.`,
  removed: (text: string) => `Removed: ${quoted(text)}`,
  hits: (count: number, words: string) => `${counted(count, 'note')} with ${quoted(words)}.`,
  title: 'Notes',
  columns: ['No.', 'When', 'Note'],
  said: (text: string) => `note: ${text}`,
  saidRemoved: (text: string) => `note removed: ${text}`,
  remove: (no: number) => `Remove note ${no}`,
} as const;

export const LOG_PROBLEMS = {
  empty: (): Problem => ({
    option: 'do',
    got: '',
    expected: 'Tell the note, or “search” and a word, or “remove” and a number.',
    fix: 'note found water stain by the bay',
  }),
  long: (got: string, most: number, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `A note has at most ${most} characters: tell it in two.`,
    fix,
  }),
} as const;
