/** The fewest planks of rows on one another by trying every place of every joint on a grid: too slow for a room, too plain to be wrong. */

/** Rows of equal extent or not, all from u = `from`; lengths in grid units. Every joint keeps the rules, or the layout does not count. */
export interface SmallFloor {
  readonly rows: readonly SmallRow[];
  readonly plank: number;
  readonly kerf: number;
  readonly minEnd: number;
  readonly stagger: number;
  /** Joints nearer than this look in line; undefined where looks are left free. */
  readonly inLine: number | undefined;
}

/** A row over the whole width of planks, or a ripped one that keeps its near or its far edge: a near and a far one fit beside one another. */
export interface SmallRow {
  readonly from: number;
  readonly length: number;
  readonly edge?: 'near' | 'far';
  /** The start pieces it may have; all where none are named. */
  readonly starts?: readonly number[];
}

interface RowLaid {
  readonly edge: SmallRow['edge'];
  readonly joints: readonly number[];
  readonly start: number;
  readonly end: number;
  readonly whole: number;
}

/** The fewest planks, or undefined when no layout keeps the rules. Rows no longer than a plank are not taken. */
export function fewestOf(floor: SmallFloor): number | undefined {
  const ways = floor.rows.map((row) => waysOf(row, floor));
  let best: number | undefined;
  const lay = (laid: readonly RowLaid[]): void => {
    if (laid.length === floor.rows.length) {
      const planks = floor.rows.some(({ edge }) => edge) ? planksBeside(laid, floor) : planksOf(laid, floor);
      if (best === undefined || planks < best) best = planks;
      return;
    }
    for (const way of ways[laid.length] ?? []) if (goes(way, laid, floor)) lay([...laid, way]);
  };
  lay([]);
  return best;
}

function waysOf({ from, length, edge, starts }: SmallRow, { plank, minEnd }: SmallFloor): RowLaid[] {
  const ways: RowLaid[] = [];
  for (let first = 1; first <= plank && first < length; first++) {
    if (starts && !starts.includes(first)) continue;
    const joints: number[] = [];
    for (let u = first; u < length; u += plank) joints.push(from + u);
    const end = from + length - (joints.at(-1) ?? 0);
    const pieces = joints.length + 1;
    const cut = (first < plank ? 1 : 0) + (end < plank ? 1 : 0);
    if (first >= minEnd && end >= minEnd)
      ways.push({ edge, joints, start: first < plank ? first : 0, end: end < plank ? end : 0, whole: pieces - cut });
  }
  return ways;
}

function goes(way: RowLaid, laid: readonly RowLaid[], { stagger, inLine, plank, rows }: SmallFloor): boolean {
  const [before, two] = [laid.at(-1), laid.at(-2)];
  if (!before) return true;
  if (way.joints.some((u) => before.joints.some((v) => Math.abs(u - v) < stagger))) return false;
  if (!two || inLine === undefined) return true;
  const middle = rows[laid.length - 1];
  const within = (u: number): boolean => middle !== undefined && u > middle.from && u < middle.from + middle.length;
  return !way.joints.some((u) =>
    two.joints.some(
      (w) =>
        (Math.abs(u - w) < inLine && within(u) && within(w)) ||
        before.joints.some(
          (v) => Math.abs(u - v) * 2 <= plank && Math.abs(v - w) * 2 <= plank && Math.abs(u - 2 * v + w) < inLine,
        ),
    ),
  );
}

/** Whole planks, and a plank for every start and end but for those that share one: augmenting paths, piece by piece. */
function planksOf(laid: readonly RowLaid[], { plank, kerf }: SmallFloor): number {
  const starts = laid.flatMap(({ start }) => (start > 0 ? [start] : []));
  const ends = laid.flatMap(({ end }) => (end > 0 ? [end] : []));
  const hostOf: number[] = starts.map(() => -1);
  const place = (end: number, seen: Set<number>): boolean =>
    starts.some((start, s) => {
      if (seen.has(s) || start + kerf + (ends[end] ?? 0) > plank) return false;
      seen.add(s);
      if ((hostOf[s] ?? -1) >= 0 && !place(hostOf[s] ?? 0, seen)) return false;
      hostOf[s] = end;
      return true;
    });
  const pairs = ends.filter((_, end) => place(end, new Set())).length;
  return laid.reduce((sum, { whole }) => sum + whole, 0) + starts.length + ends.length - pairs;
}

/** What a plank still has along each of its edges: a right part, a left part. */
interface Halves {
  readonly near: readonly [start: number, end: number];
  readonly far: readonly [start: number, end: number];
}

/**
 * Every piece put on every plank that can still give it: along each edge a plank gives one start and one end with a kerf between,
 * and a piece of the whole width takes both edges. Whole pieces of whole rows are a plank each.
 */
function planksBeside(laid: readonly RowLaid[], { plank, kerf }: SmallFloor): number {
  const pieces = laid.flatMap(({ edge, start, end, whole }) => [
    ...(edge ? Array.from({ length: whole }, () => ({ edge, start: plank, end: 0 })) : []),
    ...(start > 0 ? [{ edge, start, end: 0 }] : []),
    ...(end > 0 ? [{ edge, start: 0, end }] : []),
  ]);
  const takes = (
    [start, end]: readonly [number, number],
    piece: { readonly start: number; readonly end: number },
  ): readonly [number, number] | undefined => {
    if ((piece.start > 0 && start > 0) || (piece.end > 0 && end > 0)) return undefined;
    const [s, e] = [start + piece.start, end + piece.end];
    return s > 0 && e > 0 && s + e + kerf > plank ? undefined : [s, e];
  };
  let best = pieces.length;
  const open: Halves[] = [];
  const place = (next: number): void => {
    if (open.length >= best) return;
    const piece = pieces[next];
    if (!piece) {
      best = open.length;
      return;
    }
    const put = (from: Halves): Halves | undefined => {
      const near = piece.edge === 'far' ? from.near : takes(from.near, piece);
      const far = piece.edge === 'near' ? from.far : takes(from.far, piece);
      return near && far && { near, far };
    };
    open.forEach((from, i) => {
      const after = put(from);
      if (!after) return;
      open[i] = after;
      place(next + 1);
      open[i] = from;
    });
    const fresh = put({ near: [0, 0], far: [0, 0] });
    if (!fresh) return;
    open.push(fresh);
    place(next + 1);
    open.pop();
  };
  place(0);
  return best + laid.reduce((sum, { edge, whole }) => sum + (edge ? 0 : whole), 0);
}
