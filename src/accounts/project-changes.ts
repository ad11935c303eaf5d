/** Changes to a project; permissions are checked on the stored record, within the change itself. */

import { underNewNames } from '../project/findings.ts';
import type { Stamp } from '../project/history.ts';
import type { Project } from '../project/project.ts';
import type { Permission } from '../project/project-limits.ts';
import { mayTouch } from '../project/share-scope.ts';
import { mayDo, type Share, shareMark, standingOf, type Who } from '../project/shares.ts';
import type { RecordStore } from '../storage/types.ts';

/** `gone`: this user has no such project; `not-allowed`: they may see it, but not do this. */
export type Done<R> =
  | { readonly ok: true; readonly result: R; readonly project: Project }
  | { readonly ok: false; readonly why: 'gone' | 'not-allowed' };

export interface Next<R> {
  readonly project: Project;
  readonly result: R;
}

interface Changer {
  readonly who: Who;
  readonly via: string;
  readonly at: number;
}

/**
 * Changes a project for its owner or a helper; a helper's change is written only if it stays within their share. Throws
 * Outage.
 */
export async function putChange<R>(
  shelf: RecordStore<Project>,
  id: string,
  permission: Permission,
  { who, via, at }: Changer,
  change: (project: Project, stamp: Stamp, share: Share | undefined) => Next<R>,
): Promise<Done<R>> {
  const done = await shelf.change<Done<R>>(id, (project) => {
    const standing = standingOf(project, who, at);
    if (!standing) return { result: { ok: false, why: 'gone' } };
    if (!mayDo(standing, permission)) return { result: { ok: false, why: 'not-allowed' } };
    const { share } = standing;
    const by = share ? shareMark(who, share) : project.owner;
    const next = change(project, { by, via: 'link' in who ? by : via, at }, share);
    if (next.project === project) return { result: { ok: true, ...next } };
    if (share && !mayTouch(project, next.project, share)) return { result: { ok: false, why: 'not-allowed' } };
    const after = withHazardsNamed(project, withSharesKept(project, next.project));
    const put = share ? withLast(after, share, at) : after;
    return { put, result: { ok: true, result: next.result, project: put } };
  });
  return done ?? { ok: false, why: 'gone' };
}

/** Records a helper's last activity on their share. */
function withLast(project: Project, { id }: Share, at: number): Project {
  const said = project.history.at(-1)?.said ?? '';
  return { ...project, shares: project.shares.map((one) => (one.id === id ? { ...one, last: { at, said } } : one)) };
}

function withHazardsNamed(before: Project, after: Project): Project {
  return { ...after, hazards: underNewNames(after.hazards, before.rooms, after.rooms) };
}

/** Updates shares after a change: none for a deleted project, and new room names. */
function withSharesKept(before: Project, after: Project): Project {
  if (after.state.kind === 'deleted') return { ...after, shares: [] };
  if (before.rooms.length !== after.rooms.length) return after;
  const renamed = new Map(before.rooms.map(({ name }, i) => [name, after.rooms[i]?.name ?? name]));
  const shares = after.shares.map((one) =>
    one.room === undefined ? one : { ...one, room: renamed.get(one.room) ?? one.room },
  );
  return { ...after, shares };
}
