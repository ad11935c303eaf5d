/** Who asks: an account on a platform, and its key in the store. */

import type { PlatformName } from '../text/platform-names.ts';

/** Who asks: never a display name. */
export interface Asker {
  readonly platform: PlatformName;
  /** The platform's id of the account. */
  readonly id: string;
  /** Where account ids are only unique within a workspace: that workspace's id. */
  readonly workspace?: string;
}

/** One key for an account, the same wherever it asks. */
export function accountKey({ platform, workspace, id }: Asker): string {
  return workspace === undefined ? `${platform}:${id}` : `${platform}:${workspace}:${id}`;
}
