/** Doorways and things as one would type them: for fixes, which tell the sound ones again. */

import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { Doorway } from '../../../src/layout/doorways.ts';
import type { ToldStanding } from '../../../src/layout/obstacles.ts';

/** A doorway with its places. */
export function retoldDoorway({ sides, width, depth, runsOn }: Doorway, saying: Saying): string {
  const [a, b] = sides;
  const places = sides.flatMap(({ room, wall, at }) => {
    if (wall === undefined) return [];
    const from = at === undefined ? '' : `${sayLength(at.distance, saying)} from the ${at.from} of `;
    return [`${from}wall ${wall} of ${room}`];
  });
  const parts = [`${a.room} to ${b.room}: ${sayLength(width, saying)}`, ...places, `${sayLength(depth, saying)} thick`];
  return [...parts, runsOn ? 'runs on' : 'stops'].join(', ');
}

/** A thing with its places; `room` where another one is meant. */
export function retoldStanding({ name, across, up, places, room }: ToldStanding, saying: Saying): string {
  const size = `${name.replace(/ \d+$/, '')} ${sayLength(across, saying)} x ${sayLength(up, saying)}`;
  const where = places.map((place) => {
    if (place.from === 'middle') return 'centred';
    const from = typeof place.from === 'number' ? `wall ${place.from}` : place.from;
    return `${sayLength(place.distance, saying)} from ${from}`;
  });
  return `${[size, ...where].join(', ')}${room === undefined ? '' : ` of ${room}`}`;
}
