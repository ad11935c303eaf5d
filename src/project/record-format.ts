/** Records as stored: versions with their migrations, and minimal differences so that changes can be undone. */

import { z } from 'zod';
import { type Codec, RecordDamaged, RecordTooNew } from '../storage/types.ts';

/** Migrates a record to the next version. Throws on what it can't read. */
export type Migration = (record: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/**
 * The codec for one kind of record. Its current version is the number of `migrations`; the first one turns version 0
 * into version 1. A record of a later version is left untouched (RecordTooNew); one that doesn't match the schema is
 * damaged.
 */
export function codecOf<T>(kind: string, schema: z.ZodType<T>, migrations: readonly Migration[]): Codec<T> {
  return {
    read(raw) {
      if (!isRecord(raw)) throw new RecordDamaged(`a ${kind} that is no record`);
      const { version } = raw;
      if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 0)
        throw new RecordDamaged(`a ${kind} without a version`);
      if (version > migrations.length) throw new RecordTooNew(`a ${kind} of version ${version}`);
      return checked(kind, schema, migrated(kind, raw, migrations.slice(version)));
    },
    // Better an error now than an unreadable record later.
    write: (value) => schema.parse(value),
  };
}

function migrated(kind: string, raw: Readonly<Record<string, unknown>>, steps: readonly Migration[]) {
  try {
    return steps.reduce((record, step) => step(record), raw);
  } catch (cause) {
    throw new RecordDamaged(`a ${kind} of an old version that cannot be read`, { cause });
  }
}

function checked<T>(kind: string, schema: z.ZodType<T>, record: unknown): T {
  const result = schema.safeParse(record);
  if (!result.success) throw new RecordDamaged(`a ${kind} that is not as it was written`, { cause: result.error });
  return result.data;
}

function isRecord(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}

/**
 * `set` replaces a value, `keys` changes some keys of an object (null removes one), `items` some items of a list, `cut`
 * and `put` a range of it.
 */
export type JsonPatch =
  | { readonly set: unknown }
  | { readonly keys: Readonly<Record<string, JsonPatch | null>> }
  | { readonly items: Readonly<Record<string, JsonPatch>> }
  | { readonly at: number; readonly cut: number; readonly put: readonly unknown[] };

const place = z.int().nonnegative();

export const patchSchema: z.ZodType<JsonPatch> = z.lazy(() =>
  z.union([
    z.strictObject({ keys: z.record(z.string(), patchSchema.nullable()) }),
    z.strictObject({ items: z.record(z.string(), patchSchema) }),
    z.strictObject({ at: place, cut: place, put: z.array(z.unknown()) }),
    z.strictObject({ set: z.unknown() }),
  ]),
);

type Plain = Readonly<Record<string, unknown>>;

/**
 * The patch from `before` to `after`; undefined if they are equal. Both are JSON: an undefined key counts as absent.
 */
export function difference(before: unknown, after: unknown): JsonPatch | undefined {
  if (Object.is(before, after)) return undefined;
  if (Array.isArray(before) && Array.isArray(after)) return ofLists(before, after);
  if (isPlain(before) && isPlain(after)) return ofObjects(before, after);
  return { set: after };
}

/** Applies a patch: `applied(before, difference(before, after))` is `after`. */
export function applied(value: unknown, patch: JsonPatch): unknown {
  if ('set' in patch) return patch.set;
  if ('keys' in patch) {
    const old = isPlain(value) ? value : {};
    const changed = Object.entries(patch.keys).filter(([, change]) => change !== null);
    const kept = Object.entries(old).filter(([key]) => !Object.hasOwn(patch.keys, key));
    return Object.fromEntries([
      ...kept,
      ...changed.map(([key, change]) => [
        key,
        change && applied(Object.hasOwn(old, key) ? old[key] : undefined, change),
      ]),
    ]);
  }
  const list: readonly unknown[] = Array.isArray(value) ? value : [];
  if ('items' in patch) return list.map((item, i) => (patch.items[i] ? applied(item, patch.items[i]) : item));
  return [...list.slice(0, patch.at), ...patch.put, ...list.slice(patch.at + patch.cut)];
}

function ofObjects(before: Plain, after: Plain): JsonPatch | undefined {
  const keys: [string, JsonPatch | null][] = [];
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const [old, now] = [own(before, key), own(after, key)];
    if (now === undefined && old !== undefined) keys.push([key, null]);
    else if (now !== undefined && old === undefined) keys.push([key, { set: now }]);
    else {
      const change = difference(old, now);
      if (change) keys.push([key, change]);
    }
  }
  return keys.length > 0 ? { keys: Object.fromEntries(keys) } : undefined;
}

function ofLists(before: readonly unknown[], after: readonly unknown[]): JsonPatch | undefined {
  if (before.length === after.length) {
    const items = before.flatMap((item, i): [string, JsonPatch][] => {
      const change = difference(item, after[i]);
      return change ? [[String(i), change]] : [];
    });
    return items.length > 0 ? { items: Object.fromEntries(items) } : undefined;
  }
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && alike(before[at], after[at])) at++;
  let behind = 0;
  while (behind < shorter - at && alike(before.at(-1 - behind), after.at(-1 - behind))) behind++;
  return { at, cut: before.length - at - behind, put: after.slice(at, after.length - behind) };
}

function alike(one: unknown, other: unknown): boolean {
  return difference(one, other) === undefined;
}

function own(object: Plain, key: string): unknown {
  return Object.hasOwn(object, key) ? object[key] : undefined;
}

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
