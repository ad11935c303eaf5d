/** Plain data as a short text that survives being copied: wrapped, indented or quoted, it is still the same. */

import { promisify } from 'node:util';
import { deflateRaw, inflateRaw } from 'node:zlib';

const deflate = promisify(deflateRaw);
const inflate = promisify(inflateRaw);

/** No text unpacks to more than this. */
const MOST_BYTES = 8_000_000;

/** JSON data, packed. */
export async function packed(data: unknown): Promise<string> {
  return (await deflate(JSON.stringify(data))).toString('base64url');
}

/** What was packed; undefined where it is damaged, or nothing of ours. Never throws. */
export async function unpacked(text: string): Promise<unknown> {
  const code = text.replace(/[^\w-]/g, '');
  try {
    const json = await inflate(Buffer.from(code, 'base64url'), { maxOutputLength: MOST_BYTES });
    return JSON.parse(json.toString('utf8'));
  } catch {
    return undefined;
  }
}
