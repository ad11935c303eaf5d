/** Plans of floors: a room, the rooms of a home on one paper, and choices side by side. */

import { type Saying, sayCut, sayLength } from '../input/format.ts';
import type { LaidRegion, Plan } from '../layout/floor.ts';
import { isQuarter } from '../layout/frame.ts';
import { startWall } from '../layout/home-regions.ts';
import { runsIn } from '../layout/runs.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape } from '../reply/drawing.ts';
import { CHOICES, DRAWING, sayHome } from '../text/drawing-text.ts';
import { LAY } from '../text/floor-text.ts';
import { boxOf } from '../units/geometry.ts';
import { inches, ticks } from '../units/length.ts';
import { legend, notes, type SheetPart, scaleBar, sheetOf } from './drawing-sheet.ts';
import { saySize } from './figure.ts';
import { MARGIN } from './fit.ts';
import { cutSources, onFloor, planksBegun, rowLines, type Seen, wallShapes } from './floor-shapes.ts';
import type { Labelled } from './labels.ts';
import { pictureAsGiven, roomSheets } from './room-sheets.ts';
import { asGiven, clippedRings, place, type RoomView, sidesOf } from './shapes.ts';
import { placed } from './svg.ts';
import { baseline, SMALL, textWidth, wrapped, write } from './text.ts';

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

/** An answer has no more pictures than this; the sheet before says what is left out. */
export const MOST_SHEETS = 24;

/** What all pictures of a plan need, computed once. */
export interface PlanAsGiven extends Labelled {
  readonly planks: readonly number[];
}

export function planAsGiven(plan: Plan, saying: Saying): PlanAsGiven {
  return { plan, saying, sources: cutSources(plan), planks: planksBegun(plan) };
}

/** Pictures of one region, drawn in steps; its pieces keep the numbers they have in the whole plan. */
export function drawRoom(given: PlanAsGiven, region: LaidRegion): Generator<undefined, readonly Drawing[]> {
  return roomSheets(region, given.planks[given.plan.regions.indexOf(region)] ?? 0, given, MOST_SHEETS);
}

/** Pictures of a plan in viewing order, drawn in steps. */
export function* drawPlan(given: PlanAsGiven): Generator<undefined, readonly Drawing[]> {
  const { plan, planks, saying } = given;
  const several = plan.regions.length > 1;
  const sheets: Drawing[] = [];
  const undrawn: string[] = [];
  for (const [i, region] of plan.regions.entries()) {
    const left = MOST_SHEETS - sheets.length - (several ? 1 : 0);
    const drawn = yield* roomSheets(region, planks[i] ?? 0, given, left);
    if (drawn.length === 0) undrawn.push(region.name);
    sheets.push(...drawn);
    yield;
  }
  return several ? [yield* homeSheet(plan, planks, undrawn, saying), ...sheets] : sheets;
}

/** How far from the wall a strip reaches. */
const DEPTH = inches(42);
const LONGEST = inches(240);
const CHOICE_WALL = 5;
const CHOICE_SPACE = 12;
const CHOICE_LINE = 12;

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
        write('room-label', line, MARGIN, baseline(y + CHOICE_LINE / 2, SMALL + 1), { size: SMALL + 1, bold: true }),
      );
      y += CHOICE_LINE;
    }
    // The wall is at the bottom: with your back to it you look up the sheet, and left is left.
    const foot = y + 2 + depth * scale;
    shapes.push(...stripOf(region, { longest, depth }, ([u, v]) => [MARGIN + u * scale, foot - v * scale]));
    shapes.push({ kind: 'rect', role: 'wall-start', x: MARGIN, y: foot, width, height: CHOICE_WALL });
    y = foot + CHOICE_WALL + CHOICE_SPACE;
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
