/** Areas joined to a room with `+`: where they open into it is not told, so trim cannot tell wall from opening. */

import type { Context } from '../../../src/chat/command.ts';
import { type Saying, sayLength } from '../../../src/input/format.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { laidByItself } from '../../../src/text/room-problems-text.ts';
import { joinedOpen } from '../../../src/text/trim-problems-text.ts';
import { wallLength } from '../../../src/units/geometry.ts';
import { readInTime } from '../../../src/workers/time-limits.ts';
import type { WallsAsk } from './ask.ts';
import { retoldBay } from './retold.ts';

/** From the sign to the next area, the next corner left out, or the next room. */
const JOINED =
  /[\s,]{0,40}(?:\+|\bplus\b)[^;\n+]*?(?<!\s)(?=\s+(?:-|–|minus|less|without)\s*\d|\s*(?:[;\n+]|\bplus\b|$))/gi;

/** A Problem for each joined area; the fix tells all of them as bays with square sides, each on a wall that is longer. */
export function joinedProblems({ room: { rooms }, bay }: WallsAsk, context: Context, saying: Saying): Problem[] {
  const joined = rooms.filter(({ name }) => context.assumed.includes(laidByItself(name)));
  const bays = joined.flatMap((area) => {
    const before = rooms.slice(0, rooms.indexOf(area)).filter((one) => !joined.includes(one));
    const host = before.at(-1);
    const [front, side] = [wallLength(area.outline, 0), wallLength(area.outline, 1)];
    const wall = host?.outline.findIndex((_, i) => wallLength(host.outline, i) > front) ?? -1;
    return host && wall >= 0 ? [{ room: host.name, wall: String(wall + 1), front, side, angle: 90 }] : [];
  });
  const told = [...bay, ...bays].map((one) => retoldBay(one, saying)).join('; ');
  const alone = readInTime(() => (context.told.get('room') ?? '').replace(JOINED, '').trim());
  const fix = told === '' ? alone : `${alone}, bay: ${told}`;
  return joined.map(({ name, outline }) =>
    joinedOpen(name, sayLength(wallLength(outline, 0), saying), sayLength(wallLength(outline, 1), saying), fix),
  );
}
