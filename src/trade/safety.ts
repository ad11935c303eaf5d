/** What can hurt someone, by task, with its source. The words are in words/cautions. */

import type { Source } from '../reply/source.ts';

export type Task = 'laying' | 'tear-out' | 'nailing' | 'sanding' | 'subfloor';

export type Topic =
  | 'blade'
  | 'saw'
  | 'dust'
  | 'silica'
  | 'noise'
  | 'knees'
  | 'lifting'
  | 'asbestos'
  | 'lead'
  | 'mould'
  | 'tetanus'
  | 'nail-gun'
  | 'hidden-lines';

interface Hazard {
  readonly topic: Topic;
  readonly tasks: readonly Task[];
  readonly source: Source;
}

const HAZARDS: readonly Hazard[] = [
  {
    topic: 'asbestos',
    tasks: ['laying', 'tear-out', 'sanding', 'subfloor'],
    source: { title: 'Recommended Work Practices for resilient floors', publisher: 'RFCI', standing: 'published' },
  },
  {
    topic: 'lead',
    tasks: ['laying', 'tear-out', 'sanding'],
    source: {
      title: 'Renovation, Repair and Painting rule: questions and answers',
      publisher: 'US EPA',
      standing: 'published',
    },
  },
  {
    topic: 'blade',
    tasks: ['laying', 'tear-out'],
    source: { title: 'Common practice of the trade', standing: 'common practice' },
  },
  {
    topic: 'saw',
    tasks: ['laying', 'nailing', 'subfloor'],
    source: { title: 'Table saw blade contact injuries', publisher: 'CPSC', year: 2011, standing: 'published' },
  },
  {
    topic: 'dust',
    tasks: ['laying', 'sanding', 'subfloor'],
    source: { title: 'Pocket Guide to Chemical Hazards, 0667', publisher: 'NIOSH', standing: 'published' },
  },
  {
    topic: 'silica',
    tasks: ['sanding'],
    source: { title: '29 CFR 1926.1153', publisher: 'OSHA', standing: 'reported' },
  },
  {
    topic: 'noise',
    tasks: ['laying', 'nailing', 'sanding'],
    source: { title: '29 CFR 1910.95', publisher: 'OSHA', standing: 'published' },
  },
  {
    topic: 'knees',
    tasks: ['laying', 'tear-out', 'nailing'],
    source: { title: 'Preventing Knee Injuries, 90-104', publisher: 'NIOSH', year: 1990, standing: 'published' },
  },
  {
    topic: 'lifting',
    tasks: ['laying', 'tear-out'],
    source: {
      title: 'Applications Manual for the Revised NIOSH Lifting Equation, 94-110',
      publisher: 'NIOSH',
      year: 1994,
      standing: 'published',
    },
  },
  {
    topic: 'mould',
    tasks: ['tear-out', 'subfloor'],
    source: {
      title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
      publisher: 'US EPA',
      standing: 'published',
    },
  },
  {
    topic: 'tetanus',
    tasks: ['tear-out', 'nailing'],
    source: { title: 'Tetanus schedule', publisher: 'CDC', standing: 'reported' },
  },
  {
    topic: 'nail-gun',
    tasks: ['nailing'],
    source: { title: 'Nail Gun Safety', publisher: 'OSHA and NIOSH', year: 2011, standing: 'reported' },
  },
  {
    topic: 'hidden-lines',
    tasks: ['nailing', 'subfloor'],
    source: { title: 'Common practice of the trade', standing: 'common practice' },
  },
];

/** The hazards of a task, the gravest first, each with its source. */
export function cautionsFor(task: Task): readonly { readonly topic: Topic; readonly source: Source }[] {
  return HAZARDS.filter((hazard) => hazard.tasks.includes(task)).map(({ topic, source }) => ({ topic, source }));
}
