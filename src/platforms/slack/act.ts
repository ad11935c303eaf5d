/** One thing somebody did in Slack, acted on once, whatever comes of it: nothing is left in silence. */

import { accountKey } from '../../accounts/asker.ts';
import { faultReference } from '../../chat/request-id.ts';
import { Outage } from '../../storage/types.ts';
import { sayFault } from '../../text/chat-text.ts';
import { onBehalfOf } from '../../workers/queue.ts';
import type { Party, SlackPorts } from './ports.ts';
import { tell } from './send.ts';

/** Slack repeats an event for about an hour at most. */
const SEEN_MILLISECONDS = 2 * 3_600_000;

/** What was done: its own id in Slack, and whether Slack says that it is a repetition. */
export interface Deed {
  readonly id: string;
  readonly repeated?: boolean;
}

/** Lets the answer to Slack go out first: no sum begins before it. */
export function nextTurn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

/**
 * Whether a deed is to be acted on: true for one delivery of it, in whatever process. The store is waited for only where it can
 * know better than this process: another one shares it, or Slack says that this is a repetition, from before a restart perhaps.
 */
export async function firstTime({ id, repeated }: Deed, ports: SlackPorts): Promise<boolean> {
  if (!ports.isFresh(id)) return false;
  const claim = async (): Promise<boolean> => {
    try {
      return await ports.kept.claim(`slack:seen:${id}`, SEEN_MILLISECONDS);
    } catch (cause) {
      // Without the store a first delivery is still answered, and a repetition is not: twice would be worse than once.
      if (!(cause instanceof Outage)) ports.fault('slack', cause);
      return repeated !== true;
    }
  };
  if (ports.shared || repeated) return claim();
  ports.later(claim());
  return true;
}

/** Acts once; what goes wrong is told to whoever runs the bot and, by its reference, to the asker. Never rejects. */
export async function act(deed: Deed, party: Party, ports: SlackPorts, work: () => Promise<unknown>): Promise<void> {
  if (!(await firstTime(deed, ports))) return;
  ports.acting.add(party);
  try {
    await onBehalfOf(accountKey(party.asker), work);
  } catch (cause) {
    const reference = faultReference();
    ports.fault(reference, cause);
    try {
      await tell(sayFault(reference, cause instanceof Outage), party, ports);
    } catch (again) {
      ports.fault(reference, again);
    }
  } finally {
    ports.acting.delete(party);
  }
}
