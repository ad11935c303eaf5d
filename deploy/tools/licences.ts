/** The licences of all that the product is installed with, from package-lock.json: the same on every machine. */

import { readFileSync } from 'node:fs';

/** One package as it is installed, wherever in the tree. */
export interface Licensed {
  readonly name: string;
  readonly version: string;
  /** An SPDX expression; empty where the package tells none. */
  readonly licence: string;
}

/** Those under which the product may be given on: permissive, or bound to the package's own files (MPL). */
const ALLOWED = [
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BSL-1.0',
  'MPL-2.0',
  'Bitstream-Vera',
];

/** Licences that packages tell only in a file of theirs, which was read: by name and version. */
const READ: Readonly<Record<string, string>> = {
  'png-js@2.0.0': 'MIT',
  'dejavu-fonts-ttf@2.37.3': 'Bitstream-Vera',
};

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly link?: boolean;
}

/** Packages of a package-lock.json (its text), development's own left out, optional ones of every platform among them. */
export function licensed(lock: string): readonly Licensed[] {
  const { packages } = JSON.parse(lock) as { readonly packages: Readonly<Record<string, Locked>> };
  const found = new Map<string, Licensed>();
  for (const [path, { version = '', license, dev, link }] of Object.entries(packages)) {
    if (path === '' || dev || link) continue;
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
    const own = `${name}@${version}`;
    found.set(own, { name, version, licence: READ[own] ?? license ?? '' });
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
}

/** Packages under a licence that is not allowed, or under none that is told. */
export function forbidden(all: readonly Licensed[]): readonly Licensed[] {
  return all.filter(({ licence }) => !licence.split(/ OR /).some((one) => ALLOWED.includes(one.replace(/[()]/g, ''))));
}

/** A line a package: name, version, licence. */
export function licenceLines(all: readonly Licensed[]): string {
  return all.map(({ name, version, licence }) => `${name} ${version}: ${licence || 'none told'}\n`).join('');
}

/** The lock file in this folder. Throws an Error where there is none. */
export function lockFile(): string {
  return readFileSync('package-lock.json', 'utf8');
}
