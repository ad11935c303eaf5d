/** Homes drawn from a seed: rooms on both sides of a corridor, closets off the rooms, as one line to ask. */

import { mulberry32 } from './random-rooms.ts';

/** A home as an ask tells it: `room` and `doorways` as typed, and what they come to in square feet. */
export interface RandomHome {
  readonly room: string;
  readonly doorways: string;
  readonly rooms: number;
  readonly squareFeet: number;
}

/** Corridor along y; rooms left and right of it, each as deep as its stretch of the corridor; walls 4 1/2 in thick. */
const WALL = 4.5;
const CORRIDOR = 42;

/**
 * A home of `rooms` rooms (at least 3) and about `squareFeet`, its sides in half inches. `through` is the chance that the floor
 * runs on through a doorway. Doorways are told with their places in both rooms, so that everything fits.
 */
export function randomHome(seed: number, rooms: number, squareFeet: number, through = 0.5): RandomHome {
  const random = mulberry32(seed);
  const half = (low: number, high: number): number => Math.round((low + random() * (high - low)) * 2) / 2;
  const closets = Math.floor(rooms / 4);
  const main = rooms - 1 - closets;
  const sides = [Math.ceil(main / 2), Math.floor(main / 2)] as const;
  const length = half(150, 170) * sides[0] + WALL * (sides[0] - 1);
  // What corridor and closets leave of the area is shared by the rooms beside it.
  const deep = ((squareFeet * 144 - CORRIDOR * length) / (length * (sides[1] > 0 ? 2 : 1))) * 0.96;
  const given = [`hall ${CORRIDOR} in x ${length} in`];
  const doorways: string[] = [];
  let area = CORRIDOR * length;
  let number = 0;
  const beside: { name: string; wide: number; deep: number; side: number }[] = [];
  sides.forEach((count, side) => {
    let y = 0;
    for (let i = 0; i < count; i++) {
      const rest = length - y - WALL * (count - 1 - i);
      const tall = i === count - 1 ? rest : Math.round((rest / (count - i)) * (0.85 + random() * 0.3) * 2) / 2;
      const wide = Math.round(deep * (0.9 + random() * 0.2) * 2) / 2;
      const name = `room ${String.fromCharCode(97 + number++)}`;
      given.push(`${name}: ${wide} in x ${tall} in`);
      area += wide * tall;
      beside.push({ name, wide, deep: tall, side });
      const width = [30, 32, 36][Math.floor(random() * 3)] ?? 32;
      const low = half(6, tall - width - 6);
      const runs = random() < through ? 'runs on' : 'stops';
      const [own, other] = side === 0 ? [2, 4] : [4, 2];
      doorways.push(
        `hall to ${name}: ${width} in, ${fromLeft(length, y + low, width, own)} in from the left of wall ${own} of hall, ${fromLeft(tall, low, width, other)} in from the left of wall ${other} of ${name}, ${WALL} in thick, ${runs}`,
      );
      y += tall + WALL;
    }
  });
  for (let i = 0; i < closets; i++) {
    const owner = beside[i];
    if (!owner) break;
    const [wide, tall] = [half(24, 30), half(48, 72)];
    const name = `closet ${String.fromCharCode(97 + i)}`;
    given.push(`${name}: ${wide} in x ${tall} in`);
    area += wide * tall;
    const width = 30;
    // A closet lies at the outer side of its room and within its depth, where no other room is.
    const [own, other] = owner.side === 0 ? [2, 4] : [4, 2];
    const within = half(0, tall - width);
    const low = half(0, owner.deep - tall) + within;
    doorways.push(
      `${owner.name} to ${name}: ${width} in, ${fromLeft(owner.deep, low, width, own)} in from the left of wall ${own} of ${owner.name}, ${fromLeft(tall, within, width, other)} in from the left of wall ${other} of ${name}, ${WALL} in thick, ${random() < through ? 'runs on' : 'stops'}`,
    );
  }
  return { room: given.join('; '), doorways: doorways.join('; '), rooms: given.length, squareFeet: area / 144 };
}

/** Who stands in a room and faces its right wall (wall 2) has the upper end at the left; at wall 4 the lower one. */
function fromLeft(whole: number, low: number, width: number, wall: number): number {
  return wall === 2 ? whole - low - width : low;
}
