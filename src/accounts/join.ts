/** Two people who turn out to be one: what becomes of the one who stays, and of a project that names the other. */

import type { Person } from '../project/person.ts';
import { type Project, projectCodec } from '../project/project.ts';
import { ROLES, type Role } from '../project/project-limits.ts';
import { isOver, type Share } from '../project/shares.ts';

/** The one who stays, with the accounts, projects and settings of the other; where both tell a setting, theirs stands. */
export function withJoined(stays: Person, other: Person): Person {
  const accounts = [...new Set([...stays.accounts, ...other.accounts])];
  const ids = [...new Set([...stays.projects, ...other.projects].map(({ id }) => id))];
  const projects = ids.map((id) => {
    const roles = [...stays.projects, ...other.projects].flatMap((one) => (one.id === id ? [one.role] : []));
    return { id, role: highest(roles) };
  });
  const standards = { ...other.settings.standards, ...stays.settings.standards };
  const inUse = stays.inUse ?? other.inUse;
  return {
    ...stays,
    accounts,
    projects,
    linked: [...(stays.linked ?? []), ...(other.linked ?? [])].filter(
      (one, i, all) => all.findIndex(({ account }) => account === one.account) === i,
    ),
    settings: { ...other.settings, ...stays.settings, standards },
    ...(inUse !== undefined && { inUse }),
  };
}

/** The project at `now` with one person in the place of another, wherever it names them; the same where it names the other nowhere. */
export function inPlaceOf(project: Project, other: string, stays: string, now: number): Project {
  const written = JSON.stringify(projectCodec.write(project));
  // Ids are 22 signs drawn at random: nothing but the person's own id holds them.
  if (!written.includes(other)) return project;
  const read = projectCodec.read(JSON.parse(written.replaceAll(other, stays)));
  // The owner needs no share; of two that became one person's, the wider stays, and none that is over in place of the other.
  const shares = read.shares
    .filter((one) => !isOver(one, now))
    .filter(({ with: who }) => !('person' in who && who.person === read.owner))
    .filter((one, i, all) => !all.some((rival, j) => isSame(one, rival) && j !== i && isWider(rival, one, j < i)));
  return { ...read, shares };
}

function isSame({ with: one }: Share, { with: other }: Share): boolean {
  return 'person' in one && 'person' in other && one.person === other.person;
}

function isWider(one: Share, other: Share, first: boolean): boolean {
  const width = ({ what, role }: Share): number => (what === 'project' ? 10 : 0) - ROLES.indexOf(role);
  return width(one) > width(other) || (width(one) === width(other) && first);
}

function highest(roles: readonly Role[]): Role {
  return ROLES.find((role) => roles.includes(role)) ?? 'look';
}
