/** What the product is installed with may be given on: every package's licence is told, allowed, and the one that is installed. */

import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { forbidden, licenceLines, licensed, lockFile } from '../deploy/tools/licences.ts';

const all = licensed(lockFile());

describe('licences', () => {
  it('are all allowed, and those of packages for every platform are among them', () => {
    expect(forbidden(all)).toEqual([]);
    expect(all.length).toBeGreaterThan(100);
    const platforms = all.filter(({ name }) => name.startsWith('@resvg/resvg-js-')).map(({ name }) => name);
    expect(platforms).toEqual(
      expect.arrayContaining(['@resvg/resvg-js-linux-x64-gnu', '@resvg/resvg-js-win32-x64-msvc']),
    );
  });

  it('are those that the installed packages tell, and those read from a file stand in it', () => {
    let seen = 0;
    for (const { name, version, licence } of all) {
      const path = `node_modules/${name}/package.json`;
      if (!existsSync(path)) continue;
      const given = JSON.parse(readFileSync(path, 'utf8')) as { version: string; license?: string };
      if (given.version !== version) continue;
      seen += 1;
      if (['png-js', 'dejavu-fonts-ttf'].includes(name)) {
        // The words of the MIT licence and of Bitstream Vera's alike (spdx.org/licenses).
        expect(readFileSync(`node_modules/${name}/LICENSE`, 'utf8')).toContain(
          'Permission is hereby granted, free of charge',
        );
      } else expect(given.license, name).toBe(licence);
    }
    expect(seen).toBeGreaterThan(100);
  });

  it('that are missing, or others, are found', () => {
    const packages = {
      '': { version: '1.0.0' },
      'node_modules/a': { version: '1.0.0', license: 'GPL-3.0-only' },
      'node_modules/b/node_modules/@c/d': { version: '2.0.0' },
      'node_modules/e': { version: '3.0.0', license: '(MIT OR GPL-3.0-only)' },
      'node_modules/f': { version: '4.0.0', license: 'AGPL-3.0-only', dev: true },
    };
    const found = licensed(JSON.stringify({ packages }));
    expect(licenceLines(forbidden(found))).toBe('@c/d 2.0.0: none told\na 1.0.0: GPL-3.0-only\n');
    expect(found.map(({ name }) => name)).toEqual(['@c/d', 'a', 'e']);
  });
});
