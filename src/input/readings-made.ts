/** Parsed rooms and planks: exact values with the units they were typed in. */

import type { Plank, Region } from '../layout/floor.ts';
import type { Area, Cents, Length } from '../units/length.ts';
import type { Units } from './reading.ts';

/** Rooms in the order typed; each is a region laid on its own. */
export interface ParsedRooms {
  readonly rooms: readonly Region[];
  readonly units: Units;
}

/** A plank product: the board, and what a carton covers (as printed, or size × count) and costs, if known. */
export interface ParsedPlank {
  readonly plank: Plank;
  readonly cartonArea: Area;
  readonly cartonPrice?: Price;
  readonly attachedPad?: boolean;
  /** Locking boards that come as A and B, for herringbone. */
  readonly handed?: boolean;
  readonly thickness?: Length;
  readonly units: Units;
}

export interface Price {
  readonly cents: Cents;
  /** ISO 4217. */
  readonly currency: string;
}
