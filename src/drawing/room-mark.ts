/** Names inside the figure: of rooms that lie in one floor, and of what stands in them. */

import type { Region } from '../layout/floor.ts';
import type { Place, Shape, Text } from '../reply/drawing.ts';
import type { Outline } from '../units/geometry.ts';
import { clippedLines, clippedRings } from './clip.ts';
import { ringsOf, type Seen } from './floor-shapes.ts';
import { type Box, meet, SMALL, textBox, write } from './text.ts';
import type { View } from './view.ts';

/** Places for a name: so many steps across and down what is seen of a room, the middle first. */
const STEPS = 8;
const PAD = 1.5;

/** Shapes to draw over the planks, and names that found no room. */
export interface Marks {
  readonly shapes: readonly Shape[];
  readonly listed: readonly string[];
}

/** Marks of a view within the visible floor; names keep clear of `kept`. */
export function roomMarks(
  view: Pick<View, 'seen' | 'upright'> & { readonly region: Region },
  seen: Seen,
  floor: Box,
  kept: readonly Box[] = [],
): Marks {
  const { region } = view;
  const ringOf = (outline: Outline): readonly Place[] =>
    clippedRings(ringsOf([view.seen(outline)], seen), floor)[0] ?? [];
  const things = (region.standing ?? [])
    .map(({ name, outline }) => ({ name, ring: ringOf(outline) }))
    .filter(({ ring }) => ring.length > 2);
  const solid = things.map(({ ring }) => boxAround(ring));
  const named = region.rooms && region.rooms.length > 1 ? region.rooms : [];
  const shapes: Shape[] = things.map(({ ring }) => ({ kind: 'polygon', role: 'standing', rings: [ring] }));
  const doors = region.openings.flatMap(({ from, to }) => {
    const [a, b] = view.seen([from, to]).map((point) => seen.at(point));
    return a && b ? [[a, b] as const] : [];
  });
  if (doors.length > 0) shapes.push({ kind: 'lines', role: 'transition', lines: clippedLines(doors, floor) });
  const listed: string[] = [];
  const taken: Box[] = [...kept];
  const take = (text: Text): void => {
    const box = padded(textBox(text));
    taken.push(box);
    const { left, right, top, bottom } = box;
    shapes.push(
      { kind: 'rect', role: 'label-ground', x: left, y: top, width: right - left, height: bottom - top },
      text,
    );
  };
  for (const { name, ring } of things) {
    const text = nameIn(name, ring, view.upright, taken);
    if (text) take(text);
    else listed.push(name);
  }
  for (const { name, outline } of named) {
    const ring = ringOf(outline);
    if (ring.length < 3) continue;
    const text = nameIn(name, ring, view.upright, [...taken, ...solid]);
    if (text) take(text);
    else listed.push(name);
  }
  return { shapes, listed };
}

/** The name where it lies wholly within a ring and clear of what is taken, as near to the middle as can be. */
function nameIn(name: string, ring: readonly Place[], upright: boolean, taken: readonly Box[]): Text | undefined {
  const { left, right, top, bottom } = boxAround(ring);
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const places = Array.from({ length: (STEPS + 1) ** 2 }, (_, i): Place => {
    const [across, down] = [i % (STEPS + 1), Math.floor(i / (STEPS + 1))];
    return [left + ((right - left) * across) / STEPS, top + ((bottom - top) * down) / STEPS];
  }).sort((a, b) => Math.hypot(a[0] - x, a[1] - y) - Math.hypot(b[0] - x, b[1] - y));
  const turns = upright ? ([90, 0] as const) : ([0, -90] as const);
  for (const turn of turns) {
    for (const [px, py] of places) {
      const rise = SMALL * 0.365;
      const [dx, dy] = turn === 0 ? [0, rise] : [turn === -90 ? rise : -rise, 0];
      const text = write('room-label', name, px + dx, py + dy, { bold: true, anchor: 'middle', turn });
      const box = padded(textBox(text));
      const corners: readonly Place[] = [
        [box.left, box.top],
        [box.right, box.top],
        [box.right, box.bottom],
        [box.left, box.bottom],
      ];
      if (corners.every((corner) => holds(ring, corner)) && !taken.some((other) => meet(box, other, 0.5))) return text;
    }
  }
  return undefined;
}

function padded({ left, right, top, bottom }: Box): Box {
  return { left: left - PAD, right: right + PAD, top: top - PAD / 2, bottom: bottom + PAD / 2 };
}

function boxAround(ring: readonly Place[]): Box {
  const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function holds(ring: readonly Place[], [x, y]: Place): boolean {
  let inside = false;
  for (const [i, [ax, ay]] of ring.entries()) {
    const [bx, by] = ring[(i + 1) % ring.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  }
  return inside;
}
