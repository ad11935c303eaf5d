/** `floor area`: how large rooms are, wall to wall. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { SQUARE_FOOT } from '../../src/figures/cited.ts';
import { sayArea, sayAreasOfSum } from '../../src/input/format.ts';
import { room } from '../../src/input/options.ts';
import { reply } from '../../src/reply/reply.ts';
import { AREA } from '../../src/text/estimate-text.ts';
import { doubleArea } from '../../src/units/geometry.ts';

export default defineCommand({
  group: 'floor',
  name: 'area',
  summary: 'How many square feet or meters rooms have, wall to wall',
  options: z.object({ room: room({ summary: 'Rooms by their sides; several with ;' }) }),
  examples: [
    { ask: `area room: bedroom 12' x 11'6"`, headline: '138 sq ft, wall to wall.' },
    {
      ask: `area room: 10 1/2 x 9 3/4 ft; 19 1/4 x 18 1/2 ft`,
      headline: '458.5 sq ft in all (102.4 sq ft + 356.1 sq ft).',
    },
  ],
  run: ({ room: { rooms, units } }, { preferences, assumed }) => {
    const saying = { units, decimal: preferences.decimal };
    const areas = rooms.map(({ outline }) => doubleArea(outline) / 2n);
    const area = areas.reduce((sum, one) => sum + one, 0n);
    return reply({
      headline: AREA.headline(sayArea(area, saying), sayAreasOfSum(areas, saying)),
      lines: [AREA.next],
      blocks: [],
      assumed,
      sources: [SQUARE_FOOT.source],
      data: { kind: 'area', area: Number(area) },
    });
  },
});
