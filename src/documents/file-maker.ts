/** Files of sheets for whoever hands them out by themselves: each with its name and its media type. */

import { filesOf } from '../chat/files.ts';
import type { Sheets } from '../reply/job-sheet.ts';
import { type FileMade, MEDIA_TYPES } from '../reply/reply.ts';
import { FILES } from '../text/sheets-text.ts';
import { makeFile } from './make.ts';
import type { Paper } from './paper.ts';

export interface Handed {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Makes each in a worker thread. */
export const fileMaker = {
  pdf: (sheets: Sheets, paper: Paper): Promise<Handed> => handed(sheets, filesOf(sheets, 'pdf', paper)[0]),
  json: (sheets: Sheets): Promise<Handed> => handed(sheets, filesOf(sheets, 'json')[0]),
  /** The lists that have lines, by key and in words. */
  tables: (sheets: Sheets): readonly { readonly key: string; readonly label: string }[] =>
    filesOf(sheets, 'csv').flatMap(({ as }) =>
      as.form === 'csv' ? [{ key: as.list, label: FILES.lists[as.list] }] : [],
    ),
  /** One list by its key; undefined where there is none of it. */
  table: async (sheets: Sheets, key: string): Promise<Handed | undefined> => {
    const file = filesOf(sheets, 'csv').find(({ as }) => as.form === 'csv' && as.list === key);
    return file && handed(sheets, file);
  },
} as const;

async function handed(sheets: Sheets, file: FileMade | undefined): Promise<Handed> {
  if (!file) throw new RangeError('no file is made of no sheets');
  const bytes = new Uint8Array(await makeFile(sheets, file.as));
  return { name: file.name, type: MEDIA_TYPES[file.as.form], bytes };
}
