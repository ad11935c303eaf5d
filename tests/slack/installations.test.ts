/** Workspaces that install the app: their tokens sealed, used, renewed under a new key, and gone when they take it off. */

import { randomBytes } from 'node:crypto';
import type { Installation } from '@slack/oauth';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { askedOnce, type Installations, installationsIn, sealOf } from '../../src/platforms/slack/install.ts';
import { slackLacks } from '../../src/platforms/slack/settings.ts';
import { startSlack } from '../../src/platforms/slack/start.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { NOW, type Running, running, shown, wordsOf } from './running.ts';

const key = (): string => randomBytes(32).toString('base64');
const KEY = key();

describe('a seal', () => {
  it('opens what it sealed, for what it was sealed', () => {
    const seal = sealOf(KEY);
    const sealed = seal.seal('xoxb-secret', 'T1');
    expect(sealed).not.toContain('xoxb');
    expect(Buffer.from(sealed.split('.')[1] ?? '', 'base64url').toString('latin1')).not.toContain('secret');
    expect(seal.open(sealed, 'T1')).toEqual({ text: 'xoxb-secret', older: false });
    expect(() => seal.open(sealed, 'T2')).toThrow();
  });

  it('seals the same text differently each time', () => {
    const seal = sealOf(KEY);
    expect(seal.seal('x', 'T1')).not.toBe(seal.seal('x', 'T1'));
  });

  it('refuses any bit of it changed', () => {
    const seal = sealOf(KEY);
    const [name = '', packed = ''] = seal.seal('xoxb', 'T1').split('.');
    const bytes = Buffer.from(packed, 'base64url');
    for (let i = 0; i < bytes.length; i++) {
      const changed = Buffer.from(bytes);
      changed[i] = (changed[i] ?? 0) ^ 1;
      expect(() => seal.open(`${name}.${changed.toString('base64url')}`, 'T1')).toThrow();
    }
    expect(() => seal.open(`${name}.`, 'T1')).toThrow();
    expect(() => seal.open('', 'T1')).toThrow();
  });

  it('opens with older keys, and says so; without them it tells which setting lacks one', () => {
    const sealed = sealOf(KEY).seal('xoxb', 'T1');
    const next = key();
    expect(sealOf(`${next}, ${KEY}`).open(sealed, 'T1')).toEqual({ text: 'xoxb', older: true });
    expect(() => sealOf(next).open(sealed, 'T1')).toThrow(/FLOORHAND_KEY/);
  });

  it.each(['', 'short', randomBytes(16).toString('base64'), `${KEY}x`, `${KEY},`])('takes no key like “%s”', (bad) => {
    expect(() => sealOf(bad)).toThrow(/32 bytes/);
  });
});

const installed = (team: string, token = 'xoxb-1'): Installation<'v2', false> => ({
  team: { id: team, name: 'W' },
  enterprise: undefined,
  user: { id: 'U1', token: undefined, scopes: undefined },
  bot: { id: 'B1', userId: 'UBOT', token, scopes: ['commands'] },
  isEnterpriseInstall: false,
  authVersion: 'v2',
});
const query = (teamId: string) => ({ teamId, enterpriseId: undefined, isEnterpriseInstall: false }) as const;

describe('kept installations', () => {
  let kept: ReturnType<typeof keptInMemory>;
  let store: Installations;

  beforeEach(async () => {
    kept = keptInMemory();
    store = installationsIn(kept, sealOf(KEY), () => NOW);
    await store.storeInstallation(installed('T1'));
  });

  it('are found by their workspace and no other, and nothing readable stands in the store', async () => {
    expect((await store.fetchInstallation(query('T1'))).bot?.token).toBe('xoxb-1');
    await expect(store.fetchInstallation(query('T2'))).rejects.toThrow(/not installed/);
    expect(JSON.stringify(await kept.get('slack:install:T1'))).not.toMatch(/xoxb|UBOT/);
  });

  it('cannot be put in another’s place', async () => {
    await kept.set('slack:install:T2', await kept.get('slack:install:T1'));
    await expect(store.fetchInstallation(query('T2'))).rejects.toThrow();
  });

  it('are sealed anew with the key in use, so that the old one can go', async () => {
    const next = key();
    await installationsIn(kept, sealOf(`${next},${KEY}`), () => NOW).fetchInstallation(query('T1'));
    const alone = installationsIn(kept, sealOf(next), () => NOW);
    expect((await alone.fetchInstallation(query('T1'))).bot?.token).toBe('xoxb-1');
  });

  it('are forgotten, but not one made after what ended', async () => {
    await store.forget(query('T1'), NOW - 5000);
    expect((await store.fetchInstallation(query('T1'))).bot?.token).toBe('xoxb-1');
    await store.forget(query('T1'), NOW);
    await expect(store.fetchInstallation(query('T1'))).rejects.toThrow();
  });

  it('of an organisation are kept under it', async () => {
    const whole = { ...installed('T9'), enterprise: { id: 'E1' }, isEnterpriseInstall: true } as const;
    await store.storeInstallation(whole);
    const found = await store.fetchInstallation({ enterpriseId: 'E1', teamId: 'T9', isEnterpriseInstall: true });
    expect(found.enterprise?.id).toBe('E1');
    await expect(store.fetchInstallation(query('T9'))).rejects.toThrow();
  });
});

describe('the app for many workspaces', () => {
  let app: Running;
  const settings = { botToken: '', clientId: 'id', clientSecret: 'secret', stateSecret: 'state', key: KEY };

  beforeEach(async () => {
    app = await running({ settings });
  });

  afterEach(async () => {
    await app.close();
  });

  /** Walks through the pages as a browser does. */
  async function install(team: string): Promise<Response> {
    const page = await app.get('/slack/install');
    const cookie = (page.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
    expect(page.status).toBe(302);
    const requested = new URL(page.headers.get('location') ?? '');
    expect(requested.host).toBe('slack.com');
    expect(requested.searchParams.get('scope')?.split(',').sort()).toEqual([
      'app_mentions:read',
      'chat:write',
      'commands',
      'files:write',
      'im:history',
    ]);
    const state = encodeURIComponent(requested.searchParams.get('state') ?? '');
    return app.get(`/slack/oauth_redirect?code=${team}&state=${state}`, { cookie });
  }

  const ask = (team: string) => app.slash('tape 1 + 2', { team_id: team, response_url: '' });

  it('is installed by its pages, and then answers with that workspace’s token', async () => {
    expect((await install('T7')).status).toBe(200);
    await app.event(
      { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'tape 1 + 2' },
      { team: 'T7' },
    );
    await app.slack.until(() => shown(app.slack).length === 2);
    expect(app.slack.calls.find(({ method }) => method === 'chat.postMessage')?.token).toBe('xoxb-T7');
    expect(app.faults).toEqual([]);
  });

  it('refuses a way back without the state, or with another browser’s', async () => {
    expect((await app.get('/slack/oauth_redirect?code=T7')).status).toBe(400);
    const page = await app.get('/slack/install');
    const state = new URL(page.headers.get('location') ?? '').searchParams.get('state');
    expect((await app.get(`/slack/oauth_redirect?code=T7&state=${state}`)).status).toBe(400);
    expect(await app.kept.get('slack:install:T7')).toBeUndefined();
  });

  it('greets whoever installed it, once', async () => {
    await install('T7');
    await app.slack.until(() => shown(app.slack).length === 1);
    expect(shown(app.slack)[0]).toMatchObject({ channel: 'U1' });
    expect(app.slack.calls.find(({ method }) => method === 'chat.postMessage')?.token).toBe('xoxb-T7');
    await app.event({ type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'messages' }, { team: 'T7' });
    await app.event(
      { type: 'message', channel: 'D1', channel_type: 'im', user: 'U1', ts: '1.1', text: 'tape 1 + 2' },
      { team: 'T7' },
    );
    await app.slack.until(() => shown(app.slack).length === 2);
    expect(`${shown(app.slack)[1]?.text}`).toContain('1 + 2 = 3');
  });

  it('takes a consent that was cancelled for no error, and leads back', async () => {
    const page = await app.get('/slack/install');
    const state = encodeURIComponent(new URL(page.headers.get('location') ?? '').searchParams.get('state') ?? '');
    const cancelled = await app.get(`/slack/oauth_redirect?error=access_denied&state=${state}`);
    expect(cancelled.status).toBe(200);
    expect(await cancelled.text()).toMatch(/nothing was installed[\s\S]*href="\/slack\/install"/);
  });

  it('says where it was uninstalled that it has to be installed again', async () => {
    await app.slash('tape 1 + 2', { team_id: 'T9' });
    await app.slack.until(() => app.slack.responded.length === 1);
    expect(app.slack.responded[0]?.body.text).toContain('installed again');
  });

  it('renews a token once for all who need it at the same time', async () => {
    let renewals = 0;
    const renewed = askedOnce(async (_query: { readonly teamId: string }) => {
      renewals += 1;
      await new Promise((resolve) => setImmediate(resolve));
      return renewals;
    });
    const query = { teamId: 'T7' };
    expect(await Promise.all([renewed(query), renewed(query), renewed({ teamId: 'T7' })])).toEqual([1, 1, 1]);
    expect(await renewed(query)).toBe(2);
  });

  it('deletes the tokens of a workspace that takes it off, and answers it no more', async () => {
    await install('T7');
    await install('T8');
    await app.event({ type: 'app_uninstalled' }, { team: 'T7' });
    await ask('T8');
    await app.slack.until(() => wordsOf(shown(app.slack)).includes('1 + 2'));
    expect(await app.kept.get('slack:install:T7')).toBeUndefined();
    expect(await app.kept.get('slack:install:T8')).toBeDefined();
    await ask('T7');
    expect(app.faults.some(({ cause }) => `${cause}`.includes('not installed'))).toBe(true);
  });

  it('deletes them when the bot’s token is revoked, and not for a person’s', async () => {
    await install('T7');
    await app.event({ type: 'tokens_revoked', tokens: { oauth: ['U1'] } }, { team: 'T7' });
    expect(await app.kept.get('slack:install:T7')).toBeDefined();
    await app.event({ type: 'tokens_revoked', tokens: { bot: ['UBOT'] } }, { team: 'T7' });
    await ask('T7');
    expect(await app.kept.get('slack:install:T7')).toBeUndefined();
  });
});

describe('starting', () => {
  const none = {
    botToken: '',
    appToken: '',
    signingSecret: '',
    clientId: '',
    clientSecret: '',
    stateSecret: '',
    key: '',
  };

  it('names everything that is missing', async () => {
    expect(slackLacks({ ...none, botToken: 'xoxb-1', appToken: 'xapp-1' })).toEqual([]);
    expect(
      slackLacks({ ...none, signingSecret: 's', clientId: 'i', clientSecret: 's', stateSecret: 's', key: KEY }),
    ).toEqual([]);
    expect(slackLacks({ ...none, botToken: 'xoxb-1' }).join()).toMatch(/APP_TOKEN.*SIGNING_SECRET/);
    expect(slackLacks({ ...none, signingSecret: 's', clientId: 'i' }).join()).toMatch(
      /CLIENT_SECRET.*STATE_SECRET.*FLOORHAND_KEY/,
    );
  });

  it('fails where Slack refuses the token', async () => {
    const slack = await running();
    slack.slack.refuse(({ method }) => (method === 'auth.test' ? 'invalid_auth' : undefined));
    const settings = { ...none, botToken: 'xoxb-1', signingSecret: 's', api: slack.slack.api };
    const ports = { kept: slack.kept, fault: () => undefined, now: () => NOW } as unknown as Parameters<
      typeof startSlack
    >[1];
    await expect(startSlack(settings, ports)).rejects.toThrow(/invalid_auth/);
    await slack.close();
  });
});
