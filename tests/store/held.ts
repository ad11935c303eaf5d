/** All that an engine holds, as a list. */

import type { Engine, Held } from '../../src/storage/engine.ts';

/** Reads all and closes the engine. */
export async function listHeld(opening: Promise<Engine>): Promise<readonly Held[]> {
  const engine = await opening;
  try {
    const held: Held[] = [];
    for await (const one of engine.all()) held.push(one);
    return held;
  } finally {
    await engine.close();
  }
}
