/** The page's style sheet, script and icon as the build leaves them, each at a path that changes with what is in them. */

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Where the build leaves them, also when this file runs as TypeScript in a test. */
const FOLDER = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../../../dist/src/platforms/web/' : './', import.meta.url),
);

const FILES = {
  'page.css': { file: 'page.css', type: 'text/css; charset=utf-8' },
  'page.js': { file: 'browser/page.js', type: 'text/javascript; charset=utf-8' },
  'saw.js': { file: 'browser/saw.js', type: 'text/javascript; charset=utf-8' },
  'unsent.js': { file: 'browser/unsent.js', type: 'text/javascript; charset=utf-8' },
  'icon.svg': { file: 'icon.svg', type: 'image/svg+xml' },
} as const;

type AssetName = keyof typeof FILES;

interface Assets {
  readonly folder: string;
  readonly bytes: ReadonlyMap<string, Uint8Array<ArrayBuffer>>;
}

let read: Assets | undefined;

/** Reads them once. Throws where the build left none. */
function assets(): Assets {
  if (read) return read;
  const hash = createHash('sha256');
  const bytes = new Map<string, Uint8Array<ArrayBuffer>>();
  for (const [name, { file }] of Object.entries(FILES)) {
    const content = new Uint8Array(readFileSync(`${FOLDER}${file}`));
    hash.update(name).update(content);
    bytes.set(name, content);
  }
  read = { folder: `/page/${hash.digest('base64url').slice(0, 16)}`, bytes };
  return read;
}

/** The path of an asset; the script's modules find each other in its folder. */
export function assetPath(name: AssetName): string {
  return `${assets().folder}/${name}`;
}

/** What is at a path below `/page/`: for good under a path that is today's, undefined under any other. */
export function assetAt(path: string): { readonly type: string; readonly bytes: Uint8Array<ArrayBuffer> } | undefined {
  const { folder, bytes } = assets();
  const name = path.startsWith(`${folder}/`) ? path.slice(folder.length + 1) : '';
  const found = bytes.get(name);
  const known = Object.entries(FILES).find(([one]) => one === name)?.[1];
  return found && known && { type: known.type, bytes: found };
}
