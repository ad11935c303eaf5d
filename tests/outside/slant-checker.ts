/** A floor with slanted walls or rows, judged from outside: coverage by polygon areas, planks by placing their pieces, rules by the joints. */

import type { FloorData, PieceData, RegionData, RowData } from './floor-checker-data.ts';
import { faultsOfSlantPlanks } from './slant-checker-planks.ts';
import { faultsOfSlantRules } from './slant-checker-rules.ts';
import { bandedOf, coverOf, girth, inFrame } from './slant-checker-shape.ts';
import { type Cover, coverBetween, type Ground } from './slant-checker-sweep.ts';

/** How far rounding to a tick, at most three times over, may move a side. */
const SLACK = 3;

/** True when a wall runs neither along nor across the rows. */
export function isSlanted({ outline, holes, frame }: RegionData): boolean {
  return [outline, ...holes].some((loop) => {
    const corners = loop.map((one) => inFrame(one, frame));
    return corners.some(([x, y], i) => {
      const [nx, ny] = corners[(i + 1) % corners.length] ?? [x, y];
      return Math.abs(nx - x) > SLACK + 1 && Math.abs(ny - y) > SLACK + 1;
    });
  });
}

/** Every fault of a floor with slanted walls or rows, but for names and counts of planks. */
export function faultsOfSlanted(floor: FloorData): string[] {
  const faults = faultsOfSlantPlanks(floor);
  let [area, slack] = [0, 0];
  for (const region of floor.regions) {
    const ground = bandedOf(region, floor.rules.gap);
    const round = ground.loops.reduce((sum, ring) => sum + girth([[ring]]), 0);
    const cover = coverOfRegion(region, ground);
    faults.push(
      ...faultsOfCover(region, cover, round * SLACK),
      ...faultsOfPieces(floor, region),
      ...faultsOfSlantRules(floor, region, ground),
    );
    area += cover.ground;
    slack += round * SLACK;
  }
  return [...faults, ...faultsOfAreaBound(floor, area, slack)];
}

/** The areas of a whole region, row by row and of what lies beside all rows. */
function coverOfRegion(region: RegionData, ground: Ground): Cover {
  const heights = ground.loops.flat().map(([, v]) => v);
  const lines = region.rows.flatMap(({ v, height }) => [v, v + height]);
  const levels = [...new Set([Math.min(...heights), Math.max(...heights), ...lines])].sort((a, b) => a - b);
  const sums = levels.slice(1).map((high, i): Cover => {
    const low = levels[i] ?? high;
    const rows = region.rows.filter(({ v, height }) => v < high && v + height > low);
    const pieces = rows.flatMap((row) => row.pieces.map((piece) => coverOf(row, piece)));
    return coverBetween(ground, pieces, [low, high]);
  });
  const sum = (key: keyof Cover): number => sums.reduce((total, one) => total + one[key], 0);
  return { ground: sum('ground'), bare: sum('bare'), beyond: sum('beyond'), twice: sum('twice') };
}

function faultsOfCover(region: RegionData, { bare, beyond, twice }: Cover, round: number): string[] {
  const shapes = region.rows.flatMap((row) => row.pieces.map((piece) => coverOf(row, piece)));
  const slack = round + shapes.reduce((sum, rings) => sum + girth([[...rings]]), 0) / 2;
  const say = (area: number, what: string): string[] =>
    area > slack ? [`${region.name}: ${Math.round(area)} square ticks ${what}`] : [];
  return [...say(bare, 'are bare'), ...say(beyond, 'are laid in the gap or beyond'), ...say(twice, 'are laid twice')];
}

function faultsOfPieces({ plank }: FloorData, region: RegionData): string[] {
  return region.rows.flatMap((row, r) => {
    const at = (piece: PieceData): string => `${region.name}, row ${r}: the piece at ${piece.u}`;
    const before = region.rows[r - 1];
    const faults: string[] = [];
    if (before && before.v + before.height !== row.v) faults.push(`${region.name}, row ${r}: not on the row before`);
    const last = r === region.rows.length - 1;
    if (row.height > plank.width || (row.height < plank.width && r > 0 && !last))
      faults.push(`${region.name}, row ${r}: ${row.height} high`);
    const edge = row.height === plank.width ? 'full' : r === 0 ? 'near' : 'far';
    row.pieces.forEach((piece, i) => {
      const previous = row.pieces[i - 1];
      const jointed = previous !== undefined && previous.u + previous.length === piece.u;
      if (previous && previous.u + previous.length > piece.u) faults.push(`${at(piece)} overlaps the one before`);
      if (piece.length > plank.length) faults.push(`${at(piece)} is longer than a plank`);
      if (piece.edge !== edge) faults.push(`${at(piece)} is called ${piece.edge}`);
      if ((piece.part === 'whole') !== (piece.length === plank.length))
        faults.push(`${at(piece)} is called ${piece.part}`);
      if (
        jointed &&
        plank.lock === 'click' &&
        !(['start', 'whole'].includes(previous.part) && ['end', 'whole'].includes(piece.part))
      ) {
        faults.push(`${at(piece)} has a cut end at its joint`);
      }
      if (plank.lock === 'click' && !jointed && piece.part === 'end')
        faults.push(`${at(piece)} is an end with nothing before it`);
      faults.push(...faultsOfShape(row, piece).map((text) => `${at(piece)} ${text}`));
    });
    return faults;
  });
}

function faultsOfShape(row: RowData, piece: PieceData): string[] {
  const points = piece.shape?.flat() ?? [];
  const faults: string[] = [];
  const [left, right, low, high] = [piece.u, piece.u + piece.length, row.v, row.v + row.height];
  if (points.some(([u, v]) => u < left || u > right || v < low || v > high))
    faults.push('has a shape beyond its rectangle');
  for (const [side, cut] of [
    ['left', piece.left],
    ['right', piece.right],
  ] as const) {
    if (!cut) continue;
    const place = (offset: number): number => (side === 'left' ? left + offset : right - offset);
    const ends = [
      [place(cut.near), low],
      [place(cut.far), high],
    ] as const;
    const there = ends.every(([u, v]) => points.some(([x, y]) => x === u && y === v));
    const past = points.some(([x, y]) => {
      const limit = place(cut.near) + ((place(cut.far) - place(cut.near)) * (y - low)) / row.height;
      return side === 'left' ? x < limit - 1 : x > limit + 1;
    });
    const degrees = (Math.atan2(Math.abs(cut.near - cut.far), row.height) * 180) / Math.PI;
    if (!there || past || Math.abs(degrees - cut.degrees) > 0.06)
      faults.push(`has a ${side} cut that is not its shape's`);
  }
  return faults;
}

/** The one bound told is the area's: what the ground takes if no plank lost anything. */
function faultsOfAreaBound({ bound, count, plank }: FloorData, area: number, slack: number): string[] {
  const faults: string[] = [];
  const face = plank.width * plank.length;
  if (bound.area < Math.ceil((area - slack) / face) || bound.area > Math.ceil((area + slack) / face)) {
    faults.push(`bound: ${bound.area} planks by area told, ${(area / face).toFixed(3)} follow`);
  }
  if (bound.row > bound.area) faults.push('bound: more by rows than by area, which slanted cuts do not prove');
  if (bound.best !== Math.max(bound.area, bound.row)) faults.push('bound: the best is not the greater of the two');
  if (count.planks < bound.best)
    faults.push(`bound: ${bound.best} planks needed, they say, and ${count.planks} are used`);
  if (bound.proven !== (count.planks === bound.best)) faults.push(`bound: proven is told to be ${bound.proven}`);
  return faults;
}
