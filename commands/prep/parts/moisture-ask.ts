/** What `prep moisture` reads. */

import type { ToldPart } from '../../../src/measure/place-area.ts';
import type { Found } from '../../../src/measure/place-found.ts';
import type { ToldMoisture, Water } from '../../../src/measure/readings-moisture.ts';
import type { MoistureMethod } from '../../../src/trade/moisture.ts';

export interface MoistureAsk {
  readonly readings: ToldMoisture;
  readonly method: MoistureMethod;
  readonly limit: number | 'usual';
  readonly area: ToldPart;
  readonly flooring: number | 'none';
  readonly boards: 'strip' | 'wide';
  readonly leak: number | 'none';
  readonly water: Water;
  readonly mould: ToldPart;
  readonly found: Found;
}
