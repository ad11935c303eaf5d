/** What `prep moisture` reads. */

import type { MoistureMethod } from '../../../src/figures/moisture-figures.ts';
import type { Found } from '../../../src/input/parse-found.ts';
import type { Base, ToldMoisture, Water } from '../../../src/input/parse-moisture.ts';
import type { ToldPart } from '../../../src/input/parse-place.ts';

export interface MoistureAsk {
  readonly readings: ToldMoisture;
  readonly method: MoistureMethod;
  readonly floor: Base | 'untold';
  readonly limit: number | 'usual';
  readonly area: ToldPart;
  readonly flooring: number | 'none';
  readonly boards: 'strip' | 'wide';
  readonly leak: number | 'none';
  readonly water: Water;
  readonly mould: ToldPart;
  readonly found: Found;
}
