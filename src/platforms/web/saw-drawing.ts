/** A piece as it lies on the saw, seen from above: its ends to their angle, its length not to scale. */

import { html } from 'hono/html';
import type { SawEnd, SawPiece } from '../../reply/job-sheet.ts';
import { PAGE_SAW } from '../../text/page-text.ts';
import { type Html, NOTHING, oneLine } from './markup.ts';

/** The sheet, in its own units. */
const WIDTH = 320;
const LEFT = 46;
const RIGHT = WIDTH - LEFT;
const TOP = 38;
/** How deep a piece is drawn; a baseboard on its foot is thin, a plank is wide. */
const DEEP = { trim: 40, plank: 60 } as const;
/** An end so slanted that it would run off the sheet is drawn as far as there is room. */
const MOST = 66;

type Corner = readonly [x: number, y: number];

/** Corners of the piece, the far edge (fence, or next row) first: left far, right far, right close, left close. */
export function sawCorners({ of, left, right }: Pick<SawPiece, 'of' | 'left' | 'right'>): readonly Corner[] {
  const deep = DEEP[of];
  const inset = (end: SawEnd): { readonly far: number; readonly close: number } => {
    const run = Math.min(MOST, deep * Math.tan((end.degrees * Math.PI) / 180));
    if (end.long === 'back' || end.long === 'far') return { far: 0, close: run };
    if (end.long === 'face' || end.long === 'near') return { far: run, close: 0 };
    return { far: 0, close: 0 };
  };
  const [a, b] = [inset(left), inset(right)];
  return [
    [LEFT + a.far, TOP],
    [RIGHT - b.far, TOP],
    [RIGHT - b.close, TOP + deep],
    [LEFT + a.close, TOP + deep],
  ];
}

/** The drawing. An end that goes on as bought is drawn with its lock, a coped one with a wavy line. */
export function sawDrawing(piece: SawPiece, id: string): Html {
  const corners = sawCorners(piece);
  const [farLeft, farRight, closeRight, closeLeft] = corners;
  if (!farLeft || !farRight || !closeRight || !closeLeft) return NOTHING;
  const deep = DEEP[piece.of];
  const bottom = TOP + deep;
  const { left, right } = piece;
  const alt = PAGE_SAW.alt(oneLine(piece.what), sayEnd(left), sayEnd(right));
  const trim = piece.of === 'trim';
  const below = bottom + (left.degrees + right.degrees > 0 ? 32 : 18);
  const fence = html`<path class="fence" d="M4 ${TOP - 3}H${WIDTH - 4}"/>${note(TOP - 9, PAGE_SAW.fence)}`;
  return html`<svg class="saw-drawing" viewBox="0 0 ${WIDTH} ${below + 6}" role="img" aria-labelledby="${id}-alt"><title id="${id}-alt">${alt}</title>
${trim ? fence : note(TOP - 9, PAGE_SAW.far)}
<path class="wood" d="M${corners.map(([x, y]) => `${short(x)} ${short(y)}`).join('L')}Z"/>
${cutLine(farLeft, closeLeft, left)}${cutLine(farRight, closeRight, right)}
${angle(left, closeLeft[0], bottom, 'left')}${angle(right, closeRight[0], bottom, 'right')}
${longPoint(left, farLeft, closeLeft)}${longPoint(right, farRight, closeRight)}
${note(below, trim ? PAGE_SAW.you : PAGE_SAW.near)}</svg>`;
}

/** An end in words: the cut, and which side is the longer. */
export function sayEnd({ said, long }: SawEnd): string {
  return long === undefined ? oneLine(said) : `${oneLine(said)}, ${PAGE_SAW.longSide[long]}`;
}

function note(y: number, text: string): Html {
  return html`<text class="note" x="${WIDTH / 2}" y="${y}" text-anchor="middle">${text}</text>`;
}

function cutLine([x, y]: Corner, [toX, toY]: Corner, { cut }: SawEnd): Html {
  if (cut === 'factory') return NOTHING;
  // The blade's line goes on past the piece at both sides.
  const [dx, dy] = [toX - x, toY - y];
  const on = 10 / Math.hypot(dx, dy);
  const line = `M${short(x - dx * on)} ${short(y - dy * on)}L${short(toX + dx * on)} ${short(toY + dy * on)}`;
  return html`<path class="blade" d="${line}"/>`;
}

/** A dot at the long point: the end of the piece that reaches furthest. */
function longPoint({ long }: SawEnd, far: Corner, close: Corner): Html {
  if (long === undefined) return NOTHING;
  const [x, y] = long === 'back' || long === 'far' ? far : close;
  return html`<circle class="long-point" cx="${short(x)}" cy="${y}" r="5"/>`;
}

/** Beside the blade's line, on the side it leans away from. */
function angle({ degrees, long }: SawEnd, x: number, bottom: number, side: 'left' | 'right'): Html {
  if (degrees === 0) return NOTHING;
  const outwards = (long === 'back' || long === 'far') === (side === 'left') ? -8 : 8;
  return html`<text class="angle" x="${short(x + outwards)}" y="${bottom + 20}" text-anchor="${outwards < 0 ? 'end' : 'start'}">${degreesOf(degrees)}</text>`;
}

function degreesOf(degrees: number): string {
  return `${Math.round(degrees * 10) / 10}°`;
}

function short(value: number): number {
  return Math.round(value * 100) / 100;
}
