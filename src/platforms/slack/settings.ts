/** The settings of a Slack app, and what is missing for it to start. Read before anything of Slack is loaded. */

import { Buffer } from 'node:buffer';
import type { SlackSettings } from '../platform.ts';

const KEY_BYTES = 32;

/** Whether anything of Slack was told. */
export function slackIsConfigured(settings: SlackSettings): boolean {
  const { botToken, appToken, signingSecret, clientId } = settings;
  return [botToken, appToken, signingSecret, clientId].some((given) => given !== '');
}

/** What is missing to start, each as a line; none when it can start. */
export function slackLacks(settings: SlackSettings): readonly string[] {
  const { botToken, appToken, signingSecret, clientId, clientSecret, stateSecret, key } = settings;
  const lacks: string[] = [];
  if (appToken === '' && signingSecret === '') {
    lacks.push('FLOORHAND_SLACK_APP_TOKEN (Socket Mode) or FLOORHAND_SLACK_SIGNING_SECRET (HTTP)');
  }
  if (botToken === '') {
    const oauth = { CLIENT_ID: clientId, CLIENT_SECRET: clientSecret, STATE_SECRET: stateSecret };
    const missing = Object.entries(oauth).flatMap(([name, told]) => (told === '' ? [`FLOORHAND_SLACK_${name}`] : []));
    if (missing.length === 3) lacks.push('FLOORHAND_SLACK_BOT_TOKEN, or what several workspaces need');
    lacks.push(...missing);
    if (key === '') lacks.push('FLOORHAND_KEY, which seals the tokens of workspaces');
  }
  return lacks;
}

/** What keeps Slack from starting, each as a sentence that says what to set; none where nothing does or Slack is not configured. */
export function slackConfigLacks(settings: SlackSettings): readonly string[] {
  if (!slackIsConfigured(settings)) return [];
  const flaw = keyFlaw(settings.key);
  return [
    ...slackLacks(settings).map((lack) => `Slack: set ${lack}`),
    ...(flaw === undefined ? [] : [`Slack: ${flaw}; set it to what this prints: openssl rand -base64 32`]),
  ];
}

/** What is wrong with the key, if one is set. */
export function keyFlaw(key: string): string | undefined {
  if (key === '') return undefined;
  try {
    for (const one of key.split(',')) keyBytes(one.trim());
    return undefined;
  } catch {
    return 'FLOORHAND_KEY is no 32 bytes in base64';
  }
}

/** A key out of its base64. Throws when it is none. */
export function keyBytes(text: string): Buffer {
  const bytes = Buffer.from(text, 'base64');
  if (
    bytes.length !== KEY_BYTES ||
    bytes.toString('base64').replace(/(?<!=)=+$/, '') !== text.replace(/(?<!=)=+$/, '')
  ) {
    throw new Error('FLOORHAND_KEY is no 32 bytes in base64; make one with: openssl rand -base64 32');
  }
  return bytes;
}
