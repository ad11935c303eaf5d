/** Whether tokens look like what they are: their form, and that they are of one application. Nothing is asked of anybody. */

import type { Config } from './config.ts';
import { doubt, type Finding, fault, ok } from './doctor.ts';

const PORTAL = 'Copy it again from the application’s page in Discord’s developer portal';
const SLACK_PAGE = 'Copy it again from the app’s settings at Slack';

/** The application's id: told, or the first part of the bot token, which is that id in base64 (known from use). */
export function applicationOf({ token, application }: Config['discord']): string {
  if (application !== '') return application;
  const id = Buffer.from(token.split('.')[0] ?? '', 'base64url').toString('latin1');
  return /^\d{15,22}$/.test(id) ? id : '';
}

/** What was told of Discord. */
export function discordFindings(discord: Config['discord']): readonly Finding[] {
  const { token, publicKey, application } = discord;
  const about = 'Discord';
  if (token === '') {
    const half = publicKey !== '' || application !== '';
    if (!half) return [ok(about, 'not told of')];
    return [fault(about, 'the bot token is missing', 'Set FLOORHAND_DISCORD_TOKEN, or unset the others of Discord.')];
  }
  const parts = token.split('.');
  const id = applicationOf({ ...discord, application: '' });
  const findings: Finding[] = [];
  if (parts.length !== 3 || id === '' || parts.some((part) => !/^[\w-]+$/.test(part)))
    findings.push(
      fault(about, 'the bot token does not look like one (three parts with dots)', `${PORTAL}, under Bot.`),
    );
  else if (application !== '' && application !== id)
    findings.push(
      fault(about, 'the bot token is of another application', 'Set the token and the id of one application.'),
    );
  if (application === '')
    findings.push(
      doubt(
        about,
        'the application’s id is not told',
        'Set FLOORHAND_DISCORD_APPLICATION for npm run discord:register.',
      ),
    );
  const how = publicKey === '' ? 'by its gateway' : 'by signed HTTP at /discord/interactions';
  return findings.length > 0 ? findings : [ok(about, `the token looks right; ${how}`)];
}

/** The link that adds the bot to a server: its commands and itself, and no permission, for it answers what it is asked only. */
export function inviteLink(application: string): string {
  const link = new URL('https://discord.com/oauth2/authorize');
  link.searchParams.set('client_id', application);
  link.searchParams.set('scope', 'bot applications.commands');
  link.searchParams.set('permissions', '0');
  return link.href;
}

/** What was told of Slack. `lacks`: what is missing to start; `key`: what is wrong with the key, if anything. */
export function slackFindings(
  slack: Config['slack'],
  { told, lacks, key }: { readonly told: boolean; readonly lacks: readonly string[]; readonly key: string | undefined },
): readonly Finding[] {
  const about = 'Slack';
  if (!told) return [ok(about, 'not told of')];
  const { botToken, appToken, signingSecret } = slack;
  const findings: Finding[] = lacks.map((lack) => fault(about, 'something is missing', `Set ${lack}.`));
  if (key !== undefined && slack.key !== '')
    findings.push(fault(about, key, 'Set FLOORHAND_KEY to what this prints: openssl rand -base64 32'));
  // The forms are known from use; Slack does not promise them.
  if (botToken !== '' && !/^xoxb-\d+-(?:\d+-)?\w+$/.test(botToken))
    findings.push(doubt(about, 'the bot token has an unusual form', `${SLACK_PAGE}, under OAuth & Permissions.`));
  if (appToken !== '' && !/^xapp-\d-\w+-\d+-\w+$/.test(appToken))
    findings.push(doubt(about, 'the app-level token has an unusual form', `${SLACK_PAGE}, under Basic Information.`));
  if (signingSecret !== '' && !/^[0-9a-f]{32}$/.test(signingSecret))
    findings.push(doubt(about, 'the signing secret has an unusual form', `${SLACK_PAGE}, under Basic Information.`));
  const http = signingSecret !== '';
  const manifest = http ? 'deploy/slack-manifest-http.yaml' : 'deploy/slack-manifest.yaml';
  if (findings.length > 0) return findings;
  return [ok(about, `${http ? 'by HTTP at /slack/events' : 'by Socket Mode'}; the app is made from ${manifest}`)];
}
