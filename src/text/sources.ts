/** The words of the sources answer. */

import type { Source } from '../reply/reply.ts';

export const SOURCES = {
  headline: (figures: number, about: string | undefined) =>
    about === undefined
      ? `${figures} figures, each with its source.`
      : `${figures} ${figures === 1 ? 'figure' : 'figures'} about ${about}.`,
  none: (about: string) => `No figure is about “${about}”; type “sources” for all of them.`,
  title: 'Figures',
  columns: ['Figure', 'Value', 'Source', 'Standing'],
  standing:
    'published: read in the source; reported: read in a page that reports it; common practice: a fact of the trade; from memory: confirm before you lean on it. Makers’ instructions win over all of them.',
} as const;

/** A source in one line. */
export function saySource({ title, publisher, year, section }: Source): string {
  return [title, publisher, year, section].filter((part) => part !== undefined).join(', ');
}
