/** New projects: an empty one, or a copy of another for the same home. */

import { folded } from '../input/rooms/room-text.ts';
import type { KeptHazards } from './findings.ts';
import { type Content, emptyParts, type Project } from './project.ts';
import { LIMITS } from './project-limits.ts';
import { sameName } from './project-room.ts';

interface Born {
  readonly id: string;
  readonly owner: string;
}

export function emptyContent(name: string): Content {
  return { name, state: { kind: 'active' }, rooms: [], picks: {}, kept: [], ...emptyParts() };
}

export function bornWith(content: Content, { id, owner }: Born, hazards: KeptHazards = []): Project {
  return { version: 5, id, owner, shares: [], given: 0, hazards, ...content, count: 0, history: [], undone: [] };
}

/** Copies the rooms and picks, but no answers, purchases or record of work done. */
export function copyOf({ rooms, picks }: Content, name: string): Content {
  return { ...emptyContent(name), rooms, picks };
}

export function freeName(name: string, taken: readonly { readonly name: string }[]): string {
  for (let number = 1; ; number++) {
    const next = number === 1 ? name : `${name.slice(0, LIMITS.name - 4).trim()} ${number}`;
    if (!taken.some((other) => sameName(other.name, next))) return next;
  }
}

/** Gives shared projects whose name is already used a distinct one. */
export function distinctNames(projects: readonly Project[], me: string | undefined): readonly Project[] {
  const names = new Set(projects.filter(({ owner }) => owner === me).map(({ name }) => folded(name)));
  return projects.map((project) => {
    if (project.owner === me) return project;
    let name = project.name;
    for (let i = 1; names.has(folded(name)); i++) name = `${project.name} (shared${i > 1 ? ` ${i}` : ''})`;
    names.add(folded(name));
    return name === project.name ? project : { ...project, name };
  });
}
