/** What is stored and how: records with a revision, plain values, and what can go wrong with either. */

/** What is kept: plain values, and shelves of records. */
export interface Store {
  readonly kept: KeyValueStore;
  shelf<T>(kind: string, codec: Codec<T>): RecordStore<T>;
}

/** A record as it is written and read. */
export interface Codec<T> {
  /** The record, brought up to the version of today. Throws RecordDamaged or RecordTooNew. */
  read(raw: unknown): T;
  write(value: T): unknown;
}

/** Plain values by key, each for as long as it is told to live: kept answers, drafts, what was seen already. */
export interface KeyValueStore {
  /** The value, or undefined when there is none or its time is over. */
  get(key: string): Promise<unknown>;
  /** Keeps a JSON value, in place of the one before; `milliseconds` is how long, for good without it. */
  set(key: string, value: unknown, milliseconds?: number): Promise<void>;
  /** Whether there was such a value. */
  delete(key: string): Promise<boolean>;
  /** Keeps a value only where there is none: true for exactly one of all who try, in whatever process. */
  claim(key: string, milliseconds: number): Promise<boolean>;
}

/** What a change comes to: the value to put in place of the one loaded (nothing is put without it), and what to tell. */
export interface Changed<T, R> {
  readonly put?: T;
  readonly result: R;
}

/** Records of one kind, each with a revision: a change is put only on the revision it was made of, and else made again. */
export interface RecordStore<T> {
  load(id: string): Promise<T | undefined>;
  /** False when the id is taken, and then nothing is changed. */
  create(id: string, value: T): Promise<boolean>;
  /** Load, pure change, conditional put, again if another came first; undefined when there is no such record. Acknowledged once durable. */
  change<R>(id: string, change: (value: T) => Changed<T, R>): Promise<R | undefined>;
  /** Whether there was such a record. */
  remove(id: string): Promise<boolean>;
  /** Every id, in no order that means anything. */
  ids(): AsyncIterable<string>;
}

/** The store does not answer: nothing was acknowledged, and the asker may try again. */
export class Outage extends Error {
  override readonly name = 'Outage';
}

/** A record that cannot be read: set aside for whoever runs the bot, and no hindrance to others. */
export class RecordDamaged extends Error {
  override readonly name = 'RecordDamaged';
}

/** A record written by a newer version than this one: refused, untouched. */
export class RecordTooNew extends Error {
  override readonly name = 'RecordTooNew';
}

/** Whose asks are counted together: one person's, and everybody's on a server. */
export interface Asking {
  readonly person: string;
  readonly server?: string;
}

/** `again`: milliseconds until they may; 0 when they may now. `everybody`: it is the server's asks that are too many. */
export interface Allowed {
  readonly again: number;
  readonly everybody: boolean;
}
