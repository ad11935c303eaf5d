/** The planks of a laid floor as a saw sees them: every piece to cut, room by room, in the order laid. */

import { type Saying, sayCut, sayNumber } from '../../../src/input/format.ts';
import { sayPieceMarked } from '../../../src/input/format-piece.ts';
import type { LaidRegion, Piece, Plan, Row, Slant } from '../../../src/layout/floor.ts';
import { placesIn } from '../../../src/layout/home-regions.ts';
import { runsIn } from '../../../src/layout/runs.ts';
import type { WallLevel } from '../../../src/layout/slab.ts';
import type { SawEnd, SawPiece } from '../../../src/reply/job-sheet.ts';
import { SAW } from '../../../src/text/drawing-text.ts';
import { TICKS_PER_INCH, ticks } from '../../../src/units/length.ts';
import { CutLedger, levelsIn, notchesIn, runName } from './guide.ts';

/** Less than half of what is printed: no saw shows it. */
const NICK = TICKS_PER_INCH / 32;

type End = 'left' | 'right';

/** The pieces to cut of each region, in the order of the plan's regions. */
export function plankPieces(plan: Plan, saying: Saying): readonly (readonly SawPiece[])[] {
  const ledger = new CutLedger(plan);
  return plan.regions.map((region) => regionPieces(region, plan, ledger, saying));
}

function regionPieces(region: LaidRegion, plan: Plan, ledger: CutLedger, saying: Saying): readonly SawPiece[] {
  const levels = levelsIn(region, plan);
  const placeOf = placesIn(region, plan.rules.gap);
  const pieces: SawPiece[] = [];
  region.rows.forEach((row, index) => {
    const runs = runsIn(row);
    for (const [i, run] of runs.entries()) {
      const { rooms } = placeOf(row, run);
      const name = runName(index, i, runs.length);
      const place = rooms.length > 0 ? SAW.rowIn(name, rooms) : SAW.row(name);
      for (const piece of run) {
        const notches = notchedAt(piece, row, levels, saying);
        const whole = piece.part === 'whole' && !piece.shape;
        if (whole && row.height === plan.plank.width && notches.length === 0) continue;
        const { round } = placeOf(row, [piece]);
        const notes = [...notches, ...round.map(SAW.round)];
        pieces.push({
          no: pieces.length + 1,
          room: region.name,
          place,
          ...pieceOf(piece, row, plan, saying),
          ...fromOf(piece, notes, plan, ledger, saying, row),
        });
      }
    }
  });
  return pieces;
}

function pieceOf(piece: Piece, row: Row, { plank }: Plan, saying: Saying) {
  const width = row.height < plank.width ? ticks(row.height) : undefined;
  return {
    of: 'plank' as const,
    what: SAW.parts[piece.part],
    length: sayCut(ticks(piece.length), saying),
    ticks: piece.length,
    ...(width !== undefined && { width: sayCut(width, saying), widthTicks: width }),
    left: sawEnd(piece, 'left', saying),
    right: sawEnd(piece, 'right', saying),
  };
}

function fromOf(piece: Piece, notes: readonly string[], plan: Plan, ledger: CutLedger, saying: Saying, row: Row) {
  const whole = piece.part === 'whole';
  const { fresh, keeps } = ledger.sourceOf(piece, plan);
  const all = [
    ...(piece.shape ? [sayPieceMarked(piece, row, saying)] : []),
    ...(row.height < plan.plank.width ? [SAW.ripped] : []),
    ...notes,
    ...(keeps === undefined || whole ? [] : [SAW.keep(sayCut(keeps, saying), piece.plank)]),
  ];
  return {
    from: fresh ? SAW.fresh(piece.plank) : SAW.rest(piece.plank),
    ...(all.length > 0 && { note: all.join('; ') }),
  };
}

/** Where walls leave less of the piece's width, from its own left end. */
function notchedAt(piece: Piece, row: Row, levels: readonly WallLevel[], saying: Saying): readonly string[] {
  return levels
    .filter((level) => level.v > row.v && level.v < row.v + row.height)
    .flatMap((level) => notchesIn([piece], level, row, saying));
}

/**
 * An end faces a wall where the piece is cut; where it meets the next plank it is as it was bought. `edges` name the edges of
 * the board.
 */
export function sawEnd(
  piece: Pick<Piece, 'part' | 'left' | 'right' | 'shape'>,
  side: End,
  saying: Saying,
  edges: { readonly near: string; readonly far: string } = SAW.edges,
): SawEnd {
  const slant = piece[side];
  if (slant && Math.abs(slant.near - slant.far) > NICK) return slanted(slant, saying, edges);
  const cut = piece.part === (side === 'left' ? 'start' : 'end') || (piece.part === 'any' && side === 'right');
  if (piece.shape && !slant && cut) return { cut: 'shape', degrees: 0, said: SAW.shape };
  if (cut) return { cut: 'square', degrees: 0, said: SAW.square };
  return { cut: 'factory', degrees: 0, said: piece.part === 'any' ? SAW.bare : SAW.lock };
}

function slanted(
  { near, far, degrees }: Slant,
  saying: Saying,
  edges: { readonly near: string; readonly far: string },
): SawEnd {
  // What the wall takes off an edge is what that edge is shorter by.
  const long = near < far ? 'near' : 'far';
  return { cut: 'slant', degrees, long, said: SAW.slant(sayNumber(degrees, saying), edges[long]) };
}
