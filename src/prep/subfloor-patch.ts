/** A patch in a panel subfloor: the cut, its panels, blocks, fasteners, sheets and adhesive. */

import type { Point } from '../units/geometry.ts';
import {
  type Length,
  roundUp,
  roundUpRatio,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  ticks,
} from '../units/length.ts';

// The hole: two sides on joist centerlines, with the damage and sound wood around it inside.

/** Joists run along v; u is measured across them from the wall. `first` is the centerline nearest the wall. */
interface Joists {
  readonly spacing: Length;
  readonly first: Length;
  readonly width: Length;
}

/** An upright rectangle from (u0, v0) to (u1, v1) in ticks. */
export interface Rect {
  readonly u0: number;
  readonly v0: number;
  readonly u1: number;
  readonly v1: number;
}

interface CutRules {
  /** Sound wood around the damage. */
  readonly margin: Length;
  readonly bays: number;
  /** Minimum width along the joists. */
  readonly least: Length;
  /** Where the opposite walls are, if known. */
  readonly across?: Length;
  readonly along?: Length;
}

/** `joists` are the centerlines under the hole, first to last, ascending. */
interface PatchCut extends Rect {
  readonly joists: readonly number[];
  readonly bays: number;
}

/** Why no hole can land on joists: none toward a wall, or too few joists between the walls. */
type NoCut = 'no-joist-before' | 'no-joist-after' | 'too-few-bays';

/**
 * The smallest hole that covers the damage plus the margin (as far as the walls allow), lands on joist centerlines at
 * both sides, spans `bays` bays, and is `least` wide along the joists if there is room. Ticks. An extra bay goes on the
 * side closer to the middle of the damage. Throws a RangeError for damage that is empty or beyond the walls.
 */
export function patchCut(damage: Rect, joists: Joists, rules: CutRules): PatchCut | NoCut {
  const { across = ticks(Number.MAX_SAFE_INTEGER), along = ticks(Number.MAX_SAFE_INTEGER) } = rules;
  if (damage.u0 >= damage.u1 || damage.v0 >= damage.v1) throw new RangeError('damage without a size');
  if (damage.u0 < 0 || damage.v0 < 0 || damage.u1 > across || damage.v1 > along) throw new RangeError('damage beyond');
  const lowest = joists.first;
  const at = (index: number): number => lowest + index * joists.spacing;
  const highest = Math.floor((across - lowest) / joists.spacing);
  if (damage.u0 < lowest) return 'no-joist-before';
  if (damage.u1 > at(highest)) return 'no-joist-after';
  // The margin gives way when the wall leaves no joist for it.
  let low = Math.max(0, Math.floor((damage.u0 - rules.margin - lowest) / joists.spacing));
  let high = Math.min(highest, Math.ceil((damage.u1 + rules.margin - lowest) / joists.spacing));
  if (low === high) high = Math.min(highest, high + 1);
  const middle = damage.u0 + damage.u1;
  while (high - low < rules.bays) {
    const [down, up] = [low > 0, high < highest];
    if (!down && !up) return 'too-few-bays';
    const nearerDown = middle - (at(low) + at(low - 1)) <= at(high) + at(high + 1) - middle;
    if (down && (nearerDown || !up)) low -= 1;
    else high += 1;
  }
  const [v0, v1] = alongJoists(damage, rules, along);
  const lines = Array.from({ length: high - low + 1 }, (_, i) => at(low + i));
  return { u0: at(low), u1: at(high), v0, v1, joists: lines, bays: high - low };
}

/** The hole's extent along the joists: damage, margin and minimum width, grown evenly and kept between the walls. */
function alongJoists(damage: Rect, { margin, least }: CutRules, along: number): readonly [number, number] {
  let v0 = Math.max(0, damage.v0 - margin);
  let v1 = Math.min(along, damage.v1 + margin);
  const short = least - (v1 - v0);
  if (short <= 0) return [v0, v1];
  v0 = Math.max(0, v0 - Math.floor(short / 2));
  v1 = Math.min(along, v0 + least);
  return [Math.max(0, Math.min(v0, v1 - least)), v1];
}

// Panels: the hole divided into pieces that come from sheets and land on joists, with gaps between.

/** `length` is the strength axis. */
export interface SheetSize {
  readonly width: Length;
  readonly length: Length;
}

/** A piece in place, and the joist centerlines under it from end to end. */
interface Panel extends Rect {
  readonly joists: readonly number[];
}

/** Lines between panels: at joist centerlines (`ends`), and along u between joists (`edges`). */
interface PanelGrid {
  readonly panels: readonly Panel[];
  /** Joist centerlines on which two panels of the patch butt. */
  readonly ends: readonly number[];
  /** v of the centers of gaps between panels, along the strength axis. */
  readonly edges: readonly number[];
}

/** How lengths are split: evenly, or whole sheets first and the remainder last. */
interface Split {
  readonly bays: 'even' | 'full';
  readonly rows: 'even' | 'full';
}

const SPLITS: readonly Split[] = [
  { bays: 'even', rows: 'even' },
  { bays: 'full', rows: 'even' },
  { bays: 'even', rows: 'full' },
  { bays: 'full', rows: 'full' },
];

/** Bays that one sheet spans with its ends on centerlines. */
export function baysPerSheet(spacing: number, sheet: SheetSize, gap: Length): number {
  return Math.floor((sheet.length + gap) / spacing);
}

/**
 * Divides the hole into as few panels as the sheet size allows, with `gap` ticks around each and the strength axis
 * along u, across the joists. Ends butt on centerlines; no panel spans fewer than two bays if the hole spans two.
 * `least` is the minimum width of the last row when rows are full sheets. Throws a RangeError when one bay is longer
 * than a sheet.
 */
export function dividePatch(cut: PatchCut, sheet: SheetSize, gap: Length, least: Length, split: Split): PanelGrid {
  const bounds = bayBounds(cut, baysPerSheet((cut.u1 - cut.u0) / cut.bays, sheet, gap), split.bays);
  const heights = rowHeights(cut.v1 - cut.v0, sheet.width, gap, least, split.rows);
  const panels: Panel[] = [];
  const edges: number[] = [];
  let v0 = cut.v0 + gap;
  heights.forEach((height, row) => {
    for (let i = 0; i + 1 < bounds.length; i++) {
      const joists = cut.joists.slice(bounds[i] ?? 0, (bounds[i + 1] ?? 0) + 1);
      const [from = cut.u0, to = cut.u1] = [joists[0], joists.at(-1)];
      // Half the gap lies on each side of a centerline where two new panels butt.
      const u0 = from + (i === 0 ? gap : Math.ceil(gap / 2));
      const u1 = to - (i + 2 === bounds.length ? gap : Math.floor(gap / 2));
      panels.push({ u0, v0, u1, v1: v0 + height, joists });
    }
    v0 += height + gap;
    if (row + 1 < heights.length) edges.push(v0 - Math.ceil(gap / 2));
  });
  const ends = bounds.slice(1, -1).map((index) => cut.joists[index] ?? cut.u1);
  return { panels, ends, edges };
}

function bayBounds(cut: PatchCut, most: number, split: Split['bays']): readonly number[] {
  if (most < 1) throw new RangeError('a bay is longer than a sheet');
  const count = roundUpRatio(BigInt(cut.bays), BigInt(most));
  const bounds = Array.from({ length: count + 1 }, (_, i) =>
    split === 'even' ? Math.round((i * cut.bays) / count) : Math.min(i * most, cut.bays),
  );
  const last = bounds.at(-2);
  // A last panel of one bay takes one from its neighbor.
  if (count > 1 && last !== undefined && cut.bays - last < 2 && most > 2) bounds[count - 1] = cut.bays - 2;
  return bounds;
}

/** Widths of the rows of panels in ticks, without gaps. */
function rowHeights(deep: number, width: number, gap: number, least: number, split: Split['rows']): readonly number[] {
  const count = Math.max(1, roundUpRatio(BigInt(deep - gap), BigInt(width + gap)));
  const room = deep - (count + 1) * gap;
  const even = Math.floor(room / count);
  const heights = Array.from({ length: count }, (_, i) => (i < room - even * count ? even + 1 : even));
  if (split === 'even' || count === 1) return heights;
  const rest = room - (count - 1) * width;
  const last = Math.min(Math.max(rest, least), even);
  const full = Array.from({ length: count - 1 }, () => width);
  // What the last row needs to be wide enough comes off the one before it.
  full[count - 2] = room - (count - 2) * width - last;
  return [...full, last];
}

/** A liter is a cube of 100 mm. */
const TICKS_PER_DECIMETRE = TICKS_PER_MM * 100;

/**
 * Feet of bead in a tube: cubic inches ÷ (π/4 · d² · 12), a cylinder of diameter d. Throws a RangeError unless both are
 * positive.
 */
export function feetPerTube(cubicInches: number, bead: Length): number {
  if (!(cubicInches > 0) || bead <= 0) throw new RangeError('an empty tube or bead');
  const inch = bead / TICKS_PER_INCH;
  return cubicInches / ((Math.PI / 4) * inch ** 2 * 12);
}

/**
 * Ticks of bead for a patch: one on each joist under a panel, two where panels butt (Modern Carpentry, 2016, p. 258),
 * which means along all four sides of the hole and every gap between its panels.
 */
function beadOf(cut: PatchCut, grid: PanelGrid): number {
  const [wide, deep] = [cut.u1 - cut.u0, cut.v1 - cut.v0];
  const butts = (2 + grid.ends.length) * deep + (2 + grid.edges.length) * wide;
  const between = (cut.joists.length - 2 - grid.ends.length) * deep;
  return 2 * butts + between;
}

/** Liters in a bead, a cylinder of diameter d: length · π/4 · d². */
export function beadLitres(bead: number, diameter: Length): number {
  const [length, across] = [bead / TICKS_PER_DECIMETRE, diameter / TICKS_PER_DECIMETRE];
  return length * (Math.PI / 4) * across ** 2;
}

/** Tubes for a bead in ticks: ⌈feet × waste ÷ feet per tube⌉. */
export function adhesiveTubes(bead: number, perTube: number, waste: number): number {
  return roundUp(((bead / TICKS_PER_FOOT) * waste) / perTube);
}

interface BlockingCut {
  readonly length: Length;
  readonly count: number;
}

/**
 * Blocks in place: each fills a bay between two joists, centered under an edge as far as the walls of the hole allow.
 */
function blockPlaces(cut: PatchCut, joists: Joists, edges: readonly number[], depth: Length): readonly Rect[] {
  const half = Math.floor(depth / 2);
  return [cut.v0, ...edges, cut.v1].flatMap((v) =>
    cut.joists.slice(0, -1).map((line, bay) => {
      const next = cut.joists[bay + 1] ?? cut.u1;
      const [u0, u1] = [line + Math.floor(joists.width / 2), next - Math.ceil(joists.width / 2)];
      const v0 = Math.max(0, v - half);
      return { u0, u1, v0, v1: v0 + depth };
    }),
  );
}

function blockingCuts(places: readonly Rect[]): readonly BlockingCut[] {
  const counts = new Map<number, number>();
  for (const { u0, u1 } of places) counts.set(u1 - u0, (counts.get(u1 - u0) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => b - a).map(([length, count]) => ({ length: ticks(length), count }));
}

// Fasteners: close together along supported ends and edges, wider on the joists between.

interface FastenerRule {
  /** Maximum spacing in ticks along supported ends and edges. */
  readonly edge: Length;
  /** Maximum spacing in ticks on the joists between. */
  readonly field: Length;
}

/** Fasteners along a line, one at each end and no more than `apart` between neighbors: ⌈length/apart⌉ + 1. */
export function fastenersOn(length: number, apart: Length): number {
  return roundUpRatio(BigInt(length), BigInt(apart)) + 1;
}

/**
 * The fasteners of one panel as points (u, v) in ticks: both ends and every joist between along v, and, where the long
 * edges are blocked, between the joists along u (6 in and 12 in: Modern Carpentry, 2016, p. 258). Those at the rim sit
 * `inset` inside it.
 */
export function fastenerPlaces(
  panel: Panel,
  rule: FastenerRule,
  blocked: boolean,
  inset: Length = ticks(0),
): readonly Point[] {
  const [u0, u1] = [panel.u0 + inset, panel.u1 - inset];
  const [v0, v1] = [panel.v0 + inset, panel.v1 - inset];
  const lines = panel.joists.map((line, i) => (i === 0 ? u0 : i === panel.joists.length - 1 ? u1 : line));
  const onJoists = lines.flatMap((u, i) => {
    const end = i === 0 || i === lines.length - 1;
    return along(v0, v1, fastenersOn(panel.v1 - panel.v0, end ? rule.edge : rule.field)).map((v): Point => [u, v]);
  });
  if (!blocked) return onJoists;
  const onBlocks = panel.joists.slice(0, -1).flatMap((line, bay) => {
    const next = panel.joists[bay + 1] ?? line;
    const [from, to] = [lines[bay] ?? line, lines[bay + 1] ?? next];
    const between = along(from, to, fastenersOn(next - line, rule.edge)).slice(1, -1);
    return [v0, v1].flatMap((v) => between.map((u): Point => [u, v]));
  });
  return [...onJoists, ...onBlocks];
}

/** `count` positions spaced evenly from end to end, each rounded to a tick. */
function along(from: number, to: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => Math.round(from + ((to - from) * i) / (count - 1)));
}

// Cutting the sheets: strips across a sheet, pieces end to end in each strip.

/** A piece on a sheet: `length` along the strength axis, corner at (`x` along the sheet, `y` across), in ticks. */
interface PlacedPiece {
  /** Index in the list of pieces passed in. */
  readonly piece: number;
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

interface Strip {
  readonly y: number;
  readonly width: number;
  used: number;
}

interface Sheet {
  readonly strips: Strip[];
  readonly pieces: PlacedPiece[];
  used: number;
}

/**
 * Places pieces on sheets without turning any (the strength axis stays), a kerf between neighbors; first fit, widest
 * first (shelf packing, Coffman, Garey, Johnson and Tarjan 1980, from memory). Throws a RangeError for a piece larger
 * than a sheet.
 */
export function planSheets(
  pieces: readonly { readonly width: number; readonly length: number }[],
  sheet: SheetSize,
  kerf: Length,
): readonly (readonly PlacedPiece[])[] {
  const sheets: Sheet[] = [];
  const order = pieces.map((piece, index) => ({ ...piece, index }));
  order.sort((a, b) => b.width - a.width || b.length - a.length || a.index - b.index);
  for (const { width, length, index } of order) {
    if (width > sheet.width || length > sheet.length) throw new RangeError('a piece larger than a sheet');
    const { on, strip } = placeFor(sheets, sheet, kerf, width, length);
    const x = strip.used === 0 ? 0 : strip.used + kerf;
    on.pieces.push({ piece: index, x, y: strip.y, length, width });
    strip.used = x + length;
  }
  return sheets.map((one) => one.pieces);
}

/** The first strip with room, or a new strip on the first sheet with room, or a new sheet. */
function placeFor(
  sheets: Sheet[],
  size: SheetSize,
  kerf: Length,
  width: number,
  length: number,
): { on: Sheet; strip: Strip } {
  for (const on of sheets) {
    const strip = on.strips.find((one) => one.width >= width && one.used + kerf + length <= size.length);
    if (strip) return { on, strip };
  }
  let on = sheets.find(({ used }) => used + kerf + width <= size.width);
  if (!on) {
    on = { strips: [], pieces: [], used: 0 };
    sheets.push(on);
  }
  const strip: Strip = { y: on.used === 0 ? 0 : on.used + kerf, width, used: 0 };
  on.strips.push(strip);
  on.used = strip.y + width;
  return { on, strip };
}

export interface PatchRules extends CutRules {
  readonly gap: Length;
  readonly kerf: Length;
  readonly sheet: SheetSize;
  readonly fasteners: FastenerRule;
  readonly rim: Length;
  /** Width of the blocks, laid flat: half on each side of an edge. */
  readonly block: Length;
}

/** In (u, v): u across the joists from the wall, v along them; ticks. */
export interface Patch {
  readonly cut: PatchCut;
  readonly damage: Rect;
  readonly panels: readonly Panel[];
  readonly blocks: readonly Rect[];
  readonly blocking: readonly BlockingCut[];
  readonly fasteners: readonly Point[];
  /** Fasteners for the remaining floor along the cut. */
  readonly kept: number;
  readonly sheets: readonly (readonly PlacedPiece[])[];
  readonly bead: number;
}

/**
 * The patch for the damage, or why there is none. Fasteners follow the edge and field spacing with long edges blocked;
 * the remaining floor is fastened at the edge spacing all around the cut. Throws a RangeError like patchCut.
 */
export function planPatch(damage: Rect, joists: Joists, rules: PatchRules): Patch | NoCut {
  const cut = patchCut(damage, joists, rules);
  if (typeof cut === 'string') return cut;
  const { grid, sheets } = fewestSheets(cut, rules);
  const blocks = blockPlaces(cut, joists, grid.edges, rules.block);
  const sides = fastenersOn(cut.v1 - cut.v0, rules.fasteners.edge);
  const perBay = fastenersOn(joists.spacing, rules.fasteners.edge) - 2;
  return {
    cut,
    damage,
    panels: grid.panels,
    blocks,
    blocking: blockingCuts(blocks),
    fasteners: grid.panels.flatMap((panel) => fastenerPlaces(panel, rules.fasteners, true, rules.rim)),
    kept: 2 * sides + 2 * cut.bays * perBay,
    sheets,
    bead: beadOf(cut, grid),
  };
}

/** What a patch can come to where nobody measured from the walls to the damage or to the joists; in ticks. */
export interface PatchRange {
  /** Every width the hole can have across the joists, smallest first. */
  readonly across: readonly number[];
  /** Least and most along them. */
  readonly along: readonly [number, number];
  /** The plan that takes the most: sheets, then blocks and screws. */
  readonly most: Patch;
}

const PLACES = 64;

/**
 * Tries the damage, turned both ways unless `turned` says how it lies, at places between two joists. `rules` know no walls.
 * Throws a RangeError like patchCut.
 */
export function patchRange(
  sides: readonly [number, number],
  turned: readonly boolean[],
  joists: Omit<Joists, 'first'>,
  rules: PatchRules,
): PatchRange | NoCut {
  const far = 20 * joists.spacing;
  const plans: Patch[] = [];
  for (const turn of turned) {
    const [across, along] = turn ? [sides[1], sides[0]] : sides;
    for (let place = 0; place < PLACES; place += 1) {
      const u0 = far + Math.round((place * joists.spacing) / PLACES);
      const plan = planPatch(
        { u0, v0: far, u1: u0 + across, v1: far + along },
        { ...joists, first: joists.spacing },
        rules,
      );
      if (typeof plan === 'string') return plan;
      plans.push(plan);
    }
  }
  const rank = ({ sheets, blocks, fasteners, kept }: Patch): number =>
    sheets.length * 1e6 + blocks.length * 1e4 + fasteners.length + kept;
  const widths = plans.map(({ cut }) => cut.u1 - cut.u0);
  const lengths = plans.map(({ cut }) => cut.v1 - cut.v0);
  return {
    across: [...new Set(widths)].sort((one, other) => one - other),
    along: [Math.min(...lengths), Math.max(...lengths)],
    most: plans.reduce((worst, plan) => (rank(plan) > rank(worst) ? plan : worst)),
  };
}

/** The split of the hole that takes the fewest sheets; the most even one of several. */
function fewestSheets(cut: PatchCut, { sheet, gap, kerf, least }: PatchRules) {
  const plans = SPLITS.map((split) => {
    const grid = dividePatch(cut, sheet, gap, least, split);
    const sizes = grid.panels.map(({ u0, u1, v0, v1 }) => ({ width: v1 - v0, length: u1 - u0 }));
    return { grid, sheets: planSheets(sizes, sheet, kerf) };
  });
  return plans.reduce((best, plan) => (plan.sheets.length < best.sheets.length ? plan : best));
}

/** Converts (u, v) to room coordinates (x, y): the same if joists run up, swapped if they run across. */
export function patchToRoom([u, v]: Point, run: 'up' | 'across'): Point {
  return run === 'up' ? [u, v] : [v, u];
}

/** A rectangle's corners in the room, counterclockwise from the lower left. */
export function cornersOf({ u0, v0, u1, v1 }: Rect, run: 'up' | 'across'): readonly Point[] {
  const [x0, y0] = patchToRoom([u0, v0], run);
  const [x1, y1] = patchToRoom([u1, v1], run);
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}
