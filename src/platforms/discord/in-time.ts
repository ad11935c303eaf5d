/** What must not be waited for longer than a response may take. */

import { Outage } from '../../storage/types.ts';
import type { Desk } from './desk.ts';

/** What the store gives, or an Outage when it has not by then; what comes later is let go. */
export async function inTime<T>(work: Promise<T>, milliseconds: number, desk: Pick<Desk, 'wait'>): Promise<T> {
  const wait = desk.wait(milliseconds);
  try {
    return await Promise.race([
      work,
      wait.over.then(() => {
        throw new Outage('the store did not answer while there was time to respond');
      }),
    ]);
  } finally {
    wait.cancel();
    work.catch(() => undefined);
  }
}
