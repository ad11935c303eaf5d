/** Any word or sign repeated to the longest text that a platform sends is read in a moment, by every reader. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { namedRooms } from '../../src/chat/autofill.ts';
import { LONGEST_ASK } from '../../src/chat/command-line.ts';
import { suspicionAnywhere } from '../../src/input/parse-covering.ts';
import { readListAction } from '../../src/input/parse-label.ts';
import { findingsApart, readFinding } from '../../src/input/parse-place.ts';
import { readProgress } from '../../src/input/parse-progress.ts';
import { readPurchases } from '../../src/input/parse-purchases.ts';
import { readRoomChange } from '../../src/input/parse-room-change.ts';
import { readSharing } from '../../src/input/parse-share.ts';
import { readSpending } from '../../src/input/parse-spending.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { readMeasurement } from '../../src/input/rooms/parse-measurement.ts';
import { readRoomsApart, roomOfArea } from '../../src/input/rooms/rooms-apart.ts';
import { readAll } from '../bench/hostile/reading-time.ts';
import { mutatedLines } from '../bench/mutate.ts';
import { cpuWithin } from './cpu.ts';
import { PLANTED } from './planted.ts';

/** Milliseconds of processor time that reading may take. */
const MOST = 50;
/** One word in so many of those in examples, so that the whole takes seconds. */
const ONE_IN = 16;
const NOW = Date.UTC(2026, 5, 1);

const EXAMPLES = commands.flatMap(({ examples }) => examples.map(({ ask }) => ask));
const WORDS = [...new Set(EXAMPLES.flatMap((ask) => ask.match(/[\p{L}\d]+[^\p{L}\d]*|[^\p{L}\d\s]+/gu) ?? []))].sort();
const TOKENS = [
  ...['a', '1', ' ', '\n', "'", '"', ',', ';', ':', '.', '-', '(', '/', '½', 'x', '$', '\u2588'],
  ...[
    `12'6" `,
    `12'6" x 14'2", `,
    '1/2 ',
    '12 ',
    '1.',
    'in ',
    'in the ',
    'of the ',
    'row 1 ',
    'hall 2 ',
    'from left ',
    'i have ',
  ],
  ...['to ', 'and ', ' ,', ': ', 'wall 1 ', 'sq. ', 'ty ', '0/1', '1/1', '1a', 'all of my '],
];
const SOME = WORDS.filter((_, i) => i % ONE_IN === 0);
const repeated = (token: string): string => token.repeat(Math.ceil(LONGEST_ASK / token.length)).slice(0, LONGEST_ASK);

/** Every option's reader once, though several commands may have it. */
const OPTIONS = [
  ...new Map(
    commands.flatMap((command) =>
      Object.entries(command.options.shape).map(([option, schema]) => [schema, { option, command }] as const),
    ),
  ),
].map(([schema, { option, command }]) => ({ option, command: command.name, schema }));

const READING = { option: 'text', preferences: DEFAULT_PREFERENCES, note: () => undefined };
const NAMES = ['hall', 'hall 2', 'living room'];
/** What commands read out of an option’s text once its reader has let it through. */
const READERS: readonly (readonly [string, (text: string) => unknown])[] = [
  ['purchases', (text) => readPurchases(text, READING)],
  ['a finding', (text) => readFinding(text, NAMES, READING)],
  ['findings', (text) => findingsApart(text, NAMES)],
  ['layers', suspicionAnywhere],
  ['a list', (text) => readListAction(text, /^(?:add|note) /)],
  ['measures', (text) => readMeasurement(text, NAMES)],
  ['progress', (text) => readProgress(text, NAMES, NOW, 'UTC')],
  ['rooms apart', (text) => readRoomsApart(text, READING)],
  ['rooms of areas', (text) => roomOfArea(text, READING)],
  ['sharing', (text) => readSharing(text, NAMES, NOW, 'UTC')],
  ['money', (text) => readSpending(text, READING)],
  ['deeds of rooms', (text) => readRoomChange(text, [])],
  ['names of rooms', (text) => namedRooms(text, [])],
];

/** Lists of 2 to 12 rooms by their sides alone. */
const SIDES = [`12'6"`, `14'2"`, `10'3"`, `9'8"`, `11'2"`, `8'4"`, `6'5"`, `7'1"`, `3'2"`, `4'1"`];
const LISTS = Array.from({ length: 11 }, (_, more) =>
  Array.from({ length: more + 2 }, (_, i) => `${SIDES[(2 * i) % 10]} x ${SIDES[(2 * i + 1) % 10]}`).join(', '),
);
const FIVE = `12'6" x 14'2", 10'3" x 9'8", 11'2" x 8'4", 6'5" x 7'1", 3'2" x 4'1"`;

const ENDS = ['', ' closet', '\u0001'];
/** Each token as often as fits before one of the ends, and each list of rooms before a word. */
const textsOf = (tokens: readonly string[], turn: number): readonly string[] => [
  ...tokens.map((token, i) => {
    const end = ENDS[(i + turn) % ENDS.length] ?? '';
    return repeated(token).slice(0, LONGEST_ASK - end.length) + end;
  }),
  ...LISTS.filter((_, i) => (i + turn) % 4 === 0).map((list) => `${list} closet`),
];

/** The texts that a reader takes too long for. */
function slow(texts: readonly string[], read: (text: string) => unknown): string[] {
  return texts.flatMap((text) => {
    const spent = cpuWithin(() => read(text), MOST);
    return spent < MOST
      ? []
      : [`${JSON.stringify(text.slice(0, 60))} … ${JSON.stringify(text.slice(-8))}: ${spent} ms`];
  });
}

describe('a text of one token again and again, and a list of 2 to 12 rooms', () => {
  it('is read as a line in a moment', () => {
    readAll('tape 1 + 2', commands);
    const texts = [...ENDS.flatMap((_, turn) => textsOf(TOKENS, turn)), ...textsOf(SOME, 0), `${FIVE} closet`];
    expect(slow(texts, (text) => readAll(text, commands))).toEqual([]);
  });

  it('is read as any option in a moment', () => {
    const late = OPTIONS.flatMap(({ option, command, schema }, turn) => {
      const texts = [...textsOf(TOKENS, turn), `${FIVE} closet`];
      const read = (text: string) => schema.safeParse({ text, reading: { ...READING, option } });
      return slow(texts, read).map((one) => `${command} ${option}: ${one}`);
    });
    expect(late).toEqual([]);
  });

  it.each(READERS)('is read for %s in a moment', (_, read) => {
    const texts = [...ENDS.flatMap((_end, turn) => textsOf(TOKENS, turn)), ...LISTS, `${FIVE} closet`];
    expect(slow(texts, read)).toEqual([]);
  });
});

it('lines of the fuzz hold the pattern that once held up everybody, and are read in a moment now', () => {
  const lines = [...mutatedLines(5, 150, EXAMPLES, { long: true })];
  expect(lines.some((line) => cpuWithin(() => PLANTED.test(line), MOST) >= MOST)).toBe(true);
  expect(lines.filter((line) => cpuWithin(() => readAll(line, commands), MOST) >= MOST)).toEqual([]);
  const before = [...mutatedLines(5, 150, EXAMPLES)];
  expect(before.every((line) => cpuWithin(() => PLANTED.test(line), MOST) < MOST)).toBe(true);
});
