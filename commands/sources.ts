/** `sources`: every figure the answers lean on, with where it comes from and how far it was checked. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { FIGURES } from '../src/figures/all-figures.ts';
import { text } from '../src/input/options.ts';
import { read } from '../src/input/reading.ts';
import { reply } from '../src/reply/reply.ts';
import { SOURCES, saySource } from '../src/text/help-text.ts';

export default defineCommand({
  name: 'sources',
  summary: 'Where each figure comes from, and how far it was checked',
  options: z.object({
    about: text(
      { summary: 'A word to look for, such as gap; all without it', example: 'gap', standard: 'all', colons: 'any' },
      (typed) => read(typed),
    ),
  }),
  examples: [
    { ask: 'sources', headline: SOURCES.headline(FIGURES.length, undefined) },
    { ask: 'sources about: acclimation', headline: '1 figure about acclimation.' },
  ],
  run: ({ about }, { assumed }) => {
    const word = about.toLowerCase() === 'all' ? undefined : about.toLowerCase();
    const found = FIGURES.filter(
      ({ name, said }) => word === undefined || `${name} ${said}`.toLowerCase().includes(word),
    );
    const rows = found.map(({ name, said, source }) => [name, said, saySource(source), source.standing]);
    return reply({
      headline:
        word !== undefined && found.length === 0 ? SOURCES.none(about) : SOURCES.headline(found.length, word && about),
      blocks: [
        { kind: 'table', title: SOURCES.title, columns: SOURCES.columns, rows },
        { kind: 'text', text: SOURCES.standing },
      ],
      assumed,
      sources: found.map(({ source }) => source),
      data: { kind: 'sources', figures: rows.map(([name, said]) => ({ name, said })) },
    });
  },
});
