/** What the screen knows: hazards by name, how grave a reading of one is, and what it finds in a text. */

/** The gravest first. */
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
 * `emergency`: somebody may be hurt this minute, and nothing else is answered. `stop`: work on it is unsafe until somebody has
 * looked. `note`: it is worth a line, and stops nothing by itself.
 */
export type Level = 'emergency' | 'stop' | 'note';

export const LEVELS: readonly Level[] = ['emergency', 'stop', 'note'];

/** Languages in which an emergency is understood and answered. */
export type Language = 'en' | 'es' | 'de' | 'fr' | 'pt';

/** A hazard read in a text. */
export interface Sighting {
  readonly hazard: Hazard;
  readonly level: Level;
  /** The words that set it off, as they were typed. */
  readonly words: string;
  readonly language: Language;
  /** What about it, where answers differ: `cover`, `disturbed`, `eye`. */
  readonly about?: string;
  /** Set where it is only feared: how to avoid it is asked. */
  readonly feared?: true;
  /** Set where a misspelled word could also be meant as this word of the trade, which is no hazard. */
  readonly or?: { readonly typed: string; readonly hazard: string; readonly other: string };
}

/** A fact that ends a hazard, with the words that say it: a test, or who made it safe. */
export interface Cleared {
  readonly hazard: Hazard;
  readonly words: string;
  /** Whether a test cleared it. */
  readonly tested: boolean;
  /** Whether the words name no substance: `tested negative`. */
  readonly bare?: true;
}

/** What the screen finds: sightings, one a hazard, the gravest first, and facts that clear. */
export interface Screened {
  readonly sightings: readonly Sighting[];
  readonly cleared: readonly Cleared[];
}

/** Whether one hazard is graver than another of the same level. */
export function byGravity(one: Sighting, other: Sighting): number {
  const level = LEVELS.indexOf(one.level) - LEVELS.indexOf(other.level);
  return level !== 0 ? level : HAZARDS.indexOf(one.hazard) - HAZARDS.indexOf(other.hazard);
}
