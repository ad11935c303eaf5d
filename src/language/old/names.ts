/** The rooms that a sentence names, each given to the pair of sides it belongs to. */

import { NAMELESS, ROOM } from '../../input/trade-words.ts';
import { CLAIMED } from './sheet.ts';

interface Place {
  readonly from: number;
  readonly to: number;
}

/** A word for a room where it stands. */
export interface Mention extends Place {
  /** As typed; empty for a room without a name of its own. */
  readonly name: string;
  readonly plural: boolean;
}

/** Every word for a room in what is left of the plain text. */
export function mentionsIn(rest: string, text: string): Mention[] {
  return [...rest.matchAll(ROOM)].map(({ index, 0: found }) => {
    const to = index + found.length;
    return { from: index, to, name: NAMELESS.test(found) ? '' : text.slice(index, to), plural: /s$/.test(found) };
  });
}

/** What it costs to look across a divider: the sooner a word is reached, the likelier it names the sides. */
const DIVIDERS: readonly (readonly [RegExp, number])[] = [
  [/[.\n?]/g, 8],
  [/[;+]|(?<![a-z])(?:and|plus|minus|with)(?![a-z])|&/g, 6],
  [new RegExp(`${CLAIMED}+`, 'g'), 5],
  [/,/g, 4],
];
const UNNAMED = 26;

interface Chain {
  readonly cost: number;
  readonly given: readonly (Mention | undefined)[];
}

/** The mention that belongs to each pair: all of them together as near as can be, none given twice. */
export function namesOf(
  pairs: readonly Place[],
  mentions: readonly Mention[],
  rest: string,
): readonly (Mention | undefined)[] {
  let chains: readonly Chain[] = [{ cost: 0, given: [] }];
  pairs.forEach((pair, i) => {
    const before = mentions.filter(({ from, to }) => from >= (pairs[i - 1]?.to ?? 0) && to <= pair.from).at(-1);
    const after = mentions.find(({ from, to }) => from >= pair.to && to <= (pairs[i + 1]?.from ?? rest.length));
    const choices = [
      { mention: undefined, cost: UNNAMED },
      ...(before
        ? [{ mention: before, cost: apart(rest.slice(before.to, pair.from)) + (before.name === '' ? 3 : 0) }]
        : []),
      ...(after
        ? [{ mention: after, cost: 1 + apart(rest.slice(pair.to, after.from)) + (after.name === '' ? 3 : 0) }]
        : []),
    ];
    chains = choices.flatMap(({ mention, cost }): Chain[] => {
      const free = chains.filter(({ given }) => mention === undefined || given.at(-1) !== mention);
      const best = free.reduce<Chain | undefined>(
        (least, one) => (least && least.cost <= one.cost ? least : one),
        undefined,
      );
      return best ? [{ cost: best.cost + cost, given: [...best.given, mention] }] : [];
    });
  });
  return chains.reduce((least, one) => (one.cost < least.cost ? one : least)).given;
}

function apart(between: string): number {
  const crossed = DIVIDERS.map(([divider, cost]) => (between.match(divider)?.length ?? 0) * cost);
  return crossed.reduce((sum, cost) => sum + cost, between.length / 10);
}
