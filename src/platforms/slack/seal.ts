/** Values sealed for the store by AES-256-GCM: unreadable without the key, and refused where a bit of them was changed. */

import { createCipheriv, createDecipheriv, createHash, randomBytes } from 'node:crypto';

const KEY_BYTES = 32;
const NONCE_BYTES = 12;
const TAG_BYTES = 16;

/** Seals with the first key; opens what any of its keys sealed. */
export interface Seal {
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
  const bytes = Buffer.from(text, 'base64');
  if (
    bytes.length !== KEY_BYTES ||
    bytes.toString('base64').replace(/(?<!=)=+$/, '') !== text.replace(/(?<!=)=+$/, '')
  ) {
    throw new Error('FLOORHAND_KEY is no 32 bytes in base64; make one with: openssl rand -base64 32');
  }
  return { name: createHash('sha256').update('floorhand key ').update(bytes).digest('hex').slice(0, 12), bytes };
}
