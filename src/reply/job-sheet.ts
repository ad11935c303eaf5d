/** A project's answers gathered to be handed on: one sheet a task, what can be ticked on it, and what is cut at the saw. Plain data. */

import type { Reply, Result } from './reply.ts';

export const SHEET_KEYS = ['shopping', 'tearout', 'repairs', 'checklist', 'guide', 'cuts'] as const;
export type SheetKey = (typeof SHEET_KEYS)[number];

/** Result data of kind `sheets`. */
export interface Sheets extends Result {
  readonly kind: 'sheets';
  /** The project's name, as somebody typed it. */
  readonly project: string;
  /** Milliseconds since 1970. */
  readonly made: number;
  /** How numbers and dates are written on them. */
  readonly units: 'imperial' | 'metric';
  /** IANA name of the zone in which dates are told. */
  readonly zone: string;
  readonly sheets: readonly JobSheet[];
  /** In words, what could not be put on them. */
  readonly missing?: readonly string[];
}

/** One task: its answer, and what of it somebody can do at the page. Guides and cuts are of one room each. */
export interface JobSheet {
  readonly key: SheetKey;
  readonly room?: string;
  readonly title: string;
  readonly reply: Reply;
  readonly ticks?: readonly Tick[];
  readonly pieces?: readonly SawPiece[];
}

/** Something to tick off: `ask` is the line that ticks it, `undo` the one that takes it back. */
export interface Tick {
  /** Stable as long as the thing is the same. */
  readonly key: string;
  readonly label: string;
  /** What it belongs under: a stage of the shopping list, a room of the checklist. */
  readonly group: string;
  readonly ticked: boolean;
  /** Who ticked it, where that is known: a name or a role. */
  readonly by?: string;
  /** Milliseconds since 1970. */
  readonly at?: number;
  readonly ask: string;
  readonly undo: string;
}

/** How one end of a piece is cut. `degrees` is the saw's setting off square, 0 for a square end. */
export interface SawEnd {
  /** `factory`: the end as it was bought, locks and all. */
  readonly cut: 'factory' | 'square' | 'mitre' | 'cope' | 'scarf' | 'slant' | 'shape';
  readonly degrees: number;
  /** For a mitre or a cope: the corner of the room that it goes into or round. */
  readonly corner?: 'inside' | 'outside';
  /** Which side of the piece is the longer at this end: of trim its back or its face, of a plank the edge towards the row before (near) or the next (far). */
  readonly long?: 'back' | 'face' | 'near' | 'far';
  /** In words, such as `outside miter 45°`. */
  readonly said: string;
}

/** One cut piece, in the order in which it comes up at the saw. */
export interface SawPiece {
  /** From 1, on its sheet. */
  readonly no: number;
  readonly of: 'plank' | 'trim';
  readonly room?: string;
  /** The row or the wall it is for. */
  readonly place: string;
  readonly what: string;
  /** How many alike, where there are several. */
  readonly count?: number;
  /** From the farthest point of one end to that of the other: as it is said, and in ticks. */
  readonly length: string;
  readonly ticks: number;
  /** The width to keep, where it is ripped. */
  readonly width?: string;
  readonly widthTicks?: number;
  /** As one faces the wall, or the row with the starting wall at one's back. */
  readonly left: SawEnd;
  readonly right: SawEnd;
  /** The plank, the stick or the offcut it is cut from. */
  readonly from: string;
  /** What to keep, to mark or to measure. */
  readonly note?: string;
}

/** True for the data of `project sheets`. */
export function isSheets(data: Result): data is Sheets {
  return data.kind === 'sheets';
}
