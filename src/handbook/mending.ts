/** How a subfloor is mended: a patch, and a squeak. */

import type { Entry } from './entry.ts';

export const MENDING_ENTRIES: readonly Entry[] = [
  {
    id: 'patch-how',
    topic: 'subfloor',
    title: 'Patch a hole or a rotten spot',
    phrases: [
      'how do i patch a rotten spot in the subfloor',
      'how do you cut out a bad piece of plywood and put new in',
      'toilet leaked, they cut a big hole in the subfloor, how do i put wood back',
      'how do i close a hole in the subfloor between joists',
      'rotted corner of plywood by the outside wall, whats the right way to replace it',
      'steps to replace a section of subfloor',
      'do i have to cut back to the middle of a joist when i patch',
      'what do i screw the new piece of plywood to if there is no joist under the edge',
      'soft spot is the size of a dinner plate, how do i fix it before planks',
      'blocking under a subfloor patch, how',
      'plumber left a two foot square hole in the bathroom floor, how to fill it with wood',
      'fixing water damaged osb by the patio door, how big do i cut',
      'can i just screw a board over the rotten part',
      'how to replace subfloor around a toilet flange',
      'best way to repair a hole where the old floor vent was',
      'how far apart are the screws in a subfloor patch',
      'cut the bad plywood out with a circular saw, how deep do i set it',
      'termites ate part of the subfloor and it has been treated, how do i put new panel in',
    ],
    answer:
      'Cut back to sound wood, to the middle of the joists, once the water or air leak is cured. Screw blocking along every open edge, set in plywood of the same thickness with glue, and screw it every {patch-screws}. Soft joists or wall plates are a question for a pro first.',
    more: [
      'Set the saw to the thickness of the panel and no more: pipes, cables and heating may lie right under it.',
      'Push a screwdriver into each joist and the wall plate: if it sinks in, stop and have the structure looked at.',
      'At a toilet the flange needs its own support, and it ends level with the new floor.',
    ],
    asks: 'How large is the bad spot, how thick is the panel, and how far apart are the joists?',
    cautions: ['hidden-lines', 'asbestos', 'saw'],
    near: ['soft-bouncy', 'water-damage'],
  },
  {
    id: 'squeak-how',
    topic: 'subfloor',
    title: 'Stop a squeak before the floor goes down',
    phrases: [
      'how do i stop a squeaky floor before laying planks',
      'what causes floor squeaks and how do you fix them',
      'subfloor squeaks when i walk, screws or shims',
      'floor creaks by the bed, whats the fix from above with the carpet off',
      'squeak comes from between joist and plywood, what do i do',
      'can i fix squeaks from underneath in the basement',
      'glue or screws for a squeaking subfloor',
      'how long should screws be to pull osb down to the joists',
      'house from the 80s and every step upstairs squeaks, do i screw the whole floor down',
      'where do i put the screws to quiet the subfloor',
      'does laying vinyl over a squeaky floor make it quiet',
      'find the joists to fix squeaks, how',
      'floor pops when i step near the wall',
      'drywall screws ok to fix a squeak',
      'stairs squeak when the carpet is off, how do i silence them',
      'how many inches between screws for squeaks',
    ],
    answer:
      'Screw the panel to the joists, every {squeak-screws} along each joist, with screws that go {squeak-bite} into the joist. A squeak is wood rubbing where a nail let go. Find the joists first, and stop if the floor gives or sags: that is no squeak.',
    more: [
      'From below, glue and screw a block into the corner of joist and panel; a shim only fills the gap, never drive it hard.',
      'Plank over a squeak keeps the squeak: fix it while the subfloor is bare.',
      'Drywall screws snap; use subfloor or deck screws.',
    ],
    asks: 'How large is the noisy area, and how thick is the panel?',
    cautions: ['hidden-lines'],
    near: ['soft-bouncy', 'add-layer'],
  },
];
