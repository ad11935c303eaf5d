/** One ask on its way in, whatever platform it came from. */

import type { Asker } from '../accounts/asker.ts';
import type { Habits } from '../input/reading.ts';

export interface Invocation {
  readonly asker: Asker;
  readonly habits: Habits;
  /** The line as typed, command and options; or somebody's message. */
  readonly text: string;
  /** `message`: text that was not typed for us, read as a sentence whatever it begins with. */
  readonly written?: 'line' | 'message';
  /** The channel or thread that it is asked in, or which run of a terminal: what is one conversation. */
  readonly place?: string;
  /** The server or workspace that it is asked on, where there is one. */
  readonly server?: string;
}
