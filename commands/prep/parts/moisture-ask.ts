/** What `prep moisture` reads. */

import type { MoistureMethod } from '../../../src/figures/moisture-figures.ts';
import type { Base } from '../../../src/input/mineral.ts';
import type { ToldPart } from '../../../src/input/place-area.ts';
import type { Found } from '../../../src/input/place-found.ts';
import type { ToldMoisture, Water } from '../../../src/input/readings-moisture.ts';

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
