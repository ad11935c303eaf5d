/** Where the studs of a wall stand, and where a stretch of trim may be nailed and joined. Ticks from the wall's left end. */

import { type Length, ticks } from '../units/length.ts';

/** The first stud from the left end, and the distance from stud to stud (centre to centre). */
export interface Studs {
  readonly first: Length;
  readonly spacing: Length;
}

/** Studs strictly between two places on a wall, ascending. Throws a RangeError when the spacing is not positive. */
export function studsBetween({ first, spacing }: Studs, from: number, to: number): readonly Length[] {
  if (spacing <= 0) throw new RangeError(`studs ${spacing} ticks apart`);
  const studs: Length[] = [];
  const begin = first > from ? first : first + (Math.floor((from - first) / spacing) + 1) * spacing;
  for (let stud = begin; stud < to; stud += spacing) studs.push(ticks(stud));
  return studs;
}
