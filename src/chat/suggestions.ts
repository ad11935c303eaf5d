/** The last gate before an answer is shown: every line to type or press has been tried, is answered, holds what was typed and no figure that was not; one that fails is left out. */

import { drops, invents, type Typing } from '../input/faithful.ts';
import { factsOf } from '../input/reading.ts';
import type { Action, Problem, Refusal, Reply } from '../reply/reply.ts';
import type { Changed, Codec, KeyValueStore, RecordStore, Store } from '../storage/types.ts';
import type { Command, Outcome, Problems } from './command.ts';

/** A line as it was read when it was tried. */
export interface Tried {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
}

/** What lines are held against. */
interface Request {
  /** What was typed, word for word. */
  readonly text: string;
  /** What was typed, by option, once it was read. */
  readonly typed: ReadonlyMap<string, string>;
  /** Texts of the asker's own, from which a line may be filled. Never rejects. */
  own(): Promise<readonly string[]>;
  /** The line as it is read, where it is answered; why it is unsafe, where it is; undefined where it has problems. Never rejects. */
  tries(line: string): Promise<Tried | Refusal | undefined>;
}

/** More lines than any answer offers; those beyond are not tried, and not shown. */
const MOST_TRIED = 60;

/** Sizes, names and amounts: what a line about the same option must hold. A choice, a pattern or a way is what a line may change. */
const KEPT_KINDS = ['room', 'plank', 'length', 'count', 'percent', 'text'];

/** What is to be done with a project, before whatever it is about. */
const PROJECT_PERMISSION = /^\W*project\s+[a-z]+/i;

/** A number in a list that the answer shows. */
const ORDINAL = /(?<= (?:remove|note|undo) )\d{1,3}$/;

/** Tries lines, each once however often an answer is bettered. */
export class Suggestions {
  readonly #request: Request;
  readonly #known = new Map<string, Promise<boolean>>();
  #unsafe: Refusal | undefined;

  constructor(request: Request) {
    this.#request = request;
  }

  /** The outcome with the lines that passed; a refusal where what was typed, its slips mended, is unsafe to work out. */
  async passed(outcome: Outcome): Promise<Outcome> {
    if ('problems' in outcome) return outcome.again ? outcome : this.#problems(outcome);
    return 'headline' in outcome ? this.#reply(outcome) : outcome;
  }

  async #problems({ problems: [first, ...rest], example, ...others }: Problems): Promise<Outcome> {
    const passed = async <P extends Problem>({ fix, ...problem }: P) =>
      fix !== undefined && (await this.#once(fix, () => this.#mends(fix))) ? { ...problem, fix } : problem;
    const problems = [await passed(first), ...(await Promise.all(rest.map(passed)))] as const;
    if (this.#unsafe) return this.#unsafe;
    const tried = example !== undefined && (await this.#once(example, () => this.#mends(example)));
    return { ...others, problems, ...(tried ? { example } : {}) };
  }

  async #mends(fix: string): Promise<boolean> {
    const { text, tries } = this.#request;
    if (drops(fix, text.replace(PROJECT_PERMISSION, ''), typingOf(text)) || (await this.#invents(fix, [text])))
      return false;
    const tried = await tries(fix);
    if (tried && 'why' in tried) this.#unsafe = tried;
    return tried !== undefined && 'command' in tried;
  }

  async #reply(reply: Reply): Promise<Reply> {
    const passed: Action[] = [];
    for (const action of reply.actions) {
      if (await this.#once(action.ask, () => this.#follows(action.ask, reply))) passed.push(action);
    }
    return passed.length === reply.actions.length ? reply : { ...reply, actions: passed };
  }

  async #follows(line: string, reply: Reply): Promise<boolean> {
    const { text, typed, tries } = this.#request;
    const tried = await tries(line);
    if (!tried || 'why' in tried) return false;
    // A list of what somebody keeps names it: its lines are about nothing else.
    const shown = tried.command.group === 'project' ? [reply.headline, JSON.stringify(reply.blocks)] : [];
    if (await this.#invents(line.replace(ORDINAL, ''), [text, ...shown])) return false;
    // What is next for a project is no other telling of what was typed.
    if (tried.command.group === 'project') return true;
    return ![...typed].some(([option, value]) => {
      const schema = tried.command.options.shape[option];
      const now = tried.optionTexts.get(option);
      if (!schema || now === value || !KEPT_KINDS.includes(factsOf(schema).kind)) return false;
      return drops(now ?? '', value, 'line');
    });
  }

  async #invents(line: string, texts: readonly string[]): Promise<boolean> {
    return invents(line, texts) && invents(line, [...texts, ...(await this.#request.own())]);
  }

  #once(line: string, passes: () => Promise<boolean>): Promise<boolean> {
    const known = this.#known.get(line);
    if (known) return known;
    const passing = this.#known.size < MOST_TRIED ? passes() : Promise.resolve(false);
    this.#known.set(line, passing);
    return passing;
  }
}

/** A text with options, or that tells something to a project, is a line: every word of it counts. */
function typingOf(text: string): Typing {
  return /(?<![\p{L}\d])\p{L}[\p{L}-]+\s*:|^\W*project /iu.test(text) ? 'line' : 'sentence';
}

// A request run for the sake of its problems alone: it ends where what takes long would begin, and nothing of
// it is kept.

/** Everything that was typed has been read and goes together: what takes long would begin here. */
export class Reached extends Error {
  override readonly name = 'Reached';
}

/** The same store to whoever reads it; what is written is seen by them alone, and is gone with them. */
export function unwritten(store: Store): Store {
  return { kept: keptOver(store.kept), shelf: (kind, codec) => shelfOver(store.shelf(kind, codec), codec) };
}

const GONE = Symbol('gone');

function keptOver(kept: KeyValueStore): KeyValueStore {
  const own = new Map<string, unknown>();
  const get = async (key: string): Promise<unknown> => {
    if (!own.has(key)) return kept.get(key);
    const value = own.get(key);
    return value === GONE ? undefined : value;
  };
  return {
    get,
    set: async (key, value) => void own.set(key, value),
    async delete(key) {
      const there = (await get(key)) !== undefined;
      own.set(key, GONE);
      return there;
    },
    async claim(key) {
      if ((await get(key)) !== undefined) return false;
      own.set(key, true);
      return true;
    },
  };
}

function shelfOver<T>(shelf: RecordStore<T>, codec: Codec<T>): RecordStore<T> {
  const own = new Map<string, unknown>();
  const load = async (id: string): Promise<T | undefined> => {
    if (!own.has(id)) return shelf.load(id);
    const raw = own.get(id);
    return raw === GONE ? undefined : codec.read(raw);
  };
  return {
    load,
    async create(id, value) {
      if ((await load(id)) !== undefined) return false;
      own.set(id, codec.write(value));
      return true;
    },
    async change<R>(id: string, change: (value: T) => Changed<T, R>): Promise<R | undefined> {
      const value = await load(id);
      if (value === undefined) return undefined;
      const { put, result } = change(value);
      if (put !== undefined) own.set(id, codec.write(put));
      return result;
    },
    async remove(id) {
      const there = (await load(id)) !== undefined;
      own.set(id, GONE);
      return there;
    },
    ids: () => shelf.ids(),
  };
}

/** The same store, each thing read from it once: for several who read the same, one after the other. */
export function readOnce(store: Store): Store {
  const { kept } = store;
  const shelves = new Map<string, RecordStore<unknown>>();
  return {
    kept: {
      get: once((key) => kept.get(key)),
      set: (key, value, milliseconds) => kept.set(key, value, milliseconds),
      delete: (key) => kept.delete(key),
      claim: (key, milliseconds) => kept.claim(key, milliseconds),
    },
    shelf<T>(kind: string, codec: Codec<T>): RecordStore<T> {
      const before = shelves.get(kind);
      if (before) return before as RecordStore<T>;
      const shelf = store.shelf(kind, codec);
      const reads: RecordStore<T> = {
        load: once((id) => shelf.load(id)),
        create: (id, value) => shelf.create(id, value),
        change: (id, change) => shelf.change(id, change),
        remove: (id) => shelf.remove(id),
        ids: () => shelf.ids(),
      };
      shelves.set(kind, reads as RecordStore<unknown>);
      return reads;
    },
  };
}

function once<T>(read: (key: string) => Promise<T>): (key: string) => Promise<T> {
  const known = new Map<string, Promise<T>>();
  return (key) => {
    const before = known.get(key) ?? read(key);
    known.set(key, before);
    return before;
  };
}

/** Every text in something kept, but for ids. */
export function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => (['id', 'by', 'via'].includes(key) ? [] : textsIn(one)));
}
