/** Plain values through Keyv: what cannot be read counts as not there, and is told. */

import { createHash } from 'node:crypto';
import { Keyv } from 'keyv';
import { nameWrite } from './changes.ts';
import type { Engine, Opened } from './engine.ts';
import { patiently, settled } from './patience.ts';
import type { ShelfTerms } from './shelf.ts';
import type { Kept } from './types.ts';

/** Kept values. Every method throws Outage when the engine does not answer. */
export function keptOn(open: Opened, { clock, patience, fault }: ShelfTerms): Kept {
  const keyvs = new WeakMap<Engine, Keyv>();
  async function run<T>(work: (keyv: Keyv) => Promise<T>): Promise<T> {
    const engine = await open();
    const keyv = keyvs.get(engine) ?? keyvOn(engine);
    keyvs.set(engine, keyv);
    return engine.values.run(() => work(keyv));
  }

  async function get(key: string): Promise<unknown> {
    try {
      return await run((keyv) => keyv.get(key));
    } catch (cause) {
      if (!(cause instanceof SyntaxError)) throw cause;
      fault(new Error(`The value kept as ${key} cannot be read.`, { cause }));
      await run((keyv) => keyv.delete(key));
      return undefined;
    }
  }

  return {
    get: (key) => patiently(clock, patience, () => get(nameOf(key))),
    async set(key, value, milliseconds) {
      const name = nameOf(key);
      const ttl = milliseconds === undefined ? undefined : Math.ceil(milliseconds);
      // Keyv takes 0 for “for good”.
      const put = (keyv: Keyv) => (ttl !== undefined && ttl <= 0 ? keyv.delete(name) : keyv.set(name, value, ttl));
      await patiently(clock, patience, () => run(put));
    },
    delete: (key) => patiently(clock, patience, () => run((keyv) => keyv.delete(nameOf(key)))),
    async claim(key, milliseconds) {
      if (milliseconds <= 0) return false;
      const name = nameOf(key);
      const mine = nameWrite();
      return settled(
        clock,
        patience,
        async () => (await open()).values.claim(name, mine, Math.ceil(milliseconds)),
        async () => (await get(name)) === mine,
      );
    },
  };
}

function keyvOn({ values }: Engine): Keyv {
  // Without a namespace of Keyv's, which takes “a:b” and, in the namespace a, “b” for one key.
  const keyv = new Keyv({ store: values.adapter(), useKeyPrefix: false, throwOnErrors: true });
  keyv.namespace = values.namespace;
  // Errors are thrown as well; nobody needs to be told twice.
  keyv.on('error', () => {});
  return keyv;
}

/** The key as every engine takes it: printable ASCII of at most 200 characters as it is, anything else by its hash. */
function nameOf(key: string): string {
  if (/^[!-~]{1,200}$/.test(key) && !key.startsWith('sha256-')) return key;
  return `sha256-${createHash('sha256').update(key).digest('base64url')}`;
}
