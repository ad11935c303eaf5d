/** The workspaces that installed the app: their tokens, sealed in the store, gone when a workspace takes the app off. */

import { createCipheriv, createDecipheriv, createHash, randomBytes } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Installation, InstallationQuery, InstallationStore, InstallProvider } from '@slack/oauth';
import { z } from 'zod';
import type { KeyValueStore } from '../../storage/types.ts';
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
      if (!key) throw new Error('sealed with a key that is not told in FLOORHAND_KEY');
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

const INSTALL_PATH = '/slack/install';
const REDIRECT_PATH = '/slack/oauth_redirect';

/** What is answered at a path of ours. */
export interface InstallPage {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  handle(request: Request): Promise<Response>;
}

/** The page that leads to Slack's own, and the one that Slack sends people back to. */
export function installPages(installer: InstallProvider): readonly InstallPage[] {
  const options = { scopes: SCOPES.map(({ scope }) => scope) };
  return [
    {
      method: 'GET',
      path: INSTALL_PATH,
      handle: (request) => answered(request, (req, res) => installer.handleInstallPath(req, res, undefined, options)),
    },
    {
      method: 'GET',
      path: REDIRECT_PATH,
      handle: (request) => answered(request, (req, res) => installer.handleCallback(req, res)),
    },
  ];
}

/** The provider speaks to Node's own request and response: it reads an address and cookies, and writes a head and a text. */
async function answered(
  request: Request,
  run: (request: IncomingMessage, response: ServerResponse) => Promise<void>,
): Promise<Response> {
  const headers = new Headers();
  let status = 200;
  let text = '';
  const put = (name: string, value: number | string | readonly string[]): void => {
    headers.delete(name);
    for (const one of [value].flat()) headers.append(name, `${one}`);
  };
  const { pathname, search, host } = new URL(request.url);
  const incoming = {
    url: `${pathname}${search}`,
    method: request.method,
    headers: { host, cookie: request.headers.get('cookie') ?? undefined },
  };
  const outgoing = {
    setHeader: put,
    getHeader: (name: string) => headers.get(name) ?? undefined,
    writeHead(code: number, more: Readonly<Record<string, string>> = {}) {
      status = code;
      for (const [name, value] of Object.entries(more)) put(name, value);
    },
    end(body = '') {
      text = body;
    },
  };
  await run(incoming as unknown as IncomingMessage, outgoing as unknown as ServerResponse);
  return new Response(text, { status, headers });
}
