/** Text of the help, sources and tape answers. */

import type { Source } from '../reply/reply.ts';
import { byUnits } from './units-text.ts';

export const HELP = {
  lines: [
    `Just ask: how many boxes for ${byUnits('12x14, 24 sq ft', '3.6x4.2 m, 2.2 m²')} a box? Which way do planks run in a hall?`,
    'Floor: planks, estimate, enough, layout, compare, resume. Trim: list, edges, reset, finish.',
    'Before it: tearout, patch, squeaks, level, moisture, plan. Rules and decisions: handbook.',
    'Your own job: project new, project room, project show, project shopping, project share.',
  ],
  example: (line: string) => `For example: ${line}`,
  headline: (commands: number) => `${commands} commands; type “help planks” for one of them.`,
  about: (name: string, summary: string) => `${name}: ${summary}.`,
  members: (names: readonly string[]) => `Commands: ${names.join(', ')}.`,
  questions: (titles: readonly string[]) => `Often asked: ${titles.join(' · ')}`,
  title: 'Commands',
  columns: ['Command', 'What it answers', 'Type for instance'],
  options: 'Options',
  optionColumns: ['Option', 'What to give', 'If left out', 'For instance'],
  needed: 'needed',
  examples: 'Examples',
  grammar: `Type “option: value” pairs in any order with commas between them; you can leave out the first option’s name. Lengths as you write them: ${byUnits(`12'6", 12.5 ft, 3.80 m, 3800 mm`, '3.80 m, 380 cm, 3800 mm')}.`,
  unknown: (name: string, near: string) => ({
    option: 'command',
    got: name,
    expected: `There’s no command “${name}”; the nearest is “${near}”.`,
    fix: near,
  }),
} as const;

export const SOURCES = {
  headline: (figures: number, about: string | undefined) =>
    about === undefined
      ? `${figures} figures, each with its source.`
      : `${figures} ${figures === 1 ? 'figure' : 'figures'} about ${about}.`,
  none: (about: string) => `No figure is about “${about}”; type “sources” for all of them.`,
  title: 'Figures',
  columns: ['Figure', 'Value', 'Source', 'Standing'],
  standing:
    'published: read in the source; reported: read in a page that reports it; common practice: a fact of the trade; from memory: check it before you rely on it. The maker’s instructions beat all of them.',
} as const;

export function saySource({ title, publisher, year, section }: Source): string {
  return [title, publisher, year, section].filter((part) => part !== undefined).join(', ');
}

export const NOT_A_TICK = 'The result was rounded once, to 1/8128 in.';

export const TAPE = {
  about: (figure: string, onTape: string) => `${figure}, about ${onTape}`,
  imperial: 'Feet and inches',
  inches: 'Inches',
  metric: 'Metric',
  millimetres: 'Millimetres',
  squareFeet: 'Square feet',
  squareMetres: 'Square meters',
} as const;
