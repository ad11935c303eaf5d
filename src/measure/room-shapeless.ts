/** A line of rooms in which no shape was found: what the asker probably meant, and what is missing. */

import { areaAlone, noRoom, oneSide, threeSides, walkWordMissing } from '../words/room-problems.ts';
import type { Flaw } from './room-flaw.ts';
import { SIDE, SIDE_WORD, TIMES } from './room-side.ts';

const AREA = /\d[\d.,]* ?(?:(?:sq(?:uare)?\.? ?(?:f(?:ee|oo)?t|m|y|in)|sqm|qm|f(?:ee|oo)?t ?(?:²|\^?2)|m ?(?:²|\^?2))[\p{L}]*\.?)/iu;
const THREE = new RegExp(`(?<a>${SIDE})${SIDE_WORD}${TIMES}(?<b>${SIDE})${SIDE_WORD}(?:${TIMES}${SIDE}${SIDE_WORD})+`, 'iu');
const ONE = new RegExp(`(?<![\\p{L}\\d])${SIDE}`, 'iu');
const TURN = new RegExp(`${SIDE},? ?(?:turn )?(?:right|left|r|l)(?!\\p{L})`, 'iu');

/** The flaw of the line at [from, to) of `plain`; `example` is a room as this asker would type one. */
export function shapelessFlaw(plain: string, from: number, to: number, example: string): Flaw {
  const line = plain.slice(from, to);
  const instead = (found: RegExpExecArray, text: string) =>
    line.slice(0, found.index) + text + line.slice(found.index + found[0].length);
  const flaw = (expected: string, ...mends: string[]): Flaw => ({ from, to, expected, mends: () => [...mends, example] });
  const name = line.replace(/[^\p{L}\p{M} ]/gu, ' ').replace(/ +/g, ' ').trim();
  const area = AREA.exec(line);
  if (area) return flaw(areaAlone(), instead(area, example));
  if (TURN.test(line)) return flaw(walkWordMissing(), ...walkMends(line));
  const three = THREE.exec(line);
  if (three) return flaw(threeSides(), instead(three, `${three.groups?.a} x ${three.groups?.b}`));
  const one = ONE.exec(line);
  if (one) return flaw(oneSide(), instead(one, `${one[0]} x ${one[0]}`), `${name}: ${example}`);
  return flaw(noRoom(example), `${name}: ${example}`);
}

/** The line with “walk” before its first figure. */
function walkMends(line: string): string[] {
  const first = line.search(/[\d½⅓⅔¼¾⅛⅜⅝⅞]/u);
  return [`${line.slice(0, first)} walk ${line.slice(first)}`];
}
