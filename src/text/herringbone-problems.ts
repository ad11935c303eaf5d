/** The texts about herringbone floors that cannot be laid as asked. */

import type { Problem } from '../reply/reply.ts';

/** `plank` as typed. */
export function clickInHerringbone(plank: string): Problem {
  return {
    option: 'plank',
    got: plank,
    expected:
      'Planks that click end to end lie in rows only: in a herringbone each end meets the long side of the next board, and their locks do not fit there. Boards made for it come as A and B (add “A/B boards”); boards to glue down have no locks (add “no lock”).',
    fix: `${plank}, A/B boards`,
  };
}

export function handedInRows(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected: 'A and B boards lock to each other in a herringbone, not end to end in rows.',
    fix: 'herringbone',
  };
}

export function borderOfHanded(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected:
      'A border runs end to end and round corners, where the locks of A and B boards do not fit: it takes boards without locks.',
    fix: 'herringbone',
  };
}

export function noBorder(pattern: string, room: string, hole: boolean, courses: number): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected: hole
      ? `In ${room} the border would run into what stands there: ask for fewer courses.`
      : `${room} has a wall too short for a border of ${courses}: ask for fewer courses, or for none.`,
    fix: courses > 1 ? `herringbone, border ${courses - 1}` : 'herringbone',
  };
}

export function notCompared(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected: 'Planks are compared in rows; a herringbone is worked out plank by plank with “floor planks”.',
    fix: 'half',
  };
}

export function notResumed(pattern: string): Problem {
  return {
    option: 'pattern',
    got: pattern,
    expected:
      'A floor is gone on with row by row; a herringbone has no rows: count the boards you still need by laying out the part that is left as a room of its own.',
    fix: 'half',
  };
}
