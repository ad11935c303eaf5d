/** What is suggested for an option: what the asker keeps and told before, the likeliest first, and never a stranger's. */

import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import type { Asker } from '../../src/accounts/records.ts';
import { MOST_SUGGESTIONS, suggest } from '../../src/chat/suggest.ts';
import { fullName } from '../../src/input/command-shape.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { replyTo } from './asked.ts';
import { type DemoPorts, demoPorts, portsInMemory } from './demo-flat.ts';

const ANN: Asker = { platform: 'discord', id: '1' };
const BOB: Asker = { platform: 'discord', id: '2' };

function throwing(_reference: string, cause: unknown): never {
  throw cause;
}

function suggested(ports: DemoPorts, name: string, option: string, typed = '', asker = ANN) {
  const command = commands.find((one) => fullName(one) === name);
  if (!command) throw new Error(`no command ${name}`);
  return suggest(asker, { command, option, commands, preferences: DEFAULT_PREFERENCES }, typed, ports);
}

describe('suggestions', () => {
  it('for a room are the rooms of the job, and all', async () => {
    const ports = await demoPorts(ANN, throwing);
    expect((await suggested(ports, 'floor planks', 'room')).slice(0, 5)).toEqual([
      'hall',
      'living',
      'bedroom',
      'closet',
      'all',
    ]);
    expect(await suggested(ports, 'floor layout', 'only', 'cl')).toEqual(['closet']);
    expect((await suggested(ports, 'project room', 'room')).slice(0, 5)).toEqual([
      'hall',
      'living',
      'bedroom',
      'closet',
      'bath',
    ]);
    expect(await suggested(ports, 'floor planks', 'room', '', BOB)).toEqual([`12' x 14'`]);
  });

  it('for a question of the handbook are titles that hold what is typed, then those asked that way', async () => {
    const ports = portsInMemory(throwing);
    expect(await suggested(ports, 'handbook', 'entry', 'which way')).toContain('Which way should the planks run?');
    const cats = await suggested(ports, 'handbook', 'entry', 'cat pee');
    expect(cats[0]).toMatch(/pet|urine|odor/i);
    expect(await suggested(ports, 'handbook', 'entry', 'xyzzy')).toEqual([]);
    expect((await suggested(ports, 'handbook', 'entry', '')).length).toBe(MOST_SUGGESTIONS);
  });

  it('for what is picked begin with the pick', async () => {
    const ports = await demoPorts(ANN, throwing);
    expect((await suggested(ports, 'floor planks', 'plank'))[0]).toBe('7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft');
  });

  it('for names of projects are those that the command can be about', async () => {
    const ports = await demoPorts(ANN, throwing);
    expect(await suggested(ports, 'project use', 'project')).toEqual(['Upstairs flat']);
    expect((await suggested(ports, 'project restore', 'project'))[0]).toBe('Old house');
    expect((await suggested(ports, 'project restore', 'project', '', BOB))[0]).toBe('the one in use');
  });

  it('hold what was told before, the most used first, an old one behind', async () => {
    const ports = portsInMemory(throwing);
    const say = (gap: string) =>
      replyTo(`planks 10x12, plank: 6 x 48 in, 10 per carton, gap: ${gap}`, { asker: ANN, ports });
    for (const gap of ['1/2 in', '1/2 in', '1/2 in', '1/2 in']) await say(gap);
    ports.clock.now += 30 * 24 * 3_600_000;
    for (const gap of ['3/8 in', '10 mm', '3/8 in']) await say(gap);
    expect((await suggested(ports, 'floor planks', 'gap')).slice(0, 4)).toEqual([
      '3/8 in',
      '10 mm',
      '1/2 in',
      '1/4 in',
    ]);
    expect(await suggested(ports, 'floor planks', 'gap', 'mm')).toEqual(['10 mm']);
    expect(await suggested(ports, 'floor planks', 'gap', '', BOB)).not.toContain('10 mm');
  });

  it('are the choices of an option, never more than a menu shows, and stay when nothing kept can be read', async () => {
    const ports = await demoPorts(ANN, throwing);
    expect(await suggested(ports, 'floor planks', 'pattern', 'sta')).toEqual(['stair-step']);
    for (let i = 0; i < 40; i++)
      await replyTo(`project room r${'abcdefghij'[i % 10]}${'abcd'[Math.floor(i / 10)]} 5x5`, { asker: ANN, ports });
    expect(await suggested(ports, 'project room', 'room')).toHaveLength(MOST_SUGGESTIONS);
    ports.store.down = true;
    expect(await suggested(ports, 'floor planks', 'gap')).toEqual(['1/4 in', '3/8 in']);
    expect(await suggested(ports, 'floor planks', 'nothing')).toEqual([]);
  });
});
