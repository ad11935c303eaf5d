/** Painted trim of a tear-out against the rule for minor work on old paint. */

import type { Context } from '../../../src/chat/command.ts';
import { LEAD_YEARS, MINOR_WORK } from '../../../src/figures/old-materials-figures.ts';
import { sayArea } from '../../../src/input/format.ts';
import { disturbedArea, isMinor } from '../../../src/prep/old-materials.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { TEAROUT } from '../../../src/text/tearout-text.ts';
import { countryOf } from './house.ts';
import type { TearoutAsk } from './tearout-sums.ts';

/** What the told trim comes to and what that means; nothing where no trim is told. */
export function leadBlock(ask: TearoutAsk, context: Context): readonly Block[] {
  const { trim, built, room } = ask;
  if (trim.length === 0) return [];
  const area = disturbedArea(trim);
  const said = sayArea(area, { units: room.units, decimal: context.habits.decimal });
  const country = countryOf(ask, context);
  const year = LEAD_YEARS[country].value;
  const old = built === undefined || built < year;
  const american = isMinor(area, MINOR_WORK.value) ? TEAROUT.minor : TEAROUT.beyond;
  const where = room.rooms.length > 1 ? `, ${TEAROUT.severalRooms}` : '';
  return [
    {
      kind: 'facts',
      title: TEAROUT.leadTitle,
      facts: [
        { label: TEAROUT.leadArea, value: `${said}${where}` },
        country === 'us'
          ? { label: TEAROUT.leadVerdict, value: old ? american : TEAROUT.young(year) }
          : { label: TEAROUT.leadElsewhere, value: old ? TEAROUT.testFirst(year) : TEAROUT.youngElsewhere(year) },
      ],
    },
  ];
}
