/** Homes asked of `planks` and `layout`: what is told of doorways, offcuts and leftovers is so, and every fix mends. */

import { describe, expect, it } from 'vitest';
import { answerTo, floorTo, problemsOf, replyTo } from '../chat/asked.ts';

const PLANK = 'plank: 7 x 48 in, 10 per carton';
const ROOMS = `room: hall 3'6" x 14'; bedroom 11' x 12'6"; closet 2' x 5'`;

describe('problems of a home', () => {
  it.each([
    ['a room that is not told', 'doorways: hall to attic 32 in, wall 2; hall to bedroom 32 in, wall 4', 1],
    ['two wrong doorways', 'doorways: hall to attic 32 in, wall 2; hall to bedroom 5 ft, wall 1', 2],
    ['no wall told', 'doorways: hall to bedroom 32 in', 1],
    ['rooms on one another', 'doorways: hall to bedroom 32 in, wall 4; hall to closet 24 in, wall 4', 1],
    ['an island outside', 'holes: island 4 x 4 ft, 1 ft from left, 1 ft from top of hall', 1],
    ['a thing in no room', 'holes: post 4x4 in, 1 ft from left, 1 ft from top', 1],
    ['things on one another', 'holes: post 4x4 in, centred of bedroom; column 4x4 in, centred of bedroom', 1],
    ['a direction of no room', 'direction: attic long; hall short', 1],
    ['a wall that a room has not', 'direction: hall wall 9; bedroom long', 1],
    ['two directions in one floor', 'direction: hall long; bedroom short, doorways: hall to bedroom 32 in, wall 4', 1],
  ])('%s', async (_name, options, count) => {
    const problems = problemsOf(await answerTo(`planks ${ROOMS}, ${PLANK}, ${options}`));
    expect(problems).toHaveLength(count);
    for (const { fix } of problems) if (fix !== undefined) expect(problemsOf(await answerTo(fix))).toEqual([]);
  });

  it.each([
    [
      'slips in the names of rooms',
      'doorways: Hall to bedrom 32 in, wall 4, stops, holes: post 4x4 in of bedrom, 3 ft from left, 3 ft from bottom',
      /doorways: hall to bedroom 32 in, wall 4, stops, holes: post 4x4 in of bedroom, 3 ft from left/,
    ],
    [
      'a thing told without its place',
      'holes: island 2 x 3 ft of bedroom',
      /holes: island 2 x 3 ft of bedroom, centered$/,
    ],
  ])('keep %s', async (_name, given, kept) => {
    const [problem] = problemsOf(await answerTo(`planks ${ROOMS}, ${PLANK}, ${given}`));
    expect(problem?.fix).toMatch(kept);
    expect(problemsOf(await answerTo(problem?.fix ?? ''))).toEqual([]);
  });
});

describe('the answer for a home', () => {
  it('keeps offcuts for rooms that use them: the piece fits, and comes later', async () => {
    const { regions, kept = [], plank } = await floorTo(`planks ${ROOMS}, ${PLANK}`);
    expect(kept.length).toBeGreaterThan(0);
    const order = regions.map(({ name }) => name);
    for (const { plank: number, length, end, from, to } of kept) {
      expect(order.indexOf(to.region)).toBeGreaterThan(order.indexOf(from.region));
      const piece = regions[order.indexOf(to.region)]?.rows[to.row]?.pieces.find((one) => one.plank === number);
      expect(piece?.length).toBeLessThanOrEqual(length);
      expect(end).toBe(piece?.part === 'start' ? 'right' : piece?.part === 'end' ? 'left' : 'any');
      expect(length).toBeLessThan(plank.length);
    }
  });

  it('tells what is left: no longer together than what was bought less what lies', async () => {
    const { regions, count, plank, leftover } = await floorTo(`planks ${ROOMS}, ${PLANK}, kerf: 1/8 in`);
    const laid = regions.flatMap(({ rows }) => rows.flatMap(({ pieces }) => pieces.map(({ length }) => length)));
    const sum = (lengths: readonly number[]): number => lengths.reduce((total, length) => total + length, 0);
    expect(leftover?.planks).toBe(count.cartons * plank.perCarton - count.planks);
    expect(sum(leftover?.offcuts ?? []) + sum(laid)).toBeLessThanOrEqual(count.planks * plank.length);
    expect(leftover?.offcuts.length).toBeGreaterThan(0);
  });

  it('lays each room its own way, and says along which wall', async () => {
    const { regions } = await floorTo(`planks ${ROOMS}, ${PLANK}, direction: hall short; bedroom wall 2; others long`);
    const angles = Object.fromEntries(regions.map(({ name, frame }) => [name, frame.angle]));
    // The hall is 3'6" across, so its short way is along x; wall 2 runs upwards; the closet is deeper than wide.
    expect(angles).toEqual({ hall: 0, bedroom: 90, closet: 90 });
  });

  it('warns of a run that is long only because the floor goes on', async () => {
    const rooms = 'room: hall 30 ft x 4 ft; living 25 ft x 13 ft, plank: 7 x 48 in, 10 per carton';
    const rules = async (ends: string): Promise<string> => {
      const reply = await replyTo(`planks ${rooms}, doorways: hall to living 3 ft, wall 2, ${ends}`);
      return JSON.stringify(reply.blocks.filter(({ kind }) => kind === 'checklist'));
    };
    expect(await rules('runs on')).toMatch(/50 ft/);
    expect(await rules('stops')).not.toMatch(/50 ft/);
  });

  it('counts transitions, and tells each room of a joined floor', async () => {
    const reply = await replyTo(
      `planks ${ROOMS}, ${PLANK}, doorways: hall to bedroom 32 in, wall 4, runs on; bedroom to closet 30 in, wall 1, stops`,
    );
    const said = JSON.stringify(reply.blocks);
    expect(said).toMatch(/1 piece: 2' 6/);
    expect(said).toMatch(
      /hall 49 sq ft, bedroom 137\.5 sq ft, closet 10 sq ft, in doorways 1\.\d sq ft|hall 49 sq ft, bedroom 137\.5 sq ft/,
    );
    expect(said).toMatch(/bedroom – hall|hall – bedroom/);
  });

  it('gives the guide of the floor that a joined room lies in', async () => {
    const reply = await replyTo(
      `layout ${ROOMS}, ${PLANK}, doorways: hall to bedroom 32 in, wall 4, runs on, only: bedroom`,
    );
    expect(reply.headline).toMatch(/^hall \+ bedroom: /);
  });
});
