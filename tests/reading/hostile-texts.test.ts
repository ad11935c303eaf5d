/** Ordinary lists of rooms and repeated words that once held up everybody: each is read in a moment. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { jobLineAlone, projectLine } from '../../src/language/project-lines.ts';
import { readSentence } from '../../src/language/sentence.ts';
import { cpuOf } from './cpu.ts';

/** Milliseconds of processor time that reading may take. */
const MOST = 50;

const SIDES = [`12'6"`, `14'2"`, `10'3"`, `9'8"`, `11'2"`, `8'4"`, `6'5"`, `7'1"`, `3'2"`, `4'1"`];
const rooms = (count: number): string =>
  Array.from({ length: count }, (_, i) => `${SIDES[(2 * i) % 10]} x ${SIDES[(2 * i + 1) % 10]}`).join(', ');

const TEXTS = [
  ...Array.from({ length: 11 }, (_, i) => `${rooms(i + 2)} closet`),
  `${rooms(4)} total sqft?`,
  `${rooms(5).replaceAll(' x', '').replaceAll(',', '')} baseboard`,
  `${'"'.repeat(40)}help lp 9`,
  `${"'".repeat(1400)} closet`,
  `${'in '.repeat(60)}1 closet`,
  `${'sq. '.repeat(40)}1 closet`,
  `${'i have '.repeat(50)}x 1`,
  `get link to all of ${'the all of '.repeat(30)}x`,
  `share a ${'a all of my '.repeat(30)}x`,
  `let sam see a ${'the all of '.repeat(30)}x`,
  `walk ¼,${' ,'.repeat(100)}*`,
];

describe('texts that once held up everybody', () => {
  it.each(TEXTS)('%s', (text) => {
    const project = { rooms: [], picks: {} };
    const spent = cpuOf(() => {
      projectLine(text, commands, DEFAULT_PREFERENCES, project);
      jobLineAlone(text);
      readSentence(text, DEFAULT_PREFERENCES);
      parseLine(text, commands, DEFAULT_PREFERENCES);
    });
    expect(spent).toBeLessThan(MOST);
  });
});
