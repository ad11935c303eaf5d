/** What an answer offers next. */

import { describe, expect, it } from 'vitest';
import { offersOf } from '../../src/chat/offers.ts';
import { replyTo } from './asked.ts';

describe('the offers of a planks answer', () => {
  it('are its other patterns as one list, the turned rows as an ask, its guide as parts, its sources', async () => {
    const reply = await replyTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const { asks, choices, parts, sources } = offersOf(reply);
    expect(choices.map(({ name, offered }) => [name, offered.length])).toEqual([['Other pattern', 4]]);
    expect(asks.map(({ action }) => action.label)).toEqual(['Turn the rows']);
    expect(parts.length).toBeGreaterThan(1);
    for (const { place, title } of parts) expect(reply.blocks[place]).toMatchObject({ title });
    expect(sources).toBe(true);
    const offered = [...asks, ...choices.flatMap((choice) => choice.offered)];
    expect(offered.map(({ place, action }) => reply.actions[place] === action)).not.toContain(false);
    expect(offered).toHaveLength(reply.actions.length);
  });

  it('are an ask where a choice stands alone', async () => {
    const reply = await replyTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const alone = { label: 'Lay it half', ask: 'planks 12 x 14', among: 'Other pattern' };
    const offers = offersOf({ ...reply, actions: [alone], sources: [] });
    expect(offers.choices).toEqual([]);
    expect(offers.asks).toEqual([{ place: 0, action: alone }]);
    expect(offers.sources).toBe(false);
  });
});
