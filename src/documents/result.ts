/** The result data that lists are made from, as far as lists read it. */

import type { NeedUnit } from '../reply/need.ts';
import type { Result } from '../reply/reply.ts';

export interface ShoppingData extends Result {
  readonly lines: readonly {
    readonly label: string;
    readonly stage: string;
    readonly unit: NeedUnit;
    readonly amount: number;
    readonly count?: number;
    readonly bought: number;
    readonly left: number;
    readonly back: number;
  }[];
}

export interface FloorData extends Result {
  readonly regions: readonly {
    readonly rows: readonly {
      readonly v: number;
      readonly height: number;
      readonly pieces: readonly {
        readonly u: number;
        readonly length: number;
        readonly plank: number;
        readonly part: string;
        readonly edge: string;
      }[];
    }[];
  }[];
}

export function isShopping(data: Result): data is ShoppingData {
  return data.kind === 'shopping' && 'lines' in data;
}

export function isFloor(data: Result): data is FloorData {
  return data.kind === 'floor' && 'regions' in data;
}
