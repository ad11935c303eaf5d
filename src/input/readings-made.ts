/** What the readers make of a room and a plank: exact values with the units they were typed in. */

import type { Plank, Region } from '../layout/floor.ts';
import type { Area, Cents, Length } from '../units/length.ts';
import type { Units } from './reading.ts';

/** Rooms in the order typed; each is one region laid by itself. */
export interface ParsedRooms {
  readonly rooms: readonly Region[];
  readonly units: Units;
}

/** A plank product: the board, what a carton covers (as printed, else size × count) and costs, if told. */
export interface ParsedPlank {
  readonly plank: Plank;
  readonly cartonArea: Area;
  readonly cartonPrice?: Price;
  readonly attachedPad?: boolean;
  /** Locking boards that come as A and B, for a herringbone. */
  readonly handed?: boolean;
  readonly thickness?: Length;
  readonly units: Units;
}

export interface Price {
  readonly cents: Cents;
  /** ISO 4217. */
  readonly currency: string;
}
