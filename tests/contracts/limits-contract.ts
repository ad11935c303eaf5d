/** Limits on a store that several processes share: what one counted, the other knows. */

import { afterEach, describe, expect, it } from 'vitest';
import type { OpenStore } from '../../src/store/store.ts';

const LIMITS = { person: 3, server: 5 };

/** `make`: stores on one place, and what clears it. */
export function limitsContract(name: string, make: () => { open(): OpenStore; clear(): Promise<void> }): void {
  describe(`asks counted on ${name}`, () => {
    const ends: (() => Promise<void>)[] = [];
    afterEach(async () => {
      for (const end of ends.splice(0)) await end();
    });
    const two = () => {
      const place = make();
      const stores = [place.open(), place.open()];
      ends.push(async () => void (await Promise.all(stores.map((store) => store.close()))), place.clear);
      const [one, other] = stores.map((store) => store.allowed(LIMITS));
      if (!one || !other) throw new Error('two stores');
      return { one, other };
    };

    it('are counted together, person by person and server by server, and free again after a while', async () => {
      const { one, other } = two();
      const ada = { person: 'discord:1', server: 'discord:9' };
      expect(await one(ada, 2)).toEqual({ again: 0, everybody: false });
      expect(await other(ada, 1)).toEqual({ again: 0, everybody: false });
      const refused = await other(ada, 1);
      expect(refused.everybody).toBe(false);
      expect(refused.again).toBeGreaterThan(0);
      expect(refused.again).toBeLessThanOrEqual(60_000);
      expect(await one({ person: 'discord:2', server: 'discord:9' }, 2)).toEqual({ again: 0, everybody: false });
      const all = await other({ person: 'discord:3', server: 'discord:9' }, 1);
      expect([all.everybody, all.again > 0]).toEqual([true, true]);
      expect(await other({ person: 'discord:3' }, 1)).toEqual({ again: 0, everybody: false });
    });

    it('count each of many that come at once', async () => {
      const { one, other } = two();
      const asked = await Promise.all(Array.from({ length: 10 }, (_, i) => (i % 2 ? one : other)({ person: 'p' }, 1)));
      expect(asked.filter(({ again }) => again === 0).length).toBe(LIMITS.person);
    });
  });
}
