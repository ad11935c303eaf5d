/** Whether the floor was tested for asbestos: only the one plain word says that it is clear. */

import type { Tested } from '../prep/old-materials.ts';
import { notTested } from '../text/prep-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';

/** `clear`, `asbestos` (also `positive`), or `no` (also `not tested`). Anything else is asked back, never taken as clear. */
export function readTested(text: string, reading: Reading): Read<Tested> {
  const plain = text.trim().toLowerCase();
  if (plain === 'clear') return read('clear');
  if (/^(?:no|none|not|not yet|not tested|untested|unknown|never)$/.test(plain)) return read('no');
  if (/^(?:asbestos|asbestos found|positive|tested positive|contains asbestos|has asbestos)$/.test(plain)) {
    return read('asbestos');
  }
  return unread(notTested({ option: reading.option, got: text }));
}
