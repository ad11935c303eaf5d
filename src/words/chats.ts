/** The words to whoever starts the bot in the chats. */

export const CHATS = {
  listening: (host: string, port: number) => `floorhand answers; HTTP at ${host}:${port}.`,
  connected: 'floorhand is connected and answers.',
} as const;
