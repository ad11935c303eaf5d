/** A herringbone floor judged from outside by its result data: coverage, lattice, boards that fit, and counts. */

import type { MultiPolygon, Pair, Ring } from 'polygon-clipping';
import clipper from 'polygon-clipping';
import { z } from 'zod';
import { fitsAlong } from './slant-checker-planks.ts';
import { areaOf, girth, groundOf, inside } from './slant-checker-shape.ts';

const SLACK = 3;
const point = z.tuple([z.int(), z.int()]);
const outline = z.array(point).min(3);
const whole = z.int().nonnegative();
const board = z.object({
  plank: z.int().positive(),
  at: point,
  along: z.number().min(0).lt(360),
  from: z.int(),
  length: z.int().positive(),
  part: z.enum(['whole', 'start', 'end', 'any']),
  hand: z.enum(['A', 'B']).optional(),
  course: z.int().positive().optional(),
  shape: z.array(outline).min(1).optional(),
});
const floor = z.object({
  kind: z.literal('floor'),
  plank: z.object({
    width: z.int().positive(),
    length: z.int().positive(),
    perCarton: z.int().positive(),
    lock: z.enum(['click', 'none']),
    handed: z.boolean(),
  }),
  rules: z.object({ gap: whole, kerf: whole, pattern: z.object({ name: z.literal('herringbone'), border: whole }) }),
  regions: z
    .array(
      z.object({
        name: z.string(),
        outline,
        holes: z.array(outline),
        openings: z.array(z.object({ from: point, to: point })),
        frame: z.object({ origin: point, angle: z.number().min(0).lt(360) }),
        rows: z.array(z.never()).length(0),
        boards: z.array(board),
      }),
    )
    .min(1),
  count: z.object({
    planks: whole,
    reused: whole,
    mistakes: whole,
    spares: whole,
    cartons: whole,
    whole,
    pieces: whole,
    A: whole.optional(),
    B: whole.optional(),
  }),
  bound: z.object({ area: whole, row: whole, best: whole, proven: z.boolean() }),
  broken: z.array(z.never()).length(0),
});

export type HerringData = z.infer<typeof floor>;
export type HerringBoardData = HerringData['regions'][number]['boards'][number];

/** The floor that `data` holds. Throws a ZodError where its shape is wrong. */
export function readHerringbone(data: unknown): HerringData {
  return floor.parse(data);
}

/** True for the data of a floor whose pattern is a herringbone. */
export function isHerringbone(data: unknown): boolean {
  return z.object({ rules: z.object({ pattern: z.object({ name: z.literal('herringbone') }) }) }).safeParse(data)
    .success;
}

/** Every fault of a herringbone floor; none when it is whole and can be cut. */
export function checkHerringbone(data: unknown): string[] {
  const read = floor.safeParse(data);
  if (!read.success) return read.error.issues.map((issue) => `data at ${issue.path.join('.')}: ${issue.message}`);
  const given = read.data;
  return [
    ...given.regions.flatMap((region) => faultsOfRegion(given, region)),
    ...faultsOfBoards(given),
    ...faultsOfCounts(given),
  ];
}

type Region = HerringData['regions'][number];

function toFrame([x, y]: Pair, { at, along }: HerringBoardData): Pair {
  const turn = (along * Math.PI) / 180;
  return [at[0] + x * Math.cos(turn) - y * Math.sin(turn), at[1] + x * Math.sin(turn) + y * Math.cos(turn)];
}

function onBoard([u, v]: Pair, { at, along }: HerringBoardData): Pair {
  const turn = (along * Math.PI) / 180;
  const [du, dv] = [u - at[0], v - at[1]];
  return [du * Math.cos(turn) + dv * Math.sin(turn), dv * Math.cos(turn) - du * Math.sin(turn)];
}

function ringsOf(one: HerringBoardData, width: number): Ring[] {
  if (one.shape) return one.shape.map((ring) => ring.map(([x, y]): Pair => [x, y]));
  const [low, high] = [one.from, one.from + one.length];
  const corners: Pair[] = [
    [low, 0],
    [high, 0],
    [high, width],
    [low, width],
  ];
  return [corners.map((corner) => toFrame(corner, one).map(Math.round) as Pair)];
}

function faultsOfRegion({ plank, rules }: HerringData, region: Region): string[] {
  const ground = groundOf(region, rules.gap);
  const shapes = region.boards.map((one) => inside(ringsOf(one, plank.width)));
  const all = shapes.length === 0 ? [] : clipper.union(...(shapes as [MultiPolygon, ...MultiPolygon[]]));
  const slack = girth(ground) * SLACK + shapes.reduce((sum, shape) => sum + girth(shape), 0);
  const laid = shapes.reduce((sum, shape) => sum + areaOf(shape), 0);
  const faults: string[] = [];
  const bare = areaOf(clipper.difference(ground, all));
  if (bare > slack) faults.push(`${region.name}: ${Math.round(bare)} square ticks are bare`);
  if (all.length > 0 && areaOf(clipper.difference(all, ground)) > slack)
    faults.push(`${region.name}: boards lie in the gap or beyond`);
  if (laid - areaOf(all) > slack) faults.push(`${region.name}: boards overlap`);
  return [...faults, ...offPattern(plank, region, rules.pattern.border)];
}

/** Boards of the field lie on the lattice of (W, W) and (L, −L), partners along v at the right ends of those along u. */
function offPattern({ length, width }: HerringData['plank'], { name, boards }: Region, border: number): string[] {
  const field = boards.filter(({ course }) => course === undefined);
  const corners = field.map(
    ({ at: [u, v], along }): Pair => (along === 0 ? [u, v] : [u - width - length, v - width + length]),
  );
  const faults: string[] = [];
  if (field.some(({ along }) => along !== 0 && along !== 90)) faults.push(`${name}: a board of the field lies aslant`);
  const [first = [0, 0]] = corners;
  const off = corners.filter(([u, v]) => {
    const [sum, difference] = [u - first[0] + v - first[1], u - first[0] - v + first[1]];
    // i·(W, W) + j·(L, −L): the sum of both places is 2iW, their difference 2jL.
    return sum % (2 * width) !== 0 || difference % (2 * length) !== 0;
  });
  if (off.length > 0) faults.push(`${name}: ${off.length} boards are off the pattern`);
  const courses = new Set(boards.flatMap(({ course }) => course ?? []));
  if (courses.size !== border) faults.push(`${name}: ${courses.size} courses of border laid, ${border} asked`);
  return faults;
}

function faultsOfBoards({ plank, rules, regions }: HerringData): string[] {
  const uses = new Map<number, HerringBoardData[]>();
  const faults: string[] = [];
  for (const one of regions.flatMap(({ boards }) => boards)) {
    uses.set(one.plank, [...(uses.get(one.plank) ?? []), one]);
    const points = ringsOf(one, plank.width)
      .flat()
      .map((corner) => onBoard(corner, one));
    const out = points.some(
      ([x, y]) => x < one.from - SLACK || x > one.from + one.length + SLACK || y < -SLACK || y > plank.width + SLACK,
    );
    const stretch =
      one.course !== undefined ? one.length <= plank.length : one.from >= 0 && one.from + one.length <= plank.length;
    if (out || !stretch) faults.push(`plank ${one.plank}: a piece lies outside its board`);
    if (plank.handed !== (one.hand !== undefined)) faults.push(`plank ${one.plank}: of no hand`);
    if (one.hand && one.hand !== (one.along === 0 ? 'A' : 'B')) faults.push(`plank ${one.plank}: of the wrong hand`);
    if ((one.part === 'whole') !== (one.length === plank.length)) faults.push(`plank ${one.plank}: called ${one.part}`);
    if (plank.handed && one.part === 'end' && one.from !== 0)
      faults.push(`plank ${one.plank}: an end that lost its own end`);
    if (plank.handed && one.part === 'start' && one.from + one.length !== plank.length)
      faults.push(`plank ${one.plank}: a start that lost its own end`);
  }
  for (const [number, pieces] of uses) {
    if (pieces.length < 2) continue;
    if (new Set(pieces.map(({ hand }) => hand)).size > 1) faults.push(`plank ${number}: gives pieces of both hands`);
    const cuts = pieces.map((piece) => ({
      piece,
      rings: ringsOf(piece, plank.width).map((ring) =>
        ring.map((corner): Pair => {
          const [x, y] = onBoard(corner, piece);
          return [x - piece.from, y];
        }),
      ),
    }));
    const ends = ['start', 'end', 'whole'].some(
      (part) => pieces.filter((piece) => piece.part === part).length > (part === 'whole' ? 0 : 1),
    );
    if (ends || !fitsAlong({ plank: { ...plank, lock: plank.handed ? 'click' : 'none' }, rules }, cuts))
      faults.push(`plank ${number}: its ${pieces.length} pieces do not fit it`);
  }
  return faults;
}

function faultsOfCounts({ plank, regions, count, bound, rules }: HerringData): string[] {
  const boards = regions.flatMap((region) => region.boards);
  const uses = new Map<number, number>();
  for (const one of boards) uses.set(one.plank, (uses.get(one.plank) ?? 0) + 1);
  const uncut = boards.filter(({ part, shape }) => part === 'whole' && !shape).length;
  const of = (hand: string): number => new Set(boards.filter((one) => one.hand === hand).map((one) => one.plank)).size;
  const area =
    regions.reduce((sum, region) => sum + areaOf(groundOf(region, rules.gap)), 0) / plank.width / plank.length;
  const faults: string[] = [];
  const expect = (what: string, given: number | undefined, found: number | undefined): void => {
    if (given !== found) faults.push(`count: ${given} ${what} told, ${found} found`);
  };
  expect('planks', count.planks, uses.size);
  expect('reused', count.reused, [...uses.values()].filter((times) => times > 1).length);
  expect('whole', count.whole, uncut);
  expect('pieces', count.pieces, boards.length - uncut);
  expect('of A', count.A, plank.handed ? of('A') : undefined);
  expect('of B', count.B, plank.handed ? of('B') : undefined);
  const least = Math.ceil((count.planks + count.mistakes + count.spares) / plank.perCarton);
  // A and B come in cartons of their own: each may leave one begun.
  if (count.cartons < least || count.cartons > least + (plank.handed ? 1 : 0))
    faults.push(`count: ${count.cartons} cartons told`);
  if (Math.abs(bound.area - Math.ceil(area)) > (Math.abs(area - Math.round(area)) < 1e-3 ? 1 : 0))
    faults.push(`bound: ${bound.area} told, ${area.toFixed(3)} follow`);
  if (bound.best !== bound.area || bound.row > bound.area) faults.push('bound: more is told than the area proves');
  if (count.planks < bound.best || bound.proven !== (count.planks === bound.best))
    faults.push(`bound: proven is told to be ${bound.proven}`);
  return faults;
}
