/** What could be typed for an option by this asker: rooms, projects, picks, values told before, and the option's own words. */

import type { ProjectAccess } from '../accounts/account-access.ts';
import type { Asker } from '../accounts/asker.ts';
import { openAccess } from '../accounts/project-access.ts';
import type { PastValue } from '../accounts/recent.ts';
import { isCalculating, optionsOf } from '../input/command-shape.ts';
import type { OptionFacts, Preferences } from '../input/reading.ts';
import { inScope } from '../project/project-room.ts';
import { isRead, pickFor } from './autofill.ts';
import type { Command } from './command.ts';
import type { Ports } from './ports.ts';

/** As many as the strictest menu shows. */
export const MOST_SUGGESTIONS = 25;

const DAY = 24 * 3600 * 1000;

/** What is suggested for an option, in the light of everything that the asker keeps. */
interface Sought {
  readonly command: Command;
  readonly option: string;
  readonly commands: readonly Command[];
  readonly preferences: Preferences;
}

/**
 * Texts for an option of a command, the likeliest first and at most 25: those that begin with what is typed, then those
 * that hold it. Never throws: where nothing that is kept can be read, the option's own words are left.
 */
export async function suggest(
  asker: Asker,
  { command, option, commands, preferences }: Sought,
  typed: string,
  ports: Ports,
): Promise<readonly string[]> {
  const facts = optionsOf(command).find(({ name }) => name === option);
  if (!facts) return [];
  const sought = { command, option, commands, preferences };
  const kept = await keptTexts(openAccess(asker, ports), sought, facts.names).catch(() => []);
  const standard = preferences.units === 'metric' ? (facts.metric ?? facts.standard) : facts.standard;
  const own = facts.choices ?? [standard, facts.example].filter((text) => text !== undefined);
  const all = [...new Set([...kept, ...own])].filter((text) => text !== '');
  const wanted = typed.trim().toLowerCase();
  const starts = all.filter((text) => text.toLowerCase().startsWith(wanted));
  const holds = all.filter((text) => !starts.includes(text) && text.toLowerCase().includes(wanted));
  return [...starts, ...holds].slice(0, MOST_SUGGESTIONS);
}

async function keptTexts(
  access: ProjectAccess | undefined,
  { command, option, commands, preferences }: Sought,
  names: OptionFacts['names'],
): Promise<readonly string[]> {
  if (!access) return [];
  if (names === 'project') return projectNames(access, command);
  const [project, { past }] = [await access.inUse(), await access.recent()];
  const rooms = project?.rooms.map(({ name }) => name) ?? [];
  if (names === 'room') return rooms;
  if (names === 'pick') return Object.entries(project?.picks ?? {}).map(([key, text]) => `${key}: ${text}`);
  const scope = inScope(project?.rooms ?? []).map(({ name }) => name);
  const named =
    option === 'room' || option === 'only' ? [...scope, ...(scope.length > 1 && option === 'room' ? ['all'] : [])] : [];
  const pick = project && isCalculating(command) ? pickFor(project.picks, command, option, commands) : undefined;
  const given = Object.hasOwn(past, option) ? (past[option] ?? []) : [];
  const used = ranked(given, access.now()).filter(
    (text) => isRead(command, option, text, preferences) || scope.includes(text),
  );
  return [...named, ...(pick === undefined ? [] : [pick]), ...used];
}

/** Names of the asker's projects that the command can be about. */
async function projectNames(access: ProjectAccess, command: Command): Promise<readonly string[]> {
  const deleted = command.name === 'restore';
  const names = ['use', 'show'].includes(command.name) ? await access.mine() : await access.own();
  return names.filter(({ state }) => (state.kind === 'deleted') === deleted).map(({ name }) => name);
}

/** Values by how often and how lately they were told: one day ago counts half of today. */
function ranked(values: readonly PastValue[], now: number): readonly string[] {
  const worth = ({ times, at }: PastValue): number => times / (1 + Math.max(0, now - at) / DAY);
  return values.toSorted((one, other) => worth(other) - worth(one)).map(({ text }) => text);
}
