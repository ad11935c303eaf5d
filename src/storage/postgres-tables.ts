/** The tables that the store has in Postgres, and the statements on them; counts of asks are not logged: a crash may forget them, and none waits for the disk. */

/** Statements for one schema. Ids and keys are compared byte by byte, so that their order is the same everywhere. */
export function statementsFor(schema: string) {
  const records = `${schema}.records`;
  const named = `named AS (INSERT INTO ${schema}.writes (name) SELECT $1 FROM done)`;
  const done = (statement: string): string =>
    `WITH done AS (${statement} RETURNING 1), ${named} SELECT count(*)::int AS done FROM done`;
  const now = `floor(extract(epoch FROM clock_timestamp()) * 1000)::bigint`;
  return {
    complete: `SELECT to_regclass('${records}') IS NOT NULL AND to_regclass('${schema}.writes') IS NOT NULL
      AND to_regclass('${schema}.kept') IS NOT NULL AND to_regclass('${schema}.asks') IS NOT NULL AS complete`,
    // Two processes that make them at once would trip over each other's schema.
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
    /** By the server's clock: one for all processes. */
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

/** Keyv writes when a value is over at the very end of its text: nothing inside the value can end so. */
function expiryOf(column: string): string {
  return `substring(${column} from '"expires":([0-9]+)\\}$')::bigint`;
}
