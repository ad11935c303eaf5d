/** Imports that the table does not allow, each said as a line that names the file and the place. */

import { type Import, importsOf, targetOf } from './imports.ts';
import { type Allowed, ROOMS, roomOf } from './rooms.ts';
import type { Sources } from './sources.ts';

/** Every import against the table. `declared`: the packages that package.json names for the product. */
export function wrongImports(sources: Sources, declared: readonly string[]): readonly string[] {
  return [...sources].flatMap(([path, text]) => {
    const wrong = (why: string, { line }: Import): string => `${path}:${line} ${why}`;
    return importsOf(text).flatMap((found) => {
      if (found.from === undefined) return roomOf(path) === 'tests' ? [] : [wrong('imports what is computed', found)];
      const why = whyWrong(found.from, path, sources, declared);
      return why === undefined ? [] : [wrong(why, found)];
    });
  });
}

/** Files that stand in no room of the table. */
export function roomless(sources: Sources): readonly string[] {
  return [...sources.keys()].filter((path) => {
    const room = roomOf(path);
    return room !== 'tests' && (room === undefined || !(room in ROOMS));
  });
}

function whyWrong(from: string, path: string, sources: Sources, declared: readonly string[]): string | undefined {
  const target = targetOf(from, path);
  const room = roomOf(path) ?? path;
  const allowed = ROOMS[room];
  if ('file' in target && target.file === 'src/main.ts') return 'imports main, which nobody may';
  if (room === 'tests') return undefined;
  if ('package' in target) {
    const listed = allowed && packageListed(target.package, allowed, declared);
    return listed ? undefined : `imports the package ${target.package}, which ${room} may not`;
  }
  if (!sources.has(target.file)) return `imports ${from}, which is no .ts file of ours`;
  const listed = allowed && fileListed(target.file, room, allowed);
  return listed ? undefined : `imports ${target.file}, which ${room} may not`;
}

function packageListed(name: string, allowed: Allowed, declared: readonly string[]): boolean {
  if (name.startsWith('node:')) return allowed.packages.some((known) => known === 'node:*' || known === name);
  return allowed.packages.includes(name) && declared.includes(name);
}

function fileListed(file: string, room: string, allowed: Allowed): boolean {
  const target = roomOf(file);
  return target === room || allowed.rooms.some((known) => known === target || file.startsWith(known));
}
