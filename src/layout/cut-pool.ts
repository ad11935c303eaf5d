/** Sharing planks between cut pieces: which start, end and short pieces come from one plank. */

/** A piece to be cut: where it goes is its index in the caller's list. */
export interface CutPiece {
  readonly length: number;
  readonly part: 'start' | 'end' | 'any';
  readonly index: number;
}

/** Pieces that one plank yields. */
export interface Shared {
  readonly pieces: CutPiece[];
  /** Length not yet cut, kerfs between the pieces taken off; what a further piece and its kerf must fit into. */
  rest: number;
}

/**
 * The largest number of pairs (end + start + kerf ≤ plank): ends and starts in one plank, at most one of each.
 * Fitting is a threshold, so neighbourhoods are nested and taking the longest end first is a maximum matching; O(n log n).
 */
export function countPairs(starts: readonly number[], ends: readonly number[], plank: number, kerf: number): number {
  const up = new Float64Array(starts).sort();
  const down = new Float64Array(ends).sort();
  let pairs = 0;
  let fitting = 0;
  for (let i = down.length - 1; i >= 0; i--) {
    const room = plank - kerf - (down[i] as number);
    while (fitting < up.length && (up[fitting] as number) <= room) fitting++;
    if (fitting > pairs) pairs++;
  }
  return pairs;
}

/** Start and end pieces paired as often as can be; each pair as tight as can be, so that what is left over is in few planks. */
export function pair(starts: readonly CutPiece[], ends: readonly CutPiece[], plank: number, kerf: number): Shared[] {
  const up = [...starts].sort(byLength);
  const down = [...ends].sort(byLength).reverse();
  const planks: Shared[] = [];
  const fitting: CutPiece[] = [];
  let next = 0;
  for (const end of down) {
    const room = plank - kerf - end.length;
    for (let start = up[next]; start && start.length <= room; start = up[++next]) fitting.push(start);
    const start = fitting.pop();
    if (start) planks.push({ pieces: [end, start], rest: room - start.length });
    else planks.push({ pieces: [end], rest: plank - end.length });
  }
  for (const start of [...fitting, ...up.slice(next)]) planks.push({ pieces: [start], rest: plank - start.length });
  return planks;
}

/** Pieces of any part put where they fit best, the longest first; a new plank where none fits. Changes `planks`. */
export function pack(shorts: readonly CutPiece[], planks: Shared[], plank: number, kerf: number): Shared[] {
  for (const piece of [...shorts].sort(byLength).reverse()) {
    let best: Shared | undefined;
    for (const candidate of planks) {
      if (candidate.rest >= piece.length + kerf && (!best || candidate.rest < best.rest)) best = candidate;
    }
    if (best) {
      best.pieces.push(piece);
      best.rest -= piece.length + kerf;
    } else {
      planks.push({ pieces: [piece], rest: plank - piece.length });
    }
  }
  return planks;
}

function byLength(a: CutPiece, b: CutPiece): number {
  return a.length - b.length || b.index - a.index;
}
