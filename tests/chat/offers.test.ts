/** What an answer offers next. */

import { describe, expect, it } from 'vitest';
import { offersOf } from '../../src/chat/offers.ts';
import { entryOf } from '../../src/handbook/all-entries.ts';
import { REASONS } from '../../src/text/handbook-text.ts';
import { replyTo } from './asked.ts';

describe('the offers of a planks answer', () => {
  it('are its other patterns as one list, the turned rows as an ask, its guide as parts, its sources', async () => {
    const reply = await replyTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const { asks, choices, parts, sources } = offersOf(reply);
    expect(choices.map(({ name, offered }) => [name, offered.length])).toEqual([
      ['Other pattern', 4],
      ['Why these figures?', 3],
    ]);
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

describe('the reasons of an answer', () => {
  it.each([
    ['estimate area: 168 sq ft, box: 24 sq ft', 'Why 10%?', 'extra-percent'],
    ['level readings: low 1/4 in over 6 ft, area: 4 x 6 ft', `Why 3/16" in 10'?`, 'must-be-level'],
    ['moisture readings: 10 11 9 12, area: 10 x 12 ft', 'Why 12%?', 'moisture-limits'],
    [`list room: 12' x 14'`, 'Why cope?', 'cope-or-miter'],
    [`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`, 'Why 6" stagger?', 'stagger'],
    ['planks room: 3.6 x 4.2 m, plank: 180 x 1220 mm, 10 per carton', 'Why 6 mm gap?', 'gap'],
  ])('%s', async (line, label, entry) => {
    const reply = await replyTo(line);
    const why = reply.actions.find((action) => action.label === label);
    expect(why?.ask).toBe(`handbook entry: ${entry}`);
    expect((await replyTo(why?.ask ?? '')).data).toMatchObject({ kind: 'handbook', entry });
  });

  it.each(Object.entries(REASONS))('for %s open by typing why %s', async (entry, word) => {
    expect(entryOf(entry)).toBeDefined();
    for (const typed of [`why ${word}`, `Why the ${word}?`])
      expect((await replyTo(typed)).data).toMatchObject({ kind: 'handbook', entry });
  });
});

describe('help by topic', () => {
  it('names the topics of the handbook, those of a word, and the questions a command answers with', async () => {
    expect((await replyTo('help handbook')).lines?.join(' ')).toContain('old materials');
    const trim = await replyTo('help trim');
    expect(trim.headline).toMatch(/^\d+ questions about trim\.$/);
    expect(trim.lines?.join(' ')).toContain('Commands: list,');
    expect(trim.actions.length).toBeGreaterThan(2);
    const moisture = await replyTo('help moisture');
    expect(moisture.headline).toContain('prep moisture');
    expect(moisture.actions.every(({ ask }) => ask.startsWith('handbook entry: '))).toBe(true);
  });
});
