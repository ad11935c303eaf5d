/** A project's changes, stored as patches that undo them; undo and redo. */

import { type Change, type Content, contentOf, contentSchema, type Project } from './project.ts';
import { LIMITS } from './project-limits.ts';
import { applied, difference, type JsonPatch } from './record-format.ts';

export type Stamp = Pick<Change, 'by' | 'via' | 'at'>;

/**
 * Applies the parts and records the change; unchanged if nothing differs. The project's state isn't recorded: archiving
 * and deleting have their own ways back, and undo must not put a project out of reach.
 */
export function changed(project: Project, parts: Partial<Content>, said: string, stamp: Stamp): Project {
  const next = { ...project, ...parts };
  const back = difference({ ...contentOf(next), state: project.state }, contentOf(project));
  if (!back) return next.state.kind === project.state.kind ? project : { ...next, count: project.count + 1 };
  return { ...next, ...recorded(project, project.history, { ...stamp, said, back }), undone: [] };
}

/** Undoes the last change; undefined if there is none. */
export function undone(project: Project, stamp: Stamp): { project: Project; change: Change } | undefined {
  const change = project.history.at(-1);
  if (!change) return undefined;
  const turned = turn(project, change.back);
  const { history, count } = recorded(project, project.undone, { ...stamp, said: change.said, back: turned.back });
  return { project: { ...turned.project, count, history: project.history.slice(0, -1), undone: history }, change };
}

/** Redoes the last undone change; undefined if there is none. */
export function redone(project: Project, stamp: Stamp): { project: Project; change: Change } | undefined {
  const change = project.undone.at(-1);
  if (!change) return undefined;
  const turned = turn(project, change.back);
  const { history, count } = recorded(project, project.history, { ...stamp, said: change.said, back: turned.back });
  return { project: { ...turned.project, count, history, undone: project.undone.slice(0, -1) }, change };
}

export interface News {
  readonly said: string;
  readonly at: number;
  readonly takenBack: boolean;
}

/** Changes after number `seen` that came from other accounts, in order. */
export function newsSince({ history, undone: back }: Project, seen: number, via: string): readonly News[] {
  return [
    ...history.map((change) => ({ ...change, takenBack: false })),
    ...back.map((change) => ({ ...change, takenBack: true })),
  ]
    .filter((change) => change.no > seen && change.via !== via)
    .sort((one, other) => one.no - other.no)
    .map(({ said, at, takenBack }) => ({ said, at, takenBack }));
}

function turn(project: Project, patch: JsonPatch): { project: Project; back: JsonPatch } {
  const before = contentOf(project);
  const after = contentSchema.parse(applied(before, patch));
  const { version, id, owner, shares, given, hazards, count, history, undone: back } = project;
  return {
    project: { version, id, owner, shares, given, hazards, ...after, count, history, undone: back },
    back: difference(after, before) ?? { keys: {} },
  };
}

/** Appends a change, dropping old ones beyond the limits on number and size. */
function recorded(project: Project, list: readonly Change[], change: Omit<Change, 'no'>) {
  const count = project.count + 1;
  const said = change.said.slice(0, LIMITS.note).replace(/[\uD800-\uDBFF]$/, '');
  const history = [...list, { ...change, said, no: count }].slice(-LIMITS.changes);
  while (history.length > 1 && JSON.stringify(history).length > LIMITS.changesSize) history.shift();
  return { count, history };
}
