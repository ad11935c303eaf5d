/** Sticks drawn as tapes: pieces in cutting order with the saw marks, measured from the squared end. */

import { type Saying, sayCut, sayLength } from '../input/format.ts';
import { type Drawing, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { TAPES } from '../text/drawing-text.ts';
import { type Stick, type StickPiece, type Stock, sawMarks } from '../trim/sticks.ts';
import { type Length, ticks } from '../units/length.ts';
import { notes, type SheetPart, sheetOf } from './drawing-sheet.ts';
import { MARGIN } from './fit.ts';
import { textWidth } from './font.ts';
import { placed } from './svg.ts';
import { baseline, SMALL, wrapped, write } from './text.ts';

/** Longest stack on one sheet, in sheet units. */
const LONGEST = 1150;
const LINE = 12;

export interface StickBlock extends SheetPart {
  readonly alt: string;
}

/** What surrounds the blocks of each sheet; `page` is undefined if there is only one sheet. */
interface Frame {
  readonly title: (page: string | undefined) => string;
  readonly facts: readonly string[];
  readonly notes: readonly string[];
  readonly alt: (blocks: readonly string[]) => string;
}

export function stacked(blocks: readonly StickBlock[], frame: Frame): readonly Drawing[] {
  const pages: StickBlock[][] = [];
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

/** Lines of text from (MARGIN, y) down, wrapped at the edge of the sheet. */
export function stickLines(texts: readonly string[], y: number): SheetPart {
  const all = texts.flatMap((text) => wrapped(text, SMALL, false, SHEET_WIDTH - 2 * MARGIN));
  return {
    shapes: all.map((line, i) => write('cut', line, MARGIN, baseline(y + LINE * (i + 0.5)))),
    height: all.length * LINE,
  };
}

/** Where the second column starts: past the longest mark, 1234 5/16" or 12345 mm. */
const SECOND = 66;

/** Lines in two columns, the first in bold: a number, and what it is for. */
function rows(pairs: readonly (readonly [mark: string, text: string])[], y: number): SheetPart {
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

/** A plan's sticks with what they are cut from. Lengths in ticks. */
interface SticksShown {
  readonly sticks: readonly Stick[];
  readonly stock: readonly Stock[];
  readonly pieces: readonly StickPiece[];
  readonly endTrim: Length;
}

const ACROSS = SHEET_WIDTH - 2 * MARGIN;
const HEIGHT = 15;
const TOP = 14;

export function drawSticks(shown: SticksShown, saying: Saying): readonly Drawing[] {
  const longest = Math.max(...shown.sticks.map(({ stock }) => shown.stock[stock]?.length ?? 0));
  return stacked(
    shown.sticks.map((stick, i) => stickBlock(stick, i + 1, shown, ACROSS / longest, saying)),
    { title: TAPES.title, facts: [TAPES.facts(shown.sticks.length)], notes: TAPES.notes, alt: TAPES.alt },
  );
}

function stickBlock(stick: Stick, number: number, shown: SticksShown, scale: number, saying: Saying): StickBlock {
  const stock = shown.stock[stick.stock];
  const length = ticks(stock?.length ?? 0);
  const byId = new Map(shown.pieces.map((piece) => [piece.id, piece]));
  const marks = sawMarks(stick, byId, shown.endTrim);
  const at = (place: number): number => MARGIN + place * scale;
  const used = length - stick.leftover;
  const title = TAPES.stick(number, sayLength(length, saying), stock?.have !== undefined);
  const said = marks.map(({ id, to }) => TAPES.mark(sayCut(to, saying), id));
  const below = rows(
    [
      ...(shown.endTrim > 0 ? [[sayCut(shown.endTrim, saying), TAPES.square] as const] : []),
      ...marks.map(
        ({ id, to, from }) => [sayCut(to, saying), TAPES.piece(id, sayCut(ticks(to - from), saying))] as const,
      ),
      ['', TAPES.left(sayCut(ticks(stick.leftover), saying))],
    ],
    TOP + HEIGHT + 3,
  );
  const shapes: Shape[] = [
    write('dimension', title, MARGIN, baseline(6), { bold: true }),
    ...tapeShape('offcut-kept', at(used), at(length)),
    ...(shown.endTrim > 0 ? tapeShape('gap', at(0), at(shown.endTrim)) : []),
    ...marks.flatMap(({ from, to }) => tapeShape('plank-whole', at(from), at(to))),
    ...marks.flatMap(({ id, from, to }, i) => label(id, i + 1, at(from), at(to))),
    ...below.shapes,
  ];
  const alt = TAPES.altStick(number, sayLength(length, saying), said);
  return { shapes, height: TOP + HEIGHT + 3 + below.height + 9, alt };
}

function tapeShape(role: 'plank-whole' | 'offcut-kept' | 'gap', from: number, to: number): readonly Shape[] {
  if (to <= from) return [];
  const edge = [
    [from, TOP],
    [to, TOP],
    [to, TOP + HEIGHT],
    [from, TOP + HEIGHT],
    [from, TOP],
  ] as const;
  return [
    { kind: 'rect', role, x: from, y: TOP, width: to - from, height: HEIGHT },
    { kind: 'line', role: 'wall-face', points: edge },
  ];
}

/** A piece's name on the tape if it fits; the lines below list them in the same order. */
function label(id: string, order: number, from: number, to: number): readonly Shape[] {
  const text = [id, String(order)].find((one) => textWidth(one, SMALL, false) <= to - from - 4);
  if (text === undefined) return [];
  return [write('cut', text, (from + to) / 2, baseline(TOP + HEIGHT / 2), { anchor: 'middle' })];
}
