/** Version 4 of a project: each saved answer says which rooms it is about, and which of its options the project doesn't hold. */

import { doorwaysTogether } from './doorways-together.ts';
import { LIMITS } from './limits.ts';
import { folded } from './room.ts';
import { requestOptions } from './saved-request.ts';
import type { Migration } from './version.ts';

/** Options of one piece of work, as they stood in version 3; the others were picked with the answer. */
const OF_ONE_WORK = [
  'planks',
  'only',
  'readings',
  'damage',
  'area',
  'found',
  'walls',
  'first-joist',
  'notch',
  'notch-length',
  'notch-place',
  'hole',
  'hole-edge',
  'leak',
  'water',
  'mould',
  'tested',
  'below',
  'ramp',
  'so-far',
];

interface Before {
  readonly names: readonly string[];
  readonly picks: Readonly<Record<string, unknown>>;
}

/** Saved answers of version 3, those in changes that can be taken back too. Throws where the record can't be read. */
export const withSavedWork: Migration = (record) => ({ ...savedWorkIn(record), version: 4 });

/** Content of a project whose saved answers may be of version 3, as they were taken out then; those of today stay. */
export function savedWorkIn(record: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const rooms: readonly unknown[] = Array.isArray(record.rooms) ? record.rooms : [];
  const before: Before = {
    names: rooms.flatMap((room) =>
      isRecord(room) && typeof room.name === 'string' && room.inScope !== false ? [room.name] : [],
    ),
    picks: isRecord(record.picks) ? record.picks : {},
  };
  const parts = ['kept', 'history', 'undone'].filter((part) => part in record);
  return {
    ...record,
    picks: withDoorways(before.picks, record.kept),
    ...Object.fromEntries(parts.map((part) => [part, mapped(record[part], before)])),
  };
}

/** Doorways of every saved answer counted; now those that are picked do. */
function withDoorways(picks: Before['picks'], kept: unknown): Before['picks'] {
  const key = 'edges doorways';
  const saved = (Array.isArray(kept) ? kept : []).flatMap((one) =>
    isRecord(one) && one.own === undefined && typeof one.ask === 'string' && /^(?:trim )?edges /.test(one.ask)
      ? (requestOptions(one.ask).get('doorways') ?? [])
      : [],
  );
  const picked = picks[key];
  if (typeof picked !== 'string' || saved.length === 0) return picks;
  const all = saved.reduce(doorwaysTogether, picked);
  return all.length > LIMITS.pick ? picks : { ...picks, [key]: all };
}

/** Any plain data with its saved answers made anew. */
function mapped(value: unknown, before: Before): unknown {
  if (Array.isArray(value)) return value.map((one) => mapped(one, before));
  if (!isRecord(value)) return value;
  const { id, ask, headline } = value;
  if (typeof id === 'string' && typeof ask === 'string' && typeof headline === 'string' && value.own === undefined)
    return { ...value, ...workOf(ask, before) };
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, mapped(one, before)]));
}

function workOf(ask: string, { names, picks }: Before) {
  const options = requestOptions(ask);
  const command = /^(?:(?:floor|trim|prep) )?(\S+)/.exec(ask)?.[1] ?? '';
  const own = [...options].flatMap(([option, text]) => {
    if (option === 'room') return [];
    if (command === 'edges' && option === 'doorways') return [];
    const picked = picks[`${command} ${option}`] ?? picks[option];
    return OF_ONE_WORK.includes(option) || (picked !== undefined && picked !== text) ? [option] : [];
  });
  const rooms = roomsOf(options, own, names);
  return { own, ...(rooms && { rooms }) };
}

/** The rooms that a request names at the head of its shapes, or the only one that its own texts name; undefined for all, or none. */
function roomsOf(
  options: ReadonlyMap<string, string>,
  own: readonly string[],
  names: readonly string[],
): readonly string[] | undefined {
  const shapes = options.get('room');
  const longest = [...names].sort((one, other) => other.length - one.length);
  if (shapes !== undefined) {
    const found = shapes.split(/(?:(?<!\s)\s+)?;\s*/).map((shape) => {
      const plain = folded(shape).replace(/^(?:the|my|our) /, '');
      return longest.find(
        (name) => plain.startsWith(folded(name)) && !/^[\p{L}\p{N}]/u.test(plain.slice(folded(name).length)),
      );
    });
    const known = names.filter((name) => found.includes(name));
    return known.length === names.length && found.every((name) => name !== undefined) ? undefined : known;
  }
  const texts = ` ${folded(own.map((option) => options.get(option) ?? '').join(' ; ')).replace(/[^\p{L}\p{N}]+/gu, ' ')} `;
  const [only, ...more] = names.filter((name) => texts.includes(` ${folded(name).replace(/[^\p{L}\p{N}]+/gu, ' ')} `));
  return only !== undefined && more.length === 0 ? [only] : undefined;
}

/** Whether a value is plain data by names. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
