/** Sticks of a plan as something to buy; what is at hand is not. */

import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { ToldStock } from '../../../src/input/parse-stock.ts';
import type { Need, Stage } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import type { StickPlan } from '../../../src/trim/sticks.ts';
import { ticks } from '../../../src/units/length.ts';

/** What the sticks are of. */
export interface SticksOf {
  readonly item: string;
  readonly label: string;
  readonly stage: Stage;
}

/** One need a stock length, the longest first. */
export function stickNeeds({ sticks }: StickPlan, { items }: ToldStock, of: SticksOf, saying: Saying): readonly Need[] {
  return items
    .map((stock, at) => ({ ...stock, count: sticks.filter((stick) => stick.stock === at).length }))
    .filter(({ have, count }) => have === undefined && count > 0)
    .sort((a, b) => b.length - a.length)
    .map(({ length, count, price }) => {
      const said = sayLength(ticks(length), saying);
      return {
        item: `${of.item} ${length}`,
        label: `${of.label}, ${said}`,
        stage: of.stage,
        quantity: { unit: 'count', amount: count },
        package: { size: 1, ...NEEDS.stick(said) },
        ...(price && { price: { cents: price.cents, currency: price.currency } }),
      };
    });
}

/** The needs of a reply, where there are any. */
export function toBuy(needs: readonly Need[]): { readonly needs?: readonly Need[] } {
  return needs.length > 0 ? { needs } : {};
}
