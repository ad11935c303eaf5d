/** Every cited figure in one list, for whoever asks where the answers come from. */

import { ADHESIVE_FIGURES } from './adhesive.ts';
import { ASBESTOS_FIGURES } from './asbestos.ts';
import { CAULK_FIGURES } from './caulk.ts';
import type { Cited } from './cited.ts';
import { DEBRIS_FIGURES } from './debris.ts';
import { EDGE_FIGURES } from './edges.ts';
import { FLATNESS_FIGURES } from './flatness.ts';
import { HEATING_FIGURES } from './heating.ts';
import { JOIST_FIGURES } from './joists.ts';
import { LEAD_FIGURES } from './lead.ts';
import { LIFTING_FIGURES } from './lifting.ts';
import { MOISTURE_FIGURES } from './moisture.ts';
import { NAIL_FIGURES } from './nails.ts';
import { NOISE_FIGURES } from './noise.ts';
import { PAINT_FIGURES } from './paint.ts';
import { PLANK_FIGURES } from './planks.ts';
import { PATCH_FIGURES, SQUEAK_FIGURES } from './subfloor.ts';
import { TEAROUT_FIGURES } from './tearout.ts';
import { TRIM_FIGURES } from './trim.ts';
import { UNIT_FIGURES } from './units.ts';

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
