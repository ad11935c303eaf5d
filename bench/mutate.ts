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

/** `count` lines from `seeds`, the same for the same `seed`. */
export function* mutatedLines(seed: number, count: number, seeds: readonly string[]): Generator<string> {
  const random = mulberry32(seed);
  const pick = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;
  for (let i = 0; i < count; i++) {
    let line = random() < 0.1 ? '' : pick(seeds);
    const turns = 1 + Math.floor(random() ** 2 * 6);
    for (let turn = 0; turn < turns; turn++) line = mutate(line, random, pick, seeds);
    yield line;
  }
}

function mutate(
  line: string,
  random: () => number,
  pick: <T>(items: readonly T[]) => T,
  seeds: readonly string[],
): string {
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
