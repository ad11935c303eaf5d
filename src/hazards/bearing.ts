/** What a hazard does to a request: refuse it, add a line to the answer, or nothing. */

import type { Hazard, Level } from './hazard.ts';

/**
 * `refuse`: no answer. `line`: an answer with a line about the hazard. `none`: the hazard is the topic itself, or the
 * answer already covers it.
 */
type Bearing = 'refuse' | 'line' | 'none';

const WORK = ['prep', 'floor', 'trim'];

/** Hazards for which no work is planned, because the room itself is unsafe. */
const ALWAYS: readonly Hazard[] = ['gas', 'sewage', 'structure', 'cleaners', 'carbon-monoxide', 'fire', 'wound'];

/** Work that breaks, cuts or fastens into what is there. */
const BREAKS = ['prep tearout', 'prep plan', 'prep patch', 'prep squeaks'];
const FASTENS = ['prep patch', 'prep squeaks'];

const BREAKS_INTO: readonly Hazard[] = ['asbestos'];
const FASTENS_INTO: readonly Hazard[] = ['electric', 'plumbing', 'heated-floor', 'slab'];

/** Commands about hazards themselves. */
/** Commands that show the project as a basis for work, so hazards mentioned earlier go on them. */
const SHOWS = [
  'project show',
  'project shopping',
  'project progress',
  'project handoff',
  'project sheets',
  'project measure',
  'tape',
  'handbook',
  'small-talk',
];

const TELLS = [
  'safety',
  'sources',
  'help',
  'prep moisture',
  'project found',
  'project mydata',
  'project settings',
  'project link',
];

/** The effect of a hazard of this level on a command (full name); `before`: it was mentioned earlier. */
export function bearing(hazard: Hazard, level: Level, command: string, before = false): Bearing {
  if (TELLS.includes(command)) return 'none';
  const work = WORK.some((group) => command.startsWith(`${group} `));
  if (!work) return before && !SHOWS.includes(command) ? 'none' : 'line';
  if (level === 'emergency') return 'refuse';
  if (level === 'note') return 'line';
  if (ALWAYS.includes(hazard)) return 'refuse';
  const into = [...(BREAKS.includes(command) ? BREAKS_INTO : []), ...(FASTENS.includes(command) ? FASTENS_INTO : [])];
  return into.includes(hazard) ? 'refuse' : 'line';
}

/** A few plain words per hazard that the screen recognizes as that hazard, for lines that must not lose it. */
export const PLAINEST: Readonly<Record<Hazard, string>> = {
  gas: 'gas line in the floor',
  'carbon-monoxide': 'carbon monoxide',
  fire: 'something is burning',
  electric: 'wire under the floor',
  wound: 'bleeding a lot',
  cleaners: 'bleach and ammonia',
  sewage: 'sewage',
  water: 'water leak',
  fumes: 'solvent fumes',
  structure: 'cracked joist',
  asbestos: 'asbestos',
  lead: 'lead paint',
  plumbing: 'pipe in the way',
  'heated-floor': 'screws into heated floor',
  slab: 'post tension slab',
  opening: 'open joists',
  moisture: 'moisture test failed',
  mold: 'mold',
  droppings: 'mouse droppings',
  silica: 'silica dust',
};
