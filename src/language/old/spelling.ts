/** Words that matter, spelt right: a near miss of one is taken for it unless it is a word of its own. */

import { distance } from 'fastest-levenshtein';

/** What near misses are taken for. */
const RIGHT = [
  ...['boxes', 'carton', 'cartons', 'packs', 'packet', 'packets', 'plank', 'planks', 'board', 'boards', 'laminate'],
  ...[
    'vinyl',
    'flooring',
    'floor',
    'bedroom',
    'bedrooms',
    'kitchen',
    'living',
    'hallway',
    'closet',
    'closets',
    'dining',
  ],
  ...['bathroom', 'office', 'lounge', 'baseboard', 'baseboards', 'skirting', 'pattern', 'stagger', 'thirds', 'inches'],
  ...['asbestos', 'safety', 'subfloor', 'carpet', 'waste', 'mistakes', 'square', 'metres', 'meters', 'width', 'length'],
  ...['squeaky', 'moisture', 'quarter', 'thick', 'minus', 'convert', 'divided'],
] as const;

/** Words of their own that lie near one of those. */
const OTHERS = new Set(
  (
    'plants plant blank blanks plane planes plans place places prank pranks thanks thank flank flanks clank crank drank frank spank ' +
    'broad beard beards bored hoard aboard boarded boarder words cords backs packed pack jacks racks lacks sacks tacks cracks tracks ' +
    'foxes boxed boxer boxing taxes faxes waist haste paste taste wasted baste cartoon cartoons carbon flour flood floors flooding fluor ' +
    'closed closer closes closet thick think thing chick trick thirst third birds minds minus minor mines inch pinches finches ' +
    'giving loving diving driving dinning mining lining living pattern patterns patter battery batten bedroom matters metres ' +
    'quarters quartz weight lengths widths with witch wealth squares squared squarely squeak squeaks doors poor moor flow carpets ' +
    'carpeted office offices officer lunge lounges kitchens kitten hallways converts converted packing packets pocket pockets ' +
    'racket jacket ticket rocket socket bucket stagger staggered staggers swagger safely boarding bonding floored floppy ' +
    'meters meter metre meeting letters betters inches vinyls divide divided mistake mistaken haste washes washed'
  ).split(' '),
);
const KNOWN: ReadonlySet<string> = new Set(RIGHT);

/** The text with near misses spelt right, each told to `note`. */
export function spelt(text: string, note: (got: string, right: string) => void): string {
  return text.replace(/(?<![\p{L}\d:/<@'])\p{L}{5,14}(?![\p{L}\d'])/gu, (typed) => {
    const low = typed.toLowerCase();
    if (KNOWN.has(low) || OTHERS.has(low)) return typed;
    const right = RIGHT.find((known) => near(low, known));
    if (right === undefined) return typed;
    note(typed, right);
    return right;
  });
}

/** One letter too many, too few or wrong, or two letters changed round; long words may have two wrong. */
function near(typed: string, known: string): boolean {
  if (typed[0] !== known[0] || Math.abs(typed.length - known.length) > 2) return false;
  const apart = distance(typed, known);
  if (apart <= 1) return true;
  if (apart !== 2) return false;
  return known.length >= 8 || swapped(typed, known);
}

function swapped(typed: string, known: string): boolean {
  if (typed.length !== known.length) return false;
  const wrong = [...known].flatMap((letter, i) => (letter === typed[i] ? [] : [i]));
  const [one, other] = wrong;
  if (one === undefined || other === undefined || wrong.length !== 2) return false;
  return known[one] === typed[other] && known[other] === typed[one] && other === one + 1;
}
