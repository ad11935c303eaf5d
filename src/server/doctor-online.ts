/** Asks Discord and Slack whether they know the tokens; nothing there is changed. */

import type { Config } from './config.ts';
import { doubt, type Finding, fault, ok } from './doctor.ts';
import { clockFinding } from './doctor-machine.ts';

const DISCORD = 'https://discord.com/api';
const SLACK = 'https://slack.com/api';
/** Milliseconds for one answer. */
const PATIENCE = 10_000;

/** What they say of each token that was told, and the clock beside theirs. */
export async function onlineFindings({ discord, slack }: Config, now: () => number): Promise<readonly Finding[]> {
  const found: Finding[] = [];
  if (discord.token !== '') found.push(...(await askDiscord(discord, now)));
  const tokens = [
    ['auth.test', slack.botToken, 'bot token'],
    ['apps.connections.open', slack.appToken, 'app-level token'],
  ] as const;
  for (const [method, token, what] of tokens)
    if (token !== '') found.push(await askSlack(`${slack.api ?? SLACK}/${method}`, token, what));
  return found;
}

async function askDiscord(
  { token, publicKey, api = DISCORD }: Config['discord'],
  now: () => number,
): Promise<readonly Finding[]> {
  const about = 'Discord says';
  const asked = await got(`${api}/v10/applications/@me`, { headers: { authorization: `Bot ${token}` } });
  if (!asked)
    return [doubt(about, 'nothing: it cannot be reached', 'Look at the network, or at FLOORHAND_DISCORD_API.')];
  const { status, body, date } = asked;
  if (status === 401)
    return [fault(about, 'it does not know the bot token', 'Reset the token in the developer portal.')];
  if (status !== 200) return [doubt(about, `status ${status}`, 'Try again in a while.')];
  const clock = Number.isNaN(date) ? [] : [clockFinding(now(), { of: 'Discord', clock: date })];
  const other = publicKey !== '' && body.verify_key !== publicKey.toLowerCase();
  if (other) return [fault(about, 'the public key is another', 'Copy FLOORHAND_DISCORD_PUBLIC_KEY again.'), ...clock];
  return [ok(about, 'the token is known'), ...clock];
}

async function askSlack(url: string, token: string, what: string): Promise<Finding> {
  const about = 'Slack says';
  const asked = await got(url, { method: 'POST', headers: { authorization: `Bearer ${token}` } });
  if (!asked) return doubt(about, 'nothing: it cannot be reached', 'Look at the network, or at FLOORHAND_SLACK_API.');
  if (asked.body.ok === true) return ok(about, `the ${what} is known`);
  const why = typeof asked.body.error === 'string' ? asked.body.error : `status ${asked.status}`;
  return fault(about, `the ${what} is refused: ${why}`, 'Install the app again, and copy the token it gives.');
}

interface Got {
  readonly status: number;
  readonly body: Readonly<Record<string, unknown>>;
  /** Milliseconds since 1970 by the clock of whoever answered; NaN where it did not say. */
  readonly date: number;
}

async function got(url: string, init: RequestInit): Promise<Got | undefined> {
  try {
    const response = await fetch(url, { ...init, signal: AbortSignal.timeout(PATIENCE) });
    const body: unknown = await response.json().catch(() => ({}));
    const date = Date.parse(response.headers.get('date') ?? '');
    return { status: response.status, body: isFields(body) ? body : {}, date };
  } catch {
    return undefined;
  }
}

function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
