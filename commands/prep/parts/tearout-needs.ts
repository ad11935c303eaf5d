/** What a tear-out takes: bags, blades, masks, and a container where one is told. */

import { BAG } from '../../../src/figures/tearout-figures.ts';
import type { Need } from '../../../src/reply/need.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import type { Tearout } from './tearout-sums.ts';

/** Parts of a bag, a blade and a mask, not yet whole ones. */
export function tearoutNeeds({ exact, container, trips, blades, rooms }: Tearout): readonly Need[] {
  const only = rooms.length === 1 ? rooms[0]?.name : undefined;
  const need = (item: string, label: string, amount: number, sold: { label: string; labels: string }): Need => ({
    item,
    label,
    stage: 'tear-out',
    quantity: { unit: 'count', amount },
    package: { size: 1, ...sold },
    ...(only ? { room: only } : {}),
  });
  return [
    need('contractor bag', NEEDS.bags(BAG.said), exact.bags, NEEDS.bag),
    ...(blades > 0 && rooms.length > 0 ? [need('knife blade', NEEDS.blades, exact.blades, NEEDS.blade)] : []),
    need('mask n95', NEEDS.masks, exact.masks, NEEDS.mask),
    ...(container === undefined ? [] : [need(`container ${container}`, NEEDS.container(container), trips, NEEDS.hire)]),
  ];
}
