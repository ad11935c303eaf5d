/** How far an ask goes where its asker was given a part of a project: what answers, from what, and what is said instead. The one place. */

import type { Desk } from '../accounts/account-access.ts';
import { fullName } from '../input/command-shape.ts';
import { covers, gathers, isPart, shownBy } from '../project/share-scope.ts';
import type { Problem } from '../reply/reply.ts';
import { linkLeadsNowhere, notShared, ownersOnly } from '../text/sharing-text.ts';
import type { Command } from './command.ts';
import type { Held } from './holdings.ts';

/** About the asker and their own projects, whatever is in use. */
const OWN = ['list', 'new', 'use', 'show', 'settings', 'link', 'mydata', 'share', 'archive', 'delete', 'restore'];

/** Notes of the helper's own, and what they changed themselves, with whatever was shared. */
const BESIDE = ['project log', 'project undo'];

/** All that a page asks for whoever holds a link. */
const GUESTS = ['project sheets', 'project shopping', 'project progress', 'project measure', ...BESIDE];

/** What an ask is answered from; or the problem where it goes beyond what was shared. Throws Outage. */
export async function scopeOf(
  command: Command,
  line: string,
  held: Held,
  desk: Desk | undefined,
): Promise<{ readonly held: Held } | { readonly problem: Problem }> {
  const { share, shared, project } = held;
  if (!desk || !share || !shared || !project) return { held };
  const name = fullName(command);
  const covered = covers(share, name);
  const beyond = (): Problem =>
    isPart(share) ? notShared(line, project.name, share, shownBy(share)) : ownersOnly(line, shownBy(share));
  if (desk.guest && !(GUESTS.includes(name) && (covered || BESIDE.includes(name)))) return { problem: beyond() };
  if (covered) {
    desk.cover(gathers(name));
    // What the command asks for in its turn is answered from the same.
    return { held: { ...held, ...shared, project: await desk.inUse(), share: undefined } };
  }
  const own = command.group !== 'project' || OWN.includes(command.name) || BESIDE.includes(name);
  return own ? { held } : { problem: beyond() };
}

/** The one thing that is said to whoever holds a link that leads nowhere, whatever it was; undefined for everybody else. */
export function nowhere(desk: Desk | undefined, { share }: Held): Problem | undefined {
  return desk?.guest && !share ? linkLeadsNowhere() : undefined;
}
