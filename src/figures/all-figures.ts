/** Every cited figure in one list, for the answer about sources. */

import { type Cited, UNIT_FIGURES } from './cited.ts';
import { HEATING_FIGURES, PLANK_FIGURES } from './floor-figures.ts';
import { MOISTURE_FIGURES } from './moisture-figures.ts';
import { ASBESTOS_FIGURES, LEAD_FIGURES } from './old-materials-figures.ts';
import { LIFTING_FIGURES, NOISE_FIGURES } from './safety-figures.ts';
import {
  ADHESIVE_FIGURES,
  FLATNESS_FIGURES,
  JOIST_FIGURES,
  PATCH_FIGURES,
  SQUEAK_FIGURES,
} from './subfloor-figures.ts';
import { DEBRIS_FIGURES, TEAROUT_FIGURES } from './tearout-figures.ts';
import { CAULK_FIGURES, EDGE_FIGURES, NAIL_FIGURES, PAINT_FIGURES, TRIM_FIGURES } from './trim-figures.ts';

export const FIGURES: readonly Cited<unknown>[] = [
  ...PLANK_FIGURES,
  ...UNIT_FIGURES,
  ...TEAROUT_FIGURES,
  ...DEBRIS_FIGURES,
  ...ASBESTOS_FIGURES,
  ...LEAD_FIGURES,
  ...LIFTING_FIGURES,
  ...NOISE_FIGURES,
  ...CAULK_FIGURES,
  ...EDGE_FIGURES,
  ...NAIL_FIGURES,
  ...PAINT_FIGURES,
  ...TRIM_FIGURES,
  ...SQUEAK_FIGURES,
  ...PATCH_FIGURES,
  ...ADHESIVE_FIGURES,
  ...JOIST_FIGURES,
  ...FLATNESS_FIGURES,
  ...MOISTURE_FIGURES,
  ...HEATING_FIGURES,
];
