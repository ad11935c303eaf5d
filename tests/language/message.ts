/** What a message of the corpus must be read as, told as a person would who knows the trade. */

import type { Topic } from '../../src/language/sentence.ts';

/** Sides, sizes and sums as plain figures with a unit: `12.5 ft`, `144 in`, `3.8 m`. */
export interface Wanted {
  /** Undefined where nothing must be read. */
  readonly topic?: Topic;
  /** Regions with `;` between them, each a name and its two sides: `living 12 ft x 14 ft`. */
  readonly rooms?: string;
  /** Width x length. */
  readonly plank?: string;
  readonly count?: number;
  /** What a carton covers. */
  readonly area?: string;
  /** Of a carton, in cents and the currency. */
  readonly price?: string;
  /** Every other option that must be told, and no other: lengths as above, percentages as `10 %`, words as they are. */
  readonly options?: Readonly<Record<string, string>>;
  /** What a sum comes to: a length, an area or a plain number. */
  readonly comes?: string;
  /** The fact that must be asked back; undefined where the ask is whole. */
  readonly back?: string;
}

export interface Message {
  readonly text: string;
  readonly metric?: boolean;
  readonly wanted: Wanted;
}

/** An ask for planks that is whole. */
export function floor(text: string, rooms: string, plank: string, more: Wanted & { metric?: boolean } = {}): Message {
  const { metric, ...wanted } = more;
  return { text, wanted: { topic: 'planks', rooms, plank, ...wanted }, ...(metric && { metric }) };
}

/** An ask for planks in which one fact must be asked back. */
export function back(text: string, missing: string, more: Wanted & { metric?: boolean } = {}): Message {
  const { metric, ...wanted } = more;
  return { text, wanted: { topic: 'planks', back: missing, ...wanted }, ...(metric && { metric }) };
}

/** A sum of lengths, or a length in another unit. */
export function sum(text: string, comes: string): Message {
  return { text, wanted: { topic: 'tape', comes } };
}

/** Anything about another topic. */
export function about(topic: Topic, text: string, more: Wanted = {}): Message {
  return { text, wanted: { topic, ...more } };
}

/** Chatter. */
export function chatter(text: string): Message {
  return { text, wanted: {} };
}
