/** Figures that the answers about tools, cutting, locking and repair quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const CPSC: Source = {
  title: 'Table saw blade contact injuries',
  publisher: 'CPSC',
  year: 2011,
  standing: 'published',
};
const MEMORY: Source = { title: 'Locking as makers’ leaflets draw it', standing: 'from memory' };

export const LAYING_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'blade-points',
    name: 'Teeth of a miter saw blade for plank',
    us: '60 to 80 teeth on a 10 in blade',
    metric: '60 to 80 teeth on a 250 mm blade',
    source: COMMON_PRACTICE,
  },
  {
    id: 'knife-strokes',
    name: 'Strokes of the knife before the plank snaps',
    us: 'two or three',
    source: COMMON_PRACTICE,
  },
  {
    id: 'saw-injuries',
    name: 'Table saw blade injuries treated in the US in a year',
    us: 'about 67,300',
    source: CPSC,
  },
  { id: 'lock-angle', name: 'Angle at which the long side goes in', us: '20 to 30 degrees', source: MEMORY },
  {
    id: 'lock-ledge',
    name: "Ledge between planks that means it isn't locked",
    us: 'a business card',
    source: COMMON_PRACTICE,
  },
  {
    id: 'plug-margin',
    name: 'How far from the plank’s edge its cut-out lines stay',
    us: '1 to 2 in',
    metric: '25 to 50 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'plug-cure', name: 'Time weight stays on a glued-in plank', us: '24 hours', source: COMMON_PRACTICE },
  { id: 'relay-times', name: 'Times that a lock stands being opened', us: 'two or three times', source: TRADE_CUSTOM },
  { id: 'relay-loss', name: 'Planks that break when a floor is lifted', us: '10 to 20 %', source: TRADE_CUSTOM },
];
