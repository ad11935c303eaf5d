/** Laws of plain sentences: nothing throws, no figure is dropped, an ask and its grammar form are one, and all of it is fast. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { readOptions } from '../../src/chat/command.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { askLine } from '../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { normalize } from '../../src/language/normalize.ts';
import type { SentenceReading } from '../../src/language/sentence.ts';
import { readSentence } from '../../src/language/sentence.ts';
import { mutatedLines } from '../bench/mutate.ts';
import { CORPUS } from './corpus.ts';
import { METRIC, preferencesOf } from './judge.ts';

const TEXTS = CORPUS.map(({ text }) => text);
const MUTATED = [...mutatedLines(9, 3000, TEXTS)];

/** Each text read once for all laws. */
const readings = new Map<string, SentenceReading>();
function readOnce(text: string): SentenceReading {
  const known = readings.get(text) ?? readSentence(text, DEFAULT_PREFERENCES);
  readings.set(text, known);
  return known;
}

/** Figures of a sentence that are found neither in what was told nor in what was noted. */
function dropped(text: string, read: SentenceReading): readonly string[] {
  if (read.kind !== 'ask' || read.topic !== 'planks') return [];
  const kept = ` ${[...read.optionTexts.values(), ...read.assumed].join(' ')} `.toLowerCase();
  const { plain } = normalize(text, '', () => '');
  return (plain.match(/\d+(?:[.,]\d+)*/g) ?? []).filter(
    (figure) => !new RegExp(`(?<![\\d.,])${figure.replaceAll('.', '\\.')}(?![\\d]|[.,]\\d)`).test(kept),
  );
}

describe('any text', () => {
  it('is read without a throw', () => {
    for (const text of MUTATED) expect(() => readOnce(text), text).not.toThrow();
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 200 }),
        fc.constantFrom(DEFAULT_PREFERENCES, METRIC),
        (text, preferences) => {
          expect(['ask', 'ask-back', 'nothing']).toContain(readSentence(text, preferences).kind);
        },
      ),
    );
  });

  it('is taken apart as a line without a throw, and every problem says what is missing', () => {
    for (const text of [...TEXTS, ...MUTATED.slice(0, 600)]) {
      const parsed = parseLine(text, commands);
      if (parsed.ok) continue;
      for (const { expected, fix } of parsed.problems) expect([expected, fix?.trim()], text).not.toContain('');
    }
  });

  it('of which a floor is made loses no figure', () => {
    for (const text of [...TEXTS, ...MUTATED]) expect(dropped(text, readOnce(text)), text).toEqual([]);
  });

  it('is read, however long, without a throw', () => {
    const long = [
      '9 '.repeat(750),
      '12x14 '.repeat(250),
      'two rooms or not '.repeat(88),
      '1/2'.repeat(500),
      'a'.repeat(1500),
      "12' - ".repeat(250),
    ];
    for (const text of long) {
      expect(() => readSentence(text, DEFAULT_PREFERENCES), text.slice(0, 12)).not.toThrow();
    }
  });
});

describe('an ask', () => {
  it('is the ask of its grammar form', () => {
    let seen = 0;
    for (const message of CORPUS) {
      const preferences = preferencesOf(message);
      const read = readSentence(message.text, preferences);
      const command = read.kind === 'ask' ? commands.find(({ name }) => name === read.topic) : undefined;
      // Sentences about tear-out, the subfloor and paint are asked back with an ask to complete.
      if (read.kind !== 'ask' || !command || command.group === 'prep' || command.name === 'finish') continue;
      const parsed = parseLine(askLine(command, read.optionTexts), commands, preferences);
      if (!parsed.ok) throw new Error(`${message.text}: ${JSON.stringify(parsed)}`);
      expect([parsed.command.name, [...parsed.optionTexts]], message.text).toEqual([read.topic, [...read.optionTexts]]);
      expect(readOptions(command, read.optionTexts, preferences).ok, message.text).toBe(true);
      seen++;
    }
    expect(seen).toBeGreaterThan(80);
  });

  it('asked back keeps what was read for a form, and is whole with its fix where there is one', () => {
    let seen = 0;
    for (const message of CORPUS.filter(({ wanted }) => wanted.back !== undefined)) {
      const preferences = preferencesOf(message);
      const parsed = parseLine(message.text, commands, preferences);
      if (parsed.ok) continue;
      const [{ fix }] = parsed.problems;
      if (parsed.about) {
        const { command, optionTexts } = parsed.about;
        const unread = [...optionTexts].filter(([option, text]) => {
          const schema = command.options.shape[option];
          return !schema?.safeParse({ text, reading: { option, preferences, note: () => undefined } }).success;
        });
        // What is asked about stands there as it was typed.
        const [{ option }] = parsed.problems;
        expect(
          unread.filter(([one]) => one !== option && one !== 'plank'),
          message.text,
        ).toEqual([]);
        seen++;
      }
      if (fix === undefined) continue;
      const whole = parseLine(fix, commands, preferences);
      if (!whole.ok) throw new Error(`${message.text}: ${fix}`);
      expect(readOptions(whole.command, whole.optionTexts, preferences).ok, `${message.text}: ${fix}`).toBe(true);
    }
    expect(seen).toBeGreaterThan(40);
  });
});
