/** The pieces of each plank placed in it one by one, a kerf apart, whatever way their slanted cuts face. */

import type { Pair, Ring } from 'polygon-clipping';
import type { FloorData, PieceData, RowData } from './floor-checker-data.ts';
import { coverOf, distance } from './slant-checker-shape.ts';

/** A piece with its outline in its plank; any rectangle's stretch will do. */
export interface Cut {
  readonly piece: Pick<PieceData, 'length' | 'part'>;
  /** From the piece's outer left end and the plank's near edge. */
  readonly rings: readonly Ring[];
}

/** Rounding to a tick may bring two shapes this much nearer. */
const SLACK = 3;
/** Up to this many pieces every order and every turning is tried; beyond, one by one where each reaches least far. */
const MOST_PIECES = 4;

/** Planks whose pieces cannot be cut from one. */
export function faultsOfSlantPlanks(floor: FloorData): string[] {
  const planks = new Map<number, Cut[]>();
  for (const row of floor.regions.flatMap((region) => region.rows)) {
    for (const piece of row.pieces)
      planks.set(piece.plank, [...(planks.get(piece.plank) ?? []), { piece, rings: onPlank(floor, row, piece) }]);
  }
  return [...planks].flatMap(([number, cuts]) => {
    if (cuts.length < 2) return [];
    const faults: string[] = [];
    for (const part of ['start', 'end', 'whole']) {
      if (floor.plank.lock === 'none' && part !== 'whole') continue;
      if (cuts.filter(({ piece }) => piece.part === part).length > (part === 'whole' ? 0 : 1))
        faults.push(`plank ${number}: gives a ${part} and more`);
    }
    if (faults.length === 0 && !fitsAlong(floor, cuts))
      faults.push(`plank ${number}: its ${cuts.length} pieces do not fit it`);
    return faults;
  });
}

function onPlank({ plank }: FloorData, row: RowData, piece: PieceData): Ring[] {
  const lift = piece.edge === 'near' ? plank.width - row.height : 0;
  return coverOf(row, piece).map((ring) => ring.map(([u, v]): Pair => [u - piece.u, v - row.v + lift]));
}

/** What placing pieces in a plank needs to know. */
export interface Sawing {
  readonly plank: Pick<FloorData['plank'], 'length' | 'width' | 'lock'>;
  readonly rules: { readonly kerf: number };
}

/** True when the pieces can be placed along one plank, a kerf apart, in some order; without locks each may be turned round. */
export function fitsAlong(floor: Sawing, cuts: readonly Cut[]): boolean {
  const ends = cuts.filter(({ piece }) => piece.part === 'end');
  const starts = cuts.filter(({ piece }) => piece.part === 'start');
  const anys = cuts.filter(({ piece }) => piece.part === 'any');
  const right = starts.map(({ piece, rings }) => moved(rings, floor.plank.length - piece.length));
  const left = ends.map(({ rings }) => rings);
  if (left.some((one) => right.some((other) => !clear(one, other, floor)))) return false;
  if (anys.length > MOST_PIECES) return oneByOne(anys, left, right, floor);
  return orders(anys).some((order) => turnings(order, floor).some((ways) => inLine(ways, left, right, floor)));
}

function oneByOne(
  anys: readonly Cut[],
  left: readonly (readonly Ring[])[],
  right: readonly (readonly Ring[])[],
  floor: Sawing,
): boolean {
  const used = anys.reduce((sum, { piece }) => sum + piece.length + floor.rules.kerf, -floor.rules.kerf);
  if (left.length + right.length === 0 && used <= floor.plank.length) return true;
  const byLength = [...anys].sort((a, b) => b.piece.length - a.piece.length);
  return [anys, byLength].some((order) => {
    const placed = [...left];
    for (const cut of order) {
      const reaches = turnings([cut], floor).flatMap(([way]) => {
        const at = way ? leastFree(way, placed, floor) : 0;
        return way
          ? [
              {
                rings: moved(way.rings, at),
                reach: Math.max(
                  ...moved(way.rings, at)
                    .flat()
                    .map(([x]) => x),
                ),
              },
            ]
          : [];
      });
      const best = reaches.sort((a, b) => a.reach - b.reach)[0];
      if (!best || best.reach > floor.plank.length + SLACK) return false;
      placed.push(best.rings);
    }
    return placed.every((one) => right.every((other) => clear(one, other, floor)));
  });
}

/** The least place along the plank at which a piece is clear of those placed. */
function leastFree({ rings }: Cut, placed: readonly (readonly Ring[])[], floor: Sawing): number {
  const free = (at: number): boolean => placed.every((other) => clear(other, moved(rings, at), floor));
  if (free(0)) return 0;
  let [low, high] = [0, floor.plank.length * 2];
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    if (free(middle)) high = middle;
    else low = middle;
  }
  return high;
}

function inLine(
  ways: readonly Cut[],
  left: readonly (readonly Ring[])[],
  right: readonly (readonly Ring[])[],
  floor: Sawing,
): boolean {
  const placed = [...left];
  for (const way of ways) {
    const { piece, rings } = way;
    const low = leastFree(way, placed, floor);
    if (low + piece.length > floor.plank.length + SLACK) return false;
    placed.push(moved(rings, low));
  }
  return placed.every((one) => right.every((other) => clear(one, other, floor)));
}

function clear(one: readonly Ring[], other: readonly Ring[], { rules }: Sawing): boolean {
  return rules.kerf === 0 ? !overlapping(one, other) : distance(one, other) >= rules.kerf - SLACK;
}

/** Without a kerf shapes may touch: the one drawn in by a little must not meet the other. */
function overlapping(one: readonly Ring[], other: readonly Ring[]): boolean {
  return (
    distance(
      one.map((ring) => drawnIn(ring)),
      other,
    ) === 0
  );
}

function drawnIn(ring: Ring): Ring {
  const middle = ring.reduce<Pair>(([x, y], [u, v]) => [x + u / ring.length, y + v / ring.length], [0, 0]);
  return ring.map(([u, v]): Pair => {
    const long = Math.hypot(u - middle[0], v - middle[1]) || 1;
    const by = Math.min(1, (4 * SLACK) / long);
    return [u + (middle[0] - u) * by, v + (middle[1] - v) * by];
  });
}

function moved(rings: readonly Ring[], by: number): Ring[] {
  return rings.map((ring) => ring.map(([u, v]): Pair => [u + by, v]));
}

function orders<T>(list: readonly T[]): T[][] {
  if (list.length < 2) return [[...list]];
  return list.flatMap((one, i) => orders(list.filter((_, k) => k !== i)).map((rest) => [one, ...rest]));
}

/** Boards without locks may be turned round, each piece by itself; click boards may not. */
function turnings(cuts: readonly Cut[], floor: Sawing): Cut[][] {
  const [first, ...rest] = cuts;
  if (!first) return [[]];
  const round: Cut = {
    piece: first.piece,
    rings: first.rings.map((ring) => ring.map(([u, v]): Pair => [first.piece.length - u, floor.plank.width - v])),
  };
  const ways = floor.plank.lock === 'none' ? [first, round] : [first];
  return turnings(rest, floor).flatMap((others) => ways.map((way) => [way, ...others]));
}
