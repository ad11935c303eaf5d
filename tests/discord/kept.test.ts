/** The store behind the buttons: down, hanging or slow, every ask and press is answered. */

import { afterEach, describe, expect, it } from 'vitest';
import { type KeyValueStore, Outage } from '../../src/storage/types.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { ASKER, fill, OTHER, pick, press, slash, typing } from './interactions.ts';
import { buttonsOf, controlOf, field, labelsOf, list, textOf } from './json-field.ts';
import type { Captured } from './loopback-rest.ts';
import { type Stage, type Staged, stage } from './stage.ts';

const HEADLINE = 'Buy 10 cartons';
const requested = () => slash('floor planks', { room: `12' x 14'`, plank: '6 x 48 in, 10 per carton' });
const tape = () => slash('tape', { sum: '1 ft + 2 in' });

const open: Stage[] = [];
afterEach(async () => {
  for (const bot of open.splice(0)) {
    await bot.close();
    expect(bot.discord.flaws).toEqual([]);
  }
});
async function started(staged: Staged = {}): Promise<Stage> {
  const bot = await stage(staged);
  open.push(bot);
  return bot;
}

const data = (one: Captured): unknown => field(one.body, 'data');

/** Neither the last nor the first answer is waited for; what keeps is. */
const hurried = (milliseconds: number): boolean => milliseconds === 700 || milliseconds === 1500;

/** A gate that a test opens. */
function gate() {
  let open: () => void = () => {};
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { opened, open: () => open() };
}

describe('what keeps answers', () => {
  it('may be down: once that is known answers go out without buttons, and presses are answered', async () => {
    const down = async (): Promise<never> => {
      throw new Outage('down');
    };
    const kept: KeyValueStore = { get: down, set: down, delete: down, claim: async () => true };
    const bot = await started({ kept });
    await bot.ask(tape());
    const answered = await bot.ask(requested());
    expect(textOf(data(answered))).toContain(HEADLINE);
    expect(buttonsOf(data(answered))).toEqual([]);
    expect(textOf(data(await bot.ask(press('sources:AAAAAAAAAAA'))))).toMatch(/try again/);
  });

  it('may be down while an emergency is typed into a form, or for a command that is gone', async () => {
    const down = async (): Promise<never> => {
      throw new Outage('down');
    };
    const bot = await started({ kept: { get: down, set: down, delete: down, claim: down } });
    for (const typed of [
      fill('form:AAAAAAAAAAA:floor planks', { room: 'i smell gas in the hall' }),
      fill('form:AAAAAAAAAAA:floor gone', { words: 'i smell gas' }),
      slash('floor gone', { words: 'i smell gas' }),
    ]) {
      const text = textOf(data(await bot.ask(typed)));
      expect(text).toMatch(/This comes first[\s\S]*Leave now, touch no switch/);
    }
  });

  it('may hang: presses and sums are answered while there is time', async () => {
    const hangs = (): Promise<never> => new Promise(() => {});
    const bot = await started({
      kept: { get: hangs, set: hangs, delete: hangs, claim: hangs },
      over: (milliseconds) => !hurried(milliseconds),
    });
    expect(textOf(data(await bot.ask(press('sources:AAAAAAAAAAA'))))).toMatch(/try again/);
    expect(textOf(data(await bot.ask(tape())))).toContain('1\' 2"');
    // Once something could not be kept, buttons would lead nowhere.
    expect(buttonsOf(data(await bot.ask(tape())))).toEqual([]);
  });

  it('may be slow: a press that is quicker is answered once it has what was to be kept', async () => {
    const memory = keptInMemory();
    const { opened, open: go } = gate();
    const set: KeyValueStore['set'] = (...given) => opened.then(() => memory.set(...given));
    const bot = await started({ kept: { ...memory, set } });
    const sources = buttonsOf(data(await bot.ask(tape()))).find(({ label }) => label === 'Sources');
    const pressed = press(sources?.id ?? '');
    bot.discord.dispatch(pressed);
    await bot.ask(typing('tape', 'sum', '1'));
    expect(bot.discord.captured.some(({ token }) => token === pressed.token)).toBe(false);
    go();
    expect(textOf(data(await bot.discord.next(({ token }) => token === pressed.token)))).toContain('Sources');
  });

  it('is asked for an answer that was missed once for each person, not at every ask', async () => {
    const memory = keptInMemory();
    const requested: string[] = [];
    const get: KeyValueStore['get'] = (key) => {
      requested.push(key);
      return memory.get(key);
    };
    const bot = await started({ kept: { ...memory, get } });
    for (let asks = 0; asks < 3; asks++) await bot.ask(tape());
    await bot.ask(slash('tape', { sum: '2 + 2' }, { user: OTHER }));
    await bot.running.close();
    expect(requested.filter((key) => key.startsWith('missed:'))).toHaveLength(2);
  });

  it('may be down altogether: sums are answered all the same, and what changes a project is', async () => {
    const down = async (): Promise<never> => {
      throw new Outage('down');
    };
    const ports = await demoPorts({ platform: 'discord', id: ASKER }, () => {});
    const bot = await started({ kept: { get: down, set: down, delete: down, claim: down }, ports });
    expect(textOf(data(await bot.ask(tape())))).toContain('1\' 2"');
    // Nobody can tell whether another process took it: unanswered, it would be lost in every process.
    expect(textOf(data(await bot.ask(slash('project pick', { pick: 'gap: 1/2 in' }))))).toContain('1/2 in');
  });

  it('may hang when it is asked whose an ask is: it is taken once it took too long', async () => {
    const claim = (): Promise<never> => new Promise(() => {});
    const ports = await demoPorts({ platform: 'discord', id: ASKER }, () => {});
    const over = (milliseconds: number): boolean => !hurried(milliseconds);
    const bot = await started({ kept: { ...keptInMemory(), claim }, ports, over });
    expect(textOf(data(await bot.ask(slash('project pick', { pick: 'gap: 1/2 in' }))))).toContain('1/2 in');
  });

  it('tells that another process has an ask: it is left to that one', async () => {
    const ports = await demoPorts({ platform: 'discord', id: ASKER }, () => {});
    const bot = await started({ kept: { ...keptInMemory(), claim: async () => false }, ports });
    const taken = slash('project pick', { pick: 'gap: 1/2 in' });
    bot.discord.dispatch(taken);
    // A sum harms nobody twice over, and is answered here.
    expect(textOf(data(await bot.ask(tape())))).toContain('1\' 2"');
    expect(textOf(data(await bot.ask(slash('floor planks'))))).not.toContain('gap 1/2');
    expect(bot.discord.captured.some(({ token }) => token === taken.token)).toBe(false);
  });
});

describe('an answer filled from a project', () => {
  it('has its details changed without asking for what the project has', async () => {
    const bot = await started({ ports: await demoPorts({ platform: 'discord', id: ASKER }, () => {}) });
    const answer = await bot.ask(slash('floor planks'));
    // The message is too high for a list of the details: it opens in its place.
    const line = controlOf(data(answer), 'Change a detail');
    const details = await bot.ask(pick(line.id, [line.value ?? '']));
    expect(field(details.body, 'type')).toBe(7);
    const form = await bot.ask(pick(controlOf(data(details), 'Change a detail').id, ['gap']));
    expect(list(field(data(form), 'components'))).toHaveLength(1);
    const changed = await bot.ask(fill(String(field(data(form), 'custom_id')), { gap: '1/2 in' }));
    expect(textOf(data(changed))).toMatch(/Buy \d+ cartons[\s\S]*from your project/);
    const everything = controlOf(data(changed), 'Everything');
    const opened = pick(everything.id, [everything.value ?? '']);
    const first = await bot.ask(opened);
    const shown = field(first.body, 'type') === 6 ? await bot.after(opened, 'edit') : first;
    const whole = shown.files.get('answer.txt')?.toString();
    expect(whole).toMatch(/gap 1\/2"[\s\S]*from your project/);
  });

  it('is not offered to be shown where it is everything kept of somebody', async () => {
    const bot = await started({ ports: await demoPorts({ platform: 'discord', id: ASKER }, () => {}) });
    const labels = labelsOf(data(await bot.ask(slash('project mydata'))));
    expect(labels).not.toContain('Show to channel');
  });
});
