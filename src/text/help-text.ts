/** Text of the help, sources and tape answers. */

import type { Source } from '../reply/reply.ts';

export const HELP = {
  lines: [
    'Just ask: how many boxes for 12x14, 24 sq ft a box? Which way do planks run in a hall?',
    'Floor: planks, estimate, enough, layout, compare, resume. Trim: list, edges, reset, finish.',
    'Before it: tearout, patch, squeaks, level, moisture, plan. Rules and decisions: handbook.',
    'Your own job: project new, project room, project show, project shopping, project share.',
  ],
  example: (line: string) => `For example: ${line}`,
  headline: (commands: number) => `${commands} commands; type “help planks” for one of them.`,
  about: (name: string, summary: string) => `${name}: ${summary}.`,
  title: 'Commands',
  columns: ['Command', 'What it answers', 'Type for instance'],
  options: 'Options',
  optionColumns: ['Option', 'What to tell', 'If not told', 'For instance'],
  needed: 'needed',
  examples: 'Examples',
  grammar:
    'Type “option: value” pairs in any order with commas between them; what comes first without a name goes to the first option. Lengths as you write them: 12\'6", 12.5 ft, 3,80 m, 3800 mm.',
  unknown: (name: string, near: string) => ({
    option: 'command',
    got: name,
    expected: `There is no command “${name}”; the nearest is “${near}”.`,
    fix: near,
  }),
} as const;

// The words of the sources answer.

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

// The words of a length answer.

export const NOT_A_TICK = 'The result was rounded once, to 1/8128 in.';

export const TAPE = {
  about: (figure: string, onTape: string) => `${figure}, about ${onTape}`,
  imperial: 'Feet and inches',
  inches: 'Inches',
  metric: 'Metric',
  millimetres: 'Millimetres',
  squareFeet: 'Square feet',
  squareMetres: 'Square metres',
} as const;
