/** What can hurt someone, by task, with sources. */

import { KILOGRAMS_PER_POUND } from '../prep/old-floor.ts';
import type { Source } from '../reply/reply.ts';
import { inches, type Length } from '../units/length.ts';
import { CAUTIOUS_DEFAULT, type Cited, COMMON_PRACTICE } from './cited.ts';

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

export type CautionTask = (typeof TASKS)[number];

type Topic =
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
  readonly tasks: readonly CautionTask[];
  readonly source: Source;
}

const source = (title: string, publisher: string, standing: Source['standing'], year?: number): Source => ({
  title,
  publisher,
  standing,
  ...(year === undefined ? {} : { year }),
});

/** The most serious first. */
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

export function cautionsFor(task: CautionTask): readonly { readonly topic: Topic; readonly source: Source }[] {
  return HAZARDS.filter((hazard) => hazard.tasks.includes(task)).map(({ topic, source: cited }) => ({
    topic,
    source: cited,
  }));
}

const SOURCES: Readonly<Record<string, readonly Source[]>> = {
  asbestos: [
    { title: 'Recommended Work Practices for resilient floors', publisher: 'RFCI', standing: 'published' },
    { title: 'Asbestos standards: questions and answers', publisher: 'OSHA', standing: 'reported' },
  ],
  lead: [
    {
      title: 'Renovation, Repair and Painting rule: questions and answers',
      publisher: 'US EPA',
      standing: 'published',
    },
  ],
  silica: [{ title: '29 CFR 1926.1153', publisher: 'OSHA', standing: 'reported' }],
  mold: [
    {
      title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
      publisher: 'US EPA',
      standing: 'published',
    },
  ],
  water: [
    {
      title: 'A Brief Guide to Mold, Moisture and Your Home, EPA 402-K-02-003',
      publisher: 'US EPA',
      standing: 'published',
    },
  ],
  droppings: [{ title: 'How to clean up after rodents', publisher: 'CDC', standing: 'from memory' }],
  fumes: [{ title: '29 CFR 1910.1200: safety data sheets', publisher: 'OSHA', standing: 'from memory' }],
  electric: [{ title: '29 CFR 1926.416(a)', publisher: 'OSHA', standing: 'from memory' }],
  opening: [{ title: '29 CFR 1926.502(i): covers', publisher: 'OSHA', standing: 'from memory' }],
  'heated-floor': [{ title: 'Heated floors: surface at most 80–85 °F, by makers of plank', standing: 'reported' }],
};

/** The sources for a hazard; common practice if there are no others. */
export function hazardSources(hazard: string): readonly Source[] {
  return SOURCES[hazard] ?? [COMMON_PRACTICE];
}

// Two-handed lifting.

const MANUAL = {
  title: 'Applications Manual for the Revised NIOSH Lifting Equation, 94-110',
  publisher: 'NIOSH',
  year: 1994,
  standing: 'published',
} as const;

const LOAD_CONSTANT: Cited<number> = {
  name: 'Load constant of the lifting equation',
  said: '51 lb (23 kg): the most, under the best conditions',
  value: 51 * KILOGRAMS_PER_POUND,
  source: MANUAL,
};

const LIFT_LIMITS: Cited<string> = {
  name: 'Where the lifting equation does not hold',
  said: 'one hand, kneeling, seated, cramped, carrying, pushing, an unstable load, heat, cold, slippery floors',
  value: 'limitations',
  source: MANUAL,
};

export const LIFT_HEIGHTS: Cited<{ readonly from: Length; readonly to: Length }> = {
  name: 'Hands at a lift, if not given',
  said: 'from 4 in over the floor, under a carton, to 30 in, a table; in metric 10 and 75 cm',
  value: { from: inches(4), to: inches(30) },
  source: COMMON_PRACTICE,
};

export const LIFT_REACHES: Cited<Length> = {
  name: 'Reach of a lift, if not given',
  said: '10 in or 25 cm from the ankles: the nearest that the equation counts',
  value: inches(10),
  source: MANUAL,
};

/** Lifts per minute, hours at a stretch, the grip, and no twist. */
export const LIFT_WAY: Cited<{
  readonly often: number;
  readonly hours: number;
  readonly grip: string;
  readonly twist: number;
}> = {
  name: 'Way of a lift, if not given',
  said: 'once a minute for an hour, no twist, a poor grip (the strictest), set down with care, by two hands, standing',
  value: { often: 1, hours: 1, grip: 'poor', twist: 0 },
  source: CAUTIOUS_DEFAULT,
};

export const LIFTING_FIGURES: readonly Cited<unknown>[] = [
  LOAD_CONSTANT,
  LIFT_LIMITS,
  LIFT_HEIGHTS,
  LIFT_REACHES,
  LIFT_WAY,
];

// Noise over a day: what is recommended, and what employers have to keep to.

const NIOSH = {
  title: 'Criteria for a Recommended Standard: Occupational Noise Exposure, 98-126',
  publisher: 'NIOSH',
  year: 1998,
  standing: 'published',
} as const;
const OSHA = { title: '29 CFR 1910.95', publisher: 'OSHA', standing: 'published' } as const;

/** The level for 8 h, and the increase in decibels that halves the time. */
const NOISE_RECOMMENDED: Cited<{ readonly level: number; readonly exchange: number }> = {
  name: 'Noise in a day, recommended',
  said: '85 dBA for 8 h, 88 for 4, 91 for 2, 94 for 1, 100 for 15 min: 3 dB more halve the time',
  value: { level: 85, exchange: 3 },
  source: NIOSH,
};

export const NOISE_LIMIT: Cited<number> = {
  name: 'Noise in a day, an employer’s limit',
  said: '90 dBA for 8 h, 95 for 4, 100 for 2, 105 for 1; mixed, the shares add up to 1 at most',
  value: 1,
  source: OSHA,
};

const HEARING_PROGRAMME: Cited<number> = {
  name: 'Noise from which an employer looks after hearing',
  said: '85 dBA over 8 h: half of the allowed dose',
  value: 0.5,
  source: OSHA,
};

export const NOISE_FIGURES: readonly Cited<unknown>[] = [NOISE_RECOMMENDED, NOISE_LIMIT, HEARING_PROGRAMME];
