/** The words of cut pieces with slanted ends or odd shapes. */

export const SHAPE = {
  nothing: '0',
  /** Along the edge towards the row before, and towards the next. */
  sides: (near: string, far: string) => `${near} / ${far}`,
  /** `edge`: which edge of the board the long side is on. */
  slanted: (long: string, short: string, angles: string, edge: string) =>
    `${long} long side (${edge}), ${short} short side, ${angles}`,
  /** The edges of a board in a row, and of one that lies any way. */
  inRow: { near: 'row before', far: 'next row' },
  alone: { near: 'edge towards you', far: 'edge away' },
  leaning: (length: string, angles: string) => `${length} both sides, ends leaning ${angles}`,
  corners: (length: string, corners: readonly string[]) =>
    `${length}, cut to a shape with corners at ${corners.join(', ')}`,
  degrees: (degrees: number) => `${degrees}°`,
  /** `end` and `edge` name the corner. */
  cornerOff: (length: string, end: string, edge: string, along: string, across: string) =>
    `${length}, the corner at its ${end}, ${edge}, cut off: ${along} along, ${across} across`,
  ripped: (length: string, width: string, edge: string) => `${length}, ripped to ${width} (kept: ${edge})`,
  ends: { left: 'left end', right: 'right end' },
  nicked: (length: string) => `${length}, less than 1/16" off a corner`,
  corner: (along: string, across: string) => `${along} × ${across}`,
} as const;

/** How slanted pieces are told in the guide; stands among the steps where there are any. */
export const SLANTED_STEP =
  '“12" long side (next row), 5" short side, 45°” is a slanted end: mark both lengths along the two edges of the board from its uncut end, and cut from mark to mark; the angle is from a square cut. “corners at 3" × 2"” are places along the board from its left end × across it from the edge towards the row before. A plank’s number stands on what is kept of it, slanted end and all.';
