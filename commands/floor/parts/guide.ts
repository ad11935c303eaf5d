/** The laying guide: row by row what to cut, from which plank, and what to keep. */

import type { LaidRegion, Piece, Plan, Row } from '../../../src/core/floor/floor.ts';
import { isSlanted } from '../../../src/core/floor/ground.ts';
import { runsIn } from '../../../src/core/floor/run-pieces.ts';
import { coverable } from '../../../src/core/floor/sliced.ts';
import { type WallLevel, wallLevels } from '../../../src/core/floor/wall-level.ts';
import { placesIn } from '../../../src/core/home/row-place.ts';
import { ticks } from '../../../src/core/length.ts';
import { type Saying, sayCut } from '../../../src/measure/say-length.ts';
import { sayPieceMarked, sayPieceShort, sidesOfPiece } from '../../../src/measure/say-piece.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { GUIDE, STEPS } from '../../../src/words/floor.ts';
import { SLANTED_STEP } from '../../../src/words/piece.ts';

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
  // Where walls are slanted each piece tells its own shape.
  const levels = isSlanted(region, region.frame.angle)
    ? []
    : wallLevels(coverable(region, region.frame, plan.rules.gap));
  const placeOf = placesIn(region, plan.rules.gap);
  return region.rows.flatMap((row, index) => {
    const ripped = row.height < plan.plank.width ? [GUIDE.ripped(sayCut(ticks(row.height), saying))] : [];
    const notches = levels.filter((level) => level.v > row.v && level.v < row.v + row.height);
    const runs = runsIn(row);
    return runs.map((pieces, i) => {
      const name = `${index + 1}${runs.length > 1 ? String.fromCodePoint(97 + (i % 26)) : ''}`;
      const notes = notches.flatMap((level) => notchesIn(pieces, level, row, saying));
      const { rooms, round } = placeOf(row, pieces);
      const where = [...(rooms.length > 0 ? [rooms.join(' – ')] : []), ...round.map(GUIDE.round)];
      return [[name, ...where, ...ripped, ...notes].join(', '), ...runCells(pieces, row, plan, ledger, saying)];
    });
  });
}

/** Where a wall inside the row leaves its planks lower, from the left end of the run. */
function notchesIn(pieces: readonly Piece[], level: WallLevel, row: Row, saying: Saying): readonly string[] {
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

/** Which planks are begun, and which give more than one piece, in laying order. */
class CutLedger {
  readonly #uses = new Map<number, number>();
  readonly #begun = new Set<number>();

  constructor(plan: Plan) {
    for (const region of plan.regions) {
      for (const row of region.rows) {
        for (const { plank } of row.pieces) this.#uses.set(plank, (this.#uses.get(plank) ?? 0) + 1);
      }
    }
  }

  /** Says where a piece comes from, and what to keep when more is to come from its plank. */
  take(piece: Piece, name: string, plan: Plan, saying: Saying): string {
    if (this.#begun.has(piece.plank)) return GUIDE.rest(name, piece.plank);
    this.#begun.add(piece.plank);
    const keeps = (this.#uses.get(piece.plank) ?? 0) > 1;
    const sides = sidesOfPiece(piece);
    const least = sides ? Math.min(sides.near, sides.far) : piece.length;
    const left = ticks(plan.plank.length - least - plan.rules.kerf);
    return GUIDE.fresh(name, piece.plank, keeps ? sayCut(left, saying) : undefined);
  }
}
