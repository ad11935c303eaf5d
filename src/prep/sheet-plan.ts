/** Which pieces are cut from which sheet: strips across the sheet, pieces end to end in each. */

import type { Length } from '../units/length.ts';
import type { SheetSize } from './patch-panel.ts';

/** A piece on a sheet: `length` along the strength axis, its corner (`x` along the sheet, `y` across), in ticks. */
export interface PlacedPiece {
  /** The piece's index in what was asked. */
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

interface Strip {
  readonly y: number;
  readonly width: number;
  used: number;
}

interface Sheet {
  readonly strips: Strip[];
  readonly pieces: PlacedPiece[];
  used: number;
}

/**
 * Pieces on sheets, none turned (the strength axis stays), a kerf between neighbours; first fit, the widest first (shelf
 * packing, Coffman, Garey, Johnson and Tarjan 1980, from memory). Throws a RangeError for a piece larger than a sheet.
 */
export function planSheets(
  pieces: readonly { readonly width: number; readonly length: number }[],
  sheet: SheetSize,
  kerf: Length,
): readonly (readonly PlacedPiece[])[] {
  const sheets: Sheet[] = [];
  const order = pieces.map((piece, index) => ({ ...piece, index }));
  order.sort((a, b) => b.width - a.width || b.length - a.length || a.index - b.index);
  for (const { width, length, index } of order) {
    if (width > sheet.width || length > sheet.length) throw new RangeError('a piece larger than a sheet');
    const { on, strip } = placeFor(sheets, sheet, kerf, width, length);
    const x = strip.used === 0 ? 0 : strip.used + kerf;
    on.pieces.push({ piece: index, x, y: strip.y, length, width });
    strip.used = x + length;
  }
  return sheets.map((one) => one.pieces);
}

/** The first strip with room; else a new strip on the first sheet with room; else a new sheet. */
function placeFor(
  sheets: Sheet[],
  size: SheetSize,
  kerf: Length,
  width: number,
  length: number,
): { on: Sheet; strip: Strip } {
  for (const on of sheets) {
    const strip = on.strips.find((one) => one.width >= width && one.used + kerf + length <= size.length);
    if (strip) return { on, strip };
  }
  let on = sheets.find(({ used }) => used + kerf + width <= size.width);
  if (!on) {
    on = { strips: [], pieces: [], used: 0 };
    sheets.push(on);
  }
  const strip: Strip = { y: on.used === 0 ? 0 : on.used + kerf, width, used: 0 };
  on.strips.push(strip);
  on.used = strip.y + width;
  return { on, strip };
}
