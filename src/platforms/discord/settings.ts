/** The settings of a Discord bot, and what is missing for it to start. Read before anything of Discord is loaded. */

/** What whoever runs the bot has configured of Discord; empty texts are not set. */
export interface DiscordConfig {
  readonly token: string;
  /** Set: interactions come by HTTP, signed with this key. */
  readonly publicKey: string;
  /** Where commands are registered, and the one server they are tried in. */
  readonly application: string;
  readonly guild: string;
  readonly shards?: { readonly first: number; readonly last: number; readonly of: number };
  /** Where its REST interface is, if not at its own address: a proxy that keeps many processes to one rate limit. */
  readonly api?: string;
}

/** Whether anything of Discord is configured. */
export function discordIsConfigured({ token, publicKey, application }: DiscordConfig): boolean {
  return [token, publicKey, application].some((given) => given !== '');
}

/** What is missing to start, each as a line; none when it can start. */
export function discordLacks(config: DiscordConfig): readonly string[] {
  const half = config.token === '' && discordIsConfigured(config);
  return half ? ['Discord: set FLOORHAND_DISCORD_TOKEN, or unset the others of Discord'] : [];
}
