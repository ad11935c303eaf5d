/** What the pipeline and the platforms need from outside, handed in by main. */

export interface Ports {
  /** Tells whoever runs the bot of a fault: the short reference the asker was given, and the cause. */
  fault(reference: string, cause: unknown): void;
  /** Where projects and answers are kept; without it every ask stands alone. */
  readonly store?: Store;
  /** Milliseconds since 1970; the machine's clock without it. */
  now?(): number;
  /** The address that share pages are reached by, without a slash at its end; none where they are not. */
  address?(): string | undefined;
  /** Does work that an answer need not wait for once the answer is on its way, and before the end; without it the answer waits. */
  later?(work: () => Promise<unknown>): void;
  /** Told of every ask once it has ended. */
  asked?(ended: AskEnded): void;
  /** Whether somebody may ask as much as `weight` more just now; without it everybody may. Never rejects, and waits for no store that does not answer. */
  allowed?(who: Asking, weight: number): Promise<Allowed>;
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

/** An ask that has ended, with nothing in it that anybody typed or is called. */
export interface AskEnded {
  readonly platform: 'terminal' | 'discord' | 'slack' | 'web';
  /** The command's full name; none where the ask could not be read. */
  readonly command?: string;
  /** What the last answer was; `limited` where it is to be asked again later, `none` where nobody waited for one. */
  readonly outcome: 'reply' | 'problem' | 'limited' | 'refusal' | 'fault' | 'outage' | 'none';
  /** Milliseconds to the first and to the last answer. */
  readonly first: number;
  readonly last: number;
  /** Milliseconds that its work waited for worker threads, in all. */
  readonly wait: number;
}

/** What is kept: plain values, and shelves of records. */
export interface Store {
  readonly kept: Kept;
  shelf<T>(kind: string, codec: Codec<T>): Shelf<T>;
}

/** A record as it is written and read. */
export interface Codec<T> {
  /** The record, brought up to the version of today. Throws RecordDamaged or RecordTooNew. */
  read(raw: unknown): T;
  write(value: T): unknown;
}

/** Plain values by key, each for as long as it is told to live: kept answers, drafts, what was seen already. */
export interface Kept {
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
export interface Shelf<T> {
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
