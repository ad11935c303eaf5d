/** The words of a finishing answer: nails, caulk, filler, primer and paint. Figures come in already said. */

import { counted } from './floor.ts';

export const FINISH = {
  headline: (nails: number, size: string, tubes: number, paint: string) =>
    `${counted(nails, 'nail')} of ${size}, ${counted(tubes, 'tube')} of caulk, ${paint} of paint.`,
  title: 'What it takes',
  length: 'Trim',
  nails: 'Nails',
  nailsValue: (nails: number, per: number, places: number, size: string) =>
    `${nails} of ${size}: ${per} at each of ${places} places, every stud and both ends of each stretch`,
  nail: 'Nail length',
  nailValue: (size: string, trim: string, board: string, grip: string) =>
    `${size} ≥ ${trim} trim + ${board} wallboard + ${grip} into the stud`,
  gauge: 'Gauge',
  deep: (into: string) => `${into} into the stud`,
  caulk: 'Caulk, top edge only',
  caulkValue: (tubes: number, bead: string, each: string) =>
    `${counted(tubes, 'tube')}: a ${bead} bead, a tube gives ${each}`,
  filler: 'Filler',
  fillerValue: (amount: string, holes: number) => `${amount} for ${counted(holes, 'hole')}`,
  primer: 'Primer',
  paint: 'Paint',
  coatsValue: (amount: string, coats: number, area: string) => `${amount}: ${counted(coats, 'coat')} on ${area}`,
  none: 'none',
  formulas: 'How it is reckoned',
  formulaItems: [
    'Nails: studs behind each stretch, and its two ends, × nails a stud.',
    'Nail length: trim + wallboard + 3/4 to 1 in, up to the next 1/4 in or 5 mm.',
    'Caulk: in³ of the tube ÷ (bead² in in² × 12) = feet a tube; tubes are whole.',
    'Paint and primer: length × (height + thickness) × coats ÷ coverage; the top edge is painted too.',
    'Filler: holes × π/4 × width² × depth.',
  ],
  stepsTitle: 'In this order',
  steps: [
    'Nail into studs: two nails a stud, one high and one low enough to meet the plate; outside corners glued and pinned.',
    'Shoe goes onto the baseboard with its own short nails, never into a floating floor.',
    'Set the nails, fill the holes a little proud, let it dry, sand with 120 grit, then all of it with 180. Wipe the dust off.',
    'Prime bare wood and filler. Sand with 220 once it is dry.',
    'Caulk the top edge only. Never the foot: the floor must be able to move under it.',
    'Paint, sand lightly with 220, paint again.',
  ],
} as const;

/** A nail deeper in the stud than is safe without looking. */
export function deepNailText(size: string, into: string, limit: string): string {
  return `A ${size} nail goes ${into} into the stud. Past ${limit} it may meet a cable or a pipe: find them first, or take a shorter nail.`;
}
