/** A room's name: what stands before or after its figures, with its capitals kept and its spaces collapsed. */

import { nameNeedsColon, nameOddSign, nameTooLong, negativeSide, threeSides } from '../../text/room-problems-text.ts';
import type { Flaw } from './room-flaw.ts';
import type { Piece } from './room-piece.ts';
import { AREA } from './room-shapeless.ts';

export const LONGEST_NAME = 40;

const EDGES = /^[\s,:=()[\].~*•\p{Pd}]+|(?<![\s,:=()[\].~*•\p{Pd}])[\s,:=()[\].~*•\p{Pd}]+$/gu;
const FILLER = 'the|my|our|an?|about|approx(?:imately)?|roughly|circa|for|in|is|are|of|measures';
const FILLER_FIRST = new RegExp(`^(?:${FILLER})(?:\\s+|$)`, 'iu');
const FILLER_ALONE = new RegExp(`^(?:${FILLER})$`, 'iu');
const ODD = /(?!\u200d)[^\p{L}\p{M}\p{N}\p{Extended_Pictographic} '’._/#&+-]/u;
const AREAS = new RegExp(`\\(?~?${AREA}\\)?`, 'gi');

export interface ReadName {
  /** Empty when none was typed. */
  readonly name: string;
  readonly flaws: readonly Flaw[];
}

/** The name in a piece of `text`. A figure may stand in it only where a colon or an equals sign divides it from the sides. */
export function readName(piece: Piece, text: string): ReadName {
  const { from, to, shape } = piece;
  const before = text.slice(from, shape.from);
  const after = text.slice(shape.to, to);
  const figures = text.slice(shape.from, shape.to);
  const flaw = (expected: string, ...mends: string[]): ReadName => ({
    name: '',
    flaws: [{ from, to, expected, mends: () => [...mends, figures] }],
  });
  if (/^\s*\p{Pd}$|^\s*−$/u.test(before) && shape.kind === 'sides') return flaw(negativeSide());
  const left = divided(before, /^(?<name>[^:=]*)[:=](?<rest>[^:=]*)$/u);
  const right = divided(after, /^(?<rest>[\s)]*)[:=](?<name>[^:=]*)$/u);
  const name = [left.name, right.name].filter((part) => part !== '').join(' ');
  if (/^(?:x|by)$/i.test(name)) return flaw(threeSides());
  const odd = ODD.exec(name);
  if (odd) return flaw(nameOddSign(odd[0]), labelled(name.replace(new RegExp(ODD.source, 'gu'), ' '), figures));
  if (left.doubtful || right.doubtful) {
    const bare = [before, after].map((part) => tidy(part.replace(AREAS, ' '))).filter((part) => part !== '');
    return flaw(nameNeedsColon(name), labelled(bare.join(' '), figures));
  }
  const signs = [...name];
  if (signs.length > LONGEST_NAME) {
    return flaw(nameTooLong(LONGEST_NAME), labelled(signs.slice(0, LONGEST_NAME).join(''), figures));
  }
  return { name, flaws: [] };
}

function labelled(name: string, figures: string): string {
  return name.trim() === '' ? figures : `${name.trim()}: ${figures}`;
}

/** The name in one part; doubtful when it holds a figure that nothing divides from the sides. */
function divided(part: string, pattern: RegExp): { name: string; doubtful: boolean } {
  const { name, rest } = pattern.exec(part)?.groups ?? {};
  if (name !== undefined && tidy(rest ?? '') === '' && edged(name) !== '')
    return { name: edged(name), doubtful: false };
  const whole = tidy(part);
  return { name: whole, doubtful: /\p{N}/u.test(whole) };
}

function edged(text: string): string {
  return text.replace(EDGES, '').replace(/\s+/gu, ' ');
}

function tidy(text: string): string {
  return edged(withoutFillers(edged(text)));
}

/** The names with every repeated one numbered; two that differ only in case are the same. */
export function distinctNames(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    let own = name;
    for (let n = 2; taken.has(own.toLowerCase()); n++) {
      const tail = ` ${n}`;
      own = `${[...name]
        .slice(0, LONGEST_NAME - tail.length)
        .join('')
        .trim()}${tail}`;
    }
    taken.add(own.toLowerCase());
    return own;
  });
}

/** A name without the small words at its ends, one word at a time: a pattern for all of them at once backtracks. */
function withoutFillers(text: string): string {
  let name = text;
  for (let found = FILLER_FIRST.exec(name); found; found = FILLER_FIRST.exec(name)) name = name.slice(found[0].length);
  for (;;) {
    const last = name.slice(-20).split(/\s/).at(-1) ?? '';
    if (!FILLER_ALONE.test(last) || last.length === name.length || last.length === 20) return name;
    name = name.slice(0, -last.length).trimEnd();
  }
}
