/** The workspaces that installed the app: their tokens, sealed in the store, gone when a workspace takes the app off. */

import { createCipheriv, createDecipheriv, createHash, randomBytes } from 'node:crypto';
import type { ServerResponse } from 'node:http';
import type {
  CallbackOptions,
  Installation,
  InstallationQuery,
  InstallationStore,
  InstallProvider,
} from '@slack/oauth';
import { z } from 'zod';
import type { KeyValueStore } from '../../storage/types.ts';
import { INSTALL } from '../../text/chat-text.ts';
import type { NodeExchange, PlatformRoute } from '../platform.ts';
import { SCOPES } from './register.ts';
import { keyBytes } from './settings.ts';

// Values sealed for the store by AES-256-GCM: unreadable without the key, and refused where a bit of them was
// changed.

const NONCE_BYTES = 12;
const TAG_BYTES = 16;

/** Seals with the first key; opens what any of its keys sealed. */
interface Seal {
  /** `about` is bound in: a sealed value opens for nothing else. */
  seal(text: string, about: string): string;
  /** The text, and whether an older key sealed it. Throws when it was changed, is about something else, or its key is gone. */
  open(sealed: string, about: string): { readonly text: string; readonly older: boolean };
}

/** Keys of 32 bytes in base64, the one in use first and older ones behind it with commas. Throws when one is no such key. */
export function sealOf(keys: string): Seal {
  const all = keys.split(',').map((key) => sealKey(key.trim()));
  const [first] = all;
  if (!first) throw new Error('no key');
  return {
    seal(text, about) {
      const nonce = randomBytes(NONCE_BYTES);
      const cipher = createCipheriv('aes-256-gcm', first.bytes, nonce).setAAD(Buffer.from(about));
      const sealed = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
      return [first.name, Buffer.concat([nonce, cipher.getAuthTag(), sealed]).toString('base64url')].join('.');
    },
    open(sealed, about) {
      const [name, packed = ''] = sealed.split('.');
      const key = all.find((known) => known.name === name);
      if (!key) throw new Error('sealed with a key that isn’t in FLOORHAND_KEY');
      const bytes = Buffer.from(packed, 'base64url');
      const [nonce, tag] = [bytes.subarray(0, NONCE_BYTES), bytes.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES)];
      const cipher = createDecipheriv('aes-256-gcm', key.bytes, nonce, { authTagLength: TAG_BYTES });
      cipher.setAAD(Buffer.from(about)).setAuthTag(tag);
      const text = Buffer.concat([cipher.update(bytes.subarray(NONCE_BYTES + TAG_BYTES)), cipher.final()]);
      return { text: text.toString('utf8'), older: key !== first };
    },
  };
}

/** A key with a name that tells nothing of it. */
function sealKey(text: string): { readonly name: string; readonly bytes: Buffer } {
  const bytes = keyBytes(text);
  return { name: createHash('sha256').update('floorhand key ').update(bytes).digest('hex').slice(0, 12), bytes };
}

const record = z.object({ version: z.literal(1), at: z.number(), sealed: z.string() });

/** The installations of every workspace. `forget` is told when Slack says that something ended, in ms since 1970. */
export interface Installations extends InstallationStore {
  storeInstallation<A extends 'v1' | 'v2'>(installation: Installation<A, boolean>): Promise<void>;
  fetchInstallation(query: InstallationQuery<boolean>): Promise<Installation<'v1' | 'v2', boolean>>;
  deleteInstallation(query: InstallationQuery<boolean>): Promise<void>;
  /** Deletes the tokens of a workspace, unless it has installed the app again since. */
  forget(query: InstallationQuery<boolean>, ended: number): Promise<void>;
}

export function installationsIn(kept: KeyValueStore, seal: Seal, now: () => number): Installations {
  const put = async (key: string, installation: Installation<'v1' | 'v2', boolean>, at: number): Promise<void> => {
    const sealed = seal.seal(JSON.stringify(installation), key);
    await kept.set(key, { version: 1, at, sealed } satisfies z.infer<typeof record>);
  };
  return {
    async storeInstallation(installation) {
      const { isEnterpriseInstall, enterprise, team } = installation;
      await put(
        installationKey({
          isEnterpriseInstall: isEnterpriseInstall === true,
          enterpriseId: enterprise?.id,
          teamId: team?.id,
        }),
        installation,
        now(),
      );
    },
    async fetchInstallation(query) {
      const key = installationKey(query);
      const found = await kept.get(key);
      if (found === undefined) throw new Error('the app is not installed there');
      const { sealed, at } = record.parse(found);
      const { text, older } = seal.open(sealed, key);
      const installation = JSON.parse(text) as Installation<'v1' | 'v2', boolean>;
      // Sealed anew with the key in use, so that an older key can be given up.
      if (older) await put(key, installation, at);
      return installation;
    },
    async deleteInstallation(query) {
      await kept.delete(installationKey(query));
    },
    async forget(query, ended) {
      const found = await kept.get(installationKey(query));
      // Slack tells the second in which it ended, and may tell it late.
      const again = found !== undefined && record.parse(found).at > ended + 999;
      if (!again) await kept.delete(installationKey(query));
    },
  };
}

/** An organisation's own installation is kept under it, every other under its workspace. */
function installationKey(query: {
  readonly isEnterpriseInstall: boolean;
  readonly enterpriseId?: string | undefined;
  readonly teamId?: string | undefined;
}): string {
  const id = query.isEnterpriseInstall ? query.enterpriseId : query.teamId;
  if (!id) throw new Error('an installation of no workspace');
  return `slack:install:${id}`;
}

// The pages by which a workspace installs the app, served by the one HTTP server through Slack's own install
// provider.

export const INSTALL_PATH = '/slack/install';
const REDIRECT_PATH = '/slack/oauth_redirect';

/** Who a workspace's installation greets. */
type Greeting = (installation: Installation<'v1' | 'v2', boolean>) => void;

/** The page that leads to Slack's own, and the one that Slack sends people back to. */
export function installPages(installer: InstallProvider, greet: Greeting): readonly PlatformRoute[] {
  const options = { scopes: SCOPES.map(({ scope }) => scope) };
  const answers: CallbackOptions = {
    success: (installation, _options, _request, response) => {
      greet(installation);
      put(response, 200, INSTALL.done, INSTALL.doneHow);
    },
    failure: (cause, _options, request, response) => {
      const { searchParams } = new URL(request.url ?? '/', 'http://here');
      const cancelled = searchParams.get('error') === 'access_denied';
      const ours = ['slack_oauth_unknown_error', 'slack_oauth_installer_initialization_error'].includes(cause.code);
      put(response, cancelled ? 200 : ours ? 500 : 400, cancelled ? INSTALL.cancelled : INSTALL.failed, INSTALL.again);
    },
  };
  const route = (path: string, answer: (node: NodeExchange) => Promise<void>): PlatformRoute => ({
    method: 'GET',
    path,
    async handle(_request, _from, node) {
      if (!node) throw new Error('an installation that does not come over HTTP/1');
      await answer(node);
      return node.answered;
    },
  });
  return [
    route(INSTALL_PATH, ({ incoming, outgoing }) =>
      installer.handleInstallPath(incoming, outgoing, undefined, options),
    ),
    route(REDIRECT_PATH, ({ incoming, outgoing }) => installer.handleCallback(incoming, outgoing, answers)),
  ];
}

/** A page of a heading and a sentence, which leads back to the beginning. */
function put(response: ServerResponse, status: number, heading: string, words: string): void {
  response.writeHead(status, { 'content-type': 'text/html; charset=utf-8' });
  response.end(
    `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${heading}</title><body><h1>${heading}</h1><p>${words}</p><p><a href="${INSTALL_PATH}">${INSTALL.link}</a></p></body></html>`,
  );
}

/** Asks once for all who want the same at the same time: a token that is renewed is renewed once. */
export function askedOnce<A extends readonly unknown[], T>(
  ask: (...given: A) => Promise<T>,
): (...given: A) => Promise<T> {
  const under = new Map<string, Promise<T>>();
  return (...given) => {
    const [query] = given as readonly unknown[];
    const key = JSON.stringify(query);
    const asked = under.get(key) ?? ask(...given).finally(() => under.delete(key));
    under.set(key, asked);
    return asked;
  };
}
