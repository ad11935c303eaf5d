/** A project's sheets as CSV (RFC 4180) with one file per list and no runnable formulas, and as JSON. */

import { stringify } from 'csv-stringify/sync';
import { oneLine } from '../chat/files.ts';
import type { JobSheet, SawPiece, Sheets } from '../reply/job-sheet.ts';
import type { NeedUnit } from '../reply/need.ts';
import { FILE_LISTS, type FileList, type Reply, type Result } from '../reply/reply.ts';
import { CSV } from '../text/sheets-text.ts';

interface Unit {
  readonly unit: string;
  readonly of: (exact: number) => number;
}

type Measured = Readonly<Record<NeedUnit, Unit>>;

/** An inch is 8128 ticks, a millimeter 320. */
const INCH = 8128;
const MILLIMETRE = 320;
/** Exact by definition: the U.S. liquid quart and the avoirdupois pound (NIST Handbook 44, appendix C). */
const QUART = 0.946352946;
const POUND = 0.45359237;

/** Fractions of a bag or a tube keep three decimals. */
const COUNT = unit('', 1, 3);

const IMPERIAL: Measured = {
  count: COUNT,
  length: unit('in', INCH, 4),
  area: unit('sq ft', (12 * INCH) ** 2, 2),
  volume: unit('qt', QUART, 3),
  weight: unit('lb', POUND, 2),
};

const METRIC: Measured = {
  count: COUNT,
  length: unit('mm', MILLIMETRE, 1),
  area: unit('m²', (1000 * MILLIMETRE) ** 2, 3),
  volume: unit('L', 1, 3),
  weight: unit('kg', 1, 2),
};

function inUnits(units: 'imperial' | 'metric'): Measured {
  return units === 'metric' ? METRIC : IMPERIAL;
}

/** Rounded to `places` decimals: 1/16 in is 0.0625, so no tape mark is lost. */
function unit(sign: string, each: number, places: number): Unit {
  return { unit: sign, of: (exact) => Math.round((exact / each) * 10 ** places) / 10 ** places };
}

interface ShoppingData extends Result {
  readonly lines: readonly {
    readonly label: string;
    readonly stage: string;
    readonly unit: NeedUnit;
    readonly amount: number;
    readonly count?: number;
    readonly bought: number;
    readonly left: number;
    readonly back: number;
  }[];
}

interface FloorData extends Result {
  readonly regions: readonly {
    readonly rows: readonly {
      readonly v: number;
      readonly height: number;
      readonly pieces: readonly {
        readonly u: number;
        readonly length: number;
        readonly plank: number;
        readonly part: string;
        readonly edge: string;
      }[];
    }[];
  }[];
}

function isShopping(data: Result): data is ShoppingData {
  return data.kind === 'shopping' && 'lines' in data;
}

function isFloor(data: Result): data is FloorData {
  return data.kind === 'floor' && 'regions' in data;
}

interface CsvFile {
  readonly list: FileList;
  readonly text: string;
}

type Cell = string | number | undefined;

/** Without this byte order mark spreadsheets assume their own code page instead of UTF-8. */
const BOM = '\ufeff';

/** One file per list that has lines. */
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

/**
 * Rows under a header. Texts are quoted and kept on one line; a text that would be taken for a formula gets a leading
 * apostrophe.
 */
export function csvText(head: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const lines = [head, ...rows].map((row) => row.map((cell) => (typeof cell === 'string' ? oneLine(cell) : cell)));
  const options = { record_delimiter: 'windows', quoted_string: true, escape_formulas: true } as const;
  return `${BOM}${stringify(lines, options)}`;
}

function shoppingRows({ reply }: JobSheet, measured: Measured): readonly (readonly Cell[])[] {
  if (!isShopping(reply.data)) return [];
  return reply.data.lines.map(({ label, stage, unit, amount, count, bought, left, back }) => {
    const { unit: said, of } = measured[unit];
    // What is sold in packages is counted in packages, the rest in its own unit.
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

/** The laying guide row by row, as worded in the answer. */
function guideRows({ room, reply }: JobSheet): readonly (readonly Cell[])[] {
  return reply.blocks.flatMap((block) =>
    block.kind === 'table' && block.columns.length === CSV.rowCells ? block.rows.map((row) => [room, ...row]) : [],
  );
}

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

/** A date in the form every spreadsheet reads. */
function dayOf(at: number): string {
  return new Date(at).toISOString().slice(0, 10);
}

// JSON: the answers in words plus their result data, with exact figures.

/** Indented for human readers. */
const INDENT = 1;

/** The document as text. Pictures are reduced to their text alternatives; the shapes are only for drawing. */
export function sheetsJson({ sheets, ...rest }: Sheets): string {
  const given = sheets.map(({ reply, ...sheet }) => ({ ...sheet, ...replyGiven(reply) }));
  return `${JSON.stringify({ ...rest, ticksPerInch: 8128, sheets: given }, undefined, INDENT)}\n`;
}

function replyGiven({ headline, blocks, assumed, cautions, sources, data }: Reply) {
  const given = blocks.map((block) =>
    block.kind === 'picture' ? { kind: block.kind, title: block.drawing.title, alt: block.drawing.alt } : block,
  );
  return { headline, blocks: given, assumed, cautions, sources, data };
}
