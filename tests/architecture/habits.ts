/** How a file is kept: its size, its opening sentence, its name, and what it exports. */

import type { Sources } from './sources.ts';

const MOST_LINES = 600;
const FORBIDDEN_NAMES = ['util', 'utils', 'helper', 'helpers', 'manager', 'service', 'base', 'common', 'misc'];
const BARREL = 'commands/index.ts';

/** Every habit that a file breaks, as lines that name the file. Tests may run longer, for their tables of cases. */
export function brokenHabits(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, text]) => {
    const own = path.startsWith('tests/');
    const lines = text.replace(/\n$/, '').split('\n').length;
    const name = path.slice(path.lastIndexOf('/') + 1).replace(/(?:\.test)?\.ts$/, '');
    const rules: readonly (readonly [string, boolean])[] = [
      [`has ${lines} lines, more than ${MOST_LINES}`, !own && lines > MOST_LINES],
      ['does not open with a sentence in /** */', !/^\/\*\* [^*]{8,}[.?!] \*\/\n/.test(text)],
      ['is not named in kebab-case', !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(name)],
      ['is named for no thing', path.split(/[/.-]/).some((word) => FORBIDDEN_NAMES.includes(word))],
      ['is a barrel', path !== BARREL && /^export\s+(?:type\s+)?\*/m.test(text)],
      ['exports a default', !path.startsWith('commands/') && /^export\s+default\b/m.test(text)],
      ['lists a namespace, which bundlers and Node put in different orders', listsNamespace(text)],
      ['silences the compiler', /@ts-(?:ignore|nocheck|expect-error)/.test(text)],
    ];
    return rules.filter(([, broken]) => broken).map(([why]) => `${path} ${why}`);
  });
}

/** Whether the exports of a module imported as a whole are listed: Node sorts them by name, other loaders do not. */
function listsNamespace(text: string): boolean {
  const names = [...text.matchAll(/^import\s+\*\s+as\s+(\w+)/gm)].map((match) => match[1] ?? '');
  return names.some((name) => new RegExp(`\\bObject\\.(?:keys|values|entries)\\(\\s*${name}\\s*\\)`).test(text));
}
