/** A saw card: every piece with its length in giant figures and its ends drawn, one after another; a script shows them one at a time. */

import { html, raw } from 'hono/html';
import type { SawPiece } from '../../reply/job-sheet.ts';
import { PAGE_SAW } from '../../text/page-text.ts';
import { each, type Html, NOTHING, oneLine } from './markup.ts';
import { sawDrawing, sayEnd } from './saw-drawing.ts';

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
    piece.width === undefined ? NOTHING : html`<p class="width">${PAGE_SAW.width(oneLine(piece.width))}</p>`;
  const remark = piece.note === undefined ? NOTHING : html`<p class="remark">${oneLine(piece.note)}</p>`;
  const head = `${own}-what`;
  const alike =
    piece.count === undefined || piece.count < 2
      ? NOTHING
      : html`<strong class="alike">${PAGE_SAW.alike(piece.count)}</strong>`;
  return html`<li class="piece${raw(isPlain(piece) ? ' simple' : '')}" id="${own}" tabindex="-1" aria-labelledby="${head}">
<p class="place" id="${head}"><span class="count">${PAGE_SAW.piece(place + 1, all)}</span> <strong>${oneLine(piece.place)}</strong> <span>${oneLine(piece.what)}</span> ${alike}</p>
<p class="length ${sizeOf(piece.length)}"><span class="what">${PAGE_SAW.longest[piece.of]}</span> <b>${oneLine(piece.length)}</b></p>${width}
${sawDrawing(piece, own)}
<dl class="ends pairs"><div><dt>${PAGE_SAW.left}</dt><dd>${sayEnd(piece.left)}</dd></div><div><dt>${PAGE_SAW.right}</dt><dd>${sayEnd(piece.right)}</dd></div><div><dt>${PAGE_SAW.from}</dt><dd>${oneLine(piece.from)}</dd></div></dl>${remark}
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
