/** One ask on its way in, whatever platform it came from. */

import type { Habits } from '../measure/reading.ts';

/** Who asks: never a display name. */
export interface Asker {
  readonly platform: 'terminal' | 'discord' | 'slack' | 'web';
  readonly id: string;
}

export interface Invocation {
  readonly asker: Asker;
  readonly habits: Habits;
  /** The line as typed, command and options. */
  readonly text: string;
}
