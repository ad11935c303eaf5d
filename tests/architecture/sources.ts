/** The project's own TypeScript, by path from the root: what the architecture test reads. */

import { readdirSync, readFileSync } from 'node:fs';

/** Text by path, such as `src/units/length.ts`. */
export type Sources = ReadonlyMap<string, string>;

const ROOT = new URL('../../', import.meta.url);

/** Every .ts file under the given folders. Throws when a folder is missing: an empty look proves nothing. */
export function readSources(folders: readonly string[]): Sources {
  const sources = new Map<string, string>();
  for (const folder of folders) {
    for (const name of readdirSync(new URL(`${folder}/`, ROOT), { recursive: true, encoding: 'utf8' })) {
      const path = `${folder}/${name.replaceAll('\\', '/')}`;
      if (path.endsWith('.ts')) sources.set(path, readFileSync(new URL(path, ROOT), 'utf8'));
    }
  }
  return sources;
}

/** The packages that package.json declares for the product, without those of tests and tools. */
export function declaredPackages(): readonly string[] {
  const text = readFileSync(new URL('package.json', ROOT), 'utf8');
  const { dependencies } = JSON.parse(text) as { dependencies?: Record<string, string> };
  return Object.keys(dependencies ?? {});
}
