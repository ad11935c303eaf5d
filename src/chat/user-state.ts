/** What an asker keeps, read once for an ask: a project in use, settings, and what others changed meanwhile. */

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
  /** What of the project in use the asker was given; undefined where it is their own. */
  readonly share?: Share | undefined;
  /** The project as sentences name its rooms: a helper who measures sees those they may measure. */
  readonly named?: Project | undefined;
  /** What a command that was shared is answered from: the project as far as it was shared, worked out as for its owner. */
  readonly shared?: Holdings;
  /** The asker as a person, who may have several accounts. */
  readonly person?: string;
  /** The platform's habits, and the asker's own over them. */
  readonly preferences: Preferences;
  /** Said with every answer. */
  readonly notes: readonly string[];
  readonly news: readonly News[];
}

/** Reads what an asker keeps. Where it cannot be read, the ask is answered from what is typed, and says so; whoever holds a link types nothing of their own, and for them it throws. */
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
    // The store tells of its own outages.
    if (!(cause instanceof Outage)) ports.fault(faultReference(), cause);
    return { preferences, notes: [unreadableNote()], news: [] };
  }
}

/** The asker's habits with the owner's standards: the home and its country are the owner's. */
function sharedSettings(own: Settings | undefined, owners: Settings | undefined): Settings {
  const { country: _country, ...preferences } = own ?? NO_SETTINGS;
  return {
    ...preferences,
    standards: owners?.standards ?? {},
    ...(owners?.country && { country: owners.country }),
  };
}

function preferencesOf(preferences: Preferences, { units, decimal, currency }: Settings): Preferences {
  return {
    units: units ?? preferences.units,
    decimal: decimal ?? preferences.decimal,
    currency: currency ?? preferences.currency,
  };
}

// How far an ask goes where its asker was given a part of a project: what answers, from what, and what is
// said instead. The one place.

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
    // What the command asks for in its turn is answered from the same.
    return { held: { ...held, ...shared, project: await access.inUse(), share: undefined } };
  }
  const own = command.group !== 'project' || OWN.includes(command.name) || BESIDE.includes(name);
  return own ? { held } : { problem: beyond() };
}

/** The one thing that is said to whoever holds a link that leads nowhere, whatever it was; undefined for everybody else. */
export function noState(access: ProjectAccess | undefined, { share }: UserState): Problem | undefined {
  return access?.guest && !share ? linkLeadsNowhere() : undefined;
}
