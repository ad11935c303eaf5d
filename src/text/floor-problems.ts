/** The texts about a floor that cannot be laid as asked. */

import type { Problem } from '../reply/reply.ts';

export function gapLeavesNothing(room: string, gap: string): Problem {
  return {
    option: 'gap',
    got: gap,
    expected: `A gap of ${gap} at every wall leaves nothing of ${room}: type a smaller gap, or larger sides.`,
  };
}

export function noSuchWall(got: string, room: string, walls: number): Problem {
  return {
    option: 'direction',
    got,
    expected: `${room} has walls 1 to ${walls}, numbered round from its lower left corner; other rooms are named: “wall 2 of ${room}”.`,
  };
}

export function tooManyPlanks(planks: number, most: number): Problem {
  return {
    option: 'plank',
    got: `${planks} planks`,
    expected: `An ask is at most ${most} planks: ask room by room, or check the plank’s size and its unit.`,
  };
}

/** `near`: the name that is the likeliest meant. */
export function noSuchRoom(got: string, names: readonly string[], near: string): Problem {
  return {
    option: 'only',
    got,
    expected: `There is no room of that name; told were: ${names.join(', ')}.`,
    fix: near,
  };
}

/** A room of a direction that is none of the rooms told, or has no such wall. */
export function noSuchDirection(got: string, names: readonly string[]): Problem {
  return {
    option: 'direction',
    got,
    expected: `Each room told its own way is one of ${names.join(', ')}, and a wall one of its walls: “${names[0] ?? 'hall'} long”.`,
    fix: 'long',
  };
}

/** Rooms of one floor told to run different ways. */
export function directionDivided(got: string, rooms: readonly string[]): Problem {
  return {
    option: 'direction',
    got,
    expected: `The floor runs on between ${rooms.join(' and ')}, so its rows run one way there: tell one of them, or let the floor stop in a doorway between.`,
    fix: 'long',
  };
}
