/** A room's sheets: one with every cut, or one without cuts and then pages of rows. */

import { sayCut } from '../input/format.ts';
import type { LaidRegion, Row } from '../layout/floor.ts';
import { isQuarter } from '../layout/frame.ts';
import { startWall } from '../layout/home-regions.ts';
import { runsIn } from '../layout/runs.ts';
import type { Drawing } from '../reply/drawing.ts';
import { DRAWING, type RowShown, sayOverview, sayShown } from '../text/drawing-text.ts';
import { LAY } from '../text/floor-text.ts';
import { ticks } from '../units/length.ts';
import { drawFigure } from './figure.ts';
import { type Fit, measure } from './fit.ts';
import { gapWidened } from './floor-shapes.ts';
import { legend, notes, scaleBar } from './footer.ts';
import { columnOf } from './label-column.ts';
import { pagesOf } from './pages.ts';
import { meanings, type OnSheet } from './room-legend.ts';
import { saySize } from './room-size.ts';
import { type Labelled, type RowLabel, sayPiece } from './row-label.ts';
import { sheetOf } from './sheet.ts';
import { toldSheet } from './told-sheet.ts';
import { asTold, turnOf } from './view.ts';
import { windowOn } from './window.ts';

/** The sheets of a region, at most `most`, drawn in steps; `planks` are those begun in it. None where it has no rows. */
export function* roomSheets(
  region: LaidRegion,
  planks: number,
  told: Labelled,
  most: number,
): Generator<undefined, readonly Drawing[]> {
  if (region.rows.length === 0 || most < 1) return [];
  const pages = yield* pagesOf(region, told);
  const alone = pages.length === 1;
  const drawn: Drawing[] = [];
  const first = !isQuarter(region.frame.angle) && most > pages.length ? 'as told' : alone ? 'none' : 'overview';
  const shown = first === 'overview' ? pages.slice(0, most - 1) : pages;
  if (first === 'as told') {
    const { size } = summary(region, planks, told);
    drawn.push(toldSheet(region, facts(region, planks, told), size, told));
  }
  if (first === 'overview') drawn.push(overview(region, pages, shown.length, planks, told));
  for (const one of shown) {
    yield;
    drawn.push(page(one, alone ? undefined : [one.window.first + 1, one.window.last + 1], planks, told));
  }
  return drawn;
}

function page(fitted: Fit, part: readonly [number, number] | undefined, planks: number, told: Labelled): Drawing {
  const { plan, sources, saying } = told;
  const { view, window } = fitted;
  const { region } = view;
  const rows = region.rows.slice(window.first, window.last + 1);
  const figure = drawFigure(fitted, plan, sources, saying);
  const parted = rows.some((row) => runsIn(row).length > 1);
  const shown = (index: number): RowShown => rowShown(region.rows[index], index, told);
  return sheetOf({
    title: part ? DRAWING.partTitle(region.name, ...part) : DRAWING.title(region.name),
    alt: sayShown({
      ...summary(region, planks, told),
      part,
      first: shown(window.first),
      last: shown(window.last),
    }),
    facts: facts(region, planks, told),
    figure,
    below: [
      scaleBar(fitted.scale, saying),
      legend(meanings(rows, told, shownIn(fitted, plan))),
      notes([
        DRAWING.order,
        ...(rows.some((row) => row.pieces.some((piece) => piece.left ?? piece.right)) ? [DRAWING.slanted] : []),
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
function overview(region: LaidRegion, pages: readonly Fit[], drawn: number, planks: number, told: Labelled): Drawing {
  const { plan, sources, saying } = told;
  const view = asTold(region);
  const window = windowOn(view, plan, { first: 0, last: region.rows.length - 1 });
  const labels = pages.map(({ window: { first, last } }): RowLabel => {
    const [low, high] = [region.rows[first], region.rows[last]];
    const v = ((low?.v ?? 0) + (high?.v ?? 0) + (high?.height ?? 0)) / 2;
    const row = Math.floor((first + last) / 2);
    return { v, row, name: DRAWING.rows(first + 1, last + 1), cut: '', offcut: '', rip: '', leads: true };
  });
  const measured = measure(view, window, plan, columnOf(labels, 'rows-label'), columnOf([], 'rows-label'));
  const figure = drawFigure(measured, plan, sources, saying);
  const { size, wall } = summary(region, planks, told);
  const left = pages[drawn];
  return sheetOf({
    title: DRAWING.wholeTitle(region.name),
    alt: sayOverview(region.name, size, region.rows.length, wall, drawn),
    facts: facts(region, planks, told),
    figure,
    below: [
      scaleBar(measured.scale, saying),
      legend(meanings(region.rows, told, shownIn(measured, plan))),
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

function facts(region: LaidRegion, planks: number, told: Labelled): readonly string[] {
  const { size, rows, wall, pattern } = summary(region, planks, told);
  const { width, length } = told.plan.plank;
  return [
    DRAWING.facts(size, rows, wall, planks),
    DRAWING.laying(sayCut(width, told.saying), sayCut(length, told.saying), pattern),
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
