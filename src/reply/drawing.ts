/** A picture as plain data: typed shapes with roles instead of colors, on a sheet sized for a phone. */

/** Width of every sheet in sheet units, which are CSS pixels on a phone. */
export const SHEET_WIDTH = 360;

/** A position on the sheet: x to the right, y down. */
export type Place = readonly [x: number, y: number];

/** What a surface or line stands for; the renderer picks its color and pattern. */
export type ShapeRole =
  | 'wall'
  | 'wall-start'
  | 'wall-face'
  | 'gap'
  | 'plank-whole'
  | 'start'
  | 'end'
  | 'any'
  | 'offcut-kept'
  | 'offcut-reused'
  | 'standing'
  | 'transition'
  | 'label-ground'
  | 'joint'
  | 'floor-edge'
  | 'leader'
  | 'direction'
  | 'page-edge'
  | 'scale-bar'
  | 'swatch';

export type TextRole =
  | 'title'
  | 'fact'
  | 'dimension'
  | 'dimension-start'
  | 'row-number'
  | 'run-name'
  | 'cut'
  | 'offcut'
  | 'rip'
  | 'direction-label'
  | 'rows-label'
  | 'room-label'
  | 'scale-label'
  | 'legend'
  | 'note';

/** Anchored on the baseline; `turn` in degrees, -90 reads upward. */
export interface Text {
  readonly kind: 'text';
  readonly role: TextRole;
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly bold: boolean;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turn: 0 | 90 | -90;
}

export type Shape =
  | { readonly kind: 'line'; readonly role: ShapeRole; readonly points: readonly Place[] }
  | { readonly kind: 'lines'; readonly role: ShapeRole; readonly lines: readonly (readonly [Place, Place])[] }
  | {
      readonly kind: 'rect';
      readonly role: ShapeRole;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    }
  /** Closed rings filled even–odd: a ring inside a ring is a hole. */
  | { readonly kind: 'polygon'; readonly role: ShapeRole; readonly rings: readonly (readonly Place[])[] }
  | { readonly kind: 'arrow'; readonly role: ShapeRole; readonly from: Place; readonly to: Place }
  | Text;

/** One sheet. `alt` describes it in a sentence or two for screen readers. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly alt: string;
  readonly shapes: readonly Shape[];
}
