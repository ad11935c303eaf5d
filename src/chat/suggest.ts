/** Completions for an option, with how each text is read: rooms, projects, picks, earlier values, handbook titles, and the option's own words. */

import type { ProjectAccess } from '../accounts/account-access.ts';
import { openAccess } from '../accounts/project-access.ts';
import type { Asker, PastValue } from '../accounts/records.ts';
import { isCalculating, optionsOf } from '../input/command-shape.ts';
import { sayRead } from '../input/format.ts';
import { type OptionFacts, type Preferences, problemsIn } from '../input/reading.ts';
import { inScope } from '../project/project-room.ts';
import { readInTime } from '../workers/time-limits.ts';
import { isRead, pickFor } from './autofill.ts';
import type { Command } from './command.ts';
import type { Ports } from './ports.ts';

/** The limit of the strictest menu. */
export const MOST_SUGGESTIONS = 25;

const DAY = 24 * 3600 * 1000;

interface Sought {
  readonly command: Command;
  readonly option: string;
  readonly commands: readonly Command[];
  readonly preferences: Preferences;
}

/**
 * Up to 25 texts for an option, likeliest first: those that start with what is typed, then those that contain it. Never
 * throws: if nothing saved can be read, the option's own words remain.
 */
export async function suggest(
  asker: Asker,
  { command, option, commands, preferences }: Sought,
  typed: string,
  ports: Ports,
): Promise<readonly string[]> {
  const facts = optionsOf(command).find(({ name }) => name === option);
  if (!facts) return [];
  if (facts.names === 'entry') {
    const { entriesLike } = await import('../handbook/all-entries.ts');
    return entriesLike(typed)
      .slice(0, MOST_SUGGESTIONS)
      .map(({ title }) => title);
  }
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

/** A text that may be sent, and what it is read as. */
export interface Completion {
  readonly text: string;
  /** How it is shown where it isn't shown as it is. */
  readonly said?: string;
}

/**
 * What is typed, first, with how it is read (“12 by 14 ft → 168 sq ft”), then the suggestions. What can't be read yet comes
 * last, with what it lacks, and only where nothing else fits. Never throws.
 */
export async function suggestRead(
  asker: Asker,
  sought: Sought,
  typed: string,
  ports: Ports,
): Promise<readonly Completion[]> {
  const text = typed.trim();
  const { names } = optionsOf(sought.command).find(({ name }) => name === sought.option) ?? {};
  const found = await suggest(asker, sought, typed, ports);
  const plain = found.map((one): Completion => ({ text: one }));
  if (text === '' || names === 'entry') return plain;
  const echo = echoed(text, sought);
  if (!echo) return plain;
  const others = plain.filter((one) => one.text !== echo.text);
  if (echo.read) return [echo, ...others].slice(0, MOST_SUGGESTIONS);
  return others.length > 0 ? others : [echo];
}

function echoed(text: string, { command, option, preferences }: Sought): (Completion & { read: boolean }) | undefined {
  const facts = optionsOf(command).find(({ name }) => name === option);
  const schema = command.options.shape[option];
  if (!facts || !schema) return undefined;
  return readInTime(
    () => {
      for (const one of [text, ...completed(text, facts.kind)]) {
        const notes: string[] = [];
        const note = (line: string): void => void notes.push(line);
        const value = schema.safeParse({ text: one, reading: { option, preferences, note } });
        if (!value.success) continue;
        const said = sayRead(value.data, facts.kind, preferences) ?? notes[0] ?? (one === text ? undefined : one);
        return { text: one, ...(said === undefined || said === text ? {} : { said: `${text} → ${said}` }), read: true };
      }
      const { error } = schema.safeParse({ text, reading: { option, preferences, note: () => undefined } });
      const [problem] = error ? problemsIn(error) : [];
      return problem && { text, said: `${text}: ${problem.expected}`, read: false };
    },
    () => undefined,
  );
}

/** What people leave away: the unit of a figure, what a box holds by its count or its area. */
function completed(text: string, kind: OptionFacts['kind']): readonly string[] {
  if (kind === 'plank') {
    const [box = ''] = /(?<=[\s,;])\d{1,4}(?:[.,]\d{1,3})?$/.exec(text) ?? [];
    const size = text.slice(0, text.length - box.length).replace(/(?<![\s,;])[\s,;]+$/, '');
    if (box === '' || !/\d/.test(size)) return [];
    return /[.,]/.test(box) ? [`${size}, ${box} sq ft per box`] : [`${size}, ${box} per box`];
  }
  if (kind === 'pattern') return PATTERN_WORDS.filter((word) => word.startsWith(text.toLowerCase()));
  if (kind === 'percent' || /^\d+(?:[.,]\d+)?$/.test(text)) return [`${text} %`, `${text} in`, `${text} ft`];
  return kind === 'length' ? [`${text} in`] : [];
}

const PATTERN_WORDS = ['stair-step', 'half', 'brick', 'thirds', 'offcut-first', 'scattered', 'random'];

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

/** Names of the user's projects that the command can be about. */
async function projectNames(access: ProjectAccess, command: Command): Promise<readonly string[]> {
  const deleted = command.name === 'restore';
  const names = ['use', 'show'].includes(command.name) ? await access.mine() : await access.own();
  return names.filter(({ state }) => (state.kind === 'deleted') === deleted).map(({ name }) => name);
}

/** By how often and how recently they were used: a day old counts half. */
function ranked(values: readonly PastValue[], now: number): readonly string[] {
  const worth = ({ times, at }: PastValue): number => times / (1 + Math.max(0, now - at) / DAY);
  return values.toSorted((one, other) => worth(other) - worth(one)).map(({ text }) => text);
}
