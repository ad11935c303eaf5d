/** The Postgres back end: one pool for records and for Keyv, where every write is one statement that commits before it returns. */

import { KeyvPostgres } from '@keyv/postgres';
import pg from 'pg';
import { type RateLimiterAbstract, RateLimiterPostgres } from 'rate-limiter-flexible';
import {
  type CountTerms,
  type Engine,
  type HeldRecord,
  type HeldValue,
  Lost,
  type StoredRecord,
  type StoredRow,
  type Values,
} from './engine.ts';

// Tables and statements. The table of request counts is unlogged: a crash may lose it, and no count waits for the disk.

/** Statements for one schema. Ids and keys are compared bytewise, so that their order is the same everywhere. */
export function statementsFor(schema: string) {
  const records = `${schema}.records`;
  const named = `named AS (INSERT INTO ${schema}.writes (name) SELECT $1 FROM done)`;
  const done = (statement: string): string =>
    `WITH done AS (${statement} RETURNING 1), ${named} SELECT count(*)::int AS done FROM done`;
  const now = `floor(extract(epoch FROM clock_timestamp()) * 1000)::bigint`;
  return {
    complete: `SELECT to_regclass('${records}') IS NOT NULL AND to_regclass('${schema}.writes') IS NOT NULL
      AND to_regclass('${schema}.kept') IS NOT NULL AND to_regclass('${schema}.asks') IS NOT NULL AS complete`,
    // Two processes creating them at once would conflict over the schema.
    make: `BEGIN; SELECT pg_advisory_xact_lock(hashtext('${schema}'));
      CREATE SCHEMA IF NOT EXISTS ${schema};
      CREATE TABLE IF NOT EXISTS ${records} (kind text COLLATE "C", id text COLLATE "C", rev bigint NOT NULL,
        body text NOT NULL, PRIMARY KEY (kind, id));
      CREATE TABLE IF NOT EXISTS ${schema}.writes (name text COLLATE "C" PRIMARY KEY, at timestamptz NOT NULL DEFAULT now());
      CREATE TABLE IF NOT EXISTS ${schema}.kept (key varchar(255) COLLATE "C" PRIMARY KEY, value text);
      CREATE UNLOGGED TABLE IF NOT EXISTS ${schema}.asks (key varchar(255) COLLATE "C" PRIMARY KEY,
        points integer NOT NULL, expire bigint); COMMIT`,
    read: `SELECT rev::text AS rev, body FROM ${records} WHERE kind = $1 AND id = $2`,
    create: done(`INSERT INTO ${records} (kind, id, rev, body) VALUES ($2, $3, $4, $5) ON CONFLICT DO NOTHING`),
    put: done(`UPDATE ${records} SET rev = $4, body = $5 WHERE kind = $2 AND id = $3 AND rev = $6`),
    remove: done(`DELETE FROM ${records} WHERE kind = $2 AND id = $3`),
    landed: `SELECT 1 FROM ${schema}.writes WHERE name = $1`,
    ids: `SELECT id FROM ${records} WHERE kind = $1 AND id > $2 ORDER BY id LIMIT $3`,
    /** By the server's clock, which all processes share. */
    claim: `INSERT INTO ${schema}.kept AS k (key, value)
      VALUES ($1, '{"value":"' || $2 || '","expires":' || (${now} + $3) || '}')
      ON CONFLICT (key) DO UPDATE SET value = excluded.value WHERE ${expiryOf('k.value')} <= ${now} RETURNING 1`,
    sweepWrites: `DELETE FROM ${schema}.writes WHERE at < now() - interval '1 hour'`,
    sweepKept: `DELETE FROM ${schema}.kept WHERE ${expiryOf('value')} <= ${now} - 60000`,
    sweepAsks: `DELETE FROM ${schema}.asks WHERE expire <= ${now} - 60000`,
    allRecords: `SELECT kind, id, rev::text AS rev, body FROM ${records} WHERE (kind, id) > ($1, $2) ORDER BY kind, id LIMIT $3`,
    allKept: `SELECT key, value, ${expiryOf('value')}::text AS expires FROM ${schema}.kept
      WHERE key > $1 ORDER BY key LIMIT $2`,
    empty: `SELECT NOT EXISTS (SELECT 1 FROM ${records}) AND NOT EXISTS (SELECT 1 FROM ${schema}.kept) AS empty`,
    fillRecords: `INSERT INTO ${records} (kind, id, rev, body) SELECT * FROM unnest($1::text[], $2::text[], $3::bigint[], $4::text[])
      ON CONFLICT (kind, id) DO UPDATE SET rev = excluded.rev, body = excluded.body`,
    fillKept: `INSERT INTO ${schema}.kept (key, value) SELECT * FROM unnest($1::text[], $2::text[])
      ON CONFLICT (key) DO UPDATE SET value = excluded.value`,
  };
}

/** Keyv writes the expiry at the very end of its text, and nothing inside the value can end that way. */
function expiryOf(column: string): string {
  return `substring(${column} from '"expires":([0-9]+)\\}$')::bigint`;
}

const PAGE = 500;
/** Writes between two sweeps for expired values. */
const SWEEP_EVERY = 500;
const LARGEST_POOL = 10;

/** Server errors that a retry may get past; any other is our own fault (Postgres manual, appendix A). */
const PASSING = /^(08|40|53|57|58)|^(25006|55P03)$/;

export interface PostgresTerms {
  readonly url: string;
  readonly schema: string;
  /** Milliseconds for one answer. */
  readonly operation: number;
}

type Fields = Readonly<Record<string, unknown>>;
type Query = (text: string, values?: readonly unknown[]) => Promise<readonly Fields[]>;

/** Doesn't contact the server before the first operation. */
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
      // Whatever the server's default: an answer means the data is on disk. The server's timeout is shorter than ours.
      onConnect: async (client) => {
        await client.query(`SET synchronous_commit = on; SET statement_timeout = ${Math.ceil(operation * 0.9)}`);
      },
    });
    // An idle connection that ends is replaced when the next one is needed.
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

  async read(kind: string, id: string): Promise<StoredRow | undefined> {
    const [row] = await this.#query(this.#sql.read, [kind, id]);
    return row && { rev: Number(row.rev), text: String(row.body) };
  }

  create(kind: string, id: string, { rev, text }: StoredRow, write: string): Promise<boolean> {
    return this.#done(this.#sql.create, [write, kind, id, rev, text]);
  }

  put(kind: string, id: string, { rev, text }: StoredRow, after: number, write: string): Promise<boolean> {
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

  /** As of one moment: a transaction that sees what was committed when it started. */
  async *all(): AsyncGenerator<StoredRecord> {
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

  async fill(held: readonly StoredRecord[]): Promise<void> {
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

  /** Removes expired values now and then; if that fails, the next sweep does it. */
  #sweep(): void {
    if (this.#writes++ % SWEEP_EVERY !== 0) return;
    for (const text of [this.#sql.sweepWrites, this.#sql.sweepKept, this.#sql.sweepAsks])
      this.#query(text).catch(() => {});
  }
}

/**
 * Keyv's adapter on our pool, because its own has no time limits and crashes the process when an idle connection ends.
 */
function keyvOn(schema: string, query: Query): KeyvPostgres {
  class Pooled extends KeyvPostgres {
    override async connect() {
      // The tables are created together with the others.
      return async (text: string, values?: unknown[]) =>
        text.startsWith('CREATE') ? [] : [...(await query(text, values))];
    }
    override async disconnect() {}
  }
  return new Pooled({ schema, table: 'kept', iterationLimit: PAGE });
}

/** Throws Lost for errors that a retry may get past; connection errors have no server code. */
async function passing<T>(ask: () => Promise<T>): Promise<T> {
  try {
    return await ask();
  } catch (cause) {
    const code = cause instanceof pg.DatabaseError ? (cause.code ?? '') : '';
    if (code !== '' && !PASSING.test(code)) throw cause;
    throw new Lost(cause instanceof Error ? cause.message : String(cause), { cause });
  }
}
