/** Files that import each other in a circle, types included: such files cannot be read one at a time. */

import { importsOf, targetOf } from './imports.ts';
import type { Sources } from './sources.ts';

/** The circles met by following imports from each file, each as `a -> b -> a`; none when the files can be put in order. */
export function cyclesIn(sources: Sources): readonly string[] {
  const done = new Set<string>();
  const path: string[] = [];
  const cycles: string[] = [];
  const visit = (file: string): void => {
    const start = path.indexOf(file);
    if (start >= 0) cycles.push([...path.slice(start), file].join(' -> '));
    if (start >= 0 || done.has(file)) return;
    path.push(file);
    for (const next of filesImported(sources.get(file) ?? '', file)) visit(next);
    path.pop();
    done.add(file);
  };
  for (const file of sources.keys()) visit(file);
  return cycles;
}

function filesImported(text: string, importer: string): readonly string[] {
  return importsOf(text).flatMap(({ from }) => {
    const target = from === undefined ? undefined : targetOf(from, importer);
    return target && 'file' in target ? [target.file] : [];
  });
}
