/** The pieces of an ask gathered into regions: each a shape with the corners left out of it, and its name. */

import { distinctNames, LONGEST_NAME } from './room-name.ts';
import type { Piece } from './room-piece.ts';

/** A piece with the name typed round it, empty when there is none. */
export interface NamedPiece extends Piece {
  readonly name: string;
}

/** One region to be: `group` numbers the room it was joined to, counted from 0. */
export interface Gathered {
  readonly name: string;
  readonly piece: NamedPiece;
  readonly notches: readonly NamedPiece[];
  readonly bays: readonly NamedPiece[];
  readonly group: number;
}

/** The regions in the order typed, every one with a name of its own. */
export function gathered(pieces: readonly NamedPiece[]): Gathered[] {
  const regions: { piece: NamedPiece; notches: NamedPiece[]; bays: NamedPiece[]; group: number }[] = [];
  let group = -1;
  for (const piece of pieces) {
    const last = regions.at(-1);
    if (piece.sign === 'minus' && last) {
      last.notches.push(piece);
      continue;
    }
    if (piece.sign === 'bay' && last) {
      last.bays.push(piece);
      continue;
    }
    if (piece.sign !== 'plus') group++;
    regions.push({ piece, notches: [], bays: [], group });
  }
  const names = distinctNames(withDefaults(regions));
  return regions.map((region, i) => ({ ...region, name: names[i] ?? region.piece.name }));
}

/** Unnamed rooms are “room”, or numbered when there are several; what is joined to one is its name and “+ 1”. */
function withDefaults(regions: readonly { piece: NamedPiece }[]): string[] {
  const unnamed = regions.filter(({ piece }) => piece.sign !== 'plus' && piece.name === '').length;
  let [rooms, joined, base] = [0, 0, ''];
  return regions.map(({ piece }) => {
    if (piece.sign !== 'plus') {
      joined = 0;
      if (piece.name === '') rooms++;
      base = piece.name || (unnamed > 1 ? `room ${rooms}` : 'room');
      return base;
    }
    if (piece.name !== '') return piece.name;
    joined++;
    const tail = ` + ${joined}`;
    return `${[...base]
      .slice(0, LONGEST_NAME - tail.length)
      .join('')
      .trim()}${tail}`;
  });
}
