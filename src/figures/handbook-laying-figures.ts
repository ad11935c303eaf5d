/** Figures that the answers about rows, gaps and the climate of a room quote. */

import type { Source } from '../reply/reply.ts';
import { COMMON_PRACTICE, type QuotedFigure, TRADE_CUSTOM } from './cited.ts';

// Rows.

const GUIDANCE: Source = { title: 'Trade guidance for floating floors', standing: 'reported' };
const MEMORY: Source = { title: 'Offsets as makers of wide plank print them', standing: 'from memory' };
const NAHB: Source = {
  title: 'Residential Construction Performance Guidelines: squareness',
  publisher: 'NAHB',
  standing: 'reported',
};
const NWFA: Source = {
  title: 'Hardwood Floors magazine, December 2017',
  publisher: 'NWFA',
  year: 2017,
  section: 'end joints',
  standing: 'published',
};

export const ROWS_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'row-straight',
    name: 'How straight the first row is kept',
    us: '1/16 in over 10 ft',
    metric: '1 to 2 mm over 3 m',
    source: COMMON_PRACTICE,
  },
  {
    id: 'strip-least',
    name: 'Narrowest strip along a wall parallel to the rows',
    us: '2 in',
    metric: '50 mm',
    source: TRADE_CUSTOM,
  },
  {
    id: 'square-triangle',
    name: 'Sides of a triangle that proves a right angle',
    us: '3, 4 and 5 ft',
    metric: '90, 120 and 150 cm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'square-tolerance',
    name: 'How far a new room may be out of square',
    us: '1/2 in on a 20 ft diagonal',
    metric: '13 mm on a diagonal of 6.1 m',
    source: NAHB,
  },
  {
    id: 'taper-shows',
    name: 'Taper of a last row that the eye sees',
    us: '1/2 in',
    metric: '12 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'stagger-least',
    name: 'Least offset of end joints in touching rows',
    us: '6 in',
    metric: '150 mm',
    source: GUIDANCE,
  },
  {
    id: 'stagger-wide',
    name: 'Offset many makers print for wide planks',
    us: '8 to 12 in',
    metric: '200 to 300 mm',
    source: MEMORY,
  },
  {
    id: 'stagger-nailed',
    name: 'Offset of end joints of nailed-down wood',
    us: "twice the board's width",
    source: NWFA,
  },
  { id: 'end-least', name: 'Shortest end piece', us: '8 in', metric: '200 mm', source: COMMON_PRACTICE },
  { id: 'rows-apart', name: 'Rows before a joint may line up again', us: 'three rows', source: COMMON_PRACTICE },
];

// Laying.

const CPSC: Source = {
  title: 'Table saw blade contact injuries',
  publisher: 'CPSC',
  year: 2011,
  standing: 'published',
};
const LAYING_MEMORY: Source = { title: 'Locking as makers’ leaflets draw it', standing: 'from memory' };

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
  { id: 'lock-angle', name: 'Angle at which the long side goes in', us: '20 to 30 degrees', source: LAYING_MEMORY },
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
  { id: 'relay-loss', name: 'Planks that break when a floor is lifted', us: '10 to 20%', source: TRADE_CUSTOM },
];

// Plank direction.

const PLANK_DIRECTION_NWFA: Source = {
  title: 'Wood Flooring Installation Guidelines and Methods, as a magazine reports them',
  publisher: 'NWFA',
  standing: 'reported',
};

export const PLANK_DIRECTION_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'measure-step',
    name: 'Steps in which to read the tape for a floor',
    us: '1/8 in',
    metric: '2 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'hall-lengthwise',
    name: 'Hall width below which planks run lengthwise',
    us: '6 ft',
    metric: '1.8 m',
    source: COMMON_PRACTICE,
  },
  {
    id: 'joist-ply',
    name: 'Plywood added where nailed wood runs along the joists',
    us: '1/2 in',
    metric: '12 mm',
    source: PLANK_DIRECTION_NWFA,
  },
  {
    id: 'joist-blocking',
    name: 'Spacing of blocking between joists where nailed wood runs along them',
    us: '24 in',
    metric: '60 cm',
    source: PLANK_DIRECTION_NWFA,
  },
  { id: 'gap-usual', name: 'Gap at every wall of a floating floor', us: '1/4 in', metric: '6 mm', source: GUIDANCE },
];

// Expansion.

const LAMINATE: Source = { title: 'Laminate: maximum run length', publisher: 'floorref.com', standing: 'reported' };
const EXPANSION_MEMORY: Source = { title: 'Gaps as makers print them', standing: 'from memory' };

export const EXPANSION_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'run-cautious',
    name: 'Longest run of the stricter makers of vinyl plank',
    us: '30 to 40 ft',
    metric: '9 to 12 m',
    source: GUIDANCE,
  },
  {
    id: 'run-generous',
    name: 'Longest run of the more generous makers of vinyl plank',
    us: '85 ft',
    metric: '26 m',
    source: GUIDANCE,
  },
  { id: 'run-laminate', name: 'Longest run of laminate', us: '26 to 40 ft', metric: '8 to 12 m', source: LAMINATE },
  { id: 'run-wider-gap', name: 'Run from which the gap is wider', us: '50 ft', metric: '15 m', source: GUIDANCE },
  { id: 'gap-long-run', name: 'Gap at the walls of a long run', us: '1/2 in', metric: '12 mm', source: GUIDANCE },
  {
    id: 'gap-makers',
    name: 'Gaps that makers print',
    us: '3/16 to 3/8 in',
    metric: '5 to 10 mm',
    source: EXPANSION_MEMORY,
  },
  { id: 'gap-laminate', name: 'Gap for laminate', us: '3/8 in', metric: '10 mm', source: COMMON_PRACTICE },
  {
    id: 'cover-baseboard',
    name: 'Gap that baseboard alone covers',
    us: '3/8 in',
    metric: '10 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'cover-shoe', name: 'Gap that shoe adds to that', us: '1/2 in', metric: '12 mm', source: COMMON_PRACTICE },
  {
    id: 'cover-quarter',
    name: 'Gap that quarter round adds to that',
    us: '3/4 in',
    metric: '18 mm',
    source: COMMON_PRACTICE,
  },
  { id: 'trim-grip', name: 'Overlap of trim on the plank', us: '1/4 in', metric: '6 mm', source: COMMON_PRACTICE },
  {
    id: 'undercut-clearance',
    name: 'Clearance over floor and pad under a casing',
    us: '1/16 in',
    metric: '1 to 2 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'jamb-depth',
    name: 'How far plank reaches under a casing',
    us: '1/4 to 3/8 in',
    metric: '6 to 10 mm',
    source: COMMON_PRACTICE,
  },
  {
    id: 'metal-jamb-gap',
    name: "Gap at a steel frame that isn't cut",
    us: '1/4 in',
    metric: '6 mm',
    source: COMMON_PRACTICE,
  },
];

// Room climate.

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

// Wood that is nailed down, and floors of wood that float.

const NAILED_WOOD: Source = {
  title: 'Wood flooring installation guidelines',
  publisher: 'NWFA',
  standing: 'from memory',
};
const FLOATING_WOOD: Source = { title: 'Gaps as makers of floating wood floors print them', standing: 'from memory' };

export const WOOD_FLOOR_QUOTED: readonly QuotedFigure[] = [
  {
    id: 'nailed-subfloor-16',
    name: 'Plywood below nailed-down wood, joists up to 16 in apart, at least',
    us: '5/8 in',
    metric: '16 mm',
    source: NAILED_WOOD,
  },
  {
    id: 'nailed-subfloor-24',
    name: 'Plywood below nailed-down wood, joists up to 24 in apart, at least',
    us: '7/8 in',
    metric: '22 mm',
    source: NAILED_WOOD,
  },
  { id: 'joists-close', name: 'Usual joist spacing', us: '16 in', metric: '400 mm', source: COMMON_PRACTICE },
  { id: 'joists-wide', name: 'Wide joist spacing', us: '24 in', metric: '600 mm', source: COMMON_PRACTICE },
  {
    id: 'nailed-subfloor-usual',
    name: 'Plywood that is usual below nailed-down wood',
    us: '3/4 in',
    metric: '18 mm',
    source: NAILED_WOOD,
  },
  {
    id: 'nail-spacing-strip',
    name: 'Fasteners along strip flooring narrower than 3 in',
    us: '8 to 10 in',
    metric: '200 to 250 mm',
    source: NAILED_WOOD,
  },
  {
    id: 'nail-spacing-plank',
    name: 'Fasteners along plank of 3 in and wider',
    us: '6 to 8 in',
    metric: '150 to 200 mm',
    source: NAILED_WOOD,
  },
  {
    id: 'flooring-nail-from-end',
    name: 'First fastener from the end of a board',
    us: '1 to 3 in',
    metric: '25 to 75 mm',
    source: NAILED_WOOD,
  },
  {
    id: 'strip-width',
    name: 'Width from which a board counts as plank',
    us: '3 in',
    metric: '75 mm',
    source: NAILED_WOOD,
  },
  {
    id: 'wood-gap',
    name: 'Gap around a floating wood floor',
    us: '3/8 to 1/2 in',
    metric: '10 to 15 mm',
    source: FLOATING_WOOD,
  },
  {
    id: 'step-area',
    name: 'Plank for a step of usual size, tread and riser, cuts included',
    us: '5 sq ft',
    metric: '0.45 m²',
    source: COMMON_PRACTICE,
  },
  {
    id: 'glue-airing',
    name: 'Airing of a room after glue or finish, as cans often say',
    us: '24 to 72 hours',
    source: { title: 'Labels of floor adhesives and finishes', standing: 'from memory' },
  },
];
