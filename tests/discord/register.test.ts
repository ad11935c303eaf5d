/** The commands as Discord's menus take them, and their registration by what differs. */

import type { APIApplicationCommand } from 'discord.js';
import { afterEach, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { fullName, listed, optionsOf } from '../../src/input/command-shape.ts';
import { slashOf } from '../../src/platforms/discord/interaction.ts';
import { COMMAND_CHARACTERS } from '../../src/platforms/discord/limits.ts';
import {
  charactersOf,
  differenceOf,
  MENU,
  register,
  registered,
  registeredThere,
  wantedIn,
} from '../../src/platforms/discord/menu.ts';
import { restOf } from '../../src/platforms/discord/start.ts';
import { APPLICATION } from './interactions.ts';
import { field, list } from './json-field.ts';
import { discordLoopback, type Loopback } from './loopback.ts';
import { payloadFlaws } from './payload-flaws.ts';

const all = registered(commands);

describe('the menus', () => {
  it.each(all.map((command) => [command.name, command] as const))('%s is as Discord takes it', (_name, command) => {
    expect(payloadFlaws('command', command)).toEqual([]);
    expect(charactersOf(command)).toBeLessThanOrEqual(COMMAND_CHARACTERS);
    expect(command).toMatchObject({ integration_types: [0, 1], contexts: [0, 1, 2] });
  });

  it('have at most twenty entries, each option of a command, and none named do', () => {
    expect(all.length).toBeLessThanOrEqual(20);
    for (const { name, command: wanted, renamed = {} } of MENU) {
      const entry = all.find((one) => one.name === name);
      const options = list(field(entry, 'options')).map((option) => String(field(option, 'name')));
      expect(options).not.toContain('do');
      const command = commands.find((one) => fullName(one) === wanted);
      expect(command === undefined).toBe(wanted === undefined);
      if (command) expect(options).toEqual(optionsOf(command).map((option) => renamed[option.name] ?? option.name));
      // As it comes back, each option is the command's own again.
      const typed = options.map((option) => ({ type: 3, name: option, value: option }) as const);
      const slash = slashOf(name, typed, commands);
      if (command && slash) expect(Object.keys(slash.given)).toEqual(optionsOf(command).map((option) => option.name));
    }
  });

  it('bring back what an older menu still has', () => {
    for (const command of listed(commands)) {
      const sub = command.group && [{ type: 1, name: command.name, options: [{ type: 3, name: 'do', value: 'x' }] }];
      const slash = slashOf(
        command.group ?? command.name,
        (sub || [{ type: 3, name: 'do', value: 'x' }]) as never,
        commands,
      );
      expect(slash).toMatchObject({ command, given: { do: 'x' } });
    }
  });

  it('speak four more languages, each name once and as Discord takes it', () => {
    const entries = all.filter(({ type }) => type === 1);
    for (const language of ['es-ES', 'es-419', 'de', 'fr', 'pt-BR'] as const) {
      const names = entries.map((entry) => entry.name_localizations?.[language] ?? '');
      expect(new Set(names).size).toBe(entries.length);
      for (const name of names) {
        expect(name).toMatch(/^[-_\p{L}\p{N}]{1,32}$/u);
        expect(name).toBe(name.toLowerCase());
      }
      for (const entry of entries) {
        const said = ('description_localizations' in entry && entry.description_localizations?.[language]) || '';
        expect(said.length).toBeGreaterThan(10);
        expect(said.length).toBeLessThanOrEqual(100);
      }
    }
  });

  it('find what is planted wrong', () => {
    const option = { type: 3, name: 'a', description: 'x' };
    const command = {
      type: 1,
      name: 'x',
      description: 'd',
      options: [option, { ...option, name: 'b', required: true }],
    };
    expect(payloadFlaws('command', command)).toEqual(['a required option behind another']);
    expect(payloadFlaws('command', { ...command, options: [option, option] })).toEqual(['an option twice']);
    const long = { ...command, options: [{ ...option, description: 'x'.repeat(101) }] };
    expect(payloadFlaws('command', long).join()).toMatch(/schema/);
  });
});

describe('registration', () => {
  const open: Loopback[] = [];
  afterEach(async () => {
    await Promise.all(open.splice(0).map((one) => one.close()));
  });

  async function there() {
    const discord = await discordLoopback();
    open.push(discord);
    const rest = restOf({ token: 'secret', api: discord.api });
    const writes = () => discord.captured.filter(({ kind }) => kind === 'command' || kind === 'delete').length;
    return { discord, rest, writes };
  }

  it('writes all at first, nothing the second time, and only what differs after', async () => {
    const { discord, rest, writes } = await there();
    const place = { application: APPLICATION };
    const first = differenceOf(all, await registeredThere(rest, place));
    expect(first.write).toEqual(all);
    await register(rest, place, first);
    expect(discord.flaws).toEqual([]);
    const again = differenceOf(all, await registeredThere(rest, place));
    expect([again.write, again.remove, again.same.length]).toEqual([[], [], all.length]);
    const before = writes();
    await register(rest, place, again);
    expect(writes()).toBe(before);
    const [one, ...others] = all;
    if (!one) throw new Error('no command');
    const changed = differenceOf([...others, { ...one, name: 'renamed' }], await registeredThere(rest, place));
    expect(changed.write.map(({ name }) => name)).toEqual(['renamed']);
    expect(changed.remove.map(({ name }) => name)).toEqual([one.name]);
    await register(rest, place, changed);
    const names = (await registeredThere(rest, place)).map(({ name }) => name);
    expect(names.sort()).toEqual([...others.map(({ name }) => name), 'renamed'].sort());
  });

  it('takes what Discord adds of its own for no difference, and leaves its entry point alone', () => {
    const stored = all.map((command, i) => ({
      ...command,
      id: String(i),
      version: '1',
      application_id: APPLICATION,
      default_member_permissions: null,
      nsfw: false,
      contexts: [2, 1, 0],
    }));
    const entry = { id: '99', name: 'launch', type: 4, description: '' };
    // Only the fields that differences are found in.
    const difference = differenceOf(all, [...stored, entry] as unknown as APIApplicationCommand[]);
    expect([difference.write, difference.remove]).toEqual([[], []]);
  });

  it('in one server is without what only holds everywhere', async () => {
    const { discord, rest } = await there();
    const place = { application: APPLICATION, guild: '600' };
    const wanted = wantedIn(place, all);
    await register(rest, place, differenceOf(wanted, await registeredThere(rest, place)));
    expect(discord.captured.every(({ path }) => path.includes('/guilds/600/'))).toBe(true);
    for (const { kind, body } of discord.captured) if (kind === 'command') expect(body).not.toHaveProperty('contexts');
  });
});
