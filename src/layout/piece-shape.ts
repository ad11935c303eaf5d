/** What walls leave of a piece's rectangle: its shape, if less than the whole, and its cut at each end. */

import { at, type Outline } from '../units/geometry.ts';
import { within } from './covered-area.ts';
import type { Slant } from './floor.ts';

interface PieceBox {
  readonly u: number;
  readonly length: number;
  readonly v: number;
  readonly height: number;
}

interface PieceShape {
  readonly shape?: readonly Outline[];
  readonly left?: Slant;
  readonly right?: Slant;
}

/** The shape of a piece in a row with these outlines; empty when the whole rectangle is covered. */
export function shapeOf(box: PieceBox, rings: readonly Outline[]): PieceShape {
  const [from, to] = [box.u, box.u + box.length];
  // Most pieces are in the middle of a row where no wall reaches, so there is nothing to clip.
  const touched = rings.some((ring) =>
    ring.some(([u, v], i) => {
      const [nextU, nextV] = at(ring, i + 1);
      const edge = v === nextV && (v === box.v || v === box.v + box.height);
      return !edge && Math.max(u, nextU) > from && Math.min(u, nextU) < to;
    }),
  );
  if (!touched) return {};
  const shape = within(rings, { left: from, right: to, bottom: box.v, top: box.v + box.height });
  return describe(box, shape);
}

/**
 * Describes a shape already clipped to its box: empty if it fills the box, otherwise its rings and straight end cuts.
 */
export function describe(box: PieceBox, shape: readonly Outline[]): PieceShape {
  if (shape.length === 0 || isBox(shape, box)) return {};
  const [left, right] = [endCut(shape, box, 'left'), endCut(shape, box, 'right')];
  return { shape, ...(left && { left }), ...(right && { right }) };
}

function isBox(shape: readonly Outline[], { u, length, v, height }: PieceBox): boolean {
  const [only] = shape;
  return (
    shape.length === 1 &&
    only?.length === 4 &&
    only.every(([x, y]) => (x === u || x === u + length) && (y === v || y === v + height))
  );
}

/** The single straight cut from edge to edge at one end; undefined for a square end or one made of several cuts. */
function endCut(shape: readonly Outline[], box: PieceBox, side: 'left' | 'right'): Slant | undefined {
  const [only] = shape;
  if (!only || shape.length > 1) return undefined;
  const outer = side === 'left' ? box.u : box.u + box.length;
  const on = (level: number): number | undefined => {
    const places = only.filter(([, v]) => v === level).map(([u]) => u);
    if (places.length === 0) return undefined;
    return side === 'left' ? Math.min(...places) : Math.max(...places);
  };
  const [near, far] = [on(box.v), on(box.v + box.height)];
  if (near === undefined || far === undefined || near === far) return undefined;
  if (near !== outer && far !== outer) return undefined;
  const straight = only.some(([u, v], i) => {
    const [nextU, nextV] = at(only, i + 1);
    const ends = [v, nextV].sort((a, b) => a - b);
    if (ends[0] !== box.v || ends[1] !== box.v + box.height) return false;
    return v === box.v ? u === near && nextU === far : u === far && nextU === near;
  });
  if (!straight) return undefined;
  const degrees = (Math.atan2(Math.abs(near - far), box.height) * 180) / Math.PI;
  return { near: Math.abs(near - outer), far: Math.abs(far - outer), degrees: Math.round(degrees * 10) / 10 };
}
