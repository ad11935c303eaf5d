/** The files that a project's sheets are handed on as. */

import type { Sheets } from '../reply/job-sheet.ts';
import { FILE_LISTS, type FileForm, type FileList, type FileMade, type Result } from '../reply/reply.ts';
import { FILES } from '../text/sheets-text.ts';
import { fileStem } from './file-name.ts';

/** Every file of a form: one PDF, one JSON document, or a spreadsheet for each list that has lines. None where there are no sheets. */
export function filesOf(sheets: Sheets, form: FileForm['form'], paper?: 'letter' | 'a4'): readonly FileMade[] {
  if (sheets.sheets.length === 0) return [];
  if (form === 'pdf') return [fileOf(sheets, { form, ...(paper && { paper }) })];
  if (form === 'json') return [fileOf(sheets, { form })];
  return FILE_LISTS.filter((list) => hasLines(sheets, list)).map((list) => fileOf(sheets, { form, list }));
}

function fileOf(sheets: Sheets, as: FileForm): FileMade {
  const { project, sheets: all } = sheets;
  const [only, ...more] = all;
  const what = as.form === 'csv' ? FILES.lists[as.list] : only && more.length === 0 ? only.title : FILES.all;
  const stem = [fileStem(project) || FILES.stem, fileStem(what)].join('-');
  const alt = as.form === 'csv' ? FILES.listAlt(what) : FILES.alt(all.map(({ title }) => title));
  return { name: `${stem}.${as.form}`, title: FILES.title(project, what), alt, as };
}

function hasLines({ sheets }: Sheets, list: FileList): boolean {
  const of = (key: string) => sheets.filter((sheet) => sheet.key === key);
  if (list === 'cuts') return of('cuts').some(({ pieces = [] }) => pieces.length > 0);
  if (list === 'checklist') return of('checklist').some(({ ticks = [] }) => ticks.length > 0);
  if (list === 'shopping') return of('shopping').some(({ ticks = [] }) => ticks.length > 0);
  return of('guide').some(({ reply: { data } }) => isInRows(data));
}

/** A herringbone has boards and no rows. */
function isInRows(data: Result & { readonly regions?: readonly { readonly rows?: readonly unknown[] }[] }): boolean {
  return data.regions?.some(({ rows = [] }) => rows.length > 0) ?? false;
}
