/** The facts of a plank answer: what to buy, and how the floor is laid. */

import { RULE_OF_THUMB_PERCENT } from '../../src/figures/floor-figures.ts';
import { type Saying, sayArea, sayCut, sayLength, sayNumber } from '../../src/input/format.ts';
import { type Plan, type Plank, planksByArea, type Region } from '../../src/layout/floor.ts';
import { type Home, roomAreas, startWall } from '../../src/layout/home-regions.ts';
import { keptOffcuts, type Leftover, leftoverOf } from '../../src/layout/lay-floor.ts';
import type { Need } from '../../src/reply/need.ts';
import type { Block, Fact } from '../../src/reply/reply.ts';
import { BUY, counted, LAY } from '../../src/text/floor-text.ts';
import { HOME } from '../../src/text/home-text.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { doubleArea } from '../../src/units/geometry.ts';
import { inches, type Length, millimetres, roundUpRatio, ticks } from '../../src/units/length.ts';
import type { AreasAsk } from './floor-options.ts';
import type { LaidFloor } from './lay.ts';

/** Offcuts listed one by one, the longest first; the rest are only counted. */
const MOST_GIVEN = 12;

/** These facts don't depend on rows, so herringbone uses them too. */
interface HomeOf extends Pick<LaidFloor, 'home'> {
  readonly plan: { readonly regions: readonly Region[]; readonly rules: { readonly gap: Length } };
}

/** Doorways, area by room, and the things planks are cut around; empty for a single plain room. */
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

/** The order of the rooms and each offcut to save for a later one; empty if there is none. */
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
  return [{ kind: 'steps', section: 'cuts', title: HOME.keepTitle, steps: [order, ...steps] }];
}

/** The shortest offcut worth mentioning: it can still start or end a row, or fill a closet. Common practice. */
function leastOffcut(saying: Saying): number {
  return saying.units === 'metric' ? millimetres(200) : inches(8);
}

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
  return { kind: 'facts', section: 'details', title: HOME.leftTitle, facts };
}

/** Longest first. */
function sayOffcuts({ offcuts }: Leftover, saying: Saying): string {
  const counts = new Map<string, number>();
  for (const offcut of offcuts) {
    const said = sayCut(ticks(offcut), saying);
    counts.set(said, (counts.get(said) ?? 0) + 1);
  }
  const given = [...counts].slice(0, MOST_GIVEN);
  const rest = offcuts.length - given.reduce((sum, [, count]) => sum + count, 0);
  const list = given.map(([said, count]) => (count > 1 ? HOME.times(count, said) : said));
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

/** In square ticks, without the holes. */
export function wallToWall(plan: { readonly regions: readonly Region[] }): bigint {
  return plan.regions.reduce(
    (sum, { outline, holes }) => sum + [outline, ...holes].reduce((area, path) => area + doubleArea(path), 0n) / 2n,
    0n,
  );
}

/** Shows the rule of thumb beside the computed figure. */
export function buyFacts({ plan, purchase, said: cost, carton, searching }: LaidFloor, saying: Saying): Block {
  const searched = plan.rules.pattern.name === 'scattered';
  const { plank, planks, bound } = plan;
  const area = wallToWall(plan);
  const square = BigInt(plank.length) * BigInt(plank.width);
  const thumb = planksByArea(area, square, [RULE_OF_THUMB_PERCENT.value * 100]);
  const thumbCartons = roundUpRatio(BigInt(thumb), BigInt(plank.perCarton));
  const laid = square * BigInt(planks);
  const waste = Number(((laid - area) * 1000n) / area) / 10;
  const facts: Fact[] = [
    { label: BUY.cartons, value: BUY.of(purchase.cartons, plank.perCarton, carton) },
    ...(searched
      ? [
          { label: BUY.planks, value: BUY.used(planks, plan.reused) },
          { label: BUY.proof, value: BUY.proved(planks, planks - bound.best, searching, hasJogs(plan)) },
        ]
      : [{ label: BUY.planks, value: BUY.counted(planks, plan.reused, bound.proven ? undefined : bound.best) }]),
    { label: BUY.mistakes, value: counted(purchase.mistakes, 'plank') },
    ...(purchase.spares > 0 ? [{ label: BUY.spares, value: counted(purchase.spares, 'plank') }] : []),
    { label: BUY.left, value: counted(purchase.left, 'plank') },
    ...(cost === undefined ? [] : [{ label: BUY.cost, value: cost }]),
    { label: BUY.area, value: sayArea(area, saying) },
    { label: BUY.waste, value: `${sayNumber(waste, saying, 1)}%` },
    { label: BUY.byArea, value: `${counted(thumb, 'plank')}, ${counted(thumbCartons, 'carton')}` },
  ];
  return { kind: 'facts', section: 'buy', title: BUY.title, facts };
}

/** Planks may have to be cut around a jog. */
function hasJogs({ regions }: Plan): boolean {
  return regions.some(({ outline, holes }) => outline.length > 4 || holes.length > 0);
}

function sayPattern(plan: Plan, saying: Saying): string {
  const { pattern } = plan.rules;
  return pattern.name === 'stair-step' ? LAY.stair(sayCut(pattern.step, saying), pattern.rows) : pattern.name;
}

/** `others` are phrases about other patterns, `way` is the fact about turning the rows. */
export function layFacts(laid: LaidFloor, others: readonly string[], saying: Saying, way?: Fact): Block {
  const { plan } = laid;
  const { rules, plank } = plan;
  const facts: Fact[] = [...homeFacts(laid, saying)];
  for (const region of plan.regions) {
    const { name, rows, frame } = region;
    const [first, last] = [rows[0], rows.at(-1)];
    if (!first || !last) continue;
    const wall = startWall(region, frame.angle);
    const strip = (height: number) => (height === plank.width ? undefined : sayCut(ticks(height), saying));
    facts.push({
      label: name,
      value: LAY.region(
        rows.length,
        wall === undefined
          ? undefined
          : {
              number:
                region.rooms && region.rooms.length > 1 ? LAY.wallOf(wall.number, wall.room) : String(wall.number),
              length: sayLength(wall.length, saying),
            },
        strip(first.height),
        strip(last.height),
      ),
    });
  }
  if (way) facts.push(way);
  facts.push(
    { label: LAY.pattern, value: sayPattern(plan, saying) },
    {
      label: LAY.rules,
      value: LAY.kept([
        ['stagger', sayCut(rules.stagger, saying)],
        ['shortest end', sayCut(rules.minEnd, saying)],
        ['narrowest strip', sayCut(rules.minRip, saying)],
        ['gap', sayCut(rules.gap, saying)],
        ['kerf', sayCut(rules.kerf, saying)],
      ]),
    },
  );
  if (others.length > 0) facts.push({ label: LAY.others, value: others.join('; ') });
  return { kind: 'facts', section: 'details', title: LAY.title, facts };
}

interface NeedsOf {
  readonly plan: { readonly plank: Plank; readonly planks: number; readonly regions: readonly Region[] };
  readonly home?: Home;
}

/** Planks × (1 + mistakes) + spares, not yet rounded up to cartons; the pad by wall-to-wall area. */
export function floorNeeds({ plan, home }: NeedsOf, ask: AreasAsk): readonly Need[] {
  const { plank, regions } = plan;
  const saying = { units: ask.plank.units, decimal: '.' } as const;
  const { cartonPrice, attachedPad } = ask.plank;
  const only = regions.length === 1 ? regions[0]?.name : undefined;
  const room = only ? { room: only } : {};
  const planks: Need = {
    item: `plank ${plank.width}x${plank.length}`,
    label: NEEDS.planks(sayCut(plank.width, saying), sayCut(plank.length, saying)),
    stage: 'lay',
    quantity: { unit: 'count', amount: (plan.planks * (10_000 + ask.mistakes)) / 10_000 + ask.spares },
    package: { size: plank.perCarton, ...NEEDS.carton(plank.perCarton) },
    ...(cartonPrice && { price: { ...cartonPrice, ...(ask.tax > 0 && { tax: ask.tax }) } }),
    ...room,
  };
  const strips = stripNeeds(home, ask);
  if (attachedPad === true || plank.lock !== 'click') return [planks, ...strips];
  const pad: Need = {
    item: 'underlay',
    label: NEEDS.underlay,
    stage: 'lay',
    quantity: { unit: 'area', amount: Number(wallToWall(plan)) },
    ...room,
    note: attachedPad === false ? NEEDS.underlayPlain : NEEDS.underlayNote,
  };
  return [planks, pad, ...strips];
}

/** One strip for each doorway where the floor stops. */
function stripNeeds(home: Home | undefined, ask: AreasAsk): readonly Need[] {
  const widths = (home?.doorways ?? []).filter(({ runsOn }) => !runsOn).map(({ width }) => width);
  if (widths.length === 0) return [];
  const said = widths.map((width) => sayLength(width, { units: ask.room.units, decimal: '.' }));
  return [
    {
      item: 'transition strip',
      label: NEEDS.strips,
      stage: 'transitions',
      quantity: { unit: 'count', amount: widths.length },
      note: NEEDS.stripsNote(said),
    },
  ];
}
