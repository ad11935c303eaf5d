/** Planks to choose from, one strip of floor each, laid along the same wall at the same scale. */

import { type Saying, sayCut, sayLength } from '../input/format.ts';
import type { LaidRegion, Plan } from '../layout/floor.ts';
import { startWall } from '../layout/home-regions.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { CHOICES } from '../text/drawing-text.ts';
import { LAY } from '../text/floor-text.ts';
import { inches, ticks } from '../units/length.ts';
import { legend, notes, scaleBar, sheetOf } from './drawing-sheet.ts';
import { MARGIN } from './fit.ts';
import { clippedRings, sidesOf } from './shapes.ts';
import { baseline, SMALL, wrapped, write } from './text.ts';

/** How far from the wall a strip reaches. */
const DEPTH = inches(42);
const LONGEST = inches(240);
const WALL = 5;
const SPACE = 12;
const LINE = 12;

interface Choice {
  readonly name: string;
  readonly plan: Plan;
}

/** One sheet with a strip per choice: the named region from its starting wall on. */
export function drawChoices(choices: readonly Choice[], room: string, saying: Saying): Drawing {
  const laid = choices.flatMap(({ name, plan }) => {
    const region = plan.regions.find((one) => one.name === room);
    return region ? [{ name, plan, region }] : [];
  });
  const width = SHEET_WIDTH - 2 * MARGIN;
  const longest = Math.min(LONGEST, Math.max(...laid.map(({ region, plan }) => reachOf(region, plan))));
  const depth = Math.min(DEPTH, ...laid.map(({ region }) => depthOf(region)));
  const scale = width / longest;
  const shapes: Shape[] = [];
  let y = 0;
  for (const { name, plan, region } of laid) {
    const heading = `${name}: ${sayCut(plan.plank.width, saying)} × ${sayCut(plan.plank.length, saying)}`;
    for (const line of wrapped(heading, SMALL + 1, true, width)) {
      shapes.push(
        write('room-label', line, MARGIN, baseline(y + LINE / 2, SMALL + 1), { size: SMALL + 1, bold: true }),
      );
      y += LINE;
    }
    // The wall is at the bottom: with your back to it you look up the sheet, and left is left.
    const foot = y + 2 + depth * scale;
    shapes.push(...stripOf(region, { longest, depth }, ([u, v]) => [MARGIN + u * scale, foot - v * scale]));
    shapes.push({ kind: 'rect', role: 'wall-start', x: MARGIN, y: foot, width, height: WALL });
    y = foot + WALL + SPACE;
  }
  const first = laid[0]?.region;
  const start = first && startWall(first, first.frame.angle);
  const wall = start && (first.rooms ? LAY.wallOf(start.number, start.room) : String(start.number));
  const length = start ? sayLength(start.length, saying) : '';
  const from = sayLength(ticks(depth), saying);
  return sheetOf({
    title: CHOICES.title(room),
    alt: CHOICES.alt(
      laid.map(({ name }) => name),
      room,
      wall,
      from,
    ),
    facts: [CHOICES.facts(wall, length, from)],
    figure: { shapes, upright: false, width: SHEET_WIDTH, height: y, listed: [] },
    below: [
      scaleBar(scale, saying),
      legend([
        { role: 'plank-whole', text: CHOICES.whole },
        { role: 'start', text: CHOICES.cut },
        { role: 'wall-start', text: CHOICES.wall },
      ]),
      notes([CHOICES.scale]),
    ],
  });
}

function depthOf(region: LaidRegion): number {
  const last = region.rows.at(-1);
  return last ? last.v + last.height - (region.rows[0]?.v ?? 0) : 0;
}

function reachOf(region: LaidRegion, { rules }: Plan): number {
  return rules.gap + Math.max(0, ...region.rows.flatMap(({ pieces }) => pieces.map((piece) => piece.u + piece.length)));
}

/** The pieces of the first rows, clipped to the strip's length and depth. */
function stripOf(
  region: LaidRegion,
  { longest, depth }: { longest: number; depth: number },
  at: (place: Place) => Place,
): readonly Shape[] {
  const from = region.rows[0]?.v ?? 0;
  const fills: Shape[] = [];
  const joints: (readonly [Place, Place])[] = [];
  for (const row of region.rows) {
    const [near, far] = [row.v - from, Math.min(row.v - from + row.height, depth)];
    if (near >= depth) break;
    for (const piece of row.pieces) {
      const [left, right] = [piece.u, Math.min(piece.u + piece.length, longest)];
      if (left >= right) continue;
      const role = piece.part === 'whole' ? 'plank-whole' : 'start';
      const [[x, endY], [endX, y]] = [at([left, near]), at([right, far])];
      if (piece.shape) {
        const box = { left: x, right: endX, top: y, bottom: endY };
        const rings = clippedRings(
          piece.shape.map((ring) => ring.map(([u, v]) => at([u, v - from]))),
          box,
        );
        fills.push({ kind: 'polygon', role, rings });
        joints.push(...sidesOf(rings));
        continue;
      }
      fills.push({
        kind: 'rect',
        role,
        x,
        y,
        width: endX - x,
        height: endY - y,
      });
      joints.push(
        [
          [x, y],
          [endX, y],
        ],
        [
          [x, y],
          [x, endY],
        ],
        [
          [endX, y],
          [endX, endY],
        ],
      );
    }
  }
  return [...fills, { kind: 'lines', role: 'joint', lines: joints }];
}
