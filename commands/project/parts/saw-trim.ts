/** Trim as a saw sees it: every piece by stick, its ends as they lie on the saw, and where its mark is. */

import { type Saying, sayCut, sayLength, sayNumber } from '../../../src/input/format.ts';
import type { SawEnd, SawPiece } from '../../../src/reply/job-sheet.ts';
import { SAW } from '../../../src/text/drawing-text.ts';
import { sayTrimCut } from '../../../src/text/trim-text.ts';
import { sawMarks } from '../../../src/trim/sticks.ts';
import { type Cut, isOutside, kerfAlong } from '../../../src/trim/walls.ts';
import { ticks } from '../../../src/units/length.ts';
import type { TrimResult } from '../../trim/trim-results.ts';

type TrimPiece = TrimResult['pieces'][number];

/** The pieces in the order in which the sticks are cut. The room is that of the wall; pieces of doorways have none. */
export function sticksPieces(trim: TrimResult, decimal: Saying['decimal']): readonly SawPiece[] {
  const saying = { units: trim.units, decimal };
  const byId = new Map(trim.pieces.map((piece) => [piece.id, piece]));
  const marked = new Map(
    trim.pieces.map(({ id, length, left, right }) => {
      const kerf = kerfAlong(trim.kerf, Math.max(left.setting, right.setting));
      return [id, { id, length, kerf }] as const;
    }),
  );
  const glued = new Set(trim.glueUp);
  const counts = new Map<string, number>();
  return trim.sticks
    .flatMap((stick) => {
      // Each profile has sticks of its own, counted from 1.
      const profile = byId.get(stick.pieces[0] ?? '')?.profile ?? '';
      const no = (counts.get(profile) ?? 0) + 1;
      counts.set(profile, no);
      const from = SAW.stick(no, sayLength(ticks(trim.stock[stick.stock]?.length ?? 0), saying));
      return sawMarks(stick, marked, trim.endTrim).flatMap(({ id, to }): Omit<SawPiece, 'no'>[] => {
        const piece = byId.get(id);
        if (!piece) return [];
        const notes = [SAW.mark(sayCut(to, saying)), ...(glued.has(id) ? [SAW.glue] : [])];
        return [{ ...pieceOf(piece, trim, saying), from, note: notes.join('; ') }];
      });
    })
    .map((piece, i) => ({ no: i + 1, ...piece }));
}

function pieceOf(piece: TrimPiece, trim: TrimResult, saying: Saying): Omit<SawPiece, 'no' | 'from'> {
  const { id, wall, length, profile } = piece;
  const corners = trim.walls.find(({ name }) => name === wall)?.corners ?? [90, 90];
  const space = profile === undefined ? wall.lastIndexOf(' ') : -1;
  return {
    of: 'trim',
    ...(space > 0 && { room: wall.slice(0, space) }),
    place: space > 0 ? SAW.wall(wall.slice(space + 1)) : wall,
    what: profile ?? `${SAW.baseboard} ${id}`,
    length: sayCut(ticks(length), saying),
    ticks: length,
    left: endOf(piece.left, 'left', corners[0], saying),
    right: endOf(piece.right, 'right', corners[1], saying),
  };
}

/** At an inside corner the back is the longer side, at an outside one the face. */
function endOf({ cut, setting }: Cut, side: 'left' | 'right', interior: number, saying: Saying): SawEnd {
  const outside = isOutside(interior);
  const said = sayTrimCut(cut, `${sayNumber(setting, saying)}°`, outside);
  if (cut === 'square') return { cut, degrees: 0, said };
  // Of two boards at a scarf the one at the left is the longer at its back, the other at its face, which lies over it: common practice.
  if (cut === 'scarf') return { cut, degrees: setting, long: side === 'right' ? 'back' : 'face', said };
  const corner = outside ? 'outside' : 'inside';
  return { cut: cut === 'miter' ? 'mitre' : cut, degrees: setting, corner, long: outside ? 'face' : 'back', said };
}
