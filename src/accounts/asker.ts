/** The user of a request: an account on a platform, and its key in the store. */

import type { PlatformName } from '../text/platform-names.ts';

/** Never a display name. */
export interface Asker {
  readonly platform: PlatformName;
  /** The platform's account id. */
  readonly id: string;
  /** The workspace id, if account ids are only unique within one. */
  readonly workspace?: string;
}

/** One key per account, wherever the request comes from. */
export function accountKey({ platform, workspace, id }: Asker): string {
  return workspace === undefined ? `${platform}:${id}` : `${platform}:${workspace}:${id}`;
}
