/** What the pipeline and the platforms need from outside, handed in by main. */

import type { Asker } from '../accounts/asker.ts';
import type { Preferences } from '../input/reading.ts';
import type { Allowed, Asking, Store } from '../storage/types.ts';
import type { PlatformName } from '../text/platform-names.ts';
import type { CommandTexts } from './command.ts';

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
  requested?(ended: RequestMetrics): void;
  /** Whether somebody may ask as much as `weight` more just now; without it everybody may. Never rejects, and waits for no store that does not answer. */
  allowed?(who: Asking, weight: number): Promise<Allowed>;
}

/** An ask that has ended, with nothing in it that anybody typed or is called. */
export interface RequestMetrics {
  readonly platform: PlatformName;
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

// One ask on its way in, whatever platform it came from.

export interface Request {
  readonly asker: Asker;
  readonly preferences: Preferences;
  /** The line as typed, command and options; or somebody's message. */
  readonly text: string;
  /** A filled form or menu, whose values are read as they are: `text` then only says them, and is not taken apart. */
  readonly given?: CommandTexts;
  /** `message`: text that was not typed for us, read as a sentence whatever it begins with. */
  readonly written?: 'line' | 'message';
  /** The channel or thread that it is asked in, or which run of a terminal: what is one conversation. */
  readonly place?: string;
  /** The server or workspace that it is asked on, where there is one. */
  readonly server?: string;
}
