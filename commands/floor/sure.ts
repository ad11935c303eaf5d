/** How certain the carton count is: lays the floor again with all walls, then single walls, a little longer or shorter. */

import { type Saying, sayLength } from '../../src/input/format.ts';
import { type Variant, variants } from '../../src/layout/doubt.ts';
import { purchaseOf } from '../../src/layout/floor.ts';
import type { Block, Fact } from '../../src/reply/reply.ts';
import { SURE } from '../../src/text/floor-text.ts';
import { wallLength } from '../../src/units/geometry.ts';
import { type Length, ticks } from '../../src/units/length.ts';
import { layAway } from '../../src/workers/solve.ts';
import type { PlanksAsk } from './floor-options.ts';
import { type LaidFloor, otherWork } from './lay.ts';

/** Multiples of the user's own doubt, tried in turn until the carton count changes. */
const STEPS = [1, 2, 4];
/** More planks than this in all, and only all walls at once are tried. */
const MOST_LAID = 12_000;

interface Change {
  readonly variant: Variant;
  readonly cartons: number;
}

/**
 * Also finds the one wall worth measuring again. `saved` is how many planks the long search saved on this floor; the variants
 * get only the quick search, so the same savings are assumed for them. Yields to the event loop after every layout.
 */
export async function sureBlock(ask: PlanksAsk, laid: LaidFloor, saying: Saying, saved = 0): Promise<Sureness> {
  const { cartons } = laid.purchase;
  const walls = ask.room.rooms.reduce((sum, { outline }) => sum + outline.length, 0);
  const each = laid.plan.planks * walls * 2 <= MOST_LAID;
  let tried = 0;
  for (const step of STEPS) {
    const by = ticks(ask.doubt * step);
    const { changes, tried: now } = await changesAt(by, each, ask, laid, saved);
    tried += now;
    if (changes.length > 0) {
      const facts = [...held(cartons, ask.doubt, step, saying), ...given(changes, ask, saying)];
      const [first] = changes.filter(({ variant }) => !variant.moved);
      return block(facts, first ? [SURE.off(first.cartons, sayLength(by, saying), first.variant.by > 0)] : []);
    }
  }
  // If no wall can move without misplacing a doorway or a thing, nothing is known about how certain the count is.
  if (tried === 0) return block([{ label: SURE.holds, value: SURE.untried }], []);
  const still = SURE.still(cartons, sayLength(ticks(ask.doubt * (STEPS.at(-1) ?? 1)), saying));
  return block([{ label: SURE.holds, value: still }], [SURE.stillLine(still)]);
}

/** `lines` are shown first. */
interface Sureness {
  readonly block: Block;
  readonly lines: readonly string[];
}

function block(facts: readonly Fact[], lines: readonly string[]): Sureness {
  return { block: { kind: 'facts', section: 'why', title: SURE.title, facts }, lines };
}

/** Only the variants with a different carton count; `tried` counts all that could be laid. */
async function changesAt(
  by: Length,
  each: boolean,
  ask: PlanksAsk,
  laid: LaidFloor,
  saved: number,
): Promise<{ readonly changes: readonly Change[]; readonly tried: number }> {
  const regions = ask.room.rooms;
  const changes: Change[] = [];
  let tried = 0;
  for (const variant of [...variants(regions, by), ...variants(regions, -by)]) {
    if (!each && variant.moved) continue;
    await otherWork();
    const areas = laid.areasOf(variant.regions);
    if (!areas) continue;
    tried++;
    const { planks } = await layAway(areas, laid.plan.plank, laid.plan.rules, laid.plan.planks);
    const { cartons } = purchaseOf(planks - saved, ask.mistakes, ask.spares, laid.plan.plank.perCarton);
    if (cartons !== laid.purchase.cartons) changes.push({ variant, cartons });
  }
  return { changes, tried };
}

/** Empty if the first step already changed something. */
function held(cartons: number, doubt: Length, step: number, saying: Saying): readonly Fact[] {
  const before = STEPS[STEPS.indexOf(step) - 1];
  if (before === undefined) return [];
  return [{ label: SURE.holds, value: SURE.still(cartons, sayLength(ticks(doubt * before), saying)) }];
}

/** Of the single walls, only the one that adds the most cartons. */
function given(changes: readonly Change[], ask: PlanksAsk, saying: Saying): readonly Fact[] {
  const facts: Fact[] = [];
  const by = (change: Change): string =>
    SURE.by(sayLength(ticks(Math.abs(change.variant.by)), saying), change.variant.by > 0);
  for (const change of changes) {
    if (!change.variant.moved) facts.push({ label: SURE.all, value: SURE.cartons(change.cartons, by(change)) });
  }
  const single = changes.filter(({ variant }) => variant.moved).sort((a, b) => b.cartons - a.cartons)[0];
  if (single?.variant.moved) {
    const wall = sayWall(single.variant.moved, ask, saying);
    facts.push({ label: wall, value: SURE.cartons(single.cartons, by(single)) }, { label: SURE.again, value: wall });
  }
  return facts;
}

/** Moving a wall changes the length of its neighbors; of those two, the one with the lower number. */
function sayWall({ region, wall }: { region: number; wall: number }, ask: PlanksAsk, saying: Saying): string {
  const { name, outline } = ask.room.rooms[region] ?? { name: '', outline: [] };
  const measured = Math.min((wall + 1) % outline.length, (wall + outline.length - 1) % outline.length);
  return SURE.wall(measured + 1, name, sayLength(wallLength(outline, measured), saying));
}
