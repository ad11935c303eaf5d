/** What is saved for a user, read once per request: the open project, settings, and changes by others. */

import type { ProjectAccess } from '../accounts/account-access.ts';
import { fullName } from '../input/command-shape.ts';
import type { Preferences } from '../input/reading.ts';
import { type News, newsSince } from '../project/history.ts';
import { NO_SETTINGS, type Settings } from '../project/person.ts';
import type { Project } from '../project/project.ts';
import { covers, gathers, isSharedPart, measures, shownBy } from '../project/share-scope.ts';
import type { Share } from '../project/shares.ts';
import type { Problem } from '../reply/reply.ts';
import { Outage } from '../storage/types.ts';
import { unreadableNote } from '../text/project-text.ts';
import { linkLeadsNowhere, notShared, ownersOnly } from '../text/sharing-text.ts';
import type { Holdings } from './autofill.ts';
import type { Command } from './command.ts';
import type { Ports, Request } from './ports.ts';
import { faultReference } from './request-id.ts';

export interface UserState extends Holdings {
  /** What the user was given of the open project; undefined if it is their own. */
  readonly share?: Share | undefined;
  /** The project whose rooms sentences may name; a helper who measures sees the rooms they may measure. */
  readonly named?: Project | undefined;
  /** What a shared command is computed from: the shared part of the project, with the owner's settings. */
  readonly shared?: Holdings;
  /** A person may have several accounts. */
  readonly person?: string;
  /** The platform's defaults, overridden by the user's settings. */
  readonly preferences: Preferences;
  /** Shown with every answer. */
  readonly notes: readonly string[];
  readonly news: readonly News[];
}

/**
 * If it can't be read, the request is answered from what was typed and says so. For someone with a link, who types
 * nothing of their own, it throws.
 */
export async function holdingsOf(
  access: ProjectAccess | undefined,
  { preferences }: Request,
  ports: Ports,
): Promise<UserState> {
  if (!access || !ports.store) return { preferences, notes: [], news: [] };
  try {
    const person = await access.person();
    if (!person && !access.guest) return { preferences, notes: [], news: [] };
    const project = await access.inUse();
    const share = await access.share();
    const named = share && measures(share) ? await access.inUse('shared') : project;
    const owners = share && (await access.ownersSettings());
    const settings = person?.settings ?? owners;
    const seen = project && (await access.recent()).seen[project.id];
    return {
      ...(person && { person: person.id }),
      project,
      named,
      settings,
      preferences: settings ? preferencesOf(preferences, settings) : preferences,
      notes: [],
      news: project && seen !== undefined ? newsSince(project, seen, access.via) : [],
      ...(share && { share, shared: { settings: sharedSettings(settings, owners) } }),
    };
  } catch (cause) {
    if (access.guest) throw cause;
    // The store reports its own outages.
    if (!(cause instanceof Outage)) ports.fault(faultReference(), cause);
    return { preferences, notes: [unreadableNote()], news: [] };
  }
}

/** The user's display settings with the owner's standards: the home and its country are the owner's. */
function sharedSettings(own: Settings | undefined, owners: Settings | undefined): Settings {
  const { country: _country, ...preferences } = own ?? NO_SETTINGS;
  return {
    ...preferences,
    standards: owners?.standards ?? {},
    ...(owners?.country && { country: owners.country }),
  };
}

/** What an answer is computed from: where everybody reads it, nothing of a project. */
export function usedFor({ open }: Pick<Request, 'open'>, own: UserState): UserState {
  const { person, settings, preferences, notes } = own;
  return !open ? own : { ...(person !== undefined && { person }), settings, preferences, notes, news: [] };
}

function preferencesOf(preferences: Preferences, { units, decimal, currency }: Settings): Preferences {
  return {
    units: units ?? preferences.units,
    decimal: decimal ?? preferences.decimal,
    currency: currency ?? preferences.currency,
  };
}

// How far a request reaches when the user was given a part of a project: which commands, from what data, and what is
// said otherwise.

/** About the user and their own projects, whichever is open. */
const OWN = ['list', 'new', 'use', 'show', 'settings', 'link', 'mydata', 'share', 'archive', 'delete', 'restore'];

/** The helper's own notes and changes, allowed with any share. */
const BESIDE = ['project log', 'project undo'];

/** Everything a share page requests for someone with a link. */
const GUESTS = ['project sheets', 'project shopping', 'project progress', 'project measure', ...BESIDE];

/** What a request is computed from; or the problem if it goes beyond what was shared. Throws Outage. */
export async function scopeOf(
  command: Command,
  line: string,
  held: UserState,
  access: ProjectAccess | undefined,
): Promise<{ readonly held: UserState } | { readonly problem: Problem }> {
  const { share, shared, project } = held;
  if (!access || !share || !shared || !project) return { held };
  const name = fullName(command);
  const covered = covers(share, name);
  const beyond = (): Problem =>
    isSharedPart(share) ? notShared(line, project.name, share, shownBy(share)) : ownersOnly(line, shownBy(share));
  if (access.guest && !(GUESTS.includes(name) && (covered || BESIDE.includes(name)))) return { problem: beyond() };
  if (covered) {
    access.cover(gathers(name));
    // Requests the command makes itself are computed from the same.
    return { held: { ...held, ...shared, project: await access.inUse(), share: undefined } };
  }
  const own = command.group !== 'project' || OWN.includes(command.name) || BESIDE.includes(name);
  return own ? { held } : { problem: beyond() };
}

/** What someone with a dead link gets, whatever the reason; undefined for everyone else. */
export function noState(access: ProjectAccess | undefined, { share }: UserState): Problem | undefined {
  return access?.guest && !share ? linkLeadsNowhere() : undefined;
}
