/** The list of platforms, and which are configured. Nothing of a platform is loaded before it starts. */

import { discordIsConfigured, discordLacks } from '../platforms/discord/settings.ts';
import type { Platform, PlatformConfig } from '../platforms/platform.ts';
import { slackConfigLacks, slackIsConfigured } from '../platforms/slack/settings.ts';

const slack: Platform = {
  name: 'slack',
  runs: 'configured',
  settings: {
    configured: ({ slack: config }) => slackIsConfigured(config),
    lacks: ({ slack: config }) => slackConfigLacks(config),
  },
  start: async (context) => (await import('../platforms/slack/start.ts')).connectSlack(context),
  render: async (answer, id) => (await import('../platforms/slack/render.ts')).render(answer, { id }),
  // Ids are unique within a workspace, or within the organization if the app is installed there.
  accountPattern: /^slack:(?:[TE][A-Z0-9]+:)?[UW][A-Z0-9]+$/,
};

const discord: Platform = {
  name: 'discord',
  runs: 'configured',
  settings: {
    configured: ({ discord: config }) => discordIsConfigured(config),
    lacks: ({ discord: config }) => discordLacks(config),
  },
  start: async (context) => (await import('../platforms/discord/start.ts')).connectDiscord(context),
  render: async (answer) => (await import('../platforms/discord/render.ts')).render(answer),
  accountPattern: /^discord:\d{1,20}$/,
};

const READY: Platform['settings'] = { configured: () => true, lacks: () => [] };

const web: Platform = {
  name: 'web',
  runs: 'beside',
  settings: READY,
  start: async (context) => (await import('../platforms/web/start.ts')).openPage(context),
  render: async (answer, id) => [`${await (await import('../platforms/web/render.ts')).render(answer, id)}`],
  // The hash of a link's token; the link itself is never stored.
  accountPattern: /^web:[0-9a-f]{64}$/,
};

const terminal: Platform = {
  name: 'terminal',
  runs: 'alone',
  settings: READY,
  start: async (context) => (await import('../platforms/terminal/start.ts')).openTerminal(context),
  render: async (answer) => {
    const { COLUMNS, render } = await import('../platforms/terminal/render.ts');
    return [render(answer, { width: COLUMNS, colour: false })];
  },
  accountPattern: /^terminal:local$/,
};

/** In the order they start. */
export const platforms: readonly Platform[] = [discord, slack, web, terminal];

export function platformsThat(run: Platform['runs'], among: readonly Platform[] = platforms): readonly Platform[] {
  return among.filter(({ runs }) => runs === run);
}

/** If any chat is configured, the bot runs instead of the terminal. */
export function chatsAreConfigured(config: PlatformConfig, among: readonly Platform[] = platforms): boolean {
  return platformsThat('configured', among).some(({ settings }) => settings.configured(config));
}

/** What keeps the configured chats from starting, one line each. */
export function chatsLack(config: PlatformConfig, among: readonly Platform[] = platforms): readonly string[] {
  return platformsThat('configured', among).flatMap(({ settings }) => settings.lacks(config));
}
