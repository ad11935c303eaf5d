/** One ask on its way in, whatever platform it came from. */

import type { Habits } from '../measure/reading.ts';

/** Who asks: never a display name. */
export interface Asker {
  readonly platform: 'terminal' | 'discord' | 'slack' | 'web';
  /** The platform's id of the account. */
  readonly id: string;
  /** Where account ids are only unique within a workspace: that workspace's id. */
  readonly workspace?: string;
}

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

/** One key for an account, the same wherever it asks. */
export function accountKey({ platform, workspace, id }: Asker): string {
  return workspace === undefined ? `${platform}:${id}` : `${platform}:${workspace}:${id}`;
}
