/** Figures quoted by the handbook on tearing out an old floor. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, TRADE_CUSTOM } from './cited.ts';
import type { QuotedFigure } from './quoted.ts';

const CRI: Source = {
  title: 'CRI 104/105, Standard for Installation of Carpet',
  publisher: 'Carpet and Rug Institute',
  section: '§11.1',
  standing: 'published',
};

export const TEARING_OUT_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'carpet-strip-width',
    name: 'Width of a strip of old carpet',
    us: '3 ft',
    metric: '90 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'carpet-glued-strip-width',
    name: 'Width of a strip of carpet that is glued down',
    us: '1 ft',
    metric: '30 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'carpet-blade-change',
    name: 'Cut of old carpet after which a knife blade is dull',
    us: '30 ft',
    metric: '9 m',
    source: TRADE_CUSTOM,
  },
  {
    id: 'carpet-pace',
    name: 'Carpet and pad that one person cuts, rolls and carries out',
    us: '100 to 250 sq ft an hour',
    metric: '10 to 25 m² an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'tack-strip-height',
    name: 'Thickness of tack strip, at least',
    us: '1/4 in',
    metric: '6 mm',
    source: CRI,
  },
  {
    id: 'tack-strip-gully',
    name: 'Distance of tack strip from the wall, at most',
    us: '3/8 in',
    metric: '10 mm',
    source: CRI,
  },
  {
    id: 'tack-strip-wide',
    name: 'Width of tack strip in a long room, unless two strips lie side by side',
    us: '1 3/4 in',
    metric: '45 mm',
    source: CRI,
  },
  {
    id: 'tack-strip-long-room',
    name: 'Room length beyond which tack strip is wider or doubled',
    us: '30 ft',
    metric: '9 m',
    source: CRI,
  },
  {
    id: 'tack-strip-pace',
    name: 'Tack strip that one person pries up',
    us: '40 to 100 ft an hour',
    metric: '12 to 30 m an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'staple-pace',
    name: 'Staples that one person pulls',
    us: '200 to 600 an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'staple-spacing',
    name: 'Spacing of staples along the edges of a carpet pad',
    us: '6 to 12 in',
    metric: '15 to 30 cm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'vinyl-strip-width',
    name: 'Width of a strip of sheet vinyl that has tested clear',
    us: '6 to 12 in',
    metric: '15 to 30 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'asbestos-presumed-year',
    name: 'Year up to which a resilient floor and its glue are presumed to hold asbestos, unless tested',
    us: '1980',
    source: {
      title: 'Asbestos standards: questions and answers; interpretation of 1 August 1997',
      publisher: 'OSHA',
      standing: 'published',
    },
  },
  {
    id: 'tile-removal-pace',
    name: 'Ceramic tile that one person breaks up and carries out',
    us: '10 to 25 sq ft an hour',
    metric: '1 to 2.5 m² an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'tile-laid-weight',
    name: 'Ceramic tile with its mortar',
    us: '4 to 10 lb a sq ft',
    metric: '20 to 50 kg/m²',
    source: TRADE_CUSTOM,
  },
  {
    id: 'chipping-respirator',
    name: 'Protection factor of the respirator for powered chipping indoors, with water or a vacuum at the tool',
    us: '10',
    source: {
      title: '29 CFR 1926.1153(c)(1), Table 1: handheld powered chipping tools',
      publisher: 'OSHA',
      standing: 'reported',
    },
  },
  {
    id: 'laminate-pace',
    name: 'Laminate that one person unlocks and stacks',
    us: '80 to 200 sq ft an hour',
    metric: '7 to 18 m² an hour',
    source: TRADE_CUSTOM,
  },
  {
    id: 'wood-section-length',
    name: 'Length of the sections that nailed-down wood is sawn into',
    us: '12 to 18 in',
    metric: '30 to 45 cm',
    source: COMMON_PRACTICE,
  },
];
