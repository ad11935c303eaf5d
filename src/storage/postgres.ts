/** The back end on Postgres: one pool for records and for Keyv, every write one statement that commits before it is answered. */

import { KeyvPostgres } from '@keyv/postgres';
import pg from 'pg';
import { type RateLimiterAbstract, RateLimiterPostgres } from 'rate-limiter-flexible';
import type { CountTerms, Engine, Held, HeldRecord, HeldValue, Row, Values } from './engine.ts';
import { Lost } from './patience.ts';
import { statementsFor } from './postgres-tables.ts';

const PAGE = 500;
/** Writes between two sweeps of what is over. */
const SWEEP_EVERY = 500;
const LARGEST_POOL = 10;

/** Errors of the server after which another try may do; any other is a fault of ours (Postgres manual, appendix A). */
const PASSING = /^(08|40|53|57|58)|^(25006|55P03)$/;

export interface PostgresTerms {
  readonly url: string;
  readonly schema: string;
  /** Milliseconds for one answer. */
  readonly operation: number;
}

type Fields = Readonly<Record<string, unknown>>;
type Query = (text: string, values?: readonly unknown[]) => Promise<readonly Fields[]>;

/** The back end. Nothing is asked of the server before the first operation. */
export function openPostgres({ url, schema, operation }: PostgresTerms): Engine {
  return new Postgres(url, schema, operation);
}

class Postgres implements Engine {
  readonly values: Values;
  readonly #schema: string;
  readonly #pool: pg.Pool;
  readonly #sql: ReturnType<typeof statementsFor>;
  #made: Promise<void> | undefined;
  #writes = 0;

  constructor(url: string, schema: string, operation: number) {
    if (!/^[a-z_][a-z0-9_]{0,50}$/.test(schema)) throw new RangeError(`“${schema}” is no name for a schema`);
    this.#schema = schema;
    this.#sql = statementsFor(schema);
    this.#pool = new pg.Pool({
      connectionString: url,
      max: LARGEST_POOL,
      connectionTimeoutMillis: operation,
      query_timeout: operation,
      keepAlive: true,
      // Whatever the server's standard is: an answer means that it is on disk. The server gives up before we do.
      onConnect: async (client) => {
        await client.query(`SET synchronous_commit = on; SET statement_timeout = ${Math.ceil(operation * 0.9)}`);
      },
    });
    // An idle connection that ends is replaced when next one is needed.
    this.#pool.on('error', () => {});
    this.values = {
      adapter: () => keyvOn(schema, (text, values) => this.#query(text, values)),
      run: (work) => work(),
      claim: async (key, value, milliseconds) => {
        this.#sweep();
        return (await this.#query(this.#sql.claim, [key, value, Math.ceil(milliseconds)])).length > 0;
      },
    };
  }

  async read(kind: string, id: string): Promise<Row | undefined> {
    const [row] = await this.#query(this.#sql.read, [kind, id]);
    return row && { rev: Number(row.rev), text: String(row.body) };
  }

  create(kind: string, id: string, { rev, text }: Row, write: string): Promise<boolean> {
    return this.#done(this.#sql.create, [write, kind, id, rev, text]);
  }

  put(kind: string, id: string, { rev, text }: Row, after: number, write: string): Promise<boolean> {
    return this.#done(this.#sql.put, [write, kind, id, rev, text, after]);
  }

  remove(kind: string, id: string, write: string): Promise<boolean> {
    return this.#done(this.#sql.remove, [write, kind, id]);
  }

  async landed(write: string): Promise<boolean> {
    return (await this.#query(this.#sql.landed, [write])).length > 0;
  }

  async *ids(kind: string): AsyncGenerator<string> {
    for (let after = ''; ; ) {
      const page = await this.#query(this.#sql.ids, [kind, after, PAGE]);
      for (const { id } of page) yield String(id);
      if (page.length < PAGE) return;
      after = String(page.at(-1)?.id);
    }
  }

  counter(terms: CountTerms): RateLimiterAbstract {
    const query = async ({ text, values }: { text: string; values: readonly unknown[] }) => {
      this.#sweep();
      return { rows: await this.#query(text, values) };
    };
    const table = {
      schemaName: this.#schema,
      tableName: 'asks',
      tableCreated: true,
      clearExpiredByTimeout: false,
      storeType: 'client',
    };
    return new RateLimiterPostgres({ ...terms, ...table, storeClient: { query } });
  }

  async ping(): Promise<void> {
    await this.#query('SELECT 1');
  }

  async doubts(): Promise<readonly string[]> {
    const [{ fsync } = {}] = await this.#query('SHOW fsync');
    return fsync === 'off' ? ['This Postgres runs with fsync off: a power cut loses what was acknowledged.'] : [];
  }

  /** As of one moment: a transaction that sees what was committed when it began. */
  async *all(): AsyncGenerator<Held> {
    await this.#tables();
    const client = await passing(() => this.#pool.connect());
    const query: Query = async (text, values = []) => (await passing(() => client.query(text, [...values]))).rows;
    let failed = true;
    try {
      await query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
      for (let last: Fields | undefined, page: readonly Fields[] = []; ; last = page.at(-1)) {
        page = await query(this.#sql.allRecords, [last?.kind ?? '', last?.id ?? '', PAGE]);
        for (const { kind, id, rev, body } of page) {
          yield { record: { kind: String(kind), id: String(id), rev: Number(rev), text: String(body) } };
        }
        if (page.length < PAGE) break;
      }
      for (let last: Fields | undefined, page: readonly Fields[] = []; ; last = page.at(-1)) {
        page = await query(this.#sql.allKept, [last?.key ?? '', PAGE]);
        for (const { key, value, expires } of page) {
          yield {
            kept: { key: String(key), text: String(value), ...(expires === null ? {} : { expires: Number(expires) }) },
          };
        }
        if (page.length < PAGE) break;
      }
      await query('COMMIT');
      failed = false;
    } finally {
      client.release(failed);
    }
  }

  async empty(): Promise<boolean> {
    return (await this.#query(this.#sql.empty))[0]?.empty === true;
  }

  async fill(held: readonly Held[]): Promise<void> {
    const records = held.flatMap((one): HeldRecord[] => ('record' in one ? [one.record] : []));
    const kept = held.flatMap((one): HeldValue[] => ('kept' in one ? [one.kept] : []));
    const columns = [records.map((one) => one.kind), records.map((one) => one.id), records.map((one) => one.rev)];
    await this.#query(this.#sql.fillRecords, [...columns, records.map((one) => one.text)]);
    await this.#query(this.#sql.fillKept, [kept.map((one) => one.key), kept.map((one) => one.text)]);
  }

  async close(): Promise<void> {
    if (!this.#pool.ending) await this.#pool.end();
  }

  async #done(text: string, values: readonly unknown[]): Promise<boolean> {
    this.#sweep();
    return (await this.#query(text, values))[0]?.done === 1;
  }

  async #query(text: string, values: readonly unknown[] = []): Promise<readonly Fields[]> {
    await this.#tables();
    return (await passing(() => this.#pool.query<Fields>(text, [...values]))).rows;
  }

  #tables(): Promise<void> {
    this.#made ??= this.#make().catch((cause) => {
      this.#made = undefined;
      throw cause;
    });
    return this.#made;
  }

  async #make(): Promise<void> {
    const { rows } = await passing(() => this.#pool.query<Fields>(this.#sql.complete));
    if (rows[0]?.complete !== true) await passing(() => this.#pool.query(this.#sql.make));
  }

  /** Now and then removes what is over; when that fails, the next sweep does it. */
  #sweep(): void {
    if (this.#writes++ % SWEEP_EVERY !== 0) return;
    for (const text of [this.#sql.sweepWrites, this.#sql.sweepKept, this.#sql.sweepAsks])
      this.#query(text).catch(() => {});
  }
}

/** Keyv's own adapter on our pool: its own has no bounds and lets the process fall when an idle connection ends. */
function keyvOn(schema: string, query: Query): KeyvPostgres {
  class Pooled extends KeyvPostgres {
    override async connect() {
      // The tables are made with the others.
      return async (text: string, values?: unknown[]) =>
        text.startsWith('CREATE') ? [] : [...(await query(text, values))];
    }
    override async disconnect() {}
  }
  return new Pooled({ schema, table: 'kept', iterationLimit: PAGE });
}

/** Errors that another try may get past, as Lost: those of the connection have no code of the server's. */
async function passing<T>(ask: () => Promise<T>): Promise<T> {
  try {
    return await ask();
  } catch (cause) {
    const code = cause instanceof pg.DatabaseError ? (cause.code ?? '') : '';
    if (code !== '' && !PASSING.test(code)) throw cause;
    throw new Lost(cause instanceof Error ? cause.message : String(cause), { cause });
  }
}
