/** Worker thread entry: turns sheets into files. */

import type { Sheets } from '../reply/job-sheet.ts';
import type { FileForm } from '../reply/reply.ts';
import { csvFiles, sheetsJson } from './csv.ts';
import { documentPages } from './document.ts';
import { pdfOf } from './pdf.ts';

export interface MakeTask {
  readonly sheets: Sheets;
  readonly as: FileForm;
}

/** The file's bytes; empty for a list the sheets have no lines for. */
export async function make({ sheets, as }: MakeTask): Promise<Uint8Array> {
  switch (as.form) {
    case 'pdf':
      return pdfOf(documentPages(sheets, as.paper ?? (sheets.units === 'metric' ? 'a4' : 'letter')));
    case 'csv':
      return Buffer.from(csvFiles(sheets).find(({ list }) => list === as.list)?.text ?? '');
    case 'json':
      return Buffer.from(sheetsJson(sheets));
  }
}
