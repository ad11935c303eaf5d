/** What a sentence tells of hazards, in the asker’s own words, so that an ask completed from it leaves none of them out. */

import { suspectWords } from '../../input/parse-covering.ts';
import { type Found, foundAside } from '../../input/parse-found.ts';

const LONGEST = 120;

/** The part of a sentence that names something unsafe or rotten, fit for the option `found`; undefined where none does. */
export function hazardSaid(text: string): string | undefined {
  // Where the joists lie is asked for, and no harm to them.
  const said = text.replace(/(?:first[ -]?)?joists? (?:is |are |spacing )?(?:at |every )?\d[^,;]*/gi, ' ');
  const unsafe = ({ hazards, rot }: Found): boolean => hazards.length > 0 || rot;
  const clauses = [...said.split(/[,;.!?\n]+/), said];
  const clause = clauses.find((part) => unsafe(foundAside(part)));
  const words = clause?.replace(/[,;:]/g, ' ').replace(/\s+/g, ' ').trim();
  return words === undefined || (words.length <= LONGEST && unsafe(foundAside(words))) ? words : 'unsure';
}

/** What a sentence tells of a doubtful layer besides the floor that was read from it; undefined where nothing. */
export function layerSaid(text: string, floor: string): string | undefined {
  return suspectWords(text.replace(floor, ' '));
}
