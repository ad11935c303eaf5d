/** Which chats are configured and what they still lack, known before anything is opened. */

import { sealOf } from '../platforms/slack/install.ts';
import { slackIsConfigured, slackLacks } from '../platforms/slack/settings.ts';
import type { Config } from './config.ts';

type ChatConfig = Pick<Config, 'slack' | 'discord'>;

/** Whether anything of a chat was told: then it is the bot that runs, and not the terminal. */
export function chatsAreConfigured({ slack, discord }: ChatConfig): boolean {
  const { token, publicKey, application } = discord;
  return slackIsConfigured(slack) || [token, publicKey, application].some((given) => given !== '');
}

/** What keeps the chats that were told of from starting, a line each; none where nothing does. */
export function chatsLack({ slack, discord }: ChatConfig): readonly string[] {
  const half = discord.token === '' && (discord.publicKey !== '' || discord.application !== '');
  const flaw = slackIsConfigured(slack) ? keyFlaw(slack.key) : undefined;
  return [
    ...(half ? ['Discord: set FLOORHAND_DISCORD_TOKEN, or unset the others of Discord'] : []),
    ...(slackIsConfigured(slack) ? slackLacks(slack).map((lack) => `Slack: set ${lack}`) : []),
    ...(flaw === undefined ? [] : [`Slack: ${flaw}; set it to what this prints: openssl rand -base64 32`]),
  ];
}

/** What is wrong with the key, if one was told. */
export function keyFlaw(key: string): string | undefined {
  if (key === '') return undefined;
  try {
    sealOf(key);
    return undefined;
  } catch {
    return 'FLOORHAND_KEY is no 32 bytes in base64';
  }
}
