/** Saves an answer's pictures as PNG files in a folder, each under a name made from its title. */

import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileStem } from '../../chat/files.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { toPng } from '../../drawing/png.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { DRAWING } from '../../text/drawing-text.ts';

/** The drawings of an answer in order; none of a Problem, a Refusal or a fault. */
export function drawingsOf(answer: Answer): readonly Drawing[] {
  if (!('blocks' in answer)) return [];
  return answer.blocks.flatMap((block) => (block.kind === 'picture' ? [block.drawing] : []));
}

/**
 * Saves drawings and gives their paths in order. The same drawing gets the same name again; another of that title gets a
 * number after it, so that no file is ever written over. Rejects when the folder cannot be written to.
 */
export async function savePictures(drawings: readonly Drawing[], folder: string): Promise<readonly string[]> {
  if (drawings.length > 0) await mkdir(folder, { recursive: true });
  const paths: string[] = [];
  // One after the other: each is large, and two of one title must not meet.
  for (const drawing of drawings)
    paths.push(await save(await toPng(drawing), fileStem(drawing.title) || DRAWING.file, 'png', folder));
  return paths;
}

/** Saves bytes under a name that no other file has. */
export async function save(bytes: Buffer, stem: string, ending: string, folder: string): Promise<string> {
  for (let number = 1; ; number++) {
    const path = join(folder, `${stem}${number === 1 ? '' : `-${number}`}.${ending}`);
    try {
      await writeFile(path, bytes, { flag: 'wx' });
      return path;
    } catch (cause) {
      if (!(cause instanceof Error && 'code' in cause && cause.code === 'EEXIST')) throw cause;
    }
    if (bytes.equals(await readFile(path))) return path;
  }
}
