/** The last check before an answer is shown: every suggested line is tried, and dropped unless it gets an answer, keeps what was typed and adds no number. */

import { drops, invents, type Typing } from '../input/faithful.ts';
import { factsOf } from '../input/reading.ts';
import type { Action, Problem, Refusal, Reply } from '../reply/reply.ts';
import type { Changed, Codec, KeyValueStore, RecordStore, Store } from '../storage/types.ts';
import type { Command, Outcome, Problems } from './command.ts';

/** A line as it was read when tried. */
export interface Tried {
  readonly command: Command;
  readonly optionTexts: ReadonlyMap<string, string>;
}

/** What the lines are checked against. */
interface Request {
  /** What was typed, word for word. */
  readonly text: string;
  /** What was typed, by option, once it was read. */
  readonly typed: ReadonlyMap<string, string>;
  /** The user's own texts, from which a line may be filled. Never rejects. */
  own(): Promise<readonly string[]>;
  /**
   * The line as it is read if it gets an answer; the refusal if it is unsafe; undefined if it has problems. Never
   * rejects.
   */
  tries(line: string): Promise<Tried | Refusal | undefined>;
}

/** No answer offers more; further lines are neither tried nor shown. */
const MOST_TRIED = 60;

/**
 * Sizes, names and amounts, which a line about the same option must keep. It may change a choice, a pattern or a
 * direction.
 */
const KEPT_KINDS = ['room', 'plank', 'length', 'count', 'percent', 'text'];

/** The words that say what to do with a project; options follow them. */
const PROJECT_PERMISSION = /^\W*project\s+[a-z]+/i;

/** A number in a list that the answer shows. */
const ORDINAL = /(?<= (?:remove|note|undo) )\d{1,3}$/;

/** Tries each line once, however often the answer is improved. */
export class Suggestions {
  readonly #request: Request;
  readonly #known = new Map<string, Promise<boolean>>();
  #unsafe: Refusal | undefined;

  constructor(request: Request) {
    this.#request = request;
  }

  /** The outcome with the lines that passed; a refusal if the corrected input is unsafe to compute. */
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
    // A saved list names its own items; its lines are about nothing else.
    const shown = tried.command.group === 'project' ? [reply.headline, JSON.stringify(reply.blocks)] : [];
    if (await this.#invents(line.replace(ORDINAL, ''), [text, ...shown])) return false;
    // The next step for a project isn't a variant of what was typed.
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

/** A text with options, or one for a project, is a command line: every word of it counts. */
function typingOf(text: string): Typing {
  return /(?<![\p{L}\d])\p{L}[\p{L}-]+\s*:|^\W*project /iu.test(text) ? 'line' : 'sentence';
}

// Trial runs: a request runs only for its problems, ends before anything slow, and saves nothing.

/** Thrown where a trial run ends: all input is read and consistent. */
export class Reached extends Error {
  override readonly name = 'Reached';
}

/** A store whose writes are visible only to this caller and vanish with it. */
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

/** A store that reads each thing once, for several readers in a row. */
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

/** Every text in saved data except ids. */
export function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => (['id', 'by', 'via'].includes(key) ? [] : textsIn(one)));
}
