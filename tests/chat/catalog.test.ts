/** Commands are found by the names that the catalog has for them, and what is loaded alone reads as it does among all. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { catalog } from '../../commands/index.ts';
import { entryTyped } from '../../src/chat/catalog.ts';
import { figuresTyped } from '../../src/chat/command-line.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { fullName } from '../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';

describe('the catalog', () => {
  it('names every command as it names itself', () => {
    expect(catalog.map(fullName)).toEqual(commands.map(fullName));
    expect(commands.length).toBeGreaterThan(20);
  });

  it('finds a command by the name that is typed', () => {
    expect(entryTyped('Tape 1 ft', catalog)).toMatchObject({ entry: { name: 'tape' }, rest: ' 1 ft' });
    expect(entryTyped('planks room: 12 x 14', catalog)).toMatchObject({ entry: { group: 'floor', name: 'planks' } });
    expect(entryTyped('tapes 1 ft', catalog)).toBeUndefined();
    expect(entryTyped('', catalog)).toBeUndefined();
  });
});

describe('figures behind a name', () => {
  it.each(['tape 1 ft', '/tape 12\' 6" in mm', 'Tape 3,80 m - 15 mm', `tape (12'6" + 5/8") / 3`, 'tape 1 + 2'])(
    'are read as among all commands: %s',
    async (line) => {
      const sure = await figuresTyped(line, catalog, DEFAULT_PREFERENCES);
      expect(sure).toEqual(parseLine(line, commands));
      expect(sure).toHaveProperty('command.name', 'tape');
    },
  );

  it.each([
    ['words', 'tape half of 3.8 m'],
    ['a product', 'tape 12 x 14'],
    ['a sum that cannot be read', 'tape 1 ft +'],
    ['a command that a project fills in', 'planks 12'],
    ['a command whose words are not all told', 'help 12'],
    ['no command', '12 ft'],
  ])('are left to the reader of sentences where there are %s', async (_what, line) => {
    expect(await figuresTyped(line, catalog, DEFAULT_PREFERENCES)).toBeUndefined();
  });
});
