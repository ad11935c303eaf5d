/** Comparing planks: each choice comes out as if asked for alone, and the first by a measure is the least of them. */

import { describe, expect, it } from 'vitest';
import type { CompareResult } from '../../commands/floor/compare.ts';
import type { FloorResult } from '../../commands/floor/lay.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { lastAnswer } from '../bench/fuzz.ts';

const ROOM = `bedroom 11' x 12'6" + 2' x 5' closet`;
const PLANKS = [
  'oak: 6 x 48 in, 10 per carton, $45 a carton',
  'ash: 7 x 48 in, 8 per carton, $52 a carton, attached pad',
  'elm: 9 x 60 in, 6 per carton, $61 a carton',
];

async function replyTo(ask: string): Promise<Reply> {
  const answer = await lastAnswer(ask);
  if (!('headline' in answer)) throw new Error(JSON.stringify(answer));
  return answer;
}

describe('compare', () => {
  it('bounds what all choices take together, and says how many of them can be compared', async () => {
    const five = `${PLANKS.join('; ')}; fir: 5 x 48 in, 8 per carton; yew: 5 x 36 in, 8 per carton, LRV 30`;
    const large = await lastAnswer(`compare room: hall 20 x 40 m, pattern: half, planks: ${five}`);
    const [problem] = 'problems' in large ? large.problems : [];
    expect(problem?.option).toBe('planks');
    // None of the planks is left out for them.
    expect(problem?.expected).toContain('compare fewer of them');
    expect(problem).not.toHaveProperty('fix');
    expect(
      await lastAnswer(`compare room: hall 20 x 40 m, pattern: half, planks: ${PLANKS.join('; ')}`),
    ).toHaveProperty('headline');
    const larger = await lastAnswer(`compare room: hall 50 x 60 m, pattern: half, planks: ${PLANKS.join('; ')}`);
    const [rooms] = 'problems' in larger ? larger.problems : [];
    expect(rooms?.option).toBe('room');
    expect(rooms).not.toHaveProperty('fix');
  }, 30_000);

  it('gives each plank what it needs alone', async () => {
    const { data } = await replyTo(`compare room: ${ROOM}, planks: ${PLANKS.join('; ')}`);
    const { choices } = data as CompareResult;
    expect(choices.map(({ name }) => name)).toEqual(['oak', 'ash', 'elm']);
    for (const [i, choice] of choices.entries()) {
      const alone = (await replyTo(`planks room: ${ROOM}, plank: ${PLANKS[i]?.replace(/^\w+: /, '')}`))
        .data as FloorResult;
      expect(choice).toMatchObject({
        planks: alone.count.planks,
        cartons: alone.count.cartons,
        cents: alone.cost?.cents,
      });
      const bought = alone.count.planks * alone.plank.width * alone.plank.length;
      expect(choice.wastePercent).toBeCloseTo(((bought - choice.laid) / choice.laid) * 100, 0);
    }
  });

  it('offers each plank laid as it was compared, and ends with what the search of scattered joints finds', async () => {
    const laying = "pattern: scattered, direction: short, holes: post 4x4 in, 3' from left, 5' from bottom";
    const reply = await replyTo(`compare room: bedroom 11' x 12'6", planks: ${PLANKS.join('; ')}, ${laying}`);
    const { choices } = reply.data as CompareResult;
    for (const [i, { ask }] of reply.actions.entries()) {
      const alone = (await replyTo(ask)).data as FloorResult;
      expect(choices[i]).toMatchObject({ planks: alone.count.planks, cartons: alone.count.cartons });
    }
    expect(reply.actions).toHaveLength(3);
  });

  it('names the cheapest with its pad', async () => {
    const reply = await replyTo(`compare room: ${ROOM}, planks: ${PLANKS.join('; ')}, pad: $3/sq ft`);
    expect(reply.headline).toMatch(/^ash costs least/);
    const facts = reply.blocks.find((block) => block.kind === 'facts');
    expect(facts?.kind === 'facts' && facts.facts[0]?.value).toContain('ash');
    expect(reply.blocks.at(-1)?.kind).toBe('picture');
  });

  it.each([
    ['6 x 48 in, 10 per carton', 'two to five'],
    [Array.from({ length: 6 }, () => '6 x 48 in, 10 per carton').join('; '), 'At most 5'],
    ['6 x 48 in, 10 per carton; 7 x 48 in', 'in a box'],
  ])('asks back what is missing of “%s”', async (planks, expected) => {
    const answer = await lastAnswer(`compare room: ${ROOM}, planks: ${planks}`);
    if (!('problems' in answer)) throw new Error('answered');
    expect(answer.problems[0].expected).toContain(expected);
    // Neither a plank nor what is in a carton is made up, and none of six is left out.
    expect(answer.problems[0].fix).toBeUndefined();
    expect(answer.form?.told).toMatchObject({ room: ROOM, planks });
  });
});

describe('layout', () => {
  it('shows one room of those that share offcuts, as it lies in the whole plan', async () => {
    const ask = `room: ${ROOM}, plank: 7 x 48 in, 10 per carton`;
    const whole = (await replyTo(`planks ${ask}`)).data;
    const alone = await replyTo(`layout ${ask}, only: closet`);
    expect(alone.data).toEqual(whole);
    const tables = alone.blocks.flatMap((block) => (block.kind === 'table' ? [block.title] : []));
    expect(tables).toEqual(['Laying guide: closet']);
    expect(alone.blocks[0]?.kind).toBe('picture');
  });

  it('asks back a room that was not told', async () => {
    const answer = await lastAnswer(`layout room: ${ROOM}, plank: 7 x 48 in, 10 per carton, only: attic`);
    expect('problems' in answer && answer.problems[0].expected).toContain('bedroom, closet');
  });
});
