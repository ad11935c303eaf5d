/** Figures quoted by the handbook on underlayment and on noise between floors. */

import { TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const IBC = {
  title: 'International Building Code, Sound transmission',
  publisher: 'ICC',
  year: 2021,
  section: '1206',
  standing: 'reported',
} as const;

export const PAD_AND_SOUND_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'underlay-vinyl',
    name: 'Thickest underlayment that makers of click vinyl commonly allow',
    us: '1/16 in',
    metric: '1.5 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'underlay-laminate',
    name: 'Usual thickness of underlayment below laminate',
    us: '1/8 in',
    metric: '3 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'underlay-roll',
    name: 'What a roll of underlayment usually covers',
    us: '100 sq ft',
    metric: '10 m²',
    source: TRADE_CUSTOM,
  },
  {
    id: 'sound-code',
    name: 'IIC and STC between dwellings, tested in a laboratory, at least',
    us: '50',
    source: IBC,
  },
  { id: 'sound-code-field', name: 'The same, measured in the finished building', us: '45', source: IBC },
  {
    id: 'sound-house-rule',
    name: 'IIC that rules of condominiums commonly want',
    us: '50 to 60',
    source: TRADE_CUSTOM,
  },
];
