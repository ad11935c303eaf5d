/** Limits on a store that several processes share: what one counted, the other knows. */

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Clock, MACHINE_CLOCK } from '../../src/storage/engine.ts';
import type { OpenStore } from '../../src/storage/store.ts';

const LIMITS = { person: 3, server: 5 };

/** No count is ever late, however busy the machine is, and all that is counted is counted at one moment. */
const NEVER_LATE: Clock = {
  ...MACHINE_CLOCK,
  passed: () => 0,
  wait: (milliseconds) => (milliseconds === 250 ? new Promise(() => {}) : MACHINE_CLOCK.wait(milliseconds)),
};

/** `make`: stores on one place, and what clears it. */
export function limitsContract(
  name: string,
  make: () => { open(clock: Clock): OpenStore; clear(): Promise<void> },
): void {
  describe(`asks counted on ${name}`, () => {
    beforeEach(() => void vi.useFakeTimers({ toFake: ['Date'] }));
    const ends: (() => Promise<void>)[] = [];
    afterEach(async () => {
      vi.useRealTimers();
      for (const end of ends.splice(0)) await end();
    });
    const two = () => {
      const place = make();
      const stores = [place.open(NEVER_LATE), place.open(NEVER_LATE)];
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
      const requested = await Promise.all(
        Array.from({ length: 10 }, (_, i) => (i % 2 ? one : other)({ person: 'p' }, 1)),
      );
      expect(requested.filter(({ again }) => again === 0).length).toBe(LIMITS.person);
      const wait = Math.max(...requested.map(({ again }) => again));
      expect(wait).toBeGreaterThan(0);
      expect(wait).toBeLessThanOrEqual(60_000);
    });
  });
}
