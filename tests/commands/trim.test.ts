/** Trim commands end to end: data of the agreed shape, doors and corners as told, problems and refusals with their fixes. */

import { afterAll, describe, expect, test } from 'vitest';
import type { FinishResult, ResetResult, TrimResult } from '../../commands/trim/parts/result.ts';
import { inches } from '../../src/core/length.ts';
import { closeWorkers } from '../../src/solve/pool.ts';
import { answersTo, answerTo, problemsOf, replyTo } from '../bot/asked.ts';

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

  test('a corner past the saw’s reach is a Problem, and its fix is read', async () => {
    const [problem] = problemsOf(await answerTo(`list room: 12' x 14', corners: corner 3: 70`));
    expect(problem).toMatchObject({ option: 'saw-reach', got: '50°' });
    expect(problem?.expected).toContain('never cut it freehand');
    expect(problemsOf(await answerTo(problem?.fix ?? ''))).toEqual([]);
  });

  test('every next ask that is offered can be asked', async () => {
    const { actions } = await replyTo(`list room: 12' x 14', doors: 32 in on wall 2, bay: wall 3: front 4', sides 2'`);
    expect(actions).toHaveLength(3);
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

  test('setting again costs no more than replacing; lead comes first among the cautions', async () => {
    const reply = await replyTo(
      `reset room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 16 ft $15.48, shoe: 16 ft $6.98, breaks: 25 %`,
    );
    const { broken, brokenRange, cents } = reply.data as ResetResult;
    expect([broken, brokenRange]).toEqual([2, [1, 2]]);
    expect(cents.reset).toBeLessThan(cents.replace);
    expect(cents.shoe).toBeGreaterThan(0);
    expect(reply.cautions.map(({ topic }) => topic)).toContain('lead');
  });
});

describe('trim edges', () => {
  test('profiles by the heights of the floors, every one cut square between the jambs', async () => {
    const reply = await replyTo(
      'edges doorways: bath 30 in to tile 3/4 in; den 32 in to carpet; hall 36 in to wood 5/16 in; closet 24 in to vinyl 1/8 in; balcony 72 in to track, floor: 5/16 in',
    );
    const table = reply.blocks.find((block) => block.kind === 'table');
    expect(table?.kind === 'table' ? table.rows.map(([name, profile]) => [name, profile]) : []).toEqual([
      ['bath', 'end cap'],
      ['den', 'end cap'],
      ['hall', 'T-moulding'],
      ['closet', 'reducer'],
      ['balcony', 'end cap'],
    ]);
    const { kind, pieces } = reply.data as TrimResult;
    expect(kind).toBe('trim');
    expect(pieces.map(({ length, left }) => [length / 8128, left.cut])).toEqual(
      [30, 32, 36, 24, 72].map((inch) => [inch, 'square']),
    );
    expect(JSON.stringify(reply.blocks)).toContain('subfloor');
  });

  test('stairs get a nosing a step, and the caution that risers stay alike', async () => {
    const reply = await replyTo('edges doorways: 32 in to carpet, stairs: 12 x 36 in, floor: 1/2 in');
    expect((reply.data as TrimResult).pieces).toHaveLength(13);
    expect(reply.cautions.find(({ topic }) => topic === 'riser')?.text).toContain('more than 3/8"');
  });

  test('an edge longer than any length on sale is a Problem whose fix is read', async () => {
    const [problem] = problemsOf(await answerTo('edges doorways: 9 ft to track, stock: 72 in $20'));
    expect(problem?.option).toBe('stock');
    expect(problemsOf(await answerTo(problem?.fix ?? ''))).toEqual([]);
  });
});

describe('trim finish', () => {
  test('data has the agreed keys; a nail deep in the stud brings its caution, one too short a Problem', async () => {
    const ask = `finish room: 12' x 14', doors: 32 in on wall 2`;
    expect(Object.keys(await dataOf<FinishResult>(ask)).sort()).toEqual([
      'caulkTubes',
      'fillerLitres',
      'kind',
      'nails',
      'paintLitres',
    ]);
    const topics = async (line: string) => (await replyTo(line)).cautions.map(({ topic }) => topic);
    expect(await topics(ask)).not.toContain('nail-depth');
    expect(await topics(`${ask}, nail: 2 1/2 in`)).toContain('nail-depth');
    const [problem] = problemsOf(await answerTo(`${ask}, nail: 1 in`));
    expect(problem).toMatchObject({ option: 'nail', fix: expect.stringContaining('nail: 2 in') });
  });
});
