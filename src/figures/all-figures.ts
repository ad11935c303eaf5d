/** All figures in two lists: those the answers compute with, and those the handbook quotes, by id. */

import { type Cited, type QuotedFigure, UNIT_FIGURES } from './cited.ts';
import { HEATING_FIGURES, PLANK_FIGURES } from './floor-figures.ts';
import {
  BASEBOARDS_QUOTED,
  FIXTURES_QUOTED,
  OPENINGS_QUOTED,
  TRANSITIONS_QUOTED,
  TRIM_FASTENING_QUOTED,
  TRIM_JOINTS_QUOTED,
} from './handbook-edges-figures.ts';
import {
  COVERING_OVER_QUOTED,
  FLOOR_CARE_QUOTED,
  FLOOR_TROUBLES_QUOTED,
  PAD_AND_SOUND_QUOTED,
  SPECIAL_PLACES_QUOTED,
} from './handbook-floors-figures.ts';
import { ASBESTOS_FLOORS_QUOTED, DAMP_AND_SMELL_QUOTED, LEAD_AND_DUST_QUOTED } from './handbook-hazards-figures.ts';
import {
  EXPANSION_QUOTED,
  LAYING_QUOTED,
  PLANK_DIRECTION_QUOTED,
  ROOM_CLIMATE_QUOTED,
  ROWS_QUOTED,
  WOOD_FLOOR_QUOTED,
} from './handbook-laying-figures.ts';
import { BEFORE_AND_AFTER_QUOTED, BUYING_QUOTED, PEOPLE_QUOTED, PLANNING_QUOTED } from './handbook-people-figures.ts';
import {
  CONCRETE_SLAB_QUOTED,
  FIRM_SUBFLOOR_QUOTED,
  FLAT_FLOOR_QUOTED,
  MENDING_QUOTED,
} from './handbook-subfloor-figures.ts';
import { TEARING_OUT_QUOTED, TOOLS_AND_BODY_QUOTED } from './handbook-work-figures.ts';
import { MOISTURE_FIGURES } from './moisture-figures.ts';
import { LIFTING_FIGURES, NOISE_FIGURES } from './safety-figures.ts';
import {
  ADHESIVE_FIGURES,
  FLATNESS_FIGURES,
  JOIST_FIGURES,
  PATCH_FIGURES,
  SQUEAK_FIGURES,
} from './subfloor-figures.ts';
import { ASBESTOS_FIGURES, DEBRIS_FIGURES, LEAD_FIGURES, TEAROUT_FIGURES } from './tearout-figures.ts';
import { CAULK_FIGURES, EDGE_FIGURES, NAIL_FIGURES, PAINT_FIGURES, TRIM_FIGURES } from './trim-figures.ts';

// Every figure that the handbook quotes, by its id.

export const QUOTED: ReadonlyMap<string, QuotedFigure> = new Map(
  [
    ...ASBESTOS_FLOORS_QUOTED,
    ...BASEBOARDS_QUOTED,
    ...BEFORE_AND_AFTER_QUOTED,
    ...BUYING_QUOTED,
    ...CONCRETE_SLAB_QUOTED,
    ...COVERING_OVER_QUOTED,
    ...DAMP_AND_SMELL_QUOTED,
    ...EXPANSION_QUOTED,
    ...FIRM_SUBFLOOR_QUOTED,
    ...FIXTURES_QUOTED,
    ...FLAT_FLOOR_QUOTED,
    ...FLOOR_CARE_QUOTED,
    ...FLOOR_TROUBLES_QUOTED,
    ...LAYING_QUOTED,
    ...LEAD_AND_DUST_QUOTED,
    ...MENDING_QUOTED,
    ...OPENINGS_QUOTED,
    ...PAD_AND_SOUND_QUOTED,
    ...PEOPLE_QUOTED,
    ...PLANK_DIRECTION_QUOTED,
    ...PLANNING_QUOTED,
    ...ROOM_CLIMATE_QUOTED,
    ...ROWS_QUOTED,
    ...WOOD_FLOOR_QUOTED,
    ...SPECIAL_PLACES_QUOTED,
    ...TEARING_OUT_QUOTED,
    ...TOOLS_AND_BODY_QUOTED,
    ...TRANSITIONS_QUOTED,
    ...TRIM_FASTENING_QUOTED,
    ...TRIM_JOINTS_QUOTED,
  ].map((figure) => [figure.id, figure]),
);

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
