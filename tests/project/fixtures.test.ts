/** Records of every version, as they were written: read today, or refused untouched. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { accountCodec, personCodec } from '../../src/project/person.ts';
import { projectCodec } from '../../src/project/project.ts';
import { type Codec, RecordDamaged, RecordTooNew } from '../../src/storage/types.ts';

const FOLDER = new URL('fixtures/', import.meta.url);
const CODECS: Readonly<Record<string, Codec<unknown>>> = {
  account: accountCodec,
  person: personCodec,
  project: projectCodec,
};
/** Every version there ever was, of each kind. */
const VERSIONS: Readonly<Record<string, readonly number[]>> = {
  account: [0, 1],
  person: [0, 1, 2, 3],
  project: [0, 1, 2, 3, 4, 5],
};

/** What may be missing. */
const OPTIONAL = ['inUse', 'linked', 'measures', 'hazards'];

function fixture(name: string): Record<string, unknown> {
  return JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8'));
}

describe('records', () => {
  it('of every version have a fixture', () => {
    const names = Object.entries(VERSIONS).flatMap(([kind, versions]) => versions.map((v) => `${kind}-${v}.json`));
    expect(readdirSync(FOLDER).sort()).toEqual(names.sort());
  });

  it.each(Object.entries(CODECS))('%s: an old one is read as the newest says it', (kind, codec) => {
    const versions = VERSIONS[kind] ?? [];
    const newest = fixture(`${kind}-${versions.at(-1)}.json`);
    expect(codec.read(newest)).toEqual(newest);
    for (const version of versions) {
      const record = fixture(`${kind}-${version}.json`);
      expect(record.version).toBe(version);
      expect(codec.read(record)).toEqual(newest);
    }
  });

  it.each(Object.entries(CODECS))('%s: a newer one is refused, a damaged one is told', (kind, codec) => {
    const version = VERSIONS[kind]?.at(-1) ?? 0;
    const newest = fixture(`${kind}-${version}.json`);
    expect(() => codec.read({ ...newest, version: version + 1 })).toThrow(RecordTooNew);
    const damaged = [
      null,
      [],
      'text',
      {},
      { ...newest, version: -1 },
      { ...newest, version: '1' },
      { version: 0 },
      { version: 1 },
    ];
    for (const record of damaged) expect(() => codec.read(record)).toThrow(RecordDamaged);
    for (const key of Object.keys(newest).filter((one) => !OPTIONAL.includes(one)))
      expect(() => codec.read({ ...newest, [key]: undefined })).toThrow(RecordDamaged);
  });

  it.each(Object.entries(CODECS))(
    '%s: what is written can be read, and what could not be is never written',
    (kind, codec) => {
      const newest = fixture(`${kind}-${VERSIONS[kind]?.at(-1)}.json`);
      expect(codec.write(newest)).toEqual(newest);
      expect(() => codec.write({ ...newest, version: 7 })).toThrow();
    },
  );
});
