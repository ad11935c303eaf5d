/** A store read beside a bot that may have it. */

import { MACHINE_CLOCK, openedOnce, PATIENCE } from '../../../src/storage/engine.ts';
import { shelfOn } from '../../../src/storage/shelf.ts';
import { keptOn, recordReader, type StorePlace } from '../../../src/storage/store.ts';
import type { Store } from '../../../src/storage/types.ts';

/** The store at a place, to be read only. What cannot be read throws. */
export function readStore(place: StorePlace): Store & { close(): Promise<void> } {
  const { open, close } = openedOnce(recordReader(place));
  const fault = (cause: unknown): never => {
    throw cause;
  };
  const terms = { clock: MACHINE_CLOCK, patience: PATIENCE, fault };
  return { kept: keptOn(open, terms), shelf: (kind, codec) => shelfOn(open, kind, codec, terms), close };
}
