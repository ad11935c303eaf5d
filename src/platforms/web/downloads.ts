/** What can be taken along: the sheets as files, made by whoever makes them. */

import { html } from 'hono/html';
import type { Sheets } from '../../reply/job-sheet.ts';
import { PAGE } from '../../text/page-text.ts';
import { each, type Html } from './markup.ts';

/** A file to hand out. */
export interface FileMade {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A table of the sheets as a file, by the name it is asked for. */
export interface TableFile {
  readonly key: string;
  readonly label: string;
}

/** Makes files of sheets; main hands it in. */
export interface FileMaker {
  pdf(sheets: Sheets, paper: 'letter' | 'a4'): Promise<FileMade>;
  /** The lists there are, and one of them by its key. */
  tables(sheets: Sheets): readonly TableFile[];
  table(sheets: Sheets, key: string): Promise<FileMade | undefined>;
  json(sheets: Sheets): Promise<FileMade>;
}

/** Links to the files; the paper of the project's own units first. */
export function fileLinks({ units }: Sheets, tables: readonly TableFile[]): Html {
  const papers = units === 'metric' ? (['a4', 'letter'] as const) : (['letter', 'a4'] as const);
  const links = [
    ...papers.map((paper) => ({ get: paper, label: PAGE[paper] })),
    ...tables.map(({ key, label }) => ({ get: `csv-${key}`, label: PAGE.csv(label) })),
    { get: 'json', label: PAGE.json },
  ];
  return html`<section class="take" aria-labelledby="take-title"><h2 id="take-title">${PAGE.take}</h2><ul class="ways">${each(
    links,
    ({ get, label }) => html`<li><a class="button" href="?get=${encodeURIComponent(get)}" download>${label}</a></li>`,
  )}</ul><p>${PAGE.print}</p></section>`;
}

/** The file that a link asks for; undefined where there is none of that name. */
export async function fileFor(get: string, sheets: Sheets, files: FileMaker): Promise<FileMade | undefined> {
  if (get === 'letter' || get === 'a4') return files.pdf(sheets, get);
  if (get === 'json') return files.json(sheets);
  return get.startsWith('csv-') ? files.table(sheets, get.slice(4)) : undefined;
}
