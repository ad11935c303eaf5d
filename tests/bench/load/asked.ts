/** One ask as the one who asked sees it: when it was taken, what was shown and when. */

import { type Said, saidIn } from './said.ts';

/** Somebody in a chat. */
export interface Person {
  readonly chat: 'discord' | 'slack';
  readonly id: string;
  /** Whether they keep a project. */
  readonly keeps: boolean;
}

/** An ask under way. Times are milliseconds since it was sent. */
export interface AnsweredRequest {
  /** When it was sent, by performance.now(). */
  readonly since: number;
  readonly person: Person;
  readonly line: string;
  /** Whether the platform knows that the bot has it: what it then does not answer is left in silence. */
  taken: number | undefined;
  /** The first answer, if there was one by now. */
  first: number | undefined;
  /** The latest. */
  last: number | undefined;
  /** The words of the latest answer. */
  said: Said;
  /** Those before it. */
  readonly before: Said[];
  /** Why nobody took it: a status, or that nobody could be reached. */
  refused: string | undefined;
}

/** Keeps asks by what their answers come with, and tells when all is quiet. */
export class Asking {
  readonly #open = new Map<string, { requested: AnsweredRequest; wake: () => void }>();
  #heard = performance.now();

  /** Begins an ask; `key` is what its answers come with. */
  begin(
    key: string,
    person: Person,
    line: string,
  ): { readonly requested: AnsweredRequest; readonly answered: Promise<void> } {
    const requested: AnsweredRequest = {
      since: performance.now(),
      person,
      line,
      taken: undefined,
      first: undefined,
      last: undefined,
      said: { lines: [], pictures: [] },
      before: [],
      refused: undefined,
    };
    let wake: () => void = () => {};
    const answered = new Promise<void>((resolve) => {
      wake = resolve;
    });
    this.#open.set(key, { requested, wake });
    return { requested, answered };
  }

  /** The platform knows that the bot has it. */
  taken(key: string): void {
    const one = this.#open.get(key);
    if (one) one.requested.taken ??= performance.now() - one.requested.since;
  }

  refused(key: string, why: string): void {
    const one = this.#open.get(key);
    if (!one) return;
    one.requested.refused = why;
    one.wake();
  }

  /** An answer came. */
  heard(key: string, body: unknown): void {
    const one = this.#open.get(key);
    if (!one) return;
    this.#heard = performance.now();
    const { requested } = one;
    const late = this.#heard - requested.since;
    requested.taken ??= late;
    if (requested.first !== undefined) requested.before.push(requested.said);
    requested.first ??= late;
    requested.last = late;
    requested.said = saidIn(body);
    // The answer to the bot goes out before another ask does.
    setImmediate(one.wake);
  }

  /** Something came that is an answer only where there is none yet. */
  heardFirst(key: string, body: unknown): void {
    if (this.#open.get(key)?.requested.first === undefined) this.heard(key, body);
  }

  /** Resolves when nothing was heard for so many milliseconds; answers that come later are not looked at. */
  async quiet(milliseconds: number): Promise<void> {
    this.#heard = performance.now();
    for (;;) {
      const left = this.#heard + milliseconds - performance.now();
      if (left <= 0) break;
      await new Promise((resolve) => setTimeout(resolve, left));
    }
    this.#open.clear();
  }
}
