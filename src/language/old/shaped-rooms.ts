/** Rooms of a sentence with a bay or a corner cut off straight: taken whole, so that no part of one passes for a room or for the rows' way. */

import type { Reading } from '../../input/reading.ts';
import { readRooms } from '../../input/rooms/parse-room.ts';
import { pairPattern } from '../../input/rooms/room-text.ts';
import type { Pair } from './pairs.ts';
import type { SentenceSheet } from './sheet.ts';

const SIDES = pairPattern().source.replace(/\(\?<[a-z]+>/g, '(?:');
const ANGLE = '\\d{1,2}(?:\\.\\d+)? ?(?:°|deg(?:rees?)?)';
const BAY = `,? with (?:an? )?(?:angled |slanted )?bay ${SIDES}(?: (?:at |of )?${ANGLE})?(?: on the (?:far|near|left|right)(?: wall)?)?`;
const CUT = `,? ?(?:less|minus|without|-) ?(?:an? |the )?${SIDES}(?: corner)?(?: cut| taken)?(?: off)? (?:diagonally|clipped|slanted|angled|(?:at )?${ANGLE})`;
const CLIPPED = `,? with (?:an? )?(?:clipped|angled|slanted|diagonal) corner ${SIDES}`;
const SHAPED = new RegExp(
  `${SIDES}(?: (?!with |less |minus )[a-z]{3,}){0,2}(?:${BAY}|${CUT}|${CLIPPED})+(?![a-z\\d])`,
  'g',
);

/** Claims such rooms where the room reader reads them. */
export function claimShapedRooms(sheet: SentenceSheet, text: string, silent: Reading): readonly Pair[] {
  const found = [...sheet.rest().matchAll(SHAPED)].map(({ 0: all, index }) => ({ all, index }));
  return found.flatMap(({ all, index }): Pair[] => {
    const typed = text.slice(index, index + all.length).trim();
    if (!readRooms(typed, silent).ok) return [];
    const claimed = sheet.claim(new RegExp(all.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')));
    return claimed ? [{ from: claimed.index, to: claimed.to, typed, kind: 'room' }] : [];
  });
}
