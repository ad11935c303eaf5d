/** The first lines of a floor answer: which floor it is, its strips, rules it breaks, and what would save a carton. */

import { type Saying, sayArea, sayCut, sayLength } from '../../src/input/format.ts';
import { isSlanted } from '../../src/layout/covered-area.ts';
import type { LaidRegion, Plan, Plank, Region } from '../../src/layout/floor.ts';
import { startWall } from '../../src/layout/home-regions.ts';
import { FLOOR_BRIEF, LAY } from '../../src/text/floor-text.ts';
import { boxOf } from '../../src/units/geometry.ts';
import { ticks } from '../../src/units/length.ts';
import { wallToWall } from './floor-facts.ts';

export interface Saver {
  readonly cartons: number;
  readonly line: string;
}

export function floorLine(
  { regions, plank }: { readonly regions: readonly Region[]; readonly plank: Plank },
  pattern: string,
  saying: Saying,
  thing: keyof Pick<typeof FLOOR_BRIEF, 'planks' | 'boards'> = 'planks',
): string {
  const planks = FLOOR_BRIEF[thing](sayCut(plank.width, saying), sayCut(plank.length, saying));
  const count = regions.reduce((sum, { rooms }) => sum + (rooms?.length ?? 1), 0);
  const [only] = regions;
  if (count === 1 && only && isPlainRoom(only)) {
    const { minX, minY, maxX, maxY } = boxOf(only.outline);
    const sides = [maxX - minX, maxY - minY].map((side) => sayLength(ticks(side), saying)).join(' x ');
    return FLOOR_BRIEF.room(sides, planks, pattern);
  }
  return FLOOR_BRIEF.rooms(count, sayArea(wallToWall({ regions }), saying), planks, pattern);
}

function isPlainRoom({ outline }: Region): boolean {
  return (
    outline.length === 4 &&
    outline.every(([x, y], i) => {
      const [toX = x, toY = y] = outline[(i + 1) % 4] ?? [];
      return x === toX || y === toY;
    })
  );
}

/** Rip widths of the first and last rows. Empty where walls are slanted, because each piece there has its own shape. */
function stripLines({ regions, plank, rules }: Plan, saying: Saying): readonly string[] {
  const straight = regions.filter((region) => !isSlanted(region, region.frame.angle));
  const [only] = straight;
  if (!only || straight.length < regions.length) return [];
  const say = (height: number): string => sayCut(ticks(height), saying);
  if (regions.length > 1) {
    const ends = straight.flatMap(({ name, rows }) =>
      [rows[0], rows.at(-1)].flatMap((row) => (row ? [{ name, height: row.height }] : [])),
    );
    const narrowest = [...ends].sort((a, b) => a.height - b.height)[0];
    return narrowest && narrowest.height < plank.width
      ? [FLOOR_BRIEF.narrowest(say(narrowest.height), narrowest.name)]
      : [];
  }
  const [first, last] = [only.rows[0], only.rows.at(-1)];
  if (!first || !last) return [];
  const said = (height: number): string | undefined => (height < plank.width ? say(height) : undefined);
  const [firstStrip, lastStrip] = [said(first.height), said(last.height)];
  if (only.rows.length === 1) return firstStrip === undefined ? [] : [FLOOR_BRIEF.oneRow(firstStrip)];
  const sliver = only.rows.reduce((sum, { height }) => sum + height, 0) % plank.width;
  if (firstStrip !== undefined && lastStrip !== undefined && sliver > 0 && sliver < rules.minRip)
    return [
      firstStrip === lastStrip
        ? FLOOR_BRIEF.evened(firstStrip, say(sliver))
        : FLOOR_BRIEF.evenedApart(firstStrip, lastStrip, say(sliver)),
    ];
  return [FLOOR_BRIEF.strips(firstStrip, lastStrip)];
}

function brokenLines({ broken }: Plan): readonly string[] {
  const places = broken.filter(({ rule }) => rule !== 'pattern').length;
  return places > 0 ? [FLOOR_BRIEF.broken(places)] : [];
}

/** `savers` are other ways to lay the floor, `sure` says how certain the carton count is. */
export function floorLines(
  plan: Plan,
  saying: Saying,
  { savers = [], sure = [] }: { readonly savers?: readonly Saver[]; readonly sure?: readonly string[] } = {},
): readonly string[] {
  const [saver] = [...savers].sort((a, b) => a.cartons - b.cartons);
  return [
    floorLine(plan, FLOOR_BRIEF.named(plan.rules.pattern.name), saying),
    ...stripLines(plan, saying),
    ...brokenLines(plan),
    ...(saver ? [saver.line] : []),
    ...sure,
  ];
}

export function roomLines(alone: Plan, region: LaidRegion, saying: Saying): readonly string[] {
  const wall = startWall(region, region.frame.angle);
  const named = region.rooms && region.rooms.length > 1;
  return [
    ...floorLines(alone, saying),
    ...(wall === undefined
      ? []
      : [
          FLOOR_BRIEF.start(
            named ? LAY.wallOf(wall.number, wall.room) : String(wall.number),
            sayLength(wall.length, saying),
          ),
        ]),
  ];
}
