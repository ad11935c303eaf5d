/** The table of import directions as DEVELOPERS.md shows it: the rooms that exist, in the order of the plan. */

import { ROOMS } from './rooms.ts';

/** Markdown lines, one a room. */
export function roomTable(): readonly string[] {
  const known = (name: string): boolean => name in ROOMS || name.includes('/');
  return Object.entries(ROOMS).map(([room, { rooms, packages }]) => {
    const list = (names: readonly string[]): string => names.join(', ') || 'none';
    return `| ${room} | ${list(rooms.filter(known))} | ${list(packages)} |`;
  });
}
