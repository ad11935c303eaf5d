/** The workspaces that installed the app: their tokens, sealed in the store, gone when a workspace takes the app off. */

import type { Installation, InstallationQuery, InstallationStore } from '@slack/oauth';
import { z } from 'zod';
import type { Kept } from '../../storage/types.ts';
import type { Seal } from './seal.ts';

const record = z.object({ version: z.literal(1), at: z.number(), sealed: z.string() });

/** The installations of every workspace. `forget` is told when Slack says that something ended, in ms since 1970. */
export interface Installations extends InstallationStore {
  storeInstallation<A extends 'v1' | 'v2'>(installation: Installation<A, boolean>): Promise<void>;
  fetchInstallation(query: InstallationQuery<boolean>): Promise<Installation<'v1' | 'v2', boolean>>;
  deleteInstallation(query: InstallationQuery<boolean>): Promise<void>;
  /** Deletes the tokens of a workspace, unless it has installed the app again since. */
  forget(query: InstallationQuery<boolean>, ended: number): Promise<void>;
}

export function installationsIn(kept: Kept, seal: Seal, now: () => number): Installations {
  const put = async (key: string, installation: Installation<'v1' | 'v2', boolean>, at: number): Promise<void> => {
    const sealed = seal.seal(JSON.stringify(installation), key);
    await kept.set(key, { version: 1, at, sealed } satisfies z.infer<typeof record>);
  };
  return {
    async storeInstallation(installation) {
      const { isEnterpriseInstall, enterprise, team } = installation;
      await put(
        installationKey({
          isEnterpriseInstall: isEnterpriseInstall === true,
          enterpriseId: enterprise?.id,
          teamId: team?.id,
        }),
        installation,
        now(),
      );
    },
    async fetchInstallation(query) {
      const key = installationKey(query);
      const found = await kept.get(key);
      if (found === undefined) throw new Error('the app is not installed there');
      const { sealed, at } = record.parse(found);
      const { text, older } = seal.open(sealed, key);
      const installation = JSON.parse(text) as Installation<'v1' | 'v2', boolean>;
      // Sealed anew with the key in use, so that an older key can be given up.
      if (older) await put(key, installation, at);
      return installation;
    },
    async deleteInstallation(query) {
      await kept.delete(installationKey(query));
    },
    async forget(query, ended) {
      const found = await kept.get(installationKey(query));
      // Slack tells the second in which it ended, and may tell it late.
      const again = found !== undefined && record.parse(found).at > ended + 999;
      if (!again) await kept.delete(installationKey(query));
    },
  };
}

/** An organisation's own installation is kept under it, every other under its workspace. */
function installationKey(query: {
  readonly isEnterpriseInstall: boolean;
  readonly enterpriseId?: string | undefined;
  readonly teamId?: string | undefined;
}): string {
  const id = query.isEnterpriseInstall ? query.enterpriseId : query.teamId;
  if (!id) throw new Error('an installation of no workspace');
  return `slack:install:${id}`;
}
