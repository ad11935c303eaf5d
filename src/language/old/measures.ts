/** Everything measured in a sentence, each with what it is the measure of. */

import type { Reading } from '../../input/reading.ts';
import { SIDE, TIMES } from '../../input/rooms/room-text.ts';
import { type CartonSaid, claimCartonSaid } from './carton-said.ts';
import type { Clean } from './clean.ts';
import { claimLayout, type LayoutSaid } from './layout-said.ts';
import { claimUnused, type LeftoverWords } from './leftover.ts';
import { claimPairs, type Pair, type PairRole, rolesOf, saidRole } from './pairs.ts';
import { claimCounts, givenNames, type RoomsSaid, roomsSaid } from './rooms-said.ts';
import { claimShapedRooms } from './shaped-rooms.ts';
import { CLAIMED, type SentenceSheet, sentenceSheet } from './sheet.ts';

export interface MeasuresInText {
  readonly layout: LayoutSaid;
  readonly carton: CartonSaid;
  readonly leftover: LeftoverWords;
  readonly rooms: RoomsSaid;
  readonly roomPairs: readonly Pair[];
  readonly planks: readonly (Pair & { readonly bySize: boolean })[];
  /** Pairs of which it is not plain what they are the size of. */
  readonly doubtful: readonly Pair[];
  /** Pairs that are the size of some thing. */
  readonly things: readonly Pair[];
  /** Whether a word for a room stands by the sides of one. */
  readonly named: boolean;
  /** Whether a room is named at all. */
  readonly mentioned: boolean;
  /** Two rooms' sides with “or” between them. */
  readonly either: boolean;
  /** What nobody claimed, every place where it was. */
  readonly rest: string;
}

const WALK = new RegExp(
  `(?<![a-z\\d])walk(?: (?:a?round|the|walls?|room)){0,4} ?[:=]?(?:(?:turn |then |and |,| )*(?:${SIDE}(?!${TIMES}\\d)|right|left|[rl])(?![a-z])){3,}`,
);

/** The measures of a sentence. Never throws. */
export function measuresOf({ text, plain }: Clean, silent: Reading): MeasuresInText {
  const sheet = sentenceSheet(plain);
  const shaped = claimShapedRooms(sheet, text, silent);
  const layout = claimLayout(sheet);
  const leftover = claimUnused(sheet);
  const walks = sheet
    .claimAll(WALK)
    .map(({ index, to }): Pair => ({ from: index, to, typed: text.slice(index, to).trim(), kind: 'room' }));
  const pairs = [...shaped, ...walks, ...claimPairs(sheet, text, silent)].sort((one, other) => one.from - other.from);
  const carton = claimCartonSaid(sheet);
  const counts = claimCounts(sheet);
  const said = saidRoles(pairs, sheet, plain);
  const open = pairs.filter((_, i) => said[i] === undefined || said[i] === 'doubt');
  const sized = open.filter(({ kind }) => kind !== 'plank');
  const nameable = sized.length > 0 || carton.carton || said.includes('plank') ? sized : open;
  const { mentions, given } = givenNames(nameable, sheet, text);
  const named = pairs.map((pair) => given[nameable.indexOf(pair)] !== undefined);
  const roles = rolesOf(pairs, said, named, carton.carton);
  const of = (role: PairRole) => pairs.filter((_, i) => roles[i] === role);
  const roomPairs = of('room');
  const rest = sheet.rest();
  const names = roomPairs.map((pair) => given[nameable.indexOf(pair)]);
  return {
    layout,
    carton,
    leftover,
    rooms: roomsSaid(roomPairs, names, counts, mentions, rest),
    roomPairs,
    planks: of('plank').map((pair) => ({ ...pair, bySize: said[pairs.indexOf(pair)] !== 'plank' })),
    doubtful: of('doubt'),
    things: of('thing'),
    named: names.some((name) => name !== undefined),
    mentioned: mentions.length > 0,
    either: roomPairs.some(
      (pair, i) => i > 0 && /(?<![a-z])(?:or|oder)(?![a-z])/.test(rest.slice(roomPairs[i - 1]?.to, pair.from)),
    ),
    rest,
  };
}

/** What the words beside each pair say that it is, none reaching across another measure. */
function saidRoles(pairs: readonly Pair[], sheet: SentenceSheet, plain: string): (PairRole | undefined)[] {
  const rest = sheet.rest();
  return pairs.map((pair, i) => {
    const before =
      rest
        .slice(pairs[i - 1]?.to ?? 0, pair.from)
        .split(CLAIMED)
        .at(-1) ?? '';
    const after = rest.slice(pair.to, pairs[i + 1]?.from ?? plain.length).split(/[\u2588,;.\n?!]/)[0] ?? '';
    return saidRole(pair, { before, after });
  });
}
