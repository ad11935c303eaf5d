/** The papers say what is so: generated parts are current, and the README, settings, lock file and licence are as promised. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { generatedFiles } from '../deploy/tools/generated-files.ts';
import { staleParts, withParts } from '../deploy/tools/generated-part.ts';
import { generatedPages, lastAnswer, typed } from '../deploy/tools/readme-parts.ts';

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
  test('it and deploy/README.md hold what the program writes now', async () => {
    const pages = await generatedPages();
    expect(pages.map(({ path }) => path)).toEqual(['README.md', 'deploy/README.md']);
    expect(pages.map(({ path, parts }) => staleParts(paper(path), parts))).toEqual([[], []]);
  });

  test('is at most 150 lines', () => expect(readme.trimEnd().split('\n').length).toBeLessThanOrEqual(150));

  test('shows pictures that are there, PNGs a phone opens quickly, each with its words', () => {
    const shown = [...readme.matchAll(/!\[([^\]]*)\]\(([^)]+)\)/g)];
    expect(shown.map(([, , path]) => path)).toEqual(['deploy/pictures/answer.png', 'deploy/pictures/plan.png']);
    for (const [, words = '', path = ''] of shown) {
      const bytes = readFileSync(new URL(`../${path}`, import.meta.url));
      expect(words.length).toBeGreaterThan(40);
      expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG');
      expect(bytes.length).toBeLessThan(200_000);
    }
  });

  test('begins with its name and one paragraph that says whose job it is', () => {
    const [title, paragraph] = readme.split('\n\n');
    expect(title).toBe('# floorhand');
    expect(paragraph).toMatch(/^[A-Z][^|#`]{200,}\.$/s);
    expect(paragraph).toMatch(/homeowner/i);
  });

  test('shows what to type in five lines, and only what is answered', async () => {
    const part = readme.split('<!-- generated: typed -->')[1]?.split('<!-- /generated -->')[0] ?? '';
    expect(part.match(/^> .+$/gm)).toHaveLength(5);
    await expect(typed(["tape 1'", 'tape 1 ft + horse'])).rejects.toThrow('horse');
  });

  test('then gives the two commands', () => {
    const start = readme.indexOf('npm ci && npm start');
    expect(start).toBeGreaterThan(0);
    expect(readme.indexOf('npm ci && npm test')).toBeGreaterThan(start);
    expect(start).toBeLessThan(1500);
  });
});

describe('what README.md says can be typed', () => {
  const section = readme.slice(readme.indexOf('## Rooms, planks and lengths')).split('\n## ')[0] ?? '';
  const items = section.split('\n').filter((line) => line.startsWith('- '));
  const codes = (...beginnings: readonly string[]): readonly string[] =>
    items
      .filter((item) => beginnings.some((beginning) => item.startsWith(`- ${beginning}`)))
      .flatMap((item) => [...item.matchAll(/`([^`\n]+)`/g)].map((match) => match[1] ?? ''))
      .filter((code) => code.length > 3);
  const requests = codes('By options');
  const planks = codes('A plank').map((plank) => `planks room: 12' x 14', plank: ${plank}`);
  const rooms = codes('A room', 'Any other').map((room) => `planks room: ${room}, plank: 6 x 48 in, 10 per carton`);
  const lengths = codes('Lengths').map((length) => `tape ${length}`);

  test('is found', () => {
    expect([requests, planks, rooms, lengths].map(({ length }) => length)).toEqual([2, 1, 4, 7]);
  });

  test.each([...requests, ...planks, ...rooms, ...lengths])('is answered: %s', async (request) => {
    expect(await lastAnswer(request)).toHaveProperty('headline');
  });
});

/** Every paper of ours: at the root, and beside the code that it is about. */
const roomPapers = ['src', 'commands', 'tests'].flatMap(readmesIn);
const papers = ['README.md', 'DEVELOPERS.md', ...roomPapers];

function readmesIn(folder: string): readonly string[] {
  return readdirSync(new URL(`../${folder}`, import.meta.url), { recursive: true, encoding: 'utf8' })
    .filter((path) => /(?:^|\/)README\.md$/.test(path))
    .map((path) => `${folder}/${path}`)
    .sort();
}

function exists(path: string): boolean {
  return existsSync(new URL(`../${path}`, import.meta.url));
}

/** The npm scripts that a paper names. */
function scriptsIn(text: string): readonly string[] {
  return [...text.matchAll(/npm run (?:--silent )?([a-z0-9-]+(?::[a-z0-9-]+)?)/g)].map((match) => match[1] ?? '');
}

/** The files and folders that a paper names by their whole path, and in an import. A pattern with a star names its folder. */
function pathsIn(text: string): readonly string[] {
  const named = /(?<=^|[\s`'"([])(?:\.\.\/)*((?:src|commands|tests|deploy|\.ci)\/[\w./-]*)/gm;
  return [...text.matchAll(named)].map((match) => (match[1] ?? '').replace(/\.$/, ''));
}

/** The files that the README of a folder names as they are called there. */
function neighborsIn(path: string): readonly string[] {
  const folder = path.slice(0, path.lastIndexOf('/'));
  return [...paper(path).matchAll(/`([\w-]+(?:\/[\w-]+)*\.(?:test\.ts|ts|css|jsonl?))`/g)].flatMap(([, name = '']) =>
    /^(?:src|commands|tests|deploy)\//.test(name) ? [] : [`${folder}/${name}`],
  );
}

/** The worked example of a command. */
const example = /^```ts\n([\s\S]*?)^```$/m.exec(developers)?.[1] ?? '';

/** What a text imports of ours: each file with a name. */
function importsOf(text: string): readonly (readonly [path: string, name: string])[] {
  return [...text.matchAll(/^import \{ ([\w, ]+) \} from '\.\.\/\.\.\/([\w./-]+)';$/gm)].flatMap(
    ([, names = '', path = '']) => names.split(', ').map((name) => [path, name] as const),
  );
}

function exportsOf(path: string, name: string): boolean {
  return new RegExp(`^export (?:const|function\\*?|type|interface) ${name}\\b`, 'm').test(paper(path));
}

/** The paragraphs and list items of a paper, without its headings, tables and blocks of code. */
function paragraphsIn(text: string): readonly string[] {
  const prose = text.replace(/^```[\s\S]*?^```$/gm, '').replace(/^(?:#|\|).*$/gm, '');
  return prose
    .split(/\n\s*\n|\n(?=\s*(?:[-*]|\d+\.) )/)
    .map((paragraph) => paragraph.trim())
    .filter((paragraph) => paragraph !== '');
}

/** What is too long in a paper. */
function tooLong(text: string, most: number): readonly string[] {
  const lines = text.trimEnd().split('\n');
  return [
    ...(lines.length > most ? [`${lines.length} lines`] : []),
    ...lines.filter((line) => [...line].length > 200),
    ...paragraphsIn(text).filter((paragraph) => paragraph.split('\n').length > 5),
  ];
}

/** The folders of src, and the platforms, that a map leaves out. */
function unmapped(map: string): readonly string[] {
  const foldersIn = (path: string) =>
    readdirSync(new URL(`../${path}`, import.meta.url), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => `${path}/${name}`);
  const rooms = foldersIn('src').flatMap((path) => (path === 'src/platforms' ? foldersIn(path) : [path]));
  return [...rooms, 'commands', 'tests', 'deploy'].filter((room) => !map.includes(`\`${room}/\``));
}

describe('what the papers name exists', () => {
  test('papers stand beside the code', () => expect(roomPapers.length).toBeGreaterThan(5));

  test.each(papers)('every npm script of %s', (path) => {
    expect(scriptsIn(paper(path)).filter((name) => !(name in manifest.scripts))).toEqual([]);
  });

  test.each(papers)('every file and folder of %s', (path) => {
    expect(pathsIn(paper(path)).filter((named) => !exists(named))).toEqual([]);
  });

  test.each(roomPapers)('every neighbor of %s', (path) => {
    expect(neighborsIn(path).filter((named) => !exists(named))).toEqual([]);
  });

  test('every name that the worked example imports', () => {
    expect(importsOf(example).length).toBeGreaterThan(3);
    expect(importsOf(example).filter(([path, name]) => !exportsOf(path, name))).toEqual([]);
    expect(exportsOf('src/units/geometry.ts', 'tripleArea')).toBe(false);
  });

  test('and what does not is found', () => {
    expect(scriptsIn('`npm run bench -- --quick`, npm run --silent ask')).toEqual(['bench', 'ask']);
    const named = "See `src/attic/box.ts` and src/units/, [deploy](deploy/README.md), from '../../src/gone.ts'.";
    expect(pathsIn(named)).toEqual(['src/attic/box.ts', 'src/units/', 'deploy/README.md', 'src/gone.ts']);
    expect(pathsIn(named).filter((path) => !exists(path))).toEqual(['src/attic/box.ts', 'src/gone.ts']);
    expect(pathsIn(developers).length).toBeGreaterThan(20);
    expect(scriptsIn(`${readme}\n${developers}`).length).toBeGreaterThan(5);
    expect(roomPapers.flatMap(neighborsIn).length).toBeGreaterThan(20);
  });
});

describe('papers for developers are short', () => {
  test('DEVELOPERS.md: 150 lines, and no paragraph over five', () => expect(tooLong(developers, 150)).toEqual([]));

  test.each(roomPapers)('%s: 60 lines', (path) => expect(tooLong(paper(path), 60)).toEqual([]));

  test('and what is too long is found', () => {
    const [line, five] = ['words\n', 'a\nb\nc\nd\ne\n'];
    expect(tooLong(`# Title\n\n${five}\n- ${five}- ${five}`, 20)).toEqual([]);
    expect(tooLong(line.repeat(61).replaceAll('\n', '\n\n'), 60)).toEqual(['121 lines']);
    expect(tooLong(`${five}f\n`, 60)).toEqual([`${five}f`]);
    expect(tooLong(`- one\n- ${five}f\n`, 60)).toEqual([`- ${five}f`]);
    expect(tooLong('w'.repeat(201), 60)).toEqual(['w'.repeat(201)]);
    expect(tooLong(`\`\`\`ts\n${five}${five}\`\`\`\n`, 60)).toEqual([]);
  });
});

describe('the map of DEVELOPERS.md', () => {
  const map = developers.split('\n## ').find((part) => part.startsWith('The map')) ?? '';

  test('names every folder of src', () => expect(unmapped(map)).toEqual([]));

  test('and a folder left out is found', () => {
    expect(unmapped(map.replace('`src/hazards/`', '').replace('`src/platforms/web/`', ''))).toEqual([
      'src/hazards',
      'src/platforms/web',
    ]);
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
