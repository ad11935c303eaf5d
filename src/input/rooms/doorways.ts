/** Doorways in the walls: how many and how wide, where no tack strip or trim runs. */

import { notDoorways } from '../../text/prep-problems-text.ts';
import { inches, type Length } from '../../units/length.ts';
import { readLength } from '../length.ts';
import { type Read, type Reading, read, unread } from '../reading.ts';

/** The widths of all doorways, or one of a width for every room. */
export type Doorways =
  | { readonly kind: 'listed'; readonly widths: readonly Length[] }
  | { readonly kind: 'one a room'; readonly width: Length };

const MOST = 50;
const USUAL = inches(32);

/** `none`, `one a room`, `one a room x 30 in`, `3`, `2 x 30 in`, `30 in, 36 in`. */
export function readDoorways(text: string, reading: Reading): Read<Doorways> {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const bad = () => unread(notDoorways({ option: reading.option, got: text }));
  if (/^(?:none|no|0|no doors?)$/.test(plain)) return read({ kind: 'listed', widths: [] });
  const each = /^(?:one|1) (?:an?|per|each|every|in (?:each|every)) ?room(?: ?(?:x|×|of|,|at) ?(.+))?$/.exec(plain);
  if (each) {
    const width = each[1] === undefined ? read(USUAL) : widthOf(each[1], reading);
    return width.ok ? read({ kind: 'one a room', width: width.value }) : bad();
  }
  const several = /^(\d{1,2}) ?(?:doors?|doorways?|openings?)?(?: ?(?:x|×|of|at|,) ?(\D*\d.*))?$/.exec(plain);
  if (several && (several[2] !== undefined || /^\d{1,2}(?: ?[a-z]{3,})?$/.test(plain))) {
    const count = Number(several[1]);
    const width = several[2] === undefined ? read(USUAL) : widthOf(several[2], reading);
    if (count > MOST || !width.ok) return bad();
    return read({ kind: 'listed', widths: Array.from({ length: count }, () => width.value) });
  }
  const parts = plain.split(/ ?; ?| ?,(?!\d) ?| and /).map((part) => widthOf(part, reading));
  const widths = parts.flatMap((part) => (part.ok ? [part.value] : []));
  if (widths.length < parts.length || parts.length > MOST) return bad();
  return read({ kind: 'listed', widths });
}

/** Doorways of so many rooms, as widths. */
export function doorwaysOf(doorways: Doorways, rooms: number): readonly Length[] {
  return doorways.kind === 'listed' ? doorways.widths : Array.from({ length: rooms }, () => doorways.width);
}

function widthOf(text: string, reading: Reading): Read<Length> {
  return readLength(text.replace(/ wide$/, ''), reading, reading.habits.units === 'metric' ? 'mm' : 'in');
}
