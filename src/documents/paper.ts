/** Papers, and the sizes that everything on them is set in: points, 72 to the inch. */

export const PAPERS = {
  letter: { width: 612, height: 792 },
  a4: { width: 595.28, height: 841.89 },
} as const;

export type Paper = keyof typeof PAPERS;

/** Printers leave a quarter of an inch blank; a hole punch takes more. */
export const MARGIN = 45;
/** From the edge to the baseline of the footer. */
export const FOOTER = 26;

/** Text sizes and the distance from one baseline to the next. */
export const TYPE = {
  title: { size: 18, line: 23 },
  headline: { size: 11, line: 15 },
  heading: { size: 11.5, line: 15 },
  body: { size: 10, line: 13.5 },
  cell: { size: 9, line: 11.5 },
  small: { size: 8.5, line: 11 },
  footer: { size: 8, line: 10 },
} as const;

export const INK = '#1d2630';
export const QUIET = '#46525e';
export const RULE = '#8a949f';
export const BAND = '#eceff2';

/** Side of a box to tick by hand. */
export const BOX = 8.5;
