/** Sticks as tapes: pieces in cutting order with the saw's marks, one number after another from the squared end. */

import { type Saying, sayCut, sayLength } from '../input/format.ts';
import { type Drawing, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { TAPES } from '../text/drawing-text.ts';
import { type Stick, type StickPiece, type Stock, sawMarks } from '../trim/sticks.ts';
import { type Length, ticks } from '../units/length.ts';
import { MARGIN } from './fit.ts';
import { textWidth } from './font.ts';
import { type Block, rows, stacked } from './stick-stack.ts';
import { baseline, SMALL, write } from './text.ts';

/** A plan's sticks with what they are cut from. Lengths in ticks. */
export interface SticksShown {
  readonly sticks: readonly Stick[];
  readonly stock: readonly Stock[];
  readonly pieces: readonly StickPiece[];
  readonly endTrim: Length;
}

const ACROSS = SHEET_WIDTH - 2 * MARGIN;
const HEIGHT = 15;
const TOP = 14;

/** Sheets of all sticks, in the order in which they are cut. */
export function drawSticks(shown: SticksShown, saying: Saying): readonly Drawing[] {
  const longest = Math.max(...shown.sticks.map(({ stock }) => shown.stock[stock]?.length ?? 0));
  return stacked(
    shown.sticks.map((stick, i) => stickBlock(stick, i + 1, shown, ACROSS / longest, saying)),
    { title: TAPES.title, facts: [TAPES.facts(shown.sticks.length)], notes: TAPES.notes, alt: TAPES.alt },
  );
}

function stickBlock(stick: Stick, number: number, shown: SticksShown, scale: number, saying: Saying): Block {
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

/** A piece's name on the tape where it fits, else nothing: the lines below follow in the same order. */
function label(id: string, order: number, from: number, to: number): readonly Shape[] {
  const text = [id, String(order)].find((one) => textWidth(one, SMALL, false) <= to - from - 4);
  if (text === undefined) return [];
  return [write('cut', text, (from + to) / 2, baseline(TOP + HEIGHT / 2), { anchor: 'middle' })];
}
