/** Which chats were told of, and what is lacking for them, known before anything is opened. */

import { sealOf } from '../platforms/slack/install.ts';
import { slackIsTold, slackLacks } from '../platforms/slack/settings.ts';
import type { Config } from './config.ts';

type Told = Pick<Config, 'slack' | 'discord'>;

/** Whether anything of a chat was told: then it is the bot that runs, and not the terminal. */
export function chatsAreTold({ slack, discord }: Told): boolean {
  const { token, publicKey, application } = discord;
  return slackIsTold(slack) || [token, publicKey, application].some((told) => told !== '');
}

/** What keeps the chats that were told of from starting, a line each; none where nothing does. */
export function chatsLack({ slack, discord }: Told): readonly string[] {
  const half = discord.token === '' && (discord.publicKey !== '' || discord.application !== '');
  const flaw = slackIsTold(slack) ? keyFlaw(slack.key) : undefined;
  return [
    ...(half ? ['Discord: set FLOORHAND_DISCORD_TOKEN, or unset the others of Discord'] : []),
    ...(slackIsTold(slack) ? slackLacks(slack).map((lack) => `Slack: set ${lack}`) : []),
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
