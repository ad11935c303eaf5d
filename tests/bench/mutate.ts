/** Lines as tired or hostile people type them: known asks mutated, spliced and strewn with odd characters; seeded. */

import { mulberry32 } from './random-rooms.ts';

const SCRAPS = [
  `12'6"`,
  '12x14',
  '3,8 m',
  '½',
  '″',
  '′',
  '’',
  '“',
  ' ',
  ' ',
  '\t',
  '\n',
  ';',
  ',',
  ':',
  '-',
  '–',
  '+',
  '(',
  ')',
  '/',
  '*',
  '%',
  '$',
  '€',
  '9'.repeat(40),
  '1e9',
  'NaN',
  '-0',
  'x',
  '×',
  'by',
  'walk',
  'right',
  'r',
  'left',
  'plank:',
  'room:',
  'gap:',
  'pattern:',
  'per carton',
  'sq ft',
  'm²',
  '😀',
  '\u0000',
  '\u202e',
  '<!channel>',
  '@everyone',
  '`',
  '$(id)',
  '../',
  'null',
  '[]',
  '{}',
  'ß',
  'ﬁ',
  '１２',
  '٣',
  '²',
] as const;

/** Characters of the longest text that a platform sends. */
const LONGEST = 4000;
/** One line in so many repeats a part of itself, or lists rooms, where lines are to be long. */
const REPEATS = 5;

export interface Mutations {
  /** Some lines repeat a part of themselves up to the longest text, or list up to twelve rooms by their sides. */
  readonly long?: boolean;
}

/** `count` lines from `seeds`, the same for the same `seed`. */
export function* mutatedLines(
  seed: number,
  count: number,
  seeds: readonly string[],
  { long = false }: Mutations = {},
): Generator<string> {
  const random = mulberry32(seed);
  const pick = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;
  for (let i = 0; i < count; i++) {
    let line = random() < 0.1 ? '' : pick(seeds);
    const turns = 1 + Math.floor(random() ** 2 * 6);
    for (let turn = 0; turn < turns; turn++) line = mutate(line, random, pick, seeds);
    if (long && random() * REPEATS < 1)
      line = random() < 0.5 ? repeated(line, random, pick) : listed(random, pick, seeds);
    yield line;
  }
}

type Pick = <T>(items: readonly T[]) => T;

/** Up to three words or signs in a row again and again, in their place: what a pattern may go through in many ways. */
function repeated(line: string, random: () => number, pick: Pick): string {
  const tokens = line.match(/[\p{L}]+|\d+|\s+|[^\p{L}\d\s]/gu) ?? [pick(SCRAPS)];
  const from = Math.floor(random() * tokens.length);
  const again = tokens.slice(from, from + 1 + Math.floor(random() * 3)).join('') + (random() < 0.5 ? '' : ' ');
  const [before, after] = [tokens.slice(0, from).join(''), tokens.slice(from).join('')];
  const room = Math.max(1, Math.floor((LONGEST - line.length) / again.length));
  return `${before}${again.repeat(1 + Math.floor(random() ** 2 * room))}${after}`.slice(0, LONGEST);
}

/** Two to twelve rooms by their sides, and a word of another line. */
function listed(random: () => number, pick: Pick, seeds: readonly string[]): string {
  const side = (): string =>
    `${2 + Math.floor(random() * 18)}'${random() < 0.8 ? `${Math.floor(random() * 12)}"` : ''}`;
  const between = pick([', ', '; ', ' and ', ' ']);
  const times = pick([' x ', 'x', ' by ', ' ']);
  const rooms = Array.from({ length: 2 + Math.floor(random() * 11) }, () => `${side()}${times}${side()}`);
  const words = pick(seeds).match(/\p{L}+/gu) ?? ['closet'];
  return `${rooms.join(between)} ${pick(words)}`;
}

function mutate(line: string, random: () => number, pick: Pick, seeds: readonly string[]): string {
  const at = Math.floor(random() * (line.length + 1));
  const to = Math.min(line.length, at + 1 + Math.floor(random() * 8));
  switch (Math.floor(random() * 7)) {
    case 0:
      return line.slice(0, at) + pick(SCRAPS) + line.slice(at);
    case 1:
      return line.slice(0, at) + line.slice(to);
    case 2:
      return line.slice(0, to) + line.slice(at);
    case 3:
      return line.slice(0, at) + String.fromCharCode(Math.floor(random() * 0x3000)) + line.slice(to);
    case 4:
      return line.replace(/\d+/g, (digits) =>
        random() < 0.5 ? digits : String(Math.floor(random() * 10 ** Math.ceil(random() * 6))),
      );
    case 5: {
      const other = pick(seeds);
      return line.slice(0, at) + other.slice(Math.floor(random() * other.length));
    }
    default:
      return `${line} ${pick(SCRAPS)}`;
  }
}
