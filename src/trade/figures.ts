/** Every cited figure in one list, for whoever asks where the answers come from. */

import type { Cited } from './cited.ts';
import * as planks from './planks.ts';
import * as units from './units.ts';

export const FIGURES: readonly Cited<unknown>[] = [...Object.values(planks), ...Object.values(units)];
