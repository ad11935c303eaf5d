/** A saw card: every piece with its length in giant figures and its ends drawn, one after another; a script shows them one at a time. */

import { html, raw } from 'hono/html';
import type { SawEnd, SawPiece } from '../../reply/job-sheet.ts';
import { PAGE_SAW } from '../../text/page-text.ts';
import { each, type Html, htmlLine, NOTHING } from './render.ts';

// A piece as it lies on the saw, seen from above: its ends to their angle, its length not to scale.

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
function sawCorners({ of, left, right }: Pick<SawPiece, 'of' | 'left' | 'right'>): readonly Corner[] {
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
function sawDrawing(piece: SawPiece, id: string): Html {
  const corners = sawCorners(piece);
  const [farLeft, farRight, closeRight, closeLeft] = corners;
  if (!farLeft || !farRight || !closeRight || !closeLeft) return NOTHING;
  const deep = DEEP[piece.of];
  const bottom = TOP + deep;
  const { left, right } = piece;
  const alt = PAGE_SAW.alt(htmlLine(piece.what), sayEnd(left), sayEnd(right));
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
function sayEnd({ said, long }: SawEnd): string {
  return long === undefined ? htmlLine(said) : `${htmlLine(said)}, ${PAGE_SAW.longSide[long]}`;
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

/** Characters of a length that are still shown at the largest size, and at the second. */
const LARGEST = 5;
const LARGE = 9;

/** The pieces of a sheet. `id` begins the ids of what is in it. */
export function sawCard(pieces: readonly SawPiece[], id: string): Html {
  if (pieces.length === 0) return NOTHING;
  return html`<div class="saw" id="${id}-saw" data-saw="${id}"><ol class="pieces">${each(pieces, (piece, place) =>
    pieceHtml(piece, id, place, pieces.length),
  )}</ol></div>`;
}

function pieceHtml(piece: SawPiece, id: string, place: number, all: number): Html {
  const own = `${id}-p${place + 1}`;
  const to = (other: number): string => `#${id}-p${other + 1}`;
  const width =
    piece.width === undefined ? NOTHING : html`<p class="width">${PAGE_SAW.width(htmlLine(piece.width))}</p>`;
  const remark = piece.note === undefined ? NOTHING : html`<p class="remark">${htmlLine(piece.note)}</p>`;
  const head = `${own}-what`;
  const alike =
    piece.count === undefined || piece.count < 2
      ? NOTHING
      : html`<strong class="alike">${PAGE_SAW.alike(piece.count)}</strong>`;
  return html`<li class="piece${raw(isPlain(piece) ? ' simple' : '')}" id="${own}" tabindex="-1" aria-labelledby="${head}">
<p class="place" id="${head}"><span class="count">${PAGE_SAW.piece(place + 1, all)}</span> <strong>${htmlLine(piece.place)}</strong> <span>${htmlLine(piece.what)}</span> ${alike}</p>
<p class="length ${sizeOf(piece.length)}"><span class="what">${PAGE_SAW.longest[piece.of]}</span> <b>${htmlLine(piece.length)}</b></p>${width}
${sawDrawing(piece, own)}
<dl class="ends pairs"><div><dt>${PAGE_SAW.left}</dt><dd>${sayEnd(piece.left)}</dd></div><div><dt>${PAGE_SAW.right}</dt><dd>${sayEnd(piece.right)}</dd></div><div><dt>${PAGE_SAW.from}</dt><dd>${htmlLine(piece.from)}</dd></div></dl>${remark}
<p class="lies">${PAGE_SAW.intro[piece.of]} ${PAGE_SAW.scale}</p>
<p class="steps-through">${step(PAGE_SAW.back, place > 0 ? to(place - 1) : undefined)}${step(PAGE_SAW.next, place + 1 < all ? to(place + 1) : undefined)}</p></li>`;
}

/** A way to another piece; at either end of the list it leads nowhere and keeps its place. */
function step(label: string, to: string | undefined): Html {
  if (to === undefined) return html`<span class="button none" aria-hidden="true">${label}</span>`;
  return html`<a class="button" href="${to}"${raw(label === PAGE_SAW.next ? ' rel="next"' : ' rel="prev"')}>${label}</a>`;
}

/** Whether the list on paper tells all of it: an end that is neither square nor as bought is drawn there too. */
function isPlain({ left, right }: SawPiece): boolean {
  return left.degrees === 0 && right.degrees === 0;
}

function sizeOf(length: string): string {
  const count = [...length].length;
  return count <= LARGEST ? 'giant' : count <= LARGE ? 'huge' : 'large';
}
