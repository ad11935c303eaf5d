/** A room's sheets: one with every cut, or an overview without cuts followed by pages of rows. */

import { sayCut, sayLength } from '../input/format.ts';
import { inset } from '../layout/covered-area.ts';
import type { Frame, LaidRegion, Region, Row } from '../layout/floor.ts';
import { isQuarter, toRoom } from '../layout/frame.ts';
import { startWall } from '../layout/home-regions.ts';
import { runsIn } from '../layout/runs.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape, type ShapeRole } from '../reply/drawing.ts';
import { inUnits } from '../text/answer-text.ts';
import { DRAWING, type RowShown, sayOverview, sayShown, saySlanted } from '../text/drawing-text.ts';
import { LAY } from '../text/floor-text.ts';
import { boxOf, type Outline, type Point } from '../units/geometry.ts';
import { ticks } from '../units/length.ts';
import { legend, type Meaning, notes, pagesOf, scaleBar, sheetOf } from './drawing-sheet.ts';
import { drawFigure, roomMarks, saySize } from './figure.ts';
import { columnOf, type Fit, LARGEST_SCALE, MARGIN, measure, WALL } from './fit.ts';
import { gapWidened, LEAST_GAP, onFloor, ringsOf, roleOf, type Seen } from './floor-shapes.ts';
import { drawnWalls, type Labelled, type RowLabel, sayPiece, wallTexts } from './labels.ts';
import { asGiven, type OnFloor, sidesOf, turnOf, windowOn } from './shapes.ts';
import type { Box } from './text.ts';

/** Whether the starting wall, a gap drawn wider than it is, and a page's edge are on the sheet. */
interface OnSheet {
  readonly start: boolean;
  readonly widened: boolean;
  readonly cut: boolean;
  /** A doorway where the floor stops. */
  readonly transition: boolean;
}

function meanings(rows: readonly Row[], { plan, sources, saying }: Labelled, shown: OnSheet): readonly Meaning[] {
  const roles = new Set(rows.flatMap((row) => row.pieces.map((piece) => roleOf(piece, sources))));
  const cut = (['start', 'end', 'any'] as const).find((role) => roles.has(role));
  const { legend: words } = DRAWING;
  const entry = (role: ShapeRole, text: string, there = true): readonly Meaning[] => (there ? [{ role, text }] : []);
  return [
    ...entry('plank-whole', words.whole, roles.has('plank-whole')),
    ...entry(cut ?? 'start', words.new, cut !== undefined),
    ...entry('offcut-kept', words.kept, roles.has('offcut-kept')),
    ...entry('offcut-reused', words.reused, roles.has('offcut-reused')),
    ...entry('wall-start', words.start, shown.start),
    ...entry('gap', words.gap(sayLength(plan.rules.gap, saying), shown.widened), plan.rules.gap > 0),
    ...entry('transition', words.transition, shown.transition),
    ...entry('page-edge', words.edge, shown.cut),
  ];
}

/** A picture from (0, 0), walls included. */
interface PictureAsGiven {
  readonly shapes: readonly Shape[];
  readonly seen: Seen;
  readonly width: number;
  readonly height: number;
}

/**
 * Draws a room at a scale (sheet units per tick), with the thickness of its walls in sheet units and the gap in ticks.
 */
export function pictureAsGiven(
  region: Region & { readonly frame: Frame },
  { pieces, lines }: OnFloor,
  scale: number,
  thickness: number,
  gap: number,
): PictureAsGiven {
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  const [wide, deep] = [(maxX - minX) * scale, (maxY - minY) * scale];
  const at = ([x, y]: Place): Place => [thickness + (x - minX) * scale, thickness + deep - (y - minY) * scale];
  const seen: Seen = { scale, at };
  const grown = (by: number): readonly Outline[] =>
    inset(region.outline, region.holes, -Math.max(1, Math.round(by / scale)));
  const widened = gap > 0 && gap * scale < LEAST_GAP;
  const faces = ringsOf(grown(widened ? LEAST_GAP - gap * scale : 0), seen);
  const inRoom = (point: Point): Place => at(toRoom(point, region.frame));
  const covered = ringsOf(inset(region.outline, region.holes, gap), seen);
  return {
    seen,
    width: wide + 2 * thickness,
    height: deep + 2 * thickness,
    shapes: [
      { kind: 'polygon', role: 'wall', rings: ringsOf(grown(thickness), seen) },
      { kind: 'polygon', role: 'gap', rings: faces },
      { kind: 'lines', role: 'wall-face', lines: sidesOf(faces) },
      ...pieces.map(
        ({ role, rings }): Shape => ({ kind: 'polygon', role, rings: rings.map((ring) => ring.map(inRoom)) }),
      ),
      { kind: 'lines', role: 'joint', lines: lines.map(([from, to]) => [inRoom(from), inRoom(to)] as const) },
      { kind: 'lines', role: 'floor-edge', lines: sidesOf(covered) },
    ],
  };
}

// Rooms whose rows are slanted to the walls: drawn as given, with the cuts on the sheets that follow.

/** Longest figure that still suits a phone. */
const LONGEST = 460;
/** Space beside the walls for the numbers of short ones. */
const BESIDE = 16;
const ARROW = 30;
const HEAD = 5;

/** The room as given with every piece in place; `facts` and `size` are in words. */
function sheetAsGiven(region: LaidRegion, facts: readonly string[], size: string, given: Labelled): Drawing {
  const { plan, sources, saying } = given;
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  const scale = Math.min(
    (SHEET_WIDTH - 2 * MARGIN - 2 * WALL - 2 * BESIDE) / (maxX - minX),
    (LONGEST - 2 * WALL) / (maxY - minY),
    LARGEST_SCALE,
  );
  const picture = pictureAsGiven(
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
    title: DRAWING.titleAsGiven(region.name),
    alt: saySlanted(region.name, size, region.rows.length, plan.planks),
    facts,
    figure,
    below: [
      scaleBar(scale, saying),
      legend(meanings(region.rows, given, shown)),
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

/** An arrow along the row nearest the middle, in laying direction. */
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

/** At most `most` sheets of a region, drawn in steps; `planks` are those started in it. None if it has no rows. */
export function* roomSheets(
  region: LaidRegion,
  planks: number,
  given: Labelled,
  most: number,
): Generator<undefined, readonly Drawing[]> {
  if (region.rows.length === 0 || most < 1) return [];
  const pages = yield* pagesOf(region, given);
  const alone = pages.length === 1;
  const drawn: Drawing[] = [];
  const first = !isQuarter(region.frame.angle) && most > pages.length ? 'as told' : alone ? 'none' : 'overview';
  const shown = first === 'overview' ? pages.slice(0, most - 1) : pages;
  if (first === 'as told') {
    const { size } = summary(region, planks, given);
    drawn.push(sheetAsGiven(region, facts(region, planks, given), size, given));
  }
  if (first === 'overview') drawn.push(overview(region, pages, shown.length, planks, given));
  for (const one of shown) {
    yield;
    drawn.push(page(one, alone ? undefined : [one.window.first + 1, one.window.last + 1], planks, given));
  }
  return drawn;
}

function page(fitted: Fit, part: readonly [number, number] | undefined, planks: number, given: Labelled): Drawing {
  const { plan, sources, saying } = given;
  const { view, window } = fitted;
  const { region } = view;
  const rows = region.rows.slice(window.first, window.last + 1);
  const figure = drawFigure(fitted, plan, sources, saying);
  const parted = rows.some((row) => runsIn(row).length > 1);
  const shown = (index: number): RowShown => rowShown(region.rows[index], index, given);
  return sheetOf({
    title: part ? DRAWING.partTitle(region.name, ...part) : DRAWING.title(region.name),
    alt: sayShown({
      ...summary(region, planks, given),
      part,
      first: shown(window.first),
      last: shown(window.last),
    }),
    facts: facts(region, planks, given),
    figure,
    below: [
      scaleBar(fitted.scale, saying),
      legend(meanings(rows, given, shownIn(fitted, plan))),
      notes([
        DRAWING.order,
        ...(rows.some((row) => row.pieces.some((piece) => piece.left ?? piece.right))
          ? [inUnits(DRAWING.slanted, saying.units)]
          : []),
        ...(parted ? [DRAWING.parts] : []),
        ...(figure.listed.length > 0 ? [DRAWING.otherWalls(figure.listed)] : []),
        ...(figure.unnamed?.length ? [DRAWING.standing(figure.unnamed)] : []),
        ...(view.turn === 'none' ? [] : [DRAWING.turned(view.turn)]),
        ...(isQuarter(region.frame.angle) ? [] : [DRAWING.turnedBy(turnOf(view))]),
      ]),
    ],
  });
}

/** The whole room without its cuts; beside it, which rows are on which page. */
function overview(region: LaidRegion, pages: readonly Fit[], drawn: number, planks: number, given: Labelled): Drawing {
  const { plan, sources, saying } = given;
  const view = asGiven(region);
  const window = windowOn(view, plan, { first: 0, last: region.rows.length - 1 });
  const labels = pages.map(({ window: { first, last } }): RowLabel => {
    const [low, high] = [region.rows[first], region.rows[last]];
    const v = ((low?.v ?? 0) + (high?.v ?? 0) + (high?.height ?? 0)) / 2;
    const row = Math.floor((first + last) / 2);
    return { v, row, name: DRAWING.rows(first + 1, last + 1), cut: '', offcut: '', rip: '', leads: true };
  });
  const measured = measure(view, window, plan, columnOf(labels, 'rows-label'), columnOf([], 'rows-label'));
  const figure = drawFigure(measured, plan, sources, saying);
  const { size, wall } = summary(region, planks, given);
  const left = pages[drawn];
  return sheetOf({
    title: DRAWING.wholeTitle(region.name),
    alt: sayOverview(region.name, size, region.rows.length, wall, drawn),
    facts: facts(region, planks, given),
    figure,
    below: [
      scaleBar(measured.scale, saying),
      legend(meanings(region.rows, given, shownIn(measured, plan))),
      notes([
        DRAWING.noCuts,
        ...(left ? [DRAWING.notDrawn(left.window.first + 1, region.rows.length)] : []),
        ...(figure.listed.length > 0 ? [DRAWING.otherWalls(figure.listed)] : []),
        ...(figure.unnamed?.length ? [DRAWING.standing(figure.unnamed)] : []),
      ]),
    ],
  });
}

function summary(region: LaidRegion, planks: number, { plan, saying }: Labelled) {
  const { pattern } = plan.rules;
  const wall = startWall(region, region.frame.angle);
  const several = region.rooms !== undefined && region.rooms.length > 1;
  return {
    room: region.name,
    size: saySize(region, saying),
    rows: region.rows.length,
    wall: wall && (several ? LAY.wallOf(wall.number, wall.room) : String(wall.number)),
    pattern: pattern.name === 'stair-step' ? LAY.stair(sayCut(pattern.step, saying), pattern.rows) : pattern.name,
    planks,
  };
}

function facts(region: LaidRegion, planks: number, given: Labelled): readonly string[] {
  const { size, rows, wall, pattern } = summary(region, planks, given);
  const { width, length } = given.plan.plank;
  return [
    DRAWING.facts(size, rows, wall, planks),
    DRAWING.laying(sayCut(width, given.saying), sayCut(length, given.saying), pattern),
  ];
}

function rowShown(row: Row | undefined, index: number, { plan, saying }: Labelled): RowShown {
  const [first, last] = [row?.pieces[0], row?.pieces.at(-1)];
  return {
    row: index + 1,
    rip: row && row.height < plan.plank.width ? sayCut(ticks(row.height), saying) : undefined,
    start: first ? sayPiece(first, saying) : '',
    end: last && last !== first ? sayPiece(last, saying) : undefined,
  };
}

function shownIn({ view, scale, window }: Fit, plan: Labelled['plan']): OnSheet {
  return {
    start: window.first === 0 && startWall(view.region, view.region.frame.angle) !== undefined,
    widened: gapWidened(plan, scale),
    cut: window.cutLow || window.cutHigh,
    transition: view.region.openings.length > 0,
  };
}
