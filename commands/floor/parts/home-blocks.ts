/** What an answer tells of a home as a whole: doorways, rooms, offcuts kept from room to room, what is left at the end. */

import { type Saying, sayArea, sayCut, sayLength } from '../../../src/input/format.ts';
import type { Region } from '../../../src/layout/floor.ts';
import { roomAreas } from '../../../src/layout/home-regions.ts';
import { keptOffcuts, type Leftover, leftoverOf } from '../../../src/layout/offcuts.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { HOME } from '../../../src/text/home-text.ts';
import { inches, type Length, millimetres, ticks } from '../../../src/units/length.ts';
import type { LaidFloor } from './laid.ts';

/** Offcuts told one by one, the longest first; the rest are counted. */
const MOST_TOLD = 12;

/** What is told of a home needs no rows. */
interface HomeOf extends Pick<LaidFloor, 'home'> {
  readonly plan: { readonly regions: readonly Region[]; readonly rules: { readonly gap: Length } };
}

/** Doorways, areas by room and what planks go round; nothing for a plain room. */
export function homeFacts({ plan, home }: HomeOf, saying: Saying): readonly Fact[] {
  const facts: Fact[] = [];
  const gap = sayCut(plan.rules.gap, saying);
  for (const { rooms, width, runsOn } of home.doorways) {
    const names = rooms.join(' – ');
    const wide = sayLength(width, saying);
    facts.push({ label: HOME.doorways, value: runsOn ? HOME.runsOn(names, wide) : HOME.stops(names, wide, gap) });
  }
  const strips = home.doorways.filter(({ runsOn }) => !runsOn).map(({ width }) => sayLength(width, saying));
  if (strips.length > 0) facts.push({ label: HOME.transitions, value: HOME.strips(strips.length, strips.join(', ')) });
  const areas = plan.regions.map(roomAreas);
  if (plan.regions.some(({ rooms }) => rooms) || plan.regions.length > 1) {
    const doorways = areas.reduce((sum, region) => sum + region.doorways, 0n);
    const said = areas.flatMap(({ rooms }) => rooms.map(({ name, area }) => `${name} ${sayArea(area, saying)}`));
    if (doorways > 0n) said.push(`${HOME.between} ${sayArea(doorways, saying)}`);
    facts.push({ label: HOME.areas, value: said.join(', ') });
  }
  const standing = plan.regions.flatMap((region) => region.standing ?? []).map(({ name }) => name);
  if (standing.length > 0) facts.push({ label: HOME.standing, value: standing.join(', ') });
  return facts;
}

/** The order of the rooms and every offcut that waits for a later one; nothing where none does. */
export function keepBlocks({ plan, waiting }: LaidFloor, saying: Saying): readonly Block[] {
  if (plan.regions.length < 2) return [];
  const kept = keptOffcuts(plan);
  const regionOf = (name: string) => plan.regions.find((region) => region.name === name);
  const rowName = ({ region, row }: { region: string; row: number }, plank: number): string => {
    const pieces = regionOf(region)?.rows[row]?.pieces ?? [];
    return pieces.some((piece) => piece.plank === plank) ? String(row + 1) : '';
  };
  const ends = { left: HOME.left, right: HOME.right, any: HOME.middle };
  const steps = kept.map(({ plank, length, end, from, to }) =>
    HOME.keep(sayCut(ticks(length), saying), ends[end], plank, from.region, to.region, rowName(to, plank)),
  );
  if (steps.length === 0) return [];
  const order = HOME.order(
    plan.regions.map(({ name }) => name),
    waiting,
  );
  return [{ kind: 'steps', title: HOME.keepTitle, steps: [order, ...steps] }];
}

/** Shortest offcut told of: what still makes a start or an end piece, or fills a closet. */
function leastOffcut(saying: Saying): number {
  return saying.units === 'metric' ? millimetres(200) : inches(8);
}

/** Whole planks, offcuts and strips that are left when all is laid. */
export function leftoverBlock({ plan, purchase }: LaidFloor, saying: Saying): Block {
  const left = leftoverOf(plan, leastOffcut(saying));
  const whole = purchase.left + purchase.mistakes + purchase.spares;
  const facts: Fact[] = [
    { label: HOME.leftWhole, value: HOME.leftWholeOf(whole) },
    {
      label: saying.units === 'metric' ? HOME.leftOffcutsMetric : HOME.leftOffcuts,
      value: left.offcuts.length === 0 ? HOME.leftNone : HOME.leftOf(left.offcuts.length, sayOffcuts(left, saying)),
    },
    ...(left.strips.length === 0 ? [] : [{ label: HOME.leftRips, value: sayStrips(left, saying) }]),
  ];
  return { kind: 'facts', title: HOME.leftTitle, facts };
}

/** Lengths with how many there are of each, the longest first. */
function sayOffcuts({ offcuts }: Leftover, saying: Saying): string {
  const counts = new Map<string, number>();
  for (const offcut of offcuts) {
    const said = sayCut(ticks(offcut), saying);
    counts.set(said, (counts.get(said) ?? 0) + 1);
  }
  const told = [...counts].slice(0, MOST_TOLD);
  const rest = offcuts.length - told.reduce((sum, [, count]) => sum + count, 0);
  const list = told.map(([said, count]) => (count > 1 ? HOME.times(count, said) : said));
  return [...list, ...(rest > 0 ? [HOME.shorter(rest)] : [])].join(', ');
}

function sayStrips({ strips }: Leftover, saying: Saying): string {
  const widths = new Map<number, { count: number; length: number }>();
  for (const { width, length } of strips) {
    const known = widths.get(width) ?? { count: 0, length: 0 };
    widths.set(width, { count: known.count + 1, length: known.length + length });
  }
  return [...widths]
    .sort(([a], [b]) => b - a)
    .map(([width, { count, length }]) =>
      HOME.stripOf(count, sayCut(ticks(width), saying), sayLength(ticks(length), saying)),
    )
    .join('; ');
}
