/** When a dip in a wood floor is a question about its structure first: too deep, or too much filling for what carries it. */

import { DEEPEST_DIP, HEAVIEST_FILL } from '../../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut, sayLength } from '../../../src/input/format.ts';
import { type DipVerdict, dipVerdict, isDeeper, isGridDeeper } from '../../../src/prep/flatness.ts';
import type { Refusal } from '../../../src/reply/reply.ts';
import { capital } from '../../../src/text/chat-text.ts';
import { LEVEL } from '../../../src/text/prep-text.ts';
import type { LevelAsk } from './level-ask.ts';
import { type Fill, sayLoad } from './level-fill.ts';
import { refusal } from './patch-screen.ts';

/** What a wood floor's dips are; concrete carries what is poured on it. Nothing is filled on a floor that is flat enough. */
export function verdictOf(ask: LevelAsk, fill: Fill, flat: boolean): DipVerdict {
  if (ask.floor === 'concrete') return 'fill';
  if (isTooDeep(ask)) return 'stop';
  if (flat) return 'fill';
  const limit = HEAVIEST_FILL.value;
  const verdicts = [
    dipVerdict(
      fill.dips.map(({ pounds }) => pounds),
      limit,
    ),
    dipVerdict([fill.pounds.ramp], limit),
    dipVerdict([fill.pounds.cells], limit),
  ];
  return verdicts.find((verdict) => verdict === 'stop') ?? verdicts.find((verdict) => verdict === 'measure') ?? 'fill';
}

function isTooDeep({ readings, line }: LevelAsk): boolean {
  const limit = DEEPEST_DIP.value;
  if (readings.kind === 'gaps') return readings.gaps.some(({ gap, over }) => isDeeper(gap, over, limit));
  const { grid } = readings;
  const [across, along] = [(grid.rows[0]?.length ?? 1) - 1, grid.rows.length - 1];
  const longest = Math.max(across * grid.dx, along * grid.dy);
  // Depths below a straightedge are gaps themselves; below a level line a slope is no dip.
  const below = line === 'straightedge' && isDeeper(Math.max(...grid.rows.flat()), longest, limit);
  return below || isGridDeeper(grid, limit);
}

/** Why it stops there, and who to call. */
export function stopRefusal(ask: LevelAsk, fill: Fill, worst: string, floorTold: boolean, saying: Saying): Refusal {
  const { gap, over } = DEEPEST_DIP.value;
  const why = isTooDeep(ask)
    ? LEVEL.tooDeep(worst, sayCut(gap, saying), sayLength(over, saying), loadRange(fill, saying))
    : LEVEL.tooHeavy(worst, loadRange(fill, saying) ?? '', sayLoad(HEAVIEST_FILL.value, saying));
  return refusal({ why: floorTold ? why : `${why} ${capital(LEVEL.floorTaken)}.`, call: LEVEL.stopCall });
}

/** What the filling weighs a square foot, from the emptiest shape to the fullest, or of its heaviest part; undefined for a hump. */
export function loadRange({ dips, pounds }: Fill, saying: Saying): string | undefined {
  const [first, last] = [dips[0], dips.at(-1)];
  const part = Math.max(pounds.ramp, pounds.cells);
  if (first && last && last.pounds >= part) return sayLoad([first.pounds, last.pounds], saying);
  return part > 0 ? sayLoad(part, saying) : undefined;
}
