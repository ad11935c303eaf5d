/** Projects by their names. */

import { closest, distance } from 'fastest-levenshtein';
import { text } from '../../../src/input/options.ts';
import { readLabel } from '../../../src/input/parse-label.ts';
import { read } from '../../../src/input/reading.ts';
import type { Project } from '../../../src/project/project.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import { folded, sameName } from '../../../src/project/project-room.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import {
  nameDeleted,
  nameTaken,
  projectUnknown,
  tooManyDeleted,
  tooManyProjects,
} from '../../../src/text/project-problems-text.ts';

/** The name of a project to be. */
export const newNameOption = (summary: string, standard?: string) =>
  text(
    { summary, example: 'Upstairs flat', colons: 'any', ...(standard === undefined ? {} : { standard }) },
    (typed, reading) => readLabel(typed, reading, LIMITS.name),
  );

/** The name of one of the asker's projects; without it the one in use. */
export const projectOption = (summary: string) =>
  text({ summary, example: 'Upstairs flat', standard: 'the one in use', names: 'project', colons: 'any' }, (typed) =>
    read(typed.trim()),
  );

export const ONE_IN_USE = 'the one in use';

/** The project of a name among some, or the problem with the name. */
export function projectNamed(name: string, among: readonly Project[], command: string): Project | { problem: Problem } {
  const bare = name.replace(/^["'“”]+|(?<!["'“”])["'“”]+$/g, '');
  const exact = among.find((project) => sameName(project.name, bare));
  if (exact) return exact;
  const near =
    among.length > 0
      ? closest(
          folded(bare),
          among.map((project) => folded(project.name)),
        )
      : '';
  const likely = among.find((project) => folded(project.name) === near && distance(near, folded(bare)) <= 3);
  return { problem: projectUnknown(bare, likely?.name, command) };
}

/** Why a new project of this name cannot begin; undefined where it can. */
export function nameProblem(name: string, mine: readonly Project[]): Problem | undefined {
  const same = mine.find((project) => sameName(project.name, name));
  if (same) return same.state.kind === 'deleted' ? nameDeleted(same.name) : nameTaken(same.name);
  return countProblem(name, mine);
}

/** Why there cannot be one project more; undefined where there can. Those deleted are in nobody's way until they are very many. */
export function countProblem(name: string, mine: readonly Project[]): Problem | undefined {
  const live = mine.filter(({ state }) => state.kind !== 'deleted');
  const [oldest] = live;
  if (oldest && live.length >= LIMITS.projects) return tooManyProjects(name, LIMITS.projects, oldest.name);
  return mine.length >= LIMITS.projectsDeleted
    ? tooManyDeleted(name, LIMITS.projectsDeleted, LIMITS.restore)
    : undefined;
}
