/** What the pipeline and the platforms need from outside; passed in by main. */

import type { Asker } from '../accounts/records.ts';
import type { Preferences } from '../input/reading.ts';
import type { Allowed, Asking, Store } from '../storage/types.ts';
import type { PlatformName } from '../text/answer-text.ts';
import type { CommandTexts, Understood } from './command.ts';

export interface Ports {
  /** Reports a fault to the operator: the reference the user was given, and the cause. */
  fault(reference: string, cause: unknown): void;
  /** Where projects and answers are stored; without it every request stands alone. */
  readonly store?: Store;
  /** Milliseconds since 1970; the system clock if absent. */
  now?(): number;
  /** Base address of the share pages, without a trailing slash; undefined if there are none. */
  address?(): string | undefined;
  /** Does work after the answer is on its way and before shutdown; without it the answer waits for the work. */
  later?(work: () => Promise<unknown>): void;
  /** Called after every request. */
  requested?(ended: RequestMetrics): void;
  /**
   * Whether this person may send a request of this weight now; without it everyone may. Never rejects, and doesn't wait
   * for a store that doesn't respond.
   */
  allowed?(who: Asking, weight: number): Promise<Allowed>;
}

/**
 * `assumed`: under an assumption; `question`: one thing asked back; `other`: not about floors, small talk too; `mistaken`:
 * the answer to “That’s wrong”.
 */
export type AnswerKind = 'answer' | 'assumed' | 'estimate' | 'question' | 'handbook' | 'hazard' | 'other' | 'mistaken';

/** A finished request, without anything anybody typed and without names. */
export interface RequestMetrics {
  readonly platform: PlatformName;
  /** The full name; absent if the request could not be read. */
  readonly command?: string;
  /** `limited`: to be sent again later; `none`: nobody waited for the answer. */
  readonly outcome: 'reply' | 'problem' | 'limited' | 'refusal' | 'fault' | 'outage' | 'none';
  /** What kind of answer it got; absent where it got none. */
  readonly answered?: AnswerKind;
  /** Milliseconds to the first and to the last answer. */
  readonly first: number;
  readonly last: number;
  /** Total milliseconds its work waited for worker threads. */
  readonly wait: number;
}

export interface Request {
  readonly asker: Asker;
  readonly preferences: Preferences;
  /** The line as typed, or someone's message. */
  readonly text: string;
  /** A filled form or menu, whose values are read as they are; `text` is then only for display. */
  readonly given?: CommandTexts;
  /** “That’s wrong” was pressed: how the answer's request was understood. */
  readonly mistaken?: Understood;
  /** `message`: text that wasn't typed for the bot; read as a sentence whatever it starts with. */
  readonly written?: 'line' | 'message';
  /** What counts as one conversation: the channel, the thread, or the run of a terminal. */
  readonly place?: string;
  /** The server or workspace, if there is one. */
  readonly server?: string;
  /** Whether everybody in a channel reads the answer: the asker's project then fills nothing by itself. */
  readonly open?: boolean;
}

/** Work that no answer waits for: started once the answer is on its way, finished before shutdown. */
interface Late {
  later(work: () => Promise<unknown>): void;
  /** Resolves when all of it is done. */
  done(): Promise<void>;
}

export function lateWork(): Late {
  const begun = new Set<Promise<unknown>>();
  return {
    later(work) {
      const done = new Promise((resolve) => setImmediate(resolve)).then(work).finally(() => begun.delete(done));
      begun.add(done);
    },
    done: async () => void (await Promise.all(begun)),
  };
}
