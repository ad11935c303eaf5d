/** The laying guide: row by row what to cut, from which plank, and what to keep. */

import { type Saying, sayCut } from '../../../src/input/format.ts';
import { sayPieceMarked, sayPieceShort, sidesOfPiece } from '../../../src/input/format-piece.ts';
import { coverable, isSlanted } from '../../../src/layout/covered-area.ts';
import type { LaidRegion, Piece, Plan, Row } from '../../../src/layout/floor.ts';
import { placesIn } from '../../../src/layout/home-regions.ts';
import { runsIn } from '../../../src/layout/runs.ts';
import { type WallLevel, wallLevels } from '../../../src/layout/slab.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { GUIDE, SLANTED_STEP, STEPS } from '../../../src/text/floor-text.ts';
import { type Length, ticks } from '../../../src/units/length.ts';

/** How to lay it, with a step on slanted pieces where there are any. */
export function stepsFor({ plank, regions }: Plan): readonly string[] {
  const shaped = regions.some(({ rows }) => rows.some(({ pieces }) => pieces.some(({ shape }) => shape)));
  return shaped ? [...STEPS[plank.lock], SLANTED_STEP] : STEPS[plank.lock];
}

/** One table a region, rows counted from 1 at the starting wall. */
export function guideTables(plan: Plan, saying: Saying): readonly Block[] {
  const ledger = new CutLedger(plan);
  return plan.regions.map((region) => ({
    kind: 'table' as const,
    title: GUIDE.title(region.name),
    columns: GUIDE.columns,
    rows: regionRows(region, plan, ledger, saying),
  }));
}

function regionRows(region: LaidRegion, plan: Plan, ledger: CutLedger, saying: Saying): readonly (readonly string[])[] {
  const levels = levelsIn(region, plan);
  const placeOf = placesIn(region, plan.rules.gap);
  return region.rows.flatMap((row, index) => {
    const ripped = row.height < plan.plank.width ? [GUIDE.ripped(sayCut(ticks(row.height), saying))] : [];
    const notches = levels.filter((level) => level.v > row.v && level.v < row.v + row.height);
    const runs = runsIn(row);
    return runs.map((pieces, i) => {
      const name = runName(index, i, runs.length);
      const notes = notches.flatMap((level) => notchesIn(pieces, level, row, saying));
      const { rooms, round } = placeOf(row, pieces);
      const where = [...(rooms.length > 0 ? [rooms.join(' – ')] : []), ...round.map(GUIDE.round)];
      return [[name, ...where, ...ripped, ...notes].join(', '), ...runCells(pieces, row, plan, ledger, saying)];
    });
  });
}

/** The walls along the rows; none where walls are slanted, for each piece tells its own shape there. */
export function levelsIn(region: LaidRegion, { rules }: Plan): readonly WallLevel[] {
  return isSlanted(region, region.frame.angle) ? [] : wallLevels(coverable(region, region.frame, rules.gap));
}

/** The name of a run: its row from 1, with a letter where the row is parted. */
export function runName(row: number, run: number, runs: number): string {
  return `${row + 1}${runs > 1 ? String.fromCodePoint(97 + (run % 26)) : ''}`;
}

/** Where a wall inside the row leaves its planks lower, from the left end of the run. */
export function notchesIn(pieces: readonly Piece[], level: WallLevel, row: Row, saying: Saying): readonly string[] {
  const left = pieces[0]?.u ?? 0;
  const right = Math.max(...pieces.map((piece) => piece.u + piece.length));
  const height = level.side === 'ceiling' ? level.v - row.v : row.v + row.height - level.v;
  const say = (length: number): string => sayCut(ticks(length), saying);
  return level.spans
    .filter((span) => span.from < right && span.to > left)
    .map((span) =>
      GUIDE.notch(say(Math.max(span.from, left) - left), say(Math.min(span.to, right) - left), say(height)),
    );
}

function runCells(
  pieces: readonly Piece[],
  row: Row,
  plan: Plan,
  ledger: CutLedger,
  saying: Saying,
): readonly string[] {
  const cut = (piece: Piece): string => sayPieceMarked(piece, row, saying);
  const whole = pieces.filter((piece) => piece.part === 'whole').length;
  const cuts = pieces
    .filter((piece) => piece.part !== 'whole' || piece.shape)
    .map((piece) =>
      ledger.take(piece, piece.part === 'whole' ? cut(piece) : sayPieceShort(piece, saying), plan, saying),
    );
  const [first] = pieces;
  const last = pieces.at(-1);
  if (!first || !last) return ['', '', '', ''];
  if (pieces.length === 1) {
    const only = first.part === 'whole' && !first.shape ? GUIDE.whole : GUIDE.wallToWall(cut(first));
    return [only, first.part === 'whole' ? '1' : '', '', cuts.join('; ')];
  }
  const side = (piece: Piece): string => (piece.part === 'whole' && !piece.shape ? GUIDE.whole : cut(piece));
  return [side(first), String(whole), side(last), cuts.join('; ')];
}

/** Where a piece comes from: `keeps` is what is left of a plank begun for it, where more is to come from that. */
export interface CutSource {
  readonly fresh: boolean;
  readonly keeps?: Length;
}

/** Which planks are begun, and which give more than one piece, in laying order. */
export class CutLedger {
  readonly #uses = new Map<number, number>();
  readonly #begun = new Set<number>();

  constructor(plan: Plan) {
    for (const region of plan.regions) {
      for (const row of region.rows) {
        for (const { plank } of row.pieces) this.#uses.set(plank, (this.#uses.get(plank) ?? 0) + 1);
      }
    }
  }

  /** Begins the piece's plank, or goes on with it. */
  sourceOf(piece: Piece, { plank, rules }: Plan): CutSource {
    if (this.#begun.has(piece.plank)) return { fresh: false };
    this.#begun.add(piece.plank);
    if ((this.#uses.get(piece.plank) ?? 0) < 2) return { fresh: true };
    const sides = sidesOfPiece(piece);
    const least = sides ? Math.min(sides.near, sides.far) : piece.length;
    return { fresh: true, keeps: ticks(plank.length - least - rules.kerf) };
  }

  /** Says where a piece comes from, and what to keep when more is to come from its plank. */
  take(piece: Piece, name: string, plan: Plan, saying: Saying): string {
    const { fresh, keeps } = this.sourceOf(piece, plan);
    if (!fresh) return GUIDE.rest(name, piece.plank);
    return GUIDE.fresh(name, piece.plank, keeps === undefined ? undefined : sayCut(keeps, saying));
  }
}
