/** A page to be visited in tests: links with their roles, sheets whose ticks are really ticked, and what is asked of the bot. */

import { createHash } from 'node:crypto';
import type { Answer } from '../../src/chat/pipeline.ts';
import type { Request } from '../../src/chat/ports.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { allowanceOf } from '../../src/platforms/web/receive.ts';
import { startWeb } from '../../src/platforms/web/start.ts';
import type { OpenedLink } from '../../src/platforms/web/types.ts';
import type { Sheets, Tick } from '../../src/reply/job-sheet.ts';
import { type Route, routed } from '../../src/server/http.ts';
import { NOON } from '../chat/demo-flat.ts';
import { storeInMemory } from '../storage/shelf-in-memory.ts';
import { bareReply } from './fixture-sheets.ts';

export const TOKEN = 'abcdefghijklmnopqrstu0';

export interface Stage {
  readonly requested: string[];
  readonly faults: unknown[];
  /** Links by token: what is not here was never given, or ended. */
  readonly links: Map<string, Pick<OpenedLink, 'role' | 'until' | 'questions'>>;
  readonly clock: { now: number };
  /** Whether files cannot be told. */
  broken: boolean;
  sheets: Sheets;
  /** Answers in place of the usual for a line, where the test has one. */
  instead: ((line: string) => Answer | undefined) | undefined;
  readonly store: ReturnType<typeof storeInMemory> & { readonly looks: number };
  /** Every key of a plain value that was looked at or kept. */
  readonly keys: string[];
  readonly routes: readonly Route[];
  /** Sends a request as a browser would. */
  visit(path: string, init?: RequestInit): Promise<Response>;
  /** Sends a form as the page does. */
  send(fields: Readonly<Record<string, string>>, headers?: Readonly<Record<string, string>>): Promise<Response>;
}

export const HERE = 'http://127.0.0.1:3000';

/** A stage with one link that may tick. */
export function stage(sheets: Sheets, allow = allowanceOf()): Stage {
  const keys: string[] = [];
  const store = watched(keys);
  const requested: string[] = [];
  const faults: unknown[] = [];
  const links: Stage['links'] = new Map([[TOKEN, { role: 'tick', questions: [] }]]);
  const clock = { now: NOON };
  const byHash = (id: string) =>
    [...links].find(([token]) => createHash('sha256').update(token).digest('hex') === id)?.[1];
  const own: Stage = {
    requested,
    keys,
    faults,
    links,
    clock,
    broken: false,
    sheets,
    instead: undefined,
    store,
    routes: startWeb({
      fault: (_, cause) => faults.push(cause),
      store,
      now: () => clock.now,
      preferences: DEFAULT_PREFERENCES,
      allow,
      answer: (request) => answersOf(request, own),
      opened: async ({ id }) => {
        // One look at the store, whatever comes of it.
        await store.kept.get(`share:${id}`);
        const link = byHash(id);
        const state = createHash('sha256')
          .update(JSON.stringify([own.sheets, link]))
          .digest('hex');
        return link && { ...link, project: 'flat', state };
      },
      files: {
        pdf: async (_, paper) => ({ name: `job ${paper}.pdf`, type: 'application/pdf', bytes: bytes('%PDF') }),
        tables: () => {
          if (own.broken) throw new Error('no tables');
          return [{ key: 'shopping', label: 'Shopping list' }];
        },
        table: async (_, key) =>
          key === 'shopping' ? { name: 'shopping.csv', type: 'text/csv', bytes: bytes('a,b') } : undefined,
        json: async (shown) => ({ name: 'job.json', type: 'application/json', bytes: bytes(JSON.stringify(shown)) }),
      },
    }),
    visit: async (path, init) => app.fetch(new Request(`${HERE}${path}`, init)),
    send: (fields, headers = {}) =>
      own.visit(`/s/${TOKEN}`, {
        method: 'POST',
        body: new URLSearchParams(fields),
        headers: { Origin: HERE, ...headers },
        redirect: 'manual',
      }),
  };
  const app = routed(own.routes, (cause) => faults.push(cause));
  return own;
}

/** A store in memory that tells which plain values were looked at. */
function watched(keys: string[]): Stage['store'] {
  const store = storeInMemory();
  const { kept } = store;
  const noted = <A extends readonly unknown[], R>(work: (key: string, ...rest: A) => R) => {
    return (key: string, ...rest: A): R => {
      keys.push(key);
      return work(key, ...rest);
    };
  };
  return Object.defineProperties(store, {
    kept: {
      value: {
        ...kept,
        get: noted(kept.get),
        set: noted(kept.set),
        delete: noted(kept.delete),
        claim: noted(kept.claim),
      },
    },
    looks: { get: () => keys.length },
  }) as Stage['store'];
}

function bytes(text: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array(Buffer.from(text));
}

async function* answersOf({ text }: Request, stage: Stage): AsyncGenerator<Answer> {
  stage.requested.push(text);
  const other = stage.instead?.(text);
  if (other) yield other;
  else if (text === 'project sheets') yield { ...bareReply('Sheets.'), data: stage.sheets };
  else {
    const ticked = (tick: Tick): Tick =>
      text === tick.ask
        ? { ...tick, ticked: true, by: 'Sam', at: stage.clock.now }
        : text === tick.undo
          ? { ...tick, ticked: false }
          : tick;
    const each = stage.sheets.sheets.map((sheet) =>
      sheet.ticks ? { ...sheet, ticks: sheet.ticks.map(ticked) } : sheet,
    );
    stage.sheets = { ...stage.sheets, sheets: each };
    yield bareReply(`Done: ${text}`);
  }
}
