/** Looks at everything that the bot needs before it is started, and changes nothing. */

import { dirname } from 'node:path';
import { slackIsTold, slackLacks } from '../platforms/slack/start.ts';
import { type Config, configDoubts, readConfig } from './config.ts';
import { doubt, type Finding, fault, ok } from './doctor.ts';
import { folderFinding, nodeFinding, portFinding } from './doctor-machine.ts';
import { onlineFindings } from './doctor-online.ts';
import { storeFindings } from './doctor-store.ts';
import { applicationOf, discordFindings, inviteLink, slackFindings } from './doctor-tokens.ts';
import { chatsAreTold, keyFlaw } from './told-chats.ts';
import type { Environment } from './told-settings.ts';

export interface DoctorTerms {
  /** Node's version. */
  readonly node: string;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Whether to ask Discord and Slack whether they know the tokens. */
  readonly online: boolean;
  /** What looks at the font, pictures and workers. */
  readonly works?: () => Promise<readonly Finding[]>;
}

/** What is found, in the order in which it is best mended. Never rejects. */
export async function findings(
  environment: Environment,
  { node, now, online, works = worksOrWhyNot }: DoctorTerms,
): Promise<readonly Finding[]> {
  const first = [nodeFinding(node), ...settingsFindings(environment)];
  const config = configOf(environment);
  if (!config) return [...first, ...(await works())];
  const { slack, discord } = config;
  const chats = chatsAreTold(config);
  const told = {
    told: slackIsTold(slack),
    lacks: slackIsTold(slack) ? slackLacks(slack) : [],
    key: keyFlaw(slack.key),
  };
  return [
    ...first,
    ok('Runs as', chats ? 'the bot, without the terminal' : 'the terminal: no chat is told of'),
    ...discordFindings(discord),
    ...slackFindings(slack, told),
    ...(await storeFindings(config, environment, now)),
    ...(await placeFindings(config, chats)),
    ...(await works()),
    ...(online ? await onlineFindings(config, now) : []),
    ...inviteFindings(config),
  ];
}

/** What works, loaded only now: what is missing of what was installed must not keep the rest from being looked at. */
async function worksOrWhyNot(): Promise<readonly Finding[]> {
  try {
    const { worksFindings } = await import('./doctor-works.ts');
    return await worksFindings();
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : 'unknown';
    return [fault('Installed', `something is missing (${code})`, 'Install again from nothing: npm ci.')];
  }
}

function settingsFindings(environment: Environment): readonly Finding[] {
  const about = 'Settings';
  try {
    readConfig(environment);
  } catch (cause) {
    const lines = cause instanceof Error ? cause.message.split('\n').slice(1) : [String(cause)];
    return lines.map((line) => fault(about, line, 'README.md has all settings in a table.'));
  }
  const doubts = configDoubts(environment);
  if (doubts.length > 0)
    return doubts.map((said) => doubt(about, said, 'Unset it, or look for its new name in README.md.'));
  return [ok(about, 'all can be read')];
}

function configOf(environment: Environment): Config | undefined {
  try {
    return readConfig(environment);
  } catch {
    return undefined;
  }
}

/** Folders of the terminal, or the places of the bot. */
async function placeFindings(config: Config, chats: boolean): Promise<readonly Finding[]> {
  const { history, pictures, http, metrics, address } = config;
  if (!chats) {
    const kept = history === '' ? [] : [await folderFinding('History', dirname(history), 'FLOORHAND_HISTORY')];
    return [await folderFinding('Pictures', pictures, 'FLOORHAND_PICTURES'), ...kept];
  }
  const link = 'Set FLOORHAND_ADDRESS to the https address that people reach it by.';
  return [
    await portFinding('HTTP', http, 'FLOORHAND_PORT'),
    ...(metrics.at ? [await portFinding('Metrics', metrics.at, 'FLOORHAND_METRICS')] : []),
    address === '' ? doubt('Address', 'links of share pages lead to this machine only', link) : ok('Address', address),
  ];
}

function inviteFindings({ discord }: Config): readonly Finding[] {
  const application = applicationOf(discord);
  return discord.token === '' || application === '' ? [] : [ok('Invite link', inviteLink(application))];
}
