/** The writes that Redis does in one step, as scripts: the condition, the record, the list of ids, and the write's name. */

/** Milliseconds for which a write's name is remembered: longer than anybody asks whether it landed. */
export const REMEMBERED = 3_600_000;

// KEYS: record, write's name, ids of the kind, kinds. ARGV: time to remember, kind, id, then what each needs.

/** ARGV 4: revision, 5: text. */
export const CREATE = `
if redis.call('EXISTS', KEYS[1]) == 1 then return 0 end
redis.call('HSET', KEYS[1], 'rev', ARGV[4], 'text', ARGV[5])
redis.call('SADD', KEYS[3], ARGV[3])
redis.call('SADD', KEYS[4], ARGV[2])
redis.call('SET', KEYS[2], '1', 'PX', ARGV[1])
return 1`;

/** ARGV 4: revision, 5: text, 6: the revision that it must have. */
export const PUT = `
if redis.call('HGET', KEYS[1], 'rev') ~= ARGV[6] then return 0 end
redis.call('HSET', KEYS[1], 'rev', ARGV[4], 'text', ARGV[5])
redis.call('SET', KEYS[2], '1', 'PX', ARGV[1])
return 1`;

export const REMOVE = `
if redis.call('DEL', KEYS[1]) == 0 then return 0 end
redis.call('SREM', KEYS[3], ARGV[3])
redis.call('SET', KEYS[2], '1', 'PX', ARGV[1])
return 1`;

/** Whatever is there. ARGV 4: revision, 5: text. */
export const FILL = `
redis.call('HSET', KEYS[1], 'rev', ARGV[4], 'text', ARGV[5])
redis.call('SADD', KEYS[3], ARGV[3])
redis.call('SADD', KEYS[4], ARGV[2])
return 1`;
