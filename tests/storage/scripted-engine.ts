/** An engine in memory whose answers get lost as a test says, and a clock that goes forward only when somebody waits. */

import { type Clock, type Engine, Lost, type StoredRow } from '../../src/storage/engine.ts';

/** What becomes of one operation: as it should; lost on its way; done, and the answer lost; another comes first. */
export type Fate = 'well' | 'lost' | 'deaf' | 'overtaken';

export interface ScriptedEngine extends Pick<Engine, 'read' | 'create' | 'put' | 'remove' | 'landed' | 'ids'> {
  readonly rows: Map<string, StoredRow>;
  /** The fates of the next operations; all goes well after. */
  readonly fates: Fate[];
  /** How many operations were asked for. */
  requested: number;
  /** What another does to a record when it comes first. */
  overtake: (row: StoredRow) => StoredRow;
}

export function scriptedEngine(): ScriptedEngine {
  const rows = new Map<string, StoredRow>();
  const done = new Set<string>();
  async function fated<T>(key: string, work: () => T): Promise<T> {
    engine.requested++;
    const fate = engine.fates.shift() ?? 'well';
    if (fate === 'lost') throw new Lost('the connection went before');
    const row = rows.get(key);
    if (fate === 'overtaken' && row) rows.set(key, engine.overtake(row));
    const result = work();
    if (fate === 'deaf') throw new Lost('the connection went after');
    return result;
  }
  const named = (write: string): true => {
    done.add(write);
    return true;
  };
  const engine: ScriptedEngine = {
    rows,
    fates: [],
    requested: 0,
    overtake: (row) => ({ ...row, rev: row.rev + 1 }),
    read: (kind, id) => fated(`${kind}/${id}`, () => rows.get(`${kind}/${id}`)),
    create: (kind, id, row, write) =>
      fated(`${kind}/${id}`, () => !rows.has(`${kind}/${id}`) && rows.set(`${kind}/${id}`, row) && named(write)),
    put: (kind, id, row, after, write) =>
      fated(
        `${kind}/${id}`,
        () => rows.get(`${kind}/${id}`)?.rev === after && rows.set(`${kind}/${id}`, row) && named(write),
      ),
    remove: (kind, id, write) => fated(`${kind}/${id}`, () => rows.delete(`${kind}/${id}`) && named(write)),
    landed: (write) => fated('', () => done.has(write)),
    async *ids() {
      yield* [];
      throw new Lost('the connection went');
    },
  };
  return engine;
}

/** A clock whose waits take no time but its own. */
export function steppedClock(): Clock & { readonly waits: readonly number[]; random: () => number } {
  let now = 0;
  const waits: number[] = [];
  return {
    waits,
    now: () => now,
    passed: () => now,
    random: () => 0.5,
    wait: async (milliseconds) => {
      waits.push(milliseconds);
      now += milliseconds;
    },
  };
}
