/** The picture of a subfloor patch, to scale: joists, the cut on them, blocks between them, panels, screws and the damage. */

import { type Saying, sayCut, sayLength } from '../input/format.ts';
import { type Patch, type Rect, toRoom } from '../prep/subfloor-patch.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape, type ShapeRole } from '../reply/drawing.ts';
import { PATCH_DRAWING } from '../text/drawing-text.ts';
import { ticks } from '../units/length.ts';
import { MARGIN } from './fit.ts';
import { textWidth } from './font.ts';
import { notes, scaleBar } from './footer.ts';
import { dimensions, type Ground, joistLabels } from './patch-label.ts';
import { patchLegend } from './patch-legend.ts';
import { cross } from './patch-screw.ts';
import { sheetOf } from './sheet.ts';
import { SMALL } from './text.ts';

/** Which way joists run on the plan, and how wide one is (ticks). */
export interface PatchLook {
  readonly run: 'up' | 'across';
  readonly joistWidth: number;
}

/** Room for a dimension beside the figure. */
const DIMENSION = 16;
const TALLEST = 620;
/** How much of the floor is seen beyond the cut, as a share of a bay. */
const BEYOND = 0.45;

/** One sheet with the patch as the plan has it: x to the right, y up. Lengths are said as the asker says them. */
export function drawPatch(patch: Patch, look: PatchLook, saying: Saying): Drawing {
  const { cut, panels, blocks, fasteners, damage } = patch;
  const names = cut.joists.map((at, i) => PATCH_DRAWING.joist(i + 1, sayLength(ticks(at), saying)));
  const labelled = Math.max(...names.map((name) => textWidth(name, SMALL, false))) + 6;
  const { ground, window } = groundFor(patch, look, labelled);
  const rect = (role: ShapeRole, { u0, v0, u1, v1 }: Rect): Shape => {
    const [ax, ay] = ground.at(...toRoom([u0, v0], look.run));
    const [bx, by] = ground.at(...toRoom([u1, v1], look.run));
    return {
      kind: 'rect',
      role,
      x: Math.min(ax, bx),
      y: Math.min(ay, by),
      width: Math.abs(bx - ax),
      height: Math.abs(by - ay),
    };
  };
  const half = look.joistWidth / 2;
  const joists = cut.joists.map((at): Rect => ({ u0: at - half, u1: at + half, v0: window.v0, v1: window.v1 }));
  const screws = fasteners.map((point) => cross(ground.at(...toRoom(point, look.run))));
  const shapes: readonly Shape[] = [
    rect('plank-whole', window),
    ...panels.map((panel) => rect('start', panel)),
    rect('offcut-kept', damage),
    rect('swatch', damage),
    ...blocks.flatMap((block) => [rect('offcut-reused', block), rect('swatch', block)]),
    ...joists.flatMap((joist) => [rect('wall', joist), rect('swatch', joist)]),
    ...panels.map((panel) => rect('swatch', panel)),
    outline(rect('swatch', cut)),
    { kind: 'lines', role: 'scale-bar', lines: screws.flat() },
    ...joistLabels(names, cut.joists, look.run, ground),
    ...dimensions(cut, look.run, ground, saying),
  ];
  return sheetFor(patch, look, { shapes, ground, labelled }, saying);
}

/** The window on the floor round the cut, and how large it is drawn. */
function groundFor({ cut }: Patch, { run, joistWidth }: PatchLook, labelled: number): { ground: Ground; window: Rect } {
  const bay = (cut.u1 - cut.u0) / cut.bays;
  const beyond = Math.max(bay * BEYOND, joistWidth);
  const window: Rect = {
    u0: Math.max(-joistWidth, cut.u0 - beyond),
    u1: cut.u1 + beyond,
    v0: Math.max(0, cut.v0 - beyond),
    v1: cut.v1 + beyond,
  };
  const [[x0, y0], [x1, y1]] = [toRoom([window.u0, window.v0], run), toRoom([window.u1, window.v1], run)];
  const [right, top] = run === 'up' ? [0, labelled] : [labelled, 0];
  const room = SHEET_WIDTH - 2 * MARGIN - DIMENSION - right;
  const scale = Math.min(room / (x1 - x0), TALLEST / (y1 - y0));
  const left = DIMENSION;
  const at = (x: number, y: number): Place => [left + (x - x0) * scale, top + (y1 - y) * scale];
  const edges = { left, top, right: left + (x1 - x0) * scale, bottom: top + (y1 - y0) * scale };
  return { ground: { scale, at, ...edges }, window };
}

function sheetFor(
  { cut, panels, blocks, fasteners }: Patch,
  { run }: PatchLook,
  { shapes, ground, labelled }: { shapes: readonly Shape[]; ground: Ground; labelled: number },
  saying: Saying,
): Drawing {
  const sides = run === 'up' ? [cut.u1 - cut.u0, cut.v1 - cut.v0] : [cut.v1 - cut.v0, cut.u1 - cut.u0];
  const [across = '', up = ''] = sides.map((side) => sayCut(ticks(side), saying));
  const [left, bottom] = toRoom([cut.u0, cut.v0], run).map((away) => sayLength(ticks(away), saying));
  return sheetOf({
    title: PATCH_DRAWING.title,
    alt: PATCH_DRAWING.alt(across, up, cut.joists.length, blocks.length, fasteners.length, panels.length),
    facts: [PATCH_DRAWING.cut(across, up), PATCH_DRAWING.place(left ?? '', bottom ?? '')],
    figure: {
      shapes,
      width: ground.right + (run === 'up' ? 0 : labelled),
      height: ground.bottom + DIMENSION,
      listed: [],
      upright: false,
    },
    below: [
      scaleBar(ground.scale, saying),
      patchLegend(),
      notes([run === 'up' ? PATCH_DRAWING.fromLeft : PATCH_DRAWING.fromBottom]),
    ],
  });
}

/** A rectangle as a strong closed line. */
function outline(rect: Shape): Shape {
  if (rect.kind !== 'rect') return rect;
  const { x, y, width, height } = rect;
  return {
    kind: 'line',
    role: 'direction',
    points: [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
      [x, y],
    ],
  };
}
