/** Planks, counts and bounds: every plank's pieces can be cut from it, and every number follows from the pieces. */

import type { FloorData, PieceData } from './floor-checker-data.ts';
import type { RowRuns } from './floor-checker-rows.ts';

interface Cut extends PieceData {
  readonly height: number;
}

/** Along the whole width of the plank, or in one of two lanes when it is split lengthwise. */
type Lane = 'across' | 'near' | 'far';

/** What is wrong with the way pieces are cut from planks. */
export function faultsOfPlanks(floor: FloorData): string[] {
  return [...planksOf(floor)].flatMap(([number, cuts]) => {
    const ripped = cuts.filter((cut) => cut.edge !== 'full');
    const across = cuts.filter((cut) => cut.edge === 'full');
    const fits = arrangements(ripped, floor.plank.lock).some((lanes) => inLanes(floor, across, lanes).length === 0);
    if (fits) return [];
    const alone = new Map(ripped.map((cut) => [cut, 'across'] as const));
    return inLanes(floor, across, alone).map((text) => `plank ${number}: ${text}`);
  });
}

/** What is wrong with the counts of planks, reused planks and cartons. */
export function faultsOfCounts(floor: FloorData): string[] {
  const faults: string[] = [];
  const { count, plank } = floor;
  const planks = planksOf(floor);
  const reused = [...planks.values()].filter((cuts) => cuts.length > 1).length;
  const cartons = Math.ceil((count.planks + count.mistakes + count.spares) / plank.perCarton);
  if (count.planks !== planks.size) faults.push(`count: ${count.planks} planks told, ${planks.size} in the rows`);
  if (count.reused !== reused) faults.push(`count: ${count.reused} reused planks told, ${reused} in the rows`);
  if (count.cartons !== cartons) faults.push(`count: ${count.cartons} cartons told, ${cartons} needed`);
  return faults;
}

/**
 * What is wrong with the bounds. `area` is the area of the ground. The row bound is at most
 * ⌈Σ(run + kerf·⌈run/P⌉) / (P + kerf)⌉ over the rows as laid: each piece but one of a plank costs a kerf.
 */
export function faultsOfBound(floor: FloorData, area: bigint, rows: readonly RowRuns[]): string[] {
  const faults: string[] = [];
  const { bound, count, plank, rules } = floor;
  const face = BigInt(plank.width) * BigInt(plank.length);
  const byArea = Number((area + face - 1n) / face);
  const lengths = rows.flatMap(({ runs }) => runs.map(({ extent }) => extent[1] - extent[0]));
  const material = lengths.reduce((sum, run) => sum + run + rules.kerf * Math.ceil(run / plank.length), 0);
  const byRow = Math.ceil(material / (plank.length + rules.kerf));
  if (bound.area !== byArea) faults.push(`bound: ${bound.area} planks by area told, ${byArea} follow`);
  if (bound.row > byRow) faults.push(`bound: ${bound.row} planks by row told, at most ${byRow} follow`);
  if (bound.best !== Math.max(bound.area, bound.row, bound.flow ?? 0))
    faults.push('bound: the best is not the greatest of them');
  if (count.planks < bound.best)
    faults.push(`bound: ${bound.best} planks needed, they say, and ${count.planks} are used`);
  if (bound.proven !== (count.planks === bound.best)) faults.push(`bound: proven is told to be ${bound.proven}`);
  return faults;
}

function planksOf(floor: FloorData): Map<number, Cut[]> {
  const planks = new Map<number, Cut[]>();
  for (const { height, pieces } of floor.regions.flatMap((region) => region.rows)) {
    for (const piece of pieces) planks.set(piece.plank, [...(planks.get(piece.plank) ?? []), { ...piece, height }]);
  }
  return planks;
}

/** Every way to put ripped pieces across the plank or in a lane; a click board's piece keeps its own edge of the plank. */
function arrangements(ripped: readonly Cut[], lock: 'click' | 'none'): Map<Cut, Lane>[] {
  const [first, ...rest] = ripped;
  if (!first) return [new Map()];
  const own: Lane = first.edge === 'near' ? 'near' : 'far';
  const lanes: Lane[] = lock === 'click' ? ['across', own] : ['across', 'near', 'far'];
  return arrangements(rest, lock).flatMap((others) => lanes.map((lane) => new Map([[first, lane], ...others])));
}

function inLanes({ plank, rules }: FloorData, across: readonly Cut[], lanes: ReadonlyMap<Cut, Lane>): string[] {
  const held = (lane: Lane): Cut[] => [...lanes].filter(([, its]) => its === lane).map(([cut]) => cut);
  const [near, far, full] = [held('near'), held('far'), [...across, ...held('across')]];
  const faults: string[] = [];
  const highest = (cuts: Cut[]): number => Math.max(...cuts.map((cut) => cut.height));
  if (near.length > 0 && far.length > 0 && highest(near) + highest(far) + rules.kerf > plank.width) {
    faults.push('its two rips are wider than a plank');
  }
  for (const cuts of near.length > 0 || far.length > 0
    ? [
        [...full, ...near],
        [...full, ...far],
      ]
    : [full]) {
    const used = cuts.reduce((sum, cut) => sum + cut.length, 0) + rules.kerf * Math.max(0, cuts.length - 1);
    if (used > plank.length) faults.push(`its pieces and kerfs take ${used} of ${plank.length}`);
    if (plank.lock === 'none') continue;
    for (const part of ['start', 'end'] as const) {
      if (cuts.filter((cut) => cut.part === part).length > 1) faults.push(`gives more than one ${part}`);
    }
  }
  return faults;
}
