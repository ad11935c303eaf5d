/** Every regular expression of the sources: those written as such are read from the sources, those put together are caught while they are made. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst, transformWithEsbuild } from 'vite';
import { vi } from 'vitest';

export interface Pattern {
  /** The files that it stands in. */
  readonly files: readonly string[];
  readonly source: string;
  readonly flags: string;
}

interface Placed {
  readonly file: string;
  readonly source: string;
  readonly flags: string;
}

const ROOT = join(import.meta.dirname, '..', '..');

/** Patterns made from names that somebody typed, as they come out for a room or an option: nothing makes them while the sources are loaded. */
export const MADE_FROM_NAMES: readonly Placed[] = [
  { file: 'src/input/parse-plank.ts', source: '5 ?mm\\.', flags: '' },
  {
    file: 'src/input/parse-progress.ts',
    source: '(?<![\\p{L}\\d])(?:in |of |for |the )*hall 2(?: room)?(?![\\p{L}\\d])',
    flags: 'u',
  },
  {
    file: 'src/input/rooms/rooms-apart.ts',
    source: '(?<![\\p{L}\\d])(?:the |my |our )?hall\\s+2(?![\\p{L}\\d])(?:\\s+(?:is|measures))?\\s*[:=,]?\\s*',
    flags: 'iu',
  },
  { file: 'src/input/rooms/parse-measurement.ts', source: '(?<![\\p{L}\\d])hall\\s+2(?![\\p{L}\\d])', flags: 'u' },
  {
    file: 'src/input/rooms/room-pieces.ts',
    source: "(?!\\u200d)[^\\p{L}\\p{M}\\p{N}\\p{Extended_Pictographic} '’._/#&+-]",
    flags: 'gu',
  },
  { file: 'src/input/rooms/parse-obstacles.ts', source: '(?:in|of|,) (?:the )?hall 2', flags: '' },
  {
    file: 'src/project/rooms-follow.ts',
    source: '(?<![\\p{L}\\p{N}])(?:hall\\s+2|living\\s+room|hall)(?![\\p{L}\\p{N}])',
    flags: 'giu',
  },
  { file: 'commands/floor/floor-home.ts', source: '(?<![\\p{L}\\p{N}])hall 2(?![\\p{L}\\p{N}])', flags: 'giu' },
  {
    file: 'commands/floor/resume.ts',
    source: 'hall 2 (?:is |are |all )*(?:done|finished|complete|laid)',
    flags: 'i',
  },
  {
    file: 'commands/project/pick-values.ts',
    source: '(?<=^|[\\s,;])(plank|under[- ]layment)\\s*[:=]',
    flags: 'giu',
  },
  {
    file: 'commands/project/pick-values.ts',
    source: '^(?:my |the )?(plank|under[- ]layment)(?: is| are)?\\s+(.+)$',
    flags: 'isu',
  },
];

/** Patterns as they are written, and how many a file puts together. */
export async function patternsWritten(): Promise<{
  readonly written: readonly Placed[];
  readonly made: ReadonlyMap<string, number>;
}> {
  const written: Placed[] = [];
  const made = new Map<string, number>();
  for (const folder of ['src', 'commands']) {
    for (const entry of readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })) {
      if (!entry.endsWith('.ts')) continue;
      const file = join(folder, entry);
      const { code } = await transformWithEsbuild(readFileSync(join(ROOT, file), 'utf8'), file, {
        target: 'esnext',
        sourcemap: false,
      });
      visit(parseAst(code), (node) => {
        const { regex, callee } = node as {
          regex?: { pattern: string; flags: string };
          callee?: { name?: string };
        };
        if (regex) written.push({ file, source: regex.pattern, flags: regex.flags });
        if (callee?.name === 'RegExp') made.set(file, (made.get(file) ?? 0) + 1);
      });
    }
  }
  return { written, made };
}

function visit(node: unknown, see: (node: object) => void): void {
  if (typeof node !== 'object' || node === null) return;
  if (Array.isArray(node)) {
    for (const one of node) visit(one, see);
    return;
  }
  see(node);
  for (const inner of Object.values(node)) if (typeof inner === 'object') visit(inner, see);
}

/** Patterns that some files put together while they are loaded afresh, and while `work` runs among what was loaded; and at how many places of each file. */
export async function patternsMade(
  files: Iterable<string>,
  work: () => Promise<void>,
): Promise<{ readonly caught: readonly Placed[]; readonly places: ReadonlyMap<string, number> }> {
  const caught: Placed[] = [];
  const places = new Map<string, Set<string>>();
  const Plain = globalThis.RegExp;
  const place = new Plain('/((?:src|commands)/[^:?)]+\\.ts)[^:]*:(\\d+:\\d+)');
  const Caught = function Caught(source: string | RegExp, flags?: string): RegExp {
    const pattern = new Plain(source, flags);
    const [, file = '', at = ''] = place.exec(new Error('made here').stack ?? '') ?? [];
    if (file !== '') {
      caught.push({ file, source: pattern.source, flags: pattern.flags });
      places.set(file, (places.get(file) ?? new Set()).add(at));
    }
    return pattern;
  };
  vi.resetModules();
  Caught.prototype = Plain.prototype;
  globalThis.RegExp = Caught as unknown as RegExpConstructor;
  try {
    for (const file of files) await import(/* @vite-ignore */ join(ROOT, file));
    await work();
  } finally {
    globalThis.RegExp = Plain;
  }
  return { caught, places: new Map([...places].map(([file, at]) => [file, at.size])) };
}

/** Each pattern once, with all the files that it stands in. */
export function distinct(placed: readonly Placed[]): readonly Pattern[] {
  const byText = new Map<string, { files: Set<string>; source: string; flags: string }>();
  for (const { file, source, flags } of placed) {
    const key = `/${source}/${flags}`;
    const known = byText.get(key) ?? { files: new Set(), source, flags };
    known.files.add(file);
    byText.set(key, known);
  }
  return [...byText.values()].map(({ files, ...pattern }) => ({ ...pattern, files: [...files].sort() }));
}
