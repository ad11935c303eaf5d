/** A project's answers as sheets to hand on: one per task, with checkboxes and a cut list. Plain data. */

import type { Reply, Result } from './reply.ts';

export const SHEET_KEYS = ['shopping', 'tearout', 'repairs', 'checklist', 'guide', 'cuts'] as const;
export type SheetKey = (typeof SHEET_KEYS)[number];

/** Result data of kind `sheets`. */
export interface Sheets extends Result {
  readonly kind: 'sheets';
  /** The project's name as typed. */
  readonly project: string;
  /** Milliseconds since 1970. */
  readonly made: number;
  /** How numbers and dates are formatted. */
  readonly units: 'imperial' | 'metric';
  /** IANA time zone for dates. */
  readonly zone: string;
  readonly sheets: readonly JobSheet[];
  /** In words, what couldn't be included. */
  readonly missing?: readonly string[];
}

/** One task: its answer, its checkboxes and its cuts. Guides and cuts are for a single room each. */
export interface JobSheet {
  readonly key: SheetKey;
  readonly room?: string;
  readonly title: string;
  readonly reply: Reply;
  readonly ticks?: readonly Tick[];
  readonly pieces?: readonly SawPiece[];
}

/** A checkbox: `ask` is the line that checks it off, `undo` the one that reverts it. */
export interface Tick {
  /** Stable as long as the thing is the same. */
  readonly key: string;
  readonly label: string;
  /** Its group: a stage of the shopping list, or a room of the checklist. */
  readonly group: string;
  readonly ticked: boolean;
  /** Who checked it off, if known: a name or a role. */
  readonly by?: string;
  /** Milliseconds since 1970. */
  readonly at?: number;
  readonly ask: string;
  readonly undo: string;
}

/** How one end of a piece is cut. `degrees` is the saw's setting off square, 0 for a square end. */
export interface SawEnd {
  /** `factory`: the end as bought, with its lock. */
  readonly cut: 'factory' | 'square' | 'mitre' | 'cope' | 'scarf' | 'slant' | 'shape';
  readonly degrees: number;
  /** For a miter or cope: the kind of corner. */
  readonly corner?: 'inside' | 'outside';
  /**
   * The longer side of the piece at this end: back or face of trim; for a plank the edge toward the previous row (near)
   * or the next (far).
   */
  readonly long?: 'back' | 'face' | 'near' | 'far';
  /** In words, such as `outside miter 45°`. */
  readonly said: string;
}

/** One cut piece, in cutting order. */
export interface SawPiece {
  /** From 1 on each sheet. */
  readonly no: number;
  readonly of: 'plank' | 'trim';
  readonly room?: string;
  /** The row or wall it is for. */
  readonly place: string;
  readonly what: string;
  /** Number of identical pieces, if several. */
  readonly count?: number;
  /** Long point to long point, formatted, and in ticks. */
  readonly length: string;
  readonly ticks: number;
  /** The width to rip to. */
  readonly width?: string;
  readonly widthTicks?: number;
  /** As seen facing the wall, or for a row with your back to the starting wall. */
  readonly left: SawEnd;
  readonly right: SawEnd;
  readonly from: string;
  /** What to keep, mark or measure. */
  readonly note?: string;
}

/** True for the data of `project sheets`. */
export function isSheets(data: Result): data is Sheets {
  return data.kind === 'sheets';
}
