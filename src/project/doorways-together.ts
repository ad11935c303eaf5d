/** Doorways in which a floor ends, picked one after the other: `bath 30 in to tile 1/2 in; kitchen 36 in to wood`. */

import { folded } from './room.ts';

/** The doorways picked, and those of some more that have names of their own. */
export function doorwaysTogether(picked: string, more: string): string {
  const known = new Set(entriesOf(picked).map(nameOf));
  return [...entriesOf(picked), ...entriesOf(more).filter((entry) => !known.has(nameOf(entry)))].join('; ');
}

function entriesOf(text: string): readonly string[] {
  return text.split(/(?:(?<!\s)\s+)?;\s*/).filter((entry) => entry !== '' && !/^none$/i.test(entry));
}

/** What stands before the first figure; without a name, all of it. */
function nameOf(entry: string): string {
  const name = folded(entry.replace(/\d.*$/s, ''));
  return name === '' ? folded(entry) : name;
}
