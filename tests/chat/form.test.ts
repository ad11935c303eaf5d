/** Commands as forms: fields in the order to be filled, and what a filled form comes to. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { formRequest } from '../../src/chat/command-line.ts';
import { commandNamed, formFields, formGiven } from '../../src/chat/form.ts';
import { parseLine, parseText } from '../../src/chat/grammar.ts';
import { askLine, optionsOf } from '../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';

const planks = commandNamed('floor planks', commands);
if (!planks) throw new Error('no planks');

describe('a form', () => {
  it('asks first what must be told, then holds what was told, then the rest', () => {
    const fields = formFields(planks, { gap: '3/8 in', plank: '7 x 48', constructor: 'x' });
    expect(fields.slice(0, 3).map(({ option, given }) => [option, given])).toEqual([
      ['room', undefined],
      ['plank', '7 x 48'],
      ['gap', '3/8 in'],
    ]);
    expect(fields).toHaveLength(optionsOf(planks).length);
  });

  it('has a field for every option of every command, each with an example', () => {
    for (const command of commands) {
      const fields = formFields(command);
      expect(new Set(fields.map(({ option }) => option))).toEqual(new Set(optionsOf(command).map(({ name }) => name)));
      for (const { example, label } of fields) expect([example === '', label === '']).toEqual([false, false]);
    }
  });

  it('comes to an ask that the grammar reads back; rooms told on lines of their own are several', () => {
    const optionTexts = formGiven(planks, {
      room: ` hall 3' x 11'\r\nliving 12x14;\n\n`,
      plank: '7 x 48 in,\n10 per carton',
      gap: ' ',
      kerf: null,
    });
    expect([...optionTexts]).toEqual([
      ['room', `hall 3' x 11'; living 12x14`],
      ['plank', '7 x 48 in; 10 per carton'],
    ]);
    const again = parseLine(askLine(planks, optionTexts), commands);
    expect(again.ok && [...again.optionTexts]).toEqual([...optionTexts]);
  });
});

describe('a filled form as a request', () => {
  const given = (values: Readonly<Record<string, string>>) => formRequest(planks, formGiven(planks, values)).given;

  it('hands its values on as they are', () => {
    const { text, given: form } = formRequest(
      planks,
      new Map([
        ['room', 'bedroom: 12 x 14'],
        ['plank', '6 x 48 in'],
      ]),
    );
    expect(text).toBe('floor planks room: bedroom: 12 x 14, plank: 6 x 48 in');
    expect(form && [form.command, [...form.optionTexts.values()]]).toEqual([planks, ['bedroom: 12 x 14', '6 x 48 in']]);
    expect(given({})?.optionTexts.size).toBe(0);
  });

  it('is text where a value holds more than itself', () => {
    expect(given({ room: 'a bedroom of 12 by 14' })).toBeUndefined();
    expect(given({ room: '12 x 14, plank: 6 x 48' })).toBeUndefined();
    expect(given({ room: '12 x 14, plank 6 x 48 in' })).toBeUndefined();
    expect(given({ room: '12 x 14, plnk: 6 x 48' })).toBeUndefined();
    expect(given({ gap: '1/4 in, lamp: 3' })).toBeUndefined();
  });

  it('is read as its line is, whatever stands in its fields', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 8 }),
      fc.constantFrom(
        '12 x 14',
        'bedroom',
        ': ',
        ', ',
        '; ',
        ' ',
        'plank 6 x 48',
        'room:',
        'rom:',
        'hazard: gas',
        "9'",
      ),
      fc.constantFrom(...commands.flatMap(({ options }) => Object.keys(options.shape))),
      fc.constantFrom(...commands.flatMap(({ examples }) => examples.map(({ ask }) => ask))),
    );
    const value = fc.array(piece, { maxLength: 5 }).map((pieces) => pieces.join(''));
    const filled = fc.constantFrom(...commands).chain((command) => {
      const fields = optionsOf(command).map(({ name, example }) => [
        name,
        fc.option(fc.oneof(value, fc.constant(example))),
      ]);
      return fc.tuple(fc.constant(command), fc.record(Object.fromEntries(fields) as Record<string, typeof value>));
    });
    const holdings = { preferences: DEFAULT_PREFERENCES, project: undefined };
    let whole = 0;
    fc.assert(
      fc.property(filled, ([command, values]) => {
        const { text, given: form } = formRequest(command, formGiven(command, values));
        if (!form) return;
        whole += 1;
        const { said, parsed } = parseText({ commands, access: {}, holdings }, text, undefined);
        expect([said, parsed]).toEqual([undefined, { ok: true, ...form }]);
      }),
      { numRuns: 300 },
    );
    expect(whole).toBeGreaterThan(50);
  });
});
