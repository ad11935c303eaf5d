/** Short runs of the fault tests: nothing that was acknowledged is lost, and nothing is done twice. */

import { describe, expect, it } from 'vitest';
import { missing } from '../bench/faults/own-server.ts';
import { besideKilled, crashes, killed, manyEmbedded, manyProcesses, slowAndCut } from '../bench/faults/scenarios.ts';
import { outcome } from '../bench/faults/tally.ts';
import { tickBesideBot, tickInFolder, tickOnServer } from '../bench/faults/together.ts';

const SOUND = { lost: 0, doubled: 0 };

/** A generator that draws the same moments each time (Numerical Recipes' constants). */
function drawn(): () => number {
  let state = 20_260;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    return state / 2 ** 32;
  };
}

it('what is lost or doubled is seen', () => {
  const found = { a: [0, 2, 2], b: [0] };
  expect(outcome({ a: [0, 1, 2], b: [0] }, 5, 1, found)).toEqual({
    asked: 5,
    acknowledged: 4,
    refused: 1,
    lost: 1,
    doubled: 1,
  });
});

describe('a data folder', () => {
  it('takes many changes at once', async () => {
    expect(await manyEmbedded(64)).toMatchObject({ ...SOUND, acknowledged: 64 });
  });

  it('takes every tick of an owner and two helpers at once', async () => {
    expect(await tickInFolder({ lines: 24, lanes: 4 })).toMatchObject({ ...SOUND, acknowledged: 72 });
  });

  it('takes every tick of an owner and two helpers in two processes beside the bot', async () => {
    expect(await tickBesideBot({ lines: 24, lanes: 2 })).toMatchObject({ ...SOUND, acknowledged: 72 });
  });

  it('that a bot and terminals change at once loses nothing when one of them is killed, and stays sound', async () => {
    const given = await besideKilled({ processes: 2, changes: 60, lanes: 2, kills: 4 }, drawn());
    expect(given).toMatchObject({ ...SOUND, refused: 0 });
    expect(given.acknowledged).toBeGreaterThanOrEqual(120);
  });

  it('opens after its process was killed, with all that was acknowledged', async () => {
    const given = await killed(8, drawn());
    expect(given).toMatchObject(SOUND);
    expect(given.acknowledged).toBeGreaterThan(0);
  });
});

for (const server of ['postgres', 'redis'] as const) {
  const lacking = missing(server);
  const required = process.env.FLOORHAND_REQUIRE_SERVICES === '1';
  describe.skipIf(lacking.length > 0 && !required)(
    `${server}${lacking.length > 0 ? ` (lacking ${lacking})` : ''}`,
    () => {
      it('takes changes of several processes', async () => {
        const given = await manyProcesses(server, { processes: 3, changes: 20, lanes: 2 });
        expect(given).toMatchObject({ ...SOUND, acknowledged: 60 });
      });

      it('takes every tick of an owner and two helpers in two processes', async () => {
        const given = await tickOnServer(server, { lines: 24, lanes: 2 });
        expect(given).toMatchObject({ ...SOUND, acknowledged: 72 });
      });

      it('that is slow and cut off while it works takes each change once', async () => {
        const given = await slowAndCut(server, { processes: 2, changes: 40, lanes: 10, delay: 100, cuts: 3 });
        expect(given).toMatchObject(SOUND);
        expect(given.acknowledged).toBeGreaterThan(0);
      });

      it('that crashes has all that was acknowledged, refuses meanwhile, and is found again', async () => {
        const given = await crashes(server, { times: 1, lanes: 4 });
        expect(given).toMatchObject(SOUND);
        expect(given.refused).toBeGreaterThan(0);
        expect(given.acknowledged).toBeGreaterThan(4);
      });
    },
  );
}
