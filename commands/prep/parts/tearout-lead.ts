/** Painted trim of a tear-out against the rule for minor work on old paint. */

import type { Context } from '../../../src/bot/command.ts';
import { disturbedArea, isMinor } from '../../../src/core/safety/lead.ts';
import { sayArea } from '../../../src/measure/say.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { LEAD_YEAR, MINOR_WORK } from '../../../src/trade/lead.ts';
import { TEAROUT } from '../../../src/words/tearout.ts';
import type { TearoutAsk } from './tearout-sums.ts';

/** What the told trim comes to and what that means; nothing where no trim is told. */
export function leadBlock({ trim, built, room }: TearoutAsk, { habits }: Context): readonly Block[] {
  if (trim.length === 0) return [];
  const area = disturbedArea(trim);
  const said = sayArea(area, { units: room.units, decimal: habits.decimal });
  const verdict = isMinor(area, MINOR_WORK.value) ? TEAROUT.minor : TEAROUT.beyond;
  const old = built === undefined || built < LEAD_YEAR.value;
  const where = room.rooms.length > 1 ? `, ${TEAROUT.severalRooms}` : '';
  return [
    {
      kind: 'facts',
      title: TEAROUT.leadTitle,
      facts: [
        { label: TEAROUT.leadArea, value: `${said}${where}` },
        { label: TEAROUT.leadVerdict, value: old ? verdict : TEAROUT.young },
      ],
    },
  ];
}
