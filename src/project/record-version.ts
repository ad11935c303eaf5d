/** Reading stored records: migrate to the current version, then validate. */

import type { z } from 'zod';
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
