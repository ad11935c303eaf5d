/** Asks counted by the minute on the store's own connection, so that all processes count together; in memory where it does not answer. */

import { createHash } from 'node:crypto';
import { type RateLimiterAbstract, RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import type { Allowed, Asking } from '../chat/ports.ts';
import type { CountTerms, Opened } from './engine.ts';
import { type Clock, Lost } from './patience.ts';
import type { ShelfTerms } from './shelf.ts';
import { Outage } from './types.ts';

const SECONDS = 60;

/** Milliseconds that a count may take: nobody waits for it longer. */
const LONGEST = 250;

/** Milliseconds for which a store that did not answer is not asked again. */
const LEFT_ALONE = 5_000;

type Told = Pick<ShelfTerms, 'clock' | 'fault'>;

/** Asks in a minute. */
export interface AskLimits {
  readonly person: number;
  readonly server: number;
}

/** Counts asks; `open` is left out where one process alone has the store, whose memory knows all. */
export function limitsOn(
  open: Opened | undefined,
  { person, server }: AskLimits,
  terms: Told,
): (who: Asking, weight: number) => Promise<Allowed> {
  const people = counterOn(open, { keyPrefix: 'person', points: person, duration: SECONDS }, terms);
  const servers = counterOn(open, { keyPrefix: 'server', points: server, duration: SECONDS }, terms);
  return async (who, weight) => {
    const again = await people(who.person, weight);
    if (again > 0 || who.server === undefined) return { again, everybody: false };
    const all = await servers(who.server, weight);
    return { again: all, everybody: all > 0 };
  };
}

/** Milliseconds until so much more may be asked under a key; 0 when it may. Never rejects. */
function counterOn(
  open: Opened | undefined,
  terms: CountTerms,
  { clock, fault }: Told,
): (key: string, weight: number) => Promise<number> {
  const near = new RateLimiterMemory(terms);
  let far: Promise<RateLimiterAbstract | undefined> | undefined;
  let askedFrom = Number.NEGATIVE_INFINITY;
  const inStore = async (key: string, points: number): Promise<number> => {
    far ??= open?.().then((engine) => engine.counter?.(terms));
    const counter = await far;
    return counter ? refusal(counter.consume(key, points)) : 0;
  };
  return async (key, weight) => {
    // Whose asks they are is nobody's business in the store.
    const name = createHash('sha256').update(key).digest('base64url').slice(0, 22);
    // An ask that weighs more than a whole minute's must still be possible.
    const points = Math.min(weight, terms.points);
    const here = await refusal(near.consume(name, points));
    if (here > 0 || !open || clock.passed() < askedFrom) return here;
    try {
      return await Promise.race([inStore(name, points), late(clock)]);
    } catch (cause) {
      // A count is no reason to refuse anybody; the store tells of its outages where something is kept.
      if (!(cause instanceof Lost || cause instanceof Outage)) fault(cause);
      far = undefined;
      askedFrom = clock.passed() + LEFT_ALONE;
      return 0;
    }
  };
}

/** Rejects once a count took too long by the clock. */
async function late(clock: Clock): Promise<never> {
  await clock.wait(LONGEST);
  throw new Lost(`no count in ${LONGEST} ms`);
}

/** 0 where points were there; the milliseconds until they are again where not. Rejects as the store does. */
async function refusal(consumed: Promise<RateLimiterRes>): Promise<number> {
  try {
    await consumed;
    return 0;
  } catch (cause) {
    if (cause instanceof RateLimiterRes) return Math.max(1, cause.msBeforeNext);
    throw cause;
  }
}
