/** The picture of a subfloor patch, to scale: joists, cut, blocks, panels, screws and damage. */

import { type Saying, sayCut, sayLength } from '../input/format.ts';
import { type Patch, patchToRoom, type Rect } from '../prep/subfloor-patch.ts';
import { type Drawing, type Place, SHEET_WIDTH, type Shape, type ShapeRole } from '../reply/drawing.ts';
import { PATCH_DRAWING } from '../text/drawing-text.ts';
import { ticks } from '../units/length.ts';
import { legend, notes, type SheetPart, scaleBar, sheetOf } from './drawing-sheet.ts';
import { MARGIN } from './fit.ts';
import { baseline, SMALL, textWidth, write } from './text.ts';

/** Scale in sheet units per tick, and the position of a room point on the figure. */
interface Ground {
  readonly scale: number;
  readonly at: (x: number, y: number) => Place;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** From a text's middle line to its baseline. */
const RISE = SMALL * 0.365;

/** Numbers and positions of joists: above joists that run up (turned to fit), beside joists that run across. */
function joistLabels(
  names: readonly string[],
  joists: readonly number[],
  run: 'up' | 'across',
  ground: Ground,
): readonly Shape[] {
  return joists.map((line, i) => {
    const [x, y] = ground.at(...patchToRoom([line, 0], run));
    const name = names[i] ?? '';
    return run === 'up'
      ? write('cut', name, x + RISE, ground.top - 3, { turn: -90 })
      : write('cut', name, ground.right + 3, baseline(y));
  });
}

function dimensions(cut: Rect, run: 'up' | 'across', ground: Ground, saying: Saying): readonly Shape[] {
  const [x0, y0] = patchToRoom([cut.u0, cut.v0], run);
  const [x1, y1] = patchToRoom([cut.u1, cut.v1], run);
  const [left, low] = ground.at(x0, y0);
  const [right, high] = ground.at(x1, y1);
  const below = ground.bottom + 3;
  const beside = ground.left - 3;
  const lines: Shape = {
    kind: 'lines',
    role: 'leader',
    lines: [
      [
        [left, below],
        [right, below],
      ],
      [
        [left, below - 2],
        [left, below + 2],
      ],
      [
        [right, below - 2],
        [right, below + 2],
      ],
      [
        [beside, low],
        [beside, high],
      ],
      [
        [beside - 2, low],
        [beside + 2, low],
      ],
      [
        [beside - 2, high],
        [beside + 2, high],
      ],
    ],
  };
  const middle = { anchor: 'middle' } as const;
  return [
    lines,
    write('cut', sayCut(ticks(x1 - x0), saying), (left + right) / 2, baseline(below + 8), middle),
    write('cut', sayCut(ticks(y1 - y0), saying), beside - 7 + RISE, (low + high) / 2, { ...middle, turn: -90 }),
  ];
}

const HALF = 1.8;

/** A screw's head from above: a cross. */
function cross([x, y]: Place): readonly (readonly [Place, Place])[] {
  return [
    [
      [x - HALF, y - HALF],
      [x + HALF, y + HALF],
    ],
    [
      [x - HALF, y + HALF],
      [x + HALF, y - HALF],
    ],
  ];
}

const LINE = 13;
/** Width of the legend's swatches, and where its texts start. */
const SWATCH = 16;
const TEXT = MARGIN + SWATCH + 6;

/** The legend: surfaces with their swatches, then the saw cut and the screw as they are drawn. */
function patchLegend(): SheetPart {
  const words = PATCH_DRAWING.legend;
  const surfaces = legend([
    { role: 'wall', text: words.joist },
    { role: 'offcut-reused', text: words.blocking },
    { role: 'offcut-kept', text: words.damage },
    { role: 'start', text: words.panel },
    { role: 'plank-whole', text: words.kept },
  ]);
  const first = surfaces.height + 3;
  const middle = MARGIN + SWATCH / 2;
  const marks: readonly Shape[] = [
    {
      kind: 'line',
      role: 'direction',
      points: [
        [MARGIN, first],
        [MARGIN + SWATCH, first],
      ],
    },
    write('legend', words.cut, TEXT, baseline(first)),
    { kind: 'lines', role: 'scale-bar', lines: cross([middle, first + LINE]) },
    write('legend', words.screw, TEXT, baseline(first + LINE)),
  ];
  return { shapes: [...surfaces.shapes, ...marks], height: first + 2 * LINE };
}

/** Which way joists run on the plan, and how wide they are (ticks). */
interface PatchLook {
  readonly run: 'up' | 'across';
  readonly joistWidth: number;
}

const DIMENSION = 16;
const TALLEST = 620;
/** How much of the floor is shown beyond the cut, as a fraction of a bay. */
const BEYOND = 0.45;

/** One sheet with the patch as on the plan: x to the right, y up. */
export function drawPatch(patch: Patch, look: PatchLook, saying: Saying): Drawing {
  const { cut, panels, blocks, fasteners, damage } = patch;
  const names = cut.joists.map((at, i) => PATCH_DRAWING.joist(i + 1, sayLength(ticks(at), saying)));
  const labelled = Math.max(...names.map((name) => textWidth(name, SMALL, false))) + 6;
  const { ground, window } = groundFor(patch, look, labelled);
  const rect = (role: ShapeRole, { u0, v0, u1, v1 }: Rect): Shape => {
    const [ax, ay] = ground.at(...patchToRoom([u0, v0], look.run));
    const [bx, by] = ground.at(...patchToRoom([u1, v1], look.run));
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
  const screws = fasteners.map((point) => cross(ground.at(...patchToRoom(point, look.run))));
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

function groundFor({ cut }: Patch, { run, joistWidth }: PatchLook, labelled: number): { ground: Ground; window: Rect } {
  const bay = (cut.u1 - cut.u0) / cut.bays;
  const beyond = Math.max(bay * BEYOND, joistWidth);
  const window: Rect = {
    u0: Math.max(-joistWidth, cut.u0 - beyond),
    u1: cut.u1 + beyond,
    v0: Math.max(0, cut.v0 - beyond),
    v1: cut.v1 + beyond,
  };
  const [[x0, y0], [x1, y1]] = [patchToRoom([window.u0, window.v0], run), patchToRoom([window.u1, window.v1], run)];
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
  const [left, bottom] = patchToRoom([cut.u0, cut.v0], run).map((away) => sayLength(ticks(away), saying));
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
