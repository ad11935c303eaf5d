/** Which chats are configured, and what they still lack, known before anything is opened. */

import type { Platform, PlatformConfig } from '../platforms/platform.ts';
import { platforms, platformsThat } from './platforms.ts';

/** If any chat is configured, the bot runs instead of the terminal. */
export function chatsAreConfigured(config: PlatformConfig, among: readonly Platform[] = platforms): boolean {
  return platformsThat('configured', among).some(({ settings }) => settings.configured(config));
}

/** What keeps the configured chats from starting, one line each. */
export function chatsLack(config: PlatformConfig, among: readonly Platform[] = platforms): readonly string[] {
  return platformsThat('configured', among).flatMap(({ settings }) => settings.lacks(config));
}
