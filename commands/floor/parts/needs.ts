/** What a laid floor takes: planks with what goes wrong, and a pad where none is attached. */

import type { Plank, Region } from '../../../src/core/floor/floor.ts';
import { sayCut } from '../../../src/measure/say-length.ts';
import type { Need } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/words/needs.ts';
import { wallToWall } from './facts.ts';
import type { AreasAsk } from './rules.ts';

interface NeedsOf {
  readonly plan: { readonly plank: Plank; readonly planks: number; readonly regions: readonly Region[] };
}

/** Planks × (1 + mistakes) + spares, not yet whole cartons; the pad by area from wall to wall. */
export function floorNeeds({ plan }: NeedsOf, ask: AreasAsk): readonly Need[] {
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
  if (attachedPad === true || plank.lock !== 'click') return [planks];
  const pad: Need = {
    item: 'underlay',
    label: NEEDS.underlay,
    stage: 'lay',
    quantity: { unit: 'area', amount: Number(wallToWall(plan)) },
    ...room,
    note: attachedPad === false ? NEEDS.underlayPlain : NEEDS.underlayNote,
  };
  return [planks, pad];
}
