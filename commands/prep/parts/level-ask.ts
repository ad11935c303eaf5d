/** What `prep level` reads. */

import type { Length } from '../../../src/core/length.ts';
import type { DipShape } from '../../../src/core/subfloor/dip.ts';
import type { Bag } from '../../../src/core/subfloor/fill.ts';
import type { ToldPart } from '../../../src/measure/place-area.ts';
import type { Found } from '../../../src/measure/place-found.ts';
import type { ToldReadings } from '../../../src/measure/readings.ts';
import type { ToldRamp, ToldRule } from '../../../src/measure/readings-rule.ts';

export interface LevelAsk {
  readonly readings: ToldReadings;
  readonly rule: ToldRule;
  readonly line: 'straightedge' | 'level';
  readonly shape: 'untold' | DipShape;
  readonly floor: 'wood' | 'concrete' | 'old';
  readonly area: ToldPart;
  readonly ramp: ToldRamp;
  readonly bag: Bag;
  readonly pour: Length;
  readonly found: Found;
}
