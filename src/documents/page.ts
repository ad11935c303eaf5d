/** Pages as plain data: what is inked where, and what it is for whoever has it read out. */

import type { Drawing } from '../reply/drawing.ts';
import { PAPERS, type Paper } from './paper.ts';

/** A mark on paper; x to the right, y down from the top left corner, in points. */
export type Ink =
  /** From the left end of its baseline. */
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

/** A part of the document's structure, by the names of ISO 32000. */
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

/** Ink of one part; without a tag it is decoration, which is not read out. */
export interface Marked {
  readonly tag: Tag | undefined;
  readonly inks: readonly Ink[];
}

export interface Page {
  readonly marked: Marked[];
}

/** A whole document. */
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

/** Width and height of a paper in points. */
export function sizeOf(paper: Paper): { readonly width: number; readonly height: number } {
  return PAPERS[paper];
}
