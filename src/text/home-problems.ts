/** The texts about doorways and things in a room that cannot be read, or do not go together with the rooms. */

import type { Problem } from '../reply/reply.ts';
import { type Got, problem } from './got.ts';

export function doorwayRunsOn(one: string, other: string): string {
  return `doorway ${one} to ${other}: the floor runs on through it; add “stops” for a transition strip`;
}

export function wallTaken(thickness: string): string {
  return `walls with a doorway taken as ${thickness} thick (a stud with board on both sides, common practice); add “5 in thick” to a doorway that differs`;
}

export function homeDoorwayUnread(read: Got, most: number, fix: string): Problem {
  return problem(
    read,
    `A doorway is its two rooms, its width, and where it is: “hall to bedroom 32 in, 18 in from the left corner of wall 2”; then “runs on” or “stops”, and the wall if you like: “5 in thick”. At most ${most}, with ; between. Or “none”.`,
    fix,
  );
}

export function standingUnread(read: Got, most: number, fix: string): Problem {
  return problem(
    read,
    `What planks go round is its name, its two sides and its place: “island 3 x 6 ft at 4' from left, 5' from bottom of living”, or “30 in from wall 2”, or “at wall 3”, or “centred”. At most ${most}, with ; between. Or “none”.`,
    fix,
  );
}

/** A doorway whose room, wall or place is none of the rooms told. */
export const DOORWAY_WRONG = {
  'no room': (names: readonly string[]) => `A doorway lies between two of the rooms told: ${names.join(', ')}.`,
  'one room': () => 'A doorway lies between two different rooms.',
  'no wall': (room: string, walls: number) =>
    `${room} has walls 1 to ${walls}, numbered round against the clock from the first side told.`,
  untold: () =>
    'For the floor to run on, tell in which wall the doorway is: “wall 2 of hall, 18 in from the left”. Or let it stop there.',
  slanted: (room: string, wall: number | undefined) =>
    `Doorways are worked out in walls along the sides of a room; ${wall === undefined ? 'that wall' : `wall ${wall}`} of ${room} is slanted.`,
  'too wide': (width: string, room: string, wall: number | undefined, length: string) =>
    `${width} and its distance do not fit ${wall === undefined ? 'the wall' : `wall ${wall}`} of ${room}${length === '' ? '' : `, ${length} long`}.`,
  turned: (room: string) =>
    `As the other doorways place the rooms, this one would meet another wall of ${room}: check its wall, or let it stop there.`,
  apart: (by: string | undefined) =>
    `As the other doorways place the rooms, the two sides of this one ${by === undefined ? 'do not meet' : `miss each other by ${by}`}: check where it is, or let it stop there.`,
  overlap: (one: string, other: string) =>
    `Placed by this doorway, ${one} and ${other} would lie on one another: tell where it is in both rooms (“12 in from the left of wall 4 of ${other}”), or let it stop there.`,
} as const;

/** A thing that has no place in the rooms told. */
export const STANDING_WRONG = {
  'no room': (names: readonly string[]) => `There is no room of that name; told were: ${names.join(', ')}.`,
  'which room': (names: readonly string[]) =>
    `Tell in which room it is, “of ${names[0] ?? 'hall'}”: ${names.join(', ')}.`,
  'no wall': (room: string, walls: number) =>
    `${room} has walls 1 to ${walls}; a thing is placed from a wall along a side of the room.`,
  'placed twice': () => 'One distance tells how far right it is, another how far up: two told the same.',
  unplaced: () => "Tell how far it is from two sides: “4' from left, 5' from bottom”, or “centred” for the other one.",
  outside: (room: string) => `It does not lie within ${room}: check its sides and its distances.`,
  overlap: (other: string) => `It lies on ${other}: check where both are.`,
  parts: () => 'It would take the room apart into two: tell the parts as rooms of their own.',
} as const;

export function wrong(option: string, got: string, expected: string, fix: string | undefined): Problem {
  return problem({ option, got }, expected, fix);
}
