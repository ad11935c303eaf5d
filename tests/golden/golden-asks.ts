/** The asks whose whole answers are kept: our small upstairs flat, every shape of room and plank, and asks that go wrong. */

import { DEMO_ASKS, WORKED_ASK } from '../../src/platforms/terminal/demo.ts';

const TEN = '10 per carton';

/** Asks by the name of their file. */
export const GOLDEN_ASKS: Readonly<Record<string, string>> = {
  worked: WORKED_ASK,
  ...Object.fromEntries(DEMO_ASKS.map((ask, i) => [`demo-${i + 1}`, ask])),
  rectangle: `planks room: 12' x 14', plank: 6 x 48 in, ${TEN}`,
  'ell-by-walk': `planks room: living walk 12' right 10' right 5' left 4' right 7' right, plank: 6 x 36 in, 12 per carton, spares: 4, mistakes: 5%`,
  'tee-across': `planks room: living walk 4' right 3' left 6' right 9' right 6' left 3' right 4' right 15', plank: 7 x 48 in, ${TEN}, direction: short, kerf: 1/8 in`,
  'cove-in-two-runs': `planks room: bay walk 9' right 4' right 5' left 4' left 5' right 4' right 9', plank: 7 x 36 in, ${TEN}, direction: wall 1, pattern: half`,
  'bay-with-slants': `planks room: living 14' x 12' with a bay 8' x 2' at 45°, plank: 7 x 48 in, ${TEN}, pattern: half, kerf: 1/8 in`,
  'diagonal-floor': `planks room: den 9' x 8' less a 2x2 corner cut diagonally, plank: 7 x 48 in, ${TEN}, direction: diagonal, pattern: offcut-first`,
  'slanted-walk-open': `planks room: den walk 8' right 3' left 45° 2'10" right 45° 1' right 45° 2'10" left 45° 3' right 8' right 10', plank: 7 x 48 in, ${TEN}`,
  'herringbone-border': `planks room: nook 5' x 6', plank: 3 x 18 in, 24 per carton, no lock, pattern: herringbone with a border, kerf: 1/8 in`,
  'herringbone-handed': `planks room: nook 6' x 5' less a 1x1 clipped corner, plank: 5 x 24 in, 12 per carton, $61 a carton, A/B boards, pattern: herringbone, direction: diagonal`,
  'herringbone-of-click': `planks room: nook 5' x 6', plank: 7 x 48 in, ${TEN}, pattern: herringbone`,
  'narrow-closet': `planks room: closet 5 in x 5', plank: 7 x 48 in, ${TEN}`,
  'no-lock': `planks room: closet 2' x 5', plank: 7 x 48 in, ${TEN}, no lock, pattern: thirds`,
  'broken-rules': `planks room: hall 3' 6" x 9', plank: 7 x 24 in, ${TEN}, stagger: 10 in, shortest-end: 12 in`,
  metric:
    'planks room: bedroom 3,6 x 4,2 m, plank: 180 x 1220 mm, 2.196 m² per carton, 24,90 € per m², gap: 8 mm, pattern: offcut-first',
  'every-problem':
    'planks room: 12 x 14 x 8, plank: 7 x 48, gap: banana, kerf: 2 in, spares: -1, tax: 300%, pattern: zigzag, direction: up',
  'missing-options': 'planks pattern: half',
  'walk-that-does-not-close': `planks room: walk 12' right 10' right 5' left 4' right 6' right, plank: 6 x 36 in, 12 per carton`,
  'command-misspelt': `plank room: 12' x 14', plank: 6 x 48 in, ${TEN}`,
  help: 'help',
  compare: `compare room: bedroom 11' x 12'6", planks: oak: 6 x 48 in, ${TEN}, $45 a carton; ash: 7 x 48 in, 8 per carton, $52 a carton, attached pad, pad: $0.45/sq ft`,
  'layout-closet': `layout room: bedroom 11' x 12'6" + 2' x 5' closet, plank: 7 x 48 in, ${TEN}, only: closet`,
  sentence: 'hey, my bedroom is 11’ by 12’6” and there’s a 2x5 closet, planks are 7x48, 10 in a box. how many??',
  'tear-out':
    "tearout room: living 13' x 15'; hall 3'6\" x 14', floor: carpet, built: 1988, doors: 3 x 30 in, insurer: yes",
  'tear-out-refused': 'tearout room: 12x14, floor: sheet vinyl, built: about 1960',
  lift: 'lift weight: 45 lb',
  plan: "prep plan room: bedroom 11' x 12'6\", built: 1995",
  squeaks: 'squeaks area: 4 x 6 ft',
  patch: "patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in",
  'patch-refused':
    "patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in, found: the joist is rotten",
  level: 'level readings: 1/4 in over 10 ft; 3/16 in over 6 ft',
  'flat-joined': `planks room: hall 3'6" x 14'; living walk 15' right 4' left 2' right 5' right 2' left 4' right 15' right; bedroom 11' x 12'6"; closet 2' x 5', plank: 7 x 48 in, ${TEN}, doorways: hall to living 5 ft, 2 ft from the left of wall 2, runs on; hall to bedroom 32 in, 18 in from the left corner of wall 4, 12 in from the right of wall 2 of bedroom, runs on; bedroom to closet 4 ft, wall 1, wall 2 of closet, 6 in from the left, stops, holes: hearth 5 x 1.5 ft at wall 1, 4' from left of living; post 4x4 in, 6' from left, 5' from bottom of living`,
  'doorway-problems': `planks room: hall 3'6" x 14'; bedroom 11' x 12'6", plank: 7 x 48 in, ${TEN}, doorways: hall to attic 32 in; hall to bedroom 5 ft, wall 1 of hall, holes: island 4 x 4 ft at 3' from left, 1' from top of hall`,
  'direction-each': `planks room: hall 3'6" x 14'; bedroom 11' x 12'6", plank: 7 x 48 in, ${TEN}, direction: hall long; bedroom short, doorways: hall to bedroom 32 in, stops`,
  resume: `resume room: bedroom 11' x 12'6", plank: 7 x 48 in, ${TEN}, so-far: row 12 ended at 31 1/4, broke one, 33 planks and these offcuts left: 18 in left, 31 in right`,
  'trim-list': `trim list room: living walk 12' right 10' right 5' left 4' right 7' right, doors: 32 in on wall 2; 30 in on wall 4, bay: wall 5: front 4', sides 2', 135, stock: 8 ft $7.98; 12 ft $12.48`,
  'trim-finish': "trim finish room: bedroom 11' x 12'6\", doors: 30 in",
};
