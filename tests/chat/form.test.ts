/** Commands as forms: fields in the order to be filled, and what a filled form comes to. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { commandNamed, formFields, formGiven } from '../../src/chat/form.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { askLine, optionsOf } from '../../src/input/command-shape.ts';

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
