/** Which chats are configured, and what is lacking for them, known before anything is opened. */

import type { Platform, PlatformConfig } from '../platforms/platform.ts';
import { platforms, platformsThat } from './platforms.ts';

/** Whether anything of a chat is configured: then it is the bot that runs, and not the terminal. */
export function chatsAreConfigured(config: PlatformConfig, among: readonly Platform[] = platforms): boolean {
  return platformsThat('configured', among).some(({ settings }) => settings.configured(config));
}

/** What keeps the chats that are configured from starting, a line each; none where nothing does. */
export function chatsLack(config: PlatformConfig, among: readonly Platform[] = platforms): readonly string[] {
  return platformsThat('configured', among).flatMap(({ settings }) => settings.lacks(config));
}
