/** The laying guide: row by row what to cut, from which plank, and what to keep. */

import { type Saying, sayCut, sayNumber } from '../../src/input/format.ts';
import { sayPieceMarked, sayPieceShort, sidesOfPiece } from '../../src/input/format-piece.ts';
import { coverable, isSlanted } from '../../src/layout/covered-area.ts';
import type { LaidRegion, Piece, Plan, Row, Slant } from '../../src/layout/floor.ts';
import { placesIn } from '../../src/layout/home-regions.ts';
import { runsIn } from '../../src/layout/runs.ts';
import { type WallLevel, wallLevels } from '../../src/layout/slab.ts';
import type { SawEnd, SawPiece } from '../../src/reply/job-sheet.ts';
import type { Block } from '../../src/reply/reply.ts';
import { SAW } from '../../src/text/drawing-text.ts';
import { GUIDE, SLANTED_STEP, STEPS } from '../../src/text/floor-text.ts';
import { type Length, TICKS_PER_INCH, ticks } from '../../src/units/length.ts';

/** Adds a step about slanted cuts where there are any. */
export function stepsFor({ plank, regions }: Plan): readonly string[] {
  const shaped = regions.some(({ rows }) => rows.some(({ pieces }) => pieces.some(({ shape }) => shape)));
  return shaped ? [...STEPS[plank.lock], SLANTED_STEP] : STEPS[plank.lock];
}

/** One table per region; rows count from 1 at the starting wall. */
export function guideTables(plan: Plan, saying: Saying): readonly Block[] {
  const ledger = new CutLedger(plan);
  return plan.regions.map((region) => ({
    kind: 'table' as const,
    section: 'rows' as const,
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

/** Empty where walls are slanted: there, each piece gives its own shape. */
function levelsIn(region: LaidRegion, { rules }: Plan): readonly WallLevel[] {
  return isSlanted(region, region.frame.angle) ? [] : wallLevels(coverable(region, region.frame, rules.gap));
}

/** Rows count from 1; a letter follows where something splits the row, as in 3b. */
function runName(row: number, run: number, runs: number): string {
  return `${row + 1}${runs > 1 ? String.fromCodePoint(97 + (run % 26)) : ''}`;
}

/** Notches where a wall cuts into the row, measured from the left end of the run. */
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

/** `keeps` is what to save of a plank when another piece will come from it. */
interface CutSource {
  readonly fresh: boolean;
  readonly keeps?: Length;
}

/** Tracks which planks have been cut into and which yield more than one piece, in laying order. */
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

  /** Marks the plank as started. */
  sourceOf(piece: Piece, { plank, rules }: Plan): CutSource {
    if (this.#begun.has(piece.plank)) return { fresh: false };
    this.#begun.add(piece.plank);
    if ((this.#uses.get(piece.plank) ?? 0) < 2) return { fresh: true };
    const sides = sidesOfPiece(piece);
    const least = sides ? Math.min(sides.near, sides.far) : piece.length;
    return { fresh: true, keeps: ticks(plank.length - least - rules.kerf) };
  }

  /** Also marks the plank as started. */
  take(piece: Piece, name: string, plan: Plan, saying: Saying): string {
    const { fresh, keeps } = this.sourceOf(piece, plan);
    if (!fresh) return GUIDE.rest(name, piece.plank);
    return GUIDE.fresh(name, piece.plank, keeps === undefined ? undefined : sayCut(keeps, saying));
  }
}

// The cut list: every piece that needs a saw, by room, in laying order.

/** Half of the 1/16 inch that answers show: smaller differences don't matter at the saw. */
const NICK = TICKS_PER_INCH / 32;

type End = 'left' | 'right';

/** One list per region, in the order of the plan's regions. */
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

/** Distances from the piece's own left end. */
function notchedAt(piece: Piece, row: Row, levels: readonly WallLevel[], saying: Saying): readonly string[] {
  return levels
    .filter((level) => level.v > row.v && level.v < row.v + row.height)
    .flatMap((level) => notchesIn([piece], level, row, saying));
}

/**
 * An end at a wall is cut; an end that meets the next plank keeps its factory edge. `edges` are the names of the board's edges.
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
  // `near` and `far` are what the wall takes off each edge, so the edge that loses less is the longer one.
  const long = near < far ? 'near' : 'far';
  return { cut: 'slant', degrees, long, said: SAW.slant(sayNumber(degrees, saying), edges[long]) };
}
