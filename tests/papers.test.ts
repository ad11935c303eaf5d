/** The papers say what is so: generated parts are current, and the README, settings, lock file and licence are as promised. */

import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { generatedFiles } from '../deploy/tools/generated-files.ts';
import { staleParts, withParts } from '../deploy/tools/generated-part.ts';
import { lastAnswer, readmeParts } from '../deploy/tools/readme-parts.ts';
import { roomTable } from './architecture/room-table.ts';

function paper(path: string): string {
  return readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
}

const readme = paper('README.md');
const developers = paper('DEVELOPERS.md');
const manifest = JSON.parse(paper('package.json')) as {
  license: string;
  engines: Record<string, string>;
  scripts: Record<string, string>;
};

describe('README.md', () => {
  test('its generated parts are what the program writes now', async () => {
    expect(staleParts(readme, await readmeParts())).toEqual([]);
  });

  test('begins with its name and one paragraph that says whose job it is', () => {
    const [title, paragraph] = readme.split('\n\n');
    expect(title).toBe('# floorhand');
    expect(paragraph).toMatch(/^[A-Z][^|#`]{200,}\.$/s);
    expect(paragraph).toMatch(/homeowner/i);
  });

  test('tells a project from nothing to its shopping list in fewer than ten messages, each of them answered', () => {
    const part = readme.split('<!-- generated: conversation -->')[1]?.split('<!-- /generated -->')[0] ?? '';
    const messages = part.match(/^> .+$/gm) ?? [];
    expect(messages.length).toBeGreaterThan(3);
    expect(messages.length).toBeLessThan(10);
    expect(messages.at(-1)).toBe('> project shopping');
    expect(part).not.toContain('could not be answered');
    expect(part).toMatch(/\d+ things left to buy/);
  });

  test('then gives the two commands', () => {
    const start = readme.indexOf('npm ci && npm start');
    expect(start).toBeGreaterThan(0);
    expect(readme.indexOf('npm ci && npm test')).toBeGreaterThan(start);
    expect(start).toBeLessThan(1500);
  });
});

describe('what README.md says can be typed', () => {
  const section = readme.slice(readme.indexOf('## How to ask')).split('\n## ')[0] ?? '';
  const codes = (text: string): readonly string[] =>
    [...text.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? '').filter((code) => code.length > 3);
  const numbered = (numbers: string) =>
    section.split('\n').filter((line) => numbers.includes(line.split('. ')[0] || '-'));
  const asks = codes(section).filter((code) => code.startsWith('planks '));
  const rooms = numbered('456')
    .flatMap(codes)
    .map((room) => `planks room: ${room}, plank: 6 x 48 in, 10 per carton`);
  const lengths = numbered('3')
    .flatMap(codes)
    .map((length) => `tape ${length}`);

  test('is found', () => {
    expect([asks.length, rooms.length, lengths.length].map((found) => found >= 2)).toEqual([true, true, true]);
  });

  test.each([...new Set([...asks, ...rooms, ...lengths])])('is answered: %s', async (ask) => {
    expect(await lastAnswer(ask)).toHaveProperty('headline');
  });
});

describe('what the papers name exists', () => {
  const both = `${readme}\n${developers}`;

  test('every npm script', () => {
    const named = [...both.matchAll(/npm run (?:--silent )?([a-z0-9-]+(?::[a-z0-9-]+)?)/g)].map(
      (match) => match[1] ?? '',
    );
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((name) => !(name in manifest.scripts))).toEqual([]);
  });

  test('every file and folder', () => {
    const named = [...both.matchAll(/`((?:src|commands|tests|bench|scripts|\.ci)\/[\w./-]*)`/g)].map(
      (match) => match[1] ?? '',
    );
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((path) => !existsSync(new URL(`../${path}`, import.meta.url)))).toEqual([]);
  });

  test('the table of imports is the one that the architecture test enforces', () => {
    const text = developers.slice(developers.search(/^\| Room +\| Other rooms/m)).split('\n\n')[0] ?? '';
    const rows = text.split('\n').map((line) => line.replace(/ +/g, ' '));
    expect(rows.slice(2)).toEqual(roomTable());
  });
});

describe('settings', () => {
  const variables = (text: string, pattern: RegExp): readonly string[] =>
    [...new Set([...text.matchAll(pattern)].map((match) => match[1] ?? ''))].sort();

  test('.env.example names each variable that the configuration reads, and no other', () => {
    const read = variables(paper('src/server/environment.ts'), /^ {2}(FLOORHAND_[A-Z_]+):/gm);
    expect(read.length).toBeGreaterThanOrEqual(4);
    expect(variables(paper('.env.example'), /^#? ?([A-Z][A-Z0-9]*(?:_[A-Z0-9]+)+)=/gm)).toEqual(read);
  });

  test('the oldest Node is the one that package.json names', () => {
    expect(manifest.engines).toEqual({ node: '>=20.19' });
    const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
    expect(major > 20 || (major === 20 && minor >= 19)).toBe(true);
  });

  test('the lock file holds no addresses, and npm is told to keep it so', () => {
    expect(paper('.npmrc').split('\n')).toContain('omit-lockfile-registry-resolved=true');
    const lock = paper('package-lock.json');
    expect(lock.match(/"integrity": "sha512-/g)?.length).toBeGreaterThan(20);
    expect(lock).not.toContain('"resolved"');
  });

  test('the licence is MIT in both places', () => {
    const licence = paper('LICENSE').replace(/\s+/g, ' ');
    expect(manifest.license).toBe('MIT');
    // The text of the licence as SPDX lists it under MIT, from memory.
    expect(licence).toMatch(/^MIT License Copyright \(c\) \d{4} /);
    expect(licence).toContain('Permission is hereby granted, free of charge, to any person obtaining a copy');
    expect(licence).toContain('THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND');
  });
});

describe('generated parts', () => {
  const page =
    'Top.\n\n<!-- generated: a -->\n\nold\n\n<!-- /generated -->\n\nMiddle.\n\n<!-- generated: b -->\n<!-- /generated -->\n';
  const parts = [
    { name: 'a', text: 'new $& text\n' },
    { name: 'b', text: 'other' },
  ];

  test('are replaced between their marks and nowhere else, and then stay', () => {
    const written = withParts(page, parts);
    expect(written).toBe(
      'Top.\n\n<!-- generated: a -->\n\nnew $& text\n\n<!-- /generated -->\n\nMiddle.\n\n' +
        '<!-- generated: b -->\n\nother\n\n<!-- /generated -->\n',
    );
    expect(withParts(written, parts)).toBe(written);
  });

  test('are named when stale', () => {
    const written = withParts(page, parts);
    expect(staleParts(written, parts)).toEqual([]);
    expect(staleParts(page, parts)).toEqual(['a', 'b']);
    expect(staleParts(written.replace('other', 'edited'), parts)).toEqual(['b']);
  });

  test.each([
    ['no marks', 'Top.'],
    ['marks twice', page + page],
    ['a mark not closed', page.replace('<!-- /generated -->', '')],
    ['a mark that nothing writes', `${page}<!-- generated: c -->\n<!-- /generated -->\n`],
  ])('throw at %s', (_name, wrong) => expect(() => withParts(wrong, parts)).toThrow(/part/));
});

describe('the files of deploy/', () => {
  test.each(generatedFiles().map(({ path, text }) => [path, text] as const))(
    '%s is what the program writes now',
    (path, text) => {
      expect(paper(path)).toBe(text);
    },
  );
});
