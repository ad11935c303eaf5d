/** A sheet: heading, figure and what stands below it, stacked to the height they need. */

import { type Drawing, SHEET_WIDTH } from '../reply/drawing.ts';
import type { Figure } from './figure.ts';
import { MARGIN } from './fit.ts';
import type { Part } from './footer.ts';
import { baseline, wrapped, write } from './text.ts';
import { placed } from './turn.ts';

const TITLE = { size: 15, line: 19 } as const;
const FACT = { size: 10, line: 13.5 } as const;
const GAP = 7;

/** What a sheet is made of. */
export interface SheetParts {
  readonly title: string;
  readonly alt: string;
  readonly facts: readonly string[];
  readonly figure: Figure;
  readonly below: readonly Part[];
}

/** Puts a sheet together. Heights are whole, so that a picture of any width is in proportion. */
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

function heading(title: string, facts: readonly string[]): Part {
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
