/** What `prep level` reads. */

import type { ToldRamp, ToldReadings, ToldRule } from '../../../src/input/parse-flatness.ts';
import type { Found } from '../../../src/input/parse-found.ts';
import type { ToldPart } from '../../../src/input/parse-place.ts';
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
