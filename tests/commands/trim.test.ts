/** Trim commands end to end: data of the agreed shape, doors and corners as told, problems and refusals with their fixes. */

import { afterAll, describe, expect, test } from 'vitest';
import type { ResetResult, TrimResult } from '../../commands/trim/trim-results.ts';
import { inches } from '../../src/units/length.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { answersTo, answerTo, problemsOf, replyTo } from '../chat/asked.ts';

afterAll(closeWorkers);

const ELL = `walk 12' right 15' right 8' right 6' left 4' right 9' right`;

async function dataOf<T>(ask: string): Promise<T> {
  return (await replyTo(ask)).data as unknown as T;
}

describe('trim list', () => {
  test('data has the agreed keys, and the last answer is proved', async () => {
    const data = await dataOf<TrimResult>(
      `list room: ${ELL}, doors: 32 in on wall 1, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98`,
    );
    expect(Object.keys(data).sort()).toEqual([
      'bound',
      'cents',
      'endTrim',
      'glueUp',
      'kerf',
      'kind',
      'pieces',
      'proven',
      'sticks',
      'stock',
      'thickness',
      'ticksPerInch',
      'units',
      'walls',
    ]);
    expect(Object.keys(data.pieces[0] ?? {}).sort()).toEqual(['id', 'left', 'length', 'right', 'wall']);
    expect(data.proven).toBe(true);
    expect(data.cents).toBe(data.bound);
  });

  test('a first answer comes at once, and each later one costs no more', async () => {
    const answers = await answersTo(
      `list room: ${ELL}; hall 4' x 17'; closet 3' x 5', doors: 3 doors 30 in, stock: 8 ft $7.98; 10 ft $10.9; 12 ft $12.48`,
    );
    const cents = answers.map((one) => ('data' in one ? (one.data as TrimResult).cents : Number.NaN));
    expect(cents.length).toBeGreaterThanOrEqual(1);
    expect([...cents].sort((a, b) => b - a)).toEqual(cents);
  });

  test('left and right are as one faces the wall: a door 4 ft from the left leaves 4 ft less its casing at the left', async () => {
    const { pieces, walls } = await dataOf<TrimResult>(`list room: ${ELL}, doors: 32 in on wall 1, 4' from the left`);
    const [left, right] = pieces.filter(({ wall }) => wall === 'room 1');
    expect([left?.length, right?.length]).toEqual([inches(48 - 2.25), inches(108 - 48 - 32 - 2.25)]);
    expect([left?.right.cut, right?.left.cut]).toEqual(['square', 'square']);
    // Against the clock wall 2 comes before wall 3: their outside corner is at wall 2’s left end and wall 3’s right end.
    expect(walls.find(({ name }) => name === 'room 2')?.corners).toEqual([270, 90]);
    expect(walls.find(({ name }) => name === 'room 3')?.corners).toEqual([90, 270]);
  });

  test('a corner out of square is coped at its full length, and mitred where mitres are asked for', async () => {
    const ask = `list room: 12' x 14', corners: corner 3: 88.5, stock: 16 ft`;
    const coped = await dataOf<TrimResult>(ask);
    const third = coped.pieces.find(({ wall }) => wall === 'room 3');
    expect(third).toMatchObject({ length: inches(144), left: { cut: 'cope', setting: 45.75 } });
    expect(coped.pieces.find(({ wall }) => wall === 'room 4')?.right).toEqual({ cut: 'square', setting: 0 });
    const mitred = await dataOf<TrimResult>(`${ask}, inside-joint: miter`);
    expect(mitred.pieces.find(({ wall }) => wall === 'room 3')?.left).toEqual({ cut: 'miter', setting: 45.75 });
  });

  test('slivers beside doors and short returns are glued up first, told in words too', async () => {
    const reply = await replyTo(`list room: 12' x 14', doors: 32 in on wall 2, 6 in from the left`);
    expect((reply.data as TrimResult).glueUp).toEqual(['room 2a']);
    expect(JSON.stringify(reply.blocks)).toContain('room 2a: too short');
  });

  test('what is at hand is used before anything is bought', async () => {
    const { sticks, cents, stock } = await dataOf<TrimResult>(`list room: 3' x 3', stock: have 4 x 40 in; 8 ft $7.98`);
    expect(cents).toBe(0);
    expect(sticks.map(({ stock: index }) => stock[index]?.have)).toEqual([4, 4, 4, 4]);
  });

  test('a wall as long as its stick is one piece', async () => {
    const { pieces } = await dataOf<TrimResult>(`list room: 12' x 12', doors: 30 in on wall 1, stock: 12 ft`);
    expect(pieces.filter(({ wall }) => wall === 'room 3')).toHaveLength(1);
  });

  test('a wall as long as a stick comes from it, also beside pieces with a narrower cut and longer sticks on sale', async () => {
    // The board between two doors is square at both ends: its kerf is narrower than that of a miter.
    const doors = `doors: 30 in on wall 2, 1' from the left; 30 in on wall 2, 1' from the right`;
    const { sticks, stock, pieces } = await dataOf<TrimResult>(
      `list room: 12' x 14', ${doors}, stock: 12 ft $12.48; 16 ft $17.98`,
    );
    expect(pieces.some(({ left, right }) => left.cut === 'square' && right.cut === 'square')).toBe(true);
    for (const id of ['room 1a', 'room 3a']) {
      const stick = sticks.find((one) => one.pieces.includes(id));
      expect([stock[stick?.stock ?? -1]?.length, stick?.leftover]).toEqual([inches(144), 0]);
    }
  });

  test('a bay brings its own corners: 225° at its mouth, 135° within', async () => {
    const { walls } = await dataOf<TrimResult>(`list room: 12' x 14', bay: wall 3: front 4', sides 2'`);
    expect(walls.filter(({ name }) => name.startsWith('room 3.')).map(({ corners }) => corners)).toEqual([
      [90, 225],
      [225, 135],
      [135, 135],
      [135, 225],
      [225, 90],
    ]);
  });

  test('a corner past the saw’s reach is a Problem, and no other saw is made up', async () => {
    const [problem] = problemsOf(await answerTo(`list room: 12' x 14', corners: corner 3: 70`));
    expect(problem).toMatchObject({ option: 'saw-reach', got: '50°' });
    expect(problem?.expected).toContain('never cut it freehand');
    expect(problem).not.toHaveProperty('fix');
  });

  test('an area joined with + is a Problem: its opening is not told; told as a bay, its walls are counted once', async () => {
    for (const sign of ['+', 'plus']) {
      const [problem] = problemsOf(
        await answerTo(`list room: living 15x12 - 4x5 ${sign} 6x2 bay; closet 3x5, stock: 16 ft`),
      );
      expect(problem?.option).toBe('room');
      expect(problem?.expected).toContain("“wall 1: front 6', sides 2', 90°”");
      // Which wall it opens into is theirs to say.
      expect(problem).not.toHaveProperty('fix');
      const { walls } = await dataOf<TrimResult>(
        `list room: living 15x12 - 4x5; closet 3x5, stock: 16 ft, bay: wall 1 of living: front 6', sides 2', 90°`,
      );
      // By hand: 15 + 12 + 15 + 12 ft round the living room, 2 + 2 ft for the bay’s sides, 3 + 5 + 3 + 5 ft round the closet.
      expect(walls.reduce((sum, { length }) => sum + length, 0)).toBe(inches((54 + 4 + 16) * 12));
    }
  });

  test('what was not told and bears on lengths is told back; what was told is not', async () => {
    const { assumed } = await replyTo(`list room: 12' x 14', doors: 32 in on wall 2`);
    expect(assumed.at(-1)).toContain("sticks of 8', 12', 16', 2 1/4\"");
    const given = `list room: 12' x 14', stock: 16 ft, kerf: 1/8 in, thickness: 9/16 in`;
    expect((await replyTo(given)).assumed).toEqual([]);
  });

  test('sticks come in the order of their longest pieces, so that the longest cuts are made first', async () => {
    const { sticks, pieces } = await dataOf<TrimResult>(
      `list room: ${ELL}; hall 4' x 11', doors: 3 doors 30 in, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98`,
    );
    const lengths = new Map(pieces.map(({ id, length }) => [id, length]));
    const firsts = sticks.map((stick) => lengths.get(stick.pieces[0] ?? '') ?? 0);
    expect(sticks.length).toBeGreaterThan(3);
    expect(firsts).toEqual([...firsts].sort((a, b) => b - a));
  });

  test('without prices the least length is bought, to the millimetre', async () => {
    const of = async (stock: string) => dataOf<TrimResult>(`list room: 1.5 x 1.5 m, stock: ${stock}, kerf: 0`);
    const { sticks, stock } = await of('1.6 m; 3.1 m');
    // By hand: four pieces of 1.5 m; 2 × 3.1 m = 6.2 m of stick against 4 × 1.6 m = 6.4 m.
    expect(sticks.map((stick) => (stock[stick.stock]?.length ?? 0) / 320)).toEqual([3100, 3100]);
    // 20 mm between them in all: 4 × 1.6 m = 6.4 m against 2 × 3.21 m = 6.42 m.
    const other = await of('1.6 m; 3.21 m');
    expect(other.sticks.map((stick) => (other.stock[stick.stock]?.length ?? 0) / 320)).toEqual([
      1600, 1600, 1600, 1600,
    ]);
    expect([other.cents, other.bound, other.proven]).toEqual([0, 0, true]);
  });

  test('doors by their kind, and prices after “at” or “@”', async () => {
    const { stock, pieces } = await dataOf<TrimResult>(
      'list room: 12x14, doors: bifold 4 ft on wall 1; french door 5 ft on wall 3, stock: 8ft at 7.98, 16ft @ 15.48 each',
    );
    expect(stock).toEqual([
      { length: inches(96), cents: 798 },
      { length: inches(192), cents: 1548 },
    ]);
    // (144 − 48 − 2 × 2 1/4) ÷ 2 = 45 3/4 in
    expect(pieces.find(({ id }) => id === 'room 1a')?.length).toBe(inches(45.75));
  });

  test('every next ask that is offered can be asked', async () => {
    const { actions } = await replyTo(`list room: 12' x 14', doors: 32 in on wall 2, bay: wall 3: front 4', sides 2'`);
    expect(actions.length).toBeGreaterThanOrEqual(3);
    for (const { ask } of actions) expect(problemsOf(await answerTo(ask))).toEqual([]);
  });

  test('every answer with nails in it has the nail-gun caution', async () => {
    for (const ask of [`list room: 12' x 14'`, `finish room: 12' x 14'`, `reset room: 12' x 14'`]) {
      expect((await replyTo(ask)).cautions.map(({ topic }) => topic)).toContain('nail-gun');
    }
  });
});

describe('trim reset', () => {
  test('labels go round each room to the right, from its door', async () => {
    const { boards } = await dataOf<ResetResult>(
      `reset room: den 12' x 14'; hall 4' x 9', doors: 32 in on wall 2 of den`,
    );
    expect(boards.map(({ label }) => label)).toEqual([
      'A 2-1',
      'A 1-2',
      'A 4-3',
      'A 3-4',
      'A 2-5',
      'B 1-1',
      'B 4-2',
      'B 3-3',
      'B 2-4',
    ]);
    expect(boards.reduce((sum, { length }) => sum + length, 0)).toBe(inches((52 + 26) * 12 - 36.5));
  });

  test('replacing costs what the list of the same ask comes to', async () => {
    const walls = `room: ${ELL}; hall 4' x 11', doors: 3 doors 30 in, stock: 8 ft $7.98; 12 ft $12.48; 16 ft $17.98`;
    const { cents } = await dataOf<ResetResult>(`reset ${walls}, shoe: 8 ft $3.98; 16 ft $6.98`);
    expect(cents.replace).toBe((await dataOf<TrimResult>(`list ${walls}`)).cents);
  });

  test('no breaks, nothing to buy', async () => {
    const reply = await replyTo(`reset room: 12' x 14', breaks: 0`);
    expect(reply.headline).toContain('none should break');
    expect(JSON.stringify(reply.blocks)).toContain('nothing to buy as long as none breaks');
  });

  test('setting again costs no more than replacing; lead comes first among the cautions', async () => {
    const reply = await replyTo(
      `reset room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 16 ft $15.48, shoe: 16 ft $6.98, breaks: 25%`,
    );
    const { broken, brokenRange, cents } = reply.data as ResetResult;
    expect([broken, brokenRange]).toEqual([2, [1, 2]]);
    expect(cents.reset).toBeLessThan(cents.replace);
    expect(cents.shoe).toBeGreaterThan(0);
    expect(reply.cautions.map(({ topic }) => topic)).toContain('lead');
  });
});
