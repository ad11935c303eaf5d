/** The first sheet of several rooms: all of them at one scale, with their names. */

import type { Saying } from '../input/format.ts';
import type { LaidRegion, Plan } from '../layout/floor.ts';
import { isQuarter } from '../layout/frame.ts';
import { runsIn } from '../layout/runs.ts';
import { type Drawing, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { DRAWING, sayHome } from '../text/drawing-text.ts';
import { boxOf } from '../units/geometry.ts';
import { notes, type SheetPart, scaleBar, sheetOf } from './drawing-sheet.ts';
import { saySize } from './figure.ts';
import { MARGIN } from './fit.ts';
import { onFloor, rowLines, type Seen, wallShapes } from './floor-shapes.ts';
import { textWidth } from './font.ts';
import { pictureAsGiven } from './room-sheets.ts';
import { asGiven, place, type RoomView } from './shapes.ts';
import { placed } from './svg.ts';
import { baseline, SMALL, wrapped, write } from './text.ts';

const WALL = 3;
const ARROW = 18;
const SPACE = 14;
/** A cell is at least this wide, so that its words fit even if the room is narrow. */
const NARROWEST = 110;
const LINE = 11;
/** The widest room gets this much of the sheet; the deepest gets one and a half times as much. */
const WIDEST = 150;
const DEEPEST = 260;

interface Cell {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** The overview sheet; `planks` are those started in each region, `undrawn` the rooms without a page. */
export function* homeSheet(
  plan: Plan,
  planks: readonly number[],
  undrawn: readonly string[],
  saying: Saying,
): Generator<undefined, Drawing> {
  const views = plan.regions.map(asGiven);
  const scale = Math.min(
    ...views.map((view) => Math.min(WIDEST / sideOf(view, 'across'), DEEPEST / sideOf(view, 'down'))),
  );
  const cells: Cell[] = [];
  for (const [i, view] of views.entries()) {
    cells.push(cellOf(view, plan, scale, planks[i] ?? 0, saying));
    yield;
  }
  const { shapes, height } = shelves(cells);
  const rooms = plan.regions.map((region) => ({
    name: region.name,
    size: saySize(region, saying),
    rows: region.rows.length,
  }));
  return sheetOf({
    title: DRAWING.homeTitle,
    alt: sayHome(rooms, plan.planks),
    facts: [],
    figure: { shapes, upright: false, width: SHEET_WIDTH, height, listed: [] },
    below: [
      scaleBar(scale, saying),
      notes([
        ...(plan.regions.some(({ rooms }) => rooms && rooms.length > 1)
          ? [DRAWING.scale, DRAWING.joined]
          : [DRAWING.placed]),
        ...(undrawn.length > 0 ? [DRAWING.noRoomPages(undrawn)] : []),
      ]),
    ],
  });
}

function sideOf({ region, width, height, upright }: RoomView, side: 'across' | 'down'): number {
  if (!isQuarter(region.frame.angle)) {
    const { minX, minY, maxX, maxY } = boxOf(region.outline);
    return side === 'across' ? maxX - minX : maxY - minY;
  }
  return upright === (side === 'across') ? height : width;
}

function cellOf(view: RoomView, plan: Plan, scale: number, planks: number, saying: Saying): Cell {
  const { region } = view;
  const picture = pictureOf(view, plan, scale);
  const most = SHEET_WIDTH - 2 * MARGIN;
  const room = Math.min(most, Math.max(NARROWEST, picture.width));
  const names = wrapped(region.name, SMALL, true, room);
  const facts = [saySize(region, saying), DRAWING.cell(region.rows.length, planks)];
  const lines = [...names, ...facts.flatMap((fact) => wrapped(fact, SMALL, false, room))];
  const isName = (line: number): boolean => line < names.length;
  const width = Math.max(picture.width, ...lines.map((line, i) => textWidth(line, SMALL, isName(i))));
  const texts = lines.map((line, i) =>
    write('room-label', line, width / 2, baseline(picture.height + 6 + LINE * (i + 0.5)), {
      bold: isName(i),
      anchor: 'middle',
    }),
  );
  return {
    width,
    height: picture.height + 6 + LINE * lines.length,
    shapes: [...placed(picture.shapes, { dx: (width - picture.width) / 2, dy: 0 }), ...texts],
  };
}

function pictureOf(view: RoomView, plan: Plan, scale: number): Cell {
  if (!isQuarter(view.region.frame.angle)) {
    const given = pictureAsGiven(
      view.region,
      onFloor(view.region, () => 'plank-whole'),
      scale,
      WALL,
      plan.rules.gap,
    );
    return { width: given.width, height: given.height, shapes: given.shapes };
  }
  const [wide, deep] = [view.width * scale, view.height * scale];
  const seen: Seen = { scale, at: ([x, y]) => [WALL + x * scale, WALL + deep - y * scale] };
  const all = { left: 0, right: wide + 2 * WALL, top: 0, bottom: deep + 2 * WALL };
  const { band, gap } = wallShapes(view, plan, seen, WALL, all);
  const shapes: readonly Shape[] = [band, ...gap, ...rowLines(view, plan, seen, all), arrowIn(view.region, view, seen)];
  const [width, height] = [wide + 2 * WALL, deep + 2 * WALL];
  return view.upright
    ? { width: height, height: width, shapes: placed(shapes, { dx: 0, dy: 0, turnedWidth: width }) }
    : { width, height, shapes };
}

/** An arrow along the longest row. */
function arrowIn(region: LaidRegion, view: RoomView, seen: Seen): Shape {
  const longest = region.rows
    .flatMap((row) => runsIn(row).map((pieces) => ({ row, first: pieces[0], last: pieces.at(-1) })))
    .map(({ row, first, last }) => ({ row, from: first?.u ?? 0, to: (last?.u ?? 0) + (last?.length ?? 0) }))
    .reduce((best, run) => (run.to - run.from > best.to - best.from ? run : best), {
      row: { v: 0, height: 0 },
      from: 0,
      to: 0,
    });
  const level = longest.row.v + longest.row.height / 2;
  const [middle, half] = [
    (longest.from + longest.to) / 2,
    Math.min(ARROW / seen.scale, (longest.to - longest.from) * 0.8) / 2,
  ];
  return {
    kind: 'arrow',
    role: 'direction',
    from: seen.at(place(view, middle - half, level)),
    to: seen.at(place(view, middle + half, level)),
  };
}

/** Cells in order, on shelves as wide as the sheet. */
function shelves(cells: readonly Cell[]): SheetPart {
  const shapes: Shape[] = [];
  let y = 0;
  let rest = [...cells];
  while (rest.length > 0) {
    const shelf: Cell[] = [];
    let wide = 0;
    for (const cell of rest) {
      const next = wide + (shelf.length > 0 ? SPACE : 0) + cell.width;
      if (shelf.length > 0 && next > SHEET_WIDTH - 2 * MARGIN) break;
      shelf.push(cell);
      wide = next;
    }
    const tall = Math.max(...shelf.map(({ height }) => height));
    let x = (SHEET_WIDTH - wide) / 2;
    for (const cell of shelf) {
      shapes.push(...placed(cell.shapes, { dx: x, dy: y + tall - cell.height }));
      x += cell.width + SPACE;
    }
    y += tall + SPACE;
    rest = rest.slice(shelf.length);
  }
  return { shapes, height: y };
}
