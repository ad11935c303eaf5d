/** Figures put on a sheet: moved into place, those with upright rows turned a quarter to the left on the way. */

import type { Place, Shape } from '../reply/drawing.ts';

/** How shapes get to their place: turned first, if at all, as a whole that is `turnedWidth` wide before; then moved. */
export interface Way {
  readonly dx: number;
  readonly dy: number;
  /** What pointed right points up then; undefined for shapes that are not turned. */
  readonly turnedWidth?: number | undefined;
}

/** The shapes in their place, to hundredths: a fiftieth of a millimetre on a phone. */
export function placed(shapes: readonly Shape[], way: Way): readonly Shape[] {
  const { dx, dy, turnedWidth } = way;
  const move = (place: Place): Place =>
    turnedWidth === undefined
      ? [hundredths(place[0] + dx), hundredths(place[1] + dy)]
      : [hundredths(place[1] + dx), hundredths(turnedWidth - place[0] + dy)];
  return shapes.map((shape) => moved(shape, move, turnedWidth !== undefined));
}

function moved(shape: Shape, move: (place: Place) => Place, turned: boolean): Shape {
  const { kind, role } = shape;
  switch (kind) {
    case 'line':
      return { kind, role, points: shape.points.map(move) };
    case 'lines':
      return { kind, role, lines: shape.lines.map((line) => [move(line[0]), move(line[1])]) };
    case 'rect': {
      const a = move([shape.x, shape.y]);
      const b = move([shape.x + shape.width, shape.y + shape.height]);
      const width = hundredths(Math.abs(b[0] - a[0]));
      const height = hundredths(Math.abs(b[1] - a[1]));
      return { kind, role, x: Math.min(a[0], b[0]), y: Math.min(a[1], b[1]), width, height };
    }
    case 'polygon':
      return { kind, role, rings: shape.rings.map((ring) => ring.map(move)) };
    case 'arrow':
      return { kind, role, from: move(shape.from), to: move(shape.to) };
    case 'text': {
      const at = move([shape.x, shape.y]);
      // A text is never written downwards on the sheet: figures that get turned have theirs level or downwards before.
      const turn = turned ? (shape.turn === 90 ? 0 : -90) : shape.turn;
      return { ...shape, x: at[0], y: at[1], turn };
    }
  }
}

/** Rounded, and never below zero by nothing: -0 is not what JSON reads back. */
function hundredths(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}
