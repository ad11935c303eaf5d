/** “How sure?”: what it says of longer and shorter walls is what such rooms come to when asked for themselves. */

import { describe, expect, it } from 'vitest';
import type { FloorResult } from '../../commands/floor/lay.ts';
import type { Fact, Reply } from '../../src/reply/reply.ts';
import { lastAnswer } from '../bench/fuzz.ts';

const PLANK = 'plank: 6 x 48 in, 10 per carton';

async function replyTo(ask: string): Promise<Reply> {
  const answer = await lastAnswer(ask);
  if (!('headline' in answer)) throw new Error(JSON.stringify(answer));
  return answer;
}

/** Cartons for a room of so many eighths of an inch each way. */
async function cartons(width: number, depth: number): Promise<number> {
  const { data } = await replyTo(`planks room: ${width / 8} in x ${depth / 8} in, ${PLANK}`);
  return (data as FloorResult).count.cartons;
}

function sure(reply: Reply): readonly Fact[] {
  const block = reply.blocks.find((one) => one.kind === 'facts' && one.title === 'How sure');
  return block?.kind === 'facts' ? block.facts : [];
}

describe('how sure', () => {
  it.each([
    [96 * 8, 120 * 8],
    [131 * 8, 150 * 8],
    [144 * 8, 168 * 8],
    [101 * 8, 99 * 8 + 4],
    [120 * 8, 143 * 8],
    [86 * 8, 170 * 8],
  ])('holds for a room of %i × %i eighths of an inch', async (width, depth) => {
    const nominal = await cartons(width, depth);
    const facts = sure(await replyTo(`planks room: ${width / 8} in x ${depth / 8} in, ${PLANK}`));
    expect(facts.length).toBeGreaterThan(0);
    const holds = facts.find(({ label }) => label === 'Holds');
    const least = holds
      ? Number(/up to (\d+)(?: 1\/2)?"/.exec(holds.value)?.[1] ?? 0) + (holds.value.includes('1/2"') ? 0.5 : 0)
      : 0;
    for (const by of [least * 8, -least * 8]) {
      expect(await cartons(width + by, depth + by)).toBe(nominal);
      expect(await cartons(width + by, depth)).toBe(nominal);
      expect(await cartons(width, depth + by)).toBe(nominal);
    }
    for (const { label, value } of facts) {
      const given = /^(\d+) cartons? if (?:(\d+) ?)?(1\/2)?"? ?(longer|shorter)/.exec(value.replace('" ', ' '));
      if (!given) continue;
      const by = (Number(given[2] ?? 0) + (given[3] ? 0.5 : 0)) * 8 * (given[4] === 'longer' ? 1 : -1);
      const [w, d] = label.startsWith('wall 1') ? [by, 0] : label.startsWith('wall 2') ? [0, by] : [by, by];
      expect(await cartons(width + w, depth + d)).toBe(Number(given[1]));
    }
  });
});
