/** The sheet of a room whose rows run at a slant to its walls, drawn as it was told; its cuts are on the sheets that follow. */

import type { LaidRegion } from '../layout/floor.ts';
import { toRoom } from '../layout/frame.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { DRAWING, saySlanted } from '../text/drawing-text.ts';
import { boxOf, type Point } from '../units/geometry.ts';
import { LARGEST_SCALE, MARGIN, WALL } from './fit.ts';
import { gapWidened, ringsOf, roleOf } from './floor-shapes.ts';
import { legend, notes, scaleBar } from './footer.ts';
import { onFloor } from './piece-rings.ts';
import { meanings } from './room-legend.ts';
import { roomMarks } from './room-mark.ts';
import type { Labelled } from './row-label.ts';
import { sheetOf } from './sheet.ts';
import type { Box } from './text.ts';
import { toldPicture } from './told-picture.ts';
import { drawnWalls, wallTexts } from './wall-label.ts';

/** Longest figure, so that the sheet stays a phone's. */
const LONGEST = 460;
/** Room left beside the walls for the numbers of short ones. */
const BESIDE = 16;
const ARROW = 30;
/** How far its head reaches beside it. */
const HEAD = 5;

/** The room as told, every piece in its place; `facts` and `size` in words. */
export function toldSheet(region: LaidRegion, facts: readonly string[], size: string, told: Labelled): Drawing {
  const { plan, sources, saying } = told;
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  const scale = Math.min(
    (SHEET_WIDTH - 2 * MARGIN - 2 * WALL - 2 * BESIDE) / (maxX - minX),
    (LONGEST - 2 * WALL) / (maxY - minY),
    LARGEST_SCALE,
  );
  const picture = toldPicture(
    region,
    onFloor(region, (piece) => roleOf(piece, sources)),
    scale,
    WALL,
    plan.rules.gap,
  );
  const all = { left: 0, right: picture.width, top: 0, bottom: picture.height };
  const rooms = region.rooms ?? [{ name: region.name, outline: region.outline }];
  const walls = rooms.flatMap(({ name, outline }) =>
    drawnWalls(outline, undefined, saying, picture.seen.at, all).map((wall) =>
      rooms.length > 1 ? { ...wall, room: name } : wall,
    ),
  );
  const { texts, listed } = wallTexts(walls, ringsOf([region.outline, ...region.holes], picture.seen), [], WALL, false);
  const arrow = arrowIn(region, picture.seen.at);
  const marks = roomMarks(
    { region, seen: (outline) => outline, upright: false },
    picture.seen,
    all,
    arrow.map(boxRound),
  );
  const shown = {
    start: false,
    widened: gapWidened(plan, scale),
    cut: false,
    transition: region.openings.length > 0,
  };
  const shapes: readonly Shape[] = [...picture.shapes, ...marks.shapes, ...arrow, ...texts];
  const figure = { shapes, upright: false, width: picture.width, height: picture.height + BESIDE, listed };
  return sheetOf({
    title: DRAWING.toldTitle(region.name),
    alt: saySlanted(region.name, size, region.rows.length, plan.planks),
    facts,
    figure,
    below: [
      scaleBar(scale, saying),
      legend(meanings(region.rows, told, shown)),
      notes([
        DRAWING.noCuts,
        ...(arrow.length > 0 ? [DRAWING.arrow] : []),
        ...(listed.length > 0 ? [DRAWING.otherWalls(listed)] : []),
        ...(marks.listed.length > 0 ? [DRAWING.standing(marks.listed)] : []),
      ]),
    ],
  });
}

type Arrow = Extract<Shape, { kind: 'arrow' }>;

function boxRound({ from, to }: Arrow): Box {
  const [left, right] = [Math.min(from[0], to[0]), Math.max(from[0], to[0])];
  const [top, bottom] = [Math.min(from[1], to[1]), Math.max(from[1], to[1])];
  return { left: left - HEAD, right: right + HEAD, top: top - HEAD, bottom: bottom + HEAD };
}

/** An arrow along the row nearest the middle, the way it is laid. */
function arrowIn(region: LaidRegion, at: (point: Point) => Place): readonly Arrow[] {
  const row = region.rows[Math.floor(region.rows.length / 2)];
  const [first, last] = [row?.pieces[0], row?.pieces.at(-1)];
  if (!row || !first || !last) return [];
  const [u, v] = [(first.u + last.u + last.length) / 2, row.v + row.height / 2];
  const [x, y] = at(toRoom([u, v], region.frame));
  const [endX, endY] = at(toRoom([last.u + last.length, v], region.frame));
  const far = Math.hypot(endX - x, endY - y) || 1;
  const half = Math.min(ARROW / 2, far);
  const [dx, dy] = [((endX - x) / far) * half, ((endY - y) / far) * half];
  return [{ kind: 'arrow', role: 'direction', from: [x - dx, y - dy], to: [x + dx, y + dy] }];
}
