/** The sheets of a herringbone floor: each room as given, with every board in place. */

import { type Saying, sayLength } from '../input/format.ts';
import { type HerringBoard, type HerringPlan, type HerringRegion, inFrame } from '../layout/herringbone.ts';
import { type Drawing, SHEET_WIDTH, type ShapeRole } from '../reply/drawing.ts';
import { DRAWING } from '../text/drawing-text.ts';
import { HERRING_DRAWING } from '../text/home-text.ts';
import { boxOf, type Outline } from '../units/geometry.ts';
import { legend, type Meaning, notes, scaleBar, sheetOf } from './drawing-sheet.ts';
import { roomMarks, saySize } from './figure.ts';
import { LARGEST_SCALE, MARGIN, WALL } from './fit.ts';
import { LEAST_GAP, ringsOf } from './floor-shapes.ts';
import { drawnWalls, wallTexts } from './labels.ts';
import { pictureAsGiven } from './room-sheets.ts';

const LONGEST = 460;
const BESIDE = 16;
const MOST_SHEETS = 24;

/** One sheet per room in laying order, drawn in steps. */
export function* drawHerringbone(plan: HerringPlan, saying: Saying): Generator<undefined, readonly Drawing[]> {
  const roles = rolesOf(plan);
  const begun = new Set<number>();
  const drawn: Drawing[] = [];
  for (const region of plan.regions.slice(0, MOST_SHEETS)) {
    yield;
    const before = begun.size;
    for (const { plank } of region.boards) begun.add(plank);
    drawn.push(sheet(region, begun.size - before, roles, plan, saying));
  }
  return drawn;
}

function ringsOfBoard(board: HerringBoard, width: number): readonly Outline[] {
  if (board.shape) return board.shape;
  const way = { corner: board.at, along: board.along };
  const [low, high] = [board.from, board.from + board.length];
  return [[inFrame([low, 0], way), inFrame([high, 0], way), inFrame([high, width], way), inFrame([low, width], way)]];
}

/** Each board's role, by whether its plank is used more than once, in laying order. */
function rolesOf({ regions }: HerringPlan): ReadonlyMap<HerringBoard, ShapeRole> {
  const uses = new Map<number, number>();
  const boards = regions.flatMap((region) => region.boards);
  for (const { plank } of boards) uses.set(plank, (uses.get(plank) ?? 0) + 1);
  const begun = new Set<number>();
  return new Map(
    boards.map((board): [HerringBoard, ShapeRole] => {
      const first = !begun.has(board.plank);
      begun.add(board.plank);
      if (board.part === 'whole' && !board.shape) return [board, 'plank-whole'];
      if ((uses.get(board.plank) ?? 0) < 2) return [board, 'start'];
      return [board, first ? 'offcut-kept' : 'offcut-reused'];
    }),
  );
}

function sheet(
  region: HerringRegion,
  begun: number,
  roles: ReadonlyMap<HerringBoard, ShapeRole>,
  { plank, rules }: HerringPlan,
  saying: Saying,
): Drawing {
  const { minX, minY, maxX, maxY } = boxOf(region.outline);
  const scale = Math.min(
    (SHEET_WIDTH - 2 * MARGIN - 2 * WALL - 2 * BESIDE) / (maxX - minX),
    (LONGEST - 2 * WALL) / (maxY - minY),
    LARGEST_SCALE,
  );
  const pieces = region.boards.map((board) => ({
    role: roles.get(board) ?? 'start',
    rings: ringsOfBoard(board, plank.width),
  }));
  const lines = pieces.flatMap(({ rings }) =>
    rings.flatMap((ring) => ring.map((from, i) => [from, ring[(i + 1) % ring.length] ?? from] as const)),
  );
  const picture = pictureAsGiven(region, { pieces, lines }, scale, WALL, rules.gap);
  const all = { left: 0, right: picture.width, top: 0, bottom: picture.height };
  const rooms = region.rooms ?? [{ name: region.name, outline: region.outline }];
  const walls = rooms.flatMap(({ name, outline }) =>
    drawnWalls(outline, undefined, saying, picture.seen.at, all).map((wall) =>
      rooms.length > 1 ? { ...wall, room: name } : wall,
    ),
  );
  const { texts, listed } = wallTexts(walls, ringsOf([region.outline, ...region.holes], picture.seen), [], WALL, false);
  const marks = roomMarks({ region, seen: (outline) => outline, upright: false }, picture.seen, all);
  const size = saySize(region, saying);
  const cut = region.boards.filter((board) => roles.get(board) !== 'plank-whole').length;
  return sheetOf({
    title: HERRING_DRAWING.title(region.name),
    alt: HERRING_DRAWING.alt(region.name, size, begun, cut, rules.border),
    facts: [HERRING_DRAWING.facts(size, begun, cut)],
    figure: {
      shapes: [...picture.shapes, ...marks.shapes, ...texts],
      upright: false,
      width: picture.width,
      height: picture.height + BESIDE,
      listed,
    },
    below: [
      scaleBar(scale, saying),
      legend(meanings(new Set(pieces.map(({ role }) => role)), rules.gap, scale, saying)),
      notes([
        HERRING_DRAWING.start,
        ...(listed.length > 0 ? [DRAWING.otherWalls(listed)] : []),
        ...(marks.listed.length > 0 ? [DRAWING.standing(marks.listed)] : []),
      ]),
    ],
  });
}

function meanings(
  shown: ReadonlySet<ShapeRole>,
  gap: HerringPlan['rules']['gap'],
  scale: number,
  saying: Saying,
): readonly Meaning[] {
  const words: readonly Meaning[] = [
    { role: 'plank-whole', text: HERRING_DRAWING.whole },
    { role: 'start', text: HERRING_DRAWING.cut },
    { role: 'offcut-kept', text: HERRING_DRAWING.kept },
    { role: 'offcut-reused', text: HERRING_DRAWING.reused },
  ];
  const widened = gap * scale < LEAST_GAP;
  return [
    ...words.filter(({ role }) => shown.has(role)),
    ...(gap > 0 ? [{ role: 'gap', text: DRAWING.legend.gap(sayLength(gap, saying), widened) } as const] : []),
  ];
}
