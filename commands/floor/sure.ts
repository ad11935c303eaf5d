/** How sure the cartons are: the floor laid again with every wall, and each wall, a little longer or shorter. */

import { type Saying, sayLength } from '../../src/input/format.ts';
import { purchaseOf } from '../../src/layout/cartons.ts';
import { type Variant, variants } from '../../src/layout/doubt.ts';
import type { Block, Fact } from '../../src/reply/reply.ts';
import { SURE } from '../../src/text/floor-text.ts';
import { wallLength } from '../../src/units/geometry.ts';
import { type Length, ticks } from '../../src/units/length.ts';
import { layAway } from '../../src/workers/solve.ts';
import type { PlanksAsk } from './floor-options.ts';
import { type LaidFloor, otherWork } from './lay.ts';

/** Doubts tried, as multiples of the asker's own, until one changes the cartons. */
const STEPS = [1, 2, 4];
/** Planks laid in all for this: beyond, only every wall at once is tried. */
const MOST_LAID = 12_000;

interface Change {
  readonly variant: Variant;
  readonly cartons: number;
}

/**
 * Facts on how far the cartons hold, and the one wall worth measuring again. `saved` are the planks that a longer search saved, which is
 * taken to save as many of every other floor. Gives way to other work after every floor laid.
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
  // Walls that cannot be moved without a doorway or a thing falling out of place tell nothing of how sure it is.
  if (tried === 0) return block([{ label: SURE.holds, value: SURE.untried }], []);
  const still = SURE.still(cartons, sayLength(ticks(ask.doubt * (STEPS.at(-1) ?? 1)), saying));
  return block([{ label: SURE.holds, value: still }], [SURE.stillLine(still)]);
}

/** The facts, and the one that is seen first. */
interface Sureness {
  readonly block: Block;
  readonly lines: readonly string[];
}

function block(facts: readonly Fact[], lines: readonly string[]): Sureness {
  return { block: { kind: 'facts', section: 'why', title: SURE.title, facts }, lines };
}

/** Variants by as much, longer and shorter, whose cartons are others. */
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

/** Up to which doubt nothing changed, when that was any. */
function held(cartons: number, doubt: Length, step: number, saying: Saying): readonly Fact[] {
  const before = STEPS[STEPS.indexOf(step) - 1];
  if (before === undefined) return [];
  return [{ label: SURE.holds, value: SURE.still(cartons, sayLength(ticks(doubt * before), saying)) }];
}

/** What changes at the least doubt that changes anything; of the single walls the one that takes most cartons more. */
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

/** The wall whose length changes when the moved one stands further out: a neighbour, the lower number of the two. */
function sayWall({ region, wall }: { region: number; wall: number }, ask: PlanksAsk, saying: Saying): string {
  const { name, outline } = ask.room.rooms[region] ?? { name: '', outline: [] };
  const measured = Math.min((wall + 1) % outline.length, (wall + outline.length - 1) % outline.length);
  return SURE.wall(measured + 1, name, sayLength(wallLength(outline, measured), saying));
}
