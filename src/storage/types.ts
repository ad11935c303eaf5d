/** Storage interfaces: records with revisions, plain values, and the errors of either. */

export interface Store {
  readonly kept: KeyValueStore;
  shelf<T>(kind: string, codec: Codec<T>): RecordStore<T>;
}

export interface Codec<T> {
  /** The record, migrated to the current version. Throws RecordDamaged or RecordTooNew. */
  read(raw: unknown): T;
  write(value: T): unknown;
}

/** Plain values by key, each with an optional expiry: saved answers, drafts, what was already seen. */
export interface KeyValueStore {
  /** The value; undefined if there is none or it has expired. */
  get(key: string): Promise<unknown>;
  /** Stores a JSON value, replacing any previous one; without `milliseconds` it never expires. */
  set(key: string, value: unknown, milliseconds?: number): Promise<void>;
  /** Returns whether there was such a value. */
  delete(key: string): Promise<boolean>;
  /** Stores a value only if there is none: true for exactly one of all callers, in any process. */
  claim(key: string, milliseconds: number): Promise<boolean>;
}

/**
 * The outcome of a change: the value to write instead of the loaded one (nothing is written without it), and the result
 * to return.
 */
export interface Changed<T, R> {
  readonly put?: T;
  readonly result: R;
}

/**
 * Records of one kind with optimistic locking: a change is written only if the revision it was based on still holds,
 * and otherwise made again.
 */
export interface RecordStore<T> {
  load(id: string): Promise<T | undefined>;
  /** False if the id is taken; then nothing changes. */
  create(id: string, value: T): Promise<boolean>;
  /**
   * Loads, applies a pure change, and writes conditionally, repeating if another write came first. Undefined if there
   * is no such record. Resolves once durable.
   */
  change<R>(id: string, change: (value: T) => Changed<T, R>): Promise<R | undefined>;
  /** Returns whether there was such a record. */
  remove(id: string): Promise<boolean>;
  /** Every id, in no particular order. */
  ids(): AsyncIterable<string>;
}

/** The store doesn't answer. Nothing was acknowledged, and the user may try again. */
export class Outage extends Error {
  override readonly name = 'Outage';
}

/** The store can't be used until somebody does what the message says; trying again doesn't help. */
export class StoreUnusable extends Outage {}

/** An unreadable record: copied aside for the operator, without affecting others. */
export class RecordDamaged extends Error {
  override readonly name = 'RecordDamaged';
}

/** A record written by a newer version than this one: refused and left untouched. */
export class RecordTooNew extends Error {
  override readonly name = 'RecordTooNew';
}

/** Whose requests are counted together: one person's, or everyone's on a server. */
export interface Asking {
  readonly person: string;
  readonly server?: string;
}

/**
 * `again`: milliseconds until the next request is allowed; 0 if it is allowed now. `everybody`: it is the server's
 * limit that was reached.
 */
export interface Allowed {
  readonly again: number;
  readonly everybody: boolean;
}
