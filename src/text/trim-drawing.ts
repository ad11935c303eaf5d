/** The words on the pictures of trim: walls seen from the room, sticks as tapes. Figures come in already said. */

import { counted } from './floor.ts';

export const ELEVATION = {
  title: (room: string, page: string | undefined) =>
    `${room}: trim wall by wall${page === undefined ? '' : `, ${page}`}`,
  facts: (pieces: number, length: string) =>
    `${counted(pieces, 'piece')}, ${length} of trim. Left and right as you face the wall.`,
  wall: (label: string, length: string) => `wall ${label} · ${length}`,
  corners: (left: string, right: string) => `corners ${left} | ${right}`,
  piece: (letter: string, length: string, left: string, right: string) =>
    `${letter}  ${length}  ·  left ${left}  ·  right ${right}`,
  door: (width: string) => `open ${width}`,
  bare: 'no trim',
  notes: [
    'Each board as seen from above, the wall behind it. Short strokes above are studs; dots mark short pieces to glue up first.',
    'Lengths run long point to long point.',
  ],
  alt: (room: string, walls: readonly string[]) =>
    `Trim of ${room}, wall by wall, left to right as you face it. ${walls.join(' ')}`,
  altWall: (label: string, length: string, pieces: readonly string[]) =>
    `Wall ${label}, ${length}: ${pieces.length === 0 ? 'no trim' : pieces.join('; ')}.`,
} as const;

export const TAPES = {
  title: (page: string | undefined) => `Sticks and saw marks${page === undefined ? '' : `, ${page}`}`,
  facts: (sticks: number) =>
    `${counted(sticks, 'stick')}. Read the marks from the left, from the squared end, one after another.`,
  stick: (number: number, length: string, had: boolean) => `stick ${number} · ${length}${had ? ' · one you have' : ''}`,
  square: 'square off the end',
  piece: (piece: string, length: string) => `${piece}, ${length} long`,
  mark: (at: string, piece: string) => `${at} ${piece}`,
  left: (length: string) => `left ${length}`,
  notes: [
    'The number is where the piece ends at its long point; the saw’s kerf comes after it and is already counted in the next.',
    'Dots: left over.',
  ],
  alt: (sticks: readonly string[]) => `Sticks with their saw marks. ${sticks.join(' ')}`,
  altStick: (number: number, length: string, marks: readonly string[]) =>
    `Stick ${number}, ${length}: cut at ${marks.join(', ')}.`,
  page: (page: number, of: number) => `${page} of ${of}`,
} as const;
