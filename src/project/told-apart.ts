/** Names of projects that tell a person's own from those shared with them. */

import type { Project } from './project.ts';
import { folded } from './room.ts';

/** Projects of others that are named as another is, under a name that tells them apart. */
export function toldApart(projects: readonly Project[], me: string | undefined): readonly Project[] {
  const names = new Set(projects.filter(({ owner }) => owner === me).map(({ name }) => folded(name)));
  return projects.map((project) => {
    if (project.owner === me) return project;
    let name = project.name;
    for (let i = 1; names.has(folded(name)); i++) name = `${project.name} (shared${i > 1 ? ` ${i}` : ''})`;
    names.add(folded(name));
    return name === project.name ? project : { ...project, name };
  });
}
