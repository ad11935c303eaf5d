/** All that an engine holds, as a list. */

import type { Engine, StoredRecord } from '../../src/storage/engine.ts';

/** Reads all and closes the engine. */
export async function listHeld(opening: Promise<Engine>): Promise<readonly StoredRecord[]> {
  const engine = await opening;
  try {
    const held: StoredRecord[] = [];
    for await (const one of engine.all()) held.push(one);
    return held;
  } finally {
    await engine.close();
  }
}
