/** The screen's types: hazards by name, levels, and what it finds in a text. */

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
