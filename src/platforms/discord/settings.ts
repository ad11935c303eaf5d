/** The settings of a Discord bot, and what is missing for it to start. Read before anything of Discord is loaded. */

import type { DiscordConfig } from '../platform.ts';

/** Whether anything of Discord is configured. */
export function discordIsConfigured({ token, publicKey, application }: DiscordConfig): boolean {
  return [token, publicKey, application].some((given) => given !== '');
}

/** What is missing to start, each as a line; none when it can start. */
export function discordLacks(config: DiscordConfig): readonly string[] {
  const half = config.token === '' && discordIsConfigured(config);
  return half ? ['Discord: set FLOORHAND_DISCORD_TOKEN, or unset the others of Discord'] : [];
}
