/** What an asker keeps, read once for an ask: a project in use, settings, and what others changed meanwhile. */

import type { Habits } from '../measure/reading.ts';
import { type News, newsSince } from '../project/history.ts';
import type { Settings } from '../project/person.ts';
import { unreadableNote } from '../words/project-fill.ts';
import type { Desk } from './desk.ts';
import type { Holdings } from './fill.ts';
import type { Invocation } from './invocation.ts';
import { Outage, type Ports } from './ports.ts';
import { recentOf } from './recent.ts';
import { faultReference } from './request.ts';

export interface Held extends Holdings {
  /** The platform's habits, and the asker's own over them. */
  readonly habits: Habits;
  /** Said with every answer. */
  readonly notes: readonly string[];
  readonly news: readonly News[];
}

/** Reads what an asker keeps. Never throws: where it cannot be read, the ask is answered from what is typed, and says so. */
export async function holdingsOf(desk: Desk | undefined, { habits }: Invocation, ports: Ports): Promise<Held> {
  if (!desk || !ports.store) return { habits, notes: [], news: [] };
  try {
    const person = await desk.person();
    if (!person) return { habits, notes: [], news: [] };
    const project = await desk.inUse();
    const seen = project && (await recentOf(ports.store.kept, desk.via)).seen[project.id];
    const news = project && seen !== undefined ? newsSince(project, seen, desk.via) : [];
    return { project, settings: person.settings, habits: habitsOf(habits, person.settings), notes: [], news };
  } catch (cause) {
    // The store tells of its own outages.
    if (!(cause instanceof Outage)) ports.fault(faultReference(), cause);
    return { habits, notes: [unreadableNote()], news: [] };
  }
}

function habitsOf(habits: Habits, { units, decimal, currency }: Settings): Habits {
  return {
    units: units ?? habits.units,
    decimal: decimal ?? habits.decimal,
    currency: currency ?? habits.currency,
  };
}
