/** People who use metric sizes read no feet, inches, pounds or gallons, anywhere in an answer. */

import { describe, expect, it } from 'vitest';
import { render } from '../../src/platforms/terminal/render.ts';
import { answerTo } from '../chat/asked.ts';

/** Requests with metric sizes, from someone whose setting is still feet and inches. */
const SIZED = [
  'how many boxes for a 3.6 x 4.2 m bedroom, 180 x 1220 mm planks, 2.196 m2 a box',
  'planks room: 3,8 x 4,2 m, plank: 180 x 1220 mm, 8 per carton, 31,90 € a carton, pattern: thirds',
  'planks room: living 5 x 4 m with a bay 2.4 x 0.6 m, plank: 228 x 1524 mm, 6 per carton',
  'planks room: den 3 x 3 m, plank: 90 x 450 mm, 24 per carton, no lock, pattern: herringbone with a border of 1',
  'layout room: bedroom 3.4 x 3.8 m, plank: 180 x 1220 mm, 8 per carton',
  'guides room: bedroom 3.4 x 3.8 m; closet 0.9 x 1.5 m, plank: 180 x 1220 mm, 8 per carton',
  'compare room: 3,2 x 4,1 m, planks: 180 x 1220 mm, 8 per carton; 228 x 1524 mm, 6 per carton',
  'estimate area: 20 m², box: 2.2 m², price: 31.90 € a carton, extra: 5%',
  'enough area: 14 m², have: 8 boxes, box: 2.2 m²',
  'area room: bedroom 3.4 x 3.8 m',
  'list room: 3,6 x 4,2 m, doors: 800 mm, stock: 2.4 m 9,90 €; 3.6 m 13,90 €',
  'reset room: 3.6 x 4.2 m, doors: 800 mm on wall 2',
  'edges doorways: 2 x 800 mm to tile 4 mm, floor: 8 mm',
  'edges doorways: 90 cm to tile, stairs: 12 x 90 cm',
  'finish room: 3,6 x 4,2 m, doors: 800 mm on wall 1, thickness: 15 mm, coverage: 10 m² per litre',
  'level readings: low 25 mm over 4 m, area: 20 m², bag: 2.2 kg/m²/mm, 50 kg, floor: concrete',
  'level readings: 6 mm over 2 m',
  'moisture readings: 10 11 9 12, area: 3 x 4 m',
  'patch damage: 300 x 500 mm at 1,2 m from left, 900 mm from bottom, first-joist: 400 mm, spacing: 400 mm',
  'squeaks area: 2,4 m, thickness: 18 mm, apart: 150 mm',
  'tearout room: 3.8 x 4.2 m, floor: carpet, built: 1996',
  'tearout room: 3.8 x 4.2 m, floor: click vinyl plank, built: 2011',
  'plan room: 3.6 x 4.2 m, built: 1996',
  'lift 25 kg',
  'carry 400 kg',
] as const;

/** Requests without sizes, and some that can't be read, from someone whose setting is metric. */
const UNSIZED = [
  'how many boxes do i need',
  'planks room: 3 m, plank: 180 mm',
  'level dip',
  'reset room: 3 x 4',
  'edges doorways: wide',
  'patch damage: big',
  'safety tear-out',
  'safety nailing',
  'how big a gap at the walls',
  'how far apart do the end joints have to be',
  'how flat does the subfloor have to be',
  'what size nails for baseboard',
  'what temperature should the room be',
  'how wide should the last row be',
  'how high can transitions be',
  'there is mold on the subfloor, what do i do',
  'can i run a generator inside while i work',
  'how heavy a load can an upstairs floor hold',
] as const;

/**
 * Named goods and rules that metric countries call the same. A measure that isn't on this list fails: "2x4" has no unit
 * and N95 and "20d" are names, so they need no excuse; "feet" that stand on the floor do.
 */
const EXCUSED = [
  /feet apart, knees bent/g,
  /with your feet\b/g,
  /dry feet/g,
  /molding’s foot/g,
  /Caulk the foot/g,
  /Follows from the foot/g,
];

const IMPERIAL =
  /\d\s*(?:["″]|['′’](?!s)|(?:in|inch|inches|ft|foot|feet|yd|yards?|sq ft|sf|cu yd|lbs?|pounds?|oz|fl oz|gal|gallons?|quarts?|°F)\b(?! (?:a|the|all|one|each|two|three|your|this|any)\b))|°F|\b(?:inch(?:es)?|foot|feet|square feet|gallons?|quarts?|pounds?|ounces?|in³)\b/g;

async function imperialIn(line: string, units: 'imperial' | 'metric'): Promise<readonly string[]> {
  const page = { width: 1000, colour: false };
  const text = render(await answerTo(line, { preferences: { units } }), page);
  const plain = EXCUSED.reduce((left, excuse) => left.replace(excuse, ''), text);
  return [...plain.matchAll(IMPERIAL)].map(
    ({ 0: found, index }) => `${found}: ${plain.slice(Math.max(0, index - 40), index + 40)}`,
  );
}

describe('no imperial units', () => {
  it.each(SIZED)('%s', async (line) => expect(await imperialIn(line, 'imperial')).toEqual([]));
  it.each(UNSIZED)('%s', async (line) => expect(await imperialIn(line, 'metric')).toEqual([]));

  it('would be found', async () => {
    expect((await imperialIn('safety tear-out', 'imperial')).length).toBeGreaterThan(3);
    expect((await imperialIn('tearout room: 12x14, floor: carpet, built: 1996', 'imperial')).length).toBeGreaterThan(8);
  });
});
