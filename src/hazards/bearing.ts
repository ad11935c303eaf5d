/** What a hazard does to an ask: whether it is answered at all, with a line, or as if nothing were. */

import type { Hazard, Level } from './hazard.ts';

/** `refuse`: it is not worked out. `line`: it is, with a line on the hazard. `none`: it is what was asked about, or has its own words. */
type Bearing = 'refuse' | 'line' | 'none';

const WORK = ['prep', 'floor', 'trim'];

/** Hazards that no work is planned over: the room itself is not safe to be worked in. */
const ALWAYS: readonly Hazard[] = ['gas', 'sewage', 'structure', 'cleaners', 'carbon-monoxide', 'fire', 'wound'];

/** Work that breaks, cuts or fastens into what lies there. */
const BREAKS = ['prep tearout', 'prep plan', 'prep patch', 'prep squeaks'];
const FASTENS = ['prep patch', 'prep squeaks'];

const BREAKS_INTO: readonly Hazard[] = ['asbestos'];
const FASTENS_INTO: readonly Hazard[] = ['electric', 'plumbing', 'heated-floor', 'slab'];

/** They tell of hazards themselves, and are asked for that. */
/** What of a project is looked at to work by: what was told before stands on it. */
const SHOWS = [
  'project show',
  'project shopping',
  'project progress',
  'project handoff',
  'project sheets',
  'project measure',
  'tape',
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

/** What a hazard of this level does to a command, by its full name; `before` where it was told earlier. */
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

/** A few plain words for each hazard that the screen reads as that hazard, for lines that must not lose it. */
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
