/** The facts of a plank answer: what to buy, and how the floor is laid. */

import { RULE_OF_THUMB_PERCENT } from '../../../src/figures/floor-figures.ts';
import { type Saying, sayArea, sayCut, sayLength, sayNumber } from '../../../src/input/format.ts';
import { planksByArea } from '../../../src/layout/cartons.ts';
import type { Plan, Region } from '../../../src/layout/floor.ts';
import { startWall } from '../../../src/layout/home-regions.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { BUY, counted, LAY } from '../../../src/text/floor-text.ts';
import { doubleArea } from '../../../src/units/geometry.ts';
import { roundUpRatio, ticks } from '../../../src/units/length.ts';
import { homeFacts } from './home-blocks.ts';
import type { LaidFloor } from './laid.ts';

/** Square ticks from wall to wall, holes left out. */
export function wallToWall(plan: { readonly regions: readonly Region[] }): bigint {
  return plan.regions.reduce(
    (sum, { outline, holes }) => sum + [outline, ...holes].reduce((area, path) => area + doubleArea(path), 0n) / 2n,
    0n,
  );
}

/** What to buy, with the rule of thumb beside the computed figure. */
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
    { label: BUY.waste, value: `${sayNumber(waste, saying, 1)} %` },
    { label: BUY.byArea, value: `${counted(thumb, 'plank')}, ${counted(thumbCartons, 'carton')}` },
  ];
  return { kind: 'facts', title: BUY.title, facts };
}

/** True where walls step: planks may be cut round them. */
function hasJogs({ regions }: Plan): boolean {
  return regions.some(({ outline, holes }) => outline.length > 4 || holes.length > 0);
}

/** A plan's pattern in words. */
export function sayPattern(plan: Plan, saying: Saying): string {
  const { pattern } = plan.rules;
  return pattern.name === 'stair-step' ? LAY.stair(sayCut(pattern.step, saying), pattern.rows) : pattern.name;
}

/** How the floor is laid: rows, direction, pattern, strips, rules. `others` tells of other patterns, `way` of the other way round. */
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
  return { kind: 'facts', title: LAY.title, facts };
}
