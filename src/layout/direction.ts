/** Which way the rows run, one direction for the whole floor or one per region, and which of two directions is better. */

import { doubleArea, type Outline } from '../units/geometry.ts';
import type { CoveredArea } from './covered-area.ts';
import type { BrokenRule, Plan, Region } from './floor.ts';
import { type Angle, angleAlong, angleBySide } from './frame.ts';

/**
 * Along the longer or shorter side of the largest region; turned whole degrees counterclockwise from the longer side; or
 * along wall `wall` (from 1, in outline order) of a room.
 */
export type Heading =
  | { readonly kind: 'side'; readonly side: 'long' | 'short' }
  | { readonly kind: 'turned'; readonly degrees: number }
  | { readonly kind: 'wall'; readonly wall: number; readonly region?: string };

/** One heading for everything, or headings by room name, with `others` for rooms not named. */
export type Direction =
  | Heading
  | {
      readonly kind: 'each';
      readonly rooms: readonly { readonly room: string; readonly heading: Heading }[];
      readonly others: Heading;
    };

/**
 * Every region with its angle; undefined when a wall or room doesn't exist. Throws a RangeError if there are no
 * regions.
 */
export function directed(regions: readonly Region[], direction: Direction): readonly CoveredArea[] | undefined {
  if (direction.kind !== 'each') return along(regions, regions, direction);
  const own = regions.map((region) => direction.rooms.find(({ room }) => outlineOf([region], room) !== undefined));
  if (direction.rooms.some(({ room }) => outlineOf(regions, room) === undefined)) return undefined;
  const angles = regions.map((region, i): CoveredArea | undefined => {
    const given = own[i];
    if (!given) return along([region], regions, direction.others)?.[0];
    const outline = outlineOf([region], given.room) ?? region.outline;
    const named = { ...region, outline };
    const heading = given.heading.kind === 'wall' ? { ...given.heading, region: region.name } : given.heading;
    const [angle] = along([region], [{ ...named, rooms: [] }], heading) ?? [];
    return angle;
  });
  const found = angles.flatMap((area) => area ?? []);
  return found.length === regions.length ? found : undefined;
}

/** Rooms of one region with conflicting directions. Rows continue from one room into the next, so that can't work. */
export function divided(regions: readonly Region[], direction: Direction): readonly string[] {
  if (direction.kind !== 'each') return [];
  for (const region of regions) {
    const given = direction.rooms.filter(({ room }) => outlineOf([region], room) !== undefined);
    const angles = given.map(({ room, heading }) =>
      directed([region], { kind: 'each', rooms: [{ room, heading }], others: heading })?.at(0),
    );
    if (new Set(angles.map((area) => area && area.angle % 180)).size > 1) return given.map(({ room }) => room);
  }
  return [];
}

function along(
  laid: readonly Region[],
  regions: readonly Region[],
  heading: Heading,
): readonly CoveredArea[] | undefined {
  const angle = angleOf(regions, heading);
  return angle === undefined ? undefined : laid.map((region) => ({ region, angle }));
}

function angleOf(regions: readonly Region[], heading: Heading): Angle | undefined {
  const largest = largestOf(regions);
  if (heading.kind === 'side') return angleBySide(largest.outline, heading.side);
  if (heading.kind === 'turned') return (angleBySide(largest.outline, 'long') + heading.degrees) % 360;
  const owner = heading.region === undefined ? largestRoom(largest) : outlineOf(regions, heading.region);
  if (!owner || heading.wall < 1 || heading.wall > owner.length) return undefined;
  return angleAlong(owner, heading.wall - 1);
}

/** The outline of a region, or of a room in one, by name; walls are numbered as the user gave them. */
function outlineOf(regions: readonly Region[], name: string): Outline | undefined {
  const wanted = name.toLowerCase();
  for (const region of regions) {
    const room = region.rooms?.find((one) => one.name.toLowerCase() === wanted);
    if (room) return room.outline;
    if (region.name.toLowerCase() === wanted) return largestRoom(region);
  }
  return undefined;
}

export function largestRoom(region: Region): Outline {
  const [first, ...others] = (region.rooms ?? []).map(({ outline }) => outline);
  if (!first) return region.outline;
  return others.reduce((best, outline) => (doubleArea(outline) > doubleArea(best) ? outline : best), first);
}

export function largestOf(regions: readonly Region[]): Region {
  const [first, ...rest] = regions;
  if (!first) throw new RangeError('a floor without regions');
  return rest.reduce((best, region) => (doubleArea(region.outline) > doubleArea(best.outline) ? region : best), first);
}

// Comparing a floor laid as it is with one turned a quarter turn.

interface Way {
  readonly plan: Plan;
  readonly cartons: number;
}

/**
 * Why one direction is better: no strip too narrow, other rules kept, fewer planks, along the longest walls, fewer
 * rows.
 */
type WayReason =
  | { readonly kind: 'strip' | 'rules' | 'wall' }
  | { readonly kind: 'planks' | 'rows'; readonly fewer: number };

/**
 * `turned` is true when the rows should run the other way; `reasons` is everything in favor of the better direction.
 */
interface WayChoice {
  readonly turned: boolean;
  readonly reasons: readonly WayReason[];
}

export function quarterTurned(areas: readonly CoveredArea[]): readonly CoveredArea[] {
  return areas.map(({ region, angle }) => ({ region, angle: (angle + 90) % 360 }));
}

/**
 * Better means fewer broken rules (looks aside), then a carton less, then rows along the longer side of the largest
 * region (sight lines, common practice), then fewer rows. A difference in planks within the same carton counts for
 * nothing. Throws a RangeError if there are no regions.
 */
export function betterWay(here: Way, turned: Way): WayChoice {
  const [one, two] = [judged(here), judged(turned)];
  const i = one.order.findIndex((value, k) => value !== two.order[k]);
  const turn = i >= 0 && (two.order[i] ?? 0) < (one.order[i] ?? 0);
  const [better, other] = turn ? [two, one] : [one, two];
  const reasons: WayReason[] = [];
  if (better.strips < other.strips) reasons.push({ kind: 'strip' });
  if (better.rules < other.rules) reasons.push({ kind: 'rules' });
  if (better.planks < other.planks) reasons.push({ kind: 'planks', fewer: other.planks - better.planks });
  if (better.across < other.across) reasons.push({ kind: 'wall' });
  if (better.rows < other.rows) reasons.push({ kind: 'rows', fewer: other.rows - better.rows });
  return { turned: turn, reasons };
}

function judged({ plan, cartons }: Way) {
  const { regions, planks, broken } = plan;
  const count = (holds: (rule: BrokenRule['rule']) => boolean): number =>
    broken.filter(({ rule }) => holds(rule)).length;
  const strips = count((rule) => rule === 'minRip');
  const rules = count((rule) => rule !== 'minRip' && rule !== 'pattern');
  const largest = largestOf(regions);
  const angle = regions.find((region) => region === largest)?.frame.angle ?? 0;
  const across = angle % 180 === angleBySide(largest.outline, 'long') ? 0 : 1;
  const rows = regions.reduce((sum, region) => sum + region.rows.length, 0);
  return { strips, rules, planks, across, rows, order: [strips + rules, cartons, across, rows] };
}
