/** A walk around the walls of a room: lengths with a right or left turn between them. */

import {
  lastTurnWrong,
  notInWalk,
  turnMissing,
  turnTwice,
  walkCrosses,
  walkEndsAway,
  walkTooLong,
  walkTooShort,
  wallTooShort,
} from '../../text/room-problems-text.ts';
import { type Length, TICKS_PER_INCH } from '../../units/length.ts';
import { type Saying, sayLength } from '../format.ts';
import { unitIn, unitsOf } from '../parse-length.ts';
import type { LengthUnit } from '../parse-number.ts';
import type { Reading } from '../reading.ts';
import { isSlantedWalk, readSlantedWalk } from './parse-walk-slanted.ts';
import type { Flaw } from './room-flaw.ts';
import { readSide } from './room-text.ts';
import {
  CLOSING_SLACK,
  type Closed,
  closeWalk,
  FEWEST_WALLS,
  MOST_WALLS,
  mendedWalks,
  type ReadWalk,
  type Step,
  stepsOf,
  type Turn,
  type Walk,
  way,
} from './walk-steps.ts';

/**
 * Parses the walk at [from, to) of `plain`; a wall without a unit is in `unit`. Flaws suggest corrections for that
 * range.
 */
export function readWalk(
  plain: string,
  place: { readonly from: number; readonly to: number },
  unit: LengthUnit,
  reading: Reading,
): ReadWalk {
  const steps = stepsOf(plain, place.from, place.to);
  if (isSlantedWalk(steps)) return readSlantedWalk(steps, place, unit, reading);
  const flaws = [...wordFlaws(steps), ...orderFlaws(steps)];
  const walls = steps.filter((step) => step.kind === 'wall');
  const saying: Saying = { units: unitsOf(unit), decimal: reading.preferences.decimal };
  if (walls.length > MOST_WALLS) return failed({ ...place, expected: walkTooLong(MOST_WALLS), mends: () => [] });
  const lengths: Length[] = [];
  for (const { from, to, typed } of walls) {
    const side = readSide(typed, unit, reading);
    if (!side.ok) flaws.push({ from, to, expected: side.expected, mends: () => side.mends });
    else if (side.length < TICKS_PER_INCH) flaws.push({ from, to, expected: wallTooShort(), mends: () => [] });
    else lengths.push(side.length);
  }
  if (flaws.length > 0) return { ok: false, flaws };
  const walk = walkOf(steps, lengths);
  const typed = walls.map((wall) => wall.typed);
  const closed = closeWalk(walk);
  if (closed.kind === 'outline') return { ok: true, ...closed };
  const mends = () => mendedWalks(walk, closed).map((mend) => written(mend, walk, typed, saying));
  const short = walls.length < FEWEST_WALLS;
  const expected = short ? walkTooShort(FEWEST_WALLS) : expectedOf(closed, walk, typed, saying);
  return failed({ ...place, expected, mends });
}

function failed(flaw: Flaw) {
  return { ok: false, flaws: [flaw] } as const;
}

function walkOf(steps: readonly Step[], walls: readonly Length[]): Walk {
  const turns = steps.filter((step) => step.kind === 'turn').map(({ turn }) => turn);
  const [first, ...others] = turns;
  return steps[0]?.kind === 'turn' && first ? { walls, turns: others, first } : { walls, turns };
}

/** Words that are neither lengths nor turns. */
function wordFlaws(steps: readonly Step[]): Flaw[] {
  return steps
    .filter((step) => step.kind === 'word')
    .map(({ from, to, typed }) => ({ from, to, expected: notInWalk(typed), mends: () => likeliest(typed) }));
}

function likeliest(word: string): string[] {
  if (/^r/.test(word)) return ['right', ''];
  return /^l/.test(word) ? ['left', ''] : [''];
}

/** Two lengths without a turn between them, or two turns without a length. */
function orderFlaws(steps: readonly Step[]): Flaw[] {
  return steps.flatMap((step, i): Flaw[] => {
    const before = steps[i - 1];
    if (!before || before.kind !== step.kind || step.kind === 'word') return [];
    const place = { from: before.to, to: step.to, shown: { from: before.from, to: step.to } };
    if (step.kind === 'turn') return [{ ...place, expected: turnTwice(), mends: () => [''] }];
    const turns: readonly Turn[] = ['right', 'left'];
    const mends = () => turns.map((turn) => ` ${turn} ${step.typed}`);
    return [{ ...place, expected: turnMissing(), mends }];
  });
}

function expectedOf(
  closed: Exclude<Closed, { kind: 'outline' }>,
  walk: Walk,
  typed: readonly string[],
  saying: Saying,
): string {
  if (closed.kind === 'last turn') return lastTurnWrong();
  if (closed.kind === 'crossing') {
    const [one, other] = closed.walls.map((i) => ({ number: i + 1, typed: typed[i] }));
    return walkCrosses(one, other);
  }
  const [ahead, right] = closed.gap.map((gap) => -gap);
  return walkEndsAway(
    way(ahead, 'ahead of', 'behind', CLOSING_SLACK, saying),
    way(right, 'right of', 'left of', CLOSING_SLACK, saying),
    walk.walls.length,
  );
}

/** A corrected walk as text: walls that keep their length keep their wording, if it has a unit. */
function written(mend: Walk, walk: Walk, typed: readonly string[], saying: Saying): string {
  const walls = mend.walls.map((wall, i) => {
    const own = wall === walk.walls[i] ? typed[i] : undefined;
    return own !== undefined && unitIn(own) ? own : sayLength(wall, saying);
  });
  const path = walls.map((wall, i) => (mend.turns[i] ? `${wall} ${mend.turns[i]}` : wall)).join(' ');
  return `walk ${mend.first ? `${mend.first} ` : ''}${path}`;
}
