/** Where it comes from what is said of each hazard. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE } from './cited.ts';

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

/** The sources of what is said of a hazard; common practice where there is no other. */
export function hazardSources(hazard: string): readonly Source[] {
  return SOURCES[hazard] ?? [COMMON_PRACTICE];
}
