/** What trim commands read: exact values by option. */

import type { ToldStock } from '../../../src/input/parse-stock.ts';
import type { ToldRooms } from '../../../src/input/readings-made.ts';
import type { Bay, Door, MeasuredCorner } from '../../../src/trim/walls.ts';
import type { Length } from '../../../src/units/length.ts';

export interface WallsAsk {
  readonly room: ToldRooms;
  readonly doors: readonly Door[];
  readonly casing: Length;
  readonly bay: readonly Bay[];
  readonly corners: readonly MeasuredCorner[];
}

export interface StudsAsk {
  readonly 'stud-spacing': Length;
  readonly 'first-stud': Length;
}

export interface SticksAsk {
  readonly stock: ToldStock;
  readonly kerf: Length;
  readonly 'end-trim': Length;
}

export interface ListAsk extends WallsAsk, StudsAsk, SticksAsk {
  readonly thickness: Length;
  readonly 'inside-joint': 'miter' | 'cope' | 'mitre';
  readonly 'glue-up': Length;
  readonly 'saw-reach': number;
}
