/** The stages and tools of a plan, as this house and floor need them. */

import { ASBESTOS_MARGIN, LEAD_YEARS } from '../../../src/figures/old-materials-figures.ts';
import { FLOATING_FLATNESS, FLOATING_FLATNESS_METRIC } from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import { type Country, mayHoldAsbestos } from '../../../src/prep/old-materials.ts';
import type { Covering } from '../../../src/prep/tearout-amounts.ts';
import { STAGE_NOTES, STAGES, type StageWords, TOOLS } from '../../../src/text/plan-text.ts';
import { tearoutSteps } from '../../../src/text/tearout-text.ts';
import type { PlanAsk } from './plan-options.ts';

/** Stages in order; what only some houses need is left out of the others. */
export function stagesOf(ask: PlanAsk, covering: Covering, country: Country, saying: Saying): readonly StageWords[] {
  const { built, insurer, tested, level, acclimate, heated } = ask;
  const margin = ASBESTOS_MARGIN[country].value;
  const old = mayHoldAsbestos(built, margin) && tested !== 'clear';
  const leadYear = LEAD_YEARS[country].value;
  const oldPaint = built === undefined || built < leadYear;
  const { prepare, tearOut, subfloor, dryFlat, acclimate: cartons, floor, trim, finish } = STAGES;
  const wet = [
    ...(ask.below.ground === 'concrete' ? [STAGE_NOTES.concrete] : []),
    ...(level === 'yes' ? [STAGE_NOTES.level(ask['leveller-dry'])] : []),
  ];
  return [
    { ...prepare, work: [...(insurer === 'yes' ? [STAGE_NOTES.photos] : []), ...prepare.work] },
    {
      ...tearOut,
      work: [
        ...(old ? [STAGE_NOTES.oldHouse(margin)] : []),
        ...(oldPaint ? [STAGE_NOTES.oldPaint(leadYear)] : []),
        ...(covering === 'carpet'
          ? tearOut.work
          : covering === 'tile'
            ? [STAGE_NOTES.tile]
            : tearoutSteps(covering, tested === 'clear')),
      ],
    },
    { ...subfloor, work: [...(heated === 'yes' ? [STAGE_NOTES.heatedScrews] : []), ...subfloor.work] },
    { ...dryFlat, work: [...flatWork(saying), ...dryFlat.work, ...wet] },
    ...(acclimate > 0 ? [{ ...cartons, work: [...cartons.work, STAGE_NOTES.acclimate(acclimate)] }] : []),
    { ...floor, work: [...floor.work, ...(heated === 'yes' ? STAGE_NOTES.heatedFloor : [])] },
    trim,
    finish,
  ];
}

/** The straightedge and the hollow that a floating floor is held to, in the asker's units. */
function flatWork(saying: Saying): readonly string[] {
  const [first] = (saying.units === 'metric' ? FLOATING_FLATNESS_METRIC : FLOATING_FLATNESS).value;
  return first ? [STAGE_NOTES.straightedge(sayLength(first.over, saying), sayLength(first.gap, saying))] : [];
}

/** Tools with where to get them and why: only what this floor needs. */
export function toolRows({ level, below, tested }: PlanAsk, covering: Covering): readonly (readonly string[])[] {
  const carpet = covering === 'carpet';
  const rows: readonly (readonly [boolean, readonly string[]])[] = [
    [true, TOOLS.knife],
    [true, TOOLS.bar],
    [carpet, TOOLS.pliers],
    [true, TOOLS.knees],
    [true, TOOLS.vacuum],
    [covering === 'sheet vinyl' && tested === 'clear', TOOLS.scraper],
    [true, TOOLS.straightedge],
    [below.ground !== 'concrete', TOOLS.drill],
    [true, TOOLS.meter],
    [level === 'yes', TOOLS.mixer],
    [true, TOOLS.tapping],
    [true, TOOLS.undercut],
    [true, TOOLS.saw],
    [true, TOOLS.nailer],
  ];
  return rows.filter(([needed]) => needed).map(([, row]) => row);
}
