/** Figures quoted by the handbook on heat, cold and letting cartons settle. */

import type { QuotedFigure } from './quoted.ts';

const MAKERS = { title: 'Makers’ guides for floating plank', standing: 'reported' } as const;
const GUIDES = { title: 'Trade guides on vinyl plank and room temperature', standing: 'reported' } as const;

export const ROOM_CLIMATE_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'heated-surface',
    name: 'Surface of a heated floor under plank, at most',
    us: '80 to 85 °F',
    metric: '27 to 29 °C',
    source: MAKERS,
  },
  {
    id: 'heated-step',
    name: 'Change of a heated floor’s temperature',
    us: '5 °F a day',
    metric: '3 °C a day',
    source: MAKERS,
  },
  {
    id: 'heated-cover',
    name: 'Depth of heating pipes below the surface, at least',
    us: '1/2 in',
    metric: '13 mm',
    source: MAKERS,
  },
  { id: 'acclimation-range', name: 'Cartons in the room before laying', us: 'none to 72 hours', source: MAKERS },
  { id: 'acclimation-usual', name: 'Usual time of cartons in the room', us: '48 hours', source: GUIDES },
  {
    id: 'laying-temperature',
    name: 'Room temperature while vinyl plank settles and is laid',
    us: '65 to 85 °F',
    metric: '18 to 29 °C',
    source: GUIDES,
  },
  {
    id: 'laying-temperature-low',
    name: 'Coldest room in which some makers let plank be laid',
    us: '55 °F',
    metric: '13 °C',
    source: MAKERS,
  },
  {
    id: 'hot-room',
    name: 'Temperature that some makers give as the most for a finished vinyl floor',
    us: '100 °F',
    metric: '38 °C',
    source: GUIDES,
  },
];
