/** Sheets: heading, figure and legend stacked to the height they need, and how a room is split into pages. */

import { type Saying, sayLength } from '../input/format.ts';
import type { LaidRegion } from '../layout/floor.ts';
import { type Drawing, SHEET_WIDTH, type Shape, type ShapeRole } from '../reply/drawing.ts';
import { feet, inches, type Length, millimetres, ticks } from '../units/length.ts';
import type { Figure } from './figure.ts';
import { type Column, columnOf, type Fit, MARGIN, measure } from './fit.ts';
import { type Labelled, rowLabels } from './labels.ts';
import { asGiven, type RoomView, type RowRange, turnedQuarter, windowOn } from './shapes.ts';
import { placed } from './svg.ts';
import { baseline, SMALL, wrapped, write } from './text.ts';

const LINE = 12;
const SWATCH = { width: 16, height: 9 } as const;

/** Shapes from y = 0 down, and their total height. */
export interface SheetPart {
  readonly shapes: readonly Shape[];
  readonly height: number;
}

export interface Meaning {
  readonly role: ShapeRole;
  readonly text: string;
}

export function scaleBar(scale: number, saying: Saying): SheetPart {
  const length = roundLength(scale, saying);
  const width = length * scale;
  const x = MARGIN;
  const y = 6;
  const bar: Shape = {
    kind: 'lines',
    role: 'scale-bar',
    lines: [
      [
        [x, y],
        [x + width, y],
      ],
      [
        [x, y - 3],
        [x, y + 3],
      ],
      [
        [x + width, y - 3],
        [x + width, y + 3],
      ],
    ],
  };
  return { shapes: [bar, write('scale-label', sayLength(length, saying), x + width + 5, baseline(y))], height: 16 };
}

/** The longest round length that stays within a third of the sheet. */
function roundLength(scale: number, saying: Saying): Length {
  const round =
    saying.units === 'metric'
      ? [50_000, 20_000, 10_000, 5000, 2000, 1000, 500, 200, 100].map(millimetres)
      : [...[100, 50, 20, 10, 5, 2, 1].map(feet), inches(6), inches(3)];
  return round.find((length) => length * scale <= SHEET_WIDTH / 3) ?? ticks(round.at(-1) ?? 0);
}

export function legend(meanings: readonly Meaning[]): SheetPart {
  const shapes: Shape[] = [];
  let y = 0;
  const left = MARGIN + SWATCH.width + 6;
  for (const { role, text } of meanings) {
    const lines = wrapped(text, SMALL, false, SHEET_WIDTH - MARGIN - left);
    const swatch = { kind: 'rect', x: MARGIN, y: y + 1.5, ...SWATCH } as const;
    if (role === 'page-edge' || role === 'transition') {
      const middle = y + 6;
      shapes.push({
        kind: 'line',
        role,
        points: [
          [MARGIN, middle],
          [MARGIN + SWATCH.width, middle],
        ],
      });
    } else shapes.push({ ...swatch, role }, { ...swatch, role: 'swatch' });
    lines.forEach((line, i) => {
      shapes.push(write('legend', line, left, baseline(y + 6 + i * LINE)));
    });
    y += lines.length * LINE + 1;
  }
  return { shapes, height: y + 3 };
}

export function notes(sentences: readonly string[]): SheetPart {
  const lines = sentences.flatMap((sentence) => wrapped(sentence, SMALL, false, SHEET_WIDTH - 2 * MARGIN));
  const shapes = lines.map((line, i) => write('note', line, MARGIN, baseline(6 + i * LINE)));
  return { shapes, height: lines.length * LINE + 2 };
}

const TITLE = { size: 15, line: 19 } as const;
const FACT = { size: 10, line: 13.5 } as const;
const GAP = 7;

interface SheetParts {
  readonly title: string;
  readonly alt: string;
  readonly facts: readonly string[];
  readonly figure: Figure;
  readonly below: readonly SheetPart[];
}

/** Puts a sheet together. Heights are whole numbers, so that a picture of any width keeps its proportions. */
export function sheetOf({ title, alt, facts, figure, below }: SheetParts): Drawing {
  const head = heading(title, facts);
  const top = MARGIN + head.height;
  const turnedWidth = figure.upright ? figure.height : undefined;
  const shapes = [
    ...placed(head.shapes, { dx: 0, dy: MARGIN }),
    ...placed(figure.shapes, { dx: (SHEET_WIDTH - figure.width) / 2, dy: top, turnedWidth }),
  ];
  let y = top + figure.height + GAP;
  for (const part of below.filter(({ height }) => height > 3)) {
    shapes.push(...placed(part.shapes, { dx: 0, dy: y }));
    y += part.height;
  }
  return { width: SHEET_WIDTH, height: Math.ceil(y + MARGIN / 2), title, alt, shapes };
}

function heading(title: string, facts: readonly string[]): SheetPart {
  const width = SHEET_WIDTH - 2 * MARGIN;
  const titles = wrapped(title, TITLE.size, true, width).map((line, i) =>
    write('title', line, MARGIN, baseline(TITLE.line * (i + 0.5), TITLE.size), { size: TITLE.size, bold: true }),
  );
  const from = titles.length * TITLE.line + 2;
  const lines = facts.flatMap((fact) => wrapped(fact, FACT.size, false, width));
  const texts = lines.map((line, i) =>
    write('fact', line, MARGIN, baseline(from + FACT.line * (i + 0.5), FACT.size), { size: FACT.size }),
  );
  return { shapes: [...titles, ...texts], height: from + FACT.line * lines.length + GAP };
}

// A room is drawn as given if its labels can be read, else turned, else in pages of rows.

/** From this many rows up a room is drawn in pages. */
const PAGED_ROWS = 60;
const MOST_ROWS = 30;
/** Rows taller than this on the sheet need no better view. */
const READABLE_PITCH = 6.5;
/** How much larger a turned view must be to justify turning the room. */
const WORTH_TURNING = 1.25;

/** The measured figures of a room in laying order: just one if it fits a sheet. */
export function* pagesOf(region: LaidRegion, given: Labelled): Generator<undefined, readonly Fit[]> {
  const all = { first: 0, last: region.rows.length - 1 };
  const straight = asGiven(region);
  const turned = turnedQuarter(region);
  if (region.rows.length < PAGED_ROWS) {
    const columns = columnsOf(region, all, given);
    const single = measured(straight, all, given, columns);
    // Most rooms are drawn as given, so the other view usually isn't measured.
    const best = single.fits && isReadable(single) ? single : better(single, measured(turned, all, given, columns));
    if (best.fits) return [best];
  }
  const [a, b] = [yield* inPages(straight, given), yield* inPages(turned, given)];
  const [worstA, worstB] = [worst(a), worst(b)];
  return worstA && worstB && better(worstA, worstB) === worstB ? b : a;
}

function isReadable({ pitch }: Fit): boolean {
  return pitch >= READABLE_PITCH;
}

/** The first, unless the second makes a figure large enough to justify turning the room. */
function better(a: Fit, b: Fit): Fit {
  if (!b.fits) return a;
  if (!a.fits) return b;
  return isReadable(a) || b.pitch < a.pitch * WORTH_TURNING ? a : b;
}

interface Columns {
  readonly starts: Column;
  readonly ends: Column;
}

function columnsOf(region: LaidRegion, { first, last }: RowRange, given: Labelled): Columns {
  const { starts, ends } = rowLabels(region, first, last, given);
  return { starts: columnOf(starts, 'row-number'), ends: columnOf(ends, 'run-name') };
}

function measured(view: RoomView, range: RowRange, { plan }: Labelled, { starts, ends }: Columns): Fit {
  return measure(view, windowOn(view, plan, range), plan, starts, ends);
}

/** As few pages as fit, with nearly equal numbers of rows. */
function* inPages(view: RoomView, given: Labelled): Generator<undefined, readonly Fit[]> {
  const { length } = view.region.rows;
  for (let count = Math.ceil(length / MOST_ROWS); ; count++) {
    const size = Math.ceil(length / count);
    const pages: Fit[] = [];
    for (let first = 0; first < length; first += size) {
      const range = { first, last: Math.min(length, first + size) - 1 };
      pages.push(measured(view, range, given, columnsOf(view.region, range, given)));
      yield;
    }
    if (size === 1 || pages.every(({ fits }) => fits)) return pages;
  }
}

function worst(pages: readonly Fit[]): Fit | undefined {
  return pages.find(({ fits }) => !fits) ?? [...pages].sort((a, b) => a.pitch - b.pitch)[0];
}
