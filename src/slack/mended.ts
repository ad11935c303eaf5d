/** Asks mended as a problem said, kept a day under the id of its buttons. */

import type { Kept } from '../bot/ports.ts';

const KEPT_FOR = 24 * 3600 * 1000;

export interface Mended {
  /** The account that asked (`accountKey`). */
  readonly by: string;
  readonly ask: string;
}

/** Keeps a mended ask. Throws Outage. */
export async function keepMended(kept: Kept, id: string, mended: Mended): Promise<void> {
  await kept.set(`mended:${id}`, mended, KEPT_FOR);
}

/** The mended ask of an id; undefined when it is gone, was never there, or is another account's. Throws Outage. */
export async function keptMended(kept: Kept, id: string, account: string): Promise<string | undefined> {
  const mended = (await kept.get(`mended:${id}`)) as Mended | undefined;
  return mended?.by === account ? mended.ask : undefined;
}
