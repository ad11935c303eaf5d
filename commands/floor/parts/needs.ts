/** What a laid floor takes: planks with what goes wrong, and a pad where none is attached. */

import { sayCut, sayLength } from '../../../src/input/format.ts';
import type { Plank, Region } from '../../../src/layout/floor.ts';
import type { Home } from '../../../src/layout/home-regions.ts';
import type { Need } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import { wallToWall } from './facts.ts';
import type { AreasAsk } from './rules.ts';

interface NeedsOf {
  readonly plan: { readonly plank: Plank; readonly planks: number; readonly regions: readonly Region[] };
  readonly home?: Home;
}

/** Planks × (1 + mistakes) + spares, not yet whole cartons; the pad by area from wall to wall. */
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

/** A strip for each doorway in which the floor stops. */
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
