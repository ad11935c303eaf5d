/** What the tab key completes. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { completions, valueTyped } from '../../src/platforms/terminal/receive.ts';

describe('completions', () => {
  it('of nothing are all commands, with and without their group', () => {
    const [names, word] = completions('', commands);
    expect(word).toBe('');
    expect(names).toEqual(
      expect.arrayContaining(['floor planks ', 'planks ', 'prep tearout ', 'tearout ', 'tape ', 'help ']),
    );
    expect(new Set(names).size).toBe(names.length);
  });

  it('of a beginning are the commands that begin so', () => {
    expect(completions('s', commands)).toEqual([['squeaks ', 'safety ', 'sources '], 's']);
    expect(completions('floor p', commands)).toEqual([['floor planks '], 'floor p']);
    expect(completions('xyz', commands)).toEqual([[], 'xyz']);
  });

  it('behind a command are its options, less those told', () => {
    const [options, word] = completions("floor planks room: 12' x 14', plank: 6x48, p", commands);
    expect([options, word]).toEqual([['pattern: '], 'p']);
    expect(completions('planks room: 12x14, plank: 6x48 ', commands)[0]).not.toContain('room: ');
    expect(completions('planks ', commands)[0]).toContain('shortest-end: ');
  });

  it('of a hyphened option replace the whole word', () => {
    expect(completions('planks 12x14, shortest-e', commands)).toEqual([['shortest-end: '], 'shortest-e']);
  });

  it('behind an option with choices are its choices', () => {
    expect(completions('planks pattern: ', commands)).toEqual([
      ['stair-step', 'half', 'thirds', 'offcut-first', 'scattered', 'herringbone'],
      '',
    ]);
    expect(completions('planks pattern: off', commands)).toEqual([['offcut-first'], 'off']);
    expect(completions('safety task: tear', commands)).toEqual([['tear-out'], 'tear']);
  });

  it('behind an option without choices are none', () => {
    expect(completions('planks room: ', commands)).toEqual([[], '']);
  });

  it('of a name that stands without its option are sought for that option', () => {
    expect(valueTyped('project use Ups', commands)).toMatchObject({ option: 'project', typed: 'Ups' });
    expect(valueTyped('project room bed', commands)).toMatchObject({ option: 'room', typed: 'bed' });
    expect(valueTyped('planks gap: 3/', commands)).toMatchObject({ option: 'gap', typed: '3/' });
    expect(valueTyped('project room bedroom, fl', commands)).toBeUndefined();
    expect(valueTyped('planks pat', commands)).toBeUndefined();
    expect(completions('project room bedroom, fl', commands)).toEqual([['floor: '], 'fl']);
  });
});
