/** The labels beside the rows: number, start and end cuts, and the number of a plank that serves twice. */

import { type Saying, sayCut } from '../input/format.ts';
import { sayPieceShort } from '../input/format-piece.ts';
import type { LaidRegion, Piece, Plan } from '../layout/floor.ts';
import { runsIn } from '../layout/runs.ts';
import { DRAWING } from '../text/drawing-text.ts';
import { ticks } from '../units/length.ts';
import type { CutSource } from './cut-source.ts';

/** One line beside a row; `leads` when a line is drawn from it to the row's end. */
export interface RowLabel {
  /** Middle of the row across the rows, in ticks from the starting side. */
  readonly v: number;
  readonly row: number;
  readonly name: string;
  readonly cut: string;
  readonly offcut: string;
  readonly rip: string;
  readonly leads: boolean;
}

/** Labels at the starts and at the ends of rows, in laying order. */
export interface RowLabels {
  readonly starts: readonly RowLabel[];
  readonly ends: readonly RowLabel[];
}

/** What labels are made from. */
export interface Labelled {
  readonly plan: Plan;
  readonly sources: ReadonlyMap<Piece, CutSource>;
  readonly saying: Saying;
}

/** Labels of rows `first` to `last` (indices, both included). */
export function rowLabels(region: LaidRegion, first: number, last: number, told: Labelled): RowLabels {
  const starts: RowLabel[] = [];
  const ends: RowLabel[] = [];
  region.rows.slice(first, last + 1).forEach((row, i) => {
    const index = first + i;
    const rip = row.height < told.plan.plank.width ? DRAWING.rip(sayCut(ticks(row.height), told.saying)) : '';
    const blank = { v: row.v + row.height / 2, row: index, name: '', cut: '', offcut: '', leads: false };
    // The strip's own line stands on its outer side, away from the rows that are whole.
    if (rip !== '' && index === 0) starts.push({ ...blank, rip });
    const runs = runsIn(row);
    runs.forEach((pieces, k) => {
      const [start, end] = [pieces[0], pieces.at(-1)];
      if (!start || !end) return;
      const name = runName(index, k, runs.length);
      starts.push({ ...blank, name, ...saidCut(start, told), rip: '', leads: k === 0 });
      if (end === start) return;
      const own = runs.length > 1 ? name : '';
      ends.push({ ...blank, name: own, ...saidCut(end, told), rip: '', leads: k === runs.length - 1 });
    });
    if (rip !== '' && index > 0) starts.push({ ...blank, rip });
  });
  return { starts, ends };
}

/** 5, or 5a and 5b where a wall parts row 5: as in the laying guide. */
function runName(row: number, run: number, runs: number): string {
  return `${row + 1}${runs > 1 ? String.fromCodePoint(97 + (run % 26)) : ''}`;
}

/** A piece's length as it is cut; a plank that is not cut is whole. */
export function sayPiece(piece: Piece, saying: Saying): string {
  if (piece.part === 'whole') return piece.shape ? DRAWING.wholeCut : DRAWING.whole;
  return sayPieceShort(piece, saying);
}

function saidCut(piece: Piece, { sources, saying }: Labelled): Pick<RowLabel, 'cut' | 'offcut'> {
  const number = sources.get(piece)?.number;
  return { cut: sayPiece(piece, saying), offcut: number === undefined ? '' : DRAWING.offcut(number) };
}
