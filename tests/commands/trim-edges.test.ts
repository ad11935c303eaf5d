/** Edges and finishing end to end: profiles by heights, stairs, units as typed, nails by length and penny size. */

import { afterAll, describe, expect, test } from 'vitest';
import type { FinishResult, TrimResult } from '../../commands/trim/trim-results.ts';
import { inches } from '../../src/units/length.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { answerTo, problemsOf, replyTo } from '../chat/asked.ts';

afterAll(closeWorkers);

async function dataOf<T>(ask: string): Promise<T> {
  return (await replyTo(ask)).data as unknown as T;
}

describe('trim edges', () => {
  test('profiles by the heights of the floors, every one cut square between the jambs', async () => {
    const reply = await replyTo(
      'edges doorways: bath 30 in to tile 3/4 in; den 32 in to carpet; hall 36 in to wood 5/16 in; closet 24 in to vinyl 1/8 in; balcony 72 in to track, floor: 5/16 in',
    );
    const table = reply.blocks.find((block) => block.kind === 'table');
    expect(table?.kind === 'table' ? table.rows.map(([name, profile]) => [name, profile]) : []).toEqual([
      ['bath', 'end cap'],
      ['den', 'end cap'],
      ['hall', 'T-molding'],
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

  test('stairs alone, doorways with the name behind, and nothing at all', async () => {
    expect((await dataOf<TrimResult>('edges stairs: 12 x 36 in')).pieces).toHaveLength(12);
    const { pieces } = await dataOf<TrimResult>('edges doorways: 30" bath tile 1/2 in; 32 in bedroom carpet');
    expect(pieces.map(({ id, length }) => [id, length])).toEqual([
      ['bath', inches(30)],
      ['bedroom', inches(32)],
    ]);
    const [problem] = problemsOf(await answerTo('edges'));
    expect(problem?.option).toBe('doorways');
    expect(problem).not.toHaveProperty('fix');
  });

  test('answers and problems are in the units that were typed', async () => {
    const reply = await replyTo('edges doorways: 2 x 800 mm to tile 4 mm, floor: 8 mm');
    expect(JSON.stringify(reply.blocks)).toContain('800 mm');
    expect(JSON.stringify(reply.blocks)).toContain('down 4 mm');
    const [problem] = problemsOf(await answerTo('edges doorways: 4 m to track, floor: 8 mm'));
    expect(problem).toMatchObject({ option: 'stock', expected: expect.stringContaining('4 m') });
    expect(problem).not.toHaveProperty('fix');
  });

  test('an edge longer than any length on sale is a Problem, and no stick is made up', async () => {
    const [problem] = problemsOf(await answerTo('edges doorways: 9 ft to track, stock: 72 in $20'));
    expect(problem?.option).toBe('stock');
    expect(problem).not.toHaveProperty('fix');
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
    expect(problem).toMatchObject({ option: 'nail' });
    expect(problem).not.toHaveProperty('fix');
  });

  // Penny sizes from memory: ASTM F1667, 8d 2 1/2 in, 16d 3 1/2 in.
  test('nails by their penny size', async () => {
    for (const [nail, said] of [
      ['8d', '2 1/2"'],
      ['16d finish nails', '3 1/2"'],
    ]) {
      expect((await replyTo(`finish room: 12' x 14', nail: ${nail}`)).headline).toContain(`nails (${said})`);
    }
    for (const nail of ['potato', '1d', '11d', '0']) {
      const [problem] = problemsOf(await answerTo(`finish room: 12' x 14', nail: ${nail}`));
      expect(problem).toMatchObject({ option: 'nail', got: nail });
      expect(problem).not.toHaveProperty('fix');
    }
  });
});

// A step of more than 1/2 in at a doorway is a trip (common practice).
describe('a step at a doorway', () => {
  const why = async (height: string) =>
    JSON.stringify((await replyTo(`edges doorways: bath 30 in to tile ${height}, floor: 5/16 in`)).blocks);

  test('of more than 1/2 in is called a trip where it stands, up or down', async () => {
    expect(await why('13/16 in')).not.toContain('is a trip: a ramped threshold in its place');
    expect(await why('7/8 in')).toContain('is a trip: a ramped threshold in its place');
    expect(await why('1 1/4 in')).toContain('is a trip: a ramped threshold in its place');
  });

  test('stairs alone stand under a title of their own', async () => {
    const { blocks } = await replyTo('edges stairs: 13 x 36 in');
    expect(blocks[0]).toMatchObject({ title: 'At each step' });
  });
});
