/** How the tree is kept: folders that can be looked over, files that are worth opening, names that mean one thing. */

import { cyclesIn } from './cycles.ts';
import { importsOf, targetOf } from './imports.ts';
import { roomOf } from './rooms.ts';
import type { Sources } from './sources.ts';

/** Short files that stand alone all the same, each with its reason. */
const STAND_ALONE: Readonly<Record<string, string>> = {
  'src/chat/keep-offer.ts': 'the pipeline is long enough without it',
  'src/chat/request-metrics.ts': 'the pipeline is long enough without it',
  'src/server/doctor-works.ts': 'loaded only once the doctor has said that Node is new enough',
  'src/server/warm-up.ts': 'loads what the first answer needs, and nothing else may',
};
/** Folders of data with one file a subject, listed by one file. */
const CATALOGS = ['src/hazards/lexicon/', 'commands/', 'src/figures/handbook-', 'src/handbook/'];

const MOST_FILES_IN_FOLDER = 40;
/** A file shorter than this with one importer, in the same folder, is a part of that importer. */
const FEWEST_LINES = 80;
const TWINS = /^src\/platforms\/[a-z]+\/(?:browser\/)?[a-z-]+\.ts$/;

/** The product's own files, by path. */
function counted(sources: Sources): readonly (readonly [string, string])[] {
  return [...sources].filter(([path]) => /^(?:src|commands)\//.test(path));
}

const folderOf = (path: string): string => path.slice(0, path.lastIndexOf('/'));
const nameOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
const linesOf = (text: string): number => text.replace(/\n$/, '').split('\n').length;

/** Folders with more files than anybody looks over. */
export function fullFolders(sources: Sources): readonly string[] {
  const files = new Map<string, number>();
  for (const [path] of counted(sources)) files.set(folderOf(path), (files.get(folderOf(path)) ?? 0) + 1);
  return [...files]
    .filter(([, count]) => count > MOST_FILES_IN_FOLDER)
    .map(([folder, count]) => `${folder} holds ${count} files, more than ${MOST_FILES_IN_FOLDER}`);
}

/** Short files that one file of their own folder imports and no other: they belong into it. */
export function splinters(sources: Sources): readonly string[] {
  const importers = importersIn(sources);
  return counted(sources).flatMap(([path, text]) => {
    const [importer, ...others] = importers.get(path) ?? [];
    if (importer === undefined || others.length > 0 || folderOf(importer) !== folderOf(path)) return [];
    // What a worker or a browser loads stands alone by its nature.
    if (/worker|browser/.test(path) || linesOf(text) >= FEWEST_LINES || path in STAND_ALONE) return [];
    if (CATALOGS.some((folder) => path.startsWith(folder) && !path.slice(folder.length).includes('/'))) return [];
    return [`${path} has ${linesOf(text)} lines and only ${nameOf(importer)} imports it`];
  });
}

/** File names that stand in the tree twice, but for what every platform has. */
export function repeatedFileNames(sources: Sources): readonly string[] {
  const places = new Map<string, string[]>();
  for (const [path] of counted(sources)) places.set(nameOf(path), [...(places.get(nameOf(path)) ?? []), path]);
  return [...places].flatMap(([name, paths]) => {
    const own = paths.filter((path) => !TWINS.test(path) && !isCommand(path) && name !== 'types.ts');
    const product = own.length + (own.length < paths.length ? 1 : 0);
    return product > 1 && own.length > 0 ? [`${name}: ${paths.join(', ')}`] : [];
  });
}

/** A command's file is named for the command, whatever else has that name. */
function isCommand(path: string): boolean {
  return path.startsWith('commands/');
}

const EXPORTED = /^export (?:declare |abstract |async )*(?:const|let|function\*?|class|interface|type|enum) (\w+)/gm;

/** Exported names that two files define, but for what every platform has. */
export function repeatedExports(sources: Sources): readonly string[] {
  const places = new Map<string, string[]>();
  for (const [path, text] of counted(sources)) {
    for (const [, name = ''] of text.matchAll(EXPORTED)) {
      const known = places.get(name) ?? [];
      if (!known.includes(path)) places.set(name, [...known, path]);
    }
  }
  return [...places].flatMap(([name, paths]) =>
    paths.length > 1 && paths.some((path) => !TWINS.test(path)) ? [`${name}: ${paths.join(', ')}`] : [],
  );
}

/** A feature, and the files that somebody opens to read it. */
export type Features = Readonly<Record<string, readonly string[]>>;

const MOST_FILES = 5;
const MOST_FOLDERS = 3;
/** What is looked up rather than read: texts, figures with their sources, pictures. */
const LOOKED_UP = /^src\/(?:text|figures|drawing|language)\//;

/** Features that take too many files or folders, or have a file that nothing else uses and that is not among those named. */
export function scatteredFeatures(sources: Sources, features: Features): readonly string[] {
  const importers = importersIn(sources);
  return Object.entries(features).flatMap(([feature, files]) => {
    const folders = new Set(files.map(folderOf));
    const gone = files.filter((path) => !sources.has(path)).map((path) => `${feature}: ${path} is not there`);
    const hidden = [...importers]
      .filter(
        ([path, by]) => !files.includes(path) && !LOOKED_UP.test(path) && [...by].every((one) => files.includes(one)),
      )
      .map(([path]) => `${feature}: ${path} is a part of it that nobody named`);
    return [
      ...gone,
      ...hidden,
      ...(files.length > MOST_FILES ? [`${feature}: ${files.length} files`] : []),
      ...(folders.size > MOST_FOLDERS ? [`${feature}: ${folders.size} folders`] : []),
    ];
  });
}

function importersIn(sources: Sources): ReadonlyMap<string, ReadonlySet<string>> {
  const importers = new Map<string, Set<string>>();
  for (const [path, text] of counted(sources)) {
    for (const { from } of importsOf(text)) {
      const target = from === undefined ? undefined : targetOf(from, path);
      if (!target || !('file' in target)) continue;
      importers.set(target.file, (importers.get(target.file) ?? new Set()).add(path));
    }
  }
  return importers;
}

/** Rooms that import each other in a circle, each as `a -> b -> a`: such rooms are one room with two names. */
export function roomCycles(sources: Sources): readonly string[] {
  const rooms = new Map<string, Set<string>>();
  for (const [path, text] of sources) {
    const room = roomOf(path);
    if (room === undefined || room === 'tests') continue;
    for (const { from } of importsOf(text)) {
      const target = from === undefined ? undefined : targetOf(from, path);
      const other = target && 'file' in target ? roomOf(target.file) : undefined;
      if (other !== undefined && other !== room) rooms.set(room, (rooms.get(room) ?? new Set()).add(other));
    }
  }
  const graph = [...rooms].map(([room, others]): [string, string] => [
    `${room}/room.ts`,
    [...others].map((other) => `import '/${other}/room.ts';`).join('\n'),
  ]);
  return cyclesIn(new Map(graph)).map((cycle) => cycle.replaceAll('/room.ts', ''));
}
