/** A picture as plain data: typed shapes with roles instead of colours, on a sheet made for a phone. */

/** Width of every sheet in its own units, which are CSS pixels on a phone. */
export const SHEET_WIDTH = 360;

/** A place on the sheet: x to the right, y down. */
export type Place = readonly [x: number, y: number];

/** What a surface or a line stands for; the renderer gives each its colour and its pattern. */
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

/** What a text tells. */
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

/** A text from its anchor on the baseline; `turn` is the angle it is written at in degrees, -90 reading upwards. */
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
  /** Many separate lines, each from one place to another. */
  | { readonly kind: 'lines'; readonly role: ShapeRole; readonly lines: readonly (readonly [Place, Place])[] }
  | {
      readonly kind: 'rect';
      readonly role: ShapeRole;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    }
  /** Closed rings filled even–odd: a ring within a ring is a hole. */
  | { readonly kind: 'polygon'; readonly role: ShapeRole; readonly rings: readonly (readonly Place[])[] }
  | { readonly kind: 'arrow'; readonly role: ShapeRole; readonly from: Place; readonly to: Place }
  | Text;

/** One sheet. `alt` says in a sentence or two what it shows, for whoever cannot see it. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly alt: string;
  readonly shapes: readonly Shape[];
}
