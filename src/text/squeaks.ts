/** The words of the squeaks answer. Figures come in already said. */

import { counted } from './floor.ts';

export const SQUEAKS = {
  headline: (screws: number, length: string, spacing: string, joists: number) =>
    `${counted(screws, 'screw')}, ${length} or longer, ${spacing} apart along ${counted(joists, 'joist')}.`,
  title: 'What to buy',
  screws: 'Screws',
  pattern: 'Pattern',
  length: 'Length',
  packs: 'Packs',
  ofPack: (packs: number, perPack: number, left: number) => `${packs} of ${perPack}, ${left} left over`,
  ofJoists: (joists: number, each: number) => `${counted(joists, 'joist')} × ${each}`,
  spacing: (spacing: string, stretch: string) =>
    `every ${spacing}, along the whole ${stretch} of each joist that is noisy`,
  lengthOf: (length: string, panel: string, bite: string, step: string) =>
    `${length} at least: ${panel} of panel and ${bite} into the joist, up to the next ${step}. Take the next length sold.`,
  findTitle: 'Find the joists first',
  find: (spacing: string) => [
    'Heating tubes or cables in the floor? Look at the plans, the thermostat and the ceiling below, or have it looked at with a thermal camera, before any screw. If there are some: no screws, call a licensed heating contractor.',
    'Look for the rows of nail heads in the subfloor: each row is a joist. A stud finder and a magnet show them too.',
    `From one joist measure ${spacing} to the next; check each with a fine nail beside the line: wood all the way is a joist, air is a miss.`,
    'Snap a chalk line along each joist over the noisy section.',
  ],
  fixTitle: 'Fix it',
  fix: (spacing: string) => [
    'Walk the floor and mark every squeak. Two people: one walks, one listens below.',
    'Stand on the spot so that the panel lies on its joist.',
    `Drive a screw every ${spacing} on the line, straight down, until its head is just under the surface; not deeper.`,
    'Use subfloor screws with an unthreaded part below the head: threads in the panel hold it up off the joist.',
    'Walk it again. Still noisy? A screw each side of a panel joint, into the joist below it.',
  ],
  assumedRun: 'joists taken to run along the short side; type “joists: long” if they run along the long one',
  notTitle: 'Not a job for a screw',
  not: [
    'The sound comes from a pipe, a duct or a cable that rubs: free it from below, never screw near it.',
    'A gap between joist and panel, seen from below: a thin shim with glue, pushed in by hand, not hammered; or a cleat along the joist.',
    'Bridging between joists rubs or is loose: refasten it from below.',
    'A joist that is cracked, rotten, notched or sags: a licensed contractor.',
    'The panel itself is soft or swollen: ask “patch”.',
    'Stairs: wedges and glue blocks from below, another job.',
  ],
} as const;
