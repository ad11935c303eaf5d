/** Hazards by name, their levels, what the screen finds in a text, and what each does to a request: refuse it, add a line, or nothing. */

/** The most serious first. */
export const HAZARDS = [
  'gas',
  'carbon-monoxide',
  'fire',
  'electric',
  'wound',
  'cleaners',
  'sewage',
  'water',
  'fumes',
  'structure',
  'asbestos',
  'lead',
  'plumbing',
  'heated-floor',
  'slab',
  'opening',
  'moisture',
  'mold',
  'droppings',
  'silica',
] as const;

export type Hazard = (typeof HAZARDS)[number];

/**
 * `emergency`: someone may be hurt right now, and nothing else is answered. `stop`: work is unsafe until someone has
 * checked. `note`: worth a line, but stops nothing.
 */
export type Level = 'emergency' | 'stop' | 'note';

export const LEVELS: readonly Level[] = ['emergency', 'stop', 'note'];

/** Languages in which an emergency is understood and answered. */
export type Language = 'en' | 'es' | 'de' | 'fr' | 'pt';

export interface Sighting {
  readonly hazard: Hazard;
  readonly level: Level;
  readonly words: string;
  readonly language: Language;
  /** Details where answers differ: `cover`, `disturbed`, `eye`. */
  readonly about?: string;
  /** Set if it is only feared: the question is how to avoid it. */
  readonly feared?: true;
  /** Set if a misspelled word could also mean this harmless trade word. */
  readonly or?: { readonly typed: string; readonly hazard: string; readonly other: string };
}

/** A fact that ends a hazard, with its wording: a test, or who made it safe. */
export interface Cleared {
  readonly hazard: Hazard;
  readonly words: string;
  readonly tested: boolean;
  /** Whether the words name no substance: `tested negative`. */
  readonly bare?: true;
}

/** Sightings, one per hazard and most serious first, and facts that clear hazards. */
export interface Screened {
  readonly sightings: readonly Sighting[];
  readonly cleared: readonly Cleared[];
}

/** Sort order: most serious first, by level, then by hazard. */
export function byGravity(one: Sighting, other: Sighting): number {
  const level = LEVELS.indexOf(one.level) - LEVELS.indexOf(other.level);
  return level !== 0 ? level : HAZARDS.indexOf(one.hazard) - HAZARDS.indexOf(other.hazard);
}

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

/** Commands about hazards themselves. */
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
