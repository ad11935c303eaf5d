/** A floor begun, asked as one asks in the middle of it: sentences, joined rooms, and what cannot be. */

import { describe, expect, it } from 'vitest';
import type { ResumeResult } from '../../commands/floor/resume.ts';
import { answerTo, firstFloorTo, problemsOf, replyTo } from '../chat/asked.ts';
import { readFloor } from '../outside/floor-checker-data.ts';
import { checkResume } from '../outside/resume-checker.ts';

const BEDROOM = `room: bedroom 11' x 12'6", plank: 7 x 48 in, 10 per carton`;
const FLAT = `room: hall 3'6" x 14'; living 13' x 15'; bedroom 11' x 12'6", plank: 7 x 48 in, 10 per carton, doorways: hall to living 5 ft, 2 ft from the left of wall 2, runs on; hall to bedroom 32 in, wall 4, stops`;

async function resumeOf(text: string): Promise<ResumeResult> {
  const { data } = await replyTo(text);
  if (data.kind !== 'resume') throw new Error(data.kind);
  return data as ResumeResult;
}

async function faultsOf(floor: string, soFar: string): Promise<readonly string[]> {
  const read = readFloor(JSON.parse(JSON.stringify(await firstFloorTo(`planks ${floor}`))));
  if ('faults' in read) return read.faults;
  const rest = await resumeOf(`resume ${floor}, so-far: ${soFar}`);
  return checkResume(JSON.parse(JSON.stringify(rest)), read.floor);
}

describe('a floor begun', () => {
  it('goes on from the row as it really lies', async () => {
    const rest = await resumeOf(`resume ${BEDROOM}, so-far: row 12 ended at 31 1/4 in, 33 planks left`);
    // 149 1/2 in from wall to wall less 31 1/4 in and two planks of 48 in leave 22 1/4 in for the start (by hand).
    expect(rest.before).toMatchObject([{ row: 11, runs: [{ lengths: [22.25 * 8128, 390_144, 390_144, 254_000] }] }]);
  });

  it('goes on through joined rooms, and in rooms not begun', async () => {
    expect(await faultsOf(FLAT, 'living row 12 is laid, 200 planks left, offcuts: 20 in left, 30 in right')).toEqual(
      [],
    );
    expect(await faultsOf(FLAT, 'bedroom done, hall row 3 is laid, 60 planks left')).toEqual([]);
  });

  it('is told in a sentence, and asks for the floor where none is known', async () => {
    const given = await answerTo(
      'row 7 ended at 31 1/4, broke one, 22 planks and these offcuts left: 18 in left, 31 in right',
    );
    expect(problemsOf(given).map(({ option }) => option)).toEqual(['room', 'plank']);
    for (const problem of problemsOf(given)) expect(problem).not.toHaveProperty('fix');
    expect(given).toMatchObject({
      form: { command: 'floor resume', told: { 'so-far': expect.stringContaining('31 1/4') } },
    });
  });

  it('counts what the plan leaves where nothing is told, and says so', async () => {
    const reply = await replyTo(`resume ${BEDROOM}, so-far: 12 rows done, broke two`);
    const { data } = reply;
    const floor = await firstFloorTo(`planks ${BEDROOM}`);
    const begun = new Set(
      floor.regions.flatMap(({ rows }) => rows.slice(0, 12).flatMap(({ pieces }) => pieces.map(({ plank }) => plank))),
    );
    expect(data).toMatchObject({ stock: { planks: floor.count.cartons * 10 - begun.size - 2, offcuts: [] } });
    expect(reply.assumed.join('\n')).toMatch(/count them/);
  });
});

describe('a floor that cannot be begun so', () => {
  it.each([
    ['a row beyond the last', BEDROOM, 'row 44 is done'],
    ['a room that is not there', BEDROOM, 'attic row 3 is done'],
    ['pieces that do not come out', BEDROOM, 'row 4 started with 30 in and ended at 31 in, 4 planks left'],
    ['a piece longer than a plank', BEDROOM, 'row 4 ended at 60 in, 4 planks left'],
    ['nothing left to lay', BEDROOM, 'bedroom done'],
    ['a room done whose floor goes on', FLAT, 'hall done, 40 planks left'],
  ])('%s', async (_name, floor, soFar) => {
    const given = await answerTo(`resume ${floor}, so-far: ${soFar}`);
    expect(problemsOf(given).map(({ option }) => option)).toEqual(['so-far']);
    const [problem] = problemsOf(given);
    // Neither a row nor a piece is made up.
    expect(problem).not.toHaveProperty('fix');
    expect(given).toMatchObject({ form: { told: { 'so-far': soFar } } });
  });

  it('with slanted rows', async () => {
    const given = await answerTo(`resume ${BEDROOM}, direction: diagonal, so-far: row 2 is done`);
    expect(problemsOf(given).map(({ option }) => option)).toEqual(['direction']);
    expect(problemsOf(given)[0]).not.toHaveProperty('fix');
  });

  it('with slanted walls', async () => {
    const given = await answerTo(
      "resume room: living 18' x 14' with a bay 6' x 2', plank: 6 x 48 in, 10 per carton, so-far: row 2 is done",
    );
    expect(problemsOf(given).map(({ option }) => option)).toEqual(['room']);
    expect(problemsOf(given)[0]).not.toHaveProperty('fix');
  });
});
