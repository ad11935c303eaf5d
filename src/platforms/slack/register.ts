/** The app's manifest, made from the commands: what it is called, what it listens to, and no more rights than it uses. */

import type { Command } from '../../chat/command.ts';
import { fullName, listed } from '../../input/command-shape.ts';
import { MANIFEST } from '../../text/chat-text.ts';
import { cut } from './rich.ts';

export const MESSAGE_SHORTCUT = 'work-out';
export const GLOBAL_SHORTCUT = 'start';
export const EVENTS_PATH = '/slack/events';

/** Every right asked for, and what for. */
export const SCOPES: readonly { readonly scope: string; readonly why: string }[] = [
  { scope: 'commands', why: 'the slash command and the shortcuts' },
  { scope: 'chat:write', why: 'answers to mentions and direct messages, and answers shown where the app is a member' },
  { scope: 'files:write', why: 'the pictures of laid floors, and long sheets as files' },
  { scope: 'app_mentions:read', why: 'messages that mention the app in a channel; nothing else said there is read' },
  { scope: 'im:history', why: 'messages sent to the app in its own direct messages' },
];

/** Every event listened to, and what for. */
export const EVENTS: readonly { readonly event: string; readonly why: string }[] = [
  { event: 'app_home_opened', why: 'the Home tab is drawn when it is opened' },
  { event: 'app_mention', why: 'questions in a channel' },
  { event: 'message.im', why: 'questions in direct messages' },
  { event: 'app_uninstalled', why: 'the tokens of a workspace are deleted when it takes the app off' },
  { event: 'tokens_revoked', why: 'tokens are deleted when they are revoked' },
];

/** A manifest as plain data. `address`: where the app is reached by HTTP; Socket Mode without it. */
export function manifestOf(commands: readonly Command[], address?: string): Readonly<Record<string, unknown>> {
  const url = address === undefined ? undefined : `${address}${EVENTS_PATH}`;
  const at = (name: string): Readonly<Record<string, string>> => (url === undefined ? {} : { [name]: url });
  return {
    display_information: {
      name: 'floorhand',
      description: MANIFEST.description,
      long_description: MANIFEST.longDescription,
      background_color: '#3b2f24',
    },
    features: {
      app_home: { home_tab_enabled: true, messages_tab_enabled: true, messages_tab_read_only_enabled: false },
      bot_user: { display_name: 'floorhand', always_online: true },
      shortcuts: [
        {
          name: MANIFEST.message,
          type: 'message',
          callback_id: MESSAGE_SHORTCUT,
          description: MANIFEST.messageDescription,
        },
        {
          name: MANIFEST.global,
          type: 'global',
          callback_id: GLOBAL_SHORTCUT,
          description: MANIFEST.globalDescription,
        },
      ],
      slash_commands: [
        {
          command: '/floorhand',
          ...at('url'),
          description: MANIFEST.command,
          usage_hint: hintOf(commands),
          should_escape: true,
        },
      ],
    },
    oauth_config: {
      ...(address === undefined ? {} : { redirect_urls: [`${address}/slack/oauth_redirect`] }),
      scopes: { bot: SCOPES.map(({ scope }) => scope) },
    },
    settings: {
      event_subscriptions: { ...at('request_url'), bot_events: EVENTS.map(({ event }) => event) },
      interactivity: { is_enabled: true, ...at('request_url') },
      org_deploy_enabled: false,
      socket_mode_enabled: address === undefined,
      token_rotation_enabled: false,
    },
  };
}

/** What is shown behind the command while it is typed: an ask to copy, and the names of all commands. */
function hintOf(commands: readonly Command[]): string {
  return cut(`${MANIFEST.hint} | ${listed(commands).map(fullName).join(' | ')}`, 1000);
}

/** The manifest as YAML, each right and event with its reason beside it. */
export function manifestYaml(commands: readonly Command[], address?: string): string {
  const why = new Map<unknown, string>();
  for (const { scope, why: reason } of SCOPES) why.set(scope, reason);
  for (const { event, why: reason } of EVENTS) why.set(event, reason);
  return `${yamlLines(manifestOf(commands, address), why).join('\n')}\n`;
}

/** Plain data as YAML in block style, texts in double quotes as JSON writes them, which YAML reads alike. */
function yamlLines(value: unknown, why: ReadonlyMap<unknown, string>): readonly string[] {
  const inner = (one: unknown): readonly string[] => yamlLines(one, why).map((line) => `  ${line}`);
  if (Array.isArray(value)) {
    return value.flatMap((one) => {
      if (typeof one !== 'object') return [`- ${scalar(one)}${why.has(one) ? ` # ${why.get(one)}` : ''}`];
      const [first = '', ...rest] = inner(one);
      return [`- ${first.trimStart()}`, ...rest];
    });
  }
  if (typeof value !== 'object' || value === null) return [scalar(value)];
  return Object.entries(value).flatMap(([key, one]) =>
    typeof one === 'object' && one !== null ? [`${key}:`, ...inner(one)] : [`${key}: ${scalar(one)}`],
  );
}

function scalar(value: unknown): string {
  return JSON.stringify(value);
}
