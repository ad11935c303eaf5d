/** What `prep level` reads. */

import type { ToldPart } from '../../../src/input/place-area.ts';
import type { Found } from '../../../src/input/place-found.ts';
import type { ToldReadings } from '../../../src/input/readings.ts';
import type { ToldRamp, ToldRule } from '../../../src/input/readings-rule.ts';
import type { Bag, DipShape } from '../../../src/prep/flatness.ts';
import type { Length } from '../../../src/units/length.ts';

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
