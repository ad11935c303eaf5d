/** What is asked for comes first, and what is said of a size is read as it was meant. Worked by hand beside each. */

import { describe, expect, it } from 'vitest';
import { replyTo } from './asked.ts';

const headline = async (text: string): Promise<string> => (await replyTo(text)).headline;

describe('the first line is the thing asked for', () => {
  it.each([
    ['how long to tear out carpet in a 12x14 room', /hours for one person/],
    ['how heavy is the carpet from a 12x14 room', /^187 lb in all/],
    ['how many staples in a 12x14 carpet tear out', /^Roughly \d+–\d+ staples\.$/],
    ['caulk for 12x14', /^1 tube of caulk/],
    ['how much paint for baseboards in a 12x14 room', /of paint for 2 coats/],
    // 300 × 1.1 × 3.19
    ['how much for 300 sq ft at $3.19', /^\$1,052\.70 for 300 sq ft/],
    // 9 boxes × 23.33 × 2.89
    ['what will 12x14 cost at 2.89 a sq ft, 7x48 planks 23.33 a box', /^\$606\.78 for 9 boxes/],
    ['how many boxes for 12x14 at 2.89 a sq ft, 7x48 planks 23.33 a box', /^Buy 9 boxes/],
    ['tear out carpet 12x14', /^Cut 4 strips/],
  ])('%s', async (text, first) => {
    expect(await headline(text)).toMatch(first);
  });
});

describe('sizes are read as they were meant', () => {
  it.each([
    // 20 × 11 − 7 × 4
    ['room is 20x11 with a 7x4 bite out of one corner, how many sq ft', /^192 sq ft/],
    ['20 x 11 with a 7x4 notch, how many square feet', /^192 sq ft/],
    ['its an L, 20x11 with a 7x4 piece missing. how many sq ft', /^192 sq ft/],
    // 474 × 1.1 × 2.49: the discount is no extra
    ['I need 474 sq ft, 2.49 a foot, 15% off', /with 10% extra: \$1,298\.29/],
    // ⌈500 × 1.1 ÷ 20⌉ = 28 boxes, 560 sq ft × 2 × 1.06
    ['500 sq ft at 2.00 a sq ft, box is 20.00 sq ft and sales tax 6. total?', /\$1,187\.20/],
    // 46 − 1/2 = 7 × 6 + 3 1/2; 45 1/4 − 1/2 = 7 × 6 + 2 3/4
    [
      'hall 20 ft long, 46 wide at one end and 45 1/4 at the other, 6 inch planks, 1/4 gap. how wide is the last row',
      /from 3 1\/2" to 2 3\/4" wide/,
    ],
    // 3,000 − 20 = 2,980 = 14 × 200 + 180
    ['room 3 m across, boards 200 mm, 10 mm gap each side. how wide is the last row', /180 mm wide with 10 mm gaps/],
    // 48 sq ft in 2 hours is 24 an hour; 240 more take 10
    ['did 48 sq ft in 2 hours, 240 left. how long will the rest take', /^About 10 hours for the other 240 sq ft/],
    // 3 × 12 × 10 = 360, at 20 to 40 an hour
    ['how long does it take to lay 3 bedrooms 12x10', /to lay 360 sq ft/],
    ['screws every 8 in, 12x14 subfloor', /8" apart along 11 joists/],
    ['baseboard for 12x15 in 8 ft sticks', /8 × 8'/],
  ])('%s', async (text, first) => {
    expect(await headline(text)).toMatch(first);
  });

  it('takes no fraction of an inch for a price', async () => {
    expect(await headline('theres a hump where two sheets of plywood meet maybe 1/4 inch tall')).not.toContain('$');
  });
});
