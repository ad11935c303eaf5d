/** A walk that makes no outline, mended by its turns alone: no wall is measured anew or made up. */

import type { Closed } from './walk-outline.ts';
import { closeWalk } from './walk-outline.ts';
import type { Walk } from './walk-path.ts';

/** How many turns are tried: the mend is one of them or the asker measures again. */
const MOST_TURNS = 40;

/** Walks that close, made from one that does not: its last turn left out, or one turn the other way. The last turn is left untold. */
export function mendedWalks(told: Walk, closed: Closed): Walk[] {
  const walk = { ...told, turns: told.turns.slice(0, told.walls.length - 1) };
  const closes = (mend: Walk) => closeWalk(mend).kind === 'outline';
  return (closed.kind === 'last turn' ? [walk] : turnedWalks(walk)).filter(closes);
}

function turnedWalks(walk: Walk): Walk[] {
  if (walk.turns.length > MOST_TURNS) return [];
  return walk.turns.map((turn, i) => ({
    ...walk,
    turns: walk.turns.map((kept, j) => (i === j ? (turn === 'right' ? 'left' : 'right') : kept)),
  }));
}
