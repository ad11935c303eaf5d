/** What else is told of a plank: its thickness, its pad, its lock. */

import { thicknessRead, thickOutOfRange } from '../text/plank-problems-text.ts';
import { type Length, TICKS_PER_INCH } from '../units/length.ts';
import { unitIn } from './length.ts';
import type { Unclaimed } from './plank-claim.ts';
import type { Reading } from './reading.ts';
import type { Flaw } from './rooms/room-flaw.ts';
import { LETTER } from './rooms/room-plain.ts';
import { readSide, SIDE } from './rooms/room-side.ts';

const END = `(?![${LETTER}])`;
const PAD = '(?:pad(?:ding)?|underlay(?:ment)?|backing)';
const NO_PAD = new RegExp(
  `(?:no|without(?: an?)?|not?) ?-?(?:attached )?${PAD}${END}|un-?padded${END}|${PAD} not attached`,
);
const WITH_PAD = new RegExp(
  `(?:(?:with )?(?:an? )?(?:pre-?)?attached ${PAD}|${PAD} (?:is )?(?:pre-?)?attached|with (?:an? )?${PAD}|padded|(?<![${LETTER}])${PAD})${END}`,
);
const NO_LOCK = new RegExp(
  `(?:(?:no|without(?: an?)?) ?-?(?:end )?(?:locks?|locking|click)|glue(?:d)?[ -]?down|glued?|loose[ -]?lay|loose|nail(?:ed)?[ -]?down)${END}`,
);
const LOCK = new RegExp(
  `(?:click(?:[ -]?(?:lock|together|in))?|(?:inter)?lock(?:ing|s|ed)?|float(?:ing)?|snap(?:[ -]?together)?)${END}`,
);
/** Boards made for a herringbone: their end locks are mirrored. */
const HANDED = new RegExp(
  `(?:a ?(?:/|\\+|&|and) ?b|left(?:-hand(?:ed)?)? ?(?:/|\\+|&|and) ?right(?:[ -]hand(?:ed)?)?|(?:left|right)-handed|handed)(?: (?:boards?|planks?))?${END}`,
);
/** The wear layer is printed on every carton and changes nothing here. */
const WEAR = new RegExp(`(?<!\\d)\\d+(?:[.,]\\d+)? ?-?mils?${END}(?: wear ?-?layer)?`);
const THICK = new RegExp(`(?<before>${SIDE}) ?-?thick(?:ness)?${END}|thick(?:ness)? ?[:=]? ?(?<after>${SIDE})`);
const LONE = new RegExp(`(?<![${LETTER}\\d.,/])(?<before>${SIDE})(?![${LETTER}\\d])`);

export interface Make {
  readonly attachedPad?: boolean;
  readonly lock: 'click' | 'none';
  /** True for boards that come as two mirrored makes, A and B. */
  readonly handed?: boolean;
}

/** Claims the pad and the lock; without a word about the lock, planks click together. */
export function claimMake(rest: Unclaimed): Make {
  rest.claim(WEAR);
  const pad = rest.claim(NO_PAD) ? false : rest.claim(WITH_PAD) ? true : undefined;
  const handed = rest.claim(HANDED) !== undefined;
  const lock = rest.claim(NO_LOCK) ? 'none' : 'click';
  if (lock === 'click') rest.claim(LOCK);
  return { lock, ...(handed && { handed }), ...(pad !== undefined && { attachedPad: pad }) };
}

/** Claims a thickness that is named as one. */
export function claimThickness(rest: Unclaimed, reading: Reading): Length | Flaw | undefined {
  return thicknessOf(rest.claim(THICK), reading);
}

/** Claims a lone length with a unit, once the size has been claimed, and notes that it was taken for the thickness. */
export function claimLoneThickness(text: string, rest: Unclaimed, reading: Reading): Length | Flaw | undefined {
  const lone = rest.left().find(({ words }) => {
    const typed = LONE.exec(words)?.groups?.before;
    return typed === words && unitIn(typed) !== undefined;
  });
  if (!lone) return undefined;
  const length = thicknessOf(rest.claim(new RegExp(lone.words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))), reading);
  if (typeof length === 'number') reading.note(thicknessRead(text.slice(lone.from, lone.to)));
  return length;
}

function thicknessOf(found: RegExpExecArray | undefined, reading: Reading): Length | Flaw | undefined {
  if (!found) return undefined;
  const typed = found.groups?.before ?? found.groups?.after ?? found[0];
  const side = readSide(typed, 'mm', reading);
  if (side.ok && side.length <= TICKS_PER_INCH) return side.length;
  const expected = side.ok ? thickOutOfRange() : side.expected;
  return { from: found.index, to: found.index + found[0].length, expected, mends: () => [] };
}
