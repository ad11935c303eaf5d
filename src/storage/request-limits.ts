/** Rate limits per minute through the store, shared by all processes; in memory when the store doesn't answer. */

import { createHash } from 'node:crypto';
import { type RateLimiterAbstract, RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import { type Clock, type CountTerms, Lost, type OpenedEngine } from './engine.ts';
import type { ShelfTerms } from './shelf.ts';
import { type Allowed, type Asking, Outage } from './types.ts';

const SECONDS = 60;

/** Milliseconds a count may take; nobody waits longer for it. */
const LONGEST = 250;

/** Milliseconds for which an unresponsive store is left alone. */
const LEFT_ALONE = 5_000;

type ReadLine = Pick<ShelfTerms, 'clock' | 'fault'>;

export interface AskLimits {
  readonly person: number;
  readonly server: number;
}

/** Counts requests. Leave out `open` when one process alone has the store, since its memory is enough. */
export function limitsOn(
  open: OpenedEngine | undefined,
  { person, server }: AskLimits,
  terms: ReadLine,
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

/** Milliseconds until that much more is allowed under a key; 0 if it is allowed now. Never rejects. */
function counterOn(
  open: OpenedEngine | undefined,
  terms: CountTerms,
  { clock, fault }: ReadLine,
): (key: string, weight: number) => Promise<number> {
  const near = new RateLimiterMemory(terms);
  let far: Promise<RateLimiterAbstract | undefined> | undefined;
  let requestedFrom = Number.NEGATIVE_INFINITY;
  const inStore = async (key: string, points: number): Promise<number> => {
    far ??= open?.().then((engine) => engine.counter?.(terms));
    const counter = await far;
    return counter ? refusal(counter.consume(key, points)) : 0;
  };
  return async (key, weight) => {
    // The store doesn't need to know whose requests they are.
    const name = createHash('sha256').update(key).digest('base64url').slice(0, 22);
    // A request that weighs more than a whole minute's limit still has to be possible.
    const points = Math.min(weight, terms.points);
    const here = await refusal(near.consume(name, points));
    if (here > 0 || !open || clock.passed() < requestedFrom) return here;
    try {
      return await Promise.race([inStore(name, points), late(clock)]);
    } catch (cause) {
      // A failed count is no reason to refuse anyone; outages are reported where something is saved.
      if (!(cause instanceof Lost || cause instanceof Outage)) fault(cause);
      far = undefined;
      requestedFrom = clock.passed() + LEFT_ALONE;
      return 0;
    }
  };
}

async function late(clock: Clock): Promise<never> {
  await clock.wait(LONGEST);
  throw new Lost(`no count in ${LONGEST} ms`);
}

/** 0 if there were points left, otherwise milliseconds until there are. Rejects like the store. */
async function refusal(consumed: Promise<RateLimiterRes>): Promise<number> {
  try {
    await consumed;
    return 0;
  } catch (cause) {
    if (cause instanceof RateLimiterRes) return Math.max(1, cause.msBeforeNext);
    throw cause;
  }
}
