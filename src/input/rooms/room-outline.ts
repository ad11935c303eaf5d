/** One region's outline, from its sides or its walk, with its corners left out, and the notes on how it was read. */

import {
  bayOfWalk,
  cornerCutOff,
  cornerLeftOut,
  laidByItself,
  notchesMeet,
  notchesTooMany,
  notchOfWalk,
  notchTooLarge,
  roomReadIn,
  slantedWalkEased,
  walkEased,
  wallLeftOut,
} from '../../text/room-problems-text.ts';
import type { Outline } from '../../units/geometry.ts';
import { unitsOf } from '../length.ts';
import { type LengthUnit, UNITS } from '../length-units.ts';
import type { Reading } from '../reading.ts';
import { sayLength } from '../say-length.ts';
import { withBays } from './room-bay.ts';
import type { Flaw } from './room-flaw.ts';
import { CORNERS, withoutCorners } from './room-notch.ts';
import { readSides } from './room-pair.ts';
import type { Piece } from './room-piece.ts';
import type { Gathered } from './room-region.ts';
import { isSlantedCorner } from './room-slant.ts';
import { readWalk } from './walk.ts';

type ReadOutline =
  | { readonly ok: true; readonly outline: Outline }
  | { readonly ok: false; readonly flaws: readonly Flaw[] };

/** Reads the outline of a region. `stated` is the unit its own figures name; without one they are in `unit`, and that is noted. */
export function readOutline(
  text: string,
  plain: string,
  region: Gathered,
  stated: LengthUnit | undefined,
  unit: LengthUnit,
  reading: Reading,
): ReadOutline {
  const { name, piece, notches, bays } = region;
  const { shape } = piece;
  const own = stated ?? unit;
  const saying = { units: unitsOf(own), decimal: reading.habits.decimal };
  if (piece.sign === 'plus' || piece.sign === 'and') reading.note(laidByItself(name));
  if (!stated) {
    const typed = shape.kind === 'walk' ? 'walk' : text.slice(shape.from, shape.to).trim();
    reading.note(roomReadIn(name, typed, UNITS[own].word));
  }
  if (shape.kind === 'walk') {
    const walk = readWalk(plain, shape, own, reading);
    const flaws = [
      ...notches.map((notch) => whole(notch, notchOfWalk())),
      ...bays.map((bay) => whole(bay, bayOfWalk())),
    ];
    if (!walk.ok) return { ok: false, flaws: [...walk.flaws, ...flaws] };
    if (walk.closing !== undefined) reading.note(wallLeftOut(name, sayLength(walk.closing, saying)));
    if (walk.eased === true) reading.note(walkEased(name));
    else if (walk.eased) reading.note(slantedWalkEased(name, sayLength(walk.eased, saying)));
    return flaws.length > 0 ? { ok: false, flaws } : { ok: true, outline: walk.outline };
  }
  const sides = readSides(shape, own, reading);
  const corners = notches.map((notch) =>
    notch.shape.kind === 'sides' ? readSides(notch.shape, own, reading) : undefined,
  );
  const flaws = [sides, ...corners].flatMap((read) => (read && !read.ok ? read.flaws : []));
  const cut = corners.flatMap((read, i) =>
    read?.ok ? [{ ...read.sides, slanted: isSlantedCorner(notches[i], plain) }] : [],
  );
  const walks = notches.filter((notch) => notch.shape.kind === 'walk').map((notch) => whole(notch, notchOfWalk()));
  if (!sides.ok || flaws.length + walks.length > 0) return { ok: false, flaws: [...flaws, ...walks] };
  const outline = withoutCorners(sides.sides, cut);
  if ('why' in outline) {
    const bad = notches[outline.notch];
    const why = {
      'too many': notchesTooMany(CORNERS.length),
      'too large': notchTooLarge(),
      'meets another': notchesMeet(),
    };
    return { ok: false, flaws: bad ? [whole(bad, why[outline.why])] : [] };
  }
  cut.forEach(({ x, y, slanted }, i) => {
    const size = `${sayLength(x, saying)} x ${sayLength(y, saying)}`;
    reading.note((slanted ? cornerCutOff : cornerLeftOut)(name, size, CORNERS[i] ?? ''));
  });
  return withBays(outline, sides.sides, region, plain, own, reading);
}

/** A flaw of a corner left out. */
function whole({ joint, from, to }: Piece, expected: string): Flaw {
  return { from: joint, to, shown: { from, to }, expected, mends: () => [] };
}
