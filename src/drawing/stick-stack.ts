/** Blocks stacked below each other on as many sheets as they need, and labels set beside each other on one line. */

import { type Drawing, SHEET_WIDTH } from '../reply/drawing.ts';
import { TAPES } from '../text/drawing-text.ts';
import { MARGIN } from './fit.ts';
import { notes, type Part } from './footer.ts';
import { sheetOf } from './sheet.ts';
import { baseline, SMALL, wrapped, write } from './text.ts';
import { placed } from './turn.ts';

/** Longest stack on one sheet, in sheet units. */
const LONGEST = 1150;
const LINE = 12;

/** A block with its words for whoever cannot see it. */
export interface Block extends Part {
  readonly alt: string;
}

/** What stands round the blocks of each sheet; `page` is undefined where there is one sheet. */
export interface Frame {
  readonly title: (page: string | undefined) => string;
  readonly facts: readonly string[];
  readonly notes: readonly string[];
  readonly alt: (blocks: readonly string[]) => string;
}

/** Sheets with the blocks in order. */
export function stacked(blocks: readonly Block[], frame: Frame): readonly Drawing[] {
  const pages: Block[][] = [];
  let height = Number.POSITIVE_INFINITY;
  for (const block of blocks) {
    if (height + block.height > LONGEST) {
      pages.push([]);
      height = 0;
    }
    pages.at(-1)?.push(block);
    height += block.height;
  }
  return pages.map((page, i) => {
    let y = 0;
    const shapes = page.flatMap((block) => {
      const moved = placed(block.shapes, { dx: 0, dy: y });
      y += block.height;
      return moved;
    });
    return sheetOf({
      title: frame.title(pages.length > 1 ? TAPES.page(i + 1, pages.length) : undefined),
      alt: frame.alt(page.map(({ alt }) => alt)),
      facts: frame.facts,
      figure: { shapes, upright: false, width: SHEET_WIDTH, height: y, listed: [] },
      below: [notes(frame.notes)],
    });
  });
}

/** Lines of text from (MARGIN, y) down, each broken where the sheet ends. */
export function lines(texts: readonly string[], y: number): Part {
  const all = texts.flatMap((text) => wrapped(text, SMALL, false, SHEET_WIDTH - 2 * MARGIN));
  return {
    shapes: all.map((line, i) => write('cut', line, MARGIN, baseline(y + LINE * (i + 0.5)))),
    height: all.length * LINE,
  };
}

/** Where the second column begins: behind the longest mark, 1234 5/16" or 12345 mm. */
const SECOND = 66;

/** Lines in two columns, the first bold: a number, and what it is for. */
export function rows(pairs: readonly (readonly [mark: string, text: string])[], y: number): Part {
  let height = 0;
  const shapes = pairs.flatMap(([mark, text]) => {
    const level = y + height + LINE / 2;
    const broken = wrapped(text, SMALL, false, SHEET_WIDTH - 2 * MARGIN - SECOND);
    height += LINE * Math.max(1, broken.length);
    return [
      ...(mark === '' ? [] : [write('cut', mark, MARGIN, baseline(level), { bold: true })]),
      ...broken.map((line, i) => write('cut', line, MARGIN + SECOND, baseline(level + LINE * i))),
    ];
  });
  return { shapes, height };
}
