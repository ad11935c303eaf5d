/** Pages as plain data: what is drawn where, and its structure for screen readers. */

import type { Drawing } from '../reply/drawing.ts';

// Paper and type sizes in points, 72 to the inch.

const PAPERS = {
  letter: { width: 612, height: 792 },
  a4: { width: 595.28, height: 841.89 },
} as const;

export type Paper = keyof typeof PAPERS;

/** Printers leave a quarter inch blank, and a hole punch needs more. */
export const PAPER_MARGIN = 40;
/** From the edge to the baseline of the footer. */
export const FOOTER = 26;

export const TYPE = {
  title: { size: 16, line: 20 },
  headline: { size: 10.5, line: 14 },
  heading: { size: 11, line: 14 },
  body: { size: 9.5, line: 12.5 },
  cell: { size: 8.5, line: 10.6 },
  small: { size: 8.3, line: 10.4 },
  footer: { size: 8, line: 10 },
} as const;

export const INK = '#1d2630';
export const QUIET = '#46525e';
export const RULE = '#8a949f';
export const BAND = '#eceff2';

/** Side of a checkbox to tick by hand. */
export const BOX = 8.5;

/** A mark on paper; x to the right, y down from the top left corner, in points. */
export type Ink =
  /** Left end of the baseline. */
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly bold: boolean;
      readonly colour: string;
      readonly anchor?: 'start' | 'end';
    }
  | {
      readonly kind: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly fill?: string;
      readonly stroke?: string;
    }
  | {
      readonly kind: 'drawing';
      readonly x: number;
      readonly y: number;
      readonly scale: number;
      readonly drawing: Drawing;
    };

/** A structure element, named as in ISO 32000. */
export interface Tag {
  readonly type:
    | 'Document'
    | 'Sect'
    | 'H1'
    | 'H2'
    | 'P'
    | 'L'
    | 'LI'
    | 'Lbl'
    | 'LBody'
    | 'Table'
    | 'TR'
    | 'TH'
    | 'TD'
    | 'Figure';
  readonly parts: Tag[];
  readonly alt?: string;
}

/** Marks of one element; without a tag they are decoration that isn't read out. */
interface Marked {
  readonly tag: Tag | undefined;
  readonly inks: readonly Ink[];
}

export interface Page {
  readonly marked: Marked[];
}

export interface Pages {
  readonly paper: Paper;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly made: number;
  readonly root: Tag;
  readonly pages: readonly Page[];
}

export function tagOf(type: Tag['type'], parent: Tag | undefined, alt?: string): Tag {
  const tag: Tag = { type, parts: [], ...(alt !== undefined && { alt }) };
  parent?.parts.push(tag);
  return tag;
}

export function sizeOf(paper: Paper): { readonly width: number; readonly height: number } {
  return PAPERS[paper];
}

/** Space kept free at the bottom for the footer. */
const FOOT = 14;

export class Flow {
  readonly paper: Paper;
  readonly pages: Page[];
  readonly root: Tag = tagOf('Document', undefined);
  readonly left: number;
  readonly width: number;
  readonly top = PAPER_MARGIN;
  readonly bottom: number;
  /** Where the next block starts. */
  y = PAPER_MARGIN;

  /** With `pages`, a column that is `aside` points narrower at the left, on the last of these pages. */
  constructor(paper: Paper, aside = 0, pages: Page[] = []) {
    this.paper = paper;
    this.pages = pages;
    this.left = PAPER_MARGIN + aside;
    this.width = PAPERS[paper].width - 2 * PAPER_MARGIN - aside;
    this.bottom = PAPERS[paper].height - PAPER_MARGIN - FOOT;
  }

  get full(): number {
    return this.bottom - this.top;
  }

  get rest(): number {
    return this.pages.length === 0 ? 0 : this.bottom - this.y;
  }

  turn(): void {
    this.pages.push({ marked: [] });
    this.y = this.top;
  }

  /** Starts a new page if less than this is left and a whole page has room for it. */
  need(height: number): void {
    if (this.rest < Math.min(height, this.full)) this.turn();
  }

  /** Space between blocks; none at the top of a page. */
  gap(height: number): void {
    if (this.pages.length > 0 && this.y > this.top) this.y += height;
  }

  ink(tag: Tag | undefined, ...inks: readonly Ink[]): void {
    this.pages.at(-1)?.marked.push({ tag, inks });
  }
}
