/** What each answer says it takes, against its own figures and against arithmetic done here. */

import { describe, expect, it } from 'vitest';
import { mergeNeeds } from '../../src/project/needs.ts';
import type { Need } from '../../src/reply/need.ts';
import { replyTo } from '../chat/asked.ts';

const SQUARE_FOOT = (12 * 8128) ** 2;
const GALLON = 3.785411784;

async function needsOf(ask: string) {
  const reply = await replyTo(ask);
  const needs = reply.needs ?? [];
  const need = (item: string): Need => {
    const found = needs.find((one) => one.item.startsWith(item));
    if (!found) throw new Error(`no ${item} among ${needs.map((one) => one.item).join(', ')}`);
    return found;
  };
  const line = (item: string) => mergeNeeds([need(item)])[0];
  return { data: reply.data as unknown as Record<string, number>, reply, needs, need, line };
}

describe('planks', () => {
  it('92 to lay and 3%: 94.76 planks, 10 cartons, as the answer says; a pad by area', async () => {
    const { need, line, reply } = await needsOf(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const count = (reply.data as unknown as { count: { planks: number; cartons: number } }).count;
    expect(need('plank').quantity.amount).toBeCloseTo(count.planks * 1.03, 9);
    expect(line('plank')?.count).toBe(count.cartons);
    expect(need('underlay').quantity.amount / SQUARE_FOOT).toBe(168);
    expect(need('underlay').note).toMatch(/no pad attached/);
  });

  it('no pad under a plank that has one; price and tax as told', async () => {
    const { needs, need } = await needsOf(
      `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton, attached pad, $32.50 a carton, tax: 8%`,
    );
    expect(needs.map(({ item }) => item)).toEqual([need('plank').item]);
    expect(need('plank').price).toEqual({ cents: 3250, currency: 'USD', tax: 800 });
  });

  it('a strip for each doorway in which the floor stops, none where it runs on', async () => {
    const rooms = `planks room: hall 3'6" x 14'; bedroom 11' x 12'6", plank: 7 x 48 in, 10 per carton, doorways: `;
    const stops = await needsOf(`${rooms}hall to bedroom 32 in, stops`);
    expect(stops.need('transition strip')).toMatchObject({ stage: 'transitions', quantity: { amount: 1 } });
    const on = await needsOf(
      `${rooms}hall to bedroom 32 in, 18 in from the left corner of wall 4, 12 in from the right of wall 2 of bedroom, runs on`,
    );
    expect(on.needs.map(({ stage }) => stage)).not.toContain('transitions');
  });

  it('two rooms asked apart round once: not two part cartons', async () => {
    const asks = ['a 5 x 6', 'b 5 x 7'].map((room) => `planks room: ${room}, plank: 6 x 48 in, 10 per carton`);
    const both = await Promise.all(asks.map(needsOf));
    const apart = both.map(({ line }) => line('plank')?.count ?? 0);
    const merged = mergeNeeds(both.flatMap(({ needs }) => needs)).find(({ item }) => item.startsWith('plank'));
    const amount = both.reduce((sum, { need }) => sum + need('plank').quantity.amount, 0);
    expect(merged?.count).toBe(Math.ceil(amount / 10));
    expect(merged?.count).toBeLessThanOrEqual((apart[0] ?? 0) + (apart[1] ?? 0));
  });
});

describe('tear-out', () => {
  it('bags by the pad’s volume, blades by cutting, masks by hours, as the facts say rounded up', async () => {
    const { line, reply } = await needsOf('tearout room: 12x14, built: 1995');
    const facts = reply.blocks.flatMap((block) => (block.kind === 'facts' ? block.facts : []));
    const said = (label: RegExp) => Number.parseInt(facts.find((fact) => label.test(fact.label))?.value ?? '', 10);
    expect(line('contractor bag')?.count).toBe(said(/bags/i));
    expect(line('knife blade')?.count).toBe(said(/blades/i));
    expect(line('mask')?.count).toBe(said(/masks/i));
    // 168 sq ft of 10 lb/sq yd at 105 lb/cu yd, half of it pad, 159 L a bag.
    const litres = ((168 / 9) * 10 * 764.554857984) / 105 / 2;
    expect(line('contractor bag')?.amount).toBeCloseTo(litres / 159, 3);
  });

  it('a container where one is told', async () => {
    const { need } = await needsOf('tearout room: 12x14, built: 1995, vehicle: container');
    expect(need('container')).toMatchObject({ quantity: { amount: 1 }, item: 'container 10' });
  });

  it('no blades for tile', async () => {
    const { needs } = await needsOf('tearout room: 5x8, floor: ceramic tile, built: 1990');
    expect(needs.map(({ item }) => item)).toEqual(['contractor bag', 'mask n95']);
  });
});

describe('subfloor', () => {
  it('screws by the pack', async () => {
    const { need, data } = await needsOf('squeaks area: 4 x 6 ft');
    expect(need('subfloor screw')).toMatchObject({
      item: `subfloor screw ${1.75 * 8128}`,
      quantity: { unit: 'count', amount: data.screws },
      package: { size: 100 },
    });
  });

  it('a patch: sheets, blocks end to end, screws, and adhesive whose tubes are those of the answer', async () => {
    const { need, line, reply, data } = await needsOf(
      `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in`,
    );
    const blocking = (reply.data as unknown as { blocking: { length: number; count: number }[] }).blocking;
    expect(need('panel').quantity.amount).toBe(data.sheets);
    expect(need('block 2x4').quantity).toEqual({
      unit: 'length',
      amount: blocking.reduce((sum, { length, count }) => sum + length * count, 0),
    });
    expect(line('subfloor adhesive')?.count).toBe(data.adhesiveTubes);
    expect(need('subfloor adhesive').package?.size).toBeCloseTo((28 * GALLON) / 128, 12);
    expect(need('subfloor screw').quantity.amount).toBeGreaterThan(data.fasteners ?? 0);
  });

  it('screws of a patch go into the packs of the squeaks', async () => {
    const both = await Promise.all([
      needsOf('squeaks area: 4 x 6 ft'),
      needsOf(`patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in`),
    ]);
    const lines = mergeNeeds(both.flatMap(({ needs }) => needs));
    expect(lines.filter(({ item }) => item.startsWith('subfloor screw'))).toHaveLength(1);
  });

  it('two patches share a tube where it holds the bead of both', async () => {
    const ask = `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in, bead: 1/4 in`;
    const { need } = await needsOf(ask);
    const merged = mergeNeeds([need('subfloor adhesive'), need('subfloor adhesive')])[0];
    const { amount } = need('subfloor adhesive').quantity;
    expect(merged?.count).toBe(Math.ceil((2 * amount) / ((28 * GALLON) / 128)));
  });

  it('compound by volume and primer by area; nothing where nothing is filled', async () => {
    const { need, line, data } = await needsOf(
      'level readings: low 25 mm over 4 m, area: 20 m², bag: 2.2 kg/m²/mm, 50 kg, floor: concrete',
    );
    expect(need('levelling compound').quantity.amount).toBeCloseTo(500, 9);
    expect(line('levelling compound')?.count).toBe(data.bags);
    expect(need('levelling primer').quantity.amount / (1000 * 320) ** 2).toBeCloseTo(20, 9);
    expect((await replyTo('level readings: 3/16 in over 10 ft')).needs).toBeUndefined();
  });
});

describe('trim', () => {
  it('sticks by length with their price; not the ones at hand', async () => {
    const { needs, data } = await needsOf(
      'list room: 3,6 x 4,2 m, doors: 800 mm, bay: wall 3: front 1.5 m, sides 0.9 m, stock: 2.4 m 9,90 €; 3.6 m 13,90 €; have 2 x 1.5 m, inside-joint: cope',
    );
    expect(needs.map(({ quantity }) => quantity.amount)).toEqual([3, 1]);
    expect(needs.reduce((sum, { quantity, price }) => sum + quantity.amount * (price?.cents ?? 0), 0)).toBe(data.cents);
  });

  it('profiles by their own sticks', async () => {
    const { needs, data } = await needsOf(
      'edges doorways: bath 30 in to tile 1/2 in; bedroom 32 in to carpet; hall 36 in to wood 5/16 in, stock: 36 in $14; 72 in $24',
    );
    expect(new Set(needs.map(({ item }) => item.replace(/ \d+$/, '')))).toEqual(new Set(['end cap', 't-moulding']));
    expect(needs.reduce((sum, { quantity, price }) => sum + quantity.amount * (price?.cents ?? 0), 0)).toBe(data.cents);
  });

  it('sticks for boards that break', async () => {
    const { needs, data } = await needsOf(
      `reset room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 16 ft $15.48, shoe: 8 ft $3.98; 16 ft $6.98`,
    );
    const { reset } = data.cents as unknown as { reset: number };
    expect(needs.reduce((sum, { quantity, price }) => sum + quantity.amount * (price?.cents ?? 0), 0)).toBe(reset);
  });

  it('nails, caulk by volume, paint by volume: a tube and a quart as the answer says', async () => {
    const { need, line, data } = await needsOf(`finish room: 12' x 14', doors: 32 in on wall 2`);
    expect(need('finish nail').quantity.amount).toBe(data.nails);
    expect(line('caulk')?.count).toBe(data.caulkTubes);
    expect(need('trim paint').quantity.amount).toBe(data.paintLitres);
    expect(need('trim paint').package?.size).toBeCloseTo(GALLON / 4, 12);
    expect(need('trim primer').quantity.amount).toBeCloseTo((data.paintLitres ?? 0) / 2, 12);
    expect(need('wood filler').quantity.amount).toBe(data.fillerLitres);
    // 52 ft of wall less a door of 32 in and two casings of 2 1/4 in, a bead of 1/8 by 1/8 in.
    const feet = 52 - (32 + 4.5) / 12;
    expect(need('caulk').quantity.amount).toBeCloseTo(feet * 12 * (1 / 8) ** 2 * 0.0254 ** 3 * 1000, 9);
  });
});
