/** Every figure that the handbook quotes, by its id. */

import { ASBESTOS_FLOORS_QUOTED } from './handbook-asbestos-floors.ts';
import { BASEBOARDS_QUOTED } from './handbook-baseboards.ts';
import { BEFORE_AND_AFTER_QUOTED } from './handbook-before-and-after.ts';
import { BUYING_QUOTED } from './handbook-buying.ts';
import { CONCRETE_SLAB_QUOTED } from './handbook-concrete-slab.ts';
import { COVERING_OVER_QUOTED } from './handbook-covering-over.ts';
import { DAMP_AND_SMELL_QUOTED } from './handbook-damp-and-smell.ts';
import { EXPANSION_QUOTED } from './handbook-expansion.ts';
import { FIRM_SUBFLOOR_QUOTED } from './handbook-firm-subfloor.ts';
import { FIXTURES_QUOTED } from './handbook-fixtures.ts';
import { FLAT_FLOOR_QUOTED } from './handbook-flat-floor.ts';
import { FLOOR_CARE_QUOTED } from './handbook-floor-care.ts';
import { FLOOR_TROUBLES_QUOTED } from './handbook-floor-troubles.ts';
import { LAYING_QUOTED } from './handbook-laying.ts';
import { LEAD_AND_DUST_QUOTED } from './handbook-lead-and-dust.ts';
import { MENDING_QUOTED } from './handbook-mending.ts';
import { OPENINGS_QUOTED } from './handbook-openings.ts';
import { PAD_AND_SOUND_QUOTED } from './handbook-pad-and-sound.ts';
import { PEOPLE_QUOTED } from './handbook-people.ts';
import { PLANK_DIRECTION_QUOTED } from './handbook-plank-direction.ts';
import { PLANNING_QUOTED } from './handbook-planning.ts';
import { ROOM_CLIMATE_QUOTED } from './handbook-room-climate.ts';
import { ROWS_QUOTED } from './handbook-rows.ts';
import { SPECIAL_PLACES_QUOTED } from './handbook-special-places.ts';
import { TEARING_OUT_QUOTED } from './handbook-tearing-out.ts';
import { TOOLS_AND_BODY_QUOTED } from './handbook-tools-and-body.ts';
import { TRANSITIONS_QUOTED } from './handbook-transitions.ts';
import { TRIM_FASTENING_QUOTED } from './handbook-trim-fastening.ts';
import { TRIM_JOINTS_QUOTED } from './handbook-trim-joints.ts';
import type { QuotedFigure } from './quoted.ts';

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
    ...SPECIAL_PLACES_QUOTED,
    ...TEARING_OUT_QUOTED,
    ...TOOLS_AND_BODY_QUOTED,
    ...TRANSITIONS_QUOTED,
    ...TRIM_FASTENING_QUOTED,
    ...TRIM_JOINTS_QUOTED,
  ].map((figure) => [figure.id, figure]),
);
