/** Sheets of a project as spreadsheets by RFC 4180: one file a list, figures as numbers, and nothing that a spreadsheet would run. */

import { stringify } from 'csv-stringify/sync';
import { oneLine } from '../chat/files.ts';
import type { JobSheet, SawPiece, Sheets } from '../reply/job-sheet.ts';
import { FILE_LISTS, type FileList } from '../reply/reply.ts';
import { CSV } from '../text/sheets-text.ts';
import { inUnits, type Measured } from './figure.ts';
import { isFloor, isShopping } from './result.ts';

export interface CsvFile {
  readonly list: FileList;
  readonly text: string;
}

type Cell = string | number | undefined;

/** Spreadsheets take a file for UTF-8 where it begins with this mark, and for their own code page where it does not. */
const BOM = '\ufeff';

/** A file for each list that has lines. */
export function csvFiles(sheets: Sheets): readonly CsvFile[] {
  const measured = inUnits(sheets.units);
  const of = (key: JobSheet['key']): readonly JobSheet[] => sheets.sheets.filter((sheet) => sheet.key === key);
  const rows: Readonly<Record<FileList, readonly (readonly Cell[])[]>> = {
    shopping: of('shopping').flatMap((sheet) => shoppingRows(sheet, measured)),
    cuts: of('cuts').flatMap(({ room, pieces = [] }) => pieces.map((piece) => cutRow(room, piece, measured))),
    rows: of('guide').flatMap(guideRows),
    pieces: of('guide').flatMap((sheet) => pieceRows(sheet, measured)),
    checklist: of('checklist').flatMap(({ ticks = [] }) =>
      ticks.map(({ group, label, ticked, by, at }) => [group, label, ticked ? CSV.yes : CSV.no, by, at && dayOf(at)]),
    ),
  };
  const heads = CSV.columns(measured.length.unit);
  return FILE_LISTS.flatMap((list) =>
    rows[list].length === 0 ? [] : [{ list, text: csvText(heads[list], rows[list]) }],
  );
}

/** Lines under a head. Texts are quoted, on one line each; one that would be taken for a formula is marked as text by an apostrophe. */
export function csvText(head: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const lines = [head, ...rows].map((row) => row.map((cell) => (typeof cell === 'string' ? oneLine(cell) : cell)));
  const options = { record_delimiter: 'windows', quoted_string: true, escape_formulas: true } as const;
  return `${BOM}${stringify(lines, options)}`;
}

function shoppingRows({ reply }: JobSheet, measured: Measured): readonly (readonly Cell[])[] {
  if (!isShopping(reply.data)) return [];
  return reply.data.lines.map(({ label, stage, unit, amount, count, bought, left, back }) => {
    const { unit: said, of } = measured[unit];
    // What is sold in packages is left in packages, else in its own measure.
    const [packages, rest] = count === undefined ? [undefined, of(left)] : [left, undefined];
    return [label, stage, of(amount), said, count, of(bought), packages, rest, back];
  });
}

function cutRow(sheetRoom: string | undefined, piece: SawPiece, { length }: Measured): readonly Cell[] {
  const { no, of, room = sheetRoom, place, what, count = 1, ticks, widthTicks, left, right, from, note } = piece;
  const width = widthTicks === undefined ? undefined : length.of(widthTicks);
  const ends = [left, right].flatMap((end) => [end.said, end.degrees]);
  return [room, no, of, place, what, count, length.of(ticks), width, ...ends, from, note];
}

/** The laying guide row by row, as it is told. */
function guideRows({ room, reply }: JobSheet): readonly (readonly Cell[])[] {
  return reply.blocks.flatMap((block) =>
    block.kind === 'table' && block.columns.length === CSV.rowCells ? block.rows.map((row) => [room, ...row]) : [],
  );
}

/** Every piece of the floor, in its place. */
function pieceRows({ room, reply }: JobSheet, { length }: Measured): readonly (readonly Cell[])[] {
  if (!isFloor(reply.data)) return [];
  return reply.data.regions.flatMap(({ rows }) =>
    rows.flatMap(({ v, height, pieces }, i) =>
      pieces.map(({ u, length: long, plank, part, edge }) => {
        const figures = [u, v, long, height].map(length.of);
        return [room, i + 1, plank, part, edge, ...figures];
      }),
    ),
  );
}

/** A day as every spreadsheet reads it. */
function dayOf(at: number): string {
  return new Date(at).toISOString().slice(0, 10);
}
