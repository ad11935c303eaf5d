/** Looking at a store: in bounded time where nobody answers, and nothing made. */

import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PATIENCE } from '../../src/storage/engine.ts';
import { lookAtStore } from '../../src/storage/look.ts';

const folder = mkdtempSync(join(tmpdir(), 'floorhand-look-'));
const held: Socket[] = [];
let mute: Server;
let port = 0;
beforeAll(async () => {
  mute = createServer((socket) => void held.push(socket.on('error', () => undefined)));
  await new Promise<void>((resolve) => mute.listen(0, '127.0.0.1', resolve));
  const address = mute.address();
  if (typeof address === 'object' && address) port = address.port;
});
afterAll(async () => {
  for (const socket of held) socket.destroy();
  await new Promise((resolve) => mute.close(resolve));
  rmSync(folder, { recursive: true });
});

describe('a look', () => {
  it.each(['postgres', 'redis'])('at a %s that takes the connection and says nothing ends in time', async (kind) => {
    const url = `${kind}://bot:canary-pass@127.0.0.1:${port}/0`;
    const began = performance.now();
    const looking = lookAtStore({ url, folder, patience: { ...PATIENCE, operation: 150 } });
    await expect(looking).rejects.toThrow(/^(?!.*canary)/);
    expect(performance.now() - began).toBeLessThan(5_000);
    expect(held.length).toBeGreaterThan(0);
  });

  it('at a folder that is not there makes none', async () => {
    const none = join(folder, 'none');
    expect(await lookAtStore({ url: '', folder: none })).toEqual({ doubts: [], made: false });
    expect(existsSync(none)).toBe(false);
  });
});
