/** What `prep moisture` reads. */

import type { Base } from '../../../src/measure/mineral.ts';
import type { ToldPart } from '../../../src/measure/place-area.ts';
import type { Found } from '../../../src/measure/place-found.ts';
import type { ToldMoisture, Water } from '../../../src/measure/readings-moisture.ts';
import type { MoistureMethod } from '../../../src/trade/moisture.ts';

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
