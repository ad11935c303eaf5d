/** The import statements of a file, read off its text without a compiler. */

export interface Import {
  /** As written; undefined when it is computed, so that nobody can tell what is imported. */
  readonly from: string | undefined;
  readonly line: number;
}

const COMMENT_LINE = /^[ \t]*(?:\/\/|\/?\*).*$/gm;
const QUOTED = `(?:'(?<single>[^'\\n]+)'|"(?<double>[^"\\n]+)")`;
const STATEMENTS = [
  new RegExp(`^[ \\t]*(?:import|export)\\b[^;'"\`=()]*?\\bfrom\\s*${QUOTED}`, 'gm'),
  new RegExp(`^[ \\t]*import\\s*${QUOTED}`, 'gm'),
];
const CALL = new RegExp(
  `(?<![\\w.$'"\`])(?:import|require|createRequire\\s*\\([^()]*\\)(?:\\.resolve)?)\\s*\\(\\s*(?:${QUOTED}\\s*[,)])?`,
  'g',
);
/** A loader kept under a name of its own: what it loads cannot be told. */
const LOADER = /(?<![\w.$'"`])createRequire\s*\([^()]*\)(?!(?:\.resolve)?\s*\()/g;

/** Every import, export from, dynamic import, require and resolve, in the order of the file. Lines that are comments are passed over. */
export function importsOf(text: string): readonly Import[] {
  const code = text.replace(COMMENT_LINE, (line) => ' '.repeat(line.length));
  const found = [...STATEMENTS, CALL, LOADER].flatMap((pattern) => [...code.matchAll(pattern)]);
  return found
    .sort((a, b) => a.index - b.index)
    .map(({ groups, index, 0: whole }) => ({
      from: groups?.single ?? groups?.double,
      line: code.slice(0, index + whole.length - whole.trimStart().length).split('\n').length,
    }));
}

/** What an import names: a file of ours by its path from the root, or a package (`node:fs`, `zod`, `@scope/name`). */
export function targetOf(from: string, importer: string): { readonly file: string } | { readonly package: string } {
  if (!/^\.{0,2}\//.test(from)) {
    const parts = from.split('/');
    return { package: parts.slice(0, from.startsWith('@') ? 2 : 1).join('/') };
  }
  return { file: new URL(from, `file:///${importer}`).pathname.slice(1) };
}
