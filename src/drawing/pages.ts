/** Which way a room is seen and on how many sheets: as told where its labels can be read, else turned, else in pages of rows. */

import type { LaidRegion } from '../layout/floor.ts';
import { type Fit, measure } from './fit.ts';
import { type Column, columnOf } from './label-column.ts';
import { type Labelled, rowLabels } from './row-label.ts';
import { asTold, turnedQuarter, type View } from './view.ts';
import { type RowRange, windowOn } from './window.ts';

/** From this many rows up a room is drawn in pages. */
export const PAGED_ROWS = 60;
const MOST_ROWS = 30;
/** Rows higher than this on the sheet need no better view. */
const READABLE_PITCH = 6.5;
/** What a turned view must gain before the room is not drawn as it was told. */
const WORTH_TURNING = 1.25;

/** The measured figures of a room, in laying order: one where it fits a sheet. */
export function* pagesOf(region: LaidRegion, told: Labelled): Generator<undefined, readonly Fit[]> {
  const all = { first: 0, last: region.rows.length - 1 };
  const straight = asTold(region);
  const turned = turnedQuarter(region);
  if (region.rows.length < PAGED_ROWS) {
    const columns = columnsOf(region, all, told);
    const single = measured(straight, all, told, columns);
    // Most rooms are drawn as they were told: the other view is not looked at then.
    const best = single.fits && isReadable(single) ? single : better(single, measured(turned, all, told, columns));
    if (best.fits) return [best];
  }
  const [a, b] = [yield* inPages(straight, told), yield* inPages(turned, told)];
  const [worstA, worstB] = [worst(a), worst(b)];
  return worstA && worstB && better(worstA, worstB) === worstB ? b : a;
}

function isReadable({ pitch }: Fit): boolean {
  return pitch >= READABLE_PITCH;
}

/** The first of two, unless the second makes a figure that is worth turning the room for. */
function better(a: Fit, b: Fit): Fit {
  if (!b.fits) return a;
  if (!a.fits) return b;
  return isReadable(a) || b.pitch < a.pitch * WORTH_TURNING ? a : b;
}

interface Columns {
  readonly starts: Column;
  readonly ends: Column;
}

/** Every label of some rows. */
function columnsOf(region: LaidRegion, { first, last }: RowRange, told: Labelled): Columns {
  const { starts, ends } = rowLabels(region, first, last, told);
  return { starts: columnOf(starts, 'row-number'), ends: columnOf(ends, 'run-name') };
}

function measured(view: View, range: RowRange, { plan }: Labelled, { starts, ends }: Columns): Fit {
  return measure(view, windowOn(view, plan, range), plan, starts, ends);
}

/** Pages of nearly equal numbers of rows, as few as fit. */
function* inPages(view: View, told: Labelled): Generator<undefined, readonly Fit[]> {
  const { length } = view.region.rows;
  for (let count = Math.ceil(length / MOST_ROWS); ; count++) {
    const size = Math.ceil(length / count);
    const pages: Fit[] = [];
    for (let first = 0; first < length; first += size) {
      const range = { first, last: Math.min(length, first + size) - 1 };
      pages.push(measured(view, range, told, columnsOf(view.region, range, told)));
      yield;
    }
    if (size === 1 || pages.every(({ fits }) => fits)) return pages;
  }
}

/** The page that reads worst. */
function worst(pages: readonly Fit[]): Fit | undefined {
  return pages.find(({ fits }) => !fits) ?? [...pages].sort((a, b) => a.pitch - b.pitch)[0];
}
