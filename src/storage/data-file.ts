/** Checks lmdb's data file before lmdb maps it, since a damaged one can kill the process; only reads it. */

import { isUtf8 } from 'node:buffer';
import { closeSync, existsSync, fstatSync, openSync, readSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

/** Where lmdb keeps the data of a folder. */
export function dataFileOf(folder: string): string {
  return join(folder, 'store', 'data.mdb');
}

export type DataFileState =
  | { readonly state: 'none' }
  | { readonly state: 'sound'; readonly pages: number; readonly entries: number }
  | { readonly state: 'damaged'; readonly why: string };

/** How often, and for how many milliseconds, a file is read again that another process wrote to meanwhile. */
const TRIES = 20;
const PAUSE = 30;

/**
 * Reads every page in use. `none` if the folder has no store yet. Rejects if the file can't be read at all. A file that
 * other processes keep writing to counts as sound: they wouldn't be able to if it weren't.
 */
export async function checkDataFile(folder: string): Promise<DataFileState> {
  for (let tries = 1; ; tries++) {
    const found = readDataFile(folder);
    if (found.state !== 'changed') return found;
    if (tries === TRIES) return { state: 'sound', pages: 0, entries: 0 };
    await wait(PAUSE);
  }
}

function readDataFile(folder: string): DataFileState | { readonly state: 'changed' } {
  const path = dataFileOf(folder);
  // lmdb makes the lock file first; alone, it says that the data file was there once.
  if (!existsSync(path)) {
    return existsSync(join(folder, 'store', 'lock.mdb'))
      ? { state: 'damaged', why: 'it is missing' }
      : { state: 'none' };
  }
  const file = openSync(path, 'r');
  try {
    let before: Meta | undefined;
    try {
      before = newestMeta(file);
      return new Walk(file, before).all();
    } catch (cause) {
      if (!(cause instanceof Damage)) throw cause;
      // lmdb reuses pages of two commits ago, so damage is certain only if nothing was committed meanwhile.
      if (before && transactionOf(file) !== before.transaction) return { state: 'changed' };
      return { state: 'damaged', why: cause.message };
    }
  } finally {
    closeSync(file);
  }
}

class Damage extends Error {}

// The format is that of liblmdb 0.9.90 with 64-bit page numbers (mdb.c, "Page structures"): two meta pages, then B-tree
// pages and overflow pages. The newer meta page holds the roots of the list of free pages and of the main tree, whose
// leaves hold the roots of the named ones.

const HEADER = 24;
const META_SIZE = 24 + 2 * 48 + 24;
const MAGIC = 0xbeefc0de;
const VERSION = 2;
const NO_PAGE = 0xffff_ffff_ffff_ffffn;

const BRANCH = 0x01;
const LEAF = 0x02;
const OVERFLOW = 0x04;
const META = 0x08;

const BIG_DATA = 0x01;
const SUB_DATA = 0x02;
const NODE = 8;
const OVERFLOW_REF = 24;

interface Tree {
  readonly depth: number;
  readonly branches: number;
  readonly leaves: number;
  readonly overflows: number;
  readonly entries: number;
  readonly root: bigint;
}
const TREE = 48;

interface Meta {
  readonly pageSize: number;
  readonly free: Tree;
  readonly main: Tree;
  readonly last: number;
  readonly transaction: bigint;
}

function newestMeta(file: number): Meta {
  const { size } = fstatSync(file);
  if (size === 0) throw new Damage('it is empty');
  const first = metaAt(file, 0, 0);
  const second = metaAt(file, first.pageSize, 1);
  if (second.pageSize !== first.pageSize) throw new Damage('its two first pages disagree');
  return first.transaction >= second.transaction ? first : second;
}

function transactionOf(file: number): bigint | undefined {
  try {
    return newestMeta(file).transaction;
  } catch {
    return undefined;
  }
}

function metaAt(file: number, offset: number, number: number): Meta {
  const raw = Buffer.alloc(HEADER + META_SIZE);
  if (readSync(file, raw, 0, raw.length, offset) < raw.length) throw new Damage('it is cut short');
  const flags = raw.readUInt16LE(18);
  const meta = raw.subarray(HEADER);
  const version = meta.readUInt32LE(4) & 0xffff;
  if (!(flags & META) || meta.readUInt32LE(0) !== MAGIC || version !== VERSION)
    throw new Damage(number === 0 ? 'it does not begin as a data file' : 'its second page is damaged');
  const pageSize = meta.readUInt32LE(24);
  if (pageSize < 512 || pageSize > 65_536 || (pageSize & (pageSize - 1)) !== 0)
    throw new Damage('its first page is damaged');
  const transaction = meta.readBigUInt64LE(24 + 2 * TREE + 8);
  // A commit goes to the meta page of its number's parity; a new file has 0 in both.
  if (transaction !== 0n && Number(transaction & 1n) !== number) throw new Damage('its two first pages are damaged');
  return {
    pageSize,
    free: treeIn(meta.subarray(24)),
    main: treeIn(meta.subarray(24 + TREE)),
    last: Number(meta.readBigUInt64LE(24 + 2 * TREE)),
    transaction,
  };
}

function treeIn(raw: Buffer): Tree {
  return {
    depth: raw.readUInt16LE(6),
    branches: Number(raw.readBigUInt64LE(8)),
    leaves: Number(raw.readBigUInt64LE(16)),
    overflows: Number(raw.readBigUInt64LE(24)),
    entries: Number(raw.readBigUInt64LE(32)),
    root: raw.readBigUInt64LE(40),
  };
}

type Order = (a: Buffer, b: Buffer) => number;
const byBytes: Order = (a, b) => Buffer.compare(a, b);
const byNumber: Order = (a, b) => {
  const [one, two] = [a.readBigUInt64LE(0), b.readBigUInt64LE(0)];
  return one < two ? -1 : Number(one > two);
};

/** The trees whose values are texts behind an 8-byte version. */
const TEXTS = ['records', 'values'];
const VERSION_SIZE = 8;

interface Counts {
  branches: number;
  leaves: number;
  overflows: number;
  entries: number;
  previous: Buffer | undefined;
}

interface Terms {
  readonly order: Order;
  entry(key: Buffer, data: Buffer, flags: number): void;
}

/** One reading of all that the newest commit uses. */
class Walk {
  readonly #file: number;
  readonly #meta: Meta;
  readonly #size: number;
  /** Pages seen so far, by number: a page is used once. */
  readonly #used: Uint8Array;
  #entries = 0;

  constructor(file: number, meta: Meta) {
    this.#file = file;
    this.#meta = meta;
    this.#size = fstatSync(file).size;
    // A file may end before the last page if the rest is free, but not by any number.
    const pages = Math.ceil(this.#size / meta.pageSize);
    if (meta.last < 1) throw new Damage('its first pages are damaged');
    this.#used = new Uint8Array(Math.min(meta.last + 1, pages));
  }

  all(): DataFileState {
    const { free, main } = this.#meta;
    const lists: Buffer[] = [];
    this.#tree(free, { order: byNumber, entry: (_key, data) => void lists.push(data) });
    const named: { readonly name: string; readonly tree: Tree }[] = [];
    this.#tree(main, {
      order: byBytes,
      entry: (key, data, flags) => {
        if (flags & SUB_DATA) named.push({ name: key.toString('latin1').replaceAll('\0', ''), tree: treeIn(data) });
      },
    });
    for (const { name, tree } of named) this.#named(name, tree);
    for (const list of lists) this.#freed(list);
    return { state: 'sound', pages: this.#used.length, entries: this.#entries };
  }

  #named(name: string, tree: Tree): void {
    const texts = TEXTS.includes(name);
    this.#tree(tree, {
      order: byBytes,
      entry: (_key, data) => {
        this.#entries++;
        if (texts && !isText(data)) throw new Damage('a text in it is damaged');
      },
    });
  }

  #tree(tree: Tree, terms: Terms): void {
    const counts: Counts = { branches: 0, leaves: 0, overflows: 0, entries: 0, previous: undefined };
    if (tree.root !== NO_PAGE) this.#page(tree.root, tree.depth, counts, terms);
    const agree = (['branches', 'leaves', 'overflows', 'entries'] as const).every((one) => tree[one] === counts[one]);
    if (!agree) throw new Damage('what it holds is not what it counts');
  }

  #page(number: bigint, depth: number, counts: Counts, terms: Terms): void {
    const page = this.#read(number, 1);
    const lower = page.readUInt16LE(20) + HEADER;
    const upper = page.readUInt16LE(22) + HEADER;
    const wanted = depth > 1 ? BRANCH : LEAF;
    const flags = page.readUInt16LE(18);
    if (depth < 1 || flags !== wanted || lower > upper || upper > page.length) throw damageAt(number);
    counts[depth > 1 ? 'branches' : 'leaves']++;
    const nodes = (lower - HEADER) >> 1;
    for (let i = 0; i < nodes; i++) {
      const at = page.readUInt16LE(HEADER + 2 * i) + HEADER;
      if (at < upper || at + NODE > page.length) throw damageAt(number);
      const low = page.readUInt16LE(at) + page.readUInt16LE(at + 2) * 0x10000;
      const nodeFlags = page.readUInt16LE(at + 4);
      const keyEnd = at + NODE + page.readUInt16LE(at + 6);
      if (keyEnd > page.length) throw damageAt(number);
      if (depth > 1) {
        this.#page(BigInt(low) + (BigInt(nodeFlags) << 32n), depth - 1, counts, terms);
        continue;
      }
      const key = page.subarray(at + NODE, keyEnd);
      const { previous } = counts;
      if (terms.order === byNumber && key.length !== 8) throw damageAt(number);
      if (previous && terms.order(previous, key) >= 0) throw damageAt(number);
      counts.previous = key;
      counts.entries++;
      const big = (nodeFlags & BIG_DATA) !== 0;
      if (keyEnd + (big ? OVERFLOW_REF : low) > page.length) throw damageAt(number);
      if ((nodeFlags & SUB_DATA) !== 0 && low !== TREE) throw damageAt(number);
      const data = big
        ? this.#overflow(page.readBigUInt64LE(keyEnd), low, counts)
        : page.subarray(keyEnd, keyEnd + low);
      terms.entry(key, data, nodeFlags);
    }
  }

  #overflow(number: bigint, size: number, counts: Counts): Buffer {
    const pages = Math.floor((HEADER - 1 + size) / this.#meta.pageSize) + 1;
    const read = this.#read(number, pages);
    if (read.readUInt16LE(18) !== OVERFLOW || read.readUInt32LE(20) !== pages) throw damageAt(number);
    counts.overflows += pages;
    return read.subarray(HEADER, HEADER + size);
  }

  /** Pages that the newest commit uses, which carry their own number and that of a commit up to then. */
  #read(number: bigint, pages: number): Buffer {
    const { pageSize, transaction, last } = this.#meta;
    const first = Number(number);
    if (number > BigInt(last) || first < 2 || first + pages - 1 > last) throw damageAt(number);
    if ((first + pages) * pageSize > this.#size) throw new Damage('it is cut short');
    for (let page = first; page < first + pages; page++) this.#use(page);
    const raw = Buffer.allocUnsafe(pages * pageSize);
    if (readSync(this.#file, raw, 0, raw.length, first * pageSize) < raw.length) throw new Damage('it is cut short');
    if (raw.readBigUInt64LE(0) !== number || raw.readBigUInt64LE(8) > transaction) throw damageAt(number);
    return raw;
  }

  #use(page: number): void {
    if (this.#used[page]) throw new Damage(`page ${page} is used twice`);
    this.#used[page] = 1;
  }

  /**
   * A list of free pages: how many numbers follow, then page numbers, or a negative length before the first page of a
   * block; 0 fills gaps (midl.c).
   */
  #freed(list: Buffer): void {
    const damage = new Damage('its list of free pages is damaged');
    if (list.length < 8) throw damage;
    const count = Number(list.readBigUInt64LE(0));
    if ((count + 1) * 8 > list.length) throw damage;
    for (let i = 1; i <= count; i++) {
      const entry = Number(list.readBigInt64LE(i * 8));
      if (entry === 0) continue;
      if (entry < 0 && i === count) throw damage;
      const length = entry < 0 ? -entry : 1;
      const first = entry < 0 ? Number(list.readBigInt64LE(++i * 8)) : entry;
      if (first < 2 || first + length - 1 > this.#meta.last) throw damage;
      for (let page = first; page < first + length; page++) if (page < this.#used.length) this.#use(page);
    }
  }
}

/** A version and UTF-8; JSON has no zero byte. */
function isText(data: Buffer): boolean {
  const text = data.subarray(VERSION_SIZE);
  return data.length >= VERSION_SIZE && isUtf8(text) && !text.includes(0);
}

function damageAt(number: bigint): Damage {
  return new Damage(`page ${number} is damaged`);
}
