/** What can hurt someone, by task, with its source. The words are in words/cautions. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';

export const TASKS = [
  'laying',
  'tear-out',
  'nailing',
  'cutting',
  'sanding',
  'levelling',
  'subfloor',
  'painting',
  'lifting',
  'leak',
] as const;

export type Task = (typeof TASKS)[number];

export type Topic =
  | 'asbestos'
  | 'lead'
  | 'leak-water'
  | 'hidden-lines'
  | 'tack-strip'
  | 'blade'
  | 'saw'
  | 'nail-gun'
  | 'dust'
  | 'silica'
  | 'fumes'
  | 'noise'
  | 'knees'
  | 'lifting'
  | 'mould'
  | 'tetanus';

interface Hazard {
  readonly topic: Topic;
  readonly tasks: readonly Task[];
  readonly source: Source;
}

const source = (title: string, publisher: string, standing: Source['standing'], year?: number): Source => ({
  title,
  publisher,
  standing,
  ...(year === undefined ? {} : { year }),
});

/** The gravest first. */
const HAZARDS: readonly Hazard[] = [
  {
    topic: 'asbestos',
    tasks: ['laying', 'tear-out', 'sanding', 'levelling', 'subfloor', 'leak'],
    source: source('Recommended Work Practices for resilient floors', 'RFCI', 'published'),
  },
  {
    topic: 'lead',
    tasks: ['laying', 'tear-out', 'sanding', 'painting'],
    source: source('Renovation, Repair and Painting rule: questions and answers', 'US EPA', 'published'),
  },
  {
    topic: 'leak-water',
    tasks: ['leak'],
    source: source('A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003', 'US EPA', 'published'),
  },
  {
    topic: 'hidden-lines',
    tasks: ['nailing', 'cutting', 'subfloor', 'leak'],
    source: source('29 CFR 1926.416(a)', 'OSHA', 'from memory'),
  },
  {
    topic: 'tack-strip',
    tasks: ['tear-out'],
    source: source('CRI 104/105, Standard for Installation of Carpet', 'Carpet and Rug Institute', 'published'),
  },
  { topic: 'blade', tasks: ['laying', 'tear-out', 'cutting'], source: COMMON_PRACTICE },
  {
    topic: 'saw',
    tasks: ['laying', 'nailing', 'cutting', 'subfloor'],
    source: source('Table saw blade contact injuries', 'CPSC', 'published', 2011),
  },
  {
    topic: 'nail-gun',
    tasks: ['nailing'],
    source: source('Nail Gun Safety', 'OSHA and NIOSH', 'reported', 2011),
  },
  {
    topic: 'dust',
    tasks: ['laying', 'tear-out', 'cutting', 'sanding', 'subfloor'],
    source: source('Pocket Guide to Chemical Hazards, 0667', 'NIOSH', 'published'),
  },
  {
    topic: 'silica',
    tasks: ['cutting', 'sanding', 'levelling'],
    source: source('29 CFR 1926.1153', 'OSHA', 'reported'),
  },
  {
    topic: 'fumes',
    tasks: ['levelling', 'subfloor', 'painting'],
    source: source('29 CFR 1910.1200: safety data sheets', 'OSHA', 'from memory'),
  },
  {
    topic: 'noise',
    tasks: ['laying', 'nailing', 'cutting', 'sanding', 'levelling', 'subfloor'],
    source: source('29 CFR 1910.95', 'OSHA', 'published'),
  },
  {
    topic: 'knees',
    tasks: ['laying', 'tear-out', 'nailing', 'levelling', 'subfloor', 'painting'],
    source: source('Preventing Knee Injuries, 90-104', 'NIOSH', 'published', 1990),
  },
  {
    topic: 'lifting',
    tasks: ['laying', 'tear-out', 'levelling', 'subfloor', 'lifting'],
    source: source('Applications Manual for the Revised NIOSH Lifting Equation, 94-110', 'NIOSH', 'published', 1994),
  },
  {
    topic: 'mould',
    tasks: ['tear-out', 'subfloor', 'leak'],
    source: source('A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003', 'US EPA', 'published'),
  },
  {
    topic: 'tetanus',
    tasks: ['tear-out', 'nailing', 'leak'],
    source: source('Tetanus schedule', 'CDC', 'reported'),
  },
];

/** The hazards of a task, the gravest first, each with its source. */
export function cautionsFor(task: Task): readonly { readonly topic: Topic; readonly source: Source }[] {
  return HAZARDS.filter((hazard) => hazard.tasks.includes(task)).map(({ topic, source: cited }) => ({
    topic,
    source: cited,
  }));
}
