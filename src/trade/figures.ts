/** Every cited figure in one list, for whoever asks where the answers come from. */

import type { Cited } from './cited.ts';
import { PLANK_FIGURES } from './planks.ts';
import { UNIT_FIGURES } from './units.ts';

export const FIGURES: readonly Cited<unknown>[] = [...PLANK_FIGURES, ...UNIT_FIGURES];
